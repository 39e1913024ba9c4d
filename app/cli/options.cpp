// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/options.h"

#include "core/units/number_text.h"
#include "ui/text/error_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace wickbook::cli {

namespace {

std::string inSentence(const std::string& option, const std::string& words) {
    return fmt::format("{}: {}", option, words);
}

} // namespace

Outcome<units::Decimal> decimalFrom(const std::string& option, const std::string& text) {
    const auto value = units::parseDecimal(text);
    if (!value) {
        return refuse(
            ui::decimalErrorWords(value.error(), QString::fromStdString(option), QString::fromStdString(text))
                .toStdString());
    }
    return *value;
}

std::optional<double> realFrom(std::string_view text) {
    if (const auto decimal = units::parseDecimal(text)) {
        return decimal->toDouble();
    }
    std::string plain;
    static constexpr std::string_view kMinus = "\u2212";
    while (!text.empty()) {
        const bool minus = text.starts_with(kMinus);
        const char c = minus ? '-' : text.front();
        text.remove_prefix(minus ? kMinus.size() : 1);
        plain += c == ',' && plain.find_first_of(".,") == std::string::npos ? '.' : c;
    }
    double value = 0;
    const char* const end = plain.data() + plain.size();
    const auto read = std::from_chars(plain.data(), end, value);
    if (read.ec != std::errc{} || read.ptr != end || !std::isfinite(value)) {
        return std::nullopt;
    }
    return value;
}

Outcome<double> realFrom(const std::string& option, const std::string& text) {
    if (const auto value = realFrom(text)) {
        return *value;
    }
    return decimalFrom(option, text).map([](const units::Decimal& value) { return value.toDouble(); });
}

Outcome<double> numberFrom(const std::string& option, const std::string& text, double lowest, double highest,
                           const std::string& unit) {
    return realFrom(option, text).and_then([&](double number) -> Outcome<double> {
        if (number < lowest || number > highest) {
            return refuse(fmt::format("{} {} is outside {} to {} {}; give a value within.", option, text,
                                      units::exactText(lowest), units::exactText(highest), unit));
        }
        return number;
    });
}

Outcome<std::int64_t> wholeNumberFrom(const std::string& option, const std::string& text, std::int64_t lowest,
                                      std::int64_t highest) {
    return decimalFrom(option, text).and_then([&](const units::Decimal& value) -> Outcome<std::int64_t> {
        if (value.decimals != 0 || value.mantissa < lowest || value.mantissa > highest) {
            return refuse(fmt::format("{} {} is no whole number from {} to {}; give one that is.", option,
                                      text, lowest, highest));
        }
        return value.mantissa;
    });
}

std::string exposureNames(bool withOwn) {
    std::string names;
    for (const auto& entry : psychrometry::exposureTable()) {
        if (withOwn || entry.exposure != psychrometry::Exposure::Own) {
            names += (names.empty() ? "" : ", ") + std::string{entry.name};
        }
    }
    return names;
}

Outcome<psychrometry::Exposure> exposureFrom(const std::string& text) {
    if (const auto exposure = psychrometry::exposureFromName(text)) {
        return *exposure;
    }
    return refuse(fmt::format("\"{}\" is no exposure; choose one of {}.", text, exposureNames(true)));
}

Outcome<psychrometry::Exposure> stationExposureFrom(const std::string& text) {
    return exposureFrom(text).and_then(
        [](psychrometry::Exposure exposure) -> Outcome<psychrometry::Exposure> {
            if (exposure == psychrometry::Exposure::Own) {
                return refuse(
                    fmt::format("The exposure \"own\" needs a coefficient fitted at the station, which this "
                                "command can't take; choose one of {}.",
                                exposureNames(false)));
            }
            return exposure;
        });
}

