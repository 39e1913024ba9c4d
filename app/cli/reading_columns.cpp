// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/reading_columns.h"

#include <array>

namespace wickbook::cli {

namespace {

std::string readText(const std::optional<units::ReadTemperature>& value) {
    return value ? value->value.toText() : std::string{};
}

std::string bulbText(const record::BulbReading& bulb) {
    return bulb.belowScale ? "below" : readText(bulb.value);
}

/// Units of the two bulbs, "c" or "f"; "f;c" where they differ.
std::string unitText(const record::Observation& values) {
    const auto name = [](const record::BulbReading& bulb) -> std::string {
        if (!bulb.value) {
            return {};
        }
        return bulb.value->unit == units::TemperatureUnit::Celsius ? "c" : "f";
    };
    const std::string dry = name(values.dry);
    const std::string wet = name(values.wet);
    if (dry.empty() || wet.empty() || dry == wet) {
        return dry.empty() ? wet : dry;
    }
    return dry + ";" + wet;
}

/// "15.5/16.6;14.2/16.4": wet and dry of each whirl, in the order of reading.
std::string whirlsText(const std::vector<record::Repeat>& whirls) {
    std::string text;
    for (const record::Repeat& whirl : whirls) {
        text += (text.empty() ? "" : ";") + readText(whirl.wet) + "/" + readText(whirl.dry);
    }
    return text;
}

using Line = record::ObservationRevision;

constexpr std::array<ReadingColumn, 26> kColumns{{
    {"revision", [](const Line& line) { return std::to_string(line.stamp.sequence); }},
    {"recorded_at", [](const Line& line) { return record::instantText(line.stamp.recordedAt); }},
    {"who", [](const Line& line) { return line.stamp.author.who; }},
    {"why", [](const Line& line) { return line.stamp.author.why; }},
    {"time_utc", [](const Line& line) { return record::instantText(line.values.instant); }},
    {"local_date", [](const Line& line) { return record::dateText(record::filedDate(line.values)); }},
    {"hour",
     [](const Line& line) {
         return line.values.hour ? record::hourText(line.values.hour->hour) : std::string{};
     }},
    {"dry_read", [](const Line& line) { return bulbText(line.values.dry); }},
    {"wet_read", [](const Line& line) { return bulbText(line.values.wet); }},
    {"unit", [](const Line& line) { return unitText(line.values); }},
    {"wick", [](const Line& line) { return std::string{record::wickName(line.values.wick)}; }},
    {"pressure_hpa",
     [](const Line& line) { return line.values.pressure ? line.values.pressure->toText() : std::string{}; }},
    {"weather",
     [](const Line& line) { return line.values.weather ? line.values.weather->toText() : std::string{}; }},
    {"wind_beaufort",
     [](const Line& line) {
         return line.values.windBeaufort ? std::to_string(*line.values.windBeaufort) : std::string{};
     }},
    {"max_read", [](const Line& line) { return readText(line.values.maximum); }},
    {"min_read", [](const Line& line) { return readText(line.values.minimum); }},
    {"whirls", [](const Line& line) { return whirlsText(line.values.repeats); }},
    {"note", [](const Line& line) { return line.values.note; }},
    {"observer", [](const Line& line) { return line.values.observer; }},
    {"origin", [](const Line& line) { return std::string{record::originName(line.values.origin)}; }},
    {"quality", [](const Line& line) { return std::string{record::qualityName(line.values.quality)}; }},
    {"missing_reason", [](const Line& line) { return line.values.missingReason; }},
    {"withdrawn", [](const Line& line) { return std::string{line.values.withdrawn ? "yes" : ""}; }},
    {"paper_book",
     [](const Line& line) { return line.values.paper ? line.values.paper->book : std::string{}; }},
    {"paper_page",
     [](const Line& line) { return line.values.paper ? line.values.paper->page : std::string{}; }},
    {"read_back", [](const Line& line) { return std::string{line.values.readBack ? "yes" : ""}; }},
}};

} // namespace

std::span<const ReadingColumn> readingColumns() {
    return kColumns;
}

} // namespace wickbook::cli
