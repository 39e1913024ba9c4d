// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/chart_frame.h"

#include "ui/text/number_words.h"

#include <QChart>
#include <QFontMetricsF>
#include <QGraphicsLayout>
#include <QLegend>
#include <QPainter>
#include <QValueAxis>

namespace wickbook::ui {

void layBare(QChart& chart, QValueAxis& below, QValueAxis& left) {
    chart.legend()->hide();
    chart.setBackgroundVisible(false);
    chart.setPlotAreaBackgroundVisible(false);
    chart.layout()->setContentsMargins(0, 0, 0, 0);
    chart.setMargins({0, 0, 0, 0});
    chart.setBackgroundRoundness(0);
    below.setVisible(false);
    left.setVisible(false);
    chart.addAxis(&below, Qt::AlignBottom);
    chart.addAxis(&left, Qt::AlignLeft);
}

double celsiusAsShown(double celsius, units::TemperatureUnit unit) {
    return unit == units::TemperatureUnit::Fahrenheit ? units::Temperature::fromCelsius(celsius).fahrenheit()
                                                      : celsius;
}

double placeOnScale(const QRectF& plot, const ValueScale& scale, double value) {
    return plot.bottom() - plot.height() * (value - scale.low) / (scale.high - scale.low);
}

void drawValueRules(QPainter& painter, const ChartLook& look, const QRectF& plot, const ValueScale& scale) {
    painter.setPen(QPen(look.tokens.rule, 1));
    for (double value = scale.low; value <= scale.high + scale.step * 1e-6; value += scale.step) {
        const double y = placeOnScale(plot, scale, value);
        painter.drawLine(QPointF{plot.left(), y}, QPointF{plot.right(), y});
    }
}

void drawValueWords(QPainter& painter, const ChartLook& look, const QLocale& locale, const QRectF& plot,
                    const ValueScale& scale) {
    const QFontMetricsF metrics(look.font);
    painter.setFont(look.font);
    painter.setPen(look.tokens.soft);
    for (double value = scale.low; value <= scale.high + scale.step * 1e-6; value += scale.step) {
        const QString text = numberWords(locale, value, scale.decimals);
        painter.drawText(QPointF{plot.left() - 6 - metrics.horizontalAdvance(text),
                                 placeOnScale(plot, scale, value) + metrics.capHeight() / 2},
                         text);
    }
}

void drawWordsBelow(QPainter& painter, const ChartLook& look, const QRectF& plot, double width,
                    const std::vector<PlacedWord>& words) {
    const QFontMetricsF metrics(look.font);
    painter.setFont(look.font);
    painter.setPen(look.tokens.soft);
    double free = plot.left() - 30;
    for (const PlacedWord& word : words) {
        const double advance = metrics.horizontalAdvance(word.text);
        const double left = std::min(word.x - advance / 2, width - advance);
        if (left < free) {
            continue;
        }
        painter.drawText(QPointF{left, plot.bottom() + 6 + metrics.ascent()}, word.text);
        free = left + advance + 8;
    }
}

} // namespace wickbook::ui
