// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/instruments_page.h"

#include "core/record/derived_reading.h"
#include "ui/instruments/check_sections.h"
#include "ui/instruments/thermometer_sections.h"
#include "ui/style/scrolled_column.h"
#include "ui/style/sheet.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/diary_words.h"
#include "ui/text/instrument_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

namespace {

/// The wick's log looked through: a year.
constexpr int kLogDays = 366;
/// Care shown in the summary; the rest is in the list below.
constexpr std::size_t kCareShown = 4;

QString careWords(desk::WickDeed deed) {
    switch (deed) {
    case desk::WickDeed::NewWick:
        return diaryKindWords(record::DiaryKind::NewWick);
    case desk::WickDeed::Wetted:
        return InstrumentsPage::tr("wetted");
    case desk::WickDeed::Water:
        return diaryKindWords(record::DiaryKind::Water);
    }
    return {};
}

} // namespace

QString lastWickWords(const QLocale& locale, const std::vector<desk::WickCareLine>& log,
                      record::StationDate today) {
    const auto last = desk::lastNewWick(log);
    if (!last) {
        return InstrumentsPage::tr(
            "none written down within a year. Note it with a reading, or under “Wick and water”.");
    }
    const int days = static_cast<int>((today - *last).count());
    const QString ago = days == 0   ? InstrumentsPage::tr("today")
                        : days == 1 ? InstrumentsPage::tr("yesterday")
                                    : InstrumentsPage::tr("%n days ago", nullptr, days);
    QString words = longDateWords(locale, *last) + QStringLiteral(", ") + ago;
    if (days >= desk::kWickDays) {
        words += QStringLiteral(". ") + InstrumentsPage::tr("Look whether it is yellow, frayed or beading.");
    }
    return words;
}

InstrumentsPage::InstrumentsPage(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    outer->setSpacing(space::kBetween);
    outer->addWidget(makeHeading(tr("Instruments")));
    const ScrolledColumn scrolled = makeScrolledColumn(tr("the instruments"), space::kGroup);
    setFocusProxy(scrolled.area); // the arrow keys turn the page as soon as it is open
    outer->addWidget(scrolled.area, 1);
    auto* summary = new QWidget;
    summary_ = new QVBoxLayout(summary);
    summary_->setContentsMargins(0, 0, 0, 0);
    summary_->setSpacing(space::kStep);
    scrolled.column->addWidget(summary);
    scrolled.column->addWidget(new RuledLine(Qt::Horizontal));
    scrolled.column->addWidget(new ThermometerSection(session));
    scrolled.column->addWidget(new FittingSection(session));
    scrolled.column->addWidget(new CorrectionSection(session));
    scrolled.column->addWidget(new CoefficientSection(session));
    scrolled.column->addWidget(new WickSection(session));
    scrolled.column->addWidget(new PairCheckSection(session));
    scrolled.column->addWidget(new SideBySideSection(session));
    scrolled.column->addWidget(new SaltCheckSection(session));
    scrolled.column->addStretch();
    connect(&session_, &Session::factsChanged, this, &InstrumentsPage::changed);
    connect(&session_, &Session::observationsChanged, this, &InstrumentsPage::changed);
}

void InstrumentsPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) {
        reload();
    }
}

void InstrumentsPage::changed() {
    stale_ = true;
    if (isVisible()) {
        reload();
    }
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
    summary_->addWidget(line);
}

void InstrumentsPage::reload() {
    stale_ = false;
    while (QLayoutItem* item = summary_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    addPair();
    addCoefficient();
    addWick();
}

void InstrumentsPage::addPair() {
    const record::StationRecord& station = session_.station();
    addBulb("dry", tr("Dry bulb now"), station.dryThermometerAt(session_.now()));
    addBulb("wet", tr("Wet bulb now"), station.wetThermometerAt(session_.now()));
}

void InstrumentsPage::addBulb(const char* bulb, const QString& title,
                              const record::Thermometer* thermometer) {
    QLabel* heading = makeLabel(title, TypeSize::Body, false);
    heading->setFont(typeFont(TypeSize::Body, true));
    heading->setProperty("bulb", QLatin1String(bulb));
    summary_->addWidget(heading);
    if (thermometer == nullptr) {
        addLine(tr("Thermometer"), tr("not written down; readings are used as they are read"));
        return;
    }
    const QLocale locale;
    QString words =
        QString::fromStdString(thermometer->name) + QStringLiteral(", ") + scaleWords(locale, *thermometer);
    if (!thermometer->liquid.empty()) {
        words += QStringLiteral(", ") + QString::fromStdString(thermometer->liquid);
    }
    addLine(tr("Thermometer"), words);
    const record::Correction* correction = session_.station().correctionAt(thermometer->id, session_.now());
    if (correction == nullptr) {
        addLine(tr("Correction"), tr("none known; readings are used as they are read"));
        return;
    }
    QString points = pointsWords(locale, *correction, thermometer->unit);
    if (!correction->source.empty()) {
        points += QStringLiteral(" (") + QString::fromStdString(correction->source) + QLatin1Char(')');
    }
    addLine(tr("Correction"), points);
}

void InstrumentsPage::addCoefficient() {
    const record::StationPeriod& period = session_.station().periodAt(session_.now());
    const QLocale locale;
    QString words = exposureWords(period.exposure);
    if (period.exposure == psychrometry::Exposure::Own && period.ownCoefficient) {
        words += QStringLiteral(", ") + ownCoefficientWords(locale, *period.ownCoefficient);
    } else {
        const psychrometry::ExposureEntry& entry = psychrometry::entryOf(period.exposure);
        words += tr(", coefficient %1 × 10⁻⁴ per degree ± %2 %, ice %3")
                     .arg(numberWords(locale, entry.waterCoefficient * 1e4, 2),
                          numberWords(locale, entry.relativeUncertainty * 100, 0),
                          numberWords(locale, entry.iceCoefficient * 1e4, 2));
    }
    summary_->addSpacing(space::kGroup);
    addLine(tr("Exposure"), words);
    addLine(
        tr("Pressure"),
        period.meanPressure
            ? tr("as read; else the station's mean, %1 hPa").arg(numberWords(locale, *period.meanPressure, 1))
            : tr("as read; else from the elevation"));
}

void InstrumentsPage::addWick() {
    const record::StationDate today = session_.today();
    auto log = desk::wickCare(session_.book(), session_.station(), today - date::days{kLogDays}, today)
                   .value_or(std::vector<desk::WickCareLine>{});
    std::reverse(log.begin(), log.end()); // the newest first
    const QLocale locale;
    addLine(tr("Last new wick"), lastWickWords(locale, log, today));
    for (std::size_t i = 0; i < log.size() && i < kCareShown; ++i) {
        QString words = careWords(log[i].deed);
        if (!log[i].observer.empty()) {
            words += QStringLiteral(", ") + QString::fromStdString(log[i].observer);
        }
        if (!log[i].note.empty()) {
            words += QStringLiteral(": ") + QString::fromStdString(log[i].note);
        }
        addLine(longDateWords(locale, log[i].date), words);
    }
}

} // namespace wickbook::ui
