// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/comparison/class_round.h"
#include "core/units/elevation.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QPagedPaintDevice;
class QPushButton;

/// The class round: many pupils' pairs of the same air, typed side by side, the middle and who is far off.
/// A window of its own that knows no book: what is typed here stays here and goes when it is closed for good.

namespace wickbook::ui {

class PairsModel;
class PairsView;
class TypedNumberEdit;

/// What the round begins with: the open station's instrument, or a common one.
struct ClassStart {
    psychrometry::CoefficientRule coefficient;
    units::Pressure pressure = units::Pressure::fromHectopascals(1013.25);
    units::TemperatureUnit unit = units::TemperatureUnit::Celsius;
    units::TemperatureDifference step = units::TemperatureDifference::fromKelvins(0.5);
};

class ClassWindow : public QWidget {
    Q_OBJECT

public:
    explicit ClassWindow(const ClassStart& start, QWidget* parent = nullptr);

    [[nodiscard]] PairsModel& model() { return *model_; }

private:
    void build(const ClassStart& start);
    QWidget* buildInstrument(const ClassStart& start);
    QWidget* buildFoot();
    void applySetting();
    void showSummary();
    void print(bool answers);
    void savePdf(bool answers);
    bool paint(bool answers, QPagedPaintDevice& device) const;
    void startAgain();
    void say(const QString& sentence, bool wrong = false);

    ClassStart start_;
    PairsModel* model_ = nullptr;
    PairsView* view_ = nullptr;
    QComboBox* exposure_ = nullptr;
    QComboBox* unit_ = nullptr;
    QComboBox* step_ = nullptr;
    TypedNumberEdit* pressure_ = nullptr;
    QLabel* summary_ = nullptr;
    QLabel* message_ = nullptr;
    QPushButton* answers_ = nullptr;
};

} // namespace wickbook::ui
