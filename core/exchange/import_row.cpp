// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_row.h"

#include "core/exchange/cell_text.h"
#include "core/exchange/spreadsheet_text.h"
#include "core/exchange/whirls_text.h"
#include "core/record/derived_reading.h"
#include "core/record/observing_hours.h"

#include <algorithm>

namespace wickbook::exchange {

namespace {

using units::TemperatureUnit;

/// 1.013 or 1,013 hPa where the mark is not known: most likely a group of thousands.
bool isGroupedPressure(const units::Decimal& number) {
    return number.decimals == 3 && number.mantissa >= 300 && number.mantissa <= 1100;
}

std::string detailOf(units::DecimalError error) {
    switch (error) {
    case units::DecimalError::GroupedDigits:
        return "grouped-digits";
    case units::DecimalError::TooLong:
        return "too-many-digits";
    case units::DecimalError::Empty:
    case units::DecimalError::NotANumber:
        break;
    }
    return "not-a-number";
}

/// The units that a cell names: of dry and wet, or of maximum and minimum.
struct RowUnits {
    std::optional<TemperatureUnit> first;
    std::optional<TemperatureUnit> second;
};

/// Reads one row; the first refusal is kept, and what comes after it is not looked at.
class RowReader {
public:
    RowReader(const FieldCells& cells, const record::StationRecord& station, const ImportOptions& options)
        : cells_(cells), station_(station), options_(options) {}

    tl::expected<record::Observation, RejectedLine> read(DateOrder order);

private:
    [[nodiscard]] std::string cell(ImportField field) const {
        const auto found = cells_.find(field);
        return found == cells_.end() ? std::string{} : found->second;
    }
    void refuse(RejectReason reason, ImportField field, std::string detail = {}) {
        if (!refusal_) {
            refusal_ = RejectedLine{
                {}, 0, {}, reason, std::string(fieldName(field)), cell(field), std::move(detail)};
        }
    }
    std::optional<units::Decimal> number(ImportField field);
    std::optional<units::ReadTemperature>
    temperature(ImportField field, std::optional<TemperatureUnit> rowUnit, TemperatureUnit thermometer);
    record::BulbReading bulb(ImportField field, std::optional<TemperatureUnit> rowUnit,
                             TemperatureUnit thermometer);
    RowUnits rowUnits(ImportField field);
    /// A text that was typed; what our own export did to it is undone.
    [[nodiscard]] std::string words(ImportField field) const {
        return options_.exported ? fromSpreadsheetText(cell(field)) : std::string(trimmedCell(cell(field)));
    }
    bool yesOrNo(ImportField field);
    void readInstruments(record::Observation& values, const record::Thermometer* dry,
                         const record::Thermometer* wet);
    void readWords(record::Observation& values);
    void readWeather(record::Observation& values);
    void readCare(record::Observation& values);
    void readClock(record::Observation& values);
    void readReason(record::Observation& values);

