// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/observer_habits.h"
#include "core/store/book.h"

#include <functional>
#include <optional>
#include <vector>

namespace wickbook::desk {

/// How each hand in the book reads, from every live observation. The book is read in stretches of a few weeks
/// and nothing of it is kept but the counts. None where progress stopped it.
store::Result<std::optional<std::vector<checks::ObserverHabits>>>
observersOfBook(const store::Book& book, const record::StationRecord& station,
                const std::function<bool(std::int64_t done, std::int64_t total)>& progress = {});

} // namespace wickbook::desk
