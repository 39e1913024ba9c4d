// SPDX-License-Identifier: GPL-3.0-or-later
// The first byte chooses the options ('0': none; see optionsFrom), the rest is a file. Lines longer than any
// can be have cases of their own (tests/core/exchange/csv_limits_test.cpp): they would leave time for little
// else here.
#include "core/exchange/byte_decoder.h"
#include "core/exchange/column_guess.h"
#include "core/exchange/file_head.h"
#include "core/exchange/import_plan.h"
#include "core/exchange/observation_columns.h"
#include "tests/fuzz/planned.h"
#include "tests/fuzz/stations.h"
#include "tests/fuzz/targets.h"

#include <set>
#include <sstream>

namespace wickbook::fuzz {

namespace {

using namespace exchange;

/// Everything the file holds, as UTF-8 where it says how it is written; with whole records in Latin-1 as they
/// are.
std::string decodedWhole(const std::string& file) {
    std::istringstream input(file);
    ByteDecoder decoder(input);
    std::string text;
    while (decoder.appendChunk(text)) {
    }
    return text;
}

/// What was read, written out and read again.
void checkWritten(const CsvRecord& record, char separator) {
    std::istringstream input("head" + std::string{kCsvLineEnd} + csvLine(record.cells, separator) +
                             std::string{kCsvLineEnd});
    CsvReader reader(input, separator);
    static_cast<void>(reader.next());
    const auto again = reader.next();
    promise(again && *again && (*again)->cells == record.cells, "cells come back from their line",
            record.text);
    const auto end = reader.next();
    promise(end && !*end, "and one line is one record", record.text);
}

void checkRecords(const std::string& file) {
    std::istringstream input(file);
    CsvReader reader(input);
    std::int64_t last = 0;
    for (;;) {
        const auto record = reader.next();
        if (record && !*record) {
            break;
        }
        const std::int64_t line = record ? (*record)->line : record.error().line;
        const std::string& text = record ? (*record)->text : record.error().text;
        promise(line > last, "one record a line, none told twice", text);
        last = line;
        promise(isUtf8(text), "a line is handed back as UTF-8");
        promise(text.size() <= 4 * kLongestRecord, "a record has its limit");
        if (record) {
            for (const std::string& cell : (*record)->cells) {
                promise(isUtf8(cell), "a cell is UTF-8");
            }
            checkWritten(**record, reader.format().separator);
        }
    }
    const auto after = reader.next();
    promise(after && !*after, "the end stays the end");
    promise(reader.bytesRead() == static_cast<std::int64_t>(file.size()), "every byte was looked at");
}

ImportOptions optionsFrom(unsigned flags) {
    ImportOptions options;
    options.decimal = (flags & 1U) != 0   ? units::DecimalMark::Point
                      : (flags & 2U) != 0 ? units::DecimalMark::Comma
                                          : units::DecimalMark::Either;
    options.dateOrder = (flags & 4U) != 0 ? DateOrder::DayFirst : DateOrder::Unknown;
    options.doubleTimes = (flags & 8U) != 0 ? DoubleTimes::Earlier : DoubleTimes::Reject;
    return options;
}

/// As the window does: what the columns are is proposed from the first rows.
void propose(const std::string& file, ImportOptions& options) {
    std::istringstream input(file);
    const FileHead head = readFileHead(input, 40);
    if (head.rows.empty()) {
        return;
    }
    options.headless = looksHeadless(head.rows);
    const auto header = options.headless ? numberedHeader(head.columns) : head.rows.front();
    options.layout.emplace();
    for (const auto& column : proposedColumns(header, head.rows)) {
        options.layout->push_back(column.field);
    }
    promise(options.layout->size() == header.size(), "every column has its proposal", file);
}

/// No line without a trace: each came in or was rejected, with its number, its text and the reason.
void checkLines(const ImportPlan& plan, const std::string& file) {
    promise(plan.lines == static_cast<std::int64_t>(plan.observations.size() + plan.rejected.size()),
            "every line came in or was rejected", file);
    const std::string whole = decodedWhole(file);
    const std::string latin1 = latin1ToUtf8(whole);
    std::set<std::int64_t> seen;
    const auto look = [&](std::int64_t line, const std::string& text) {
        promise(line >= 1 && seen.insert(line).second, "every line has its own number", text);
        promise(whole.find(text) != std::string::npos || latin1.find(text) != std::string::npos,
                "its text is what stood in the file", text);
        promise(!text.empty(), "its text is there", file);
    };
    for (const PlannedObservation& planned : plan.observations) {
        look(planned.line, planned.text);
    }
    for (const RejectedLine& rejected : plan.rejected) {
        look(rejected.line, rejected.text);
        checkRejected(rejected, "register.csv");
    }
}

/// What came in, exported as it would be from a book, comes in again as the same.
void checkExport(const ImportPlan& plan, const record::StationRecord& station) {
    std::string text = csvLine(observationHeader()) + std::string{kCsvLineEnd};
    for (const PlannedObservation& planned : plan.observations) {
        const checks::CheckedReading reading{record::deriveReading(planned.values, station), {}, false};
        text += csvLine(observationRow(reading, station)) + std::string{kCsvLineEnd};
    }
    std::istringstream input(text);
    const auto again = planCsvImport(input, "export.csv", station, {});
    promise(again.has_value(), "an export is a register", text);
    promise(again->rejected.empty(), "no line of an export is rejected",
            again->rejected.empty() ? "" : again->rejected.front().text);
    promise(again->observations.size() == plan.observations.size(), "no line of an export is lost", text);
    for (std::size_t i = 0; i < plan.observations.size(); ++i) {
        promise(again->observations[i].values == plan.observations[i].values,
                "an export comes back unchanged",
                plan.observations[i].text + " -> " + again->observations[i].text);
    }
}

} // namespace

void runCsv(std::string_view bytes) {
    if (bytes.empty()) {
        return;
    }
    std::string file{bytes.substr(1)};
    checkRecords(file);
    static_cast<void>(fileKindOf(std::string_view{file}.substr(0, kHeadBytes)));

    const unsigned flags = (static_cast<unsigned char>(bytes.front()) - unsigned{'0'}) & 0x3FU;
    ImportOptions options = optionsFrom(flags);
    if ((flags & 16U) != 0) {
        propose(file, options);
    }
    const record::StationRecord& station = (flags & 32U) != 0 ? stationThatMoved() : stationOfUtcHours();
    std::istringstream input(file);
    const auto plan = planCsvImport(input, "register.csv", station, options);
    if (!plan) {
        return;
    }
    checkLines(*plan, file);
    for (const PlannedObservation& planned : plan->observations) {
        checkKeepable(planned);
    }
    if (!plan->observations.empty()) {
        checkExport(*plan, station);
    }
}

} // namespace wickbook::fuzz
