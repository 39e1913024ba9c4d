// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/working_text.h"

#include "core/psychrometry/humidity_table.h"
#include "core/psychrometry/saturation.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>

namespace wickbook::ui {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("working", text);
}

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
    return quantity == "dry"           ? tr("dry bulb, scale and correction")
           : quantity == "wet"         ? tr("wet bulb, scale and correction")
           : quantity == "corrections" ? tr("what the two corrections share")
           : quantity == "coefficient" ? tr("coefficient of the exposure")
           : quantity == "pressure"
               ? tr("pressure")
               : QString::fromUtf8(quantity.data(), static_cast<qsizetype>(quantity.size()));
}

QString correctionStep(const QString& what, const record::UsedBulb& bulb) {
    if (std::abs(bulb.correction.kelvins()) < 1e-12 || !bulb.temperature) {
        return {};
    }
    return step(tr("%1: read %2 °C, correction %3 °C, so %4 °C is used.")
                    .arg(what, number((*bulb.temperature - bulb.correction).celsius(), 2),
                         number(bulb.correction.kelvins(), 2), number(bulb.temperature->celsius(), 2)));
}

QString equationSteps(const record::DerivedReading& reading) {
    const psychrometry::Derivation& derived = *reading.derivation;
    const psychrometry::PairInput& input = reading.input;
    const bool ice = derived.wickUsed == psychrometry::WickState::Ice;
    const auto surface = ice ? psychrometry::Surface::Ice : psychrometry::Surface::Water;
    const auto atWet = psychrometry::saturationVapourPressure(input.wet, surface);
    const auto atDry = psychrometry::saturationVapourPressure(input.dry, psychrometry::Surface::Water);
    if (!derived.coefficient || !derived.vapourPressure || !derived.relativeHumidity || !atWet || !atDry) {
        return {};
    }
    const double a = derived.coefficient->perKelvin;
    const double f = derived.coefficient->enhancement;
    const QString dry = number(input.dry.celsius(), 2);
    const QString wet = number(input.wet.celsius(), 2);
    QString html = correctionStep(tr("Dry bulb"), reading.dry) + correctionStep(tr("Wet bulb"), reading.wet);
    html += step(tr("Over the wet bulb, %1 °C, %2: e<sub>s</sub> = %3 hPa")
                     .arg(wet, ice ? tr("ice") : tr("water"), number(atWet->hectopascals(), 3)));
    html += step(tr("e = f·e<sub>s</sub>(t<sub>w</sub>) − A·p·(t − t<sub>w</sub>)"));
    html += step(tr("e = %1 × %2 − %3 × 10⁻⁴ × %4 × (%5 − %6) = <b>%7 hPa</b>")
                     .arg(number(f, 4), number(atWet->hectopascals(), 3), number(a * 1e4, 2),
                          number(input.pressure.hectopascals(), 1), dry, wet,
                          number(derived.vapourPressure->hectopascals(), 2)));
    if (derived.takenAsSaturation) {
        html +=
            step(tr("The wet bulb stands above the dry bulb within the reading's error: taken as equal, the "
                    "air as saturated."));
    }
    html += step(tr("Saturated at the dry bulb, %1 °C, over water: e<sub>w</sub> = %2 hPa")
                     .arg(dry, number(atDry->hectopascals(), 3)));
    html += step(tr("Relative humidity = 100 × %1 ÷ (%2 × %3) = <b>%4 %</b>")
                     .arg(number(derived.vapourPressure->hectopascals(), 2), number(f, 4),
                          number(atDry->hectopascals(), 3), number(derived.relativeHumidity->percent(), 1)));
    if (derived.dewPoint) {
        html += step(tr("Dew point: where %1 hPa would be saturation over water: <b>%2 °C</b>")
                         .arg(number(derived.vapourPressure->hectopascals(), 2),
                              number(derived.dewPoint->celsius(), 1)));
    }
    return html;
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
        .arg(tr("each by itself (one standard uncertainty)"), rows,
             tr("together, twice the root of the squares: ±"), number(budget.relativeHumidityU95, 1));
}

