// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/number_text.h"

#include <fmt/format.h>

#include <array>
#include <charconv>

namespace wickbook::units {

std::string fixedText(double value, int decimals) {
    std::string text = fmt::format("{:.{}f}", value, decimals);
    if (text.starts_with('-') && text.find_first_not_of("-0.") == std::string::npos) {
        text.erase(0, 1);
    }
    return text;
}

std::string exactText(double value) {
    // The largest double in fixed notation has 309 digits before the mark.
    std::array<char, 400> buffer{};
    const auto [end, error] =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed);
    return error == std::errc{} ? std::string(buffer.data(), end) : fmt::format("{}", value);
}

std::string dataText(const std::optional<double>& value) {
    return value ? fixedText(*value, 6) : std::string{};
}

} // namespace wickbook::units
