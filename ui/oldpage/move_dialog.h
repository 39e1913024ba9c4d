// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/commands/move_observations.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;

/// "These belong to another month": which lines, which month, and what would happen, line by line, before it
/// does. Writes nothing itself.

namespace wickbook::ui {

class MonthEdit;

class MoveDialog : public QDialog {
    Q_OBJECT

public:
    /// Lines that could be meant: what they are called, and the lines.
    struct Choice {
        QString words;
        std::vector<record::StoredObservation> lines;
    };

    MoveDialog(const Session& session, date::year_month from, std::vector<Choice> choices,
               QWidget* parent = nullptr);

    /// What was agreed to; meaningful once accepted.
    [[nodiscard]] const MovePlan& plan() const { return plan_; }

private:
    void preview();

    const Session& session_;
    std::vector<Choice> choices_;
    MovePlan plan_;
    QComboBox* which_ = nullptr;
    MonthEdit* month_ = nullptr;
    QLabel* summary_ = nullptr;
    QListWidget* staying_ = nullptr;
    QPushButton* move_ = nullptr;
};

} // namespace wickbook::ui
