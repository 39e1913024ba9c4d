// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/digit_preference.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace wickbook::checks {

std::optional<Finding> digitPreference(std::span<const record::DerivedReading> series, Bulb bulb,
                                       const Limits& limits) {
    std::array<double, 10> counts{};
    double total = 0;
    for (const auto& reading : series) {
        const auto& values = reading.values();
        const auto& value = (bulb == Bulb::Dry ? values.dry : values.wet).value;
        if (values.withdrawn || values.origin == record::Origin::Missing ||
            values.origin == record::Origin::Estimated || !value || value->value.decimals != 1 ||
            value->unit != units::TemperatureUnit::Celsius) {
            continue;
        }
        counts.at(static_cast<std::size_t>(std::abs(value->value.mantissa) % 10)) += 1;
        total += 1;
    }
    if (total < limits.value("digit-preference.fewest")) {
        return std::nullopt;
    }
    const double expected = total / 10;
    double chiSquare = 0;
    for (const double count : counts) {
        chiSquare += (count - expected) * (count - expected) / expected;
    }
    if (chiSquare <= limits.value("digit-preference.chi-square")) {
        return std::nullopt;
    }
    const auto most = std::max_element(counts.begin(), counts.end());
    return Finding{"digit-preference",
                   Severity::Note,
                   Root::None,
                   {{"bulb", std::string{bulb == Bulb::Dry ? "dry" : "wet"}},
                    {"count", total},
                    {"chi-square", chiSquare},
                    {"digit", static_cast<double>(most - counts.begin())},
                    {"share", 100 * *most / total}},
                   {}};
}

} // namespace wickbook::checks
