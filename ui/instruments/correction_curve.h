// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station.h"

#include <QWidget>

namespace wickbook::ui {

/// The correction over the scale, drawn small: points joined by lines, level beyond the outermost, as it is
/// applied. Shows nothing but its frame where there is no point.
class CorrectionCurve : public QWidget {
    Q_OBJECT

public:
    explicit CorrectionCurve(QWidget* parent = nullptr);

    void show(const std::vector<record::CorrectionPoint>& points, units::TemperatureUnit unit);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<record::CorrectionPoint> points_; ///< by reading
    units::TemperatureUnit unit_ = units::TemperatureUnit::Celsius;
};

} // namespace wickbook::ui
