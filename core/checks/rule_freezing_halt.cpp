// SPDX-License-Identifier: GPL-3.0-or-later
// freezing-halt: while the water in the wick freezes, or old ice in it melts, the wet bulb stands at 0.0 and
// is in equilibrium with nothing. Suspected where the wet bulb stands within one scale step of 0.0, the air
// is cold enough for a wick to hold ice (dry bulb up to e_i(0) f / (A_i p), computed for the station's
// pressure and coefficient), and either the dry bulb is below 0, or the last readings had frost, or the pair
// gives more than 100 %; a thaw likewise: the bulb stuck while the air warms. Soft. Arguments: phase
// "freezing" / "thawing"; wet °C; dry °C; because "dry-below-zero" / "frost" / "over-saturation" / "warming".
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

#include <cmath>

namespace wickbook::checks::rules {

namespace {

bool standsAtZero(double wet, double step) {
    return std::abs(wet) <= step + kBinaryFraction;
}

bool coldEnough(const psychrometry::PairInput& input) {
    const auto warmest = psychrometry::warmestDryBulbForIce(input.pressure, input.coefficient);
    return warmest && input.dry <= *warmest;
}

void add(const psychrometry::PairInput& input, std::string_view phase, std::string_view because,
         Findings& findings) {
    findings.push_back({"freezing-halt",
                        Severity::Soft,
                        Root::FrozenWick,
                        {{"phase", std::string{phase}},
                         {"wet", input.wet.celsius()},
                         {"dry", input.dry.celsius()},
                         {"because", std::string{because}}},
                        {}});
}

bool hadFrost(const record::DerivedReading& neighbour) {
    const auto dry = dryCelsius(neighbour);
    const auto wet = wetCelsius(neighbour);
    return neighbour.values().wick == record::WickState::Ice || (dry && *dry < 0) ||
           (wet && *wet < -kBinaryFraction) ||
           hasAnyWeather(neighbour,
                         {record::Weather::HoarFrost, record::Weather::Rime, record::Weather::Glaze});
}

} // namespace

void freezingHaltPair(const PairView& pair, Findings& findings) {
    if (!standsAtZero(pair.input.wet.celsius(), pair.input.resolution.kelvins()) || !coldEnough(pair.input)) {
        return;
    }
    if (pair.input.dry.celsius() < -kBinaryFraction) {
        add(pair.input, "freezing", "dry-below-zero", findings);
    } else if (pair.input.wet.celsius() > pair.input.dry.celsius() + kBinaryFraction) {
        add(pair.input, "freezing", "over-saturation", findings);
    }
}

void freezingHalt(const ReadingContext& context, Findings& findings) {
    const auto& reading = context.reading;
    if (!reading.derivation) {
        return;
    }
    const psychrometry::PairInput& input = reading.input;
    const double step = input.resolution.kelvins();
    if (!standsAtZero(input.wet.celsius(), step) || !coldEnough(input)) {
        return;
    }
    const double hours = context.limits.value("freezing-halt.hours");
    const double warming = context.limits.value("freezing-halt.warming");
    const record::DerivedReading* last = nullptr;
    bool frost = false;
    for (const auto& neighbour : context.before) {
        const double gap = hoursBetween(neighbour, reading);
        if (gap < 0 || gap > hours) {
            continue;
        }
        frost = frost || hadFrost(neighbour);
        last = &neighbour;
    }
    // The bulb stood at 0.0 or held ice before, and the air has warmed above it: old ice is melting.
    if (last != nullptr && input.dry.celsius() > 0) {
        const auto wet = wetCelsius(*last);
        const auto dry = dryCelsius(*last);
        const bool wasFrozen =
            last->values().wick == record::WickState::Ice || (wet && standsAtZero(*wet, step));
        if (wasFrozen && dry && input.dry.celsius() - *dry >= warming) {
            add(input, "thawing", "warming", findings);
            return;
        }
    }
    const std::size_t before = findings.size();
    freezingHaltPair({input, *reading.derivation, context.limits}, findings);
    if (findings.size() == before && frost) {
        add(input, "freezing", "frost", findings);
    }
}

} // namespace wickbook::checks::rules
