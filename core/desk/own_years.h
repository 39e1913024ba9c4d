// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/checked_range.h"
#include "core/report/own_years.h"

#include <functional>

namespace wickbook::desk {

/// The same calendar month in the other years: only those kept at the same place in the same exposure (or
/// joined to it after an overlap), at the same observing hours. Work in proportion to the number of years.
/// keepGoing returning false stops it; what was found so far is of no use then.
Result<report::OwnYears> ownYears(const store::Book& book, const record::StationRecord& station,
                                  date::year_month month, std::optional<record::Instant> now,
                                  const checks::StationModel* model = nullptr,
                                  const std::function<bool()>& keepGoing = {});

} // namespace wickbook::desk
