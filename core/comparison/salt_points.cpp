// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/salt_points.h"

#include <algorithm>
#include <cmath>

namespace wickbook::comparison {

const std::array<SaltPoint, record::kSalts>& saltPoints() {
    static constexpr std::array<SaltPoint, record::kSalts> kPoints{{
        {record::Salt::LithiumChloride, 11, true},
        {record::Salt::MagnesiumChloride, 33, false},
        {record::Salt::MagnesiumNitrate, 53, false},
        {record::Salt::SodiumChloride, 75, false},
        {record::Salt::PotassiumChloride, 84, false},
        {record::Salt::PotassiumSulphate, 97, false},
    }};
    return kPoints;
}

std::size_t SaltVerdict::off() const {
    return static_cast<std::size_t>(
        std::ranges::count_if(points, [](const SaltResult& point) { return !point.within; }));
}

SaltVerdict judgeSalts(const record::SaltCheck& check) {
    SaltVerdict verdict;
    if (check.temperature) {
        const double celsius = check.temperature->toDouble();
        verdict.temperatureFits = kLowestSaltTemperature <= celsius && celsius <= kHighestSaltTemperature;
    }
    for (const record::SaltReading& reading : check.readings) {
        const double published = saltPoints().at(static_cast<std::size_t>(reading.salt)).humidity;
        const double off = reading.humidity.toDouble() - published;
        verdict.points.push_back({reading, published, off, std::abs(off) <= kSaltTolerance + 1e-9});
    }
    std::ranges::stable_sort(verdict.points, {}, &SaltResult::published);
    if (!verdict.points.empty()) {
        verdict.span = verdict.points.back().published - verdict.points.front().published;
    }
    return verdict;
}

} // namespace wickbook::comparison
