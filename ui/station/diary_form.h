// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/exposure_diary.h"

#include <QDialog>
#include <tl/expected.hpp>

class QComboBox;
class QLabel;
class QLineEdit;

namespace wickbook::ui {

/// One entry of the exposure diary: when, what, and a note.
class DiaryForm : public QDialog {
    Q_OBJECT

public:
    /// known: the entry to change; none: a new one of today.
    DiaryForm(const std::optional<record::DiaryEntry>& known, record::StationDate today,
              QWidget* parent = nullptr);

    /// As typed, or the sentence about what can't be taken.
    [[nodiscard]] tl::expected<record::DiaryEntry, QString> entry() const;

public slots:
    void accept() override;

private:
    record::DiaryEntry start_;
    record::StationDate today_;
    QLineEdit* date_ = nullptr;
    QComboBox* kind_ = nullptr;
    QLineEdit* note_ = nullptr;
    QLabel* message_ = nullptr;
};

} // namespace wickbook::ui
