// SPDX-License-Identifier: GPL-3.0-or-later
// What the page says while an entry is made: the question of water or ice, the margin's notes once a field is
// left, a likely cause that was taken.
#include "ui/observe/entry_form.h"
#include "ui/observe/notes_panel.h"
#include "ui/observe/observe_page.h"
#include "ui/observe/repeats_panel.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/number_words.h"

#include <QLabel>
#include <QPushButton>

namespace wickbook::ui {

void ObservePage::askWhereNeeded(const record::Observation& observation,
                                 const record::DerivedReading& reading) {
    const bool needed =
        reading.wet.temperature && observation.wet.value &&
        psychrometry::wickStateNeeded(*reading.wet.temperature, reading.wet.step, reading.wet.correction);
    form_->askWick(needed, needed ? bothWickAnswers(observation) : QString{});
}

QString ObservePage::bothWickAnswers(record::Observation observation) const {
    const auto percentWith = [&](record::WickState wick) {
        observation.wick = wick;
        const auto reading = record::deriveReading(observation, session_.station());
        return percentWords(QLocale(), reading.humidityPercent());
    };
    return tr("Touch the wick with something cold and clean: ice is hard and dull, water gives and shines. A "
              "wick can stay liquid below zero and freeze with the air above it. With water the humidity "
              "would be %1, with ice %2.")
        .arg(percentWith(record::WickState::Water), percentWith(record::WickState::Ice));
}

void ObservePage::speak(bool always) {
    if (showing_ || saving_ || (entry_.dry.trimmed().isEmpty() && entry_.wet.trimmed().isEmpty())) {
        return;
    }
    for (const EntryField field : {EntryField::Dry, EntryField::Wet, EntryField::Pressure, EntryField::Wind,
                                   EntryField::Maximum, EntryField::Minimum}) {
        TypedNumberEdit* edit = form_->field(field);
        if (always || !edit->hasFocus()) {
            edit->showProblem(edit->problem());
            if (!edit->problem().isEmpty()) {
                say(edit->problem(), true);
            }
        }
    }
    if (const QString problem = form_->repeats()->showProblems(); !problem.isEmpty()) {
        say(problem, true);
    }
    const auto observation = readEntry(entry_, session_.station(), session_.now());
    if (!observation || (!always && !observation->hasPair())) {
        return;
    }
    const auto time = entryTime(entry_, session_.station(), session_.now());
    const auto judged = session_.judgeEntry(*observation, std::nullopt, time && time->live);
    if (judged) {
        notes_->showNotes(checks::spokenNotes(judged->findings), session_.unit());
    }
}

void ObservePage::takeCause(const checks::LikelyCause& cause, const QString& reason, bool paperSaysSo) {
    EntryText next = entry_;
    if (!next.taken) { // what was typed first is kept, also when a second cause is taken
        next.taken = TakenCause{paperSaysSo, reason, entry_.dry, entry_.wet, entry_.wick};
    } else {
        next.taken->paperSaysSo = paperSaysSo && next.taken->paperSaysSo;
        next.taken->reason = reason;
    }
    if (cause.dryRead) {
        next.dry = readWords(QLocale(), cause.dryRead->value);
    }
    if (cause.wetRead) {
        next.wet = readWords(QLocale(), cause.wetRead->value);
    }
    if (cause.wick != record::WickState::NotGiven) {
        next.wick = QString::fromUtf8(record::wickName(cause.wick).data());
    }
    showEntry(next);
    draft_->keep(entry_);
    speak(true);
    say(tr("Taken: %1. What was typed first is kept with it.").arg(reason));
    save_->setFocus(Qt::OtherFocusReason);
}

} // namespace wickbook::ui
