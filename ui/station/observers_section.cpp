// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/observers_section.h"

#include "core/desk/observers_of_book.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include <cmath>
#include <memory>

namespace wickbook::ui {

namespace {

/// "3 (1.2 %)"; nothing for none.
QString countWords(const QLocale& locale, int count, int of) {
    return count == 0 ? QString{}
                      : QStringLiteral("%1 (%2%3%)")
                            .arg(QString::number(count), numberWords(locale, 100.0 * count / of, 1))
                            .arg(kNoBreakSpace);
}

QString shareWords(const QLocale& locale, const checks::FinalDigits& digits) {
    if (digits.total() == 0) {
        return QStringLiteral("–");
    }
    return ObserversSection::tr("%1 of %2")
        .arg(percentWords(locale, 100 * digits.shareOfRound()), QString::number(digits.total()));
}

} // namespace

ObserversSection::ObserversSection(Session& session, QLocale locale, QWidget* parent)
    : QWidget(parent), session_(session), locale_(std::move(locale)) {
    build();
    const auto changed = [this] {
        if (fold_->isChecked()) {
            count();
        }
    };
    connect(&session_, &Session::observationsChanged, this, changed);
    connect(&session_, &Session::factsChanged, this, changed);
    connect(&work_, &BackgroundWork::progressed, this, [this](qint64 done, qint64 total) {
        status_->setText(total > 0 ? tr("Counting: %1 %").arg(100 * done / total) : tr("Counting …"));
    });
    unfold(false);
}

void ObserversSection::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kGroup);
    auto* head = new QHBoxLayout;
    fold_ = new QPushButton;
    fold_->setObjectName(QStringLiteral("observersFold"));
    fold_->setCheckable(true);
    head->addWidget(fold_);
    head->addStretch();
    column->addLayout(head);
    content_ = new QWidget;
    auto* inside = new QVBoxLayout(content_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(space::kGroup);
    status_ = makeLabel({}, TypeSize::Body, true);
    status_->setObjectName(QStringLiteral("observersStatus"));
    status_->setWordWrap(true);
    inside->addWidget(status_);
    table_ = new QTableWidget(0, ColumnCount);
    table_->setObjectName(QStringLiteral("observers"));
    table_->setAccessibleName(tr("who has read, and how"));
    table_->setHorizontalHeaderLabels({tr("By"), tr("First"), tr("Last"), tr("Readings"), tr("As deputy"),
                                       tr("Doubtful"), tr("Erroneous"), tr("Estimated"), tr("Minutes off"),
                                       tr("0 or 5, dry"), tr("0 or 5, wet"), tr("Favours")});
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->setShowGrid(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(typePixels(26));
    table_->setMinimumHeight(typePixels(110));
    inside->addWidget(table_, 1);
    note_ =
        makeLabel(tr("Minutes off the hour, early and late alike. A fifth of the last digits is 0 or 5 "
                     "where no digit is favoured. What changes with the initials may be the hand, not the "
                     "air."));
    note_->setWordWrap(true);
    inside->addWidget(note_);
    column->addWidget(content_, 1);
    connect(fold_, &QPushButton::toggled, this, [this](bool open) {
        unfold(open);
        if (open) {
            count();
        } else {
            work_.stop();
        }
    });
}

void ObserversSection::unfold(bool open) {
    fold_->setText(open ? tr("Who ha&s read: fold away") : tr("Who ha&s read, and how"));
    content_->setVisible(open);
    setSizePolicy(QSizePolicy::Preferred, open ? QSizePolicy::Expanding : QSizePolicy::Maximum);
}

void ObserversSection::count() {
    if (work_.isRunning()) {
        again_ = true;
        work_.stop();
        return;
    }
    again_ = false;
    status_->setText(tr("Counting …"));
    status_->show();
    auto answer = std::make_shared<Answer>();
    work_.start(
        [answer, path = session_.path().toStdString(), station = session_.station()](WorkWatch& watch) {
            const auto book = store::Book::open(std::filesystem::path{path}, store::OpenMode::ReadOnly);
            if (!book) {
                answer->trouble = storeErrorWords(book.error());
                return;
            }
            auto habits = desk::observersOfBook(
                *book, station, [&](std::int64_t done, std::int64_t total) { return watch.go(done, total); });
            if (!habits) {
                answer->trouble = storeErrorWords(habits.error());
                return;
            }
            answer->stopped = !habits->has_value();
            answer->habits = std::move(*habits).value_or(std::vector<checks::ObserverHabits>{});
        },
        [this, answer] {
            if (again_ && fold_->isChecked()) {
                count();
            } else {
                show(*answer);
            }
        });
}

QString ObserversSection::dateWords(record::Instant instant) const {
    const auto day = date::floor<date::days>(session_.station().periodAt(instant).zone.localAt(instant));
    return locale_.toString(toQDate(day), QStringLiteral("d MMM yyyy"));
}

QStringList ObserversSection::cellsOf(const checks::ObserverHabits& habits) const {
    QStringList favours;
    const auto favoured = [&](const checks::FinalDigits& digits, checks::Bulb bulb, const QString& name) {
        if (checks::digitPreference(digits, bulb, checks::Limits{})) {
            //: which last digit, of which bulb, and its share
            favours << tr("%1 (%2, %3)")
                           .arg(QString::number(digits.mostFrequent()), name,
                                percentWords(locale_, 100 * digits.shareOf(digits.mostFrequent())));
        }
    };
    favoured(habits.dryDigits, checks::Bulb::Dry, tr("dry"));
    favoured(habits.wetDigits, checks::Bulb::Wet, tr("wet"));
    QString minutes = QStringLiteral("–");
    if (habits.meanMinutesOff && habits.timed == 0) {
        minutes = tr("not written down");
    } else if (habits.meanMinutesOff) {
        const double late = *habits.meanMinutesLate;
        const QString off = numberWords(locale_, *habits.meanMinutesOff, 1);
        const QString by = numberWords(locale_, std::abs(late), 1);
        minutes = std::abs(late) < 0.05 ? off
                  : late > 0            ? tr("%1 (%2 late)").arg(off, by)
                                        : tr("%1 (%2 early)").arg(off, by);
    }
    const QString deputy = habits.asDeputy > 0
                               ? habits.asDeputy == 1
                                     ? tr("1 reading")
                                     : tr("%n readings", nullptr, static_cast<int>(habits.asDeputy))
                           : habits.namedDeputy ? tr("named")
                                                : QString{};
    return {habits.initials.empty() ? tr("no initials") : QString::fromStdString(habits.initials),
            dateWords(habits.first),
            dateWords(habits.last),
            QString::number(habits.readings),
            deputy,
            countWords(locale_, habits.doubtful, habits.readings),
            countWords(locale_, habits.erroneous, habits.readings),
            habits.estimated == 0 ? QString{} : QString::number(habits.estimated),
            minutes,
            shareWords(locale_, habits.dryDigits),
            shareWords(locale_, habits.wetDigits),
            favours.join(QStringLiteral("; "))};
}

void ObserversSection::show(const Answer& answer) {
    if (answer.stopped) {
        return; // folded away: counted when it is opened again
    }
    status_->setText(!answer.trouble.isEmpty() ? answer.trouble
                     : answer.habits.empty()   ? tr("Nobody has read yet.")
                                               : QString{});
    status_->setVisible(!status_->text().isEmpty());
    table_->setVisible(!answer.habits.empty());
    note_->setVisible(!answer.habits.empty());
    table_->setRowCount(static_cast<int>(answer.habits.size()));
    for (int row = 0; row < table_->rowCount(); ++row) {
        const QStringList cells = cellsOf(answer.habits[static_cast<std::size_t>(row)]);
        for (int column = 0; column < ColumnCount; ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setToolTip(
                QStringLiteral("%1: %2").arg(table_->horizontalHeaderItem(column)->text(), cells[column]));
            item->setData(Qt::AccessibleTextRole,
                          QStringLiteral("%1, %2").arg(cells[Initials], item->toolTip()));
            if (column == Readings) {
                item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            }
            table_->setItem(row, column, item);
        }
    }
    table_->resizeColumnsToContents();
    if (table_->rowCount() > 0 && !table_->currentIndex().isValid()) {
        table_->setCurrentCell(0, 0);
    }
    if (fold_->hasFocus() && table_->isVisible()) {
        table_->setFocus(); // who unfolded it wants to read it
    }
}

} // namespace wickbook::ui
