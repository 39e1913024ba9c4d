// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/checked_range.h"

#include <functional>
#include <optional>
#include <vector>

/// The whole register at once, however long: read, learnt from, judged. It is long work, so it tells how far
/// it is and stops within a moment when told to; nothing of it is kept anywhere. The book is read in
/// stretches of a few weeks, never under one lock for long, so that a reading can be entered meanwhile: what
/// was entered behind the reader's back is then not in the answer, and who asked can tell by
/// Book::externalVersion.

namespace wickbook::desk {

enum class WholeStage { Reading, Learning, Judging };

/// done of total readings in a stage; while learning 0 of total. False stops the work.
using WholeProgress = std::function<bool(WholeStage stage, std::size_t done, std::size_t total)>;

/// Every live observation, derived, in time order. None where progress stopped it.
Result<std::optional<std::vector<record::DerivedReading>>>
wholeRegister(const store::Book& book, const record::StationRecord& station,
              const std::function<bool(std::size_t done, std::size_t total)>& progress = {});

/// Every live observation judged both ways, with the model learnt from the same readings. None where progress
/// stopped it.
Result<std::optional<std::vector<checks::CheckedReading>>> checkWhole(const store::Book& book,
                                                                      const record::StationRecord& station,
                                                                      std::optional<record::Instant> now,
                                                                      const WholeProgress& progress = {});

} // namespace wickbook::desk