Outcome<psychrometry::WickState> wickFrom(const std::string& text) {
    if (text == "water") {
        return psychrometry::WickState::Water;
    }
    if (text == "ice") {
        return psychrometry::WickState::Ice;
    }
    return refuse(fmt::format("--wick can be water or ice; \"{}\" is neither.", text));
}

Outcome<std::vector<record::HourOfDay>> hoursFrom(const std::string& text) {
    std::vector<record::HourOfDay> hours;
    std::size_t begin = 0;
    while (begin <= text.size()) {
        const std::size_t end = std::min(text.find(',', begin), text.size());
        const std::string part = text.substr(begin, end - begin);
        const auto hour = record::parseHour(part);
        if (!hour || *hour >= std::chrono::hours{24}) {
            return refuse(
                fmt::format("--hours {}: \"{}\" is no hour; write them like 09:00,21:00.", text, part));
        }
        if (std::find(hours.begin(), hours.end(), *hour) != hours.end()) {
            return refuse(fmt::format("--hours {}: {} stands there twice; name each hour once.", text,
                                      record::hourText(*hour)));
        }
        hours.push_back(*hour);
        begin = end + 1;
    }
    std::sort(hours.begin(), hours.end());
    return hours;
}

Outcome<record::HourRule> hourRuleFrom(const std::string& text) {
    if (const auto rule = record::hourRuleFromName(text)) {
        return *rule;
    }
    return refuse(fmt::format("--hour-rule can be utc, standard or clock; \"{}\" is none of them.", text));
}

Outcome<record::Zone> zoneFrom(const std::string& text) {
    if (auto zone = record::Zone::named(text)) {
        return *zone;
    }
    return refuse(fmt::format(
        "--zone: \"{}\" is no time zone of this system; write it like Europe/London or UTC.", text));
}

Outcome<units::TemperatureUnit> unitFrom(const std::string& text) {
    if (text == "c" || text == "C") {
        return units::TemperatureUnit::Celsius;
    }
    if (text == "f" || text == "F") {
        return units::TemperatureUnit::Fahrenheit;
    }
    return refuse(fmt::format("--unit can be c or f; \"{}\" is neither.", text));
}

Outcome<record::StationDate> dateFrom(const std::string& option, const std::string& text) {
    const auto date = record::parseDate(text);
    if (date) {
        return *date;
    }
    if (date.error() == record::TimeTextError::NoSuchDate) {
        return refuse(
            inSentence(option, ui::timeErrorWords(date.error(), QString::fromStdString(text)).toStdString()));
    }
    return refuse(fmt::format("{}: \"{}\" is no date; write it like 2025-03-01.", option, text));
}

Outcome<date::year_month> monthFrom(const std::string& text) {
    const auto month = record::parseMonth(text);
    if (!month) {
        return refuse(fmt::format("--month: \"{}\" is no month; write it like 2025-03.", text));
    }
    return *month;
}

Outcome<double> latitudeFrom(const std::string& text) {
    return numberFrom("--latitude", text, -90, 90, "degrees");
}

Outcome<double> longitudeFrom(const std::string& text) {
    return numberFrom("--longitude", text, -180, 180, "degrees");
}

Outcome<units::Elevation> elevationFrom(const std::string& text) {
    return numberFrom("--elevation", text, -500, 9000, "m").map([](double metres) {
        return units::Elevation::fromMetres(metres);
    });
}

Outcome<DateRange> dateRangeFrom(const std::string& from, const std::string& to) {
    DateRange range;
    if (!from.empty()) {
        auto date = dateFrom("--from", from);
        if (!date) {
            return tl::unexpected(date.error());
        }
        range.from = *date;
    }
    if (!to.empty()) {
        auto date = dateFrom("--to", to);
        if (!date) {
            return tl::unexpected(date.error());
        }
        range.to = *date;
    }
    if (range.from && range.to && *range.to < *range.from) {
        return refuse(fmt::format("--to {} is before --from {}; swap them.", to, from));
    }
    return range;
}

} // namespace wickbook::cli
