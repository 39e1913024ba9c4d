// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instant.h"

#include <optional>
#include <string>
#include <string_view>

/// The names of copies that the program keeps by itself:
/// "<book> copy 20261125T223115Z daily.wickbook", a second one of the same second "… daily 2.wickbook".
/// The moment is UTC, so that the names of one book sort by time wherever the clock was set to.

namespace wickbook::store {

enum class CopyReason {
    Daily,            ///< kept by itself
    ByHand,           ///< somebody asked for it
    BeforeBringingIn, ///< before a register kept elsewhere was brought in
    BeforeTakingBack  ///< before such a register was taken back, or brought in again
};

/// "daily", "by-hand", "before-bringing-in", "before-taking-back".
std::string_view copyReasonCode(CopyReason reason);

struct CopyName {
    std::string book; ///< file name of the book without its ending
    record::Instant moment{};
    CopyReason reason = CopyReason::Daily;
    int number = 1; ///< among those of the same second
    bool operator==(const CopyName&) const = default;
};

/// A book's name that would make the file's too long is cut, between characters.
std::string copyFileName(const CopyName& name);
/// None for every other name.
std::optional<CopyName> copyNameFrom(std::string_view fileName);

} // namespace wickbook::store
