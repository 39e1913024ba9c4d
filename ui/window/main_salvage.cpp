// SPDX-License-Identifier: GPL-3.0-or-later
// The way from a damaged book to what can be saved of it: offered where one does not open, and in the menu
// for one that opens and is damaged further in.
#include "ui/style/tokens.h"
#include "ui/window/first_start_page.h"
#include "ui/window/main_window.h"
#include "ui/window/prompts.h"
#include "ui/window/salvage_dialog.h"
#include "ui/window/trouble_log.h"

#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace wickbook::ui {

void MainWindow::buildSalvageOffer(QVBoxLayout& column) {
    auto* row = new QHBoxLayout;
    row->setContentsMargins(space::kEdge, space::kStep, space::kEdge, 0);
    salvageOffer_ = new QPushButton(tr("Save &what can be read…"));
    salvageOffer_->setObjectName(QStringLiteral("salvageOffer"));
    salvageOffer_->hide();
    row->addWidget(salvageOffer_, 0, Qt::AlignLeft);
    row->addStretch(1);
    column.addLayout(row);
    connect(salvageOffer_, &QPushButton::clicked, this, [this] { salvageBook(salvageable_); });
    connect(firstStart_, &FirstStartPage::salvageWanted, this, [this] { salvageBook(salvageable_); });
}

void MainWindow::tellUnopened(const store::StoreError& error, const QString& sentence, const QString& path) {
    TroubleLog::note(QStringLiteral("a book did not open: kind %1: %2")
                         .arg(static_cast<int>(error.kind))
                         .arg(QString::fromStdString(error.detail)));
    tell(sentence);
    salvageable_ = salvageMayHelp(error) ? path : QString{};
    const bool onFirstStart = pages_ == nullptr && front_->currentIndex() == 0;
    firstStart_->offerSalvage(onFirstStart && !salvageable_.isEmpty());
    salvageOffer_->setVisible(!onFirstStart && !salvageable_.isEmpty());
}

void MainWindow::salvageBook(const QString& path) {
    const QString damaged = path.isEmpty() ? prompts_.bookToOpen(this) : path;
    if (damaged.isEmpty()) {
        return;
    }
    SalvageDialog dialog(damaged, settings_.observer(), prompts_, clock_, this);
    dialog.exec();
    if (const QString fresh = dialog.bookToOpen(); !fresh.isEmpty()) {
        openBook(fresh);
    }
}

} // namespace wickbook::ui
