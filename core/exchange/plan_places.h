// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"

#include <cstdint>
#include <unordered_set>

namespace wickbook::exchange {

/// The hours and moments that the lines of one plan have taken so far.
class PlanPlaces {
public:
    /// Takes the place of these values; false where an earlier line has it.
    bool take(const record::Observation& values) {
        return values.hour ? hours_.insert(minuteOf(*values.hour)).second
                           : extras_.insert(values.instant.time_since_epoch().count()).second;
    }

private:
    static std::int64_t minuteOf(const record::ObservingHour& hour) {
        return std::int64_t{hour.date.time_since_epoch().count()} * 24 * 60 + hour.hour.count();
    }
    // Plain numbers: a file may have a million lines.
    std::unordered_set<std::int64_t> hours_;
    std::unordered_set<std::int64_t> extras_;
};

/// The refusal of a second line for one place; file, line and text are the caller's to fill.
inline RejectedLine placeTaken(const record::Observation& values, ImportField field) {
    RejectedLine line{};
    line.reason = RejectReason::SameHourTwice;
    line.field = fieldName(field);
    line.value = values.hour ? record::dateText(values.hour->date) + " " + record::hourText(values.hour->hour)
                             : record::instantText(values.instant);
    line.detail = values.hour ? "" : "same-moment";
    return line;
}

} // namespace wickbook::exchange
