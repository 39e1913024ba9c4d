// SPDX-License-Identifier: GPL-3.0-or-later
// From the line to the book, when the pen leaves it.
#include "ui/commands/revise_observation.h"
#include "ui/oldpage/old_page.h"
#include "ui/oldpage/page_view.h"
#include "ui/text/error_words.h"
#include "ui/text/time_words.h"

#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace wickbook::ui {

record::PaperPlace OldPage::paper() const {
    return {paperBook_->text().trimmed().toStdString(), paperPage_->text().trimmed().toStdString()};
}

QString OldPage::lineName(const PageLine& line) const {
    return tr("%1 of %2")
        .arg(hourWords(line.expected.hour.hour), shortDateWords(QLocale(), line.expected.hour.date));
}

bool OldPage::leaveLine(int number) {
    if (model_->isReadingBack()) {
        return leaveAgain(number);
    }
    PageLine& line = model_->line(number);
    const record::Observation after =
        observationOf(line, session_.station(), paper(), readBy_->text(), QLocale());
    if (!changesLine(line, after)) {
        line.failed = false;
        model_->lineChanged(number);
        return !line.text.hasProblem();
    }
    if (const QString readOnly = session_.readOnlySentence(); !readOnly.isEmpty()) {
        say(readOnly, true);
        return false;
    }
    QString why;
    if (line.stored) {
        const bool asks = !line.typedHere && !onlyAdds(line.stored->values, after);
        if (asks && reason_.isEmpty()) {
            askReason(number);
            return false;
        }
        why = asks ? reason_ : tr("typed from the page");
    }
    return write(number, after, why) && !model_->line(number).text.hasProblem();
}

/// keepTyped: what stands in the cells is not what is stored, and is not asked to be.
bool OldPage::write(int number, const record::Observation& after, const QString& why, bool keepTyped) {
    PageLine& line = model_->line(number);
    saving_ = true;
    const auto receipt = ReviseObservation::perform(
        session_, line.stored, after, {session_.observer().toStdString(), why.toStdString()}, lineName(line));
    saving_ = false;
    if (!receipt) {
        line.failed = true;
        if (receipt.error().kind == store::StoreErrorKind::HourTaken ||
            receipt.error().kind == store::StoreErrorKind::ChangedMeanwhile) {
            // Another program was here: what it wrote is shown as the book's, what was typed stays on top.
            if (const auto there = session_.book().atHour(line.expected.hour); there && *there) {
                line.stored = **there;
                line.typedHere = false;
            }
        }
        say(tr("%1 is not in the book yet. %2 What you typed is still on the page.")
                .arg(lineName(line), storeErrorWords(receipt.error())),
            true);
        retry_->show();
        model_->lineChanged(number);
        return false;
    }
    line.failed = false;
    if (*receipt) {
        noteStored(number, (*receipt)->subject);
    }
    if (!keepTyped && line.stored) {
        const LineText kept = lineTextOf(line.stored->values, QLocale());
        for (int i = 0; i < kPageFieldCount; ++i) { // a text that could not be taken stays as typed
            const auto field = static_cast<PageField>(i);
            if (line.text.cell(field).problem.isEmpty()) {
                line.text.cell(field) = kept.cell(field);
            }
        }
        line.text.missing = kept.missing;
    }
    judgeAround(number);
    bool failedElsewhere = false;
    for (int other = 0; other < model_->lineCount(); ++other) {
        failedElsewhere = failedElsewhere || model_->line(other).failed;
    }
    if (!failedElsewhere && retry_->isVisible()) {
        retry_->hide();
        say({});
    }
    return true;
}

void OldPage::noteStored(int number, const record::Uuid& subject) {
    PageLine& line = model_->line(number);
    const bool wasThere = line.stored.has_value();
    const auto stored = session_.book().observation(subject);
    if (stored && *stored && !(**stored).values.withdrawn) {
        line.stored = **stored;
        line.typedHere = line.typedHere || !wasThere;
    } else if (stored) {
        line.stored.reset();
        line.judged.reset();
        line.typedHere = false;
    }
}

void OldPage::judge(int number) {
    PageLine& line = model_->line(number);
    line.judged.reset();
    if (!line.stored) {
        return;
    }
    // Neighbours only: the work does not grow with the book. Not live: a page is kept as it was written.
    if (auto judged = session_.judgeEntry(line.stored->values, line.stored->id(), false)) {
        judged->reading.stored = *line.stored;
        line.judged = std::move(*judged);
    }
}

