// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/psychrometry/exposure.h"
#include "ui/print/month_figure.h"
#include "ui/print/month_return.h"
#include "ui/print/paper_text.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace wickbook::ui {

namespace {

QString degreesWords(const QLocale& locale, double degrees, const QString& positive,
                     const QString& negative) {
    return numberWords(locale, std::abs(degrees), 4) + QStringLiteral("° ") +
           (degrees < 0 ? negative : positive);
}

QString positionWords(const QLocale& locale, const record::Position& position) {
    return QStringLiteral("%1, %2").arg(
        degreesWords(locale, position.latitude, PaperText::tr("N"), PaperText::tr("S")),
        degreesWords(locale, position.longitude, PaperText::tr("E"), PaperText::tr("W")));
}

/// 7.99e-4 as "7.99 × 10⁻⁴ per K".
QString coefficientNumber(const QLocale& locale, double perKelvin) {
    return PaperText::tr("%1 × 10⁻⁴ per K").arg(numberWords(locale, perKelvin * 1e4, 2));
}

QString coefficientWords(const QLocale& locale, const record::StationPeriod& period) {
    const psychrometry::ExposureEntry& entry = psychrometry::entryOf(period.exposure);
    if (period.exposure == psychrometry::Exposure::Own) {
        if (!period.ownCoefficient) {
            return PaperText::tr("own, not stated");
        }
        QString text =
            PaperText::tr("water %1").arg(coefficientNumber(locale, period.ownCoefficient->waterPerKelvin));
        if (period.ownCoefficient->icePerKelvin) {
            text += PaperText::tr(", ice %1")
                        .arg(coefficientNumber(locale, *period.ownCoefficient->icePerKelvin));
        }
        return text + PaperText::tr("; fitted at this station");
    }
    //: %1 and %2 are coefficients, %3 where they come from
    return PaperText::tr("water %1, ice %2; %3")
        .arg(coefficientNumber(locale, entry.waterCoefficient),
             coefficientNumber(locale, entry.iceCoefficient),
             QString::fromUtf8(entry.source.data(), static_cast<qsizetype>(entry.source.size())));
}

QString hoursWords(const record::StationPeriod& period) {
    QStringList hours;
    for (const record::HourOfDay hour : period.hours) {
        hours << hourWords(hour);
    }
    return QStringLiteral("%1; %2").arg(hours.join(QStringLiteral(", ")), hourRuleWords(period.hourRule));
}

QString thermometerWords(const QLocale& locale, const record::StationRecord& station,
                         const record::Thermometer* thermometer, record::Instant at) {
    if (thermometer == nullptr) {
        return PaperText::tr("none on record");
    }
    QStringList parts;
    if (!thermometer->name.empty()) {
        parts << QString::fromStdString(thermometer->name);
    }
    if (!thermometer->liquid.empty()) {
        parts << QString::fromStdString(thermometer->liquid);
    }
    parts << PaperText::tr("read to %1 %2")
                 .arg(readWords(locale, thermometer->step), unitWords(thermometer->unit));
    if (const record::Correction* correction = station.correctionAt(thermometer->id, at)) {
        parts << PaperText::tr("corrected (%1)").arg(QString::fromStdString(correction->source));
    } else {
        parts << PaperText::tr("no correction on record");
    }
    return parts.join(QStringLiteral(", "));
}

QString pressureWords(const report::MonthReport& report) {
    std::map<record::PressureSource, int> counts;
    for (const checks::CheckedReading& checked : report.readings) {
        if (checked.reading.derivation) {
            ++counts[checked.reading.pressureSource];
        }
    }
    QStringList parts;
    for (const auto& [source, count] : counts) {
        //: %1 "read" or "from elevation", %2 how many readings
        parts << PaperText::tr("%1 (%2 readings)").arg(pressureSourceWords(source), QString::number(count));
    }
    return parts.isEmpty() ? numberWords({}, std::nullopt, 0) : parts.join(QStringLiteral(", "));
}

} // namespace

