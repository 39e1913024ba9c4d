// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/review/lines_model.h"
#include "ui/style/marginal_note.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;
class QVBoxLayout;

namespace wickbook::ui {

/// One run: its readings among their neighbours, what the checks say of the one under the caret, and what can
/// be done. Judges nothing itself: it says what was asked for.
class RunPanel : public QWidget {
    Q_OBJECT

public:
    RunPanel(QLocale locale, QWidget* parent = nullptr);

    void show(const Run* run, units::TemperatureUnit unit);
    [[nodiscard]] QTableView& table() const { return *table_; }
    /// All that are open, or only those chosen in the table once the caret has gone there.
    [[nodiscard]] std::vector<record::StoredObservation> readings() const;
    /// The reading under the caret; before the caret was moved, the first that is open.
    [[nodiscard]] const RunLine* current() const;
    [[nodiscard]] QString why() const;
    void clearWhy();
    void focusWhy();
    /// The keys are for the whole run: what was chosen is let go of.
    void chooseAll();
    /// The keys are for what is chosen in the table, to begin with the reading under the caret.
    void chooseCurrent();
    /// Goes back from the question what the paper says to the notes; false: nothing was being asked.
    bool stopAsking();
    /// As if the cause at this place (from 0) were chosen; false: there is none.
    bool takeCause(int index);
    [[nodiscard]] std::vector<MarginalNote*> notes() const { return notes_; }

signals:
    void judgeAsked(wickbook::record::Quality quality);
    /// A cause of the current reading, and whether the paper says so (a slip of the keys) or not (a slip at
    /// the thermometer).
    void causeTaken(const wickbook::checks::LikelyCause& cause, const QString& reason, bool paperSaysSo);

private:
    void build();
    QWidget* buildActions();
    void explain();
    void updateScope();
    void ask(const checks::LikelyCause& cause, const QString& reason);
    void clearNotes();
    MarginalNote* addNote(const NoteText& text, const QString& last);

    QLocale locale_;
    units::TemperatureUnit unit_ = units::TemperatureUnit::Celsius;
    LinesModel* lines_ = nullptr;
    QLabel* heading_ = nullptr;
    QTableView* table_ = nullptr;
    QVBoxLayout* notesColumn_ = nullptr;
    std::vector<MarginalNote*> notes_;
    QLabel* scope_ = nullptr;
    QLineEdit* why_ = nullptr;
    bool whole_ = true; ///< the keys are for the whole run
    bool asking_ = false;
    bool several_ = false; ///< the run has more readings than one
};

} // namespace wickbook::ui
