// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/oldpage/page_line.h"

#include "core/desk/revising.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"

#include <algorithm>

namespace wickbook::ui {

namespace {

QString bulbText(const QLocale& locale, const record::BulbReading& bulb) {
    return bulb.belowScale ? QStringLiteral("<")
           : bulb.value    ? readWords(locale, bulb.value->value)
                           : QString{};
}

QString numberText(const QLocale& locale, const std::optional<units::Decimal>& number) {
    return number ? readWords(locale, *number) : QString{};
}

QString temperatureText(const QLocale& locale, const std::optional<units::ReadTemperature>& read) {
    return read ? readWords(locale, read->value) : QString{};
}

std::optional<units::ReadTemperature> temperatureIn(const QString& text, units::TemperatureUnit unit) {
    const auto number = units::parseDecimal(text.toStdString());
    return number ? std::optional{units::ReadTemperature{*number, unit}} : std::nullopt;
}

record::WickState wickIn(const QString& text) {
    return text == wickWords(record::WickState::Water) ? record::WickState::Water
           : text == wickWords(record::WickState::Ice) ? record::WickState::Ice
                                                       : record::WickState::NotGiven;
}

std::optional<record::WeatherSet> weatherIn(const QString& text) {
    if (text.isEmpty()) {
        return std::nullopt;
    }
    record::WeatherSet set;
    const QStringList words = text.split(QLatin1Char(','));
    for (int i = 0; i < record::kWeatherCount; ++i) {
        const auto weather = static_cast<record::Weather>(i);
        const bool named = std::any_of(words.begin(), words.end(), [weather](const QString& word) {
            return word.trimmed() == weatherWords(weather);
        });
        if (named) {
            set.add(weather);
        }
    }
    return set;
}

/// Writes one cell's text into the observation.
void writeField(record::Observation& to, PageField field, const QString& text, units::TemperatureUnit dryUnit,
                units::TemperatureUnit wetUnit) {
    const auto bulb = [&text](units::TemperatureUnit unit) {
        return text == QLatin1String("<") ? record::BulbReading{std::nullopt, true}
                                          : record::BulbReading{temperatureIn(text, unit), false};
    };
    switch (field) {
    case PageField::Dry:
        to.dry = bulb(dryUnit);
        break;
    case PageField::Wet:
        to.wet = bulb(wetUnit);
        break;
    case PageField::Wick:
        to.wick = wickIn(text);
        break;
    case PageField::Weather:
        to.weather = weatherIn(text);
        break;
    case PageField::Wind:
        to.windBeaufort = text.isEmpty() ? std::nullopt : std::optional{text.toInt()};
        break;
    case PageField::Pressure: {
        const auto number = units::parseDecimal(text.toStdString());
        to.pressure = number ? std::optional{*number} : std::nullopt;
        break;
    }
    case PageField::Maximum:
        to.maximum = temperatureIn(text, dryUnit);
        break;
    case PageField::Minimum:
        to.minimum = temperatureIn(text, dryUnit);
        break;
    case PageField::Note:
        to.note = text.toStdString();
        break;
    }
}

units::TemperatureUnit unitOf(const record::Thermometer* thermometer) {
    return thermometer == nullptr ? units::TemperatureUnit::Celsius : thermometer->unit;
}

bool sameNumber(const QString& a, const QString& b) {
    const auto first = units::parseDecimal(a.toStdString());
    const auto second = units::parseDecimal(b.toStdString());
    return first && second && first->toDouble() == second->toDouble();
}

} // namespace

bool LineText::isEmpty() const {
    return missing.isEmpty() &&
           std::all_of(cells.begin(), cells.end(), [](const Cell& cell) { return cell.text.isEmpty(); });
}

bool LineText::hasProblem() const {
    return std::any_of(cells.begin(), cells.end(), [](const Cell& cell) { return !cell.problem.isEmpty(); });
}

LineText lineTextOf(const record::Observation& observation, const QLocale& locale) {
    LineText text;
    text.cell(PageField::Dry).text = bulbText(locale, observation.dry);
    text.cell(PageField::Wet).text = bulbText(locale, observation.wet);
    text.cell(PageField::Wick).text = wickWords(observation.wick);
    text.cell(PageField::Weather).text = weatherSetWords(observation.weather);
    text.cell(PageField::Wind).text =
        observation.windBeaufort ? QString::number(*observation.windBeaufort) : QString{};
    text.cell(PageField::Pressure).text = numberText(locale, observation.pressure);
    text.cell(PageField::Maximum).text = temperatureText(locale, observation.maximum);
    text.cell(PageField::Minimum).text = temperatureText(locale, observation.minimum);
    text.cell(PageField::Note).text = QString::fromStdString(observation.note).simplified();
    if (observation.origin == record::Origin::Missing) {
        text.missing = QString::fromStdString(observation.missingReason);
        if (text.missing.isEmpty()) {
            text.missing = QStringLiteral("not given");
        }
    }
    return text;
}

record::Observation observationOf(const PageLine& line, const record::StationRecord& station,
                                  const record::PaperPlace& paper, const QString& readBy,
                                  const QLocale& locale) {
    record::Observation result;
    if (line.stored) {
        result = line.stored->values;
    } else {
        record::placeInTime(result, station, line.expected.instant);
        result.hour = line.expected.hour;
    }
    const record::Observation before = result;
    const LineText was = line.stored ? lineTextOf(line.stored->values, locale) : LineText{};
    const auto dryUnit = unitOf(station.dryThermometerAt(result.instant));
    const auto wetUnit = unitOf(station.wetThermometerAt(result.instant));
    for (int i = 0; i < kPageFieldCount; ++i) {
        const auto field = static_cast<PageField>(i);
        const LineText::Cell& cell = line.text.cell(field);
        if (cell.problem.isEmpty() && cell.text != was.cell(field).text) {
            writeField(result, field, cell.text, dryUnit, wetUnit);
        }
    }
    if (line.text.missing != was.missing) {
        const bool missing = !line.text.missing.isEmpty();
        result.origin = missing ? record::Origin::Missing : record::Origin::Observed;
        result.missingReason = line.text.missing.toStdString();
    }
    if (line.text.isEmpty()) {
        result.withdrawn = line.stored.has_value();
        return result;
    }
    if (line.stored && desk::tellsTheSame(before, result)) {
        return before;
    }
    // A number that is typed in place of an estimate was read.
    if (result.origin == record::Origin::Estimated &&
        (result.dry != before.dry || result.wet != before.wet)) {
        result.origin = record::Origin::Observed;
    }
    if (result.dry != before.dry || result.wet != before.wet || result.wick != before.wick ||
        result.pressure != before.pressure) {
        result.quality = record::Quality::NotJudged; // what was judged was another reading
    }
    if (!line.stored || (!paper.book.empty() || !paper.page.empty())) {
        result.paper = paper;
    }
    if (result.observer.empty()) {
        result.observer = readBy.trimmed().toStdString();
    }
    result.readBack = false;
    return result;
}

bool changesLine(const PageLine& line, const record::Observation& after) {
    if (line.stored) {
        return after != line.stored->values;
    }
    // A line of nothing but texts that can't be taken has nothing to keep yet.
    return !line.text.missing.isEmpty() ||
           std::any_of(line.text.cells.begin(), line.text.cells.end(), [](const LineText::Cell& cell) {
               return !cell.text.isEmpty() && cell.problem.isEmpty();
           });
}

bool onlyAdds(const record::Observation& before, const record::Observation& after) {
    if (after.withdrawn || before.origin != after.origin) {
        return false;
    }
    const auto kept = [](const auto& was, const auto& is) { return was == decltype(was){} || was == is; };
    return kept(before.dry, after.dry) && kept(before.wet, after.wet) && kept(before.wick, after.wick) &&
           kept(before.weather, after.weather) && kept(before.windBeaufort, after.windBeaufort) &&
           kept(before.pressure, after.pressure) && kept(before.maximum, after.maximum) &&
           kept(before.minimum, after.minimum) && kept(before.note, after.note);
}

std::vector<PageField> differences(const LineText& first, const LineText& again) {
    std::vector<PageField> differing;
    if (again.isEmpty()) {
        return differing;
    }
    if (!again.missing.isEmpty() || !first.missing.isEmpty()) {
        const bool typed = !again.missing.isEmpty() || !again.cell(PageField::Dry).text.isEmpty() ||
                           !again.cell(PageField::Wet).text.isEmpty();
        if (typed && first.missing != again.missing) {
            differing.push_back(PageField::Dry);
        }
        return differing;
    }
    for (int i = 0; i < kPageFieldCount; ++i) {
        const auto field = static_cast<PageField>(i);
        const QString& one = first.cell(field).text;
        const QString& other = again.cell(field).text;
        if (!other.isEmpty() && one != other && !sameNumber(one, other)) {
            differing.push_back(field);
        }
    }
    return differing;
}

bool isTypedAgain(const LineText& first, const LineText& again) {
    if (!first.missing.isEmpty()) {
        return !again.missing.isEmpty();
    }
    const auto typed = [&](PageField field) {
        return first.cell(field).text.isEmpty() || !again.cell(field).text.isEmpty();
    };
    return !again.isEmpty() && typed(PageField::Dry) && typed(PageField::Wet);
}

} // namespace wickbook::ui
