// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/derive_file.h"

#include "app/cli/console.h"
#include "app/cli/finding_text.h"
#include "app/cli/input.h"
#include "app/cli/options.h"
#include "app/cli/pair_file_columns.h"
#include "core/exchange/csv.h"
#include "core/record/observation.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wickbook::cli {

namespace {

/// Reads one row's cells over the defaults. Cells that can't be read become findings.
class RowReader {
public:
    RowReader(const PairFileColumns& columns, const PairDefaults& defaults)
        : columns_(columns), defaults_(defaults) {}

    PairResult read(const std::vector<std::string>& row) {
        PairDefaults given = defaults_;
        std::vector<checks::Finding> troubles;
        const auto number = [&](PairField field) -> std::optional<double> {
            const std::string_view text = columns_.cell(row, field);
            if (text.empty()) {
                return std::nullopt;
            }
            const auto value = realFrom(text);
            if (!value) {
                troubles.push_back(badNumber(std::string{pairFieldName(field)}, std::string{text}));
                return std::nullopt;
            }
            return value;
        };
        const auto dry = number(PairField::Dry);
        const auto wet = number(PairField::Wet);
        for (const PairField field : {PairField::Dry, PairField::Wet}) {
            if (columns_.cell(row, field).empty()) {
                troubles.push_back(missingValue(std::string{pairFieldName(field)}));
            }
        }
        if (const auto pressure = number(PairField::Pressure)) {
            given.pressure = pressure;
        }
        if (const auto coefficient = number(PairField::Coefficient)) {
            given.coefficient = coefficient;
        }
        readWords(row, given, troubles);
        if (!given.exposure && !given.coefficient && columns_.cell(row, PairField::Exposure).empty()) {
            troubles.push_back(missingValue(std::string{pairFieldName(PairField::Exposure)}));
        }

        PairResult result = preparedResult(given);
        result.findings = std::move(troubles);
        if (dry && wet && result.findings.empty()) {
            result.input.dry = units::Temperature::fromCelsius(*dry);
            result.input.wet = units::Temperature::fromCelsius(*wet);
            deriveInto(result);
        }
        return result;
    }

private:
    void readWords(const std::vector<std::string>& row, PairDefaults& given,
                   std::vector<checks::Finding>& troubles) const {
        if (const std::string_view text = columns_.cell(row, PairField::Wick); !text.empty()) {
            if (const auto wick = record::wickFromName(text)) {
                given.wick = *wick;
            } else {
                troubles.push_back(badWord(std::string{pairFieldName(PairField::Wick)}, std::string{text}));
            }
        }
        if (const std::string_view text = columns_.cell(row, PairField::Exposure); !text.empty()) {
            if (const auto exposure = psychrometry::exposureFromName(text)) {
                given.exposure = *exposure;
            } else {
                troubles.push_back(
                    badWord(std::string{pairFieldName(PairField::Exposure)}, std::string{text}));
            }
        }
    }

    const PairFileColumns& columns_;
    const PairDefaults& defaults_;
};

Refusal headerRefusal(const Input& input, const exchange::CsvError& error) {
    if (error.kind == exchange::CsvErrorKind::Empty) {
        return {ExitCode::BadInput,
                fmt::format("{} is empty; its first line must name the columns, among them dry_c and wet_c.",
                            input.name())};
    }
    return {
        ExitCode::BadInput,
        fmt::format("{}: the first line can't be read as CSV; it must name the columns, among them dry_c and "
                    "wet_c.",
                    input.name())};
}

/// Where nobody reads along, a full disk is noticed and progress told every so many rows.
constexpr std::int64_t kRowsBetweenLooks = 512;

/// What came of the rows, for the sentence at the end.
struct Tally {
    std::int64_t rows = 0;
    std::int64_t derived = 0;
    std::int64_t marked = 0;

    void count(const PairResult& result) {
        ++rows;
        derived += result.derivation && !result.derivation->problem ? 1 : 0;
        marked += result.findings.empty() ? 0 : 1;
    }
};

} // namespace

Outcome<ExitCode> deriveFile(const std::string& inPath, const std::string& outPath,
                             const PairDefaults& defaults, bool strict) {
    auto input = Input::open(inPath);
    if (!input) {
        return tl::unexpected(input.error());
    }
    exchange::CsvReader reader(input->stream());
    auto first = reader.next();
    if (!first || !*first) {
        return tl::unexpected(headerRefusal(
            *input, first ? exchange::CsvError{exchange::CsvErrorKind::Empty, 1, {}} : first.error()));
    }
    const auto columns = PairFileColumns::from(std::move((*first)->cells));
    if (!columns) {
        return refuse(fmt::format("{}: {}", input->name(), columns.error().sentence));
    }
    if (!columns->has(PairField::Exposure) && !columns->has(PairField::Coefficient) && !defaults.exposure &&
        !defaults.coefficient) {
        return refuse(
            fmt::format("Say how the thermometers hang: --exposure with one of {}, or --coefficient; {} has "
                        "no such column.",
                        exposureNames(false), input->name()));
    }
    auto output = Output::open(outPath);
    if (!output) {
        return tl::unexpected(output.error());
    }
    output->csv(columns->outHeader());

    RowReader rows(*columns, defaults);
    Tally tally;
    ProgressLine progress("deriving");
    const bool readAlong = output->isReadAlong();
    std::string line;
    while (true) {
        auto record = reader.next();
        if (record && !*record) {
            break;
        }
        PairResult result;
        std::vector<std::string> cells;
        if (!record) {
            result = preparedResult(defaults);
            say(fmt::format(
                "{}, line {}: the row can't be read as CSV and keeps its place without results: {}",
                input->name(), record.error().line, record.error().text));
            result.findings = {unreadableRow()};
            if (record.error().kind == exchange::CsvErrorKind::NotReadable && input->stream().bad()) {
                return refuse(fmt::format("{} can't be read beyond line {}; look whether its disk or network "
                                          "is there, then try again.",
                                          input->name(), record.error().line));
            }
        } else if ((*record)->cells.size() != columns->count()) {
            result = preparedResult(defaults);
            cells = std::move((*record)->cells);
            say(fmt::format("{}, line {}: {} cells where the header has {}; the row keeps its place without "
                            "results: {}",
                            input->name(), (*record)->line, cells.size(), columns->count(), (*record)->text));
            result.findings = {
                raggedRow(static_cast<double>(cells.size()), static_cast<double>(columns->count()))};
        } else {
            cells = std::move((*record)->cells);
            result = rows.read(cells);
        }
        tally.count(result);
        line.clear();
        columns->appendOutRow(line, cells, result);
        line += exchange::kCsvLineEnd;
        output->text(line);
        if (readAlong || tally.rows % kRowsBetweenLooks == 0) {
            progress.show(reader.bytesRead(), input->size());
            if (auto written = output->flush(); !written) {
                return tl::unexpected(written.error());
            }
        }
    }
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    say(fmt::format("{}: {} {} read, {} derived, {} with findings.", input->name(), tally.rows,
                    tally.rows == 1 ? "row" : "rows", tally.derived, tally.marked));
    return strict && tally.marked > 0 ? ExitCode::Found : ExitCode::Done;
}

} // namespace wickbook::cli
