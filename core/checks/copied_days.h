// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/check_series.h"

#include <functional>
#include <span>
#include <string_view>
#include <vector>

namespace wickbook::checks {

/// The rule copied-day sees only a reading's neighbours. Here every day of a series is held against every
/// earlier day of its calendar month, so that a line, or a page, copied from further up is found as well:
/// then each of the later day's readings that has no finding copied-day yet is given one. On scales coarser
/// than tenths one more hour must agree than the rule asks for, since so many more days agree by chance.
/// judged belong to the readings of the series from first on. Work is linear in the series: a day is held
/// against thirty others at most, and the first hour that differs ends it. limitAt: the value in force of a
/// limit of the table, by its name.
using LimitAt = std::function<double(record::Instant at, std::string_view name)>;
void markCopiedDays(std::span<const record::DerivedReading> series, std::size_t first, const LimitAt& limitAt,
                    std::vector<Judgement>& judged);

} // namespace wickbook::checks
