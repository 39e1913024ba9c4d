// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/app/program.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <sstream>

/// Programs of others that a test can do without: where one is missing the test is skipped and says so.

namespace wickbook::apptest {

/// Full path of a program on the PATH, or empty. Debian's own place first.
inline std::string toolPath(const std::string& name) {
    const char* path = std::getenv("PATH");
    std::istringstream folders("/usr/bin:" + std::string(path == nullptr ? "" : path));
    for (std::string folder; std::getline(folders, folder, ':');) {
        std::error_code ignored;
        const auto file = std::filesystem::path(folder) / name;
        if (!folder.empty() && std::filesystem::exists(file, ignored)) {
            return file.string();
        }
    }
    return {};
}

/// Runs another program than ours.
inline Ran runTool(const std::string& program, const Arguments& arguments) {
    Strain strain;
    strain.program = program;
    return run(arguments, {}, strain);
}

/// A script of tests/reference.
inline Ran runScript(const std::string& name, Arguments arguments) {
    arguments.insert(arguments.begin(), std::string{WICKBOOK_TEST_DATA} + "/reference/" + name);
    return runTool(toolPath("python3"), arguments);
}

} // namespace wickbook::apptest

/// At the head of a case.
#define WICKBOOK_NEEDS(program)                                                                              \
    if (wickbook::apptest::toolPath(program).empty()) {                                                      \
        GTEST_SKIP() << (program) << " is not installed: nothing was tried.";                                \
    }
