// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/program.h"

#include "tests/support/reference_csv.h"

#include <fcntl.h>
#include <poll.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <thread>

namespace wickbook::apptest {

namespace {

int exitCodeOf(int status) {
    return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

/// In the child: becomes the program.
[[noreturn]] void become(const Arguments& arguments, const Strain& strain = {}) {
    std::vector<std::string> words = strain.wrapper;
    words.push_back(strain.program.empty() ? WICKBOOK_PROGRAM : strain.program);
    words.insert(words.end(), arguments.begin(), arguments.end());
    std::vector<char*> argv;
    for (std::string& word : words) {
        argv.push_back(word.data());
    }
    argv.push_back(nullptr);
    unsetenv("DISPLAY");
    unsetenv("WAYLAND_DISPLAY");
    unsetenv("QT_QPA_PLATFORM");
    for (const std::string& setting : strain.environment) {
        const auto equals = setting.find('=');
        setenv(setting.substr(0, equals).c_str(), setting.substr(equals + 1).c_str(), 1);
    }
    if (strain.before) {
        strain.before();
    }
    execvp(argv.front(), argv.data());
    _exit(127);
}

} // namespace

Ran run(const Arguments& arguments, const std::string& input, const Strain& strain) {
    const Folder folder;
    const std::string inputFile = strain.inputFile.empty() ? folder.file("in") : strain.inputFile;
    if (strain.inputFile.empty()) {
        put(inputFile, input);
    }
    const pid_t process = fork();
    if (process == 0) {
        const int in = open(inputFile.c_str(), O_RDONLY);
        const int out = open(folder.file("out").c_str(), O_WRONLY | O_CREAT, 0600);
        const int err = open(folder.file("err").c_str(), O_WRONLY | O_CREAT, 0600);
        dup2(in, STDIN_FILENO);
        dup2(out, STDOUT_FILENO);
        dup2(err, STDERR_FILENO);
        become(arguments, strain);
    }
    if (strain.killAfterMilliseconds > 0) {
        std::this_thread::sleep_for(std::chrono::milliseconds(strain.killAfterMilliseconds));
        ::kill(process, strain.signal);
    }
    int status = 0;
    rusage used{};
    wait4(process, &status, 0, &used);
    return {exitCodeOf(status), contents(folder.file("out")), contents(folder.file("err")), used.ru_maxrss};
}

Running::Running(const Arguments& arguments) {
    std::array<int, 2> in{};
    std::array<int, 2> out{};
    if (pipe2(in.data(), O_CLOEXEC) != 0 || pipe2(out.data(), O_CLOEXEC) != 0) {
        throw std::runtime_error("no pipe");
    }
    process_ = fork();
    if (process_ == 0) {
        dup2(in[0], STDIN_FILENO);
        dup2(out[1], STDOUT_FILENO);
        become(arguments);
    }
    close(in[0]);
    close(out[1]);
    input_ = in[1];
    output_ = out[0];
}

Running::~Running() {
    if (process_ > 0) {
        kill();
    }
    closeInput();
    close(output_);
}

void Running::write(const std::string& text) {
    if (::write(input_, text.data(), text.size()) != static_cast<ssize_t>(text.size())) {
        throw std::runtime_error("the program does not take its input");
    }
}

std::string Running::readLine() {
    while (pending_.find('\n') == std::string::npos) {
        pollfd waiting{output_, POLLIN, 0};
        std::array<char, 4096> bytes{};
        const ssize_t count = poll(&waiting, 1, 10'000) == 1 ? read(output_, bytes.data(), bytes.size()) : 0;
        if (count <= 0) {
            return {};
        }
        pending_.append(bytes.data(), static_cast<std::size_t>(count));
    }
    const auto end = pending_.find('\n');
    std::string line = pending_.substr(0, end);
    pending_.erase(0, end + 1);
    return line;
}

void Running::kill() {
    ::kill(process_, SIGKILL);
    wait();
}

void Running::closeInput() {
    if (input_ >= 0) {
        close(input_);
        input_ = -1;
    }
}

int Running::wait() {
    int status = 0;
    waitpid(process_, &status, 0);
    process_ = -1;
    return exitCodeOf(status);
}

Folder::Folder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "wickbook-app-XXXXXX").string();
    if (mkdtemp(pattern.data()) == nullptr) {
        throw std::runtime_error("no folder for the test");
    }
    path_ = pattern;
}

Folder::~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

std::string contents(const std::string& path) {
    const std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

void put(const std::string& path, const std::string& text) {
    std::ofstream file(path, std::ios::binary);
    file << text;
}

std::vector<std::string> lines(const std::string& text) {
    std::vector<std::string> result;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) {
        if (line.ends_with('\r')) {
            line.pop_back();
        }
        result.push_back(line);
    }
    return result;
}

Table table(const std::string& csv) {
    Table result;
    for (const std::string& line : lines(csv)) {
        const auto cells = support::splitReferenceLine(line);
        if (result.header.empty()) {
            result.header = cells;
            continue;
        }
        if (cells.size() != result.header.size()) {
            throw std::runtime_error("a row of another length: " + line);
        }
        Row row;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            row[result.header[i]] = cells[i];
        }
        result.rows.push_back(std::move(row));
    }
    return result;
}

} // namespace wickbook::apptest
