// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/find_reading.h"
#include "app/cli/output.h"
#include "app/cli/reading_columns.h"
#include "app/cli/verb_table.h"
#include "core/exchange/spreadsheet_text.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace wickbook::cli {

namespace {

struct HistoryOptions {
    std::string book, at, format = "text";
};

using Line = record::ObservationRevision;

void writeText(Output& output, const std::vector<Line>& lines) {
    for (const Line& line : lines) {
        output.text(fmt::format("revision {}, {}{}{}\n", line.stamp.sequence,
                                record::instantText(line.stamp.recordedAt),
                                line.stamp.author.who.empty() ? "" : " by " + line.stamp.author.who,
                                line.stamp.author.why.empty() ? "" : ": " + line.stamp.author.why));
        for (const ReadingColumn& column : readingColumns().subspan(kStampColumns)) {
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
        for (const ReadingColumn& column : readingColumns()) {
            object[std::string{column.name}] = jsonText(column.text(line));
        }
        object["revision"] = line.stamp.sequence;
        object["withdrawn"] = line.values.withdrawn;
        object["read_back"] = line.values.readBack;
        // Readings stay text: "16.0" is not 16.
        list.push_back(std::move(object));
    }
    output.json(list);
}

void writeCsv(Output& output, const std::vector<Line>& lines) {
    std::vector<std::string> cells;
    for (const ReadingColumn& column : readingColumns()) {
        cells.emplace_back(column.name);
    }
    output.csv(cells);
    for (const Line& line : lines) {
        cells.clear();
        for (const ReadingColumn& column : readingColumns()) {
            cells.push_back(exchange::spreadsheetCell(column.text(line)));
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
