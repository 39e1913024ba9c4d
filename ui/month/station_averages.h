// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/climate/station_average.h"
#include "ui/print/humidity_chart.h"
#include "ui/session/session.h"

#include <map>

namespace wickbook::ui {

/// The middle half of the station's own readings of a calendar month, taken from the other years, all
/// observing hours together. Only with five years or more, only from years at the same place with the same
/// exposure (or joined to it after an overlap), and only for spans up to a few months: a longer one would
/// read the book many times over to say little. Each month is worked out once and kept until forget().
class StationAverages {
public:
    explicit StationAverages(const Session& session) : session_(session) {}

    [[nodiscard]] ChartAverage of(Quantity quantity, record::StationDate from, record::StationDate to);
    void forget() { known_.clear(); }

private:
    [[nodiscard]] std::optional<climate::StationAverage> average(date::year_month month) const;
    [[nodiscard]] record::Instant startOf(record::StationDate day) const;

    const Session& session_;
    std::map<date::year_month, std::optional<climate::StationAverage>> known_;
};

} // namespace wickbook::ui
