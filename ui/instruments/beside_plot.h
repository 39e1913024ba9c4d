// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

namespace wickbook::ui {

/// Points of one comparison: what a straight line would show, drawn thin, and where the differences lie.
/// Black circles on paper: legible in grey.
class BesidePlot : public QWidget {
    Q_OBJECT

public:
    struct Line {
        double intercept = 0;
        double slope = 0;
    };
    BesidePlot(const QString& xTitle, const QString& yTitle, QWidget* parent = nullptr);

    /// expected: where the points would lie if nothing were wrong. fitted: where they lie, dashed.
    void show(std::vector<QPointF> points, const Line& expected, const std::optional<Line>& fitted);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString xTitle_;
    QString yTitle_;
    std::vector<QPointF> points_;
    Line expected_;
    std::optional<Line> fitted_;
};

} // namespace wickbook::ui
