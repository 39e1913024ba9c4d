// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/difference_words.h"

#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QCoreApplication>

#include <array>

namespace wickbook::ui {

namespace {

struct DifferenceText {
    Q_DECLARE_TR_FUNCTIONS(DifferenceText)
};

using store::DifferenceKind;

constexpr std::array kKinds{DifferenceKind::OnlyInFirst, DifferenceKind::OnlyInSecond,
                            DifferenceKind::LaterInFirst, DifferenceKind::LaterInSecond,
                            DifferenceKind::Diverged};

QString kindWords(DifferenceKind kind, const BookNames& names) {
    switch (kind) {
    case DifferenceKind::OnlyInFirst:
        return DifferenceText::tr("only in %1").arg(names.first);
    case DifferenceKind::OnlyInSecond:
        return DifferenceText::tr("only in %1").arg(names.second);
    case DifferenceKind::LaterInFirst:
        return DifferenceText::tr("revised later in %1").arg(names.first);
    case DifferenceKind::LaterInSecond:
        return DifferenceText::tr("revised later in %1").arg(names.second);
    case DifferenceKind::Diverged:
        return DifferenceText::tr("revised in each for itself");
    }
    return {};
}

QString factWords(const std::string& fact) {
    if (fact == "station") {
        return DifferenceText::tr("The station's name and rules");
    }
    if (fact == "period") {
        return DifferenceText::tr("A period of the station");
    }
    if (fact == "thermometer") {
        return DifferenceText::tr("A thermometer");
    }
    if (fact == "fitting") {
        return DifferenceText::tr("The thermometers in use");
    }
    if (fact == "correction") {
        return DifferenceText::tr("A thermometer's correction");
    }
    if (fact == "absence") {
        return DifferenceText::tr("An absence");
    }
    if (fact == "diary") {
        return DifferenceText::tr("A note in the diary");
    }
    if (fact == "pair_check") {
        return DifferenceText::tr("A check of the pair");
    }
    if (fact == "salt_check") {
        return DifferenceText::tr("A check over salts");
    }
    if (fact == "side_by_side") {
        return DifferenceText::tr("Another instrument beside the station's");
    }
    if (fact == "beside_reading") {
        return DifferenceText::tr("A reading of another instrument");
    }
    if (fact == "limit") {
        return DifferenceText::tr("A limit of the checks");
    }
    return DifferenceText::tr("Another entry (%1)").arg(QString::fromStdString(fact));
}

QString dayOf(const QLocale& locale, record::Instant instant, std::chrono::seconds offset) {
    const record::LocalTime local{instant.time_since_epoch() + offset};
    return locale.toString(toQDate(date::floor<date::days>(local)), DifferenceText::tr("d MMM yyyy"));
}

QString whenWords(const QLocale& locale, const record::Observation& values) {
    return values.hour ? hourAndDateWords(locale, *values.hour)
                       : DifferenceText::tr("%1, %2").arg(dayOf(locale, values.instant, values.offset),
                                                          clockWords(values.instant, values.offset));
}

/// How a reading stands: "16.0 / 14.1 °C", "missing", "withdrawn".
QString standingWords(const QLocale& locale, const record::Observation& values) {
    if (values.withdrawn) {
        return DifferenceText::tr("withdrawn");
    }
    if (!values.dry.given() && !values.wet.given()) {
        return DifferenceText::tr("missing");
    }
    QString pair =
        QStringLiteral("%1 / %2").arg(bulbWords(locale, values.dry), bulbWords(locale, values.wet));
    const auto& read = values.dry.value ? values.dry.value : values.wet.value;
    if (read) {
        pair += kNoBreakSpace + unitWords(read->unit);
    }
    return pair;
}

QString readingLine(const QLocale& locale, const store::ReadingDifference& line, const BookNames& names) {
    const auto& shown = line.first ? line.first : line.second;
    const QString when = whenWords(locale, shown->values);
    if (!line.first || !line.second) {
        return DifferenceText::tr("%1: %2, %3")
            .arg(when, standingWords(locale, shown->values), kindWords(line.kind, names));
    }
    const QString one = standingWords(locale, line.first->values);
    const QString other = standingWords(locale, line.second->values);
    if (one == other) { // a note, the weather, a judgement
        return DifferenceText::tr("%1: %2 in both, with other words or marks; %3")
            .arg(when, one, kindWords(line.kind, names));
    }
    return DifferenceText::tr("%1: %2 in %3, %4 in %5; %6")
        .arg(when, one, names.first, other, names.second, kindWords(line.kind, names));
}

QString factLine(const QLocale& locale, const store::FactDifference& line, const BookNames& names) {
    QString text = DifferenceText::tr("%1: %2").arg(factWords(line.fact), kindWords(line.kind, names));
    const bool second =
        line.kind == DifferenceKind::OnlyInSecond || line.kind == DifferenceKind::LaterInSecond;
    const auto& stamp = second ? line.second : line.first;
    if (stamp) {
        text +=
            DifferenceText::tr(", entered %1").arg(dayOf(locale, stamp->recordedAt, std::chrono::seconds{0}));
        if (!stamp->author.why.empty()) {
            text += QStringLiteral(" (%1)").arg(QString::fromStdString(stamp->author.why));
        }
    }
    return text;
}

} // namespace

QStringList differenceSentences(const QLocale& locale, const store::BookDifference& difference,
                                const BookNames& names) {
    QStringList sentences;
    const auto number = [&](std::int64_t count) { return locale.toString(static_cast<qlonglong>(count)); };
    if (!difference.related) {
        sentences << DifferenceText::tr("%1 and %2 have nothing in common: they are not copies of one book.")
                         .arg(names.first, names.second);
    }
    if (difference.none()) {
        sentences << DifferenceText::tr("%1 and %2 hold the same readings and the same facts.")
                         .arg(names.first, names.second);
    }
    for (const DifferenceKind kind : kKinds) {
        if (const auto count = difference.readingTotal(kind); count > 0) {
            sentences
                << (count == 1
                        ? DifferenceText::tr("1 reading: %1.").arg(kindWords(kind, names))
                        : DifferenceText::tr("%1 readings: %2.").arg(number(count), kindWords(kind, names)));
        }
    }
    for (const DifferenceKind kind : kKinds) {
        if (const auto count = difference.factTotal(kind); count > 0) {
            sentences << (count == 1
                              ? DifferenceText::tr("1 fact of the station: %1.").arg(kindWords(kind, names))
                              : DifferenceText::tr("%1 facts of the station: %2.")
                                    .arg(number(count), kindWords(kind, names)));
        }
    }
    return sentences;
}

QStringList differenceLines(const QLocale& locale, const store::BookDifference& difference,
                            const BookNames& names) {
    QStringList lines;
    for (const auto& line : difference.readings) {
        lines << readingLine(locale, line, names);
    }
    for (const auto& line : difference.facts) {
        lines << factLine(locale, line, names);
    }
    const std::int64_t more = difference.readingsInAll() + difference.factsInAll() - lines.size();
    if (more > 0) {
        lines << DifferenceText::tr("… and %1 more").arg(locale.toString(static_cast<qlonglong>(more)));
    }
    return lines;
}

} // namespace wickbook::ui
