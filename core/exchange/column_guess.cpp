// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/column_guess.h"

#include "core/exchange/cell_text.h"

#include <algorithm>
#include <array>

namespace wickbook::exchange {

namespace {

struct FieldWord {
    std::string_view name; ///< as normalised
    ImportField field;
};

/// Names seen at the head of registers (common practice, no source); the first of a field is the one that
/// wins where two columns claim it.
constexpr std::array kWords{
    FieldWord{"time_utc", ImportField::Time},
    FieldWord{"utc_time", ImportField::Time},
    FieldWord{"datetime_utc", ImportField::Time},
    FieldWord{"timestamp_utc", ImportField::Time},
    FieldWord{"timestamp", ImportField::Time},
    FieldWord{"datetime", ImportField::Time},
    FieldWord{"date_time", ImportField::Time},
    FieldWord{"time", ImportField::Time},
    FieldWord{"time_local", ImportField::Time},
    FieldWord{"local_time", ImportField::Time},
    FieldWord{"utc", ImportField::Time},
    FieldWord{"date", ImportField::Date},
    FieldWord{"local_date", ImportField::Date},
    FieldWord{"date_local", ImportField::Date},
    FieldWord{"date_utc", ImportField::Date},
    FieldWord{"hour", ImportField::Hour},
    FieldWord{"observing_hour", ImportField::Hour},
    FieldWord{"nominal_hour", ImportField::Hour},
    FieldWord{"obs_hour", ImportField::Hour},
    FieldWord{"clock", ImportField::Clock},
    FieldWord{"clock_time", ImportField::Clock},
    FieldWord{"time_of_day", ImportField::Clock},
    FieldWord{"actual_time", ImportField::Clock},
    FieldWord{"read_at", ImportField::Clock},
    FieldWord{"dry", ImportField::Dry},
    FieldWord{"dry_bulb", ImportField::Dry},
    FieldWord{"dry_read", ImportField::Dry},
    FieldWord{"dry_bulb_read", ImportField::Dry},
    FieldWord{"drybulb", ImportField::Dry},
    FieldWord{"dry_bulb_temperature", ImportField::Dry},
    FieldWord{"dry_bulb_temp", ImportField::Dry},
    FieldWord{"dry_temperature", ImportField::Dry},
    FieldWord{"dry_temp", ImportField::Dry},
    FieldWord{"t_dry", ImportField::Dry},
    FieldWord{"tdry", ImportField::Dry},
    FieldWord{"air_temperature", ImportField::Dry},
    FieldWord{"temperature", ImportField::Dry},
    FieldWord{"ta", ImportField::Dry},
    FieldWord{"wet", ImportField::Wet},
    FieldWord{"wet_bulb", ImportField::Wet},
    FieldWord{"wet_read", ImportField::Wet},
    FieldWord{"wet_bulb_read", ImportField::Wet},
    FieldWord{"wetbulb", ImportField::Wet},
    FieldWord{"wet_bulb_temperature", ImportField::Wet},
    FieldWord{"wet_bulb_temp", ImportField::Wet},
    FieldWord{"wet_temperature", ImportField::Wet},
    FieldWord{"wet_temp", ImportField::Wet},
    FieldWord{"t_wet", ImportField::Wet},
    FieldWord{"twet", ImportField::Wet},
    FieldWord{"tw", ImportField::Wet},
    FieldWord{"tb", ImportField::Wet},
    FieldWord{"wick", ImportField::Wick},
    FieldWord{"wick_state", ImportField::Wick},
    FieldWord{"water_or_ice", ImportField::Wick},
    FieldWord{"bulb_state", ImportField::Wick},
    FieldWord{"station_pressure", ImportField::Pressure},
    FieldWord{"pressure", ImportField::Pressure},
    FieldWord{"air_pressure", ImportField::Pressure},
    FieldWord{"surface_air_pressure", ImportField::Pressure},
    FieldWord{"weather", ImportField::Weather},
    FieldWord{"present_weather", ImportField::Weather},
    FieldWord{"wind_beaufort", ImportField::Wind},
    FieldWord{"wind_force", ImportField::Wind},
    FieldWord{"beaufort", ImportField::Wind},
    FieldWord{"wind", ImportField::Wind},
    FieldWord{"max", ImportField::Maximum},
    FieldWord{"maximum", ImportField::Maximum},
    FieldWord{"max_temperature", ImportField::Maximum},
    FieldWord{"maximum_temperature", ImportField::Maximum},
    FieldWord{"max_temp", ImportField::Maximum},
    FieldWord{"tmax", ImportField::Maximum},
    FieldWord{"min", ImportField::Minimum},
    FieldWord{"minimum", ImportField::Minimum},
    FieldWord{"min_temperature", ImportField::Minimum},
    FieldWord{"minimum_temperature", ImportField::Minimum},
    FieldWord{"min_temp", ImportField::Minimum},
    FieldWord{"tmin", ImportField::Minimum},
    FieldWord{"note", ImportField::Note},
    FieldWord{"notes", ImportField::Note},
    FieldWord{"remark", ImportField::Note},
    FieldWord{"remarks", ImportField::Note},
    FieldWord{"comment", ImportField::Note},
    FieldWord{"comments", ImportField::Note},
    FieldWord{"observer", ImportField::Observer},
    FieldWord{"initials", ImportField::Observer},
    FieldWord{"read_by", ImportField::Observer},
    FieldWord{"origin", ImportField::Origin},
    FieldWord{"quality", ImportField::Quality},
    FieldWord{"unit", ImportField::Unit},
    FieldWord{"units", ImportField::Unit},
    FieldWord{"temperature_unit", ImportField::Unit},
    FieldWord{"pressure_source", ImportField::PressureSource},
};

/// "Dry bulb [°C]" → "dry_bulb_c": letters and digits, one '_' between words.
std::string normalised(std::string_view header) {
    std::string result;
    bool gap = false;
    for (const char c : loweredAscii(header)) {
        const bool kept = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        if (kept) {
            if (gap && !result.empty()) {
                result.push_back('_');
            }
            result.push_back(c);
        }
        gap = !kept;
    }
    return result;
}

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

bool carries(const std::vector<GuessedColumn>& columns, ImportField field) {
    return std::any_of(columns.begin(), columns.end(),
                       [field](const GuessedColumn& column) { return column.field == field; });
}

} // namespace

HeaderMeaning headerMeaning(std::string_view header) {
    std::string name = normalised(header);
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
    const auto found = std::find_if(kWords.begin(), kWords.end(), [&](const FieldWord& word) {
        return word.name == name ||
               (meaning.utc && isTimeField(word.field) &&
                (std::string(word.name) + "_gmt" == name || std::string(word.name) + "_z" == name ||
                 std::string(word.name) + "_utc" == name));
    });
    if (found == kWords.end()) {
        return meaning;
    }
    const bool unitFits = (!meaning.unit || isTemperature(found->field)) &&
                          (!pressureUnit || found->field == ImportField::Pressure);
    if (unitFits) {
        meaning.field = found->field;
        meaning.rank = static_cast<int>(found - kWords.begin());
    }
    return meaning;
}

tl::expected<std::vector<GuessedColumn>, ImportError> guessColumns(const std::vector<std::string>& header,
                                                                   const ImportOptions& options) {
    std::vector<GuessedColumn> columns;
    std::vector<HeaderMeaning> meanings;
    for (const auto& text : header) {
        meanings.push_back(headerMeaning(text));
        columns.push_back({text, std::nullopt, false, meanings.back().unit, meanings.back().utc});
    }
    for (const auto& [name, field] : options.columns) {
        const auto at = columnNamed(header, name);
        if (!at) {
            return tl::unexpected(ImportError{ImportErrorKind::UnknownMappedColumn, name});
        }
        if (carries(columns, field) || columns[*at].given) {
            return tl::unexpected(ImportError{ImportErrorKind::FieldTwice, std::string(fieldName(field))});
        }
        columns[*at].field = field;
        columns[*at].given = true;
    }
    for (int number = 0; number < kImportFieldCount; ++number) {
        const auto field = static_cast<ImportField>(number);
        if (carries(columns, field)) {
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
    std::string headerText = csvLine(header);
    const bool dated = carries(columns, ImportField::Date) &&
                       (carries(columns, ImportField::Hour) || carries(columns, ImportField::Clock));
    if (!carries(columns, ImportField::Time) && !dated) {
        return tl::unexpected(ImportError{ImportErrorKind::NoTimeColumn, std::move(headerText)});
    }
    if (!carries(columns, ImportField::Dry) && !carries(columns, ImportField::Wet)) {
        return tl::unexpected(ImportError{ImportErrorKind::NoDryOrWetColumn, std::move(headerText)});
    }
    return columns;
}

} // namespace wickbook::exchange
