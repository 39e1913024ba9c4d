// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/instruments_page.h"

#include "ui/style/scrolled_column.h"
#include "ui/style/sheet.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>

#include <algorithm>
#include <ranges>

namespace wickbook::ui {

namespace {

/// The wick's log shown: a year.
constexpr int kLogDays = 366;
constexpr int kMostLines = 40;
/// Weekly or oftener is good practice (from memory); a fortnight is when a reminder is in order.
constexpr int kRemindAfterDays = 14;

QString careWords(record::WickCare care) {
    return care == record::WickCare::Changed ? InstrumentsPage::tr("new wick")
                                             : InstrumentsPage::tr("wetted");
}

} // namespace

std::vector<WickCareLine> wickCareLog(const std::vector<record::StoredObservation>& observations) {
    std::vector<WickCareLine> log;
    for (const record::StoredObservation& stored : observations | std::views::reverse) {
        if (stored.values.wickCare != record::WickCare::None) {
            log.push_back({record::filedDate(stored.values), stored.values.wickCare, stored.values.observer,
                           stored.values.note});
        }
    }
    return log;
}

InstrumentsPage::InstrumentsPage(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    outer->setSpacing(space::kBetween);
    outer->addWidget(makeHeading(tr("Instruments")));
    const ScrolledColumn scrolled = makeScrolledColumn(tr("the thermometers and the wick"), space::kStep);
    column_ = scrolled.column;
    setFocusProxy(scrolled.area); // the arrow keys turn the page as soon as it is open
    outer->addWidget(scrolled.area, 1);
    connect(&session_, &Session::factsChanged, this, &InstrumentsPage::reload);
    connect(&session_, &Session::observationsChanged, this, &InstrumentsPage::reload);
    reload();
}

void InstrumentsPage::addTitle(const QString& text, const char* bulb) {
    QLabel* title = makeLabel(text, TypeSize::Body, false);
    title->setFont(typeFont(TypeSize::Body, true));
    title->setProperty("bulb", QLatin1String(bulb));
    column_->addWidget(title);
}

void InstrumentsPage::addLine(const QString& what, const QString& value) {
    auto* line = new QWidget;
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    QLabel* label = makeLabel(what);
    label->setFixedWidth(typePixels(200));
    QLabel* words = makeLabel(value, TypeSize::Body, false);
    words->setWordWrap(true);
    row->addWidget(label, 0, Qt::AlignTop);
    row->addWidget(words, 1);
    column_->addWidget(line);
}

void InstrumentsPage::reload() {
    while (QLayoutItem* item = column_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    addPair();
    for (const record::Thermometer& thermometer : session_.station().facts().thermometers) {
        if (!thermometer.withdrawn) {
            addThermometer(thermometer);
        }
    }
    addWick();
    column_->addStretch();
}

void InstrumentsPage::addPair() {
    addTitle(tr("The pair and its history"));
    const record::StationRecord& station = session_.station();
    std::vector<record::Fitting> fittings;
    for (const record::Fitting& fitting : station.facts().fittings) {
        if (!fitting.withdrawn) {
            fittings.push_back(fitting);
        }
    }
    std::sort(fittings.begin(), fittings.end(), [](const record::Fitting& a, const record::Fitting& b) {
        return b.from < a.from; // newest first; "from the beginning" comes last
    });
    const auto nameOf = [&](const record::Uuid& id) {
        const record::Thermometer* thermometer = station.thermometer(id);
        return thermometer == nullptr ? tr("unknown") : QString::fromStdString(thermometer->name);
    };
    for (const record::Fitting& fitting : fittings) {
        const QString since =
            fitting.from
                ? tr("from %1").arg(longDateWords(
                      QLocale(),
                      date::floor<date::days>(station.periodAt(*fitting.from).zone.localAt(*fitting.from))))
                : tr("from the beginning");
        addLine(since, tr("dry: %1 · wet: %2").arg(nameOf(fitting.dry), nameOf(fitting.wet)));
    }
    column_->addSpacing(space::kGroup);
    column_->addWidget(new RuledLine(Qt::Horizontal));
}

void InstrumentsPage::addThermometer(const record::Thermometer& thermometer) {
    const record::StationRecord& station = session_.station();
    const record::Thermometer* dry = station.dryThermometerAt(session_.now());
    const record::Thermometer* wet = station.wetThermometerAt(session_.now());
    const bool isDry = dry != nullptr && dry->id == thermometer.id;
    const bool isWet = wet != nullptr && wet->id == thermometer.id;
    const QString name = QString::fromStdString(thermometer.name);
    column_->addSpacing(space::kGroup);
    addTitle(isDry   ? tr("%1, dry bulb now").arg(name)
             : isWet ? tr("%1, wet bulb now").arg(name)
                     : tr("%1, not in use").arg(name),
             isDry   ? "dry"
             : isWet ? "wet"
                     : "");
    const QLocale locale;
    const QString unit = unitWords(thermometer.unit);
    if (!thermometer.liquid.empty()) {
        addLine(tr("Liquid"), QString::fromStdString(thermometer.liquid));
    }
    addLine(tr("Scale"),
            tr("%1 to %2 %3, read to %4 %3")
                .arg(readWords(locale, thermometer.lowestMark), readWords(locale, thermometer.highestMark),
                     unit, readWords(locale, thermometer.step)));
    bool any = false;
    for (const record::Correction& correction : station.facts().corrections) {
        if (correction.withdrawn || !(correction.thermometer == thermometer.id)) {
            continue;
        }
        any = true;
        QStringList points;
        for (const record::CorrectionPoint& point : correction.points) {
            points << tr("at %1 add %2")
                          .arg(numberWords(locale, point.reading, 1),
                               numberWords(locale, point.correction, 2));
        }
        const QString since =
            correction.from
                ? tr("Correction from %1")
                      .arg(shortDateWords(
                               locale,
                               date::floor<date::days>(
                                   station.periodAt(*correction.from).zone.localAt(*correction.from))) +
                           QLatin1Char(' ') +
                           QString::number(static_cast<int>(
                               date::year_month_day{date::floor<date::days>(*correction.from)}.year())))
                : tr("Correction");
        QString words = points.join(QStringLiteral("; ")) + QLatin1Char(' ') + unit;
        if (!correction.source.empty()) {
            words += QStringLiteral(" (") + QString::fromStdString(correction.source) + QLatin1Char(')');
        }
        addLine(since, words);
    }
    if (!any) {
        addLine(tr("Correction"), tr("none known; readings are used as they are read"));
    }
    column_->addSpacing(space::kGroup);
    column_->addWidget(new RuledLine(Qt::Horizontal));
}

void InstrumentsPage::addWick() {
    column_->addSpacing(space::kGroup);
    addTitle(tr("Wick care"));
    const record::StationDate today = session_.today();
    const auto observations = session_.book().observationsOn(today - date::days{kLogDays}, today);
    const std::vector<WickCareLine> log =
        observations ? wickCareLog(*observations) : std::vector<WickCareLine>{};
    const auto changed = std::find_if(log.begin(), log.end(), [](const WickCareLine& line) {
        return line.care == record::WickCare::Changed;
    });
    if (changed == log.end()) {
        addLine(tr("Last new wick"),
                tr("none written down within a year; note it on the Observe page when you "
                   "put one on"));
    } else {
        const int days = static_cast<int>((today - changed->date).count());
        const QString ago = days == 0   ? tr("today")
                            : days == 1 ? tr("yesterday")
                                        : tr("%1 days ago").arg(days);
        QString words = longDateWords(QLocale(), changed->date) + QStringLiteral(", ") + ago;
        if (days >= kRemindAfterDays) {
            words += QStringLiteral(". ") + tr("Look whether it is yellow, frayed or beading.");
        }
        addLine(tr("Last new wick"), words);
    }
    int lines = 0;
    for (const WickCareLine& line : log) {
        if (++lines > kMostLines) {
            break;
        }
        QString words = careWords(line.care);
        if (!line.observer.empty()) {
            words += QStringLiteral(", ") + QString::fromStdString(line.observer);
        }
        if (!line.note.empty()) {
            words += QStringLiteral(": ") + QString::fromStdString(line.note);
        }
        addLine(longDateWords(QLocale(), line.date), words);
    }
}

} // namespace wickbook::ui
