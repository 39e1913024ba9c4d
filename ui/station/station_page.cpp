// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/station_page.h"

#include "ui/station/absence_section.h"
#include "ui/station/copies_section.h"
#include "ui/station/limits_section.h"
#include "ui/station/observers_section.h"
#include "ui/station/period_section.h"
#include "ui/style/scrolled_column.h"
#include "ui/style/sheet.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QFileInfo>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace wickbook::ui {

StationPage::StationPage(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    outer->setSpacing(space::kGroup);
    heading_ = makeHeading({});
    book_ = makeLabel({});
    book_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    outer->addWidget(heading_);
    outer->addWidget(book_);
    auto* row = new QHBoxLayout;
    auto* change = new QPushButton(tr("From a date on the station &differs…"));
    change->setObjectName(QStringLiteral("stationDiffers"));
    change->setEnabled(session.readOnlySentence().isEmpty());
    connect(change, &QPushButton::clicked, this, [this] { differs_->ask(std::nullopt); });
    row->addWidget(change);
    row->addStretch();
    outer->addLayout(row);

    const ScrolledColumn scrolled = makeScrolledColumn(tr("what is known of the station"), space::kBetween);
    periods_ = scrolled.column;
    setFocusProxy(scrolled.area); // the arrow keys turn the page as soon as it is open
    outer->addWidget(scrolled.area, 1);
    differs_ = new PeriodSection(session);
    outer->addWidget(differs_);
    outer->addWidget(new AbsenceSection(session));
    outer->addWidget(new ObserversSection(session));
    outer->addWidget(new DiarySection(session));
    outer->addWidget(new LimitsSection(session), 2);
    copies_ = new CopiesSection(session);
    connect(copies_, &CopiesSection::openBookAsked, this, &StationPage::openBookAsked);
    outer->addWidget(copies_);
    connect(&session_, &Session::factsChanged, this, &StationPage::reload);
    connect(&session_, &Session::observationsChanged, this, &StationPage::reload);
    reload();
}

void StationPage::reload() {
    heading_->setText(QString::fromStdString(session_.station().name()));
    const auto count = session_.book().observationCount();
    const auto span = session_.book().span();
    QString book = tr("Book: %1").arg(QFileInfo(session_.path()).fileName());
    if (count) {
        const int readings = static_cast<int>(*count);
        book +=
            QStringLiteral(" · ") + (readings == 1 ? tr("1 reading") : tr("%n readings", nullptr, readings));
    }
    if (span && *span) {
        const record::Zone zone = session_.station().periodAt((*span)->first).zone;
        const auto day = [&](record::Instant instant) {
            return longDateWords(QLocale(), date::floor<date::days>(zone.localAt(instant)));
        };
        book += QStringLiteral(" · ") + tr("%1 to %2").arg(day((*span)->first), day((*span)->second));
    }
    if (session_.station().facts().invented) {
        book += QStringLiteral(" · ") + inventedWords();
    }
    book_->setText(book);
    while (QLayoutItem* item = periods_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const auto all = session_.station().periods();
    for (auto period = all.rbegin(); period != all.rend(); ++period) {
        periods_->addWidget(periodBlock(*period, period == all.rbegin()));
        periods_->addWidget(new RuledLine(Qt::Horizontal));
    }
    periods_->addStretch();
}

QWidget* StationPage::periodBlock(const record::StationPeriod& period, bool current) const {
    auto* block = new QWidget;
    auto* grid = new QGridLayout(block);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space::kBetween);
    grid->setVerticalSpacing(space::kStep);
    grid->setColumnStretch(1, 1);
    const QString since = period.from
                              ? tr("From %1").arg(longDateWords(
                                    QLocale(), date::floor<date::days>(period.zone.localAt(*period.from))))
                              : tr("From the beginning");
    QLabel* title = makeLabel(current ? tr("%1, in force").arg(since) : since, TypeSize::Body, false);
    title->setFont(typeFont(TypeSize::Body, true));
    grid->addWidget(title, 0, 0, 1, 2);
    int row = 1;
    const auto line = [&](const QString& what, const QString& value) {
        grid->addWidget(makeLabel(what), row, 0, Qt::AlignTop);
        QLabel* words = makeLabel(value, TypeSize::Body, false);
        words->setWordWrap(true);
        grid->addWidget(words, row++, 1);
    };
    QStringList hours;
    for (const record::HourOfDay hour : period.hours) {
        hours << hourWords(hour);
    }
    line(tr("Place"), positionWords(QLocale(), period.position));
    line(tr("Elevation"), tr("%1 m").arg(numberWords(QLocale(), period.elevation.metres(), 1)));
    line(
        tr("Observing hours"),
        hours.isEmpty()
            ? tr("none, extra readings only")
            : tr("%1; they follow %2").arg(hours.join(QStringLiteral(", ")), hourRuleWords(period.hourRule)));
    line(tr("Time zone"), QString::fromStdString(period.zone.name()));
    line(tr("Exposure"),
         exposureWords(period.exposure) + QStringLiteral(". ") + exposureExplained(period.exposure));
    if (period.ownCoefficient) {
        line(tr("Own coefficient"),
             tr("%1 × 10⁻⁴ per degree, water")
                 .arg(numberWords(QLocale(), period.ownCoefficient->waterPerKelvin * 1e4, 2)));
    }
    if (period.meanPressure) {
        line(tr("Mean pressure"),
             tr("%1 hPa, where none was read").arg(numberWords(QLocale(), *period.meanPressure, 1)));
    }
    if (!period.surroundings.empty()) {
        line(tr("Surroundings"), QString::fromStdString(period.surroundings));
    }
    return block;
}

void StationPage::showCopies() {
    copies_->open();
}

QString StationPage::keep(const record::PeriodChange& change, const QString& why) {
    return differs_->keep(change, why);
}

} // namespace wickbook::ui
