// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/sef_line.h"

#include "core/exchange/cell_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

namespace wickbook::exchange {

namespace {

using units::Decimal;
using units::TemperatureUnit;

constexpr std::size_t kCells = 8; ///< the last, Meta, may be absent
constexpr std::array<std::string_view, kCells> kSefNames{"Year",   "Month",  "Day",   "Hour",
                                                         "Minute", "Period", "Value", "Meta"};

RejectedLine refused(RejectReason reason, std::size_t column, std::string_view value,
                     std::string detail = {}) {
    return {{}, 0, {}, reason, std::string(kSefNames.at(column)), std::string(value), std::move(detail)};
}

std::optional<int> wholeNumber(std::string_view text) {
    if (text.empty() || text.size() > 4 ||
        !std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; })) {
        return std::nullopt;
    }
    int number = 0;
    for (const char c : text) {
        number = number * 10 + (c - '0');
    }
    return number;
}

tl::expected<record::Instant, RejectedLine> instantOf(const std::vector<std::string_view>& cells) {
    std::array<int, 5> parts{};
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const auto text = trimmedCell(cells[i]);
        if (isMissingWord(text)) {
            return tl::unexpected(refused(RejectReason::NoTime, i, cells[i]));
        }
        const auto number = wholeNumber(text);
        if (!number) {
            return tl::unexpected(refused(RejectReason::BadTime, i, cells[i], "not-a-time"));
        }
        parts.at(i) = *number;
    }
    const auto [year, month, day, hour, minute] = parts;
    const date::year_month_day date{date::year{year}, date::month{static_cast<unsigned>(month)},
                                    date::day{static_cast<unsigned>(day)}};
    if (year < 1600 || year > 2200 || !date.ok()) {
        const std::string text =
            std::to_string(year) + "-" + std::to_string(month) + "-" + std::to_string(day);
        return tl::unexpected(refused(RejectReason::BadTime, 2, text, "no-such-date"));
    }
    // 24:00 ends a day.
    if (hour > 24 || minute > 59 || (hour == 24 && minute > 0)) {
        return tl::unexpected(refused(RejectReason::BadTime, hour > 24 ? 3 : 4,
                                      hour > 24 ? cells[3] : cells[4], "no-such-clock-time"));
    }
    return record::Instant{date::sys_days{date} + std::chrono::hours{hour} + std::chrono::minutes{minute}};
}

/// A comma is no decimal mark in this format.
std::string numberDetail(units::DecimalError error) {
    return error == units::DecimalError::TooLong ? "too-many-digits" : "not-a-number";
}

/// With this many decimals at least; none where that takes more digits than a reading has.
std::optional<Decimal> withDecimals(Decimal number, int decimals) {
    while (number.decimals < decimals) {
        if (std::abs(number.mantissa) > 10'000'000'000'000) {
            return std::nullopt;
        }
        number.mantissa *= 10;
        ++number.decimals;
    }
    return number;
}

/// Value in hPa, digit by digit.
std::optional<Decimal> hectopascals(Decimal number, SefUnit unit) {
    if (unit == SefUnit::Pascal) {
        number.decimals += 2;
        return number.decimals > 9 ? std::nullopt : std::optional{number};
    }
    if (unit == SefUnit::Kilopascal) {
        const auto wide = withDecimals(number, 1);
        return wide ? std::optional{Decimal{wide->mantissa, wide->decimals - 1}} : std::nullopt;
    }
    return number;
}

std::optional<units::ReadTemperature> temperature(const Decimal& number, SefUnit unit) {
    if (unit == SefUnit::Kelvin) {
        auto wide = withDecimals(number, 2);
        if (!wide) {
            return std::nullopt;
        }
        std::int64_t zero = 27315;
        for (int i = 2; i < wide->decimals; ++i) {
            zero *= 10;
        }
        wide->mantissa -= zero;
        return units::ReadTemperature{*wide, TemperatureUnit::Celsius};
    }
    return units::ReadTemperature{number, unit == SefUnit::Fahrenheit ? TemperatureUnit::Fahrenheit
                                                                      : TemperatureUnit::Celsius};
}

/// "61.5F", "61.5 °F", "-3,2C": a number and its unit; none for anything else.
std::optional<units::ReadTemperature> originalTemperature(std::string_view text) {
    text = trimmedCell(text);
    std::optional<TemperatureUnit> unit;
    for (const auto& [word, found] :
         {std::pair{"F", TemperatureUnit::Fahrenheit}, std::pair{"C", TemperatureUnit::Celsius}}) {
        if (text.ends_with(word)) {
            unit = found;
            text.remove_suffix(1);
            break;
        }
    }
    if (!unit) {
        return std::nullopt;
    }
    text = trimmedCell(text);
    for (const std::string_view sign : {"\u00B0", "\u00BA", "deg"}) {
        if (text.ends_with(sign)) {
            text.remove_suffix(sign.size());
        }
    }
    const auto number = units::parseDecimal(text);
    return number ? std::optional{units::ReadTemperature{*number, *unit}} : std::nullopt;
}

