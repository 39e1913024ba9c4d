// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/observation_columns.h"

#include "core/exchange/spreadsheet_text.h"
#include "core/exchange/whirls_text.h"
#include "core/units/number_text.h"

#include <array>

namespace wickbook::exchange {

namespace {

using checks::CheckedReading;
using record::StationRecord;
using units::dataText;

/// Digits as read; "below" where the column had gone into the bulb.
std::string readText(const record::BulbReading& bulb) {
    if (bulb.belowScale) {
        return "below";
    }
    return bulb.value ? bulb.value->value.toText() : std::string{};
}

std::string_view unitText(const record::BulbReading& bulb) {
    return bulb.value ? temperatureUnitText(bulb.value->unit) : std::string_view{};
}

/// "c" or "f"; "f;c" where the two thermometers differ.
std::string pairUnit(std::string_view first, std::string_view second) {
    if (first.empty() || second.empty() || first == second) {
        return std::string(first.empty() ? second : first);
    }
    return std::string(first) + ";" + std::string(second);
}

std::string rowUnit(const record::Observation& values) {
    return pairUnit(unitText(values.dry), unitText(values.wet));
}

std::string readText(const std::optional<units::ReadTemperature>& read) {
    return read ? read->value.toText() : std::string{};
}

std::string maxMinUnit(const record::Observation& values) {
    const auto name = [](const std::optional<units::ReadTemperature>& read) {
        return read ? temperatureUnitText(read->unit) : std::string_view{};
    };
    return pairUnit(name(values.maximum), name(values.minimum));
}

std::string careText(record::WickCare care) {
    return care == record::WickCare::None ? "" : care == record::WickCare::Wetted ? "wetted" : "changed";
}

std::string usedText(const record::UsedBulb& bulb) {
    return bulb.temperature ? dataText(bulb.temperature->celsius()) : std::string{};
}

/// A pressure worked out from the elevation is shown where it was used for a humidity.
bool pressureUsed(const record::DerivedReading& reading) {
    return reading.pressureSource == record::PressureSource::Read || reading.derivation.has_value();
}

std::string pressureText(const record::DerivedReading& reading) {
    if (reading.pressureSource == record::PressureSource::Read && reading.values().pressure) {
        return reading.values().pressure->toText();
    }
    return pressureUsed(reading) ? dataText(reading.pressure.hectopascals()) : std::string{};
}

std::string humidityUncertainty(const record::DerivedReading& reading) {
    return reading.derivation && reading.derivation->uncertainty
               ? dataText(reading.derivation->uncertainty->relativeHumidityU95)
               : std::string{};
}

std::string codes(const std::vector<checks::Finding>& findings) {
    std::string text;
    for (const auto& finding : findings) {
        text += (text.empty() ? "" : ";") + std::string(finding.code);
    }
    return text;
}

/// A missing reading has its reason in the note.
std::string noteText(const record::Observation& values) {
    if (values.origin != record::Origin::Missing || values.missingReason.empty()) {
        return values.note;
    }
    return values.note.empty() ? values.missingReason : values.missingReason + "; " + values.note;
}

constexpr std::array kColumns{
    ObservationColumn{"time_utc", "dateTime", "", "", "Moment of the reading, UTC.",
                      [](const CheckedReading& r, const StationRecord&) {
                          return record::instantText(r.reading.values().instant);
                      }},
    ObservationColumn{
        "local_date", "date", "", "",
        "Date the reading is filed under: that of its observing hour, for an extra reading the clock's.",
        [](const CheckedReading& r, const StationRecord&) {
            return record::dateText(record::filedDate(r.reading.values()));
        }},
    ObservationColumn{"hour", "string", "", "", "Nominal observing hour; empty for an extra reading.",
                      [](const CheckedReading& r, const StationRecord&) {
                          const auto& hour = r.reading.values().hour;
                          return hour ? record::hourText(hour->hour) : std::string{};
                      }},
    ObservationColumn{"utc_offset", "string", "", "", "Local time minus UTC in force at the reading.",
                      [](const CheckedReading& r, const StationRecord&) {
                          return record::offsetText(r.reading.values().offset);
                      }},
    ObservationColumn{
        "dry_read", "string", "", "",
        "Dry bulb as read, in the unit of the column unit; 'below' where it stood below the scale.",
        [](const CheckedReading& r, const StationRecord&) { return readText(r.reading.values().dry); }},
    ObservationColumn{
        "wet_read", "string", "", "",
        "Wet bulb as read, in the unit of the column unit; 'below' where it stood below the scale.",
        [](const CheckedReading& r, const StationRecord&) { return readText(r.reading.values().wet); }},
    ObservationColumn{
        "unit", "string", "", "", "Unit of dry_read and wet_read: c, f, or both as dry;wet.",
        [](const CheckedReading& r, const StationRecord&) { return rowUnit(r.reading.values()); }},
    ObservationColumn{"dry_used_c", "decimal", "Cel", "air_temperature", "Dry bulb with its correction.",
                      [](const CheckedReading& r, const StationRecord&) { return usedText(r.reading.dry); }},
    ObservationColumn{"wet_used_c", "decimal", "Cel", "wet_bulb_temperature", "Wet bulb with its correction.",
                      [](const CheckedReading& r, const StationRecord&) { return usedText(r.reading.wet); }},
    ObservationColumn{"wick", "string", "", "", "State of the wick as noted: water or ice.",
                      [](const CheckedReading& r, const StationRecord&) {
                          return std::string(record::wickName(r.reading.values().wick));
                      }},
    ObservationColumn{"pressure_hpa", "decimal", "hPa", "surface_air_pressure",
                      "Station pressure used, not reduced to sea level.",
                      [](const CheckedReading& r, const StationRecord&) { return pressureText(r.reading); }},
    ObservationColumn{"pressure_source", "string", "", "",
                      "read, station-mean for the station's mean, or elevation for the standard atmosphere "
                      "at its elevation.",
                      [](const CheckedReading& r, const StationRecord&) {
                          return pressureUsed(r.reading)
                                     ? std::string(record::pressureSourceName(r.reading.pressureSource))
                                     : std::string{};
                      }},
    ObservationColumn{
        "relative_humidity_pct", "decimal", "%", "relative_humidity",
        "Relative humidity over liquid water, also below 0 °C, in per cent; the CF standard name counts "
        "from 0 to 1: divide by 100.",
        [](const CheckedReading& r, const StationRecord&) { return dataText(r.reading.humidityPercent()); }},
    ObservationColumn{
        "relative_humidity_u95_pct", "decimal", "%", "",
        "Expanded uncertainty (k = 2) of relative_humidity_pct, in per cent.",
        [](const CheckedReading& r, const StationRecord&) { return humidityUncertainty(r.reading); }},
    ObservationColumn{
        "dew_point_c", "decimal", "Cel", "dew_point_temperature", "Dew point, over liquid water.",
        [](const CheckedReading& r, const StationRecord&) { return dataText(r.reading.dewPointCelsius()); }},
    ObservationColumn{"vapour_pressure_hpa", "decimal", "hPa", "water_vapor_partial_pressure_in_air",
                      "Vapour pressure.",
                      [](const CheckedReading& r, const StationRecord&) {
                          return dataText(r.reading.vapourPressureHectopascals());
                      }},
    ObservationColumn{"weather", "string", "", "", "Weather at the reading; none where that was noted.",
                      [](const CheckedReading& r, const StationRecord&) {
                          const auto& weather = r.reading.values().weather;
                          return weather ? weather->toText() : std::string{};
                      }},
    ObservationColumn{"wind_beaufort", "integer", "", "beaufort_wind_force", "Wind, Beaufort 0 to 12.",
                      [](const CheckedReading& r, const StationRecord&) {
                          const auto& wind = r.reading.values().windBeaufort;
                          return wind ? std::to_string(*wind) : std::string{};
                      }},
    ObservationColumn{"origin", "string", "", "", "observed, corrected, estimated or missing.",
                      [](const CheckedReading& r, const StationRecord&) {
                          return std::string(record::originName(r.reading.values().origin));
                      }},
    ObservationColumn{"quality", "string", "", "",
                      "What a person judged: not-judged, sound, doubtful or erroneous.",
                      [](const CheckedReading& r, const StationRecord&) {
                          return std::string(record::qualityName(r.reading.values().quality));
                      }},
    ObservationColumn{"quality_code", "integer", "", "", "WMO BUFR table 0 33 020.",
                      [](const CheckedReading& r, const StationRecord&) {
                          const auto& values = r.reading.values();
                          return std::to_string(record::qualityCode(values.origin, values.quality));
                      }},
    ObservationColumn{
        "set_aside", "boolean", "", "", "yes where statistics leave the reading out, else no.",
        [](const CheckedReading& r, const StationRecord&) { return std::string(r.leftOut ? "yes" : "no"); }},
    ObservationColumn{"findings", "string", "", "",
                      "Codes of what the checks have to say, joined by a semicolon.",
                      [](const CheckedReading& r, const StationRecord&) { return codes(r.findings); }},
    ObservationColumn{"observer", "string", "", "", "Initials. Text: see note.",
                      [](const CheckedReading& r, const StationRecord&) {
                          return spreadsheetText(r.reading.values().observer);
                      }},
    ObservationColumn{
        "note", "string", "", "",
        "Note; for a missing reading its reason, then a semicolon, a blank and the note. Text: where it "
        "would "
        "begin like a formula of a spreadsheet (=, +, -, @, also in full width or behind blanks, a tab, the "
        "end of a line), an apostrophe stands in front, and likewise in front of apostrophes before such a "
        "beginning; take one apostrophe off to have the text as typed.",
        [](const CheckedReading& r, const StationRecord&) {
            return spreadsheetText(noteText(r.reading.values()));
        }},
    ObservationColumn{
        "revision", "integer", "", "",
        "Revisions of this reading: 1 as first written. The history stays in the book: where this "
        "file is brought into another one, each reading begins there with 1.",
        [](const CheckedReading& r, const StationRecord&) {
            return std::to_string(r.reading.stored.revisionCount);
        }},
    ObservationColumn{
        "max_read", "decimal", "", "", "Maximum thermometer as read, in the unit of max_min_unit.",
        [](const CheckedReading& r, const StationRecord&) { return readText(r.reading.values().maximum); }},
    ObservationColumn{
        "min_read", "decimal", "", "", "Minimum thermometer as read, in the unit of max_min_unit.",
        [](const CheckedReading& r, const StationRecord&) { return readText(r.reading.values().minimum); }},
    ObservationColumn{
        "max_min_unit", "string", "", "", "Unit of max_read and min_read: c, f, or both as maximum;minimum.",
        [](const CheckedReading& r, const StationRecord&) { return maxMinUnit(r.reading.values()); }},
    ObservationColumn{
        "wick_care", "string", "", "", "What was done to the wick before the reading: wetted or changed.",
        [](const CheckedReading& r, const StationRecord&) { return careText(r.reading.values().wickCare); }},
    ObservationColumn{
        "whirls", "string", "", "",
        "Each whirl of the instrument in turn, as read: wet 14.2 c dry 16.0 c; wet 14.1 c dry "
        "16.0 c, with c or f for the unit; a bulb not read is left out, a whirl without either "
        "is empty.",
        [](const CheckedReading& r, const StationRecord&) { return whirlsText(r.reading.values().repeats); }},
    ObservationColumn{"missing_reason", "string", "", "", "Why nothing was read. Text: see note.",
                      [](const CheckedReading& r, const StationRecord&) {
                          return spreadsheetText(r.reading.values().missingReason);
                      }},
    ObservationColumn{"from_paper", "boolean", "", "",
                      "yes where the reading was copied from a page of the paper register.",
                      [](const CheckedReading& r, const StationRecord&) {
                          return std::string(r.reading.values().paper ? "yes" : "no");
                      }},
    ObservationColumn{"paper_book", "string", "", "", "Book of the paper register. Text: see note.",
                      [](const CheckedReading& r, const StationRecord&) {
                          const auto& paper = r.reading.values().paper;
                          return paper ? spreadsheetText(paper->book) : std::string{};
                      }},
    ObservationColumn{"paper_page", "string", "", "", "Page in that book. Text: see note.",
                      [](const CheckedReading& r, const StationRecord&) {
                          const auto& paper = r.reading.values().paper;
                          return paper ? spreadsheetText(paper->page) : std::string{};
                      }},
    ObservationColumn{
        "read_back", "boolean", "", "",
        "yes where the line was read back against the paper since it last changed, and found equal.",
        [](const CheckedReading& r, const StationRecord&) {
            return std::string(r.reading.values().readBack ? "yes" : "no");
        }},
    ObservationColumn{"zone", "string", "", "", "Time zone by whose clock it was read, by its IANA name.",
                      [](const CheckedReading& r, const StationRecord&) { return r.reading.values().zone; }},
};

} // namespace

std::span<const ObservationColumn> observationColumns() {
    return kColumns;
}

std::vector<std::string> observationHeader() {
    std::vector<std::string> header;
    for (const auto& column : kColumns) {
        header.emplace_back(column.name);
    }
    return header;
}

std::vector<std::string> observationRow(const checks::CheckedReading& reading,
                                        const record::StationRecord& station) {
    std::vector<std::string> row;
    for (const auto& column : kColumns) {
        row.push_back(column.cell(reading, station));
    }
    return row;
}

} // namespace wickbook::exchange
