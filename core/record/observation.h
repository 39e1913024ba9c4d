// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/derive.h"
#include "core/record/instant.h"
#include "core/record/uuid.h"
#include "core/record/weather.h"
#include "core/units/read_temperature.h"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

/// What an observer wrote down, as values. Only what was read is here: humidity and dew point are worked out
/// from it (derived_reading.h) and never kept. Every field may be revised; identity and history are the
/// revision's (revision.h).

namespace wickbook::record {

using psychrometry::WickState;

/// The nominal hour a reading is kept under.
struct ObservingHour {
    StationDate date;
    HourOfDay hour;
    auto operator<=>(const ObservingHour&) const = default;
};

/// How the value came about.
enum class Origin { Observed, Corrected, Estimated, Missing };
/// What a person judged of it.
enum class Quality { NotJudged, Sound, Doubtful, Erroneous };

/// A thermometer's reading: digits, or a column gone into the bulb.
struct BulbReading {
    std::optional<units::ReadTemperature> value;
    bool belowScale = false;
    [[nodiscard]] bool given() const { return value.has_value() || belowScale; }
    bool operator==(const BulbReading&) const = default;
};

/// One whirl, wet bulb read first.
struct Repeat {
    std::optional<units::ReadTemperature> wet;
    std::optional<units::ReadTemperature> dry;
    bool operator==(const Repeat&) const = default;
};

enum class WickCare { None, Wetted, Changed };

/// Where a reading that was copied from paper stands there. Either may be empty: not given.
struct PaperPlace {
    std::string book;
    std::string page;
    bool operator==(const PaperPlace&) const = default;
};

struct Observation {
    std::optional<ObservingHour> hour; ///< none for an extra reading
    Instant instant{};                 ///< when it was read
    std::string zone;                  ///< IANA name in force
    std::chrono::seconds offset{0};    ///< in force at the reading, to the second

    BulbReading dry;
    BulbReading wet;
    WickState wick = WickState::NotGiven;
    WickCare wickCare = WickCare::None;
    std::optional<units::Decimal> pressure; ///< hPa, read at the station
    std::optional<WeatherSet> weather;
    std::optional<int> windBeaufort; ///< 0…12
    std::optional<units::ReadTemperature> maximum;
    std::optional<units::ReadTemperature> minimum;
    std::vector<Repeat> repeats;

    std::string note;
    std::string observer; ///< initials
    Origin origin = Origin::Observed;
    Quality quality = Quality::NotJudged;
    std::string missingReason;         ///< away, ill, wick dry, broken, forgotten, or the person's own words
    bool withdrawn = false;            ///< taken back; its history stays
    std::optional<PaperPlace> paper{}; ///< given: copied from a page of the paper register
    bool readBack = false;             ///< read back against the paper since it last changed, and found equal

    /// Both bulbs have a number.
    [[nodiscard]] bool hasPair() const { return dry.value && wet.value; }
    bool operator==(const Observation&) const = default;
};

std::string_view originName(Origin origin);
std::optional<Origin> originFromName(std::string_view name);
std::string_view qualityName(Quality quality);
std::optional<Quality> qualityFromName(std::string_view name);
/// "water", "ice", "" for not given.
std::string_view wickName(WickState wick);
std::optional<WickState> wickFromName(std::string_view name);

/// WMO BUFR table 0 33 020 as used for exchange: what the person judged stands before how it came about:
/// sound 0, doubtful 2, erroneous 3, then missing 7, estimated 6, corrected 5, not judged 4.
int qualityCode(Origin origin, Quality quality);

/// The calendar day an observation is filed under: its hour's date, or for an extra reading the clock's date.
StationDate filedDate(const Observation& observation);

} // namespace wickbook::record
