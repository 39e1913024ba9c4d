// SPDX-License-Identifier: GPL-3.0-or-later
// The bytes are a number as a person wrote it. What is taken must be what anybody else would read there: held
// against the C library's strtod on the text with the mark replaced, never against the parser itself.
#include "core/exchange/import_plan.h"
#include "core/units/decimal.h"
#include "core/units/number_text.h"
#include "tests/fuzz/stations.h"
#include "tests/fuzz/targets.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdlib>
#include <cstring>
#include <limits>

namespace wickbook::fuzz {

namespace {

using units::Decimal;
using units::DecimalMark;

constexpr std::int64_t kFirstMantissaTooLong = 1'000'000'000'000'000;

std::string replacedAll(std::string text, std::string_view what, std::string_view with) {
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + with.size())) {
        text.replace(at, what.size(), with);
    }
    return text;
}

/// What is left when the blanks of every kind are gone: a number that was taken holds none inside, so nothing
/// is lost by it.
std::string withoutAnyBlank(std::string text) {
    for (const std::string_view blank : {" ", "\t", "\r", "\n", "\u00A0", "\u202F"}) {
        text = replacedAll(std::move(text), blank, "");
    }
    return text;
}

bool hasBlankBetweenDigits(std::string_view text) {
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    const auto first = std::find_if(text.begin(), text.end(), isDigit);
    const auto last = std::find_if(text.rbegin(), text.rend(), isDigit).base();
    return first < last &&
           std::any_of(first, last, [&](char c) { return !isDigit(c) && c != '.' && c != ','; });
}

void checkTaken(std::string_view text, DecimalMark mark, const Decimal& number) {
    promise(number.decimals >= 0 && number.decimals <= 9, "decimals in their range", text);
    promise(std::abs(number.mantissa) < kFirstMantissaTooLong, "digits in their range", text);
    const auto points = std::count(text.begin(), text.end(), '.');
    const auto commas = std::count(text.begin(), text.end(), ',');
    promise(points + commas <= 1, "two marks are a group, never a number", text);
    promise(mark != DecimalMark::Point || commas == 0, "a comma is no mark here", text);
    promise(mark != DecimalMark::Comma || points == 0, "a point is no mark here", text);
    promise(!hasBlankBetweenDigits(text), "nothing stands between the digits of a number", text);

    std::string plain = withoutAnyBlank(std::string{text});
    plain = replacedAll(std::move(plain), "\u2212", "-");
    plain = replacedAll(std::move(plain), ",", ".");
    char* end = nullptr;
    const double other = std::strtod(plain.c_str(), &end);
    promise(end == plain.c_str() + plain.size(), "the C library reads the whole of it too", text);
    promise(plain.find_first_of("eExXnNiI") == std::string::npos, "no exponent, no word", text);
    promise(other == number.toDouble(), "the value is the one that is written", text);
    const auto dot = plain.find('.');
    promise(static_cast<std::size_t>(number.decimals) ==
                (dot == std::string::npos ? 0 : plain.size() - dot - 1),
            "as many decimals as are written", text);

    const std::string written = number.toText();
    for (const DecimalMark again : {DecimalMark::Point, DecimalMark::Either}) {
        promise(units::parseDecimal(written, again) == number, "as text it comes back the same", text);
    }
    const std::string comma = replacedAll(written, ".", ",");
    promise(units::parseDecimal(comma, DecimalMark::Comma) == number, "with a comma too", text);
    promise(units::parseDecimal(replacedAll(comma, "-", "\u2212"), DecimalMark::Either) == number,
            "with the minus sign too", text);
}

/// The same text in the cells of a row: a pressure in hPa can't be read a thousand times too small.
void checkCells(const std::string& text) {
    using exchange::ImportField;
    const auto values = exchange::observationFromFields({{ImportField::Time, "2025-03-01T09:00:00Z"},
                                                         {ImportField::Dry, "16.4"},
                                                         {ImportField::Pressure, text},
                                                         {ImportField::Wind, text}},
                                                        stationOfUtcHours(), {});
    if (!values) {
        promise(!values.error().field.empty() && !exchange::reasonName(values.error().reason).empty(),
                "a refusal names its column", text);
        return;
    }
    promise(!values->windBeaufort || (*values->windBeaufort >= 0 && *values->windBeaufort <= 12),
            "Beaufort has thirteen forces", text);
    if (values->pressure) {
        const double pressure = values->pressure->toDouble();
        promise(values->pressure->decimals != 3 || pressure < 0.3 || pressure > 1.1,
                "a group of thousands is no pressure", text);
    }
}

void checkDouble(std::string_view bytes) {
    if (bytes.size() < sizeof(double)) {
        return;
    }
    double value = 0;
    std::memcpy(&value, bytes.data(), sizeof value);
    if (!std::isfinite(value)) {
        return;
    }
    const std::string exact = units::exactText(value);
    promise(std::strtod(exact.c_str(), nullptr) == value, "the exact text reads back as the same double",
            exact);
    promise(exact.find('e') == std::string::npos, "no exponent", exact);
    if (std::abs(value) > 1e6) {
        return;
    }
    for (int decimals = 0; decimals <= 9; ++decimals) {
        const std::string fixed = units::fixedText(value, decimals);
        promise(fixed.find_first_of("123456789") != std::string::npos || fixed.front() != '-', "no -0.0",
                fixed);
        const Decimal rounded = units::roundedDecimal(value, decimals);
        // Half a step, and what a double of this size can't hold of it.
        const double slack = 2 * std::abs(value) * std::numeric_limits<double>::epsilon();
        promise(std::abs(rounded.toDouble() - value) <= 0.5000001 * std::pow(10.0, -decimals) + slack,
                "the nearest", exact);
    }
}

} // namespace

void runNumbers(std::string_view bytes) {
    const std::string text{bytes};
    const auto either = units::parseDecimal(text, DecimalMark::Either);
    const auto point = units::parseDecimal(text, DecimalMark::Point);
    const auto comma = units::parseDecimal(text, DecimalMark::Comma);
    if (either) {
        checkTaken(text, DecimalMark::Either, *either);
        promise(point == either || comma == either, "either mark is one of the two", text);
    }
    if (point) {
        checkTaken(text, DecimalMark::Point, *point);
        promise(either == point, "what one mark takes, either takes", text);
    }
    if (comma) {
        checkTaken(text, DecimalMark::Comma, *comma);
        promise(either == comma, "what one mark takes, either takes", text);
    }
    checkCells(text);
    checkDouble(bytes);
}

} // namespace wickbook::fuzz
