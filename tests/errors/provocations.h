// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/app/program.h"

#include <functional>
#include <map>
#include <string>
#include <vector>

/// What makes each sentence of trouble appear, for real: the program run with the fault, or the words asked
/// for with what the core says of the real fault.

namespace wickbook::errors {

/// A folder with a book in it, made anew for every provocation. In arguments and sentences {dir} stands for
/// the folder and {book} for the book: hours 08:00 and 20:00 by the clock, Dublin; one reading, 1 March 2025,
/// 08:00.
class Bench {
public:
    Bench();
    [[nodiscard]] std::string file(const std::string& name) const { return folder_.file(name); }
    [[nodiscard]] std::string book() const { return folder_.file("book.wbk"); }
    /// {dir} and {book} as paths.
    [[nodiscard]] std::string filled(std::string text) const;
    /// Paths as {dir} and {book}.
    [[nodiscard]] std::string plain(std::string text) const;

private:
    apptest::Folder folder_;
};

struct Provocation {
    /// As a person reads it, whole.
    std::string sentence;
    /// Everything that was said, line by line.
    std::function<std::vector<std::string>(const Bench&)> provoke;
};

/// What a run of the program needs beside its arguments.
struct Fault {
    int code = 2;                               ///< exit code expected
    std::map<std::string, std::string> files{}; ///< put into the folder first
    std::string input{};                        ///< standard input
    std::string shell{};                        ///< what a shell adds to the command
    bool piped = false; ///< standard input comes through a pipe, which can't be read twice
    std::function<void(const Bench&)> before{}; ///< done to the book first
};
/// A provocation by the command line.
Provocation said(std::string sentence, apptest::Arguments arguments, Fault fault = {});

std::vector<Provocation> optionProvocations();
std::vector<Provocation> parserProvocations();
std::vector<Provocation> fileProvocations();
std::vector<Provocation> importProvocations();
std::vector<Provocation> bookProvocations();
std::vector<Provocation> registerProvocations();
std::vector<Provocation> wordProvocations();
std::vector<Provocation> instrumentProvocations();
/// All of them.
std::vector<Provocation> everyProvocation();

} // namespace wickbook::errors
