// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/class_words.h"

#include "ui/text/number_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace wickbook::ui {

namespace {

struct ClassText {
    Q_DECLARE_TR_FUNCTIONS(ClassText)
};

QString offWords(const QLocale& locale, double kelvins, units::TemperatureUnit unit, const QString& above,
                 const QString& below) {
    const QString size =
        differenceWords(locale, units::TemperatureDifference::fromKelvins(std::abs(kelvins)), unit);
    return (kelvins > 0 ? above : below).arg(size, unitWords(unit));
}

} // namespace

QString roundCauseWords(comparison::RoundCause cause) {
    using comparison::RoundCause;
    switch (cause) {
    case RoundCause::Swapped:
        return ClassText::tr(
            "Dry and wet were probably written in each other's place: look again which is which.");
    case RoundCause::FahrenheitForCelsius:
        return ClassText::tr("Both were probably read on the °F scale: read the other side of the stem.");
    case RoundCause::DryTenOff:
        return ClassText::tr("The dry bulb was probably misread by ten: read it again, tenths first.");
    case RoundCause::WetTenOff:
        return ClassText::tr("The wet bulb was probably misread by ten: read it again, tenths first.");
    case RoundCause::DryFiveOff:
        return ClassText::tr(
            "The dry bulb was probably misread by five: count the lines from the nearest figure.");
    case RoundCause::WetFiveOff:
        return ClassText::tr(
            "The wet bulb was probably misread by five: count the lines from the nearest figure.");
    case RoundCause::DryPointMoved:
        return ClassText::tr("The decimal point of the dry bulb probably moved: look at what was written.");
    case RoundCause::WetPointMoved:
        return ClassText::tr("The decimal point of the wet bulb probably moved: look at what was written.");
    case RoundCause::DryWick:
        return ClassText::tr(
            "The wick was probably dry, or the reading came too early: wet the wick, go on until "
            "it falls no further, and read again.");
    case RoundCause::WarmAir:
        return ClassText::tr(
            "The air round this pair was probably warmer: keep it in the shade and away from "
            "people, and read again.");
    case RoundCause::WickStateDiffers:
        return ClassText::tr("Water or ice was given otherwise than by most: touch the wick and see.");
    }
    return {};
}

QString pupilWords(const QLocale& locale, const comparison::PupilResult& pupil, units::TemperatureUnit unit) {
    if (!pupil.farOff) {
        return {};
    }
    QStringList parts;
    // Only the bulb that makes it far off is worth a number; the nearer one is left out.
    const double dry = pupil.dryOff.value_or(0);
    const double wet = pupil.wetOff.value_or(0);
    const bool dryLeads = std::abs(dry) >= std::abs(wet);
    const bool both = std::abs(dry) > 0.5 * std::abs(wet) && std::abs(wet) > 0.5 * std::abs(dry);
    if (dryLeads || both) {
        parts << offWords(locale, dry, unit, ClassText::tr("Dry bulb %1 %2 above the middle."),
                          ClassText::tr("Dry bulb %1 %2 below the middle."));
    }
    if (!dryLeads || both) {
        parts << offWords(locale, wet, unit, ClassText::tr("Wet bulb %1 %2 above the middle."),
                          ClassText::tr("Wet bulb %1 %2 below the middle."));
    }
    parts << (pupil.cause ? roundCauseWords(*pupil.cause)
                          : ClassText::tr("Read both again, wet bulb first."));
    return parts.join(QLatin1Char(' '));
}

QString roundWords(const QLocale& locale, const comparison::ClassRound& round) {
    const auto& humidity = round.relativeHumidity;
    if (!humidity) {
        return ClassText::tr("No pair gives a humidity yet.");
    }
    QStringList parts;
    const int pairs = static_cast<int>(humidity->n);
    parts << (pairs == 1 ? ClassText::tr("1 pair.") : ClassText::tr("%n pairs.", nullptr, pairs));
    parts << ClassText::tr("The middle value is %1.").arg(percentWords(locale, humidity->median));
    if (pairs > 1) {
        parts << ClassText::tr("Half of them lie between %1 and %2, all between %3 and %4.")
                     .arg(percentWords(locale, humidity->lowerQuartile),
                          percentWords(locale, humidity->upperQuartile),
                          percentWords(locale, humidity->lowest), percentWords(locale, humidity->highest));
    }
    if (round.tooFewToJudge) {
        parts << ClassText::tr("With fewer than %1 pairs nobody is called far off.")
                     .arg(locale.toString(static_cast<int>(comparison::kFewestPairs)));
        return parts.join(QLatin1Char(' '));
    }
    QStringList far;
    for (const comparison::PupilResult& pupil : round.pupils) {
        if (pupil.farOff) {
            far << locale.toString(pupil.pair.number);
        }
    }
    parts << (far.isEmpty() ? ClassText::tr("Nobody is far off.")
                            : ClassText::tr("Far off: %1.").arg(far.join(QStringLiteral(", "))));
    return parts.join(QLatin1Char(' '));
}

} // namespace wickbook::ui
