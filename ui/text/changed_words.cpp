// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/changed_words.h"

#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QCoreApplication>

namespace wickbook::ui {

namespace {
struct ChangedText {
    Q_DECLARE_TR_FUNCTIONS(ChangedText)
};

QString countWords(const QLocale& locale, std::size_t count) {
    return locale.toString(static_cast<qulonglong>(count));
}
} // namespace

QString changedRegisterWords(const QLocale& locale, const desk::ChangedRegister& changed) {
    if (changed.readings == 0) {
        return ChangedText::tr("There is no reading yet that it could change.");
    }
    if (changed.rederived == 0) {
        return ChangedText::tr("None of the %1 readings would have another humidity or dew point.")
            .arg(countWords(locale, changed.readings));
    }
    std::size_t lost = 0;
    std::size_t gained = 0;
    for (const desk::ChangedMonth& month : changed.months) {
        lost += month.lost;
        gained += month.gained;
    }
    QString words =
        changed.months.size() == 1
            ? ChangedText::tr("Of %1 readings %2 would have another humidity or dew point, all in one month.")
                  .arg(countWords(locale, changed.readings), countWords(locale, changed.rederived))
            : ChangedText::tr("Of %1 readings %2 would have another humidity or dew point, in %3 months.")
                  .arg(countWords(locale, changed.readings), countWords(locale, changed.rederived),
                       countWords(locale, changed.months.size()));
    if (lost > 0) {
        words +=
            QLatin1Char(' ') + ChangedText::tr("%1 would lose their humidity.").arg(countWords(locale, lost));
    }
    if (gained > 0) {
        words += QLatin1Char(' ') + ChangedText::tr("%1 would gain one.").arg(countWords(locale, gained));
    }
    return words + QLatin1Char(' ') + ChangedText::tr("What was read stays as it is.");
}

ChangedMonthWords changedMonthWords(const QLocale& locale, const desk::ChangedMonth& month,
                                    units::TemperatureUnit unit) {
    const auto temperature = [&](std::optional<double> celsius) {
        return temperatureWords(
            locale, celsius ? std::optional{units::Temperature::fromCelsius(*celsius)} : std::nullopt, unit,
            2);
    };
    ChangedMonthWords words;
    words.month = monthWords(locale, month.month);
    words.readings = countWords(locale, month.rederived);
    words.humidityBefore = numberWords(locale, month.humidityBefore, 1);
    words.humidityAfter = numberWords(locale, month.humidityAfter, 1);
    words.dewPointBefore = temperature(month.dewPointBefore);
    words.dewPointAfter = temperature(month.dewPointAfter);
    words.largest = (month.largestChange > 0 ? QStringLiteral("+") : QString{}) +
                    numberWords(locale, month.largestChange, 1);
    return words;
}

} // namespace wickbook::ui
