// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/repeats_settle.h"

#include "core/units/binary_fraction.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace wickbook::checks {

using units::kBinaryFraction;

namespace {

struct Whirl {
    std::size_t row = 0;
    double wet = 0; ///< °C
    bool settled = false;
};

} // namespace

units::TemperatureDifference settledWithin(units::TemperatureDifference wetStep) {
    return units::TemperatureDifference::fromKelvins(std::max(kSettledWithinKelvins, wetStep.kelvins()));
}

RepeatsVerdict settle(std::span<const record::Repeat> rows, units::TemperatureDifference wetStep) {
    const double within = settledWithin(wetStep).kelvins() + kBinaryFraction;
    std::vector<Whirl> whirls;
    for (std::size_t row = 0; row < rows.size(); ++row) {
        if (rows[row].wet) {
            whirls.push_back({row, rows[row].wet->temperature().celsius(), false});
        }
    }
    RepeatsVerdict verdict;
    verdict.whirls = whirls.size();
    if (whirls.empty()) {
        return verdict;
    }
    for (std::size_t i = 1; i < whirls.size(); ++i) {
        if (std::abs(whirls[i].wet - whirls[i - 1].wet) <= within) {
            whirls[i - 1].settled = true;
            whirls[i].settled = true;
            verdict.settled = true;
        }
    }
    const Whirl* lowest = nullptr;
    for (const Whirl& whirl : whirls) {
        if (verdict.settled && !whirl.settled) {
            continue;
        }
        if (lowest == nullptr || whirl.wet <= lowest->wet + kBinaryFraction) {
            lowest = &whirl;
        }
    }
    verdict.row = lowest->row;
    // Step by step within the tolerance the wick can dry unnoticed: so against the lowest settled one too.
    const double last = whirls.back().wet;
    verdict.rising = (whirls.size() > 1 && last > whirls[whirls.size() - 2].wet + within) ||
                     (verdict.settled && last > lowest->wet + within);
    return verdict;
}

} // namespace wickbook::checks
