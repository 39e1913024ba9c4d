// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/run.h"

#include "app/cli/console.h"
#include "app/cli/verb_table.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <new>
#include <string_view>
#include <vector>

namespace wickbook::cli {

namespace {

constexpr std::string_view kFooter =
    "Without a verb the window opens: wickbook, wickbook BOOK, or wickbook --sample for an invented "
    "station.\n"
    "Data go to standard output, sentences to standard error; \"-\" as a file is standard input or output.\n"
    "Exit codes: 0 done; 1 done, but verify found damage, or with --strict there are findings or rejected\n"
    "rows; 2 arguments or input that can't be understood; 3 a book or a file can't be read or written;\n"
    "4 an error of the program itself; 130 stopped by Ctrl-C.";

/// How many of the arguments Qt takes for itself here: an option that stands alone, or one with its value.
int takenByQt(std::string_view argument) {
    static constexpr std::array<std::string_view, 11> kWithValue{
        "platform",        "platformpluginpath", "platformtheme", "plugin",  "style",  "stylesheet",
        "qwindowgeometry", "qwindowtitle",       "geometry",      "display", "session"};
    static constexpr std::array<std::string_view, 2> kAlone{"reverse", "widgetcount"};
    if (!argument.starts_with('-')) {
        return 0;
    }
    argument.remove_prefix(argument.starts_with("--") ? 2 : 1);
    const auto isIn = [&](const auto& options) {
        return std::find(options.begin(), options.end(), argument) != options.end();
    };
    return isIn(kWithValue) ? 2 : isIn(kAlone) ? 1 : 0;
}

/// A word that is neither a file nor looks like one is a slip, not a book.
bool looksLikeFile(const std::string& argument) {
    std::error_code ignored;
    return argument.find_first_of("./") != std::string::npos || std::filesystem::exists(argument, ignored);
}

int code(ExitCode exitCode) {
    return static_cast<int>(exitCode);
}

/// One sentence for arguments that can't be understood. The parser's own words may run over several lines.
int refuseArguments(int argc, char** argv, std::string problem) {
    const std::string command =
        argc > 1 && isVerb(argv[1]) ? std::string{"wickbook "} + argv[1] : std::string{"wickbook"};
    std::replace(problem.begin(), problem.end(), '\n', ' ');
    while (problem.ends_with('.') || problem.ends_with(' ')) {
        problem.pop_back();
    }
    say(fmt::format("{}: {}; \"{} --help\" lists what can be given.", command, problem, command));
    return code(ExitCode::BadInput);
}

int runVerb(int argc, char** argv) {
    CLI::App app("A register for a station with a dry and a wet bulb: readings, humidity, dew point.",
                 "wickbook");
    app.footer(std::string{kFooter});
    app.set_version_flag("--version", "wickbook " WICKBOOK_VERSION, "Print the version");
    app.set_help_flag("-h,--help", "Print this help");
    app.require_subcommand(1);

    std::vector<VerbAction> actions;
    for (const VerbEntry& verb : verbTable()) {
        CLI::App* command = app.add_subcommand(std::string{verb.name}, std::string{verb.summary});
        command->set_help_flag("-h,--help", "Print this help");
        actions.push_back(verb.declare(OptionList(*command)));
    }
    try {
        app.parse(argc, argv);
    } catch (const CLI::CallForHelp& help) {
        return app.exit(help);
    } catch (const CLI::CallForVersion& version) {
        return app.exit(version);
    } catch (const CLI::RequiredError& error) {
        return refuseArguments(argc, argv,
                               app.get_subcommands().empty() ? "a verb or a book is needed" : error.what());
    }
    const auto chosen = app.get_subcommands();
    const auto table = verbTable();
    for (std::size_t i = 0; i < table.size(); ++i) {
        if (!chosen.empty() && chosen.front()->get_name() == table[i].name) {
            const auto outcome = actions[i]();
            if (!outcome) {
                say(outcome.error().sentence);
                return code(outcome.error().code);
            }
            return code(*outcome);
        }
    }
    return code(ExitCode::Internal);
}

} // namespace

std::optional<WindowStart> windowStart(int argc, char** argv) {
    std::vector<std::string> arguments;
    for (int i = 1; i < argc; ++i) {
        if (const int taken = takenByQt(argv[i]); taken > 0) {
            i += taken - 1;
        } else {
            arguments.emplace_back(argv[i]);
        }
    }
    if (arguments.empty()) {
        return WindowStart{};
    }
    if (arguments.size() > 1) {
        return std::nullopt;
    }
    const std::string& only = arguments.front();
    if (only == "--sample") {
        return WindowStart{{}, true};
    }
    if (only.starts_with('-') || isVerb(only) || !looksLikeFile(only)) {
        return std::nullopt;
    }
    return WindowStart{only, false};
}

int run(int argc, char** argv) {
    // A word in the verb's place that is none: said before the parser counts what else is missing.
    if (argc > 1 && argv[1][0] != '-' && !isVerb(argv[1])) {
        say(fmt::format(
            "wickbook: \"{}\" is neither a verb nor a book that is there; \"wickbook --help\" lists "
            "the verbs.",
            argv[1]));
        return code(ExitCode::BadInput);
    }
    try {
        return runVerb(argc, argv);
    } catch (const CLI::ParseError& error) {
        return refuseArguments(argc, argv, error.what());
    } catch (const std::bad_alloc&) {
        // Said without asking for memory: there is none to put a sentence together in.
        std::fputs(
            "There is too little memory free for wickbook. What was said to be saved is saved; close other "
            "programs and try again.\n",
            stderr);
        return code(ExitCode::BookTrouble);
    } catch (const std::exception& error) {
        say(fmt::format(
            "wickbook met an error of its own and stopped: {}. What was said to be saved is saved.",
            error.what()));
        return code(ExitCode::Internal);
    }
}

} // namespace wickbook::cli
