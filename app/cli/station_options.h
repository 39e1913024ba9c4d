// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/option_list.h"
#include "app/cli/outcome.h"
#include "core/record/station.h"

#include <string>

namespace wickbook::cli {

/// Options that new and period share, as typed; empty where not given.
struct StationOptions {
    std::string hours, hourRule, elevation, latitude, longitude, zone, exposure;
    /// Only of period: the station's own coefficient and its mean pressure.
    std::string ownWater, ownIce, ownUncertainty, meanPressure;

    /// required: all but the rule must be given.
    void declare(OptionList& command, bool required);
    [[nodiscard]] bool anyGiven() const;
    /// What is named, as a change; the position is laid over the one in force where only one half is given.
    [[nodiscard]] Outcome<record::PeriodChange> change(const record::Position& inForce) const;
};

} // namespace wickbook::cli
