// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/chart_look.h"
#include "ui/print/chart_points.h"
#include "ui/print/chart_time_axis.h"

#include <QLocale>
#include <QRectF>

#include <vector>

class QChart;
class QValueAxis;

/// What every chart shares: the toolkit's chart laid bare, rules across at round values, their numbers at the
/// left, words below, degrees as the thermometers have them, and the point under the hand.

namespace wickbook::ui {

/// Takes away all that the toolkit draws by itself but the lines: frame, key, axes. The axes are given to the
/// chart, below and at the left.
void layBare(QChart& chart, QValueAxis& below, QValueAxis& left);

double celsiusAsShown(double celsius, units::TemperatureUnit unit);

/// The nearest of the points it is shown, within reach.
class NearestPoint {
public:
    NearestPoint(QPointF place, double reach) : place_(place), squared_(reach * reach) {}
    void look(const ChartPoint& point, QPointF at) {
        const QPointF away = at - place_;
        const double squared = QPointF::dotProduct(away, away);
        if (squared <= squared_) {
            squared_ = squared;
            point_ = &point;
        }
    }
    /// nullptr: none within reach.
    [[nodiscard]] const ChartPoint* point() const { return point_; }

private:
    QPointF place_;
    double squared_;
    const ChartPoint* point_ = nullptr;
};

double placeOnScale(const QRectF& plot, const ValueScale& scale, double value);

void drawValueRules(QPainter& painter, const ChartLook& look, const QRectF& plot, const ValueScale& scale);
void drawValueWords(QPainter& painter, const ChartLook& look, const QLocale& locale, const QRectF& plot,
                    const ValueScale& scale);

struct PlacedWord {
    double x = 0; ///< its middle
    QString text;
};
/// Below the plot, left to right; a word that would run into the one before is left out.
void drawWordsBelow(QPainter& painter, const ChartLook& look, const QRectF& plot, double width,
                    const std::vector<PlacedWord>& words);

} // namespace wickbook::ui
