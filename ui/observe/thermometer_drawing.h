// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/observe/thermometer_scale.h"

#include <QWidget>

#include <optional>

/// One drawn thermometer: seeing the column beside its scale is the guard against reading a ten too high.
/// Typing moves the column; dragging, the arrow keys and the page keys move the value by a scale step; a
/// stray wheel never does. Pulled below the lowest mark the column stands in the bulb: below scale.

namespace wickbook::ui {

enum class Bulb { Dry, Wet };

class ThermometerDrawing : public QWidget {
    Q_OBJECT

public:
    explicit ThermometerDrawing(Bulb bulb, QWidget* parent = nullptr);

    void setScale(const ThermometerScale& scale);
    /// In the scale's unit; none: an empty tube.
    void setReading(std::optional<double> value, bool belowScale);
    [[nodiscard]] std::optional<double> reading() const { return value_; }
    [[nodiscard]] const ThermometerScale& scale() const { return scale_; }
    /// "16.4 °C", "below scale", "no reading yet".
    [[nodiscard]] QString spokenReading() const;
    /// As if the hand had moved the column there: to the nearest step, no higher than the highest mark.
    void moveTo(double value);
    /// Height of a value in this widget, pixels from the top.
    [[nodiscard]] double heightOf(double value) const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    /// The hand moved the column.
    void moved(double value);
    void movedBelowScale();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    void moveBy(double steps);
    void dragTo(double y);
    void paintScale(QPainter& painter, double tubeRight) const;
    void paintTube(QPainter& painter, double centre) const;

    Bulb bulb_;
    ThermometerScale scale_;
    std::optional<double> value_;
    bool belowScale_ = false;
};

/// The bracket between the two columns with the wet-bulb depression.
class DepressionBracket : public QWidget {
    Q_OBJECT

public:
    DepressionBracket(const ThermometerDrawing& dry, const ThermometerDrawing& wet,
                      QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const ThermometerDrawing& dry_;
    const ThermometerDrawing& wet_;
};

} // namespace wickbook::ui
