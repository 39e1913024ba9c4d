// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/thermometer_accessible.h"

#include "ui/observe/thermometer_drawing.h"

namespace wickbook::ui {

namespace {

QAccessibleInterface* interfaceOf(const QString& /*className*/, QObject* object) {
    auto* drawing = qobject_cast<ThermometerDrawing*>(object);
    return drawing == nullptr ? nullptr : new ThermometerAccessible(*drawing);
}

} // namespace

ThermometerAccessible::ThermometerAccessible(ThermometerDrawing& drawing)
    : QAccessibleWidget(&drawing, QAccessible::Slider) {}

void ThermometerAccessible::makeKnown() {
    static const bool known = [] {
        QAccessible::installFactory(interfaceOf);
        return true;
    }();
    (void)known;
}

ThermometerDrawing& ThermometerAccessible::drawing() const {
    return *static_cast<ThermometerDrawing*>(widget());
}

void* ThermometerAccessible::interface_cast(QAccessible::InterfaceType type) {
    return type == QAccessible::ValueInterface ? static_cast<QAccessibleValueInterface*>(this)
                                               : QAccessibleWidget::interface_cast(type);
}

QString ThermometerAccessible::text(QAccessible::Text which) const {
    return which == QAccessible::Value ? drawing().spokenReading() : QAccessibleWidget::text(which);
}

QVariant ThermometerAccessible::currentValue() const {
    const auto reading = drawing().reading();
    return reading ? QVariant(*reading) : QVariant();
}

void ThermometerAccessible::setCurrentValue(const QVariant& value) {
    bool isNumber = false;
    const double wanted = value.toDouble(&isNumber);
    if (isNumber) {
        drawing().moveTo(wanted);
    }
}

QVariant ThermometerAccessible::maximumValue() const {
    return drawing().scale().highestMark;
}

QVariant ThermometerAccessible::minimumValue() const {
    return drawing().scale().lowestMark;
}

QVariant ThermometerAccessible::minimumStepSize() const {
    return drawing().scale().step;
}

} // namespace wickbook::ui
