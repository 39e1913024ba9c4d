// SPDX-License-Identifier: GPL-3.0-or-later
// How the window is put together: three sheets, of which one lies on top.
#include "ui/review/review_delegates.h"
#include "ui/review/review_window.h"
#include "ui/review/run_panel.h"
#include "ui/review/runs_model.h"
#include "ui/style/look.h"
#include "ui/style/sheet.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace wickbook::ui {

void ReviewWindow::build() {
    setWindowTitle(tr("Look through the register – Wickbook"));
    setAttribute(Qt::WA_StyledBackground);
    Look::follow(*this);
    resize(typePixels(1160), typePixels(700));
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(space::kBetween, space::kBetween, space::kBetween, space::kBetween);
    auto* sheet = new Sheet;
    outer->addWidget(sheet);
    auto* column = new QVBoxLayout(sheet);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->setSpacing(space::kGroup);
    column->addWidget(makeHeading(tr("Look through the register")));
    summary_ = makeLabel({}, TypeSize::Body, false);
    summary_->setObjectName(QStringLiteral("summary"));
    summary_->setWordWrap(true);
    column->addWidget(summary_);

    staleRow_ = new QWidget;
    auto* staleLine = new QHBoxLayout(staleRow_);
    staleLine->setContentsMargins(0, 0, 0, 0);
    auto* staleWords =
        makeLabel(tr("The register has changed since it was looked through."), TypeSize::Body, false);
    staleWords->setObjectName(QStringLiteral("stale"));
    auto* anew = new QPushButton(tr("Look again  F5"));
    anew->setObjectName(QStringLiteral("lookAgainStale"));
    anew->setAccessibleName(tr("Look through the register again"));
    staleLine->addWidget(staleWords);
    staleLine->addWidget(anew);
    staleLine->addStretch();
    staleRow_->hide();
    connect(anew, &QPushButton::clicked, this, &ReviewWindow::look);
    column->addWidget(staleRow_);

    stack_ = new QStackedWidget;
    stack_->addWidget(buildWorking());
    stack_->addWidget(buildSaid());
    stack_->addWidget(buildFound());
    column->addWidget(stack_, 1);
    message_ = makeLabel({}, TypeSize::Label, false);
    message_->setObjectName(QStringLiteral("message"));
    message_->setWordWrap(true);
    message_->hide();
    column->addWidget(message_);
}

QWidget* ReviewWindow::buildWorking() {
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->addStretch(1);
    stage_ = makeLabel({}, TypeSize::Body, false);
    stage_->setObjectName(QStringLiteral("stage"));
    column->addWidget(stage_);
    auto* row = new QHBoxLayout;
    bar_ = new QProgressBar;
    bar_->setAccessibleName(tr("How far the register has been looked through"));
    bar_->setTextVisible(false);
    bar_->setMaximumWidth(typePixels(520));
    cancel_ = new QPushButton(tr("Cancel  Esc"));
    cancel_->setObjectName(QStringLiteral("cancel"));
    cancel_->setAccessibleName(tr("Stop looking through the register"));
    connect(cancel_, &QPushButton::clicked, &work_, &ReviewWork::stop);
    row->addWidget(bar_, 1);
    row->addWidget(cancel_);
    row->addStretch();
    column->addLayout(row);
    auto* meanwhile = makeLabel(tr("The other window can be used meanwhile."));
    column->addWidget(meanwhile);
    column->addStretch(2);
    return page;
}

QWidget* ReviewWindow::buildSaid() {
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    said_ = makeLabel({}, TypeSize::Body, false);
    said_->setObjectName(QStringLiteral("said"));
    said_->setWordWrap(true);
    again_ = new QPushButton(tr("Look again  F5"));
    again_->setObjectName(QStringLiteral("lookAgain"));
    again_->setAccessibleName(tr("Look through the register again"));
    connect(again_, &QPushButton::clicked, this, &ReviewWindow::look);
    column->addWidget(said_);
    column->addWidget(again_, 0, Qt::AlignLeft);
    column->addStretch();
    return page;
}

QWidget* ReviewWindow::buildFound() {
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kGroup);
    auto* halves = new QSplitter(Qt::Horizontal);
    halves->setChildrenCollapsible(false);
    runs_ = new RunsModel(locale(), this);
    list_ = new QListView;
    list_->setObjectName(QStringLiteral("runs"));
    list_->setAccessibleName(tr("Groups of questions, worst first"));
    list_->setModel(runs_);
    list_->setItemDelegate(new RunDelegate(list_));
    list_->setUniformItemSizes(true);
    list_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setMinimumWidth(typePixels(300));
    halves->addWidget(list_);
    panel_ = new RunPanel(locale());
    halves->addWidget(panel_);
    halves->setStretchFactor(0, 0);
    halves->setStretchFactor(1, 1);
    halves->setSizes({typePixels(360), typePixels(700)});
    column->addWidget(halves, 1);
    auto* keys =
        makeLabel(tr("In the list the keys are for the whole group, in the table for the readings "
                     "chosen: S sound, D doubtful, E erroneous · W why · 1 to 3 take a likely cause · "
                     "Enter opens in the register · N next, P previous group · Ctrl+Z takes back"));
    keys->setWordWrap(true);
    column->addWidget(keys);
    return page;
}

} // namespace wickbook::ui
