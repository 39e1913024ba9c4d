// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/digit_slips.h"

#include "core/checks/slip_chances.h"

#include <algorithm>
#include <cstdlib>
#include <optional>
#include <set>
#include <string>

namespace wickbook::checks {

namespace {

using units::Decimal;

/// Half of a chance for either bulb.
constexpr double perBulb(double chance) {
    return chance / 2;
}

struct Digits {
    std::string text; ///< of the mantissa, at least one digit before the point
    bool negative;
};

Digits digitsOf(const Decimal& value) {
    std::string text = std::to_string(std::abs(value.mantissa));
    const auto fewest = static_cast<std::size_t>(value.decimals) + 1;
    if (text.size() < fewest) {
        text.insert(0, fewest - text.size(), '0');
    }
    return {text, value.mantissa < 0};
}

std::optional<Decimal> fromDigits(const std::string& text, int decimals, bool negative) {
    if (text.empty() || text.size() > 9 || decimals < 0) {
        return std::nullopt;
    }
    const std::int64_t mantissa = std::stoll(text);
    return Decimal{negative ? -mantissa : mantissa, decimals};
}

/// The same value with no more decimals than the scale is read to; none where that loses a digit.
std::optional<Decimal> onScale(Decimal value, int stepDecimals) {
    while (value.decimals > stepDecimals) {
        if (value.mantissa % 10 != 0) {
            return std::nullopt;
        }
        value.mantissa /= 10;
        --value.decimals;
    }
    return value;
}

class Collector {
public:
    Collector(const Decimal& written, int stepDecimals) : written_(written), stepDecimals_(stepDecimals) {}

