// SPDX-License-Identifier: GPL-3.0-or-later
// What the register page does with one line or with several that are marked: judging, withdrawing, reading
// back against the paper, naming its page, moving. Whatever their number, one act is one step of undo.
#include "ui/commands/judge_readings.h"
#include "ui/commands/move_observations.h"
#include "ui/commands/read_back.h"
#include "ui/moving/move_dialog.h"
#include "ui/register/paper_dialog.h"
#include "ui/register/paper_words.h"
#include "ui/register/register_filter.h"
#include "ui/register/register_model.h"
#include "ui/register/register_page.h"
#include "ui/register/register_view.h"
#include "ui/text/error_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <algorithm>

namespace wickbook::ui {

namespace {

bool holdsReading(const record::StoredObservation& line) {
    return line.values.origin != record::Origin::Missing;
}

/// "5 May 2025, 9 h", or how many lines.
QString linesWords(const QLocale& locale, const std::vector<record::StoredObservation>& lines) {
    if (lines.size() != 1) {
        return RegisterPage::tr("%n lines", nullptr, static_cast<int>(lines.size()));
    }
    const record::Observation& values = lines.front().values;
    return values.hour ? hourAndDateWords(locale, *values.hour)
                       : QStringLiteral("%1, %2").arg(shortDateWords(locale, record::filedDate(values)),
                                                      clockWords(values.instant, values.offset));
}

} // namespace

std::vector<record::StoredObservation> RegisterPage::markedLines() const {
    std::vector<record::StoredObservation> lines;
    for (const QModelIndex& index : view_->selectionModel()->selectedRows()) {
        const report::MonthLine* line = model_->line(filter_->mapToSource(index).row());
        if (line != nullptr && line->reading != nullptr) {
            lines.push_back(line->reading->reading.stored);
        }
    }
    const report::MonthLine* current = currentLine();
    if (view_->selectionModel()->selectedRows().size() < 2) {
        lines.clear(); // the caret's line, marked or not
        if (current != nullptr && current->reading != nullptr) {
            lines.push_back(current->reading->reading.stored);
        }
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto& a, const auto& b) { return a.values.instant < b.values.instant; });
    return lines;
}

std::set<record::Uuid> RegisterPage::markedIds() const {
    std::set<record::Uuid> ids;
    if (view_->selectionModel()->selectedRows().size() > 1) {
        for (const record::StoredObservation& line : markedLines()) {
            ids.insert(line.id());
        }
    }
    return ids;
}

void RegisterPage::markAgain(const std::set<record::Uuid>& marked) {
    for (int row = 0; !marked.empty() && row < filter_->rowCount(); ++row) {
        const QModelIndex index = filter_->index(row, 0);
        const report::MonthLine* line = model_->line(filter_->mapToSource(index).row());
        if (line->reading != nullptr && marked.contains(line->reading->reading.stored.id())) {
            view_->selectionModel()->select(index, QItemSelectionModel::Select | QItemSelectionModel::Rows);
        }
    }
}

record::Author RegisterPage::author(const QString& why) const {
    return {session_.observer().toStdString(), why.toStdString()};
}

bool RegisterPage::tell(const store::Result<std::size_t>& done, const QString& text) {
    if (!done) {
        say(storeErrorWords(done.error()));
        return false;
    }
    say(*done == 0 ? tr("Nothing was changed.") : text);
    return true;
}

void RegisterPage::judge(record::Quality quality) {
    std::vector<record::StoredObservation> lines = markedLines();
    std::erase_if(lines, [](const auto& line) { return !holdsReading(line); });
    if (lines.empty()) {
        say(tr("There is no reading here to judge. Go to an hour that has one."));
        return;
    }
    if (const QString refused = session_.readOnlySentence(); !refused.isEmpty()) {
        say(refused);
        return;
    }
    const QString text = tr("judged %1: %2").arg(qualityWords(quality), linesWords(locale(), lines));
    tell(JudgeReadings::perform(session_, lines, quality, author(tr("judged %1").arg(qualityWords(quality))),
                                text),
         text);
}

void RegisterPage::withdraw() {
    const std::vector<record::StoredObservation> lines = markedLines();
    if (lines.empty()) {
        return;
    }
    if (const QString refused = session_.readOnlySentence(); !refused.isEmpty()) {
        say(refused);
        return;
    }
    std::vector<Replacement> withdrawn;
    for (const record::StoredObservation& before : lines) {
        withdrawn.push_back({before, before.values});
        withdrawn.back().after.withdrawn = true;
    }
    const QString text = lines.size() == 1
                             ? tr("withdrew %1 (Ctrl+Z brings it back)").arg(linesWords(locale(), lines))
                             : tr("withdrew %1 (Ctrl+Z brings them back)").arg(linesWords(locale(), lines));
    tell(ReplaceObservations::perform(session_, withdrawn, author(tr("withdrawn")), text), text);
}

