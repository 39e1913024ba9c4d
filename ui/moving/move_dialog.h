// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/commands/move_observations.h"

#include <QDialog>

class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

/// "These belong elsewhere": which lines, where to, why, and what would happen, line by line, before it does.
/// Writes nothing itself. The session outlives it.

namespace wickbook::ui {

class MonthEdit;

class MoveDialog : public QDialog {
    Q_OBJECT

public:
    /// Lines that could be meant, in time order: what they are called, and the lines.
    struct Choice {
        QString words;
        std::vector<record::StoredObservation> lines;
    };
    /// What is asked for first; the others are a key away.
    enum Where { OtherMonth, OtherDate, OtherHour };

    MoveDialog(const Session& session, Where where, date::year_month from, std::vector<Choice> choices,
               QWidget* parent = nullptr);

    /// What was agreed to; meaningful once accepted.
    [[nodiscard]] const desk::MovePlan& plan() const { return plan_; }
    [[nodiscard]] QString why() const;

private:
    void buildFields(date::year_month from);
    void chosenLinesChanged();
    void whereChanged();
    void preview();
    [[nodiscard]] const std::vector<record::StoredObservation>& lines() const;
    [[nodiscard]] desk::Destination destination() const;
    [[nodiscard]] QString summaryWords() const;

    const Session& session_;
    std::vector<Choice> choices_;
    desk::MovePlan plan_;
    QComboBox* which_ = nullptr;
    QComboBox* where_ = nullptr;
    QLabel* monthLabel_ = nullptr;
    MonthEdit* month_ = nullptr;
    QLabel* dateLabel_ = nullptr;
    QDateEdit* date_ = nullptr;
    QComboBox* hour_ = nullptr;
    QLineEdit* why_ = nullptr;
    QLabel* summary_ = nullptr;
    QListWidget* staying_ = nullptr;
    QPushButton* move_ = nullptr;
};

/// "one line to 3 May 2025, 9 h", "14 lines to 1 Apr 2025, 9 h … 7 Apr 2025, 21 h": for undo and messages.
QString movedWords(const QLocale& locale, const desk::MovePlan& plan);
/// Where the first line that moves will stand. Pre: something moves.
record::ObservingHour firstPlace(const desk::MovePlan& plan);

} // namespace wickbook::ui
