// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/outcome.h"
#include "core/psychrometry/derive.h"
#include "core/record/station.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Option values as typed, read strictly: one sentence for each that can't be understood. Numbers take a
/// point or a comma and either minus sign; groups of thousands are refused.

namespace wickbook::cli {

/// option: its name as typed, for the sentence ("--dry").
Outcome<units::Decimal> decimalFrom(const std::string& option, const std::string& text);
/// A number that is computed with and not kept: also more digits than a reading can have, and an exponent
/// (6.67e-4), as programs write them. None for what is not a finite number.
std::optional<double> realFrom(std::string_view text);
/// The same with a sentence.
Outcome<double> realFrom(const std::string& option, const std::string& text);
/// The same within [lowest, highest]; unit for the sentence ("m", "hPa").
Outcome<double> numberFrom(const std::string& option, const std::string& text, double lowest, double highest,
                           const std::string& unit);
/// A number without decimals within [lowest, highest].
Outcome<std::int64_t> wholeNumberFrom(const std::string& option, const std::string& text, std::int64_t lowest,
                                      std::int64_t highest);

Outcome<psychrometry::Exposure> exposureFrom(const std::string& text);
/// "aspirated, whirled, …" for help and sentences; without "own" where a station is described.
std::string exposureNames(bool withOwn);
/// An exposure a station can be kept under: "own" needs a fitted coefficient and is refused.
Outcome<psychrometry::Exposure> stationExposureFrom(const std::string& text);
Outcome<psychrometry::WickState> wickFrom(const std::string& text);

/// "09:00,21:00": at least one, none twice; sorted.
Outcome<std::vector<record::HourOfDay>> hoursFrom(const std::string& text);
Outcome<record::HourRule> hourRuleFrom(const std::string& text);
Outcome<record::Zone> zoneFrom(const std::string& text);
Outcome<units::TemperatureUnit> unitFrom(const std::string& text);
Outcome<record::StationDate> dateFrom(const std::string& option, const std::string& text);
Outcome<date::year_month> monthFrom(const std::string& text);

Outcome<double> latitudeFrom(const std::string& text);
Outcome<double> longitudeFrom(const std::string& text);
Outcome<units::Elevation> elevationFrom(const std::string& text);

/// Dates asked for with --from and --to, either may be missing.
struct DateRange {
    std::optional<record::StationDate> from;
    std::optional<record::StationDate> to;
};
/// Bounds where one end is left open: the dates that record reads.
inline constexpr record::StationDate kEarliestDate{date::local_days{date::year{1600} / 1 / 1}};
inline constexpr record::StationDate kLatestDate{date::local_days{date::year{2200} / 12 / 31}};
/// Empty texts are not given. A range that ends before it begins is refused.
Outcome<DateRange> dateRangeFrom(const std::string& from, const std::string& to);

} // namespace wickbook::cli