std::vector<FactLines> stationBlocks(const report::MonthReport& report, const QLocale& locale) {
    const record::StationRecord& station = report.station;
    const record::Instant begin = startOf(station, record::StationDate{report.month / 1});
    const record::Instant end =
        startOf(station, record::StationDate{report.month / date::last} + date::days{1});
    std::vector<FactLines> blocks;
    for (const record::StationPeriod& period : station.periods()) {
        if ((period.to && *period.to <= begin) || (period.from && *period.from >= end)) {
            continue;
        }
        const record::Instant at = period.from ? std::max(begin, *period.from) : begin;
        FactLines lines;
        lines.emplace_back(PaperText::tr("station"), stationHeading(station));
        if (period.from && *period.from > begin) {
            lines.emplace_back(
                PaperText::tr("valid from"),
                longDateWords(locale, date::floor<date::days>(period.zone.localAt(*period.from))));
        }
        lines.emplace_back(PaperText::tr("position"), positionWords(locale, period.position));
        lines.emplace_back(
            PaperText::tr("elevation"),
            PaperText::tr("%1 m above sea level").arg(numberWords(locale, period.elevation.metres(), 1)));
        lines.emplace_back(PaperText::tr("time zone"), QString::fromStdString(period.zone.name()));
        lines.emplace_back(PaperText::tr("observing hours"), hoursWords(period));
        lines.emplace_back(PaperText::tr("exposure"), exposureWords(period.exposure));
        lines.emplace_back(PaperText::tr("psychrometer coefficient"), coefficientWords(locale, period));
        lines.emplace_back(PaperText::tr("pressure"), pressureWords(report));
        lines.emplace_back(PaperText::tr("dry thermometer"),
                           thermometerWords(locale, station, station.dryThermometerAt(at), at));
        lines.emplace_back(PaperText::tr("wet thermometer"),
                           thermometerWords(locale, station, station.wetThermometerAt(at), at));
        if (!period.surroundings.empty()) {
            lines.emplace_back(PaperText::tr("surroundings"), QString::fromStdString(period.surroundings));
        }
        blocks.push_back(std::move(lines));
    }
    return blocks;
}

QString stationLine(const report::MonthReport& report, const QLocale& locale) {
    const record::StationPeriod& period =
        report.station.periodAt(startOf(report.station, record::StationDate{report.month / 15}));
    const record::Thermometer* dry =
        report.station.dryThermometerAt(startOf(report.station, record::StationDate{report.month / 15}));
    QStringList parts{
        stationHeading(report.station), positionWords(locale, period.position),
        PaperText::tr("%1 m above sea level").arg(numberWords(locale, period.elevation.metres(), 0)),
        exposureWords(period.exposure), hoursWords(period)};
    if (dry != nullptr) {
        parts << PaperText::tr("read to %1 %2").arg(readWords(locale, dry->step), unitWords(dry->unit));
    }
    return parts.join(QStringLiteral(" · "));
}

QStringList methodSentences(const report::MonthReport& report, const QLocale& locale) {
    QStringList sentences;
    sentences << PaperText::tr(
        "T and Tw are given as read; corrections on record are applied before anything is worked "
        "out. Vapour pressure follows from the psychrometer equation with the coefficient above, "
        "saturation from Sonntag's formulae; relative humidity is always over liquid water, also "
        "below freezing.");
    sentences << PaperText::tr(
                     "Means are of observing hours, each hour weighted equally; they are not means over 24 "
                     "hours. A mean is not given where %1 or more days are missing, or %2 or more in a row.")
                     .arg(QString::number(report.options.completeness.daysMissing),
                          QString::number(report.options.completeness.daysInARow));
    sentences << PaperText::tr(
        "Set aside: readings judged doubtful or erroneous, readings marked so and not yet judged, "
        "and estimates. They stand above as read and stay out of means and extremes.");
    if (report.typicalHumidityU95) {
        const QString degrees = unitWords(unitOf(report));
        QString sentence = PaperText::tr("How sure: a single relative humidity is good to %1 %")
                               .arg(plusMinusWords(locale, report.typicalHumidityU95, 0));
        if (report.typicalDewPointU95) {
            const double factor = unitOf(report) == units::TemperatureUnit::Celsius ? 1.0 : 1.8;
            sentence += PaperText::tr(", a dew point to %1 %2")
                            .arg(plusMinusWords(locale, *report.typicalDewPointU95 * factor, 1), degrees);
        }
        sentences << sentence + PaperText::tr(" (k = 2, the month's median).");
    }
    return sentences;
}

} // namespace wickbook::ui
