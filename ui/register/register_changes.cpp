// SPDX-License-Identifier: GPL-3.0-or-later
// What the register page writes: revising, judging, giving a reason, withdrawing. Each one is a command on
// the undo stack; what the page shows afterwards comes back from the book.
#include "core/desk/revising.h"
#include "core/record/observing_hours.h"
#include "ui/commands/absence_hours.h"
#include "ui/commands/revise_observation.h"
#include "ui/register/entry_panel.h"
#include "ui/register/history_panel.h"
#include "ui/register/missing_panel.h"
#include "ui/register/register_filter.h"
#include "ui/register/register_model.h"
#include "ui/register/register_page.h"
#include "ui/register/register_view.h"
#include "ui/text/error_words.h"
#include "ui/text/missing_reasons.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QStackedWidget>

#include <algorithm>

namespace wickbook::ui {

QString RegisterPage::perform(const std::optional<record::StoredObservation>& before,
                              const record::Observation& after, const QString& why, const QString& text) {
    QString refused = session_.readOnlySentence();
    if (refused.isEmpty()) {
        const auto done = ReviseObservation::perform(
            session_, before, after, {session_.observer().toStdString(), why.toStdString()}, text);
        if (done) {
            say(*done ? text : tr("Nothing was changed."));
            return {};
        }
        refused = storeErrorWords(done.error());
    }
    say(refused);
    return refused;
}

void RegisterPage::openEntry() {
    const report::MonthLine* line = currentLine();
    if (line == nullptr) {
        return;
    }
    if (line->toCome) {
        say(tr("This hour is still to come."));
        return;
    }
    if (line->reading == nullptr && session_.now() - line->instant <=
                                        std::chrono::minutes{session_.station().facts().hourWindowMinutes}) {
        emit openInObserve(line->hour); // it can be read now: that is done at the instruments
        return;
    }
    side_->setCurrentWidget(entry_);
    entry_->open(*line);
}

void RegisterPage::saveEntry() {
    const auto observation = entry_->observation();
    if (!observation) {
        entry_->say(observation.error());
        return;
    }
    const auto before = entry_->before();
    const QString when = observation->hour ? hourAndDateWords(locale(), *observation->hour)
                                           : clockWords(observation->instant, observation->offset);
    const QString text = before ? tr("revised %1").arg(when) : tr("wrote down %1").arg(when);
    // The entry's own copy, since storing it reloads the page.
    if (const QString refused = perform(before, *observation, entry_->why(), text); !refused.isEmpty()) {
        entry_->say(refused); // the entry stays as typed
        return;
    }
    closeSide();
    view_->setFocus();
}

void RegisterPage::openMissing() {
    const report::MonthLine* line = currentLine();
    if (line == nullptr || line->toCome || line->extra) {
        return;
    }
    if (line->reading != nullptr && line->reading->reading.values().origin != record::Origin::Missing) {
        say(tr("There is a reading at this hour: a reason is for hours without one."));
        return;
    }
    side_->setCurrentWidget(missing_);
    missing_->open(*line, static_cast<int>(missedRun().size()));
}

void RegisterPage::saveMissing() {
    const report::MonthLine* line = currentLine();
    const QString reason = missing_->reason();
    if (line == nullptr) {
        return;
    }
    if (reason.isEmpty()) {
        missing_->say(tr("Choose a reason or write one in your own words."));
        return;
    }
    if (missing_->forRun()) {
        saveMissingRun();
        return;
    }
    std::optional<record::StoredObservation> before;
    record::Observation after;
    if (line->reading != nullptr) {
        before = line->reading->reading.stored;
        after = before->values;
    } else {
        record::placeInTime(after, session_.station(), line->instant);
        after.hour = line->hour;
        after.observer = session_.observer().toStdString();
    }
    after.origin = record::Origin::Missing;
    after.missingReason = reason.toStdString();
    if (before) {
        after = desk::withTickOf(before->values, std::move(after));
    }
    const QString text =
        tr("%1 is missing: %2").arg(hourAndDateWords(locale(), line->hour), missingReasonWords(reason));
    if (const QString refused = perform(before, after, before ? tr("reason changed") : QString{}, text);
        !refused.isEmpty()) {
        missing_->say(refused); // the reason stays as typed
        return;
    }
    closeSide();
    view_->setFocus();
}

std::vector<record::ExpectedHour> RegisterPage::missedRun() const {
    const report::MonthLine* line = currentLine();
    const std::vector<report::MonthLine>& lines = model_->report().lines;
    // An hour that can still be read is not given up with the others.
    const auto closed = session_.now() - std::chrono::minutes{session_.station().facts().hourWindowMinutes};
    const auto missed = [&](const report::MonthLine& one) {
        return one.reading == nullptr && !one.toCome && !one.extra && (one.instant < closed || &one == line);
    };
    const auto here = std::find_if(lines.begin(), lines.end(), [&](const auto& one) { return &one == line; });
    if (here == lines.end() || !missed(*here)) {
        return {};
    }
    const auto first = std::find_if_not(std::make_reverse_iterator(here), lines.rend(), missed).base();
    const auto last = std::find_if_not(here, lines.end(), missed);
    std::vector<record::ExpectedHour> run;
    for (auto one = first; one != last; ++one) {
        run.push_back({one->hour, one->instant});
    }
    return run;
}

void RegisterPage::saveMissingRun() {
    const std::vector<record::ExpectedHour> run = missedRun();
    const QString reason = missing_->reason();
    if (const QString refused = session_.readOnlySentence(); !refused.isEmpty() || run.empty()) {
        missing_->say(refused);
        return;
    }
    const QString text = tr("%1 to %2 are missing: %3")
                             .arg(hourAndDateWords(locale(), run.front().hour),
                                  hourAndDateWords(locale(), run.back().hour), missingReasonWords(reason));
    const auto done = ExcuseHours::perform(session_, run, reason.toStdString(),
                                           {session_.observer().toStdString(), {}}, text);
    if (!done) {
        missing_->say(storeErrorWords(done.error())); // the reason stays as typed
        return;
    }
    say(text);
    closeSide();
    view_->setFocus();
}

void RegisterPage::closeSide() {
    side_->setCurrentWidget(history_);
    history_->show(currentLine());
    if (isVisible()) {
        view_->setFocus();
    }
}

void RegisterPage::orderByColumn() {
    QHeaderView& header = *view_->horizontalHeader();
    const int column = view_->currentIndex().column();
    if (column < 0) {
        return;
    }
    const QString name = model_->headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString();
    if (header.sortIndicatorSection() != column) {
        header.setSortIndicator(column, Qt::AscendingOrder);
        say(tr("Ordered by: %1. O again turns it round.").arg(name));
    } else if (header.sortIndicatorOrder() == Qt::AscendingOrder) {
        header.setSortIndicator(column, Qt::DescendingOrder);
        say(tr("Ordered by: %1, the other way round. O again: as on the page.").arg(name));
    } else {
        header.setSortIndicator(-1, Qt::AscendingOrder);
        say(tr("In the order of the page."));
    }
    view_->scrollTo(view_->currentIndex());
}

void RegisterPage::copyTable() {
    QGuiApplication::clipboard()->setText(filter_->asTable());
    const int lines = filter_->rowCount();
    say(lines == 1 ? tr("One line is on the clipboard as a table.")
                   : tr("%n lines are on the clipboard as a table.", nullptr, lines));
}

} // namespace wickbook::ui
