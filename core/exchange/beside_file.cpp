// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/beside_file.h"

#include "core/exchange/cell_text.h"
#include "core/exchange/import_time.h"

#include <array>
#include <cmath>
#include <map>
#include <optional>

namespace wickbook::exchange {

namespace {

enum class BesideColumn {
    Time,
    Date,
    Clock,
    Humidity,
    Temperature,
    OtherDry,
    OtherWet,
    OtherWick,
    Dry,
    Wet,
    Wick,
    Pressure,
    Wind,
    Note
};

struct BesideName {
    std::string_view name;
    BesideColumn column;
};
constexpr std::array kBesideNames{
    BesideName{"time", BesideColumn::Time},
    BesideName{"date", BesideColumn::Date},
    BesideName{"clock", BesideColumn::Clock},
    BesideName{"rh", BesideColumn::Humidity},
    BesideName{"humidity", BesideColumn::Humidity},
    BesideName{"relative_humidity", BesideColumn::Humidity},
    BesideName{"temperature", BesideColumn::Temperature},
    BesideName{"other_dry", BesideColumn::OtherDry},
    BesideName{"other_wet", BesideColumn::OtherWet},
    BesideName{"other_wick", BesideColumn::OtherWick},
    BesideName{"dry", BesideColumn::Dry},
    BesideName{"wet", BesideColumn::Wet},
    BesideName{"wick", BesideColumn::Wick},
    BesideName{"pressure", BesideColumn::Pressure},
    BesideName{"wind", BesideColumn::Wind},
    BesideName{"note", BesideColumn::Note},
};

constexpr int kHighestBeaufort = 12;
/// A sensor may overshoot; beyond it is not a relative humidity.
constexpr double kHighestHumidity = 110;

struct BesideHeader {
    BesideColumn column = BesideColumn::Note;
    std::optional<units::TemperatureUnit> unit;
};

std::optional<BesideHeader> headerOf(std::string_view text) {
    std::string name = loweredAscii(trimmedCell(text));
    BesideHeader header;
    for (const auto& [ending, unit] : {std::pair{std::string_view{"_f"}, units::TemperatureUnit::Fahrenheit},
                                       std::pair{std::string_view{"_c"}, units::TemperatureUnit::Celsius}}) {
        if (name.ends_with(ending)) {
            name.resize(name.size() - ending.size());
            header.unit = unit;
            break;
        }
    }
    for (const BesideName& known : kBesideNames) {
        if (known.name == name) {
            header.column = known.column;
            return header;
        }
    }
    return std::nullopt;
}

/// One line, cell by cell; the first that can't be read is why it is refused.
class BesideRow {
public:
    BesideRow(const std::vector<std::optional<BesideHeader>>& headers, const CsvRecord& record,
              units::DecimalMark decimal, units::TemperatureUnit unit)
        : decimal_(decimal), unit_(unit) {
        for (std::size_t i = 0; i < headers.size() && i < record.cells.size(); ++i) {
            if (headers[i] && !isMissingWord(record.cells[i])) {
                cells_[headers[i]->column] = {std::string{trimmedCell(record.cells[i])}, headers[i]->unit};
            }
        }
    }

    tl::expected<record::BesideReading, RejectedLine> read(const record::StationRecord& station) {
        record::BesideReading reading;
        FieldCells time;
        for (const auto& [column, field] : {std::pair{BesideColumn::Time, ImportField::Time},
                                            std::pair{BesideColumn::Date, ImportField::Date},
                                            std::pair{BesideColumn::Clock, ImportField::Clock}}) {
            if (cells_.contains(column)) {
                time[field] = cells_[column].text;
            }
        }
        const auto moment = rowTime(time, station, std::nullopt, DateOrder::Unknown);
        if (!moment) {
            return tl::unexpected(moment.error());
        }
        reading.instant = moment->instant;
        reading.humidity = number(BesideColumn::Humidity, "rh");
        reading.temperature = temperature(BesideColumn::Temperature, "temperature");
        reading.otherDry = temperature(BesideColumn::OtherDry, "other_dry");
        reading.otherWet = temperature(BesideColumn::OtherWet, "other_wet");
        reading.otherWick = wick(BesideColumn::OtherWick, "other_wick");
        reading.ownDry = temperature(BesideColumn::Dry, "dry");
        reading.ownWet = temperature(BesideColumn::Wet, "wet");
        reading.ownWick = wick(BesideColumn::Wick, "wick");
        reading.pressure = number(BesideColumn::Pressure, "pressure");
        reading.windBeaufort = wind();
        reading.note = text(BesideColumn::Note);
        if (reading.humidity &&
            (reading.humidity->toDouble() < 0 || reading.humidity->toDouble() > kHighestHumidity)) {
            refuse(RejectReason::BadNumber, "rh", text(BesideColumn::Humidity), "not-a-number");
        }
        if (!refused_ && !reading.humidity && !(reading.otherDry && reading.otherWet)) {
            refuse(RejectReason::NothingRead, "rh", {}, {});
        }
        if (refused_) {
            return tl::unexpected(*refused_);
        }
        return reading;
    }

private:
    struct Cell {
        std::string text;
        std::optional<units::TemperatureUnit> unit;
    };

