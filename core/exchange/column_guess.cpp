// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/column_guess.h"

#include "core/exchange/cell_text.h"
#include "core/exchange/column_words.h"

#include <algorithm>
#include <array>

namespace wickbook::exchange {

namespace {

/// Takes a unit off the end.
bool cutUnit(std::string& name, std::string_view unit) {
    if (name.size() <= unit.size() + 1 || !name.ends_with(unit) ||
        name[name.size() - unit.size() - 1] != '_') {
        return false;
    }
    name.erase(name.size() - unit.size() - 1);
    return true;
}

bool isTemperature(ImportField field) {
    return field == ImportField::Dry || field == ImportField::Wet || field == ImportField::Maximum ||
           field == ImportField::Minimum;
}

bool isTimeField(ImportField field) {
    return field == ImportField::Time || field == ImportField::Clock || field == ImportField::Date;
}

std::optional<std::size_t> columnNamed(const std::vector<std::string>& header, const std::string& name) {
    const auto exact = std::find(header.begin(), header.end(), name);
    if (exact != header.end()) {
        return static_cast<std::size_t>(exact - header.begin());
    }
    const auto wanted = loweredAscii(trimmedCell(name));
    for (std::size_t i = 0; i < header.size(); ++i) {
        if (loweredAscii(trimmedCell(header[i])) == wanted) {
            return i;
        }
    }
    return std::nullopt;
}

} // namespace

bool carries(const std::vector<GuessedColumn>& columns, ImportField field) {
    return std::any_of(columns.begin(), columns.end(),
                       [field](const GuessedColumn& column) { return column.field == field; });
}

HeaderMeaning headerMeaning(std::string_view header) {
    std::string name = plainHeader(header);
    HeaderMeaning meaning;
    bool pressureUnit = false;
    // "°C" leaves "c" behind, as "deg C" and "_c" do.
    for (const std::string_view word : {"degc", "celsius", "centigrade", "c"}) {
        if (!meaning.unit && cutUnit(name, word)) {
            meaning.unit = units::TemperatureUnit::Celsius;
        }
    }
    for (const std::string_view word : {"degf", "fahrenheit", "f"}) {
        if (!meaning.unit && cutUnit(name, word)) {
            meaning.unit = units::TemperatureUnit::Fahrenheit;
        }
    }
    if (meaning.unit) {
        for (const std::string_view word : {"deg", "degrees"}) {
            cutUnit(name, word);
        }
    } else {
        // A millibar is a hectopascal.
        for (const std::string_view word : {"hpa", "mbar", "mb", "millibar", "millibars"}) {
            pressureUnit = pressureUnit || cutUnit(name, word);
        }
    }
    meaning.utc = name == "utc" || name.ends_with("_utc") || name.starts_with("utc_") ||
                  name.ends_with("_gmt") || name.ends_with("_z");
    const auto words = columnWords();
    const auto found = std::find_if(words.begin(), words.end(), [&](const FieldWord& word) {
        return word.name == name ||
               (meaning.utc && isTimeField(word.field) &&
                (std::string(word.name) + "_gmt" == name || std::string(word.name) + "_z" == name ||
                 std::string(word.name) + "_utc" == name));
    });
    if (found == words.end()) {
        return meaning;
    }
    const bool unitFits = (!meaning.unit || isTemperature(found->field)) &&
                          (!pressureUnit || found->field == ImportField::Pressure);
    if (unitFits) {
        meaning.field = found->field;
        meaning.rank = static_cast<int>(found - words.begin());
    }
    return meaning;
}

namespace {

/// What was said of the columns, before any guess.
tl::expected<void, ImportError> takeGiven(std::vector<GuessedColumn>& columns,
                                          const std::vector<std::string>& header,
                                          const ImportOptions& options) {
    const auto give = [&](std::size_t at, ImportField field) -> tl::expected<void, ImportError> {
        if (carries(columns, field) || columns[at].given) {
            return tl::unexpected(ImportError{ImportErrorKind::FieldTwice, std::string(fieldName(field))});
        }
        columns[at].field = field;
        columns[at].given = true;
        return {};
    };
    if (options.layout) {
        for (std::size_t at = 0; at < columns.size() && at < options.layout->size(); ++at) {
            if (const auto& field = options.layout->at(at)) {
                if (auto given = give(at, *field); !given) {
                    return given;
                }
            }
        }
        return {};
    }
    for (const auto& [name, field] : options.columns) {
        const auto at = columnNamed(header, name);
        if (!at) {
            return tl::unexpected(ImportError{ImportErrorKind::UnknownMappedColumn, name});
        }
        if (auto given = give(*at, field); !given) {
            return given;
        }
    }
    return {};
}

/// Fields that only an export of ours means by these names.
bool isExportsOwn(ImportField field) {
    return field == ImportField::Zone || field == ImportField::UtcOffset;
}

/// Gives each field that is still free to the column whose header names it best.
void guessByHeader(std::vector<GuessedColumn>& columns, const std::vector<HeaderMeaning>& meanings,
                   bool exported) {
    for (int number = 0; number < kImportFieldCount; ++number) {
        const auto field = static_cast<ImportField>(number);
        if (carries(columns, field) || (isExportsOwn(field) && !exported)) {
            continue;
        }
        std::optional<std::size_t> best;
        for (std::size_t i = 0; i < columns.size(); ++i) {
            if (!columns[i].given && meanings[i].field == field &&
                (!best || meanings[i].rank < meanings[*best].rank)) {
                best = i;
            }
        }
        if (best) {
            columns[*best].field = field;
        }
    }
}

std::vector<GuessedColumn> unnamedColumns(const std::vector<std::string>& header,
                                          std::vector<HeaderMeaning>& meanings) {
    std::vector<GuessedColumn> columns;
    for (const auto& text : header) {
        meanings.push_back(headerMeaning(text));
        columns.push_back({text, std::nullopt, false, meanings.back().unit, meanings.back().utc});
    }
    return columns;
}

} // namespace

bool isExportHeader(const std::vector<std::string>& header) {
    static constexpr std::array<std::string_view, 6> kOurs{"time_utc", "utc_offset",     "dry_read",
                                                           "wet_read", "missing_reason", "read_back"};
    return std::all_of(kOurs.begin(), kOurs.end(), [&](std::string_view name) {
        return std::any_of(header.begin(), header.end(),
                           [name](const std::string& text) { return trimmedCell(text) == name; });
    });
}

std::vector<std::string> numberedHeader(std::size_t count) {
    std::vector<std::string> header;
    for (std::size_t i = 1; i <= count; ++i) {
        header.push_back(std::to_string(i));
    }
    return header;
}

bool carriesTime(const std::vector<GuessedColumn>& columns) {
    return carries(columns, ImportField::Time) ||
           (carries(columns, ImportField::Date) &&
            (carries(columns, ImportField::Hour) || carries(columns, ImportField::Clock)));
}

bool carriesBulb(const std::vector<GuessedColumn>& columns) {
    return carries(columns, ImportField::Dry) || carries(columns, ImportField::Wet);
}

std::vector<GuessedColumn> proposedColumns(const std::vector<std::string>& header,
                                           const std::vector<std::vector<std::string>>& rows) {
    std::vector<HeaderMeaning> meanings;
    auto columns = unnamedColumns(header, meanings);
    guessByHeader(columns, meanings, isExportHeader(header));
    guessByValues(columns, rows);
    return columns;
}

tl::expected<std::vector<GuessedColumn>, ImportError> guessColumns(const std::vector<std::string>& header,
                                                                   const ImportOptions& options) {
    std::vector<HeaderMeaning> meanings;
    auto columns = unnamedColumns(header, meanings);
    if (const auto given = takeGiven(columns, header, options); !given) {
        return tl::unexpected(given.error());
    }
    if (!options.layout) {
        guessByHeader(columns, meanings, isExportHeader(header));
    }
    if (!carriesTime(columns)) {
        return tl::unexpected(ImportError{ImportErrorKind::NoTimeColumn, csvLine(header)});
    }
    if (!carriesBulb(columns)) {
        return tl::unexpected(ImportError{ImportErrorKind::NoDryOrWetColumn, csvLine(header)});
    }
    return columns;
}

} // namespace wickbook::exchange
