// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/check_series.h"
#include "core/checks/station_model.h"
#include "core/report/month_report.h"
#include "core/store/book.h"

#include <functional>
#include <optional>
#include <vector>

/// The desk is where the book lies open beside the rules: the one room of core that knows both. The window
/// and the command line come here for readings that are derived and judged, so that both say the same of
/// them.

namespace wickbook::desk {

using store::Result;

/// What this station usually reads, from its newest readings: built once, then handed to the functions below,
/// which name likely causes with it and none without. Its cost does not grow with the age of the book.
/// keepGoing returning false stops the work; the model is of no use then.
Result<checks::StationModel> stationModel(const store::Book& book, const record::StationRecord& station,
                                          const std::function<bool()>& keepGoing = {});

/// Readings filed under the dates [from, to], derived and judged with their neighbours, in time order.
/// now: for readings in the future; none: don't ask. Stopped by progress: what was done so far.
/// Days are held against all earlier days of their month, also where those lie before from.
Result<std::vector<checks::CheckedReading>>
checkedOn(const store::Book& book, const record::StationRecord& station, record::StationDate from,
          record::StationDate to, std::optional<record::Instant> now,
          const checks::StationModel* model = nullptr,
          const std::function<bool(std::size_t done, std::size_t total)>& progress = {});

/// The whole register judged. progress is asked while the book is read, too (0 of total), and stops that as
/// well: then nothing was done.
Result<std::vector<checks::CheckedReading>>
checkedAll(const store::Book& book, const record::StationRecord& station, std::optional<record::Instant> now,
           const checks::StationModel* model = nullptr,
           const std::function<bool(std::size_t done, std::size_t total)>& progress = {},
           checks::Slips slips = checks::Slips::LookFor);

/// What the checks say of an entry that is not stored yet. replacing: the observation it would revise, which
/// is not counted among its own neighbours. Work does not grow with the book.
Result<checks::CheckedReading> judgeEntry(const store::Book& book, const record::StationRecord& station,
                                          const record::Observation& entry,
                                          const std::optional<record::Uuid>& replacing,
                                          std::optional<record::Instant> now, bool live,
                                          const checks::StationModel* model = nullptr);

/// The monthly return. options: none, what the station has set.
Result<report::MonthReport> monthReport(const store::Book& book, const record::StationRecord& station,
                                        date::year_month month, std::optional<record::Instant> now,
                                        const std::optional<climate::MonthOptions>& options = std::nullopt,
                                        const checks::StationModel* model = nullptr,
                                        checks::Slips slips = checks::Slips::LookFor);

} // namespace wickbook::desk
