// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/moving/move_dialog.h"

#include "ui/moving/month_edit.h"
#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QComboBox>
#include <QDateEdit>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <set>

namespace wickbook::ui {

namespace {

constexpr int kLongestReason = 200;

QString whyStaying(const desk::StayingLine& line) {
    const QString date = shortDateWords(QLocale(), line.wouldBe);
    switch (line.reason) {
    case desk::StayReason::NoSuchDay:
        return MoveDialog::tr("that month has no such day");
    case desk::StayReason::NoSuchHour:
        return MoveDialog::tr("on %1 no reading was due at that hour").arg(date);
    case desk::StayReason::HourTaken:
        return MoveDialog::tr("%1 has a reading at that hour already").arg(date);
    case desk::StayReason::StillToCome:
        return MoveDialog::tr("%1 is still to come").arg(date);
    }
    return {};
}

/// The hour a line is kept under; of an extra reading its date and clock time.
record::ObservingHour placeOf(const record::Observation& values) {
    if (values.hour) {
        return *values.hour;
    }
    const record::LocalTime local{values.instant.time_since_epoch() + values.offset};
    const record::StationDate date = date::floor<date::days>(local);
    return {date, std::chrono::floor<std::chrono::minutes>(local - date)};
}

} // namespace

record::ObservingHour firstPlace(const desk::MovePlan& plan) {
    return placeOf(plan.moving.front().after);
}

QString movedWords(const QLocale& locale, const desk::MovePlan& plan) {
    if (plan.moving.empty()) {
        return {};
    }
    const QString first = hourAndDateWords(locale, firstPlace(plan));
    if (plan.moving.size() == 1) {
        return MoveDialog::tr("one line to %1").arg(first);
    }
    return MoveDialog::tr("%n lines to %1 … %2", nullptr, static_cast<int>(plan.moving.size()))
        .arg(first, hourAndDateWords(locale, placeOf(plan.moving.back().after)));
}

MoveDialog::MoveDialog(const Session& session, Where where, date::year_month from,
                       std::vector<Choice> choices, QWidget* parent)
    : QDialog(parent), session_(session), choices_(std::move(choices)) {
    Look::follow(*this);
    const QString title =
        where == OtherMonth ? tr("These belong to another month") : tr("These belong elsewhere");
    setWindowTitle(title);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kEdge, space::kEdge, space::kEdge);
    column->setSpacing(space::kGroup);
    column->addWidget(makeHeading(title));
    buildFields(from);
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
    connect(move_, &QPushButton::clicked, this, &QDialog::accept);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    where_->setCurrentIndex(where);
    chosenLinesChanged();
    whereChanged();
    connect(which_, &QComboBox::currentIndexChanged, this, &MoveDialog::chosenLinesChanged);
    connect(where_, &QComboBox::currentIndexChanged, this, &MoveDialog::whereChanged);
    connect(month_, &MonthEdit::dateChanged, this, &MoveDialog::preview);
    connect(date_, &QDateEdit::dateChanged, this, &MoveDialog::preview);
    connect(hour_, &QComboBox::currentIndexChanged, this, &MoveDialog::preview);
    (where == OtherMonth  ? static_cast<QWidget*>(month_)
     : where == OtherDate ? static_cast<QWidget*>(date_)
                          : hour_)
        ->setFocus();
}

void MoveDialog::buildFields(date::year_month from) {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(space::kBetween);
    grid->setVerticalSpacing(space::kGroup);
    grid->setColumnStretch(1, 1);
    static_cast<QVBoxLayout*>(layout())->addLayout(grid);
    const auto add = [&](int row, const QString& words, QWidget* field, const QString& name,
                         const QString& accessible) {
        auto* label = makeLabel(words);
        label->setBuddy(field);
        field->setObjectName(name);
        field->setAccessibleName(accessible);
        grid->addWidget(label, row, 0);
        grid->addWidget(field, row, 1);
        return label;
    };
    which_ = new QComboBox;
    for (const Choice& choice : choices_) {
        which_->addItem(choice.words);
    }
    add(0, tr("&Which lines"), which_, QStringLiteral("moveWhich"), tr("Which lines"));
    where_ = new QComboBox;
    where_->addItems({tr("the same days of another month"), tr("another date"), tr("another hour")});
    add(1, tr("Where &to"), where_, QStringLiteral("moveWhere"), tr("Where to"));
    month_ = new MonthEdit;
    month_->setDate(firstOf(from));
    monthLabel_ = add(2, tr("The &month they belong to (↑ ↓ change it)"), month_, QStringLiteral("moveMonth"),
                      tr("The month they belong to"));
    date_ = new QDateEdit;
    QString format = QLocale().dateFormat(QLocale::ShortFormat);
    if (!format.contains(QLatin1String("yyyy"))) { // a register goes back beyond a century
        format.replace(QLatin1String("yy"), QLatin1String("yyyy"));
    }
    date_->setDisplayFormat(format);
    date_->setDateRange(QDate(1600, 1, 1), QDate(2200, 12, 31));
    date_->setButtonSymbols(QAbstractSpinBox::NoButtons);
    date_->setCurrentSection(QDateTimeEdit::DaySection);
    dateLabel_ = add(3, tr("The &date of the first line (↑ ↓ change it)"), date_, QStringLiteral("moveDate"),
                     tr("The date of the first line; the others keep their distance"));
    hour_ = new QComboBox;
    hour_->addItem(tr("the hour each line has"), -1);
    std::set<record::HourOfDay> hours;
    for (const record::StationPeriod& period : session_.station().periods()) {
        hours.insert(period.hours.begin(), period.hours.end());
    }
    for (const record::HourOfDay hour : hours) {
        hour_->addItem(hourWords(hour), static_cast<int>(hour.count()));
    }
    add(4, tr("&Hour"), hour_, QStringLiteral("moveHour"), tr("Hour"));
    why_ = new QLineEdit(tr("written in the wrong place"));
    why_->setMaxLength(kLongestReason);
    add(5, tr("Wh&y?"), why_, QStringLiteral("moveWhy"), tr("Why"));
}

