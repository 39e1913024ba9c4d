// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/working_text.h"

#include "core/psychrometry/saturation.h"
#include "ui/observe/working_excerpt.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>

namespace wickbook::ui {

namespace {

struct WorkingTextContext {
    Q_DECLARE_TR_FUNCTIONS(WorkingTextContext)
};

QString number(std::optional<double> value, int decimals) {
    return numberWords(QLocale(), value, decimals);
}

QString heading(const QString& text) {
    return QStringLiteral("<h3>%1</h3>").arg(text.toHtmlEscaped());
}

QString step(const QString& text) {
    return QStringLiteral("<p>%1</p>").arg(text);
}

QString budgetName(std::string_view quantity) {
    return quantity == "dry"           ? WorkingTextContext::tr("dry bulb, scale and correction")
           : quantity == "wet"         ? WorkingTextContext::tr("wet bulb, scale and correction")
           : quantity == "corrections" ? WorkingTextContext::tr("what the two corrections share")
           : quantity == "coefficient" ? WorkingTextContext::tr("coefficient of the exposure")
           : quantity == "pressure"
               ? WorkingTextContext::tr("pressure")
               : QString::fromUtf8(quantity.data(), static_cast<qsizetype>(quantity.size()));
}

/// A negative number in brackets, so that a minus never follows a minus.
QString term(double value, int decimals) {
    const QString text = number(value, decimals);
    return value < 0 ? QStringLiteral("(%1)").arg(text) : text;
}

/// "16.40 °C", or for a °F scale "61.50 °F, that is 16.39 °C".
QString usedTemperature(units::Temperature temperature, units::TemperatureUnit unit) {
    const QString celsius = WorkingTextContext::tr("%1 °C").arg(number(temperature.celsius(), 2));
    return unit == units::TemperatureUnit::Celsius ? celsius
                                                   : WorkingTextContext::tr("%1 °F, that is %2")
                                                         .arg(number(temperature.fahrenheit(), 2), celsius);
}

/// How one bulb comes to the number that the equation takes; nothing where it is the number read.
QString bulbStep(const QString& what, const record::UsedBulb& bulb, units::TemperatureUnit unit) {
    if (!bulb.temperature) {
        return {};
    }
    if (std::abs(bulb.correction.kelvins()) < 1e-12) {
        return unit == units::TemperatureUnit::Celsius ? QString{}
                                                       : step(WorkingTextContext::tr("%1: %2").arg(
                                                             what, usedTemperature(*bulb.temperature, unit)));
    }
    return step(WorkingTextContext::tr("%1: read %2 %3, correction %4 %3, so %5")
                    .arg(what, temperatureWords(QLocale(), *bulb.temperature - bulb.correction, unit, 2),
                         unitWords(unit), differenceWords(QLocale(), bulb.correction, unit, 2),
                         usedTemperature(*bulb.temperature, unit)));
}

/// e from the pair; the answer is written down also where it comes out as nothing or less.
QString vapourSteps(const record::DerivedReading& reading, units::VapourPressure atWet,
                    units::VapourPressure atDry) {
    const psychrometry::Derivation& derived = *reading.derivation;
    const bool ice = derived.wickUsed == psychrometry::WickState::Ice;
    const double f = derived.coefficient->enhancement;
    if (derived.takenAsSaturation) {
        return step(WorkingTextContext::tr(
                   "The wet bulb stands above the dry bulb within the reading's error: the air is taken "
                   "as saturated, and e is what it can hold at the dry bulb.")) +
               step(WorkingTextContext::tr("e = f·e<sub>w</sub>(t) = %1 × %2 = <b>%3 hPa</b>")
                        .arg(number(f, 4), number(atDry.hectopascals(), 3),
                             number(f * atDry.hectopascals(), 2)));
    }
    const units::Temperature wet = wetBulbUsed(reading);
    const double a = derived.coefficient->perKelvin;
    const double apart = (reading.input.dry - wet).kelvins();
    const double e = f * atWet.hectopascals() - a * reading.input.pressure.hectopascals() * apart;
    return step(WorkingTextContext::tr("Over the wet bulb, %1 °C, %2: e<sub>s</sub> = %3 hPa")
                    .arg(number(wet.celsius(), 2),
                         ice ? WorkingTextContext::tr("ice") : WorkingTextContext::tr("water"),
                         number(atWet.hectopascals(), 3))) +
           step(WorkingTextContext::tr("e = f·e<sub>s</sub>(t<sub>w</sub>) − A·p·(t − t<sub>w</sub>)")) +
           step(WorkingTextContext::tr("e = %1 × %2 − %3 × 10⁻⁴ × %4 × (%5 − %6) = <b>%7 hPa</b>")
                    .arg(number(f, 4), number(atWet.hectopascals(), 3), number(a * 1e4, 2),
                         number(reading.input.pressure.hectopascals(), 1),
                         term(reading.input.dry.celsius(), 2), term(wet.celsius(), 2), number(e, 2)));
}

QString dewSteps(const psychrometry::Derivation& derived, units::TemperatureUnit unit) {
    const QString vapour = number(derived.vapourPressure->hectopascals(), 2);
    const auto shown = [&](units::Temperature temperature) {
        return QStringLiteral("<b>%1 %2</b>")
            .arg(temperatureWords(QLocale(), temperature, unit), unitWords(unit));
    };
    QString html;
    if (derived.dewPoint) {
        html += step(WorkingTextContext::tr("Dew point: where %1 hPa would be saturation over water: %2")
                         .arg(vapour, shown(*derived.dewPoint)));
    } else if (derived.dewPointProblem) {
        html += step(psychrometryErrorWords(*derived.dewPointProblem).toHtmlEscaped());
    }
    if (derived.frostPoint) {
        html += step(WorkingTextContext::tr("Frost point: where it would be saturation over ice: %1")
                         .arg(shown(*derived.frostPoint)));
    }
    return html;
}

QString equationSteps(const record::DerivedReading& reading, units::TemperatureUnit unit) {
    const psychrometry::Derivation& derived = *reading.derivation;
    const bool ice = derived.wickUsed == psychrometry::WickState::Ice;
    const auto surface = ice ? psychrometry::Surface::Ice : psychrometry::Surface::Water;
    const auto atWet = psychrometry::saturationVapourPressure(wetBulbUsed(reading), surface);
    const auto atDry =
        psychrometry::saturationVapourPressure(reading.input.dry, psychrometry::Surface::Water);
    if (!derived.coefficient || !atWet || !atDry) {
        return {};
    }
    QString html = bulbStep(WorkingTextContext::tr("Dry bulb"), reading.dry, unit) +
                   bulbStep(WorkingTextContext::tr("Wet bulb"), reading.wet, unit) +
                   vapourSteps(reading, *atWet, *atDry);
    if (!derived.vapourPressure || !derived.relativeHumidity) {
        return html;
    }
    html +=
        step(WorkingTextContext::tr("Saturated at the dry bulb, %1 °C, over water: e<sub>w</sub> = %2 hPa")
                 .arg(number(reading.input.dry.celsius(), 2), number(atDry->hectopascals(), 3)));
    html += step(WorkingTextContext::tr("Relative humidity = 100 × %1 ÷ (%2 × %3) = <b>%4 %</b>")
                     .arg(number(derived.vapourPressure->hectopascals(), 2),
                          number(derived.coefficient->enhancement, 4), number(atDry->hectopascals(), 3),
                          number(derived.relativeHumidity->percent(), 1)));
    return html + dewSteps(derived, unit);
}

QString budgetTable(const psychrometry::UncertaintyBudget& budget) {
    QString rows;
    for (const psychrometry::BudgetLine& line : budget.lines) {
        rows +=
            QStringLiteral("<tr><td>%1</td><td align='right'>%2</td></tr>")
                .arg(budgetName(line.quantity).toHtmlEscaped(),
                     number(std::copysign(std::sqrt(std::abs(line.humidityShare)), line.humidityShare), 2));
    }
    return QStringLiteral("<table cellpadding='3'><tr><td>%1</td><td align='right'>% RH</td></tr>%2"
                          "<tr><td><b>%3</b></td><td align='right'><b>%4</b></td></tr></table>")
        .arg(WorkingTextContext::tr("each by itself (one standard uncertainty)"), rows,
             WorkingTextContext::tr("together, twice the root of the squares: ±"),
             number(budget.relativeHumidityU95, 1));
}

/// Whole and half degrees as printed; a reading between them with the digits it has.
QString line(double value) {
    const bool tenths = std::abs(value * 10 - std::round(value * 10)) < 1e-6;
    return number(value, tenths ? 1 : 2);
}

/// Row, column and cell are told by a ground of their own, by bold letters and by arrows at the edge.
QString tableHtml(const WorkingExcerpt& excerpt, const Tokens& tokens) {
    const QString marked = tokens.queryPaper.name();
    const auto cell = [](const QString& text, const QString& ground, const QString& ink, bool bold) {
        return QStringLiteral("<td align='right'%1><span style='%2'>%3</span></td>")
            .arg(ground.isEmpty() ? QString{} : QStringLiteral(" bgcolor='%1'").arg(ground),
                 ink.isEmpty() ? QString{} : QStringLiteral("color:%1;").arg(ink),
                 bold ? QStringLiteral("<b>%1</b>").arg(text) : text);
    };
    QString html = QStringLiteral("<table border='1' cellspacing='0' cellpadding='5' "
                                  "style='border-collapse:collapse;border-color:%1'><tr><td>%2</td>")
                       .arg(tokens.soft.name(), WorkingTextContext::tr("dry ↓ depression →"));
    for (std::size_t column = 0; column < excerpt.depressions.size(); ++column) {
        const bool own = column == excerpt.column;
        const QString text = line(excerpt.depressions[column]);
        html += cell(own ? QStringLiteral("▾ ") + text : text, own ? marked : QString{}, {}, own);
    }
    html += QStringLiteral("</tr>");
    for (std::size_t row = 0; row < excerpt.dryBulbs.size(); ++row) {
        const bool ownRow = row == excerpt.row;
        const QString name = line(excerpt.dryBulbs[row]);
        html += QStringLiteral("<tr>") +
                cell(ownRow ? QStringLiteral("▸ ") + name : name, ownRow ? marked : QString{}, {}, ownRow);
        for (std::size_t column = 0; column < excerpt.depressions.size(); ++column) {
            const bool own = ownRow && column == excerpt.column;
            const bool crossed = ownRow || column == excerpt.column;
            const auto& humidity = excerpt.humidity[row][column];
            html += cell(number(humidity, own ? 1 : 0),
                         own       ? tokens.accent.name()
                         : crossed ? marked
                                   : QString{},
                         own ? tokens.onAccent.name() : QString{}, own);
        }
        html += QStringLiteral("</tr>");
    }
    return html + QStringLiteral("</table>");
}

QString tablePart(const record::DerivedReading& reading, units::TemperatureUnit unit, const Tokens& tokens) {
    const auto excerpt = workingExcerpt(reading, unit);
    if (!excerpt) {
        return {};
    }
    QString html = heading(WorkingTextContext::tr("The same from this station's table"));
    html += step(
        (excerpt->ice
             ? WorkingTextContext::tr("Relative humidity in %, wick as ice, at %1 hPa, degrees in %2.")
             : WorkingTextContext::tr("Relative humidity in %, wick as water, at %1 hPa, degrees in %2."))
            .arg(number(reading.pressure.hectopascals(), 0), unitWords(unit)));
    html += tableHtml(*excerpt, tokens);
    const bool empty = !excerpt->humidity[excerpt->row][excerpt->column];
    return html +
           step(empty ? WorkingTextContext::tr("The cell is empty: there is no air with this depression.")
                      : WorkingTextContext::tr(
                            "The reading's own row and column stand between the printed ones."));
}

} // namespace

QString workingHtml(const record::DerivedReading& reading, const record::StationPeriod& period,
                    units::TemperatureUnit unit, const QString& about, const Tokens& tokens) {
    if (!reading.derivation) {
        return step(WorkingTextContext::tr("Both bulbs are needed for the working."));
    }
    const psychrometry::Derivation& derived = *reading.derivation;
    QString left = step(exposureWords(period.exposure).toHtmlEscaped() + QStringLiteral(": ") +
                        exposureExplained(period.exposure).toHtmlEscaped()) +
                   equationSteps(reading, unit);
    if (derived.problem) {
        left += step(psychrometryErrorWords(*derived.problem).toHtmlEscaped());
    }
    QString right = tablePart(reading, unit, tokens);
    if (const auto budget = psychrometry::budgetOf(reading.input)) {
        right += heading(WorkingTextContext::tr("How sure")) + budgetTable(*budget);
    }
    const QString title = heading(about.isEmpty() ? WorkingTextContext::tr("The working")
                                                  : WorkingTextContext::tr("The working: %1").arg(about));
    if (right.isEmpty()) {
        return title + left;
    }
    // Side by side, so that the eye goes from the step to the cell.
    return title + QStringLiteral("<table width='100%' cellspacing='0' cellpadding='0'><tr>"
                                  "<td width='52%'>%1</td><td width='4%'></td><td>%2</td></tr></table>")
                       .arg(left, right);
}

} // namespace wickbook::ui
