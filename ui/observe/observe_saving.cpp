// SPDX-License-Identifier: GPL-3.0-or-later
// From the fields to the book: what is refused, what is asked once, what is stored.
#include "ui/commands/revise_observation.h"
#include "ui/observe/answer_panel.h"
#include "ui/observe/entry_form.h"
#include "ui/observe/hour_chooser.h"
#include "ui/observe/notes_panel.h"
#include "ui/observe/observe_page.h"
#include "ui/observe/repeats_panel.h"
#include "ui/style/look.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QAccessible>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace wickbook::ui {

namespace {

QString savedWords(const record::Observation& values, const record::DerivedReading& reading) {
    const QLocale locale;
    const QString hour =
        values.hour ? hourWords(values.hour->hour) : clockWords(values.instant, values.offset);
    QString answer;
    if (const auto humidity = reading.humidityPercent()) {
        answer = QStringLiteral(", ") + percentWords(locale, humidity);
    }
    return ObservePage::tr("Saved %1: %2 / %3%4.")
        .arg(hour, bulbWords(locale, values.dry), bulbWords(locale, values.wet), answer);
}

bool speaksUp(const checks::CheckedReading& judged) {
    return std::any_of(judged.findings.begin(), judged.findings.end(), [](const checks::Finding& finding) {
        // A column gone into the bulb has been typed as such: there is nothing to do about it.
        const bool belowScale = finding.code == "off-scale" && finding.severity == checks::Severity::Soft;
        return finding.severity >= checks::Severity::Soft && !belowScale;
    });
}

} // namespace

void ObservePage::save() {
    if (!session_.readOnlySentence().isEmpty()) {
        say(session_.readOnlySentence(), true);
        return;
    }
    edited();
    const auto time = entryTime(entry_, session_.station(), session_.now());
    const auto observation = readEntry(entry_, session_.station(), session_.now());
    if (!observation) {
        refuse(observation.error());
        return;
    }
    if (!observation->dry.given() && !observation->wet.given()) {
        say(tr("Type the dry bulb and the wet bulb first."), true);
        form_->focusFirst();
        return;
    }
    const auto judged = session_.judgeEntry(*observation, std::nullopt, time->live);
    if (!judged) {
        say(storeErrorWords(judged.error()), true);
        return;
    }
    // Only in a live reading, where the thermometer can be looked at again, is a number off its scale
    // refused.
    if (time->live) {
        const auto offScale = [&](const record::UsedBulb& bulb, const record::BulbReading& read) {
            return bulb.offScale && read.value;
        };
        const bool dryOff = offScale(judged->reading.dry, observation->dry);
        if (dryOff || offScale(judged->reading.wet, observation->wet)) {
            const EntryField field = dryOff ? EntryField::Dry : EntryField::Wet;
            const record::Thermometer* thermometer =
                dryOff ? session_.station().dryThermometerAt(observation->instant)
                       : session_.station().wetThermometerAt(observation->instant);
            refuse({field,
                    tr("%1 is off the thermometer's scale, which runs from %2 to %3 %4. Read it again.")
                        .arg(form_->field(field)->text().trimmed(),
                             readWords(QLocale(), thermometer->lowestMark),
                             readWords(QLocale(), thermometer->highestMark), unitWords(thermometer->unit))});
            return;
        }
    }
    const bool wickNeeded =
        observation->wet.value && judged->reading.wet.temperature &&
        psychrometry::wickStateNeeded(*judged->reading.wet.temperature, judged->reading.wet.step,
                                      judged->reading.wet.correction);
    if (wickNeeded && observation->wick == record::WickState::NotGiven && time->live) {
        say(tr("Say first whether the wick is wet or frozen: W for water, I for ice."));
        form_->focusField(EntryField::Wick);
        return;
    }
    if (pauseFor(*judged)) {
        return;
    }
    store(*observation, *judged);
}

void ObservePage::refuse(const EntryProblem& problem) {
    say(problem.sentence, true);
    chooser_->showProblem(problem.field, problem.sentence);
    form_->focusField(problem.field);
    form_->showProblem(problem.field, problem.sentence);
}

/// Before anything is judged: a bulb not written down, whirls that do not settle.
bool ObservePage::asksFirst(const record::Observation& values) {
    if (!values.dry.given()) {
        say(tr("The dry bulb is empty. Enter again keeps the wet bulb alone, as incomplete."));
        return true;
    }
    if (!values.wet.given()) {
        say(tr("The wet bulb is empty. Enter again keeps the dry bulb alone, as incomplete."));
        return true;
    }
    const QString open = form_->repeats()->openQuestion();
    if (!open.isEmpty()) {
        say(open + QLatin1Char(' ') + tr("Enter again keeps what stands in the two bulbs."));
    }
    return !open.isEmpty();
}

