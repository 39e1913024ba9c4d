// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/psychrometry/derive.h"
#include "core/record/instant.h"
#include "core/record/uuid.h"
#include "core/units/decimal.h"
#include "core/units/read_temperature.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What is done to know an instrument, as it was read: both thermometers in one bath, a sensor over salt
/// solutions, another instrument beside the station's. What follows from it is worked out in core/comparison
/// and never kept.

namespace wickbook::record {

/// Both thermometers of a pair without wick in one stirred bath: at the ice point (slush of crushed ice of
/// distilled water), and in water of about 20 °C. What was not read is missing.
struct PairCheck {
    Uuid id;
    StationDate date{};
    Uuid dry; ///< thermometers
    Uuid wet;
    std::optional<units::ReadTemperature> dryAtIce;
    std::optional<units::ReadTemperature> wetAtIce;
    std::optional<units::ReadTemperature> dryInBath;
    std::optional<units::ReadTemperature> wetInBath;
    std::string observer; ///< initials
    std::string note;
    bool withdrawn = false;
    bool operator==(const PairCheck&) const = default;
};

/// Saturated solutions with a known humidity above them.
enum class Salt {
    LithiumChloride,
    MagnesiumChloride,
    MagnesiumNitrate,
    SodiumChloride,
    PotassiumChloride,
    PotassiumSulphate
};
inline constexpr int kSalts = static_cast<int>(Salt::PotassiumSulphate) + 1;
/// Formula as chemists write it, in plain letters: "NaCl", "Mg(NO3)2". Also the name in data.
std::string_view saltName(Salt salt);
/// Upper and lower case alike.
std::optional<Salt> saltFromName(std::string_view name);

struct SaltReading {
    Salt salt = Salt::SodiumChloride;
    units::Decimal humidity; ///< % RH the sensor showed
    bool operator==(const SaltReading&) const = default;
};

/// An electronic sensor over salt solutions.
struct SaltCheck {
    Uuid id;
    StationDate date{};
    std::string sensor;                        ///< what it is called
    std::optional<units::Decimal> temperature; ///< °C of the solutions
    std::vector<SaltReading> readings;
    std::string observer;
    std::string note;
    bool withdrawn = false;
    bool operator==(const SaltCheck&) const = default;
};

/// Why another instrument stands beside the station's.
enum class BesidePurpose {
    Reference, ///< it is the better one: what the station's is compared with
    Overlap    ///< it follows the station's: a new instrument or a new site, side by side for a while
};
std::string_view besidePurposeName(BesidePurpose purpose); ///< "reference", "overlap"
std::optional<BesidePurpose> besidePurposeFromName(std::string_view name);

/// Another instrument beside the station's for an announced time.
struct SideBySide {
    Uuid id;
    std::string name; ///< of the other instrument or site
    BesidePurpose purpose = BesidePurpose::Reference;
    StationDate from{};
    std::optional<StationDate> to; ///< last day, included; none: not announced
    /// Reference: standard uncertainty of its humidity, % RH, common to all its readings.
    std::optional<double> humidityUncertainty;
    /// Overlap: how the other pair is exposed; none: as the station's.
    std::optional<psychrometry::Exposure> exposure;
    std::string decision; ///< the person's, at the end: how the records are joined
    std::string note;
    bool withdrawn = false;
    bool operator==(const SideBySide&) const = default;
};

/// One reading of the other instrument. Of the station's own the register knows, where a reading was made
/// within five minutes; else its pair can stand here.
struct BesideReading {
    Uuid id;
    Uuid comparison; ///< the SideBySide it belongs to
    Instant instant{};
    std::optional<units::Decimal> humidity;            ///< % RH the other instrument showed
    std::optional<units::ReadTemperature> temperature; ///< air temperature it showed
    std::optional<units::ReadTemperature> otherDry;    ///< where it is a psychrometer
    std::optional<units::ReadTemperature> otherWet;
    psychrometry::WickState otherWick = psychrometry::WickState::NotGiven;
    std::optional<units::ReadTemperature> ownDry; ///< the station's, where the register has no reading
    std::optional<units::ReadTemperature> ownWet;
    psychrometry::WickState ownWick = psychrometry::WickState::NotGiven;
    std::optional<units::Decimal> pressure; ///< hPa at the station
    std::optional<int> windBeaufort;
    std::string note;
    bool withdrawn = false;
    bool operator==(const BesideReading&) const = default;
};

} // namespace wickbook::record
