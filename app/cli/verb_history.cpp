// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/find_reading.h"
#include "app/cli/output.h"
#include "app/cli/verb_table.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <array>
#include <memory>

namespace wickbook::cli {

namespace {

struct HistoryOptions {
    std::string book, at, format = "text";
};

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

/// What a revision holds, as names and texts: one table for every format.
struct HistoryColumn {
    std::string_view name;
    std::string (*text)(const record::ObservationRevision&);
};

using Line = record::ObservationRevision;

constexpr std::array<HistoryColumn, 23> kColumns{{
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
}};

void writeText(Output& output, const std::vector<Line>& lines) {
    for (const Line& line : lines) {
        output.text(fmt::format("revision {}, {}{}{}\n", line.stamp.sequence,
                                record::instantText(line.stamp.recordedAt),
                                line.stamp.author.who.empty() ? "" : " by " + line.stamp.author.who,
                                line.stamp.author.why.empty() ? "" : ": " + line.stamp.author.why));
        for (const HistoryColumn& column : std::span{kColumns}.subspan(4)) {
            if (const std::string text = column.text(line); !text.empty()) {
                output.text(fmt::format("  {:<15} {}\n", column.name, text));
            }
        }
    }
}

void writeJson(Output& output, const std::vector<Line>& lines) {
    JsonValue list = JsonValue::array();
    for (const Line& line : lines) {
        JsonValue object = JsonValue::object();
        for (const HistoryColumn& column : kColumns) {
            object[std::string{column.name}] = jsonText(column.text(line));
        }
        object["revision"] = line.stamp.sequence;
        object["withdrawn"] = line.values.withdrawn;
        // Readings stay text: "16.0" is not 16.
        list.push_back(std::move(object));
    }
    output.json(list);
}

void writeCsv(Output& output, const std::vector<Line>& lines) {
    std::vector<std::string> cells;
    for (const HistoryColumn& column : kColumns) {
        cells.emplace_back(column.name);
    }
    output.csv(cells);
    for (const Line& line : lines) {
        cells.clear();
        for (const HistoryColumn& column : kColumns) {
            cells.push_back(column.text(line));
        }
        output.csv(cells);
    }
}

Outcome<ExitCode> history(const HistoryOptions& options) {
    const auto format = formatFrom(options.format);
    if (!format) {
        return tl::unexpected(format.error());
    }
    const auto opened = openToRead(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const auto reading = findReading(*opened, options.at);
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    const auto lines = opened->book.history(reading->id());
    if (!lines) {
        return refuse(lines.error());
    }
    auto output = Output::open("-");
    switch (*format) {
    case Format::Text:
        writeText(*output, *lines);
        break;
    case Format::Json:
        writeJson(*output, *lines);
        break;
    case Format::Csv:
        writeCsv(*output, *lines);
        break;
    }
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    return ExitCode::Done;
}

} // namespace

VerbAction declareHistory(OptionList command) {
    auto options = std::make_shared<HistoryOptions>();
    command.needed("--book", options->book, "The book");
    command.needed(
        "--at", options->at,
        "When it was read, or its observing hour: 2025-03-01T09:00 by the station's clock, or with Z "
        "or an offset");
    command.text("--format", options->format, "text, json or csv (text)");
    return [options] { return history(*options); };
}

} // namespace wickbook::cli
