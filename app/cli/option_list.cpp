// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/option_list.h"

#include <CLI/CLI.hpp>

namespace wickbook::cli {

OptionList& OptionList::text(const std::string& name, std::string& target, const std::string& help) {
    command_->add_option(name, target, help);
    return *this;
}

OptionList& OptionList::needed(const std::string& name, std::string& target, const std::string& help) {
    command_->add_option(name, target, help)->required();
    return *this;
}

OptionList& OptionList::many(const std::string& name, std::vector<std::string>& target,
                             const std::string& help, bool isNeeded) {
    command_->add_option(name, target, help)->required(isNeeded)->allow_extra_args(false);
    return *this;
}

OptionList& OptionList::flag(const std::string& name, bool& target, const std::string& help) {
    command_->add_flag(name, target, help);
    return *this;
}

} // namespace wickbook::cli
