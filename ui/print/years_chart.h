// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/chart_points.h"
#include "ui/print/framed_chart.h"

#include <memory>

/// The same days of every year laid over one another, at one observing hour: the year in hand bold with its
/// marks, the others thin and quiet, one of them singled out if wanted. Gaps stay open in every year.

namespace wickbook::ui {

class YearsChart : public FramedChart {
    Q_OBJECT

public:
    YearsChart(Quantity quantity, ChartLook look, QLocale locale, units::TemperatureUnit unit);

    /// All years' points; the span of the year in hand as dates, at most a year long; which observing hour.
    void show(std::shared_ptr<const ChartPoints> points, record::StationDate first, record::StationDate last,
              std::size_t hour);
    /// The year singled out; none: all others alike.
    void single(std::optional<date::year> year);
    void setCaret(const std::optional<record::Instant>& caret);
    [[nodiscard]] QString title() const override;
    /// Other years with at least one point in the span, by year.
    [[nodiscard]] const std::vector<date::year>& otherYears() const { return others_; }

protected:
    void arrange() override;
    void paintBelow(QPainter& painter) const override;
    void paintAbove(QPainter& painter) const override;
    [[nodiscard]] std::vector<KeyEntry> key() const override;

private:
    [[nodiscard]] double shown(const ChartPoint& point) const;
    /// Days since the span's first day, in the point's own year.
    [[nodiscard]] std::optional<double> daysInto(const ChartPoint& point, date::year year) const;
    /// The runs of one year within the span, in days and shown values.
    [[nodiscard]] std::vector<QList<QPointF>> runsOf(date::year year) const;
    [[nodiscard]] record::StationDate firstIn(date::year year) const;

    Quantity quantity_;
    units::TemperatureUnit unit_;
    std::shared_ptr<const ChartPoints> points_;
    record::StationDate first_{}, last_{};
    std::size_t hour_ = 0;
    std::optional<date::year> single_;
    std::optional<record::Instant> caret_;
    std::vector<date::year> others_;
    std::vector<QList<QPointF>> inHand_;
};

} // namespace wickbook::ui
