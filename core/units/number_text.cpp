// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/number_text.h"

#include <fmt/format.h>

#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>

namespace wickbook::units {

namespace {

constexpr std::array<double, 7> kScales{1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};

/// What a table is full of, written by whole numbers: a size under a million and up to six decimals, so that
/// size × 10^decimals is off by far less than kNearHalf. false: so near a half that only exact arithmetic can
/// tell which way to round, or outside; nothing is written then.
bool appendPlain(std::string& to, double value, int decimals) {
    constexpr double kLargest = 1e6;
    constexpr double kNearHalf = 1e-3;
    const double size = std::abs(value);
    if (!(size < kLargest) || decimals < 0 || decimals >= static_cast<int>(kScales.size())) {
        return false;
    }
    const double scaled = size * kScales.at(static_cast<std::size_t>(decimals));
    const auto below = static_cast<std::uint64_t>(scaled);
    const double rest = scaled - static_cast<double>(below);
    if (std::abs(rest - 0.5) < kNearHalf) {
        return false;
    }
    const std::uint64_t digits = below + (rest > 0.5 ? 1U : 0U);
    if (value < 0 && digits != 0) {
        to.push_back('-');
    }
    if (decimals == 0) {
        const fmt::format_int whole(digits);
        to.append(whole.data(), whole.size());
        return true;
    }
    const auto scale = static_cast<std::uint64_t>(kScales.at(static_cast<std::size_t>(decimals)));
    const fmt::format_int whole(digits / scale);
    // A one before the decimals keeps their zeros; the mark takes its place.
    const fmt::format_int part(digits % scale + scale);
    to.append(whole.data(), whole.size());
    const std::size_t mark = to.size();
    to.append(part.data(), part.size());
    to[mark] = '.';
    return true;
}

} // namespace

void appendFixed(std::string& to, double value, int decimals) {
    if (appendPlain(to, value, decimals)) {
        return;
    }
    const std::string text = fmt::format("{:.{}f}", value, decimals);
    const bool minusNothing = text.starts_with('-') && text.find_first_not_of("-0.") == std::string::npos;
    to.append(text, minusNothing ? 1 : 0);
}

std::string fixedText(double value, int decimals) {
    std::string text;
    appendFixed(text, value, decimals);
    return text;
}

void appendExact(std::string& to, double value) {
    // What people give has few decimals: where a whole number over a power of ten is this very double
    // (division is correctly rounded), its digits read back as it, and no fewer decimals would.
    constexpr double kLargest = 1e6;
    if (std::abs(value) < kLargest) {
        for (std::size_t decimals = 0; decimals < kScales.size(); ++decimals) {
            const double scaled = std::nearbyint(value * kScales.at(decimals));
            if (scaled / kScales.at(decimals) == value && (scaled != 0 || !std::signbit(value))) {
                appendFixed(to, value, static_cast<int>(decimals));
                return;
            }
        }
    }
    // The largest double in fixed notation has 309 digits before the mark.
    std::array<char, 400> buffer; // NOLINT(cppcoreguidelines-pro-type-member-init): written before it is read
    const auto [end, error] =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed);
    if (error == std::errc{}) {
        to.append(buffer.data(), end);
    } else {
        to += fmt::format("{}", value);
    }
}

std::string exactText(double value) {
    std::string text;
    appendExact(text, value);
    return text;
}

std::string dataText(const std::optional<double>& value) {
    return value ? fixedText(*value, kDataDecimals) : std::string{};
}

} // namespace wickbook::units