void OldPage::judgeAround(int number) {
    for (int near = number - 1; near <= number + 1; ++near) {
        if (near >= 0 && near < model_->lineCount() && model_->line(near).stored) {
            judge(near);
            model_->lineChanged(near);
        }
    }
    if (!model_->line(number).stored) {
        model_->lineChanged(number);
    }
    showWords();
}

void OldPage::askReason(int number) {
    if (askedFor_) {
        return; // one question at a time; the answer is for the whole page
    }
    askedFor_ = number;
    reasonEdit_->setText(tr("typed again from the page"));
    reasonBar_->show();
    reasonEdit_->setFocus(Qt::OtherFocusReason);
    reasonEdit_->selectAll();
    say(tr("%1 was in the book already. Say why it changes, once for this page: Enter keeps the change, Esc "
           "leaves the book as it is.")
            .arg(lineName(model_->line(number))));
}

void OldPage::giveReason() {
    const QString given = reasonEdit_->text().simplified();
    if (given.isEmpty()) {
        say(tr("Write a reason: what stood there first is kept, and so is why it changed."), true);
        return;
    }
    reason_ = given;
    askedFor_.reset();
    reasonBar_->hide();
    say({});
    for (int number = 0; number < model_->lineCount(); ++number) {
        if (number != model_->lineAt(view_->currentIndex())) {
            leaveLine(number);
        }
    }
    view_->setFocus();
}

void OldPage::dropReason() {
    if (askedFor_ && *askedFor_ < model_->lineCount()) {
        PageLine& line = model_->line(*askedFor_);
        line.text = line.stored ? lineTextOf(line.stored->values, QLocale()) : LineText{};
        model_->lineChanged(*askedFor_);
    }
    const bool asked = askedFor_.has_value();
    askedFor_.reset();
    reasonBar_->hide();
    if (asked) {
        say({});
        view_->setFocus();
        showWords();
    }
}

void OldPage::tryAgain() {
    view_->takeOpenCell();
    retry_->hide();
    say({});
    for (int number = 0; number < model_->lineCount(); ++number) {
        leaveLine(number);
    }
    view_->setFocus();
}

bool OldPage::leaveAll() {
    view_->takeOpenCell();
    if (askedFor_) { // nothing typed is lost for want of an answer: the reason on offer stands
        reason_ = reasonEdit_->text().simplified().isEmpty() ? tr("typed again from the page")
                                                             : reasonEdit_->text().simplified();
        askedFor_.reset();
        reasonBar_->hide();
    }
    bool all = true;
    for (int number = 0; number < model_->lineCount(); ++number) {
        if (!leaveLine(number)) {
            if (askedFor_ && *askedFor_ == number) {
                reason_ = tr("typed again from the page");
                askedFor_.reset();
                reasonBar_->hide();
                say({});
                all = leaveLine(number) && all;
                continue;
            }
            all = false;
        }
    }
    return all;
}

/// The second pass: equal lines are read back, others wait for what the paper says.
bool OldPage::leaveAgain(int number) {
    PageLine& line = model_->line(number);
    if (!line.stored || line.again.isEmpty()) {
        return true;
    }
    auto differing = differences(line.text, line.again);
    if (!differing.empty() && line.stored->values.origin == record::Origin::Corrected) {
        // The paper still says what was corrected since: agreeing with what was first read is agreeing.
        if (const auto history = session_.book().history(line.stored->id())) {
            for (const record::ObservationRevision& revision : *history) {
                const LineText then = lineTextOf(revision.values, QLocale());
                if (revision.values.origin == record::Origin::Observed &&
                    differences(then, line.again).empty()) {
                    differing.clear();
                }
            }
        }
    }
    line.readAgain = !differing.empty() ? ReadAgain::Differs : ReadAgain::NotYet;
    if (differing.empty() && isTypedAgain(line.text, line.again)) {
        line.readAgain = ReadAgain::Agrees;
        if (!line.stored->values.readBack) {
            record::Observation after = line.stored->values;
            after.readBack = true;
            write(number, after, tr("read back against the page: typed twice alike"), true);
            return !model_->line(number).failed;
        }
    }
    model_->lineChanged(number);
    return true;
}

} // namespace wickbook::ui
