// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

/// The string literals of a source file, comments passed over.

namespace wickbook::errors {

struct Literal {
    std::string text; ///< neighbouring ones put together, escapes undone
    bool refused =
        false; ///< stands within a call that hands trouble on: refuse(…), Refusal{…}, failed(…), tell(…) …
};
std::vector<Literal> literalsOf(const std::filesystem::path& file);

} // namespace wickbook::errors
