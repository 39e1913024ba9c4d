// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/digit_preference.h"

#include <algorithm>
#include <cstdlib>

namespace wickbook::checks {

void FinalDigits::add(const record::Observation& values, Bulb bulb) {
    const auto& value = (bulb == Bulb::Dry ? values.dry : values.wet).value;
    if (values.withdrawn || values.origin == record::Origin::Missing ||
        values.origin == record::Origin::Estimated || !value || value->value.decimals != 1 ||
        value->unit != units::TemperatureUnit::Celsius) {
        return;
    }
    ++counts_.at(static_cast<std::size_t>(std::abs(value->value.mantissa) % 10));
    ++total_;
}

double FinalDigits::shareOf(int digit) const {
    return total_ == 0 ? 0
                       : static_cast<double>(counts_.at(static_cast<std::size_t>(digit))) /
                             static_cast<double>(total_);
}

double FinalDigits::shareOfRound() const {
    return shareOf(0) + shareOf(5);
}

int FinalDigits::mostFrequent() const {
    return static_cast<int>(std::max_element(counts_.begin(), counts_.end()) - counts_.begin());
}

double FinalDigits::chiSquare() const {
    const double expected = static_cast<double>(total_) / 10;
    double sum = 0;
    for (const std::int64_t count : counts_) {
        const double off = static_cast<double>(count) - expected;
        sum += total_ == 0 ? 0 : off * off / expected;
    }
    return sum;
}

std::optional<Finding> digitPreference(std::span<const record::DerivedReading> series, Bulb bulb,
                                       const Limits& limits) {
    FinalDigits digits;
    for (const auto& reading : series) {
        digits.add(reading.values(), bulb);
    }
    return digitPreference(digits, bulb, limits);
}

std::optional<Finding> digitPreference(const FinalDigits& digits, Bulb bulb, const Limits& limits) {
    const auto total = static_cast<double>(digits.total());
    const double chiSquare = digits.chiSquare();
    if (total < limits.value("digit-preference.fewest") ||
        chiSquare <= limits.value("digit-preference.chi-square")) {
        return std::nullopt;
    }
    return Finding{"digit-preference",
                   Severity::Note,
                   Root::None,
                   {{"bulb", std::string{bulb == Bulb::Dry ? "dry" : "wet"}},
                    {"count", total},
                    {"chi-square", chiSquare},
                    {"digit", static_cast<double>(digits.mostFrequent())},
                    {"share", 100 * digits.shareOf(digits.mostFrequent())}},
                   {}};
}

} // namespace wickbook::checks
