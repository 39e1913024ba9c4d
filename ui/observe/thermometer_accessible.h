// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAccessibleValueInterface>
#include <QAccessibleWidget>

/// The drawn thermometer as a screen reader meets it: a slider on the engraved scale with the reading as its
/// value, which can be set from there too. Owned by Qt's table of interfaces.

namespace wickbook::ui {

class ThermometerDrawing;

class ThermometerAccessible : public QAccessibleWidget, public QAccessibleValueInterface {
public:
    explicit ThermometerAccessible(ThermometerDrawing& drawing);

    /// Makes drawn thermometers known under their role; once is enough, again does no harm.
    static void makeKnown();

    void* interface_cast(QAccessible::InterfaceType type) override;
    [[nodiscard]] QString text(QAccessible::Text which) const override;
    [[nodiscard]] QVariant currentValue() const override; ///< invalid while nothing was read
    void setCurrentValue(const QVariant& value) override;
    [[nodiscard]] QVariant maximumValue() const override;
    [[nodiscard]] QVariant minimumValue() const override;
    [[nodiscard]] QVariant minimumStepSize() const override;

private:
    [[nodiscard]] ThermometerDrawing& drawing() const;
};

} // namespace wickbook::ui
