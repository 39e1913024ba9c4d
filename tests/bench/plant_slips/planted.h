// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"

#include <cstdlib>
#include <random>
#include <string>
#include <vector>

namespace wickbook::bench {

/// A sound reading with one slip in it.
struct Planted {
    std::string kind;  ///< line of the table: "ten", "five", "swap" …
    std::string cause; ///< the code that tells of it; several bulbs and ways share a kind
    record::Observation observation;
    bool pairIsKnown = true; ///< the true pair can be told; else only the cause's code counts
};

namespace detail {

using record::Observation;
using units::Decimal;

/// The tenths as digits, no sign: 9.4 gives "94", 0.4 "04".
inline std::string digitsOf(const Decimal& value) {
    std::string text = std::to_string(std::abs(value.mantissa));
    return text.size() < 2 ? "0" + text : text;
}

inline Decimal fromDigits(const std::string& digits, const Decimal& like) {
    const auto mantissa = std::stoll(digits);
    return {like.mantissa < 0 ? -mantissa : mantissa, like.decimals};
}

class Planter {
public:
    explicit Planter(const Observation& sound) : sound_(sound) {}

    void dry(const std::string& kind, const std::string& cause, const Decimal& value,
             bool pairIsKnown = true) {
        Observation observation = sound_;
        observation.dry.value->value = value;
        add(kind, "dry-" + cause, std::move(observation), pairIsKnown);
    }
    void wet(const std::string& kind, const std::string& cause, const Decimal& value,
             bool pairIsKnown = true) {
        Observation observation = sound_;
        observation.wet.value->value = value;
        add(kind, "wet-" + cause, std::move(observation), pairIsKnown);
    }
    void add(const std::string& kind, const std::string& cause, Observation observation, bool pairIsKnown) {
        if (observation.dry.value->value.toDouble() != sound_.dry.value->value.toDouble() ||
            observation.wet.value->value.toDouble() != sound_.wet.value->value.toDouble()) {
            planted_.push_back({kind, cause, std::move(observation), pairIsKnown});
        }
    }
    std::vector<Planted> take() { return std::move(planted_); }

private:
    const Observation& sound_;
    std::vector<Planted> planted_;
};

inline Decimal plus(const Decimal& value, std::int64_t tenths) {
    return {value.mantissa + tenths, value.decimals};
}

/// Two neighbouring digits exchanged, counted from the tenths: 0 exchanges tenths and units, 1 units and
/// tens. The value itself where there are no such two.
inline Decimal exchanged(const Decimal& value, std::size_t place) {
    std::string digits = digitsOf(value);
    if (place + 1 >= digits.size()) {
        return value;
    }
    std::swap(digits[digits.size() - 1 - place], digits[digits.size() - 2 - place]);
    return fromDigits(digits, value);
}

inline Decimal dropped(const Decimal& value, std::mt19937& random) {
    std::string digits = digitsOf(value);
    digits.erase(random() % digits.size(), 1);
    return fromDigits(digits, value);
}

inline Decimal doubled(const Decimal& value, std::mt19937& random) {
    std::string digits = digitsOf(value);
    const std::size_t place = random() % digits.size();
    digits.insert(place, 1, digits[place]);
    return fromDigits(digits, value);
}

/// As a °F scale reads it, taken down as °C.
inline Decimal fahrenheit(const Decimal& value) {
    return units::roundedDecimal(value.toDouble() * 1.8 + 32, 1);
}

} // namespace detail

/// Every kind of slip once, where it changes this reading. previous: the reading before, for a copied line.
inline std::vector<Planted> plantAll(const record::Observation& sound, const record::Observation* previous,
                                     std::mt19937& random) {
    using namespace detail;
    Planter planter{sound};
    const Decimal dry = sound.dry.value->value;
    const Decimal wet = sound.wet.value->value;

    Observation swapped = sound;
    std::swap(swapped.dry.value, swapped.wet.value);
    // Up to 0.2 K a swapped pair is reading error and taken as saturation, with a note: a line of its own.
    constexpr double kReadingError = 0.2001;
    planter.add(dry.toDouble() - wet.toDouble() > kReadingError ? "swapped" : "swapped, 0.1-0.2 K", "swapped",
                swapped, true);
    for (const auto& [kind, tenths] : {std::pair{"ten", 100}, std::pair{"five", 50}}) {
        planter.dry(kind, std::string{kind} + "-high", plus(dry, tenths));
        planter.dry(kind, std::string{kind} + "-low", plus(dry, -tenths));
        planter.wet(kind, std::string{kind} + "-high", plus(wet, tenths));
        planter.wet(kind, std::string{kind} + "-low", plus(wet, -tenths));
    }
    planter.dry("sign", "sign", Decimal{-dry.mantissa, dry.decimals});
    planter.wet("sign", "sign", Decimal{-wet.mantissa, wet.decimals});
    planter.dry("decimal-point", "decimal-point", Decimal{dry.mantissa, dry.decimals - 1});
    planter.wet("decimal-point", "decimal-point", Decimal{wet.mantissa, wet.decimals - 1});
    planter.dry("decimal-point", "decimal-point", Decimal{dry.mantissa, dry.decimals + 1});
    planter.wet("decimal-point", "decimal-point", Decimal{wet.mantissa, wet.decimals + 1});
    // Tens with units make nine degrees or more; units with tenths 0.9 to 8.1, mostly within the weather.
    for (const auto& [kind, place] : {std::pair{"exchanged, tens", 1}, std::pair{"exchanged, tenths", 0}}) {
        planter.dry(kind, "digits-exchanged", exchanged(dry, static_cast<std::size_t>(place)));
        planter.wet(kind, "digits-exchanged", exchanged(wet, static_cast<std::size_t>(place)));
    }
    planter.dry("digit-dropped", "digit-dropped", dropped(dry, random), false);
    planter.wet("digit-dropped", "digit-dropped", dropped(wet, random), false);
    planter.dry("digit-doubled", "digit-doubled", doubled(dry, random));
    planter.wet("digit-doubled", "digit-doubled", doubled(wet, random));
    Observation inFahrenheit = sound;
    inFahrenheit.dry.value->value = fahrenheit(dry);
    inFahrenheit.wet.value->value = fahrenheit(wet);
    planter.add("fahrenheit", "fahrenheit-as-celsius", inFahrenheit, true);
    if (previous != nullptr) {
        Observation copied = sound;
        copied.dry = previous->dry;
        copied.wet = previous->wet;
        planter.add("line-copied", "line-above-copied", copied, false);
    }
    Observation dryWick = sound;
    dryWick.wet.value->value = plus(dry, -static_cast<std::int64_t>(random() % 3));
    if (dryWick.wet.value->value.mantissa > wet.mantissa) {
        planter.add("dry-wick", "dry-wick", dryWick, false);
    }
    return planter.take();
}

} // namespace wickbook::bench
