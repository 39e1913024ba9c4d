// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/revision.h"

#include <QDialog>

#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

/// On which book and page of the paper register lines stand: which lines, and their place. Writes nothing
/// itself.

namespace wickbook::ui {

class PaperDialog : public QDialog {
    Q_OBJECT

public:
    /// Lines that could be meant: what they are called, and the lines.
    struct Choice {
        QString words;
        std::vector<record::StoredObservation> lines;
    };

    /// place: what stands in the fields at first.
    PaperDialog(std::vector<Choice> choices, const std::optional<record::PaperPlace>& place,
                QWidget* parent = nullptr);

    [[nodiscard]] const std::vector<record::StoredObservation>& lines() const;
    /// None where both fields are empty: the place is taken away.
    [[nodiscard]] std::optional<record::PaperPlace> place() const;

private:
    void preview();

    std::vector<Choice> choices_;
    QComboBox* which_ = nullptr;
    QLineEdit* book_ = nullptr;
    QLineEdit* page_ = nullptr;
    QLabel* summary_ = nullptr;
    QPushButton* keep_ = nullptr;
};

} // namespace wickbook::ui