QString MoveDialog::why() const {
    const QString given = why_->text().simplified();
    return given.isEmpty() ? tr("written in the wrong place") : given;
}

const std::vector<record::StoredObservation>& MoveDialog::lines() const {
    return choices_[static_cast<std::size_t>(std::max(0, which_->currentIndex()))].lines;
}

desk::Destination MoveDialog::destination() const {
    desk::Destination to;
    if (where_->currentIndex() == OtherMonth) {
        to.month =
            date::year{month_->date().year()} / date::month{static_cast<unsigned>(month_->date().month())};
    } else if (where_->currentIndex() == OtherDate && !lines().empty()) {
        const record::StationDate first = record::filedDate(lines().front().values);
        to.days = static_cast<int>((fromQDate(date_->date()) - first).count());
    }
    if (const int minutes = hour_->currentData().toInt(); minutes >= 0) {
        to.hour = record::HourOfDay{minutes};
    }
    return to;
}

void MoveDialog::chosenLinesChanged() {
    if (!lines().empty()) {
        const QSignalBlocker quiet(date_);
        date_->setDate(toQDate(record::filedDate(lines().front().values)));
    }
    preview();
}

void MoveDialog::whereChanged() {
    const int where = where_->currentIndex();
    monthLabel_->setVisible(where == OtherMonth);
    month_->setVisible(where == OtherMonth);
    dateLabel_->setVisible(where == OtherDate);
    date_->setVisible(where == OtherDate);
    preview();
}

QString MoveDialog::summaryWords() const {
    const QLocale locale;
    const auto moving = static_cast<int>(plan_.moving.size());
    const auto stay = static_cast<int>(plan_.staying.size());
    if (moving + stay == 0) {
        return lines().empty()  ? tr("There are no such lines on this page. Choose others.")
               : plan_.to.month ? tr("They are in this month already. Choose the month they belong to.")
                                : tr("They stand there already. Choose another date or hour.");
    }
    const bool sameHours = !plan_.to.hour && plan_.to.month;
    QString words;
    if (moving == 0) {
        words = plan_.to.month ? tr("No line can go to %1.").arg(monthWords(locale, *plan_.to.month))
                               : tr("No line can go there.");
    } else if (sameHours) {
        const QString month = monthWords(locale, *plan_.to.month);
        words = moving == 1
                    ? tr("One line goes to the same day and hour of %1.").arg(month)
                    : tr("%n lines go to the same days and hours of %1.", nullptr, static_cast<int>(moving))
                          .arg(month);
    } else {
        //: %1 "14 lines to 1 Apr 2025, 9 h … 7 Apr 2025, 21 h"
        words = tr("What would go: %1.").arg(movedWords(locale, plan_));
    }
    if (stay > 0) {
        words += QLatin1Char(' ') +
                 (stay == 1 ? tr("One stays here:") : tr("%n stay here:", nullptr, static_cast<int>(stay)));
    }
    return words;
}

void MoveDialog::preview() {
    plan_ = {};
    staying_->clear();
    const auto plan = planMove(session_, lines(), destination());
    if (!plan) {
        summary_->setText(storeErrorWords(plan.error()));
        move_->setEnabled(false);
        staying_->hide();
        return;
    }
    plan_ = *plan;
    const QLocale locale;
    for (const desk::StayingLine& stays : plan_.staying) {
        const record::Observation& values = stays.line.values;
        const record::ObservingHour place = placeOf(values);
        staying_->addItem(
            tr("%1 (%2 / %3) stays: %4")
                .arg(QStringLiteral("%1, %2").arg(shortDateWords(locale, place.date), hourWords(place.hour)),
                     bulbWords(locale, values.dry), bulbWords(locale, values.wet), whyStaying(stays)));
    }
    summary_->setText(summaryWords());
    staying_->setVisible(!plan_.staying.empty());
    move_->setEnabled(!plan_.moving.empty());
    layout()->activate(); // the list may have come: it must not lie under the buttons
    resize(size().expandedTo(sizeHint()));
}

} // namespace wickbook::ui
