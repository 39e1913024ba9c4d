// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/derived_reading.h"

#include <QWidget>

class QLabel;
class QPushButton;

/// The answer, live: relative humidity and dew point large, each with its ±, the smaller quantities under
/// them, and where pressure and coefficient came from. Without an answer it says why in a sentence.

namespace wickbook::ui {

class AnswerPanel : public QWidget {
    Q_OBJECT

public:
    explicit AnswerPanel(QWidget* parent = nullptr);

    /// unit: of the station's thermometers; dew point and depression are told in it.
    void showReading(const record::DerivedReading& reading, const record::StationPeriod& period,
                     units::TemperatureUnit unit);
    /// Nothing to answer yet; the sentence says what is awaited.
    void showNothing(const QString& sentence);

signals:
    void workingWanted();

private:
    QLabel* humidity_ = nullptr;
    QLabel* humidityPlusMinus_ = nullptr;
    QLabel* dewPoint_ = nullptr;
    QLabel* dewPointUnit_ = nullptr;
    QLabel* dewPointPlusMinus_ = nullptr;
    QLabel* smaller_ = nullptr;
    QLabel* origin_ = nullptr;
    QPushButton* working_ = nullptr;
};

/// "vapour pressure 8.3 hPa · depression 2.3 °C · …"
QString smallerQuantities(const record::DerivedReading& reading, units::TemperatureUnit unit);
/// "in a louvred screen, coefficient 7.99e−4 · pressure 994 hPa from 165 m"
QString originOfAnswer(const record::DerivedReading& reading, const record::StationPeriod& period);

} // namespace wickbook::ui
