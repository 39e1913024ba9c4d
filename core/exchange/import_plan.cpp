// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"

#include "core/exchange/cell_text.h"
#include "core/exchange/column_guess.h"
#include "core/exchange/import_row.h"
#include "core/exchange/plan_places.h"

#include <algorithm>

namespace wickbook::exchange {

namespace {

std::string detailOf(CsvErrorKind kind) {
    switch (kind) {
    case CsvErrorKind::OpenQuote:
        return "open-quote";
    case CsvErrorKind::TextAfterQuote:
        return "text-after-quote";
    case CsvErrorKind::QuoteInText:
        return "quote-in-text";
    case CsvErrorKind::LineTooLong:
        return "line-too-long";
    case CsvErrorKind::NulByte:
        return "nul-byte";
    case CsvErrorKind::NotReadable:
        return "broken-utf-16";
    case CsvErrorKind::Empty:
        break;
    }
    return {};
}

bool allDigits(std::string_view text) {
    return !text.empty() &&
           std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

bool isNumberField(const std::optional<ImportField>& field) {
    return field == ImportField::Dry || field == ImportField::Wet || field == ImportField::Pressure ||
           field == ImportField::Maximum || field == ImportField::Minimum;
}

/// Plans one file line by line; lines whose dates wait for the rest of the file are held back.
class Planner {
public:
    Planner(const std::string& fileName, const record::StationRecord& station, const ImportOptions& options)
        : fileName_(fileName), station_(station), options_(options) {}

    tl::expected<ImportPlan, ImportError> plan(std::istream& input, const ImportProgress& progress);

private:
    tl::expected<void, ImportError> takeHeader(CsvReader& reader);
    void takeRecord(CsvRecord record);
    void rejectUnreadable(const CsvError& error);
    [[nodiscard]] bool looksLikeDecimalComma(const std::vector<std::string>& cells) const;
    bool rejectRagged(CsvRecord& record);
    bool waitsForDates(const CsvRecord& record);
    void planRecord(CsvRecord record);
    void reject(RejectedLine line, std::int64_t number, std::string text);

    const std::string& fileName_;
    const record::StationRecord& station_;
    ImportOptions options_;
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
                                          detailOf(kind)});
    }
    auto columns = options_.headless ? guessColumns(numberedHeader((*header)->cells.size()), options_)
                                     : guessColumns((*header)->cells, options_);
    if (!columns) {
        return tl::unexpected(std::move(columns.error()));
    }
    plan_.columns = std::move(*columns);
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
    reject({{}, 0, {}, RejectReason::Unreadable, {}, {}, detailOf(error.kind)}, error.line, error.text);
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

bool Planner::rejectRagged(CsvRecord& record) {
    const std::size_t expected = plan_.columns.size();
    // Spreadsheets write separators behind the last column.
    while (record.cells.size() > expected && trimmedCell(record.cells.back()).empty()) {
        record.cells.pop_back();
    }
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
            waits = (dates_.look(record.cells[i]) && order_ == DateOrder::Unknown) || waits;
        }
    }
    return waits;
}

void Planner::takeRecord(CsvRecord record) {
    if (record.cells.size() == 1 && trimmedCell(record.cells.front()).empty()) {
        return; // a line of blanks
    }
    ++plan_.lines;
    if (rejectRagged(record)) {
        return;
    }
    // Once a line waits, all behind it do, so that the plan keeps the order of the file.
    if (waitsForDates(record) || !held_.empty()) {
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

tl::expected<ImportPlan, ImportError> Planner::plan(std::istream& input, const ImportProgress& progress) {
    CsvReader reader(input, options_.separator);
    order_ = options_.dateOrder;
    if (const auto header = takeHeader(reader); !header) {
        return tl::unexpected(header.error());
    }
    plan_.format = reader.format();
    for (std::int64_t count = 1;; ++count) {
        if (progress && count % kLinesBetweenQuestions == 0 && !progress(reader.bytesRead())) {
            return tl::unexpected(ImportError{ImportErrorKind::Stopped, {}});
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
        if (plan_.lines > kMostLines) {
            return tl::unexpected(ImportError{ImportErrorKind::TooManyLines, std::to_string(kMostLines)});
        }
    }
    if (plan_.lines == 0) {
        return tl::unexpected(ImportError{ImportErrorKind::NoLines, {}});
    }
    order_ = options_.dateOrder == DateOrder::Unknown ? dates_.order() : options_.dateOrder;
    plan_.dateOrder = order_;
    for (auto& record : held_) {
        planRecord(std::move(record));
    }
    std::stable_sort(plan_.rejected.begin(), plan_.rejected.end(),
                     [](const RejectedLine& a, const RejectedLine& b) { return a.line < b.line; });
    plan_.format = reader.format();
    return std::move(plan_);
}

} // namespace

tl::expected<ImportPlan, ImportError> planCsvImport(std::istream& input, const std::string& fileName,
                                                    const record::StationRecord& station,
                                                    const ImportOptions& options,
                                                    const ImportProgress& progress) {
    return Planner{fileName, station, options}.plan(input, progress);
}

} // namespace wickbook::exchange
