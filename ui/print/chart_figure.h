// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QGraphicsScene>
#include <QImage>
#include <QSizeF>
#include <QString>

class QChart;
class QIODevice;
class QPainter;

/// Charts one above the other as a figure for paper or another page: the same scene is drawn into a PDF, a
/// PNG at print size, an SVG and the clipboard. Measures are logical pixels; needs a QApplication (offscreen
/// will do).

namespace wickbook::ui {

/// 20 cm wide at 300 dots an inch when made into a PNG.
inline constexpr QSizeF kFigureSize{800, 540};

class ChartFigure {
public:
    /// heading: stands above the charts; empty where the page says it already.
    ChartFigure(QSizeF size, const QString& heading);
    ~ChartFigure();

    /// Charts made with ChartLook::paper(); the figure owns them. Placed one below the other, alike in
    /// height.
    void place(const QList<QChart*>& charts);
    void paint(QPainter& painter, const QRectF& target);
    [[nodiscard]] QImage image();
    bool writePng(QIODevice& device);
    bool writeSvg(QIODevice& device, const QString& title, const QString& description);

private:
    QGraphicsScene scene_;
    QSizeF size_;
    double top_ = 0;
};

} // namespace wickbook::ui
