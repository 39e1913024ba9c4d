// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station_record.h"

#include <QDialog>
#include <tl/expected.hpp>

class QComboBox;
class QLabel;
class QLineEdit;

/// From a date on the station differs: its hours, their rule, its place, zone or exposure. Fields that are
/// left as they are name nothing, so a later finding about an earlier time still carries through.

namespace wickbook::ui {

class TypedNumberEdit;

class PeriodForm : public QDialog {
    Q_OBJECT

public:
    /// today: what the date field offers.
    PeriodForm(const record::StationRecord& station, record::StationDate today, QWidget* parent = nullptr);

    /// The change as typed, or the sentence about what can't be taken.
    [[nodiscard]] tl::expected<record::PeriodChange, QString> change() const;
    [[nodiscard]] QString why() const;

public slots:
    void accept() override;

private:
    void build(record::StationDate today);

    record::StationPeriod now_;
    QLineEdit* from_ = nullptr;
    QLineEdit* hours_ = nullptr;
    QComboBox* rule_ = nullptr;
    QComboBox* zone_ = nullptr;
    QComboBox* exposure_ = nullptr;
    TypedNumberEdit* latitude_ = nullptr;
    TypedNumberEdit* longitude_ = nullptr;
    TypedNumberEdit* elevation_ = nullptr;
    QLineEdit* surroundings_ = nullptr;
    QLineEdit* why_ = nullptr;
    QLabel* message_ = nullptr;
};

} // namespace wickbook::ui