    const FieldCells& cells_;
    const record::StationRecord& station_;
    const ImportOptions& options_;
    std::optional<RejectedLine> refusal_;
};

std::optional<units::Decimal> RowReader::number(ImportField field) {
    const std::string text = cell(field);
    if (isMissingWord(text)) {
        return std::nullopt;
    }
    if (options_.exported) {
        // Our own numbers have points; a spreadsheet may have put commas since.
        if (const auto own = units::parseDecimal(text, units::DecimalMark::Point)) {
            return *own;
        }
    }
    const auto value = units::parseDecimal(text, options_.decimal);
    if (!value) {
        refuse(RejectReason::BadNumber, field, detailOf(value.error()));
        return std::nullopt;
    }
    if (isMissingNumber(*value)) {
        return std::nullopt;
    }
    return *value;
}

std::optional<units::ReadTemperature> RowReader::temperature(ImportField field,
                                                             std::optional<TemperatureUnit> rowUnit,
                                                             TemperatureUnit thermometer) {
    const auto value = number(field);
    if (!value) {
        return std::nullopt;
    }
    const auto column = options_.columnUnits.find(field);
    const auto stated = column == options_.columnUnits.end() ? options_.unit : std::optional{column->second};
    return units::ReadTemperature{*value, rowUnit ? *rowUnit : stated.value_or(thermometer)};
}

record::BulbReading RowReader::bulb(ImportField field, std::optional<TemperatureUnit> rowUnit,
                                    TemperatureUnit thermometer) {
    const auto word = loweredAscii(trimmedCell(cell(field)));
    if (word == "below" || word == "<") {
        return {std::nullopt, true};
    }
    return {temperature(field, rowUnit, thermometer), false};
}

RowUnits RowReader::rowUnits(ImportField field) {
    const std::string text = cell(field);
    if (isMissingWord(text)) {
        return {};
    }
    const auto divide = text.find(';');
    const auto first = temperatureUnitFromText(std::string_view(text).substr(0, divide));
    const auto second = divide == std::string::npos
                            ? first
                            : temperatureUnitFromText(std::string_view(text).substr(divide + 1));
    if (!first || !second) {
        refuse(RejectReason::BadWord, field);
    }
    return {first, second};
}

void RowReader::readInstruments(record::Observation& values, const record::Thermometer* dry,
                                const record::Thermometer* wet) {
    const auto dryUnit = dry == nullptr ? TemperatureUnit::Celsius : dry->unit;
    const auto wetUnit = wet == nullptr ? dryUnit : wet->unit;
    const auto units = rowUnits(ImportField::Unit);
    values.dry = bulb(ImportField::Dry, units.first, dryUnit);
    values.wet = bulb(ImportField::Wet, units.second, wetUnit);
    const auto extremes = rowUnits(ImportField::MaxMinUnit);
    values.maximum =
        temperature(ImportField::Maximum, extremes.first ? extremes.first : units.first, dryUnit);
    values.minimum =
        temperature(ImportField::Minimum, extremes.second ? extremes.second : units.first, dryUnit);

    const auto source = cells_.find(ImportField::PressureSource);
    const bool read = source == cells_.end() || loweredAscii(trimmedCell(source->second)) ==
                                                    record::pressureSourceName(record::PressureSource::Read);
    if (read) {
        values.pressure = number(ImportField::Pressure);
        if (values.pressure && options_.decimal == units::DecimalMark::Either && !options_.exported &&
            isGroupedPressure(*values.pressure)) {
            refuse(RejectReason::BadNumber, ImportField::Pressure, "grouped-digits");
        }
    }
    if (const auto force = number(ImportField::Wind)) {
        const double value = force->toDouble();
        const bool inScale = value >= 0 && value <= 12;
        const int whole = inScale ? static_cast<int>(value) : 0;
        if (!inScale || static_cast<double>(whole) != value) {
            refuse(RejectReason::BadNumber, ImportField::Wind, "not-beaufort");
        } else {
            values.windBeaufort = whole;
        }
    }
}

void RowReader::readWeather(record::Observation& values) {
    const std::string text{trimmedCell(cell(ImportField::Weather))};
    if (text.empty()) {
        return;
    }
    values.weather = record::WeatherSet::fromText(text);
    if (values.weather || isMissingWord(text)) {
        return;
    }
    // Words of their own: what we know of them is noted as weather, and the whole stays in the note.
    record::WeatherSet known;
    for (std::size_t begin = 0; begin < text.size();) {
        const auto end = std::min(text.find_first_of(" \t,;+/", begin), text.size());
        if (const auto weather = record::weatherFromName(std::string_view(text).substr(begin, end - begin))) {
            known.add(*weather);
        }
        begin = end + 1;
    }
    if (!known.empty()) {
        values.weather = known;
    }
    values.note += (values.note.empty() ? "" : "; ") + text;
}

void RowReader::readWords(record::Observation& values) {
    const std::string wick = cell(ImportField::Wick);
    if (!isMissingWord(wick)) {
        const auto word = loweredAscii(trimmedCell(wick));
        const auto state = word == "w"   ? std::optional{record::WickState::Water}
                           : word == "i" ? std::optional{record::WickState::Ice}
                                         : record::wickFromName(word);
        if (!state) {
            refuse(RejectReason::BadWord, ImportField::Wick);
        }
        values.wick = state.value_or(record::WickState::NotGiven);
    }
    const std::string origin = cell(ImportField::Origin);
    // "missing" is a word of its own here, "M" and "NA" are nothing said.
    if (!isMissingWord(origin)) {
        const auto read = record::originFromName(loweredAscii(trimmedCell(origin)));
        if (!read) {
            refuse(RejectReason::BadWord, ImportField::Origin);
        }
        values.origin = read.value_or(record::Origin::Observed);
    }
    const std::string quality = cell(ImportField::Quality);
    if (!isMissingWord(quality)) {
        const auto read = record::qualityFromName(loweredAscii(trimmedCell(quality)));
        if (!read) {
            refuse(RejectReason::BadWord, ImportField::Quality);
        }
        values.quality = read.value_or(record::Quality::NotJudged);
    }
    values.observer = words(ImportField::Observer);
    values.note = options_.exported ? words(ImportField::Note) : cell(ImportField::Note);
    readWeather(values);
    readCare(values);
}

bool RowReader::yesOrNo(ImportField field) {
    const std::string text = cell(field);
    const auto word = loweredAscii(trimmedCell(text));
    if (isMissingWord(text) || word == "no" || word == "false" || word == "0") {
        return false;
    }
    // A spreadsheet may have made a truth value of it.
    if (word != "yes" && word != "true" && word != "1") {
        refuse(RejectReason::BadWord, field);
    }
    return true;
}

void RowReader::readCare(record::Observation& values) {
    const std::string care = cell(ImportField::WickCare);
    if (!isMissingWord(care)) {
        const auto word = loweredAscii(trimmedCell(care));
        if (word != "wetted" && word != "changed") {
            refuse(RejectReason::BadWord, ImportField::WickCare);
        }
        values.wickCare = word == "wetted" ? record::WickCare::Wetted : record::WickCare::Changed;
    }
    if (const std::string whirls = cell(ImportField::Whirls); !isMissingWord(whirls)) {
        auto read = parseWhirls(whirls, options_.exported ? units::DecimalMark::Point : options_.decimal);
        if (!read) {
            refuse(RejectReason::BadWord, ImportField::Whirls);
        } else {
            values.repeats = std::move(*read);
        }
    }
    const auto given = [this](ImportField field) {
        return options_.exported || !isMissingWord(cell(field)) ? words(field) : std::string{};
    };
    record::PaperPlace place{given(ImportField::PaperBook), given(ImportField::PaperPage)};
    if (yesOrNo(ImportField::FromPaper) || !place.book.empty() || !place.page.empty()) {
        values.paper = std::move(place);
    }
    values.readBack = yesOrNo(ImportField::ReadBack);
    values.missingReason = given(ImportField::MissingReason);
}

/// The zone and the offset that were in force, where the file says so: the station's may have been put right
/// since.
void RowReader::readClock(record::Observation& values) {
    if (const std::string name{trimmedCell(cell(ImportField::Zone))}; !isMissingWord(name)) {
        const auto zone = record::Zone::named(name);
        if (!zone) {
            refuse(RejectReason::BadWord, ImportField::Zone);
            return;
        }
        values.zone = name;
        values.offset = zone->offsetAt(values.instant);
    }
    if (const std::string offset{trimmedCell(cell(ImportField::UtcOffset))}; !isMissingWord(offset)) {
        const auto read = record::parseTime("2000-01-01T00:00:00" + offset);
        if (!read || !read->offset) {
            refuse(RejectReason::BadWord, ImportField::UtcOffset);
            return;
        }
        values.offset = *read->offset;
    }
}

/// In a file without a column for the reason, the note of a missing reading has it in front; with one, the
/// note of our own export repeats it there.
void RowReader::readReason(record::Observation& values) {
    static constexpr std::string_view kDivide = "; ";
    if (!cells_.contains(ImportField::MissingReason)) {
        if (!values.dry.given() && !values.wet.given()) {
            // Where nothing stands before the mark, what follows is the reason.
            while (values.note.starts_with(kDivide)) {
                values.note.erase(0, kDivide.size());
            }
            const auto divide = values.note.find(kDivide);
            values.missingReason = values.note.substr(0, divide);
            values.note =
                divide == std::string::npos ? std::string{} : values.note.substr(divide + kDivide.size());
        }
        return;
    }
    if (values.missingReason.empty() || !values.note.starts_with(values.missingReason)) {
        return;
    }
    const std::string rest = values.note.substr(values.missingReason.size());
    if (rest.empty()) {
        values.note.clear();
    } else if (rest.starts_with(kDivide)) {
        values.note = rest.substr(kDivide.size());
    }
}

bool saysAnything(const record::Observation& values) {
    return values.dry.given() || values.wet.given() || values.pressure || values.maximum || values.minimum ||
           values.windBeaufort || values.weather || !values.repeats.empty();
}

tl::expected<record::Observation, RejectedLine> RowReader::read(DateOrder order) {
    const auto time =
        rowTime(cells_, station_, options_.zone, order, options_.doubleTimes, options_.exported);
    record::Observation values;
    if (time) {
        record::placeInTime(values, station_, time->instant);
        if (time->hour) {
            values.hour = *time->hour;
        }
        readClock(values);
    }
    // The units depend on the thermometers of the day; a row without a time is only asked whether it is
    // empty.
    const auto instant = time ? time->instant : record::Instant{};
    readWords(values);
    readInstruments(values, station_.dryThermometerAt(instant), station_.wetThermometerAt(instant));

    const bool missing = values.origin == record::Origin::Missing;
    if (!refusal_ && !missing && !options_.exported && !saysAnything(values)) {
        refuse(RejectReason::NothingRead,
               cells_.contains(ImportField::Dry) ? ImportField::Dry : ImportField::Wet);
    } else if (!time) {
        return tl::unexpected(time.error());
    }
    if (refusal_) {
        return tl::unexpected(*refusal_);
    }
    if (missing) {
        readReason(values);
    }
    return values;
}

} // namespace

tl::expected<record::Observation, RejectedLine> readRow(const FieldCells& cells,
                                                        const record::StationRecord& station,
                                                        const ImportOptions& options, DateOrder order) {
    return RowReader{cells, station, options}.read(order);
}

tl::expected<record::Observation, RejectedLine>
observationFromFields(const std::map<ImportField, std::string>& fields, const record::StationRecord& station,
                      const ImportOptions& options) {
    DateGuess guess;
    for (const auto field : {ImportField::Time, ImportField::Date}) {
        if (const auto found = fields.find(field); found != fields.end()) {
            guess.look(found->second);
        }
    }
    return readRow(fields, station, options,
                   options.dateOrder == DateOrder::Unknown ? guess.order() : options.dateOrder);
}

} // namespace wickbook::exchange
