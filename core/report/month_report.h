// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/check_series.h"
#include "core/climate/month_summary.h"
#include "core/report/own_years.h"
#include "core/report/signed_month.h"

#include <date/date.h>

#include <optional>
#include <span>
#include <vector>

/// The monthly return as data: lines, numbers, what was corrected and what is open. Layout and words are the
/// window's and the printer's.

namespace wickbook::report {

/// One expected hour or extra reading; an hour without a reading is a line too.
struct MonthLine {
    record::ObservingHour hour; ///< for an extra reading: its filed date and clock time
    bool extra = false;  ///< outside the hours' means: no hour, one not in the plan, or a second reading
    bool toCome = false; ///< not yet due and not read
    record::Instant instant{}; ///< when it was read; without a reading, when the hour is due
    const checks::CheckedReading* reading = nullptr; ///< none: nothing was written down
    std::string excuse{}; ///< of a missed hour: the reason of an absence that was entered ahead
};

/// Owns its readings; lines point into them. Copies point into their own.
struct MonthReport {
    MonthReport() = default;
    MonthReport(const MonthReport& other);
    MonthReport(MonthReport&&) noexcept = default;
    MonthReport& operator=(const MonthReport& other);
    MonthReport& operator=(MonthReport&&) noexcept = default;
    ~MonthReport() = default;

    record::StationRecord station;
    date::year_month month{};
    std::vector<checks::CheckedReading> readings; ///< filed under the month, time order, none withdrawn
    std::vector<MonthLine> lines;  ///< expected hours and extras, time order; point into readings
    climate::MonthOptions options; ///< what the summary was made with
    climate::MonthSummary summary;
    int corrected = 0;                        ///< readings with more than one revision
    int openQueries = 0;                      ///< readings left out by what the checks say and not yet judged
    std::optional<double> typicalHumidityU95; ///< median ± of the month's humidities that are not left out, %
    std::optional<double> typicalDewPointU95; ///< K
    std::optional<SignedMonth> signedOff;     ///< by its latest signing
    std::optional<OwnYears> ownYears;         ///< the same month of other years; none where nobody has looked
};

/// Completeness and thresholds that the station has set for this month (limits "month.…"), else the built-in
/// ones. A change within the month counts from the next on.
climate::MonthOptions monthOptions(const checks::StationLimits& limits, date::year_month month);

/// Builds the return of one month. The series is in time order and reaches a few readings beyond the month on
/// both sides, so that the rules see neighbours. With now, hours still ahead are to come, not missing (unless
/// the options name another moment). model: see checkSeries.
MonthReport buildMonthReport(const record::StationRecord& station, date::year_month month,
                             std::span<const record::DerivedReading> series,
                             const checks::StationLimits& limits, std::optional<record::Instant> now,
                             const climate::MonthOptions& options = {},
                             const checks::StationModel* model = nullptr,
                             checks::Slips slips = checks::Slips::LookFor);

} // namespace wickbook::report