bool ObservePage::pauseFor(const checks::CheckedReading& judged) {
    if (seen_ == entry_) {
        return false; // asked once, answered by asking to save again
    }
    const record::Observation& values = judged.reading.values();
    const auto notes = checks::spokenNotes(judged.findings);
    if (asksFirst(values)) {
        seen_ = entry_;
        notes_->showNotes(notes, session_.unit());
        return true;
    }
    if (!speaksUp(judged)) {
        return false;
    }
    const bool shownBefore = !notes_->isClear();
    seen_ = entry_;
    notes_->showNotes(notes, session_.unit());
    if (shownBefore) {
        return false; // the notes were there to be read before Enter was pressed
    }
    notes_->focusFirst();
    say(tr("The margin has a note on this reading. Enter keeps it as read, Esc goes back to the field."));
    return true;
}

void ObservePage::store(const record::Observation& observation, const checks::CheckedReading& judged) {
    saving_ = true;
    const bool stored = write(observation);
    saving_ = false;
    if (!stored) {
        return; // storageFailed has told why; the entry stays
    }
    session_.setObserver(entry_.observer.trimmed());
    save_->setText(tr("&Save  ⏎"));
    draft_->drop();
    const QString saved = savedWords(observation, judged.reading);
    offerHour();
    say(saved + QLatin1Char(' ') + tr("Ctrl+Z takes it back."));
    undo_->show();
    savedIndex_ = session_.undoStack().index();
    focusEntry();
}

bool ObservePage::write(record::Observation observation) {
    const record::Author author{observation.observer, {}};
    const QString what = tr("%1 of %2")
                             .arg(observation.hour ? hourWords(observation.hour->hour) : tr("extra reading"),
                                  shortDateWords(QLocale(), record::filedDate(observation)));
    if (!entry_.taken) {
        return ReviseObservation::perform(session_, std::nullopt, observation, author, what).has_value();
    }
    const TakenCause taken = *entry_.taken;
    const QString typed = tr("typed first: %1 / %2").arg(taken.dryBefore, taken.wetBefore);
    if (taken.paperSaysSo) { // the paper is the original: what the keys made of it goes into the note
        const QString note = QString::fromStdString(observation.note);
        observation.note = (note.isEmpty() ? typed : note + QStringLiteral("; ") + typed).toStdString();
        return ReviseObservation::perform(session_, std::nullopt, observation, author, what).has_value();
    }
    // A slip at the thermometer: as read first, then corrected with the reason, taken back as one.
    EntryText asRead = entry_;
    asRead.dry = taken.dryBefore;
    asRead.wet = taken.wetBefore;
    asRead.wick = taken.wickBefore;
    const auto first = readEntry(asRead, session_.station(), session_.now());
    if (!first) {
        refuse(first.error());
        return false;
    }
    record::Observation read = *first;
    read.instant = observation.instant;
    read.offset = observation.offset;
    session_.undoStack().beginMacro(what);
    bool asReadStored = false;
    if (const auto receipt = ReviseObservation::perform(session_, std::nullopt, read, author, what)) {
        asReadStored = true;
        const auto stored = session_.book().observation((*receipt)->subject);
        if (stored && *stored) {
            observation.origin = record::Origin::Corrected;
            // Should this second write fail, the reading is in the book as read, marked, and can be corrected
            // in the register.
            (void)ReviseObservation::perform(session_, **stored, observation,
                                             {author.who, taken.reason.toStdString()}, what);
        }
    }
    session_.undoStack().endMacro();
    return asReadStored;
}

void ObservePage::showKeptAlready() {
    openKept_->hide();
    if (entry_.hourMinutes < 0 || !entry_.date.isValid()) {
        return;
    }
    const auto kept =
        session_.book().atHour({fromQDate(entry_.date), std::chrono::minutes{entry_.hourMinutes}});
    if (kept && *kept) {
        const record::Observation& values = (*kept)->values;
        say(tr("This hour is written down already: %1 / %2. Changes are made in the register.")
                .arg(bulbWords(QLocale(), values.dry), bulbWords(QLocale(), values.wet)));
        openKept_->show();
    }
}

void ObservePage::say(const QString& sentence, bool wrong) {
    message_->setText(sentence);
    if (message_->property("wrong").toBool() != wrong) {
        message_->setProperty("wrong", wrong);
        refreshLook(*message_);
    }
    message_->setVisible(!sentence.isEmpty());
    if (!sentence.isEmpty()) { // spoken at once by a screen reader
        QAccessibleEvent spoken(message_, QAccessible::Alert);
        QAccessible::updateAccessibility(&spoken);
    }
    undo_->hide();
}

void ObservePage::storageFailed(const store::StoreError& error) {
    if (!saving_) {
        return; // somebody else's write
    }
    say(storeErrorWords(error) + QLatin1Char(' ') + tr("The entry is still here; press Enter to try again."),
        true);
    save_->setText(tr("&Try again  ⏎"));
    seen_ = entry_; // trying again asks nothing twice
}

} // namespace wickbook::ui
