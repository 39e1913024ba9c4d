// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/check_series.h"
#include "core/record/observing_hours.h"

#include <QWidget>

#include <optional>
#include <vector>

/// The last two weeks of relative humidity in the margin of the entry, so that a reading can be seen beside
/// its neighbours. Gaps are not joined; doubtful points are hollow.

namespace wickbook::ui {

class FortnightChart : public QWidget {
    Q_OBJECT

public:
    struct Point {
        record::Instant instant;
        std::optional<double> humidity; ///< none: a gap
        bool doubtful = false;
    };
    explicit FortnightChart(QWidget* parent = nullptr);

    void setPoints(std::vector<Point> points, record::Instant from, record::Instant to);
    [[nodiscard]] const std::vector<Point>& points() const { return points_; }
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintLines(QPainter& painter, const QRectF& plot) const;
    void paintPoints(QPainter& painter, const QRectF& plot) const;

    std::vector<Point> points_;
    record::Instant from_{};
    record::Instant to_{};
};

/// A point for each expected hour, and one for each reading kept; hours without a usable reading are gaps.
std::vector<FortnightChart::Point> fortnightPoints(const std::vector<checks::CheckedReading>& readings,
                                                   const std::vector<record::ExpectedHour>& expected);

} // namespace wickbook::ui
