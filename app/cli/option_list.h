// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace wickbook::cli {

/// The options of one verb, declared. Values are taken as they are typed, also those that begin with a minus
/// sign, and read by options.h: the parser of arguments knows nothing of numbers, so that every refusal has
/// a sentence of ours. Targets must live until the verb has run. The one place, beside run.cpp, that knows
/// the parser's library.
class OptionList {
public:
    explicit OptionList(CLI::App& command) : command_(&command) {}

    OptionList& text(const std::string& name, std::string& target, const std::string& help);
    OptionList& needed(const std::string& name, std::string& target, const std::string& help);
    /// May be given several times, one value each time.
    OptionList& many(const std::string& name, std::vector<std::string>& target, const std::string& help,
                     bool isNeeded = false);
    OptionList& flag(const std::string& name, bool& target, const std::string& help);

private:
    CLI::App* command_;
};

} // namespace wickbook::cli
