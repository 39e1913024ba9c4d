// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/oldpage/move_dialog.h"

#include "ui/oldpage/month_edit.h"
#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

QString whyStaying(StayReason reason, const StayingLine& line) {
    const QLocale locale;
    switch (reason) {
    case StayReason::NoSuchDay:
        return MoveDialog::tr("that month has no such day");
    case StayReason::NoSuchHour:
        return MoveDialog::tr("on %1 no reading was due at that hour")
            .arg(shortDateWords(locale, line.wouldBe));
    case StayReason::HourTaken:
        return MoveDialog::tr("%1 has a reading at that hour already")
            .arg(shortDateWords(locale, line.wouldBe));
    case StayReason::StillToCome:
        return MoveDialog::tr("%1 is still to come").arg(shortDateWords(locale, line.wouldBe));
    case StayReason::NoHour:
        return MoveDialog::tr("it is an extra reading, kept at its own time");
    }
    return {};
}

} // namespace

MoveDialog::MoveDialog(const Session& session, date::year_month from, std::vector<Choice> choices,
                       QWidget* parent)
    : QDialog(parent), session_(session), choices_(std::move(choices)) {
    Look::follow(*this);
    setWindowTitle(tr("These belong to another month"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kEdge, space::kEdge, space::kEdge);
    column->setSpacing(space::kGroup);
    column->addWidget(makeHeading(tr("These belong to another month")));
    which_ = new QComboBox;
    which_->setObjectName(QStringLiteral("moveWhich"));
    which_->setAccessibleName(tr("Which lines"));
    for (const Choice& choice : choices_) {
        which_->addItem(choice.words);
    }
    auto* whichLabel = makeLabel(tr("&Which lines"));
    whichLabel->setBuddy(which_);
    column->addWidget(whichLabel);
    column->addWidget(which_);
    month_ = new MonthEdit;
    month_->setDate(firstOf(from));
    month_->setObjectName(QStringLiteral("moveMonth"));
    month_->setAccessibleName(tr("The month they belong to"));
    auto* monthLabel = makeLabel(tr("The &month they belong to (↑ ↓ change it)"));
    monthLabel->setBuddy(month_);
    column->addWidget(monthLabel);
    column->addWidget(month_);
    summary_ = makeLabel({}, TypeSize::Body, false);
    summary_->setObjectName(QStringLiteral("moveSummary"));
    summary_->setWordWrap(true);
    summary_->setMinimumWidth(typePixels(440));
    column->addWidget(summary_);
    staying_ = new QListWidget;
    staying_->setObjectName(QStringLiteral("moveStaying"));
    staying_->setAccessibleName(tr("Lines that stay where they are"));
    staying_->setMinimumHeight(typePixels(120));
    column->addWidget(staying_, 1);
    auto* buttons = new QHBoxLayout;
    move_ = new QPushButton(tr("Mo&ve them"));
    move_->setObjectName(QStringLiteral("moveLines"));
    move_->setProperty("primary", true);
    move_->setDefault(true);
    auto* leave = new QPushButton(tr("Leave them here"));
    buttons->addStretch();
    buttons->addWidget(leave);
    buttons->addWidget(move_);
    column->addLayout(buttons);
    connect(which_, &QComboBox::currentIndexChanged, this, &MoveDialog::preview);
    connect(month_, &MonthEdit::dateChanged, this, &MoveDialog::preview);
    connect(move_, &QPushButton::clicked, this, &QDialog::accept);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    preview();
    month_->setFocus();
}

void MoveDialog::preview() {
    plan_ = {};
    staying_->clear();
    const date::year_month to =
        date::year{month_->date().year()} / date::month{static_cast<unsigned>(month_->date().month())};
    const auto& lines = choices_[static_cast<std::size_t>(which_->currentIndex())].lines;
    const auto plan = planMove(session_, lines, to);
    if (!plan) {
        summary_->setText(storeErrorWords(plan.error()));
        move_->setEnabled(false);
        staying_->hide();
        return;
    }
    plan_ = *plan;
    const QLocale locale;
    for (const StayingLine& stays : plan_.staying) {
        const record::Observation& values = stays.line.values;
        const QString when = values.hour
                                 ? QStringLiteral("%1, %2").arg(shortDateWords(locale, values.hour->date),
                                                                hourWords(values.hour->hour))
                                 : shortDateWords(locale, stays.wouldBe);
        staying_->addItem(tr("%1 (%2 / %3) stays: %4")
                              .arg(when, bulbWords(locale, values.dry), bulbWords(locale, values.wet),
                                   whyStaying(stays.reason, stays)));
    }
    const auto moving = static_cast<int>(plan_.moving.size());
    const auto stay = static_cast<int>(plan_.staying.size());
    if (moving + stay == 0) {
        summary_->setText(lines.empty()
                              ? tr("There are no such lines on this page. Choose others.")
                              : tr("They are in this month already. Choose the month they belong to."));
    } else {
        QString words = moving == 0 ? tr("No line can go to %1.").arg(monthWords(locale, to))
                        : moving == 1
                            ? tr("One line goes to the same day and hour of %1.").arg(monthWords(locale, to))
                            : tr("%1 lines go to the same days and hours of %2.")
                                  .arg(QString::number(moving), monthWords(locale, to));
        if (stay > 0) {
            words += QLatin1Char(' ') + (stay == 1 ? tr("One stays here:") : tr("%1 stay here:").arg(stay));
        }
        summary_->setText(words);
    }
    staying_->setVisible(stay > 0);
    move_->setEnabled(moving > 0);
    layout()->activate(); // the list may have come: it must not lie under the buttons
    resize(size().expandedTo(sizeHint()));
}

} // namespace wickbook::ui
