// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/month_figure.h"

#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QCoreApplication>

namespace wickbook::ui {

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

AverageSpan averageSpan(const record::StationRecord& station, date::year_month month,
                        const climate::StationAverage& average, Quantity quantity) {
    const bool humidity = quantity == Quantity::Humidity;
    return {startOf(station, record::StationDate{month / 1}),
            startOf(station, record::StationDate{month / date::last} + date::days{1}),
            humidity ? average.lowerQuartileHumidity : average.lowerQuartileDewPoint,
            humidity ? average.upperQuartileHumidity : average.upperQuartileDewPoint};
}

namespace {

QString monthHeading(const report::MonthReport& report, const QLocale& locale) {
    //: %1 the station, %2 a month and its year
    return QCoreApplication::translate("print", "%1 · %2")
        .arg(stationHeading(report.station), monthWords(locale, report.month));
}

} // namespace

MonthFigure::MonthFigure(const report::MonthReport& report, const QLocale& locale, QSizeF size,
                         bool withHeading)
    : figure_(size, withHeading ? monthHeading(report, locale) : QString{}) {
    const ChartLook look = ChartLook::paper();
    const record::StationDate first{report.month / 1};
    const record::StationDate last{report.month / date::last};
    const auto points =
        std::make_shared<const ChartPoints>(chartPoints(report.readings, report.station, first, last));
    humidity_ = new HumidityChart(Quantity::Humidity, report.station, look, locale, unitOf(report));
    dewPoint_ = new HumidityChart(Quantity::DewPoint, report.station, look, locale, unitOf(report));
    figure_.place({humidity_, dewPoint_});
    for (HumidityChart* chart : {humidity_, dewPoint_}) {
        chart->setPoints(points);
        if (report.ownYears && report.ownYears->readings) {
            const climate::StationAverage& average = *report.ownYears->readings;
            chart->setAverage(
                {average.years, {averageSpan(report.station, report.month, average, chart->quantity())}});
        }
        chart->setSpan(startOf(report.station, first), startOf(report.station, last + date::days{1}));
        chart->settle();
    }
}

MonthFigure::~MonthFigure() = default;

bool writeFigurePng(const report::MonthReport& report, const QLocale& locale, QIODevice& device) {
    MonthFigure figure(report, locale, kFigureSize, true);
    return figure.figure().writePng(device);
}

bool writeFigureSvg(const report::MonthReport& report, const QLocale& locale, QIODevice& device) {
    MonthFigure figure(report, locale, kFigureSize, true);
    return figure.figure().writeSvg(
        device, monthHeading(report, locale),
        QCoreApplication::translate("print", "Relative humidity and dew point at observing hours"));
}

} // namespace wickbook::ui
