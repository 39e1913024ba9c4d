// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/absence.h"

#include <QDialog>
#include <tl/expected.hpp>

class QComboBox;
class QLabel;
class QLineEdit;

namespace wickbook::ui {

/// First day, last day, why, and who reads meanwhile.
class AbsenceForm : public QDialog {
    Q_OBJECT

public:
    /// known: the absence to change; none: a new one that begins today.
    AbsenceForm(const std::optional<record::Absence>& known, record::StationDate today,
                QWidget* parent = nullptr);

    /// As typed, or the sentence about what can't be taken.
    [[nodiscard]] tl::expected<record::Absence, QString> absence() const;

public slots:
    void accept() override;

private:
    record::Absence start_;
    QLineEdit* from_ = nullptr;
    QLineEdit* to_ = nullptr;
    QComboBox* reason_ = nullptr;
    QLineEdit* deputy_ = nullptr;
    QLineEdit* note_ = nullptr;
    QLabel* message_ = nullptr;
};

} // namespace wickbook::ui
