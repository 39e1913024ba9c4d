// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"

#include "core/exchange/cell_text.h"
#include "core/exchange/column_guess.h"
#include "core/exchange/import_row.h"
#include "core/exchange/plan_places.h"

#include <algorithm>

namespace wickbook::exchange {

namespace {

bool allDigits(std::string_view text) {
    return !text.empty() &&
           std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

bool isNumberField(const std::optional<ImportField>& field) {
    return field == ImportField::Dry || field == ImportField::Wet || field == ImportField::Pressure ||
           field == ImportField::Maximum || field == ImportField::Minimum;
}

/// Plans one file line by line. Lines whose dates wait for the rest of the file are held back; where parts
/// are handed over, the input is rather read twice, if it can be.
class Planner {
public:
    Planner(const std::string& fileName, const record::StationRecord& station, const ImportOptions& options,
            const PlanPart& take, const ImportProgress& progress)
        : fileName_(fileName)
        , station_(station)
        , given_(options)
        , options_(options)
        , take_(take)
        , progress_(progress) {}

    tl::expected<ImportPlan, ImportError> plan(std::istream& input);

private:
    using Done = tl::expected<void, ImportError>;
    /// Reads from the beginning to the end, or to the first line that waits for dates. Lines up to the one
    /// that made it stop the last time are passed over: they are planned.
    Done read(std::istream& input);
    /// The rest of the file for its dates alone.
    Done lookAtDates(CsvReader& reader);
    Done handOver(std::size_t least);
    [[nodiscard]] bool asked(const CsvReader& reader) {
        return !progress_ || ++questions_ % kLinesBetweenQuestions != 0 || progress_(reader.bytesRead());
    }
    static tl::unexpected<ImportError> stopped() {
        return tl::unexpected(ImportError{ImportErrorKind::Stopped, {}});
    }
    tl::expected<void, ImportError> takeHeader(CsvReader& reader);
    void takeRecord(CsvRecord record);
    void rejectUnreadable(const CsvError& error);
    [[nodiscard]] bool looksLikeDecimalComma(const std::vector<std::string>& cells) const;
    void dropEmptyEnd(CsvRecord& record) const;
    bool rejectRagged(CsvRecord& record);
    bool waitsForDates(const CsvRecord& record);
    void planRecord(CsvRecord record);
    void reject(RejectedLine line, std::int64_t number, std::string text);

    const std::string& fileName_;
    const record::StationRecord& station_;
    const ImportOptions& given_;
    ImportOptions options_;
    const PlanPart& take_;
    const ImportProgress& progress_;
    std::int64_t questions_ = 0;
    std::int64_t planned_ = 0; ///< lines done with before the input was read again
    bool rereads_ = false;     ///< the input can be read again
    bool waited_ = false;      ///< a line was met whose date needs the rest of the file
    bool orderKnown_ = false;
    ImportPlan plan_;
    DateGuess dates_;
    std::vector<CsvRecord> held_;
    PlanPlaces places_;
    DateOrder order_ = DateOrder::Unknown;
};

tl::expected<void, ImportError> Planner::takeHeader(CsvReader& reader) {
    auto header = reader.next();
    if (!header || !*header) {
        const auto kind = header ? CsvErrorKind::Empty : header.error().kind;
        return tl::unexpected(ImportError{kind == CsvErrorKind::Empty ? ImportErrorKind::EmptyFile
                                                                      : ImportErrorKind::NotReadable,
                                          csvErrorName(kind)});
    }
    auto columns = options_.headless ? guessColumns(numberedHeader((*header)->cells.size()), options_)
                                     : guessColumns((*header)->cells, options_);
    if (!columns) {
        return tl::unexpected(std::move(columns.error()));
    }
    plan_.columns = std::move(*columns);
    options_.exported = !options_.headless && isExportHeader((*header)->cells);
    for (const auto& column : plan_.columns) {
        if (column.field && column.unit) {
            options_.columnUnits.emplace(*column.field, *column.unit);
        }
        const bool isTime = column.field == ImportField::Time || column.field == ImportField::Clock;
        if (isTime && column.utc && !options_.zone) {
            options_.zone = record::Zone::utc();
        }
    }
    if (options_.headless) {
        takeRecord(std::move(**header));
    }
    return {};
}

void Planner::reject(RejectedLine line, std::int64_t number, std::string text) {
    line.file = fileName_;
    line.line = number;
    line.text = std::move(text);
    plan_.rejected.push_back(std::move(line));
}

void Planner::rejectUnreadable(const CsvError& error) {
    ++plan_.lines;
    if (plan_.lines <= planned_) {
        return;
    }
    reject({{}, 0, {}, RejectReason::Unreadable, {}, {}, csvErrorName(error.kind)}, error.line, error.text);
}

/// "…,16,4,15,2" under three columns: whole number and tenths next to each other where one number belongs.
bool Planner::looksLikeDecimalComma(const std::vector<std::string>& cells) const {
    if (plan_.format.separator != ',') {
        return false;
    }
    for (std::size_t i = 0; i + 1 < cells.size() && i < plan_.columns.size(); ++i) {
        auto whole = trimmedCell(cells[i]);
        for (const std::string_view sign : {"-", "+", "\u2212"}) {
            if (whole.starts_with(sign)) {
                whole.remove_prefix(sign.size());
            }
        }
        const auto tenths = trimmedCell(cells[i + 1]);
        if (isNumberField(plan_.columns[i].field) && allDigits(whole) && whole.size() <= 4 &&
            allDigits(tenths) && tenths.size() <= 2) {
            return true;
        }
    }
    return false;
}

/// Spreadsheets write separators behind the last column.
void Planner::dropEmptyEnd(CsvRecord& record) const {
    while (record.cells.size() > plan_.columns.size() && trimmedCell(record.cells.back()).empty()) {
        record.cells.pop_back();
    }
}

bool Planner::rejectRagged(CsvRecord& record) {
    const std::size_t expected = plan_.columns.size();
    dropEmptyEnd(record);
    if (record.cells.size() == expected) {
        return false;
    }
    const bool more = record.cells.size() > expected;
    std::string detail = more && looksLikeDecimalComma(record.cells) ? "decimal-comma"
                         : more                                      ? "too-many-cells"
                                                                     : "too-few-cells";
    reject({{}, 0, {}, RejectReason::RaggedRow, {}, std::to_string(record.cells.size()), std::move(detail)},
           record.line, std::move(record.text));
    return true;
}

bool Planner::waitsForDates(const CsvRecord& record) {
    bool waits = false;
    for (std::size_t i = 0; i < plan_.columns.size(); ++i) {
        const auto& field = plan_.columns[i].field;
        if (field == ImportField::Date || field == ImportField::Time) {
            waits = (dates_.look(record.cells[i]) && order_ == DateOrder::Unknown && !orderKnown_) || waits;
        }
    }
    return waits;
}

void Planner::takeRecord(CsvRecord record) {
    if (record.cells.size() == 1 && trimmedCell(record.cells.front()).empty()) {
        return; // a line of blanks
    }
    ++plan_.lines;
    if (plan_.lines <= planned_) {
        return;
    }
    if (rejectRagged(record)) {
        return;
    }
    // Once a line waits, all behind it do, so that the plan keeps the order of the file.
    if (waitsForDates(record) || !held_.empty()) {
        if (rereads_) {
            waited_ = true;
            return;
        }
        held_.push_back(std::move(record));
        return;
    }
    planRecord(std::move(record));
}

void Planner::planRecord(CsvRecord record) {
    FieldCells cells;
    for (std::size_t i = 0; i < plan_.columns.size(); ++i) {
        if (plan_.columns[i].field) {
            cells.emplace(*plan_.columns[i].field, std::move(record.cells[i]));
        }
    }
    auto values = readRow(cells, station_, options_, order_);
    if (!values) {
        reject(std::move(values.error()), record.line, std::move(record.text));
        return;
    }
    if (!places_.take(*values)) {
        const auto field = cells.contains(ImportField::Time) ? ImportField::Time : ImportField::Date;
        reject(placeTaken(*values, field), record.line, std::move(record.text));
        return;
    }
    plan_.observations.push_back({record.line, std::move(record.text), std::move(*values), {}});
}

Planner::Done Planner::handOver(std::size_t least) {
    if (!take_ || plan_.observations.size() + plan_.rejected.size() < least) {
        return {};
    }
    if (!take_(plan_.observations, plan_.rejected)) {
        return stopped();
    }
    plan_.observations.clear();
    plan_.rejected.clear();
    return {};
}

Planner::Done Planner::lookAtDates(CsvReader& reader) {
    for (;;) {
        if (!asked(reader)) {
            return stopped();
        }
        auto record = reader.next();
        if (record && !*record) {
            break;
        }
        if (record) {
            dropEmptyEnd(**record);
            if ((*record)->cells.size() == plan_.columns.size()) {
                waitsForDates(**record);
            }
        }
    }
    order_ = dates_.order();
    orderKnown_ = true;
    return {};
}

Planner::Done Planner::read(std::istream& input) {
    CsvReader reader(input, options_.separator);
    if (auto header = takeHeader(reader); !header) {
        return header;
    }
    plan_.format = reader.format();
    while (!waited_) {
        if (!asked(reader)) {
            return stopped();
        }
        auto record = reader.next();
        if (!record) {
            if (record.error().kind == CsvErrorKind::NotReadable && input.bad()) {
                return tl::unexpected(ImportError{ImportErrorKind::NotReadable, {}});
            }
            rejectUnreadable(record.error());
        } else if (!*record) {
            break;
        } else {
            takeRecord(std::move(**record));
        }
        if (options_.mostLines && plan_.lines > *options_.mostLines) {
            plan_.cut = true;
            break;
        }
        if (const std::int64_t most = options_.refusedAbove.value_or(kMostLines); plan_.lines > most) {
            return tl::unexpected(ImportError{ImportErrorKind::TooManyLines, std::to_string(most)});
        }
        if (take_ && held_.size() > kMostHeldLines) {
            return tl::unexpected(ImportError{ImportErrorKind::DatesWait, std::to_string(kMostHeldLines)});
        }
        if (auto handed = handOver(kLinesOfAPart); !handed) {
            return handed;
        }
    }
    if (waited_) {
        planned_ = plan_.lines - 1;
        return lookAtDates(reader);
    }
    plan_.format = reader.format();
    return {};
}

tl::expected<ImportPlan, ImportError> Planner::plan(std::istream& input) {
    order_ = given_.dateOrder;
    std::istream::pos_type start(-1);
    if (take_ && input.good()) {
        start = input.tellg();
        input.clear(input.rdstate() &
                    ~std::ios_base::failbit); // a pipe has no place, which is no fault of it
    }
    rereads_ = start != std::istream::pos_type(-1);
    if (auto done = read(input); !done) {
        return tl::unexpected(done.error());
    }
    if (waited_) {
        // From the beginning again, now that the dates are understood.
        input.clear();
        if (!input.seekg(start)) {
            return tl::unexpected(ImportError{ImportErrorKind::NotReadable, {}});
        }
        waited_ = false;
        plan_.lines = 0;
        plan_.columns.clear();
        options_ = given_;
        if (auto done = read(input); !done) {
            return tl::unexpected(done.error());
        }
    }
    if (plan_.lines == 0) {
        return tl::unexpected(ImportError{ImportErrorKind::NoLines, {}});
    }
    if (!orderKnown_) {
        order_ = given_.dateOrder == DateOrder::Unknown ? dates_.order() : given_.dateOrder;
    }
    plan_.dateOrder = order_;
    for (auto& record : held_) {
        planRecord(std::move(record));
        if (auto handed = handOver(kLinesOfAPart); !handed) {
            return tl::unexpected(handed.error());
        }
    }
    std::stable_sort(plan_.rejected.begin(), plan_.rejected.end(),
                     [](const RejectedLine& a, const RejectedLine& b) { return a.line < b.line; });
    if (auto handed = handOver(1); !handed) {
        return tl::unexpected(handed.error());
    }
    return std::move(plan_);
}

} // namespace

tl::expected<ImportPlan, ImportError> planCsvImport(std::istream& input, const std::string& fileName,
                                                    const record::StationRecord& station,
                                                    const ImportOptions& options,
                                                    const ImportProgress& progress) {
    return Planner{fileName, station, options, {}, progress}.plan(input);
}

tl::expected<ImportPlan, ImportError> planCsvInParts(std::istream& input, const std::string& fileName,
                                                     const record::StationRecord& station,
                                                     const ImportOptions& options, const PlanPart& take,
                                                     const ImportProgress& progress) {
    return Planner{fileName, station, options, take, progress}.plan(input);
}

} // namespace wickbook::exchange
