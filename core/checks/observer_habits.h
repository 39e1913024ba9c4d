// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/digit_preference.h"
#include "core/record/station_record.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

/// How each hand reads, so that a register can be told from its next one: after a holiday deputy, or a new
/// observer, what changes may be the hand and not the air. Facts side by side, no marks for anybody.

namespace wickbook::checks {

/// One set of initials, as written.
struct ObserverHabits {
    std::string initials; ///< empty: none were given
    record::Instant first{};
    record::Instant last{};
    int readings = 0;         ///< read, or corrected since; neither estimates nor missing hours
    int estimated = 0;        ///< estimates under these initials
    int doubtful = 0;         ///< of the readings, judged so
    int erroneous = 0;        ///< of the readings, judged so
    int asDeputy = 0;         ///< readings on days on which a planned absence names them as deputy
    bool namedDeputy = false; ///< a planned absence names them at all
    int timed = 0;            ///< readings at an hour, made at another moment than the hour itself
    std::optional<double> meanMinutesOff;  ///< min, of all readings at an hour, early and late alike
    std::optional<double> meanMinutesLate; ///< min, early counted against late
    FinalDigits dryDigits;
    FinalDigits wetDigits;
};

/// Counts reading by reading, in any order, in memory for the initials alone. Initials are told apart as
/// written, but for blanks round them: whether "ew" is EW is for a person to say.
class ObserverCount {
public:
    /// A copy of the station stays here: its hours and absences are what readings are held against.
    explicit ObserverCount(record::StationRecord station) : station_(std::move(station)) {}

    void add(const record::Observation& values);
    /// In the order of their first reading. Those who wrote down missing hours only are not among them.
    [[nodiscard]] std::vector<ObserverHabits> habits() const;

private:
    struct Counted {
        ObserverHabits habits;
        double minutesOff = 0; ///< sums
        double minutesLate = 0;
        int atHours = 0;
    };
    record::StationRecord station_;
    std::map<std::string, Counted> counted_;
};

} // namespace wickbook::checks
