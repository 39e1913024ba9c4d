// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// A finding is what the checks have to say of a reading, as values: a code, how grave it is, and the numbers
/// that the sentence needs. Words are made in ui/text. Findings mark; they never delete or alter.

namespace wickbook::checks {

enum class Severity { Note, Soft, Doubtful, Erroneous, Impossible };
std::string_view severityName(Severity severity);

/// One root of trouble speaks once: findings with the same root are shown as one marginal note.
enum class Root { None, Scale, Pair, Wick, FrozenWick, Step, Persistence, Time, Season, Weather, Pressure };

/// A number or a word that the sentence needs, by name.
struct Argument {
    std::string name;
    std::variant<double, std::string> value;
};

/// A slip that would explain the reading, ranked by belief.
struct LikelyCause {
    std::string code;                 ///< "swapped", "dry-ten-high", …; "read-right" is never listed
    std::optional<double> dryCelsius; ///< the pair as it would have been, corrected °C
    std::optional<double> wetCelsius;
    record::WickState wick = record::WickState::NotGiven;
    std::optional<double> humidityPercent;
    std::optional<double> dewPointCelsius;
    double weight = 0; ///< share of belief among all explanations, "read right" included, 0…1
    /// What would stand in the register, as read (before corrections), for taking the cause as a correction.
    std::optional<units::ReadTemperature> dryRead;
    std::optional<units::ReadTemperature> wetRead;
};

struct Finding {
    std::string_view code; ///< as in the table of rules: "wet-above-dry"
    Severity severity = Severity::Note;
    Root root = Root::None;
    std::vector<Argument> arguments;
    std::vector<LikelyCause> causes;

    [[nodiscard]] std::optional<double> number(std::string_view name) const;
    [[nodiscard]] std::optional<std::string> word(std::string_view name) const;
};

/// Whether a finding alone sets a reading aside until judged.
inline bool setsAside(Severity severity) {
    return severity >= Severity::Doubtful;
}

/// Whether statistics leave the observation out: judged doubtful or erroneous, or not judged with a finding
/// of doubtful or worse, or an estimate, or missing. Judged sound: never.
bool leftOut(const record::Observation& observation, const std::vector<Finding>& findings);

} // namespace wickbook::checks
