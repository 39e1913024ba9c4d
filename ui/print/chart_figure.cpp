// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/chart_figure.h"

#include "ui/print/chart_look.h"

#include <QChart>
#include <QGraphicsSimpleTextItem>
#include <QPainter>
#include <QSvgGenerator>

#include <cmath>

namespace wickbook::ui {

namespace {

constexpr int kPngWidth = 2400;
constexpr double kDotsPerMetre = 300 / 0.0254;
constexpr double kBetweenCharts = 8;

} // namespace

ChartFigure::ChartFigure(QSizeF size, const QString& heading) : size_(size) {
    if (heading.isEmpty()) {
        return;
    }
    const ChartLook look = ChartLook::paper();
    QFont font = look.font;
    font.setPixelSize(font.pixelSize() + 4);
    font.setBold(true);
    auto* text = new QGraphicsSimpleTextItem;
    text->setText(heading);
    text->setFont(font);
    text->setBrush(look.tokens.ink);
    text->setPos(12, 6);
    scene_.addItem(text);
    top_ = text->boundingRect().height() + 14;
}

ChartFigure::~ChartFigure() = default;

void ChartFigure::place(const QList<QChart*>& charts) {
    const double height = (size_.height() - top_ - kBetweenCharts * static_cast<double>(charts.size() - 1)) /
                          static_cast<double>(std::max<qsizetype>(1, charts.size()));
    double y = top_;
    for (QChart* chart : charts) {
        scene_.addItem(chart);
        chart->setGeometry(QRectF{0, y, size_.width(), height});
        y += height + kBetweenCharts;
    }
}

void ChartFigure::paint(QPainter& painter, const QRectF& target) {
    scene_.render(&painter, target, QRectF{QPointF{0, 0}, size_}, Qt::KeepAspectRatio);
}

QImage ChartFigure::image() {
    const double scale = kPngWidth / size_.width();
    QImage image(kPngWidth, static_cast<int>(std::lround(size_.height() * scale)), QImage::Format_RGB32);
    if (image.isNull()) {
        return image;
    }
    image.setDotsPerMeterX(static_cast<int>(kDotsPerMetre));
    image.setDotsPerMeterY(static_cast<int>(kDotsPerMetre));
    image.fill(lightTokens().sheet);
    QPainter painter(&image);
    paint(painter, QRectF{QPointF{0, 0}, QSizeF{image.size()}});
    return image;
}

bool ChartFigure::writePng(QIODevice& device) {
    const QImage made = image();
    return !made.isNull() && made.save(&device, "PNG");
}

bool ChartFigure::writeSvg(QIODevice& device, const QString& title, const QString& description) {
    QSvgGenerator generator;
    generator.setOutputDevice(&device);
    generator.setSize(size_.toSize());
    generator.setViewBox(QRectF{QPointF{0, 0}, size_});
    generator.setTitle(title);
    generator.setDescription(description);
    QPainter painter;
    if (!painter.begin(&generator)) {
        return false;
    }
    painter.fillRect(QRectF{QPointF{0, 0}, size_}, lightTokens().sheet);
    paint(painter, QRectF{QPointF{0, 0}, size_});
    return painter.end();
}

} // namespace wickbook::ui
