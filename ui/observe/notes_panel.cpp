// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/notes_panel.h"

#include "ui/style/marginal_note.h"
#include "ui/style/tokens.h"
#include "ui/text/finding_words.h"

#include <QLocale>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

namespace {

/// Words as the person would see them: notes that would read alike are the same.
std::vector<QString> wordsOf(const std::vector<checks::SpokenNote>& notes, units::TemperatureUnit unit) {
    std::vector<QString> words;
    for (const checks::SpokenNote& note : notes) {
        const NoteText text = noteText(QLocale(), note, unit);
        words.push_back(text.title + text.message);
        for (const NoteText::Cause& cause : text.causes) {
            words.push_back(cause.words + cause.humidity);
        }
    }
    return words;
}

/// Several notes may reach below the window's edge.
void bringIntoView(QWidget& from, QWidget& note) {
    for (QWidget* parent = from.parentWidget(); parent != nullptr; parent = parent->parentWidget()) {
        if (auto* scroll = qobject_cast<QScrollArea*>(parent)) {
            scroll->widget()->layout()->activate();
            scroll->ensureWidgetVisible(&note);
            return;
        }
    }
}

} // namespace

NotesPanel::NotesPanel(QWidget* parent) : QWidget(parent) {
    column_ = new QVBoxLayout(this);
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(space::kGroup);
}

void NotesPanel::showNotes(const std::vector<checks::SpokenNote>& notes, units::TemperatureUnit unit) {
    const bool asking = notes_.empty() && !shown_.empty();
    if (!asking && wordsOf(notes, unit) == wordsOf(shown_, unit_)) {
        return;
    }
    shown_ = notes;
    unit_ = unit;
    rebuild();
}

void NotesPanel::clear() {
    shown_.clear();
    rebuild();
}

void NotesPanel::rebuild() {
    // Deleted later: a note may be in the middle of telling which cause was taken.
    while (QLayoutItem* item = column_->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
    notes_.clear();
    for (const checks::SpokenNote& spoken : shown_) {
        // Water or ice has to be said; keeping the reading without it is no answer.
        const bool grave =
            spoken.lead.severity >= checks::Severity::Soft && spoken.lead.code != "wick-state-unknown";
        auto* note = new MarginalNote(noteText(QLocale(), spoken, unit_),
                                      grave ? tr("read right: keep it as read") : QString{});
        connect(note, &MarginalNote::readRightChosen, this, &NotesPanel::readRightChosen);
        connect(note, &MarginalNote::causeTaken, this, [this, note, lead = spoken.lead](int index) {
            const auto place = static_cast<std::size_t>(index);
            ask(lead.causes[place], note->text().causes[place].words);
        });
        notes_.push_back(note);
        column_->addWidget(note);
        note->show(); // at once, so that it can take the keyboard at once
    }
}

void NotesPanel::focusFirst() {
    const auto answerable = std::find_if(notes_.begin(), notes_.end(), [](const MarginalNote* note) {
        return note->focusPolicy() != Qt::NoFocus;
    });
    if (answerable != notes_.end()) {
        (*answerable)->setFocus(Qt::OtherFocusReason);
        bringIntoView(*this, **answerable);
    }
}

bool NotesPanel::takeCause(int index) {
    const auto withCauses = std::find_if(notes_.begin(), notes_.end(), [index](const MarginalNote* note) {
        return index < std::ssize(note->text().causes);
    });
    if (withCauses == notes_.end()) {
        return false;
    }
    emit(*withCauses)->causeTaken(index);
    return true;
}

void NotesPanel::ask(const checks::LikelyCause& cause, const QString& reason) {
    const auto before = shown_;
    shown_.clear();
    rebuild();
    shown_ = before; // remembered, so that the notes can come back
    NoteText question;
    question.title = tr("What does the paper say?");
    question.message = reason;
    question.causes = {{tr("the paper says so: it was a slip of the keys"), {}},
                       {tr("the paper says what was typed: it was a slip at the thermometer"), {}}};
    auto* note = new MarginalNote(question, tr("neither: back to the notes"));
    column_->addWidget(note);
    note->show();
    connect(note, &MarginalNote::causeTaken, this, [this, cause, reason](int index) {
        clear();
        emit causeTaken(cause, reason, index == 0);
    });
    connect(note, &MarginalNote::readRightChosen, this, [this] {
        rebuild();
        focusFirst();
    });
    note->setFocus(Qt::OtherFocusReason);
}

} // namespace wickbook::ui
