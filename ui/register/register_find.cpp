// SPDX-License-Identifier: GPL-3.0-or-later
// Finding in the whole register, from the line under the caret on.
#include "ui/register/find_bar.h"
#include "ui/register/register_model.h"
#include "ui/register/register_page.h"
#include "ui/register/register_search.h"
#include "ui/register/register_view.h"

#include <QApplication>

namespace wickbook::ui {

void RegisterPage::connectFind() {
    connect(find_, &FindBar::findAsked, this, &RegisterPage::findOn);
    connect(find_, &FindBar::stopAsked, this, [this] {
        search_->stop();
        find_->setRunning(false);
        find_->say(tr("Stopped."));
    });
    connect(find_, &FindBar::closed, this, [this] {
        search_->stop();
        find_->setRunning(false);
        find_->hide();
        view_->setFocus();
    });
    connect(search_, &RegisterSearch::found, this, &RegisterPage::showFound);
    connect(search_, &RegisterSearch::progressed, this,
            [this](int percent) { find_->say(tr("Looking: %1 %").arg(percent)); });
    connect(search_, &RegisterSearch::nothingFound, this, [this] {
        find_->setRunning(false);
        find_->say(tr("No line of the register holds “%1”.").arg(find_->text()));
    });
    connect(search_, &RegisterSearch::failed, this, [this](const QString& sentence) {
        find_->setRunning(false);
        find_->say(sentence);
    });
}

void RegisterPage::findOn(bool forward) {
    const SearchTerm term{locale(), find_->text()};
    if (!find_->isVisible() || term.isEmpty()) {
        find_->open();
        return;
    }
    RegisterSearch::Place from;
    if (const report::MonthLine* line = currentLine()) {
        from.instant = line->instant;
        if (line->reading != nullptr) {
            from.id = line->reading->reading.stored.id();
        }
    } else {
        from.instant =
            record::startOfDate(record::StationDate{date::local_days{month_ / 1}}, session_.station());
    }
    find_->setRunning(true);
    search_->start(term, forward, from);
}

void RegisterPage::showFound(const record::ObservingHour& hour, bool wrapped) {
    find_->setRunning(false);
    const bool typing = find_->isAncestorOf(QApplication::focusWidget());
    const bool same = currentHour() == hour;
    QWidget* field = QApplication::focusWidget();
    showHour(hour);
    if (typing) {
        field->setFocus(); // Enter finds on, again and again
    }
    find_->say(same      ? tr("This is the only one.")
               : wrapped ? tr("Found, round the end of the register.")
                         : tr("Found."));
}

} // namespace wickbook::ui