/// Whether Value may have been worked out from the original: equal within the rounding of Value.
bool agrees(const units::ReadTemperature& original, const units::ReadTemperature& value) {
    const double step = std::pow(10.0, -value.value.decimals);
    const double degree = value.unit == TemperatureUnit::Fahrenheit ? 5.0 / 9.0 : 1.0;
    const double apart = original.temperature().celsius() - value.temperature().celsius();
    return std::abs(apart) <= (0.5 * step + 1e-6) * degree;
}

/// Takes what Meta tells into the row.
void readMeta(std::string_view meta, SefRow& row) {
    meta = trimmedCell(meta);
    if (isMissingWord(meta)) {
        return;
    }
    for (std::size_t begin = 0; begin <= meta.size();) {
        const auto end = std::min(meta.find('|', begin), meta.size());
        const auto entry = trimmedCell(meta.substr(begin, end - begin));
        begin = end + 1;
        if (entry.empty()) {
            continue;
        }
        const auto equals = entry.find('=');
        const auto key = loweredAscii(trimmedCell(entry.substr(0, equals)));
        const auto value =
            equals == std::string_view::npos ? std::string_view{} : trimmedCell(entry.substr(equals + 1));
        if (key == "qc" && !value.empty()) {
            row.flagged = true;
            row.erroneous = loweredAscii(value) == "erroneous";
            if (row.erroneous || loweredAscii(value) == "doubtful") {
                continue; // our own words: the judgement says it all
            }
        }
        if (key == "orig" && row.temperature) {
            const auto original = originalTemperature(value);
            if (original && agrees(*original, *row.temperature)) {
                row.temperature = *original;
                continue;
            }
        }
        row.remarks.emplace_back(entry);
    }
}

} // namespace

std::optional<SefUnit> sefUnit(std::string_view text, SefVariable variable) {
    const auto name = loweredAscii(trimmedCell(text));
    struct Name {
        std::string_view name;
        SefUnit unit;
        bool pressure;
    };
    static constexpr std::array kNames{
        Name{"c", SefUnit::Celsius, false},       Name{"degc", SefUnit::Celsius, false},
        Name{"\u00B0c", SefUnit::Celsius, false}, Name{"f", SefUnit::Fahrenheit, false},
        Name{"degf", SefUnit::Fahrenheit, false}, Name{"\u00B0f", SefUnit::Fahrenheit, false},
        Name{"k", SefUnit::Kelvin, false},        Name{"hpa", SefUnit::Hectopascal, true},
        Name{"mb", SefUnit::Hectopascal, true},   Name{"mbar", SefUnit::Hectopascal, true},
        Name{"pa", SefUnit::Pascal, true},        Name{"kpa", SefUnit::Kilopascal, true}};
    for (const Name& known : kNames) {
        if (known.name == name && known.pressure == (variable == SefVariable::Pressure)) {
            return known.unit;
        }
    }
    return std::nullopt;
}

std::vector<std::string_view> tabCells(std::string_view line) {
    std::vector<std::string_view> cells;
    for (std::size_t begin = 0; begin <= line.size();) {
        const auto end = std::min(line.find('\t', begin), line.size());
        cells.push_back(line.substr(begin, end - begin));
        begin = end + 1;
    }
    return cells;
}

tl::expected<SefRow, RejectedLine> readSefLine(std::string_view line, SefVariable variable, SefUnit unit) {
    auto cells = tabCells(line);
    while (cells.size() > kCells && trimmedCell(cells.back()).empty()) {
        cells.pop_back();
    }
    if (cells.size() > kCells || cells.size() + 1 < kCells) {
        RejectedLine ragged{};
        ragged.reason = RejectReason::RaggedRow;
        ragged.value = std::to_string(cells.size());
        ragged.detail = cells.size() > kCells ? "too-many-cells" : "too-few-cells";
        return tl::unexpected(std::move(ragged));
    }
    SefRow row;
    const auto instant = instantOf(cells);
    if (!instant) {
        return tl::unexpected(instant.error());
    }
    row.instant = *instant;
    const auto period = trimmedCell(cells[5]);
    if (!isMissingWord(period) && period != "0") {
        return tl::unexpected(refused(RejectReason::BadWord, 5, cells[5], "not-a-moment"));
    }
    const auto text = trimmedCell(cells[6]);
    if (!isMissingWord(text)) {
        const auto number = units::parseDecimal(text, units::DecimalMark::Point);
        if (!number) {
            return tl::unexpected(
                refused(RejectReason::BadNumber, 6, cells[6], numberDetail(number.error())));
        }
        if (!isMissingNumber(*number)) {
            if (variable == SefVariable::Pressure) {
                row.pressure = hectopascals(*number, unit);
            } else {
                row.temperature = temperature(*number, unit);
            }
            if (!row.given()) {
                return tl::unexpected(refused(RejectReason::BadNumber, 6, cells[6], "too-many-digits"));
            }
        }
    }
    if (cells.size() == kCells) {
        readMeta(cells[7], row);
    }
    return row;
}

} // namespace wickbook::exchange