/// Five rows and five columns of the printed table round the reading; the cell nearest to it is bold.
QString tableExcerpt(const record::DerivedReading& reading, units::TemperatureUnit unit) {
    const bool celsius = unit == units::TemperatureUnit::Celsius;
    const double dry = celsius ? reading.input.dry.celsius() : reading.input.dry.fahrenheit();
    const double depression = celsius ? reading.derivation->depression.kelvins()
                                      : reading.derivation->depression.fahrenheitDegrees();
    const double column = std::max(0.0, std::round(depression * 2) / 2);
    psychrometry::HumidityTableRequest request;
    request.unit = unit;
    request.lowestDry = std::round(dry) - 2;
    request.highestDry = std::round(dry) + 2;
    request.dryStep = 1;
    request.depressionStep = 0.5;
    request.highestDepression = column + 1;
    request.pressure = reading.pressure;
    request.coefficient = reading.input.coefficient;
    const auto table = psychrometry::humidityTable(request);
    if (!table) {
        return {};
    }
    const bool ice = reading.derivation->wickUsed == psychrometry::WickState::Ice;
    const double firstColumn = std::max(0.0, column - 1);
    QString html = QStringLiteral("<table border='1' cellspacing='0' cellpadding='4'><tr><td>%1</td>")
                       .arg(tr("dry ↓ depression →"));
    const auto shown = [&](double value) { return value > firstColumn - 0.01; };
    for (const double value : table->depressions) {
        if (shown(value)) {
            const QString text = number(value, 1);
            html += QStringLiteral("<td align='right'>%1</td>")
                        .arg(std::abs(value - column) < 0.01 ? QStringLiteral("<b>%1</b>").arg(text) : text);
        }
    }
    html += QStringLiteral("</tr>");
    for (const psychrometry::HumidityTableRow& row : ice ? table->iceRows : table->waterRows) {
        const bool ourRow = std::abs(row.dry - std::round(dry)) < 0.01;
        const QString name = number(row.dry, 0);
        html += QStringLiteral("<tr><td align='right'>%1</td>")
                    .arg(ourRow ? QStringLiteral("<b>%1</b>").arg(name) : name);
        for (std::size_t index = 0; index < row.cells.size(); ++index) {
            if (!shown(table->depressions[index])) {
                continue;
            }
            const auto& humidity = row.cells[index].humidity;
            const QString text = humidity ? number(humidity->percent(), 0) : number(std::nullopt, 0);
            const bool ours = ourRow && std::abs(table->depressions[index] - column) < 0.01;
            html += QStringLiteral("<td align='right'>%1</td>")
                        .arg(ours ? QStringLiteral("<b><u>[%1]</u></b>").arg(text) : text);
        }
        html += QStringLiteral("</tr>");
    }
    return html + QStringLiteral("</table>");
}

} // namespace

QString workingHtml(const record::DerivedReading& reading, const record::StationPeriod& period,
                    units::TemperatureUnit unit) {
    if (!reading.derivation) {
        return step(tr("Both bulbs are needed for the working."));
    }
    const psychrometry::Derivation& derived = *reading.derivation;
    QString html = heading(tr("The working"));
    html += step(exposureWords(period.exposure).toHtmlEscaped() + QStringLiteral(": ") +
                 exposureExplained(period.exposure).toHtmlEscaped());
    if (derived.problem) {
        return html + step(psychrometryErrorWords(*derived.problem).toHtmlEscaped());
    }
    html += equationSteps(reading);
    if (derived.uncertainty) {
        html += heading(tr("How sure"));
        html += budgetTable(*derived.uncertainty);
    }
    const QString table = tableExcerpt(reading, unit);
    if (!table.isEmpty()) {
        html += heading(tr("The same from the table of this station"));
        html += step(tr("Relative humidity in %, at %1 hPa; row and column are the nearest to the reading.")
                         .arg(number(reading.pressure.hectopascals(), 0)));
        html += table;
    }
    return html;
}

} // namespace wickbook::ui
