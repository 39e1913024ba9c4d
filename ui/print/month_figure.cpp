// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/month_figure.h"

#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QCoreApplication>
#include <QGraphicsSimpleTextItem>
#include <QImage>
#include <QPainter>
#include <QSvgGenerator>

#include <cmath>

namespace wickbook::ui {

namespace {

constexpr QSizeF kFigureSize{800, 540};
constexpr int kPngWidth = 2400;
constexpr double kDotsPerMetre = 300 / 0.0254;

} // namespace

record::Instant startOf(const record::StationRecord& station, record::StationDate day) {
    const record::Instant about{day.time_since_epoch()};
    return record::startOfDate(day, station.periodAt(about).zone);
}

QString stationHeading(const record::StationRecord& station) {
    const QString name = QString::fromStdString(station.name());
    // The sample's own name may say so already; once is enough.
    //: %1 the station's name, %2 a mark such as "invented station"
    return station.facts().invented && !name.contains(QLatin1String("invented"), Qt::CaseInsensitive)
               ? QCoreApplication::translate("print", "%1 (%2)").arg(name, inventedWords())
               : name;
}

units::TemperatureUnit unitOf(const report::MonthReport& report) {
    const record::Instant middle{record::StationDate{report.month / 15}.time_since_epoch()};
    const record::Thermometer* dry = report.station.dryThermometerAt(middle);
    return dry == nullptr ? units::TemperatureUnit::Celsius : dry->unit;
}

MonthFigure::MonthFigure(const report::MonthReport& report, const QLocale& locale, QSizeF size,
                         bool withHeading)
    : size_(size) {
    const ChartLook look = ChartLook::paper();
    const record::StationDate first{report.month / 1};
    const record::StationDate last{report.month / date::last};
    const auto points =
        std::make_shared<const ChartPoints>(chartPoints(report.readings, report.station, first, last));
    double top = 0;
    if (withHeading) {
        QFont font = look.font;
        font.setPixelSize(font.pixelSize() + 4);
        font.setBold(true);
        auto* heading = new QGraphicsSimpleTextItem;
        //: %1 the station, %2 a month and its year
        heading->setText(QCoreApplication::translate("print", "%1 · %2")
                             .arg(stationHeading(report.station), monthWords(locale, report.month)));
        heading->setFont(font);
        heading->setBrush(look.tokens.ink);
        heading->setPos(12, 6);
        scene_.addItem(heading);
        top = heading->boundingRect().height() + 14;
    }
    const double height = (size.height() - top - 8) / 2;
    humidity_ = new HumidityChart(Quantity::Humidity, report.station, look, locale, unitOf(report));
    dewPoint_ = new HumidityChart(Quantity::DewPoint, report.station, look, locale, unitOf(report));
    for (HumidityChart* chart : {humidity_, dewPoint_}) {
        scene_.addItem(chart);
        chart->setGeometry(QRectF{0, chart == humidity_ ? top : top + height + 8, size.width(), height});
        chart->setPoints(points);
        chart->setSpan(startOf(report.station, first), startOf(report.station, last + date::days{1}));
        chart->settle();
    }
}

MonthFigure::~MonthFigure() = default;

void MonthFigure::paint(QPainter& painter, const QRectF& target) {
    scene_.render(&painter, target, QRectF{QPointF{0, 0}, size_}, Qt::KeepAspectRatio);
}

bool writeFigurePng(const report::MonthReport& report, const QLocale& locale, QIODevice& device) {
    MonthFigure figure(report, locale, kFigureSize, true);
    const double scale = kPngWidth / kFigureSize.width();
    QImage image(kPngWidth, static_cast<int>(std::lround(kFigureSize.height() * scale)),
                 QImage::Format_RGB32);
    if (image.isNull()) {
        return false;
    }
    image.setDotsPerMeterX(static_cast<int>(kDotsPerMetre));
    image.setDotsPerMeterY(static_cast<int>(kDotsPerMetre));
    image.fill(lightTokens().sheet);
    {
        QPainter painter(&image);
        figure.paint(painter, QRectF{QPointF{0, 0}, QSizeF{image.size()}});
    }
    return image.save(&device, "PNG");
}

bool writeFigureSvg(const report::MonthReport& report, const QLocale& locale, QIODevice& device) {
    MonthFigure figure(report, locale, kFigureSize, true);
    QSvgGenerator generator;
    generator.setOutputDevice(&device);
    generator.setSize(kFigureSize.toSize());
    generator.setViewBox(QRectF{QPointF{0, 0}, kFigureSize});
    generator.setTitle(QCoreApplication::translate("print", "%1 · %2")
                           .arg(stationHeading(report.station), monthWords(locale, report.month)));
    generator.setDescription(
        QCoreApplication::translate("print", "Relative humidity and dew point at observing hours"));
    QPainter painter;
    if (!painter.begin(&generator)) {
        return false;
    }
    painter.fillRect(QRectF{QPointF{0, 0}, kFigureSize}, lightTokens().sheet);
    figure.paint(painter, QRectF{QPointF{0, 0}, kFigureSize});
    return painter.end();
}

} // namespace wickbook::ui
