// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/slip_candidates.h"

#include "core/checks/digit_slips.h"
#include "core/checks/slip_chances.h"

#include <optional>

namespace wickbook::checks {

namespace {

using record::WickState;
using units::Decimal;
using units::ReadTemperature;
using units::TemperatureUnit;

/// Decimals of what is read on this scale: none on whole degrees, else one. What is written says more than
/// the step where someone writes whole numbers on a tenths scale.
int decimalsOf(const record::UsedBulb& bulb, TemperatureUnit unit) {
    const double step =
        unit == TemperatureUnit::Celsius ? bulb.step.kelvins() : bulb.step.fahrenheitDegrees();
    return step > 0.99 ? 0 : step < 0.099 ? 2 : 1;
}

class Builder {
public:
    explicit Builder(const record::DerivedReading& reading)
        : dry_(*reading.values().dry.value)
        , wet_(*reading.values().wet.value)
        , wick_(reading.values().wick) {}

    void add(std::string code, const ReadTemperature& dry, const ReadTemperature& wet, double chance,
             int group = 0, std::optional<WickState> wick = {}) {
        candidates_.push_back({std::move(code), dry, wet, wick.value_or(wickFor(wet)), chance, group});
    }
    std::vector<SlipCandidate> take() { return std::move(candidates_); }

private:
    /// A wet bulb that turns out to stand well above zero was water, whatever was ticked.
    [[nodiscard]] WickState wickFor(const ReadTemperature& wet) const {
        constexpr double kWellAbove = 1.0;
        return wet.temperature().celsius() > kWellAbove ? WickState::NotGiven : wick_;
    }
    ReadTemperature dry_;
    ReadTemperature wet_;
    WickState wick_;
    std::vector<SlipCandidate> candidates_;
};

ReadTemperature plus(const ReadTemperature& reading, std::int64_t degrees) {
    std::int64_t unit = 1;
    for (int i = 0; i < reading.value.decimals; ++i) {
        unit *= 10;
    }
    return {Decimal{reading.value.mantissa + degrees * unit, reading.value.decimals}, reading.unit};
}

ReadTemperature negated(const ReadTemperature& reading) {
    return {Decimal{-reading.value.mantissa, reading.value.decimals}, reading.unit};
}

/// One place to the left; none where a digit would be lost below the scale.
std::optional<ReadTemperature> tenth(const ReadTemperature& reading, int decimals) {
    Decimal value{reading.value.mantissa, reading.value.decimals + 1};
    while (value.decimals > decimals) {
        if (value.mantissa % 10 != 0) {
            return std::nullopt;
        }
        value.mantissa /= 10;
        --value.decimals;
    }
    return ReadTemperature{value, reading.unit};
}

} // namespace

std::vector<SlipCandidate> slipCandidates(const record::DerivedReading& reading) {
    const auto& values = reading.values();
    const ReadTemperature dry = *values.dry.value;
    const ReadTemperature wet = *values.wet.value;
    const int dryDecimals = decimalsOf(reading.dry, dry.unit);
    const int wetDecimals = decimalsOf(reading.wet, wet.unit);
    Builder builder{reading};

    if (dry.value.toDouble() != wet.value.toDouble()) {
        builder.add("swapped", wet, dry, chance::kSwapped);
    }
    for (const DigitSlip& slip : digitSlips(dry.value, dryDecimals)) {
        builder.add(std::string{"dry-"}.append(slip.kind), {slip.truth, dry.unit}, wet, slip.chance,
                    slip.group);
    }
    for (const DigitSlip& slip : digitSlips(wet.value, wetDecimals)) {
        builder.add(std::string{"wet-"}.append(slip.kind), dry, {slip.truth, wet.unit}, slip.chance,
                    slip.group);
    }
    builder.add("both-ten-high", plus(dry, -10), plus(wet, -10), chance::kBothTen / 2);
    builder.add("both-ten-low", plus(dry, 10), plus(wet, 10), chance::kBothTen / 2);
    if (dry.value.mantissa != 0 && wet.value.mantissa != 0) {
        builder.add("both-sign", negated(dry), negated(wet), chance::kBothSign);
    }
    const auto dryTenth = tenth(dry, dryDecimals);
    const auto wetTenth = tenth(wet, wetDecimals);
    if (dryTenth && wetTenth) {
        builder.add("both-decimal-point", *dryTenth, *wetTenth, chance::kBothDecimalPoint);
    }
    const bool celsius = dry.unit == TemperatureUnit::Celsius;
    const auto other = celsius ? TemperatureUnit::Fahrenheit : TemperatureUnit::Celsius;
    builder.add(celsius ? "fahrenheit-as-celsius" : "celsius-as-fahrenheit", {dry.value, other},
                {wet.value, other}, chance::kWrongUnit);
    if (reading.wet.temperature &&
        reading.wet.temperature->celsius() <= reading.wet.step.kelvins() / 2 + 1e-9) {
        if (values.wick == WickState::Water) {
            builder.add("ice-taken-for-water", dry, wet, chance::kWickState, 0, WickState::Ice);
        } else if (values.wick == WickState::Ice) {
            builder.add("water-taken-for-ice", dry, wet, chance::kWickState, 0, WickState::Water);
        }
    }
    return builder.take();
}

} // namespace wickbook::checks
