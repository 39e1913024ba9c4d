// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/chart_look.h"
#include "ui/print/chart_time_axis.h"

#include <QLocale>
#include <QRectF>

#include <vector>

/// What is drawn round every chart: rules across at round values, their numbers at the left, words below.

namespace wickbook::ui {

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
