// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/observe/entry_draft.h"
#include "ui/observe/entry_text.h"
#include "ui/observe/thermometer_scale.h"
#include "ui/session/session.h"

#include <QTimer>
#include <QWidget>

#include <memory>
#include <optional>

class QLabel;
class QPushButton;
class QVBoxLayout;

/// The page the observer meets twice a day: the hour on offer, the two thermometers, the fields, the answer,
/// and what the margin says of it. From the start to a saved reading: two numbers and Enter.
/// Nothing typed is lost: the entry is kept as a draft until it is in the book. Notes speak when a field is
/// left; a doubtful value is shown once before it is saved, and then saved as read.
/// Owns its widgets and the draft; the session outlives it.

namespace wickbook::ui {

class AnswerPanel;
class DepressionBracket;
class EntryForm;
class FortnightChart;
class HourChooser;
class NotesPanel;
class ThermometerDrawing;
class WhirlTimer;
class WorkingDialog;

class ObservePage : public QWidget {
    Q_OBJECT

public:
    /// draftFolder: where unfinished entries are kept; empty: nowhere.
    ObservePage(Session& session, const QString& draftFolder, QWidget* parent = nullptr);
    ~ObservePage() override;

    [[nodiscard]] EntryText entry() const;
    /// Writes a waiting draft at once: the window is closing.
    void keepDraft();
    /// Puts the keyboard into the first empty bulb.
    void focusEntry();

public slots:
    /// Offers this hour for writing down.
    void openHour(const wickbook::record::ObservingHour& hour);
    /// The hour the station waits for, as at the start.
    void offerHour();
    void save();
    /// Looks at the clock: another hour may be on offer by now. Runs by itself; an entry that was begun
    /// stays.
    void followClock();

signals:
    /// The hour is kept already and is to be looked at in the register.
    void openInRegister(const wickbook::record::ObservingHour& hour);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    QWidget* buildLeft();
    QWidget* buildRight();
    void connectParts();
    void showEntry(const EntryText& entry);
    void showStation();
    void showDraft(const EntryText& unfinished);
    void startEntry(const record::ExpectedHour& hour);
    [[nodiscard]] QString likelyObserver(QDate date) const;
    void proposeObserver(EntryText& entry);
    void edited();
    void showLive();
    void showColumns();
    [[nodiscard]] ThermometerScale usualScale() const;
    void speak(bool always);
    void askWhereNeeded(const record::Observation& observation, const record::DerivedReading& reading);
    [[nodiscard]] QString bothWickAnswers(record::Observation observation) const;
    void takeCause(const checks::LikelyCause& cause, const QString& reason, bool paperSaysSo);
    void moveBulb(bool dry, double value);
    void showChart();
    void showWorking();
    void showKeptAlready();
    void showBeat();

    // Saving, in the order of the questions (observe_saving.cpp).
    void refuse(const EntryProblem& problem);
    [[nodiscard]] bool pauseFor(const checks::CheckedReading& judged);
    [[nodiscard]] bool asksFirst(const record::Observation& values);
    void store(const record::Observation& observation, const checks::CheckedReading& judged);
    [[nodiscard]] bool write(record::Observation observation);
    void say(const QString& sentence, bool wrong = false);
    void storageFailed(const store::StoreError& error);

    Session& session_;
    EntryText entry_;
    std::unique_ptr<EntryDraft> draft_;
    /// The entry whose notes have been seen: asked to save again, it is saved as read.
    std::optional<EntryText> seen_;
    QString proposed_; ///< initials on offer; others in the field were typed
    bool showing_ = false;
    bool saving_ = false;
    bool frostLikely_ = false;    ///< the last readings stood near 0 °C or below
    std::optional<int> wickDays_; ///< since the last new wick, where one is written down
    bool freshHour_ = true;       ///< nothing chosen by hand: follows the clock
    QTimer minute_;

    HourChooser* chooser_ = nullptr;
    ThermometerDrawing* dryDrawing_ = nullptr;
    ThermometerDrawing* wetDrawing_ = nullptr;
    DepressionBracket* bracket_ = nullptr;
    EntryForm* form_ = nullptr;
    QPushButton* save_ = nullptr;
    std::optional<int> savedIndex_; ///< where the undo stack stood after the last saving
    QPushButton* undo_ = nullptr;
    QPushButton* openKept_ = nullptr;
    QLabel* message_ = nullptr;
    AnswerPanel* answer_ = nullptr;
    NotesPanel* notes_ = nullptr;
    WhirlTimer* beat_ = nullptr;
    FortnightChart* chart_ = nullptr;
    WorkingDialog* working_ = nullptr;
};

} // namespace wickbook::ui
