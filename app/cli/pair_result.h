// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/output.h"
#include "core/checks/finding.h"
#include "core/psychrometry/derive.h"

#include <QLocale>

#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

/// What derive answers for one pair, and the one table of its columns: names and order are relied on by
/// others, in JSON and in CSV.

namespace wickbook::cli {

/// Where the pressure came from.
enum class PressureOrigin { Given, Elevation, Assumed };

/// What the options give for every pair, and a file's row may replace.
struct PairDefaults {
    std::optional<psychrometry::Exposure> exposure;
    std::optional<double> coefficient; ///< per kelvin
    psychrometry::WickState wick = psychrometry::WickState::NotGiven;
    std::optional<double> pressure; ///< hPa, as given
    std::optional<units::Pressure> fromElevation;
    double resolution = 0.1; ///< scale step, K
};

/// A pair as it was to be derived, with what came of it.
struct PairResult {
    psychrometry::PairInput input;
    PressureOrigin pressureOrigin = PressureOrigin::Assumed;
    std::optional<psychrometry::Exposure> exposure;
    std::optional<psychrometry::Derivation> derivation; ///< none where there was no pair to derive
    std::vector<checks::Finding> findings;
};

/// Sets pressure, coefficient, wick and scale step; the pair itself is set by the caller.
PairResult preparedResult(const PairDefaults& defaults);
/// Derives and adds what the checks say of the pair, and of an assumed pressure.
void deriveInto(PairResult& result);

/// A derived number, a number as given, a text, or nothing.
struct DerivedNumber {
    double value;
};
struct GivenNumber {
    double value;
};
using ResultCell = std::variant<std::monostate, DerivedNumber, GivenNumber, std::string>;

struct ResultColumn {
    std::string_view name;
    ResultCell (*cell)(const PairResult&);
};
/// All but the last, "findings", which each format writes in its own way.
std::span<const ResultColumn> resultColumns();
inline constexpr std::string_view kFindingsColumn = "findings";

std::string cellText(const ResultCell& cell);
void appendCellText(std::string& to, const ResultCell& cell);
JsonValue cellJson(const ResultCell& cell);
/// Codes joined by ';'.
std::string findingCodes(const std::vector<checks::Finding>& findings);
JsonValue resultJson(const PairResult& result);
std::vector<std::string> resultHeader();
std::vector<std::string> resultRow(const PairResult& result);

} // namespace wickbook::cli
