// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/observer_habits.h"
#include "ui/session/background_work.h"
#include "ui/session/session.h"

#include <QLocale>
#include <QWidget>

class QLabel;
class QPushButton;
class QTableWidget;

/// Who has read: each set of initials in the book beside the others, so that after a deputy or a new observer
/// one sees what changed with the hand. Counted when it is unfolded, beside the window, from a book opened to
/// read; counted again when the book changes meanwhile. The session outlives the section.

namespace wickbook::ui {

class ObserversSection : public QWidget {
    Q_OBJECT

public:
    explicit ObserversSection(Session& session, QLocale locale = QLocale(), QWidget* parent = nullptr);

    enum Column {
        Initials,
        First,
        Last,
        Readings,
        Deputy,
        Doubtful,
        Erroneous,
        Estimated,
        MinutesOff,
        RoundDry,
        RoundWet,
        Favours,
        ColumnCount
    };

private:
    struct Answer {
        std::vector<checks::ObserverHabits> habits;
        QString trouble;
        bool stopped = false;
    };

    void build();
    void unfold(bool open);
    void count();
    void show(const Answer& answer);
    [[nodiscard]] QStringList cellsOf(const checks::ObserverHabits& habits) const;
    [[nodiscard]] QString dateWords(record::Instant instant) const;

    Session& session_;
    QLocale locale_;
    bool again_ = false; ///< the book has changed while it was counted
    QPushButton* fold_ = nullptr;
    QWidget* content_ = nullptr;
    QLabel* status_ = nullptr;
    QTableWidget* table_ = nullptr;
    QLabel* note_ = nullptr;
    BackgroundWork work_; ///< last: it waits for its thread before the rest goes
};

} // namespace wickbook::ui