    void add(std::string_view kind, std::optional<Decimal> truth, double chance, int group = 0) {
        if (!truth) {
            return;
        }
        if (const auto scaled = onScale(*truth, stepDecimals_);
            scaled && scaled->toDouble() != written_.toDouble()) {
            slips_.push_back({kind, *scaled, chance, group});
        }
    }
    std::vector<DigitSlip> take() { return std::move(slips_); }

private:
    Decimal written_;
    int stepDecimals_;
    std::vector<DigitSlip> slips_;
};

std::int64_t powerOfTen(int exponent) {
    std::int64_t power = 1;
    for (int i = 0; i < exponent; ++i) {
        power *= 10;
    }
    return power;
}

/// All results of exchanging two neighbouring digits.
std::set<std::string> exchanges(const std::string& digits) {
    std::set<std::string> results;
    for (std::size_t i = 0; i + 1 < digits.size(); ++i) {
        std::string exchanged = digits;
        std::swap(exchanged[i], exchanged[i + 1]);
        if (exchanged != digits) {
            results.insert(exchanged);
        }
    }
    return results;
}

void addExchanged(const Decimal& written, const Digits& digits, Collector& collector) {
    for (const std::string& truth : exchanges(digits.text)) {
        const auto ways = static_cast<double>(std::max<std::size_t>(exchanges(truth).size(), 1));
        collector.add("digits-exchanged", fromDigits(truth, written.decimals, digits.negative),
                      perBulb(chance::kDigitsExchanged) / ways);
    }
}

/// A digit too many was written: take each out in turn. One equal to its neighbour was doubled.
void addTooMany(const Decimal& written, const Digits& digits, Collector& collector) {
    const std::size_t size = digits.text.size();
    std::set<std::string> seen;
    for (std::size_t i = 0; i < size && size > 1; ++i) {
        std::string truth = digits.text;
        truth.erase(i, 1);
        if (!seen.insert(truth).second) {
            continue;
        }
        const bool doubled = (i > 0 && digits.text[i - 1] == digits.text[i]) ||
                             (i + 1 < size && digits.text[i + 1] == digits.text[i]);
        // Which place the digit was doubled in is one of size − 1; a stray one may be any of ten in size
        // places.
        const auto places = static_cast<double>(size);
        const double chance = doubled ? perBulb(chance::kDigitDoubled) / (places - 1)
                                      : perBulb(chance::kDigitExtra) / (places * 10);
        collector.add(doubled ? "digit-doubled" : "digit-extra",
                      fromDigits(truth, written.decimals, digits.negative), chance);
    }
}

/// A digit was left out: put each back in turn, into each place. The point stays where it was written from
/// the right, as a person does who drops a digit before it.
void addDropped(const Decimal& written, const Digits& digits, Collector& collector) {
    constexpr std::size_t kMostDigits = 2; // three digits are a whole reading
    const bool leadingZero = digits.text.size() > 1 && digits.text.front() == '0';
    const std::string text = leadingZero ? digits.text.substr(1) : digits.text;
    if (text.size() > kMostDigits) {
        return;
    }
    std::set<std::string> seen;
    for (std::size_t place = 0; place <= text.size(); ++place) {
        for (char digit = '0'; digit <= '9'; ++digit) {
            std::string truth = text;
            truth.insert(place, 1, digit);
            if ((place == 0 && digit == '0') || !seen.insert(truth).second) {
                continue;
            }
            // The first place settles the tens, each its own; of the others only the place is known.
            const int group = place == 0 ? digit - '0' : 100 + static_cast<int>(place);
            collector.add("digit-dropped", fromDigits(truth, written.decimals, digits.negative),
                          perBulb(chance::kDigitDropped) / static_cast<double>(truth.size()), group);
        }
    }
}

void addDecimalPoint(const Decimal& written, int stepDecimals, Collector& collector) {
    constexpr double kEitherWay = 0.5;
    const double chance = perBulb(chance::kDecimalPoint) * kEitherWay;
    // Lost or one place too far right: 224 for 22.4.
    collector.add("decimal-point", Decimal{written.mantissa, written.decimals + 1}, chance);
    // One place too far left: 2.24 for 22.4, digits and all; or 2.2 for 22.4, the last one gone.
    if (written.decimals > stepDecimals) {
        collector.add("decimal-point", Decimal{written.mantissa, written.decimals - 1}, chance, 1);
    } else if (written.decimals == stepDecimals && stepDecimals > 0 &&
               std::abs(written.mantissa) < 6 * powerOfTen(stepDecimals)) {
        for (int lost = -5; lost < 5; ++lost) {
            collector.add("decimal-point", Decimal{written.mantissa * 10 + lost, written.decimals},
                          chance / 10, 2);
        }
    }
}

/// The point taken for a one: 718.0 for 7.8. Only in whole numbers too large for a reading.
void addPointAsOne(const Decimal& written, const Digits& digits, Collector& collector) {
    constexpr double kSeldom = 0.2;
    const auto zeros = static_cast<std::size_t>(written.decimals);
    if (digits.text.size() < zeros + 3 ||
        digits.text.find_first_not_of('0', digits.text.size() - zeros) != std::string::npos) {
        return;
    }
    std::string whole = digits.text.substr(0, digits.text.size() - zeros);
    if (whole[whole.size() - 2] != '1') {
        return;
    }
    whole.erase(whole.size() - 2, 1);
    collector.add("decimal-point", fromDigits(whole, 1, digits.negative),
                  perBulb(chance::kDecimalPoint) * kSeldom, 3);
}

} // namespace

std::vector<DigitSlip> digitSlips(const Decimal& written, int stepDecimals) {
    Collector collector{written, stepDecimals};
    const Digits digits = digitsOf(written);
    const std::int64_t unit = powerOfTen(written.decimals);
    const auto shifted = [&](std::int64_t degrees) {
        return Decimal{written.mantissa + degrees * unit, written.decimals};
    };
    collector.add("ten-low", shifted(10), perBulb(chance::kTen) / 2);
    collector.add("ten-high", shifted(-10), perBulb(chance::kTen) / 2);
    collector.add("five-low", shifted(5), perBulb(chance::kFive) / 2);
    collector.add("five-high", shifted(-5), perBulb(chance::kFive) / 2);
    collector.add("sign", Decimal{-written.mantissa, written.decimals}, perBulb(chance::kSign));
    addDecimalPoint(written, stepDecimals, collector);
    addExchanged(written, digits, collector);
    addPointAsOne(written, digits, collector);
    addTooMany(written, digits, collector);
    addDropped(written, digits, collector);
    // −3.4 read as −4.6: from the mark below, the tenths counted towards zero's far side.
    if (written.mantissa < 0 && written.decimals == 1 && written.mantissa % 10 != 0) {
        const std::int64_t whole = -written.mantissa / 10;
        const std::int64_t tenths = -written.mantissa % 10;
        if (whole > 0) {
            collector.add("tenths-downwards", Decimal{-(whole * 10 - tenths), 1},
                          perBulb(chance::kTenthsDownwards));
        }
    }
    return collector.take();
}

} // namespace wickbook::checks
