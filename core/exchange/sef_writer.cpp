// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/sef_writer.h"

#include "core/units/number_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

namespace wickbook::exchange {

namespace {

enum class SefColumn { Dry, Wet, Ice, Pressure };
constexpr std::array<std::string_view, 4> kCodes{"ta", "tb", "ibt", "p"};
constexpr int kConvertedDecimals = 2; ///< of a value worked out from °F: finer than any thermometer's tenth

/// One place and its lines so far.
struct SefPlace {
    record::Position position;
    units::Elevation elevation = units::Elevation::fromMetres(0);
    struct Lines {
        std::string text;
        std::size_t count = 0;
        std::set<record::Instant> minutes; ///< one line a minute: a second one could not come in again
        std::optional<record::StationDate> first, last;
    };
    std::array<Lines, 4> lines;
};

/// A header's cell: no tab, no line's end.
std::string cellOf(std::string text) {
    std::replace_if(
        text.begin(), text.end(), [](char c) { return c == '\t' || c == '\n' || c == '\r'; }, ' ');
    return text;
}

std::string qualityMeta(record::Quality quality) {
    switch (quality) {
    case record::Quality::Doubtful:
        return "qc=doubtful";
    case record::Quality::Erroneous:
        return "qc=erroneous";
    case record::Quality::NotJudged:
    case record::Quality::Sound:
        break;
    }
    return {};
}

void add(SefPlace& place, SefColumn column, record::Instant instant, const std::string& value,
         std::string meta) {
    SefPlace::Lines& lines = place.lines.at(static_cast<std::size_t>(column));
    const auto minute = date::floor<std::chrono::minutes>(instant);
    if (!lines.minutes.insert(minute).second) {
        return;
    }
    const auto day = date::floor<date::days>(minute);
    const date::year_month_day ymd{day};
    const auto sinceMidnight = minute - day;
    const auto hour = date::floor<std::chrono::hours>(sinceMidnight);
    lines.text += fmt::format("{}\t{}\t{}\t{}\t{}\t0\t{}\t{}\n", static_cast<int>(ymd.year()),
                              static_cast<unsigned>(ymd.month()), static_cast<unsigned>(ymd.day()),
                              hour.count(), (sinceMidnight - hour).count(), value, meta);
    ++lines.count;
    const record::StationDate utcDate{day.time_since_epoch()};
    lines.first = lines.first.value_or(utcDate);
    lines.last = utcDate;
}

void addBulb(SefPlace& place, SefColumn column, const record::Observation& values,
             const record::BulbReading& bulb, const std::string& qc) {
    if (!bulb.value) {
        return;
    }
    std::string meta = qc;
    std::string value = bulb.value->value.toText();
    if (bulb.value->unit == units::TemperatureUnit::Fahrenheit) {
        meta = "orig=" + value + "F" + (qc.empty() ? "" : "|" + qc);
        value = units::roundedDecimal(bulb.value->temperature().celsius(), kConvertedDecimals).toText();
    }
    add(place, column, values.instant, value, std::move(meta));
}

std::string header(const SefPlace& place, SefColumn column, const std::string& name,
                   const std::string& slug) {
    const bool isPressure = column == SefColumn::Pressure;
    return fmt::format(
        "SEF\t1.0.0\nID\t{}\nName\t{}\nLat\t{}\nLon\t{}\nAlt\t{}\nSource\t{}\nLink\t\nVbl\t{}\n"
        "Stat\tpoint\nUnits\t{}\nMeta\tUTCOffset=0|{}\n"
        "Year\tMonth\tDay\tHour\tMinute\tPeriod\tValue\tMeta\n",
        slug, cellOf(name), units::exactText(place.position.latitude),
        units::exactText(place.position.longitude), units::exactText(place.elevation.metres()),
        "station register", kCodes.at(static_cast<std::size_t>(column)), isPressure ? "hPa" : "C",
        isPressure ? "PGC=N|PTC=N|station pressure as read" : "as read, without corrections");
}

std::string dateDigits(record::StationDate date) {
    const date::year_month_day ymd{date};
    return fmt::format("{:04}{:02}{:02}", static_cast<int>(ymd.year()), static_cast<unsigned>(ymd.month()),
                       static_cast<unsigned>(ymd.day()));
}

} // namespace

std::vector<SefOutFile> sefFiles(const record::StationRecord& station,
                                 std::span<const record::StoredObservation> observations,
                                 const std::string& slug) {
    std::vector<SefPlace> places;
    for (const record::StoredObservation& stored : observations) {
        const record::Observation& values = stored.values;
        if (values.withdrawn || values.origin == record::Origin::Missing ||
            values.origin == record::Origin::Estimated) {
            continue;
        }
        const record::StationPeriod& period = station.periodAt(values.instant);
        if (places.empty() || !(places.back().position == period.position) ||
            places.back().elevation != period.elevation) {
            places.push_back({period.position, period.elevation, {}});
        }
        SefPlace& place = places.back();
        const std::string qc = qualityMeta(values.quality);
        addBulb(place, SefColumn::Dry, values, values.dry, qc);
        addBulb(place, values.wick == record::WickState::Ice ? SefColumn::Ice : SefColumn::Wet, values,
                values.wet, qc);
        if (values.pressure) {
            add(place, SefColumn::Pressure, values.instant, values.pressure->toText(), {});
        }
    }
    std::vector<SefOutFile> files;
    for (const SefPlace& place : places) {
        for (std::size_t column = 0; column < kCodes.size(); ++column) {
            const SefPlace::Lines& lines = place.lines.at(column);
            if (lines.count == 0) {
                continue;
            }
            files.push_back({fmt::format("{}_{}-{}_{}.tsv", slug, dateDigits(*lines.first),
                                         dateDigits(*lines.last), kCodes.at(column)),
                             header(place, static_cast<SefColumn>(column), station.name(), slug) + lines.text,
                             lines.count});
        }
    }
    return files;
}

} // namespace wickbook::exchange
