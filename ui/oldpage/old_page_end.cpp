// SPDX-License-Identifier: GPL-3.0-or-later
// The page's end: what still wants an answer, the second pass, and the month the lines belong to.
#include "ui/commands/move_observations.h"
#include "ui/moving/move_dialog.h"
#include "ui/oldpage/old_page.h"
#include "ui/oldpage/page_view.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QLineEdit>
#include <QPushButton>

#include <algorithm>
#include <set>

namespace wickbook::ui {

namespace {

bool asks(const checks::CheckedReading& checked) {
    return checked.reading.values().quality == record::Quality::NotJudged &&
           std::any_of(checked.findings.begin(), checked.findings.end(), [](const checks::Finding& finding) {
               return finding.severity >= checks::Severity::Soft;
           });
}

} // namespace

void OldPage::addFindings(std::vector<EndQuery>& queries, int number) const {
    const PageLine& line = model_->line(number);
    if (!line.judged || !line.stored || !asks(*line.judged)) {
        return;
    }
    for (const checks::SpokenNote& note : checks::spokenNotes(line.judged->findings)) {
        if (note.lead.severity < checks::Severity::Soft) {
            continue;
        }
        EndQuery query;
        query.line = number;
        query.note = noteText(QLocale(), note, session_.unit());
        query.causes = note.lead.causes;
        queries.push_back(std::move(query));
    }
}

void OldPage::addDifferences(std::vector<EndQuery>& queries, int number) const {
    const PageLine& line = model_->line(number);
    if (line.readAgain != ReadAgain::Differs) {
        return;
    }
    const auto shown = [](const LineText& text, PageField field) {
        return !text.missing.isEmpty()           ? missingWords(text.missing)
               : text.cell(field).text.isEmpty() ? tr("nothing")
                                                 : text.cell(field).text;
    };
    for (const PageField field : differences(line.text, line.again)) {
        EndQuery query;
        query.kind = EndQuery::Kind::Differs;
        query.line = number;
        query.field = field;
        query.note.title =
            tr("%1: %2 or %3").arg(pageFieldWords(field), shown(line.text, field), shown(line.again, field));
        query.note.message = tr("The two passes differ. What does the paper say?");
        query.note.causes = {{tr("%1, as in the book").arg(shown(line.text, field)), {}},
                             {tr("%1, as typed the second time").arg(shown(line.again, field)), {}}};
        queries.push_back(std::move(query));
    }
}

std::vector<EndQuery> OldPage::endQueries() const {
    std::vector<EndQuery> queries;
    for (int number = 0; number < model_->lineCount(); ++number) {
        const PageLine& line = model_->line(number);
        for (int i = 0; i < kPageFieldCount; ++i) {
            const auto field = static_cast<PageField>(i);
            if (!line.text.cell(field).problem.isEmpty()) {
                EndQuery query;
                query.kind = EndQuery::Kind::Unreadable;
                query.line = number;
                query.field = field;
                query.note.wrong = true;
                query.note.title = tr("“%1” is not in the book").arg(line.text.cell(field).text);
                query.note.message = line.text.cell(field).problem;
                queries.push_back(std::move(query));
            }
        }
        addDifferences(queries, number);
        addFindings(queries, number);
        for (EndQuery& query : queries) {
            if (query.line == number) {
                query.head = QStringLiteral("%1, %2").arg(shortDateWords(QLocale(), line.expected.hour.date),
                                                          hourWords(line.expected.hour.hour));
            }
        }
    }
    return queries;
}

QString OldPage::endSummary() const {
    int kept = 0;
    int open = 0;
    int readBack = 0;
    int failed = 0;
    for (int number = 0; number < model_->lineCount(); ++number) {
        const PageLine& line = model_->line(number);
        kept += line.stored ? 1 : 0;
        readBack += line.stored && line.stored->values.readBack ? 1 : 0;
        open += !line.stored && line.text.isEmpty() && !line.toCome ? 1 : 0;
        failed += line.failed ? 1 : 0;
    }
    QStringList words{tr("%1 of %2 lines are in the book.").arg(kept).arg(model_->lineCount())};
    if (open > 0) {
        words << (open == 1 ? tr("One line is empty: m and a letter says why.")
                            : tr("%n lines are empty: m and a letter says why.", nullptr, open));
    }
    if (readBack > 0) {
        words << tr("%n are read back.", nullptr, readBack);
    }
    if (failed > 0) {
        words << tr("%n could not be stored yet.", nullptr, failed);
    }
    return words.join(QLatin1Char(' '));
}

void OldPage::showEnd() {
    if (!view_->takeOpenCell()) {
        return;
    }
    if (const int line = model_->lineAt(view_->currentIndex()); line >= 0) {
        leaveLine(line);
    }
    if (askedFor_) {
        return; // the question comes first
    }
    // Every line anew, with all its neighbours: a later line may speak for or against an earlier one.
    if (auto fresh = readLines()) {
        for (PageLine& line : *fresh) {
            for (int number = 0; number < model_->lineCount(); ++number) {
                if (model_->line(number).expected.hour == line.expected.hour) {
                    model_->line(number).judged = line.judged;
                }
            }
        }
    } else {
        say(storeErrorWords(fresh.error()), true);
    }
    end_->show(endQueries(), endSummary());
    if (end_->queries().empty()) {
        view_->setFocus();
    } else {
        end_->focusFirst();
    }
    fitColumns();
}

void OldPage::refreshEnd() {
    if (end_->isVisible()) {
        end_->show(endQueries(), endSummary());
    }
}

void OldPage::closeEnd() {
    end_->hide();
}

void OldPage::takeCauseHere(int index) {
    const int number = model_->lineAt(view_->currentIndex());
    if (number < 0 || !view_->takeOpenCell()) {
        return;
    }
    leaveLine(number);
    end_->show(endQueries(), endSummary());
    if (end_->focusLine(number)) {
        end_->answer(index);
    } else {
        closeEnd();
        say(tr("The checks have nothing to say to this line."));
        view_->setFocus();
    }
}

void OldPage::takeCause(int number, const checks::LikelyCause& cause, const QString& reason,
                        bool paperSaysSo) {
    PageLine& line = model_->line(number);
    if (!line.stored) {
        return;
    }
    record::Observation after = line.stored->values;
    if (cause.dryRead) {
        after.dry = {*cause.dryRead, false};
    }
    if (cause.wetRead) {
        after.wet = {*cause.wetRead, false};
    }
    if (cause.wick != record::WickState::NotGiven) {
        after.wick = cause.wick;
    }
    after.quality = record::Quality::NotJudged;
    after.readBack = false;
    if (!paperSaysSo) {
        after.origin = record::Origin::Corrected; // the paper keeps what was read; this is what it should be
    }
    if (after == line.stored->values) {
        say(tr(
            "This cause says what happened, not what was read. Look at the paper: Enter goes to the line."));
        return;
    }
    const QString why = paperSaysSo ? tr("typed again from the page: %1").arg(reason) : reason;
    if (write(number, after, why)) {
        say(tr("Taken for %1: %2. What stood there first is kept; Ctrl+Z takes it back.")
                .arg(lineName(model_->line(number)), reason));
    }
    refreshEnd();
}

void OldPage::settle(int number, PageField field, bool again) {
    PageLine& line = model_->line(number);
    if (!line.stored) {
        return;
    }
    if (!again) { // the book is right: the second pass says the same from now on
        line.again.cell(field) = line.text.cell(field);
        if (field == PageField::Dry) {
            line.again.missing = line.text.missing;
        }
        leaveAgain(number);
        refreshEnd();
        return;
    }
    const QString was =
        line.text.missing.isEmpty() ? line.text.cell(field).text : missingWords(line.text.missing);
    LineText agreed = line.text;
    agreed.cell(field) = line.again.cell(field);
    if (field == PageField::Dry && agreed.missing != line.again.missing) {
        agreed = line.again; // a reading in place of a gap, or the other way round
    }
    PageLine wanted = line;
    wanted.text = agreed;
    record::Observation after =
        observationOf(wanted, session_.station(), paper(), readBy_->text(), QLocale());
    after.readBack = differences(agreed, line.again).empty() && isTypedAgain(agreed, line.again);
    const QString why = tr("typed twice, and the paper looked at again: %1 was %2")
                            .arg(pageFieldWhat(field), was.isEmpty() ? tr("nothing") : was);
    if (write(number, after, why)) {
        leaveAgain(number);
    }
    refreshEnd();
}

void OldPage::judgeLine(int number, record::Quality quality) {
    const PageLine& line = model_->line(number);
    if (!line.stored) {
        return;
    }
    record::Observation after = line.stored->values;
    after.quality = quality;
    if (write(number, after, tr("judged %1").arg(qualityWords(quality)))) {
        say(tr("%1 is judged %2 (Ctrl+Z undoes it).").arg(lineName(line), qualityWords(quality)));
    }
    refreshEnd();
}

void OldPage::goToLine(int number, PageField field) {
    const QModelIndex wanted = model_->indexOf(number, field);
    view_->putPen(wanted.isValid() ? wanted : model_->indexOf(number, PageField::Dry));
    view_->setFocus();
}

void OldPage::setReadingBack(bool on) {
    if (on == model_->isReadingBack()) {
        return;
    }
    if (!leaveAll()) {
        say(tr("Some lines are not in the book yet. Store them first."), true);
        const QSignalBlocker quiet(readAgain_);
        readAgain_->setChecked(!on);
        return;
    }
    closeEnd();
    model_->setReadingBack(on);
    fitColumns();
    readAgain_->setText(on ? tr("Leave the second &pass") : tr("Type it &again"));
    say(on ? tr("Second pass: type the page again. What you typed first is hidden; lines that come out alike "
                "are "
                "marked as read back.")
           : QString{});
    view_->putPen(model_->firstOpenStop());
    view_->setFocus();
    showWords();
}

void OldPage::openMove() {
    if (!leaveAll()) {
        say(tr("Some lines are not in the book yet. Store them first."), true);
        return;
    }
    MoveDialog::Choice typed;
    MoveDialog::Choice marked;
    MoveDialog::Choice all;
    std::set<int> selected;
    for (const QModelIndex& index : view_->selectionModel()->selectedIndexes()) {
        selected.insert(model_->lineAt(index));
    }
    for (int number = 0; number < model_->lineCount(); ++number) {
        const PageLine& line = model_->line(number);
        if (!line.stored) {
            continue;
        }
        all.lines.push_back(*line.stored);
        if (line.typedHere) {
            typed.lines.push_back(*line.stored);
        }
        if (selected.contains(number)) {
            marked.lines.push_back(*line.stored);
        }
    }
    const auto count = [](const MoveDialog::Choice& choice) { return QString::number(choice.lines.size()); };
    typed.words = tr("the lines typed just now (%1)").arg(count(typed));
    marked.words = tr("the lines marked on the page (%1)").arg(count(marked));
    all.words = tr("every line of the month (%1)").arg(count(all));
    std::vector<MoveDialog::Choice> choices;
    if (selected.size() > 1 && !marked.lines.empty()) {
        choices.push_back(marked); // somebody who has marked lines means them
    }
    if (!typed.lines.empty()) {
        choices.push_back(typed);
    }
    choices.push_back(all);
    auto* dialog = new MoveDialog(session_, MoveDialog::OtherMonth, month_, std::move(choices), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog] { moveLines(dialog->plan(), dialog->why()); });
    dialog->open();
}

void OldPage::moveLines(const desk::MovePlan& plan, const QString& why) {
    const QLocale locale;
    const date::year_month_day first{firstPlace(plan).date};
    const date::year_month to = first.year() / first.month();
    const QString text = tr("move: %1").arg(movedWords(locale, plan));
    saving_ = true;
    const auto moved = MoveObservations::perform(
        session_, plan, {session_.observer().toStdString(), why.toStdString()}, text);
    saving_ = false;
    if (!moved) {
        say(tr("Nothing was moved. %1").arg(storeErrorWords(moved.error())), true);
        bookChanged();
        return;
    }
    const int count = static_cast<int>(*moved);
    showMonth(to);
    say(count == 1 ? tr("One line now stands in %1. Ctrl+Z takes it back.").arg(monthWords(locale, to))
                   : tr("%n lines now stand in %1. Ctrl+Z takes them back.", nullptr, count)
                         .arg(monthWords(locale, to)));
    view_->setFocus();
}

} // namespace wickbook::ui