    std::string text(BesideColumn column) const {
        const auto found = cells_.find(column);
        return found == cells_.end() ? std::string{} : found->second.text;
    }

    void refuse(RejectReason reason, std::string field, std::string value, std::string detail) {
        if (!refused_) {
            refused_.emplace();
            refused_->reason = reason;
            refused_->field = std::move(field);
            refused_->value = std::move(value);
            refused_->detail = std::move(detail);
        }
    }

    std::optional<units::Decimal> number(BesideColumn column, const char* name) {
        const std::string typed = text(column);
        if (typed.empty()) {
            return std::nullopt;
        }
        const auto value = units::parseDecimal(typed, decimal_);
        if (!value) {
            refuse(RejectReason::BadNumber, name, typed,
                   value.error() == units::DecimalError::GroupedDigits ? "grouped-digits"
                   : value.error() == units::DecimalError::TooLong     ? "too-many-digits"
                                                                       : "not-a-number");
            return std::nullopt;
        }
        return isMissingNumber(*value) ? std::nullopt : std::optional{*value};
    }

    std::optional<units::ReadTemperature> temperature(BesideColumn column, const char* name) {
        const auto value = number(column, name);
        if (!value) {
            return std::nullopt;
        }
        return units::ReadTemperature{*value, cells_.at(column).unit.value_or(unit_)};
    }

    record::WickState wick(BesideColumn column, const char* name) {
        const std::string typed = loweredAscii(text(column));
        if (typed.empty()) {
            return record::WickState::NotGiven;
        }
        if (typed == "w" || typed == "water") {
            return record::WickState::Water;
        }
        if (typed == "i" || typed == "ice") {
            return record::WickState::Ice;
        }
        refuse(RejectReason::BadWord, name, text(column), {});
        return record::WickState::NotGiven;
    }

    std::optional<int> wind() {
        const auto value = number(BesideColumn::Wind, "wind");
        if (!value) {
            return std::nullopt;
        }
        const double force = value->toDouble();
        if (force < 0 || force > kHighestBeaufort || force != std::floor(force)) {
            refuse(RejectReason::BadNumber, "wind", text(BesideColumn::Wind), "not-beaufort");
            return std::nullopt;
        }
        return static_cast<int>(force);
    }

    std::map<BesideColumn, Cell> cells_;
    units::DecimalMark decimal_;
    units::TemperatureUnit unit_;
    std::optional<RejectedLine> refused_;
};

units::TemperatureUnit stationUnit(const record::StationRecord& station) {
    const auto& thermometers = station.facts().thermometers;
    return thermometers.empty() ? units::TemperatureUnit::Celsius : thermometers.back().unit;
}

RejectedLine unreadable(const CsvError& error) {
    RejectedLine line{};
    line.line = error.line;
    line.text = error.text;
    line.reason = RejectReason::Unreadable;
    line.detail = csvErrorName(error.kind);
    return line;
}

} // namespace

tl::expected<BesideFile, ImportError> readBesideFile(std::istream& input, const std::string& fileName,
                                                     const record::StationRecord& station,
                                                     units::DecimalMark decimal) {
    CsvReader reader(input);
    const auto head = reader.next();
    if (!head || !*head) {
        const bool empty = head || head.error().kind == CsvErrorKind::Empty;
        return tl::unexpected(
            ImportError{empty ? ImportErrorKind::EmptyFile : ImportErrorKind::NotReadable, fileName});
    }
    BesideFile file;
    std::vector<std::optional<BesideHeader>> headers;
    bool hasTime = false;
    bool hasHumidity = false;
    for (const std::string& cell : (*head)->cells) {
        headers.push_back(headerOf(cell));
        if (!headers.back()) {
            file.leftAside.push_back(cell);
            continue;
        }
        const BesideColumn column = headers.back()->column;
        hasTime = hasTime || column == BesideColumn::Time || column == BesideColumn::Date;
        hasHumidity = hasHumidity || column == BesideColumn::Humidity || column == BesideColumn::OtherWet;
    }
    if (!hasTime || !hasHumidity) {
        return tl::unexpected(ImportError{ImportErrorKind::NoBesideColumns, fileName});
    }
    while (true) {
        const auto record = reader.next();
        if (record && !*record) {
            break;
        }
        if (++file.lines > kMostBesideLines) {
            return tl::unexpected(ImportError{ImportErrorKind::TooManyLines, fileName});
        }
        if (!record) {
            file.rejected.push_back(unreadable(record.error()));
            file.rejected.back().file = fileName;
            if (record.error().kind == CsvErrorKind::NotReadable) {
                break;
            }
            continue;
        }
        auto reading = BesideRow{headers, **record, decimal, stationUnit(station)}.read(station);
        if (reading) {
            file.readings.push_back(std::move(*reading));
            continue;
        }
        RejectedLine line = reading.error();
        line.file = fileName;
        line.line = (*record)->line;
        line.text = (*record)->text;
        file.rejected.push_back(std::move(line));
    }
    if (file.lines == 0) {
        return tl::unexpected(ImportError{ImportErrorKind::NoLines, fileName});
    }
    return file;
}

} // namespace wickbook::exchange