/// Ticked: this line says what the paper says, and on to the next. A line that is ticked already is passed
/// over, so that the key can be held on to.
void RegisterPage::readBack(bool ticked, bool goOn) {
    const report::MonthLine* current = currentLine();
    if (current == nullptr) {
        return;
    }
    const std::vector<record::StoredObservation> lines = markedLines();
    if (lines.empty()) {
        say(current->toCome ? tr("This hour is still to come.")
                            : tr("Nothing is written down for that hour: there is nothing to read back."));
    } else if (const QString refused = session_.readOnlySentence(); !refused.isEmpty()) {
        say(refused);
        return;
    } else {
        const QString what = linesWords(locale(), lines);
        const QString text = ticked ? tr("read back: %1").arg(what) : tr("not read back: %1").arg(what);
        const QString why =
            ticked ? tr("read back against the paper") : tr("not taken for read back any more");
        const auto done = ReadBackLines::perform(session_, lines, ticked, author(why), text);
        if (!done) {
            tell(done, text);
            return;
        }
        say(*done == 0 ? (ticked ? tr("read back already: %1").arg(what) : tr("Nothing was changed."))
                       : text);
    }
    if (ticked && goOn && lines.size() < 2) {
        goToNextLine();
    }
}

void RegisterPage::goToNextLine() {
    const QModelIndex current = view_->currentIndex();
    const QModelIndex next = current.siblingAtRow(current.row() + 1);
    if (next.isValid()) {
        view_->goTo(next);
    } else if (current.isValid()) {
        say(tr("That was the last line of the month. Page Down turns the page."));
    }
}

void RegisterPage::openPaper() {
    PaperDialog::Choice marked;
    PaperDialog::Choice without;
    PaperDialog::Choice all;
    marked.lines = markedLines();
    std::optional<record::PaperPlace> place;
    for (const checks::CheckedReading& checked : model_->report().readings) {
        const record::StoredObservation& line = checked.reading.stored;
        all.lines.push_back(line);
        if (!line.values.paper) {
            without.lines.push_back(line);
        } else {
            place = line.values.paper; // the newest one named is the likeliest
        }
    }
    if (all.lines.empty()) {
        say(tr("Nothing has been written down in this month that could stand on paper."));
        return;
    }
    if (const QString refused = session_.readOnlySentence(); !refused.isEmpty()) {
        say(refused);
        return;
    }
    if (!marked.lines.empty() && marked.lines.front().values.paper) {
        place = marked.lines.front().values.paper;
    }
    marked.words = marked.lines.size() == 1
                       ? tr("this line: %1").arg(linesWords(locale(), marked.lines))
                       : tr("the lines marked on the page (%1)").arg(marked.lines.size());
    without.words = tr("the lines without a page (%1)").arg(without.lines.size());
    all.words = tr("every line of the month (%1)").arg(all.lines.size());
    std::vector<PaperDialog::Choice> choices;
    if (marked.lines.size() > 1) {
        choices.push_back(marked); // somebody who has marked lines means them
    }
    if (!without.lines.empty() && without.lines.size() < all.lines.size()) {
        choices.push_back(without);
    }
    choices.push_back(all);
    if (marked.lines.size() == 1) {
        choices.push_back(marked);
    }
    auto* dialog = new PaperDialog(std::move(choices), place, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog] {
        const auto to = dialog->place();
        const QString what = linesWords(locale(), dialog->lines());
        const QString text = to ? tr("on paper: %1, %2").arg(paperWords(to), what)
                                : tr("no place on paper any more: %1").arg(what);
        const QString why = to ? tr("named its page on paper") : tr("took its page on paper away");
        tell(PlaceOnPaper::perform(session_, dialog->lines(), to, author(why), text), text);
        view_->setFocus();
    });
    dialog->open();
}

void RegisterPage::openMove() {
    MoveDialog::Choice marked;
    MoveDialog::Choice all;
    marked.lines = markedLines();
    for (const checks::CheckedReading& checked : model_->report().readings) {
        all.lines.push_back(checked.reading.stored);
    }
    if (all.lines.empty()) {
        say(tr("Nothing has been written down in this month that could be moved."));
        return;
    }
    if (const QString refused = session_.readOnlySentence(); !refused.isEmpty()) {
        say(refused);
        return;
    }
    std::vector<MoveDialog::Choice> choices;
    if (!marked.lines.empty()) {
        marked.words = marked.lines.size() == 1
                           ? tr("this line: %1").arg(linesWords(locale(), marked.lines))
                           : tr("the lines marked on the page (%1)").arg(marked.lines.size());
        choices.push_back(marked);
    }
    all.words = tr("every line of the month (%1)").arg(all.lines.size());
    choices.push_back(all);
    auto* dialog = new MoveDialog(session_, MoveDialog::OtherDate, month_, std::move(choices), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog] { moveLines(dialog->plan(), dialog->why()); });
    dialog->open();
}

void RegisterPage::moveLines(const desk::MovePlan& plan, const QString& why) {
    const QString text = tr("moved %1").arg(movedWords(locale(), plan));
    const auto moved = MoveObservations::perform(session_, plan, author(why), text);
    if (tell(moved, text) && *moved > 0) {
        showHour(firstPlace(plan)); // one sees where they stand now
        say(tr("%1. Ctrl+Z takes it back.").arg(text));
    }
}

} // namespace wickbook::ui
