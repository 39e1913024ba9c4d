// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/store/book_testing.h"

#include <fcntl.h>
#include <poll.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <functional>
#include <sstream>
#include <string>
#include <vector>

/// Real processes for the fault tests: the loop that appends, and a piece of a test run apart.

extern char** environ;

namespace wickbook::store::testing {

/// One reading that the loop said was stored.
struct Acknowledged {
    std::int64_t sequence = 0;
    record::Uuid subject;
};

/// append_loop, running. Its output waits in the pipe until it is asked for.
class AppendLoop {
public:
    AppendLoop(const std::filesystem::path& book, std::uint64_t seed, int count) {
        int ends[2] = {-1, -1};
        if (::pipe2(ends, O_CLOEXEC) != 0)
            throw std::runtime_error("no pipe");
        read_ = ends[0];
        // Room for every line of a long loop, so that it never waits for us.
        ::fcntl(read_, F_SETPIPE_SZ, 1 << 20);
        posix_spawn_file_actions_t actions;
        posix_spawn_file_actions_init(&actions);
        posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
        std::vector<std::string> words{WICKBOOK_APPEND_LOOP, book.string(), std::to_string(seed),
                                       std::to_string(count)};
        std::vector<char*> arguments;
        for (std::string& word : words)
            arguments.push_back(word.data());
        arguments.push_back(nullptr);
        const int result =
            ::posix_spawn(&process_, WICKBOOK_APPEND_LOOP, &actions, nullptr, arguments.data(), environ);
        posix_spawn_file_actions_destroy(&actions);
        ::close(ends[1]);
        if (result != 0)
            throw std::runtime_error("append_loop can't be started");
    }
    AppendLoop(const AppendLoop&) = delete;
    AppendLoop& operator=(const AppendLoop&) = delete;
    ~AppendLoop() {
        kill();
        ::close(read_);
    }

    /// Waits until it has said something, ten seconds at most.
    void waitForFirstWord() const {
        pollfd waiting{read_, POLLIN, 0};
        ::poll(&waiting, 1, 10'000);
    }
    void kill() {
        if (process_ > 0) {
            ::kill(process_, SIGKILL);
            static_cast<void>(wait());
        }
    }
    /// Exit code, or minus the signal.
    int wait() {
        int status = 0;
        ::waitpid(process_, &status, 0);
        process_ = -1;
        return WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
    }
    /// Everything it said. Pre: it has ended.
    std::vector<Acknowledged> said() {
        std::string text;
        char buffer[4096];
        ssize_t got = 0;
        while ((got = ::read(read_, buffer, sizeof buffer)) > 0)
            text.append(buffer, static_cast<std::size_t>(got));
        std::vector<Acknowledged> lines;
        std::istringstream in(text);
        std::int64_t sequence = 0;
        std::string subject;
        while (in >> sequence >> subject)
            lines.push_back({sequence, record::Uuid::fromText(subject).value()});
        return lines;
    }

private:
    pid_t process_ = -1;
    int read_ = -1;
};

/// Runs a piece in a process of its own; what it returns is its exit code (0…255).
inline int apart(const std::function<int()>& piece) {
    const pid_t process = ::fork();
    if (process == 0)
        ::_exit(piece());
    int status = 0;
    ::waitpid(process, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
}

/// Exit code for what became of a call: 100 for success, else the error's kind.
template <typename T>
int codeOf(const Result<T>& result) {
    return result ? 100 : static_cast<int>(result.error().kind);
}
inline int codeOf(StoreErrorKind kind) {
    return static_cast<int>(kind);
}
inline constexpr int kDone = 100;

} // namespace wickbook::store::testing
