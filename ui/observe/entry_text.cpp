// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/entry_text.h"

#include "core/record/observing_hours.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QCoreApplication>

#include <cstdlib>

namespace wickbook::ui {

namespace {

struct EntryTextContext {
    Q_DECLARE_TR_FUNCTIONS(EntryTextContext)
};

/// An entry this close to now can still be read again at the thermometer.
constexpr std::chrono::minutes kLiveWithin{120};

using units::Decimal;

tl::expected<std::optional<Decimal>, QString> readNumber(const QString& typed, const QString& what) {
    if (typed.trimmed().isEmpty()) {
        return std::optional<Decimal>{};
    }
    const auto number = units::parseDecimal(typed.toStdString());
    if (!number) {
        return tl::unexpected(decimalErrorWords(number.error(), what, typed));
    }
    return std::optional{*number};
}

units::TemperatureUnit unitOf(const record::Thermometer* thermometer) {
    return thermometer == nullptr ? units::TemperatureUnit::Celsius : thermometer->unit;
}

record::WickCare careFromName(const QString& name) {
    return name == QLatin1String("changed")  ? record::WickCare::Changed
           : name == QLatin1String("wetted") ? record::WickCare::Wetted
                                             : record::WickCare::None;
}

QString careName(record::WickCare care) {
    return care == record::WickCare::Changed  ? QStringLiteral("changed")
           : care == record::WickCare::Wetted ? QStringLiteral("wetted")
                                              : QString{};
}

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QString typedAs(const Decimal& number) {
    return readWords(QLocale(), number);
}

/// The station's zone around a date: good enough to resolve a clock time, which the period then names anew.
record::Zone zoneOn(const record::StationRecord& station, record::StationDate date) {
    return station
        .periodAt(record::Instant{record::LocalTime{date}.time_since_epoch()} + std::chrono::hours{12})
        .zone;
}

tl::expected<EntryTime, EntryProblem> timeTyped(const EntryText& entry, record::StationDate date,
                                                const record::StationRecord& station) {
    const auto clock = record::parseHour(entry.clock.trimmed().toStdString());
    if (!clock) {
        return tl::unexpected(EntryProblem{EntryField::Clock, timeErrorWords(clock.error(), entry.clock)});
    }
    // A reading for 23 h made at 00:30 was made on the next day, one for 0 h at 23:50 on the day before.
    std::chrono::minutes fromHour{0};
    if (entry.hourMinutes >= 0) {
        const std::chrono::minutes half{12 * 60};
        const std::chrono::minutes difference = *clock - std::chrono::minutes{entry.hourMinutes};
        fromHour = difference > half    ? std::chrono::minutes{-24 * 60}
                   : difference < -half ? std::chrono::minutes{24 * 60}
                                        : std::chrono::minutes{0};
    }
    const record::LocalTime local = record::LocalTime{date} + *clock + fromHour;
    const auto resolved = record::resolveLocal(zoneOn(station, date), local);
    if (const auto* unique = std::get_if<record::UniqueTime>(&resolved)) {
        return EntryTime{unique->instant, false, false};
    }
    if (const auto* twice = std::get_if<record::DoubleTime>(&resolved)) {
        return EntryTime{entry.secondOfDouble ? twice->second : twice->first, false, true};
    }
    return tl::unexpected(EntryProblem{
        EntryField::Clock,
        EntryTextContext::tr("%1 never came that night: the clocks were put forward. Write the time that the "
                             "clock showed.")
            .arg(entry.clock.trimmed())});
}

} // namespace

bool EntryText::untouched() const {
    for (const QString* field :
         {&dry, &wet, &wick, &wickCare, &pressure, &weather, &wind, &maximum, &minimum, &note, &clock}) {
        if (!field->trimmed().isEmpty()) {
            return false;
        }
    }
    return repeats.isEmpty();
}

tl::expected<EntryTime, EntryProblem> entryTime(const EntryText& entry, const record::StationRecord& station,
                                                record::Instant now) {
    if (!entry.date.isValid()) {
        return tl::unexpected(
            EntryProblem{EntryField::Date,
                         EntryTextContext::tr("There is no such date. Write it as day, month and year.")});
    }
    const record::StationDate date = fromQDate(entry.date);
    const auto finished = [&](EntryTime time) {
        time.live = std::abs((now - time.instant).count()) <= std::chrono::seconds{kLiveWithin}.count();
        return time;
    };
    if (!entry.clock.trimmed().isEmpty()) {
        return timeTyped(entry, date, station).map(finished);
    }
    if (entry.hourMinutes < 0) {
        return finished(EntryTime{now, true, false});
    }
    const auto moment = record::momentOf(station, {date, std::chrono::minutes{entry.hourMinutes}});
    if (!moment) {
        return tl::unexpected(
            EntryProblem{EntryField::Date,
                         EntryTextContext::tr("The station does not read at that hour on that date. Choose "
                                              "another hour, or an extra reading.")});
    }
    const std::chrono::seconds window = std::chrono::minutes{station.facts().hourWindowMinutes};
    const bool nowFits = std::abs((now - *moment).count()) <= window.count();
    return finished(EntryTime{nowFits ? now : *moment, false, false});
}

tl::expected<record::BulbReading, QString> readBulb(const QString& typed, const QString& what,
                                                    units::TemperatureUnit unit) {
    record::BulbReading bulb;
    if (typed.trimmed() == QLatin1String("<")) {
        bulb.belowScale = true;
        return bulb;
    }
    const auto number = readNumber(typed, what);
    if (!number) {
        return tl::unexpected(number.error());
    }
    if (*number) {
        bulb.value = units::ReadTemperature{**number, unit};
    }
    return bulb;
}

tl::expected<record::Observation, EntryProblem>
readEntry(const EntryText& entry, const record::StationRecord& station, record::Instant now) {
    const auto time = entryTime(entry, station, now);
    if (!time) {
        return tl::unexpected(time.error());
    }
    record::Observation result;
    record::placeInTime(result, station, time->instant);
    result.hour = entry.hourMinutes < 0
                      ? std::nullopt
                      : std::optional{record::ObservingHour{fromQDate(entry.date),
                                                            std::chrono::minutes{entry.hourMinutes}}};
    const auto dryUnit = unitOf(station.dryThermometerAt(time->instant));
    const auto wetUnit = unitOf(station.wetThermometerAt(time->instant));

    std::optional<EntryProblem> problem;
    const auto note = [&](EntryField field, const QString& sentence) {
        if (!problem) {
            problem = EntryProblem{field, sentence};
        }
    };
    const auto bulb = [&](const QString& typed, const QString& what, units::TemperatureUnit unit,
                          EntryField field) {
        const auto read = readBulb(typed, what, unit);
        if (!read) {
            note(field, read.error());
        }
        return read.value_or(record::BulbReading{});
    };
    result.dry = bulb(entry.dry, EntryTextContext::tr("dry bulb"), dryUnit, EntryField::Dry);
    result.wet = bulb(entry.wet, EntryTextContext::tr("wet bulb"), wetUnit, EntryField::Wet);
    result.maximum = bulb(entry.maximum, EntryTextContext::tr("maximum"), dryUnit, EntryField::Maximum).value;
    result.minimum = bulb(entry.minimum, EntryTextContext::tr("minimum"), dryUnit, EntryField::Minimum).value;
    const auto pressure = readNumber(entry.pressure, EntryTextContext::tr("pressure"));
    if (!pressure) {
        note(EntryField::Pressure, pressure.error());
    } else {
        result.pressure = *pressure;
    }
    const auto wind = readNumber(entry.wind, EntryTextContext::tr("wind"));
    if (!wind) {
        note(EntryField::Wind, wind.error());
    } else if (*wind) {
        const double force = (*wind)->toDouble();
        if ((*wind)->decimals != 0 || force < 0 || force > 12) {
            note(EntryField::Wind,
                 EntryTextContext::tr("Wind is a Beaufort force from 0 to 12, a whole number."));
        } else {
            result.windBeaufort = static_cast<int>(force);
        }
    }
    for (qsizetype row = 0; row < entry.repeats.size(); ++row) {
        const auto whirl = [&](const QString& typed, const QString& what, units::TemperatureUnit unit) {
            const auto read = readNumber(typed, what.arg(row + 1));
            if (!read) {
                note(EntryField::Repeats, read.error());
            }
            return read && *read ? std::optional{units::ReadTemperature{**read, unit}} : std::nullopt;
        };
        result.repeats.push_back(
            {whirl(entry.repeats[row].wet, EntryTextContext::tr("whirl %1, wet bulb"), wetUnit),
             whirl(entry.repeats[row].dry, EntryTextContext::tr("whirl %1, dry bulb"), dryUnit)});
    }
    if (problem) {
        return tl::unexpected(*problem);
    }
    result.wick = record::wickFromName(entry.wick.toStdString()).value_or(record::WickState::NotGiven);
    result.wickCare = careFromName(entry.wickCare);
    if (!entry.weather.isEmpty()) {
        result.weather = record::WeatherSet::fromText(entry.weather.toStdString());
    }
    result.observer = entry.observer.trimmed().toStdString();
    result.note = entry.note.trimmed().toStdString();
    return result;
}

EntryText entryTextOf(const record::Observation& observation) {
    EntryText entry;
    entry.date = toQDate(record::filedDate(observation));
    entry.hourMinutes = observation.hour ? static_cast<int>(observation.hour->hour.count()) : -1;
    entry.clock = clockWords(observation.instant, observation.offset);
    const auto bulb = [](const record::BulbReading& reading) {
        return reading.belowScale ? QStringLiteral("<")
               : reading.value    ? typedAs(reading.value->value)
                                  : QString{};
    };
    entry.dry = bulb(observation.dry);
    entry.wet = bulb(observation.wet);
    entry.wick = QString::fromUtf8(record::wickName(observation.wick).data());
    entry.wickCare = careName(observation.wickCare);
    entry.pressure = observation.pressure ? typedAs(*observation.pressure) : QString{};
    entry.weather = observation.weather ? text(observation.weather->toText()) : QString{};
    entry.wind = observation.windBeaufort ? QString::number(*observation.windBeaufort) : QString{};
    entry.maximum = observation.maximum ? typedAs(observation.maximum->value) : QString{};
    entry.minimum = observation.minimum ? typedAs(observation.minimum->value) : QString{};
    entry.observer = text(observation.observer);
    entry.note = text(observation.note);
    const auto read = [](const std::optional<units::ReadTemperature>& value) {
        return value ? typedAs(value->value) : QString{};
    };
    for (const record::Repeat& repeat : observation.repeats) {
        entry.repeats.append({read(repeat.wet), read(repeat.dry)});
    }
    return entry;
}

} // namespace wickbook::ui
