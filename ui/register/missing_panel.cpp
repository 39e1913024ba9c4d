// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/missing_panel.h"

#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/missing_reasons.h"
#include "ui/text/time_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace wickbook::ui {

MissingPanel::MissingPanel(QLocale locale, QWidget* parent) : QFrame(parent), locale_(std::move(locale)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kBetween, 0, 0, 0);
    column->setSpacing(space::kGroup);
    heading_ = makeHeading({});
    heading_->setWordWrap(true);
    column->addWidget(heading_);
    reason_ = new QComboBox;
    reason_->setObjectName(QStringLiteral("reason"));
    reason_->setEditable(true);
    reason_->setInsertPolicy(QComboBox::NoInsert);
    reason_->setAccessibleName(tr("Why nothing was read"));
    for (const QString& reason : missingReasons()) {
        reason_->addItem(missingReasonWords(reason));
    }
    auto* label = makeLabel(tr("Why was &nothing read? Choose with ↓ or write your own words."));
    label->setWordWrap(true);
    label->setBuddy(reason_);
    column->addWidget(label);
    column->addWidget(reason_);
    run_ = new QCheckBox;
    run_->setObjectName(QStringLiteral("reasonForRun"));
    column->addWidget(run_);
    message_ = makeLabel({}, TypeSize::Label, false);
    message_->setProperty("wrong", true);
    message_->setWordWrap(true);
    message_->setObjectName(QStringLiteral("missingMessage"));
    column->addWidget(message_);
    auto* buttons = new QHBoxLayout;
    auto* save = new QPushButton(tr("Write down"));
    save->setObjectName(QStringLiteral("saveReason"));
    save->setProperty("primary", true);
    auto* leave = new QPushButton(tr("Leave as it is"));
    buttons->addWidget(save);
    buttons->addWidget(leave);
    buttons->addStretch();
    column->addLayout(buttons);
    column->addStretch();
    connect(save, &QPushButton::clicked, this, &MissingPanel::saveAsked);
    connect(leave, &QPushButton::clicked, this, &MissingPanel::closeAsked);
}

void MissingPanel::open(const report::MonthLine& line, int run) {
    heading_->setText(hourAndDateWords(locale_, line.hour));
    const bool hasReason = line.reading != nullptr;
    run_->setChecked(false);
    run_->setVisible(run > 1);
    run_->setText(tr("for &all %1 hours in a row, in this month").arg(run));
    reason_->setCurrentIndex(-1);
    reason_->setEditText(
        hasReason ? missingReasonWords(QString::fromStdString(line.reading->reading.values().missingReason))
                  : QString{});
    say({});
    reason_->setFocus();
    reason_->lineEdit()->selectAll();
}

bool MissingPanel::forRun() const {
    return run_->isVisibleTo(this) && run_->isChecked();
}

QString MissingPanel::reason() const {
    return missingReasonFromWords(reason_->currentText());
}

void MissingPanel::say(const QString& sentence) {
    message_->setText(sentence);
    message_->setVisible(!sentence.isEmpty());
}

void MissingPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        emit closeAsked();
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        emit saveAsked();
    } else {
        QFrame::keyPressEvent(event);
    }
}

} // namespace wickbook::ui
