// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/derive_file.h"

#include "app/cli/console.h"
#include "app/cli/finding_text.h"
#include "app/cli/input.h"
#include "app/cli/options.h"
#include "core/exchange/csv.h"
#include "core/record/observation.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wickbook::cli {

namespace {

constexpr std::string_view kDry = "dry_c";
constexpr std::string_view kWet = "wet_c";
constexpr std::string_view kPressure = "pressure_hpa";
constexpr std::string_view kWick = "wick";
constexpr std::string_view kExposure = "exposure";
constexpr std::string_view kCoefficient = "coefficient_per_k";
constexpr std::array<std::string_view, 4> kOptional{kPressure, kWick, kExposure, kCoefficient};

std::string trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    return first == std::string_view::npos
               ? std::string{}
               : std::string{text.substr(first, text.find_last_not_of(" \t") - first + 1)};
}

/// Which cell of a row holds what, worked out once from the header.
class PairColumns {
public:
    static Outcome<PairColumns> from(std::vector<std::string> header);

    [[nodiscard]] std::size_t count() const { return header_.size(); }
    [[nodiscard]] bool has(std::string_view name) const { return at(name).has_value(); }
    /// The cell without blanks round it; empty where the file has no such column.
    [[nodiscard]] std::string cell(const std::vector<std::string>& row, std::string_view name) const {
        const auto index = at(name);
        return index && *index < row.size() ? trimmed(row[*index]) : std::string{};
    }
    /// The row as it goes out: its own cells, the used values laid over the four, the other results behind.
    [[nodiscard]] std::vector<std::string> outRow(std::vector<std::string> row,
                                                  const PairResult& result) const;
    [[nodiscard]] std::vector<std::string> outHeader() const;

private:
    [[nodiscard]] std::optional<std::size_t> at(std::string_view name) const {
        const auto found = std::find(names_.begin(), names_.end(), name);
        return found == names_.end() ? std::nullopt
                                     : std::optional{static_cast<std::size_t>(found - names_.begin())};
    }

    std::vector<std::string> header_; ///< as it stood
    std::vector<std::string> names_;  ///< without blanks round them
};

Outcome<PairColumns> PairColumns::from(std::vector<std::string> header) {
    PairColumns columns;
    columns.header_ = std::move(header);
    for (const std::string& name : columns.header_) {
        columns.names_.push_back(trimmed(name));
    }
    for (const std::string_view needed : {kDry, kWet}) {
        if (!columns.has(needed)) {
            return refuse(
                fmt::format("The file has no column {}; its first line must name the columns, among them "
                            "dry_c and wet_c.",
                            needed));
        }
    }
    auto results = resultHeader();
    std::erase_if(results, [](const std::string& name) {
        return std::find(kOptional.begin(), kOptional.end(), name) != kOptional.end();
    });
    for (const std::string& name : results) {
        if (columns.has(name)) {
            return refuse(
                fmt::format("The file has a column {} already, which is a name of the results; rename or "
                            "remove it and try again.",
                            name));
        }
    }
    for (const std::string_view name : {kDry, kWet, kPressure, kWick, kExposure, kCoefficient}) {
        if (std::count(columns.names_.begin(), columns.names_.end(), name) > 1) {
            return refuse(
                fmt::format("The file has two columns {}; rename or remove one and try again.", name));
        }
    }
    return columns;
}

std::vector<std::string> PairColumns::outHeader() const {
    std::vector<std::string> header = header_;
    for (std::string& name : resultHeader()) {
        if (!has(name)) {
            header.push_back(std::move(name));
        }
    }
    return header;
}

std::vector<std::string> PairColumns::outRow(std::vector<std::string> row, const PairResult& result) const {
    row.resize(count());
    const auto header = resultHeader();
    auto cells = resultRow(result);
    for (std::size_t i = 0; i < header.size(); ++i) {
        const auto own = at(header[i]);
        if (!own) {
            row.push_back(std::move(cells[i]));
        } else if (!cells[i].empty()) {
            row[*own] = std::move(cells[i]);
        }
        // A cell that could not be used stays as it stood: the finding speaks of it.
    }
    return row;
}

/// Reads one row's cells over the defaults. Cells that can't be read become findings.
class RowReader {
public:
    RowReader(const PairColumns& columns, const PairDefaults& defaults)
        : columns_(columns), defaults_(defaults) {}

    PairResult read(const std::vector<std::string>& row) {
        PairDefaults given = defaults_;
        std::vector<checks::Finding> troubles;
        const auto number = [&](std::string_view column) -> std::optional<double> {
            const std::string text = columns_.cell(row, column);
            if (text.empty()) {
                return std::nullopt;
            }
            const auto value = realFrom(text);
            if (!value) {
                troubles.push_back(badNumber(std::string{column}, text));
                return std::nullopt;
            }
            return value;
        };
        const auto dry = number(kDry);
        const auto wet = number(kWet);
        for (const std::string_view column : {kDry, kWet}) {
            if (columns_.cell(row, column).empty()) {
                troubles.push_back(missingValue(std::string{column}));
            }
        }
        if (const auto pressure = number(kPressure)) {
            given.pressure = pressure;
        }
        if (const auto coefficient = number(kCoefficient)) {
            given.coefficient = coefficient;
        }
        readWords(row, given, troubles);
        if (!given.exposure && !given.coefficient && columns_.cell(row, kExposure).empty()) {
            troubles.push_back(missingValue(std::string{kExposure}));
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
        if (const std::string text = columns_.cell(row, kWick); !text.empty()) {
            if (const auto wick = record::wickFromName(text)) {
                given.wick = *wick;
            } else {
                troubles.push_back(badWord(std::string{kWick}, text));
            }
        }
        if (const std::string text = columns_.cell(row, kExposure); !text.empty()) {
            if (const auto exposure = psychrometry::exposureFromName(text)) {
                given.exposure = *exposure;
            } else {
                troubles.push_back(badWord(std::string{kExposure}, text));
            }
        }
    }

    const PairColumns& columns_;
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
    const auto columns = PairColumns::from(std::move((*first)->cells));
    if (!columns) {
        return refuse(fmt::format("{}: {}", input->name(), columns.error().sentence));
    }
    if (!columns->has(kExposure) && !columns->has(kCoefficient) && !defaults.exposure &&
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
    while (true) {
        auto record = reader.next();
        if (record && !*record) {
            break;
        }
        PairResult result = preparedResult(defaults);
        std::vector<std::string> cells;
        if (!record) {
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
        output->csv(columns->outRow(std::move(cells), result));
        progress.show(reader.bytesRead(), input->size());
        if (auto written = output->flush(); !written) {
            return tl::unexpected(written.error());
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
