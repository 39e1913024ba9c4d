// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/faults/processes.h"

#include <chrono>
#include <cstdlib>
#include <optional>
#include <string>
#include <thread>
#include <vector>

/// The real window on a display of its own, and a hand that types into it. Needs Xvfb and xdotool.

namespace wickbook::store::testing {

inline bool onPath(const char* program) {
    return std::system((std::string("command -v ") + program + " >/dev/null 2>&1").c_str()) == 0;
}

/// A program that runs until it is killed. An end of a pipe, where one is given, is its descriptor 3.
class Running {
public:
    Running(std::vector<std::string> words, const std::vector<std::string>& settings, int third = -1) {
        process_ = ::fork();
        if (process_ != 0)
            return;
        for (const std::string& setting : settings) {
            const auto equals = setting.find('=');
            ::setenv(setting.substr(0, equals).c_str(), setting.substr(equals + 1).c_str(), 1);
        }
        if (third >= 0)
            ::dup2(third, 3);
        std::vector<char*> arguments;
        for (std::string& word : words)
            arguments.push_back(word.data());
        arguments.push_back(nullptr);
        ::execvp(arguments[0], arguments.data());
        ::_exit(127);
    }
    Running(const Running&) = delete;
    Running& operator=(const Running&) = delete;
    ~Running() { kill(); }

    /// The signal it ended by, 0 where it had ended of itself.
    int kill() {
        if (process_ <= 0)
            return 0;
        ::kill(process_, SIGKILL);
        int status = 0;
        ::waitpid(process_, &status, 0);
        process_ = -1;
        return WIFSIGNALED(status) ? WTERMSIG(status) : 0;
    }

    /// Its exit code (128 and more: the signal) if it ends of itself by then; none: it is still running.
    std::optional<int> waitAtMost(std::chrono::milliseconds patience) {
        const auto until = std::chrono::steady_clock::now() + patience;
        while (std::chrono::steady_clock::now() < until) {
            int status = 0;
            if (::waitpid(process_, &status, WNOHANG) == process_) {
                process_ = -1;
                return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
            }
            std::this_thread::sleep_for(std::chrono::milliseconds(50));
        }
        return std::nullopt;
    }

private:
    pid_t process_ = -1;
};

/// An X server that nobody sees.
class Display {
public:
    Display() {
        int ends[2] = {-1, -1};
        if (::pipe(ends) != 0)
            return;
        server_ = std::make_unique<Running>(std::vector<std::string>{"Xvfb", "-displayfd", "3", "-screen",
                                                                     "0", "1280x800x24", "-nolisten", "tcp"},
                                            std::vector<std::string>{}, ends[1]);
        ::close(ends[1]);
        std::string number;
        pollfd waiting{ends[0], POLLIN, 0};
        char letter = 0;
        while (::poll(&waiting, 1, 20'000) == 1 && ::read(ends[0], &letter, 1) == 1 && letter != '\n')
            number += letter;
        ::close(ends[0]);
        name_ = number.empty() ? std::string{} : ":" + number;
    }
    /// As X programs want it; empty where the server didn't come up in 20 s.
    [[nodiscard]] const std::string& name() const { return name_; }
    /// What xdotool is told to do; its exit code.
    int hand(const std::string& words) const {
        return std::system(("DISPLAY=" + name_ + " timeout 60 xdotool " + words).c_str());
    }

private:
    std::unique_ptr<Running> server_;
    std::string name_;
};

/// The program's window, showing a book, with settings of its own below home.
inline std::unique_ptr<Running> showBook(const char* program, const std::filesystem::path& book,
                                         const std::string& home, const Display& display,
                                         const std::vector<std::string>& more = {}) {
    std::vector<std::string> settings{"DISPLAY=" + display.name(),
                                      "QT_QPA_PLATFORM=xcb",
                                      "LANG=C.UTF-8",
                                      "HOME=" + home,
                                      "XDG_CONFIG_HOME=" + home + "/config",
                                      "XDG_DATA_HOME=" + home + "/data",
                                      "XDG_RUNTIME_DIR=" + home + "/run"};
    std::filesystem::create_directories(home + "/run");
    ::chmod((home + "/run").c_str(), 0700);
    settings.insert(settings.end(), more.begin(), more.end());
    return std::make_unique<Running>(std::vector<std::string>{program, book.string()}, settings);
}

} // namespace wickbook::store::testing
