// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"

#include <string>

namespace wickbook::desk {

/// Initials to propose for a reading on a date; a person may write others. The deputy of a planned absence of
/// that date, unless who sits here has read on in it; else who sat here last. Where that is a deputy whose
/// absence is over and who has not read since, the usual hand is back: whoever read last before that absence.
/// A book that can't be read just now leaves who sat here last.
std::string likelyObserver(const store::Book& book, const record::StationRecord& station,
                           record::StationDate date, const std::string& satHereLast);

} // namespace wickbook::desk
