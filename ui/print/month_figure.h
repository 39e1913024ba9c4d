// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"
#include "ui/print/chart_figure.h"
#include "ui/print/humidity_chart.h"

#include <QLocale>
#include <QSizeF>

#include <memory>

class QIODevice;
class QPainter;

/// The month's two charts, relative humidity above dew point, as one figure for paper: the same scene is
/// drawn into the newsletter's page, a PNG at print size and an SVG. Always in the light colours. Measures
/// are logical pixels; needs a QApplication (offscreen will do). The report must outlive the figure.

namespace wickbook::ui {

class MonthFigure {
public:
    /// withHeading: station and month stand above the charts; left out where the page says it already.
    MonthFigure(const report::MonthReport& report, const QLocale& locale, QSizeF size, bool withHeading);
    ~MonthFigure();

    void paint(QPainter& painter, const QRectF& target) { figure_.paint(painter, target); }
    [[nodiscard]] ChartFigure& figure() { return figure_; }
    [[nodiscard]] const HumidityChart& humidity() const { return *humidity_; }
    [[nodiscard]] const HumidityChart& dewPoint() const { return *dewPoint_; }

private:
    ChartFigure figure_;
    HumidityChart* humidity_ = nullptr; ///< the figure's
    HumidityChart* dewPoint_ = nullptr;
};

/// 2400 pixels wide at 300 dots an inch: a column and a half of a newsletter, or 20 cm.
bool writeFigurePng(const report::MonthReport& report, const QLocale& locale, QIODevice& device);
bool writeFigureSvg(const report::MonthReport& report, const QLocale& locale, QIODevice& device);

/// "Invented station · Hill End" where the station is invented, else its name.
QString stationHeading(const record::StationRecord& station);
/// The middle half of other years' readings over one month, as a quiet band.
AverageSpan averageSpan(const record::StationRecord& station, date::year_month month,
                        const climate::StationAverage& average, Quantity quantity);
/// The first instant of a day by the clock the station then kept.
record::Instant startOf(const record::StationRecord& station, record::StationDate day);
/// The unit the station's thermometers read in during the month.
units::TemperatureUnit unitOf(const report::MonthReport& report);

} // namespace wickbook::ui
