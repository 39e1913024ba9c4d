// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/types.h>

#include <csignal>
#include <filesystem>
#include <functional>
#include <map>
#include <string>
#include <vector>

/// Runs the program under test as a process of its own, without a display.

namespace wickbook::apptest {

struct Ran {
    int code = -1; ///< exit code; 128 + signal where it was killed
    std::string out;
    std::string err;
    long peakKilobytes = 0; ///< the most memory it had at once
};

using Arguments = std::vector<std::string>;

/// What makes a run harder than usual.
struct Strain {
    std::vector<std::string> environment; ///< NAME=value, besides the usual
    std::function<void()> before;  ///< in the child, before it becomes the program: limits, another user
    std::string inputFile;         ///< standard input, instead of a text
    Arguments wrapper;             ///< a program that runs the program: faketime, say
    std::string program;           ///< another program than the one under test
    int killAfterMilliseconds = 0; ///< the signal after so long; 0: never
    int signal = SIGKILL;
};

/// Runs to its end with the text given on standard input.
Ran run(const Arguments& arguments, const std::string& input = {}, const Strain& strain = {});

/// A process that is written to and read from while it runs.
class Running {
public:
    explicit Running(const Arguments& arguments);
    Running(const Running&) = delete;
    Running& operator=(const Running&) = delete;
    ~Running();

    void write(const std::string& text);
    /// The next line of its standard output, waiting at most ten seconds; empty where none comes.
    std::string readLine();
    void kill();
    void closeInput();
    int wait();

private:
    pid_t process_ = -1;
    int input_ = -1;
    int output_ = -1;
    std::string pending_;
};

/// A folder of its own for a test, removed afterwards.
class Folder {
public:
    Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder();
    [[nodiscard]] std::string file(const std::string& name) const { return (path_ / name).string(); }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

std::string contents(const std::string& path);
void put(const std::string& path, const std::string& text);

/// A CSV answer as rows by column name; no line breaks within cells.
using Row = std::map<std::string, std::string>;
struct Table {
    std::vector<std::string> header;
    std::vector<Row> rows;
};
Table table(const std::string& csv);

/// Lines of a text, without their ends.
std::vector<std::string> lines(const std::string& text);

} // namespace wickbook::apptest
