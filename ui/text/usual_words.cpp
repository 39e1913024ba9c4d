// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/usual_words.h"

#include "ui/text/number_words.h"

#include <QCoreApplication>

#include <cmath>

namespace wickbook::ui {

namespace {

struct UsualText {
    Q_DECLARE_TR_FUNCTIONS(UsualText)
};

bool isBelow(report::Standing standing) {
    return standing == report::Standing::Below || standing == report::Standing::Lowest;
}

bool isAbove(report::Standing standing) {
    return standing == report::Standing::Above || standing == report::Standing::Highest;
}

QString celsiusWords(const QLocale& locale, double celsius, units::TemperatureUnit unit) {
    return temperatureWords(locale, units::Temperature::fromCelsius(celsius), unit) + kNoBreakSpace +
           unitWords(unit);
}

QString averageName(const report::Usual& usual) {
    //: %1 number of years
    return usual.isNormal ? UsualText::tr("normal of %1 years").arg(QString::number(usual.years))
                          : UsualText::tr("average of %1 other years").arg(QString::number(usual.years));
}

QString humiditySentence(const QLocale& locale, double mean, const report::Usual& usual) {
    const QString average = percentWords(locale, usual.average);
    const QString month = averageName(usual);
    switch (report::standingOf(mean, usual)) {
    case report::Standing::AsUsual:
        //: %1 "average of 12 other years", %2 a humidity
        return UsualText::tr("That is about as usual at this station (%1: %2).").arg(month, average);
    case report::Standing::Below:
        return UsualText::tr("It was drier than usual at this station (%1: %2).").arg(month, average);
    case report::Standing::Above:
        return UsualText::tr("It was moister than usual at this station (%1: %2).").arg(month, average);
    case report::Standing::Lowest:
        //: %1 and %2 as above, %3 a year, %4 its humidity
        return UsualText::tr("It was the driest such month of this station's record (%1: %2; until now %3 "
                             "with %4).")
            .arg(month, average, QString::number(static_cast<int>(usual.lowestYear)),
                 percentWords(locale, usual.lowest));
    case report::Standing::Highest:
        return UsualText::tr("It was the moistest such month of this station's record (%1: %2; until now "
                             "%3 with %4).")
            .arg(month, average, QString::number(static_cast<int>(usual.highestYear)),
                 percentWords(locale, usual.highest));
    }
    return {};
}

/// Relative humidity follows the warmth as much as the moisture: where the two point apart, both are told.
QString dewPointSentence(const QLocale& locale, double mean, const report::Usual& usual,
                         units::TemperatureUnit unit, report::Standing humidity) {
    const report::Standing standing = report::standingOf(mean, usual);
    const QString average = celsiusWords(locale, usual.average, unit);
    if (isAbove(standing) && !isAbove(humidity)) {
        return UsualText::tr("The air held more vapour than usual: the dew point's average is %1.")
            .arg(average);
    }
    if (isBelow(standing) && !isBelow(humidity)) {
        return UsualText::tr("The air held less vapour than usual: the dew point's average is %1.")
            .arg(average);
    }
    return {};
}

/// "+3", "−1.2", "0".
QString departureWords(const QLocale& locale, double departure, int decimals) {
    const QString number = numberWords(locale, departure, decimals);
    const double rounded = std::round(departure * std::pow(10, decimals));
    return rounded > 0 ? QLatin1Char('+') + number : number;
}

} // namespace

QString usualSentences(const QLocale& locale, const report::MonthReport& report,
                       units::TemperatureUnit unit) {
    const climate::HourSummary& all = report.summary.all;
    if (!report.ownYears || !all.meanHumidity || report.summary.hoursToCome > 0) {
        return {};
    }
    const auto humidity = report.ownYears->humidity();
    if (!humidity) {
        return {};
    }
    QStringList sentences{humiditySentence(locale, *all.meanHumidity, *humidity)};
    const auto dewPoint = report.ownYears->dewPoint();
    if (dewPoint && all.meanDewPoint) {
        sentences << dewPointSentence(locale, *all.meanDewPoint, *dewPoint, unit,
                                      report::standingOf(*all.meanHumidity, *humidity));
    }
    sentences.removeAll(QString{});
    return sentences.join(QLatin1Char(' '));
}

QStringList departureSentences(const QLocale& locale, const report::MonthReport& report,
                               units::TemperatureUnit unit) {
    if (!report.ownYears) {
        return {};
    }
    const climate::HourSummary& all = report.summary.all;
    const auto humidity = report.ownYears->humidity();
    if (!humidity) {
        int withMean = 0;
        for (const report::YearOfMonth& year : report.ownYears->years) {
            withMean += year.meanHumidity ? 1 : 0;
        }
        return {
            UsualText::tr("No station average of this month yet: it takes %1 other years with a mean, at the "
                          "same place and hours, and there are %2.")
                .arg(QString::number(report::kFewestYearsForAverage), QString::number(withMean))};
    }
    const auto dewPoint = report.ownYears->dewPoint();
    const auto vapour = report.ownYears->vapourPressure();
    const bool celsius = unit == units::TemperatureUnit::Celsius;
    QStringList usual{UsualText::tr("RH %1").arg(percentWords(locale, humidity->average))};
    QStringList departures;
    if (all.meanHumidity) {
        departures << departureWords(locale, *all.meanHumidity - humidity->average, 0) + kNoBreakSpace +
                          locale.percent();
    }
    if (dewPoint) {
        usual << UsualText::tr("dew point %1").arg(celsiusWords(locale, dewPoint->average, unit));
        if (all.meanDewPoint) {
            const double kelvins = *all.meanDewPoint - dewPoint->average;
            departures << departureWords(locale, celsius ? kelvins : kelvins * 1.8, 1) + kNoBreakSpace +
                              unitWords(unit);
        }
    }
    if (vapour) {
        usual << UsualText::tr("vapour pressure %1 hPa").arg(numberWords(locale, vapour->average, 1));
        if (all.meanVapourPressure) {
            departures << UsualText::tr("%1 hPa").arg(
                departureWords(locale, *all.meanVapourPressure - vapour->average, 1));
        }
    }
    //: %1 "average of 12 other years", %2 its numbers
    QStringList sentences{UsualText::tr("This month here, %1: %2.")
                              .arg(averageName(*humidity), usual.join(QStringLiteral(", ")))};
    if (!departures.isEmpty()) {
        sentences << UsualText::tr("Departure: %1.").arg(departures.join(QStringLiteral(", ")));
    }
    return sentences;
}

} // namespace wickbook::ui
