// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/instrument_words.h"

#include "ui/text/number_words.h"

#include <QCoreApplication>

#include <cmath>

namespace wickbook::ui {

namespace {

struct InstrumentText {
    Q_DECLARE_TR_FUNCTIONS(InstrumentText)
};

QString signedWords(const QLocale& locale, double value, int decimals) {
    const QString words = numberWords(locale, value, decimals);
    return value > 0 ? QStringLiteral("+") + words : words;
}

QString kelvins(const QLocale& locale, double value) {
    return InstrumentText::tr("%1 °C").arg(signedWords(locale, value, 2));
}

/// "+0.31 ± 0.08": the 95 % interval's half width.
QString estimateWords(const QLocale& locale, const comparison::Estimate& estimate, int decimals) {
    return QStringLiteral("%1 ± %2").arg(
        signedWords(locale, estimate.value, decimals),
        numberWords(locale, (estimate.upper95 - estimate.lower95) / 2, decimals));
}

QString count(const QLocale& locale, std::size_t n) {
    return locale.toString(static_cast<qulonglong>(n));
}

QString perDegree(const QLocale& locale, double perKelvin) {
    return numberWords(locale, perKelvin * 1e4, 2);
}

QString lineWords(const QLocale& locale, const comparison::LineFit& fit, const QString& each) {
    return fit.slope.includes(0) ? InstrumentText::tr("%1: no trend to be seen (%2).")
                                       .arg(each, estimateWords(locale, fit.slope, 2))
                                 : InstrumentText::tr("%1: %2, which is more than chance.")
                                       .arg(each, estimateWords(locale, fit.slope, 2));
}

} // namespace

QString scaleWords(const QLocale& locale, const record::Thermometer& thermometer) {
    return InstrumentText::tr("%1 to %2 %3, read to %4")
        .arg(readWords(locale, thermometer.lowestMark), readWords(locale, thermometer.highestMark),
             unitWords(thermometer.unit), readWords(locale, thermometer.step));
}

QString pointsWords(const QLocale& locale, const record::Correction& correction,
                    units::TemperatureUnit unit) {
    QStringList points;
    for (const record::CorrectionPoint& point : correction.points) {
        points << InstrumentText::tr("at %1 add %2")
                      .arg(numberWords(locale, point.reading, 1), numberWords(locale, point.correction, 2));
    }
    return points.join(QStringLiteral("; ")) + QLatin1Char(' ') + unitWords(unit);
}

QString ownCoefficientWords(const QLocale& locale, const record::OwnCoefficient& own) {
    QString words = InstrumentText::tr("%1 × 10⁻⁴ per degree").arg(perDegree(locale, own.waterPerKelvin));
    if (own.relativeUncertainty) {
        words += InstrumentText::tr(" ± %1 %").arg(numberWords(locale, *own.relativeUncertainty * 100, 1));
    }
    if (own.icePerKelvin) {
        words += InstrumentText::tr(", ice %1").arg(perDegree(locale, *own.icePerKelvin));
    }
    return words;
}

QString besidePurposeWords(record::BesidePurpose purpose) {
    return purpose == record::BesidePurpose::Reference ? InstrumentText::tr("a reference to compare with")
                                                       : InstrumentText::tr("what will follow the station's");
}

QString besideLackWords(desk::BesideLack lack) {
    switch (lack) {
    case desk::BesideLack::NoOwnReading:
        return InstrumentText::tr("the register has no reading within five minutes");
    case desk::BesideLack::NoHumidity:
        return InstrumentText::tr("the station's own reading gives no humidity");
    case desk::BesideLack::NoReference:
        return InstrumentText::tr("the other instrument's humidity is missing");
    }
    return {};
}

QStringList pairVerdictWords(const QLocale& locale, const comparison::PairVerdict& verdict) {
    if (!verdict.anything()) {
        return {InstrumentText::tr("Nothing has been read yet.")};
    }
    QStringList lines;
    const QString tolerance = numberWords(locale, verdict.tolerance, 1);
    lines << (verdict.differs()
                  ? InstrumentText::tr("The two differ by more than %1 °C.").arg(tolerance)
                  : InstrumentText::tr("They are a pair: no difference above %1 °C.").arg(tolerance));
    const auto ice = [&](const QString& which, const std::optional<comparison::IcePoint>& point) {
        if (point) {
            lines << InstrumentText::tr("%1 at the ice point: %2 off ± %3.")
                         .arg(which, kelvins(locale, point->off),
                              numberWords(locale, 2 * point->standardUncertainty, 2));
        }
    };
    ice(InstrumentText::tr("Dry"), verdict.dryAtIce);
    ice(InstrumentText::tr("Wet"), verdict.wetAtIce);
    const auto difference = [&](const QString& where,
                                const std::optional<comparison::PairDifference>& found) {
        if (found) {
            lines << InstrumentText::tr("%1: dry is %2 against wet ± %3.")
                         .arg(where, kelvins(locale, found->value),
                              numberWords(locale, found->expandedUncertainty, 2));
        }
    };
    difference(InstrumentText::tr("In the bath, as read"), verdict.inBath);
    difference(InstrumentText::tr("In the bath, both corrected by the ice point"), verdict.inBathCorrected);
    if (verdict.inBath && !verdict.atIce) {
        lines << InstrumentText::tr("A difference does not say which of them errs; the ice point does.");
    }
    return lines;
}

QStringList saltVerdictWords(const QLocale& locale, const comparison::SaltVerdict& verdict) {
    if (verdict.points.empty()) {
        return {InstrumentText::tr("Nothing has been read yet.")};
    }
    QStringList lines;
    lines << (verdict.off() == 0
                  ? InstrumentText::tr("The sensor agrees with every solution within ± 2 %.")
                  : InstrumentText::tr("%1 of %2 solutions are read more than 2 % off.")
                        .arg(count(locale, verdict.off()), count(locale, verdict.points.size())));
    for (const comparison::SaltResult& point : verdict.points) {
        lines << InstrumentText::tr("%1: published %2 %, read %3 %, %4")
                     .arg(QString::fromUtf8(
                              record::saltName(point.reading.salt).data(),
                              static_cast<qsizetype>(record::saltName(point.reading.salt).size())),
                          numberWords(locale, point.published, 0), readWords(locale, point.reading.humidity),
                          signedWords(locale, point.off, 1));
    }
    if (!verdict.temperatureFits) {
        lines << InstrumentText::tr(
            "The published values are of 25 °C; at this temperature they do not hold.");
    }
    if (verdict.points.size() < 2) {
        lines << InstrumentText::tr("One solution says nothing of the rest of the range.");
    }
    return lines;
}

QStringList besideReferenceWords(const QLocale& locale, const comparison::BesideReference& spread) {
    QStringList lines;
    if (!spread.bias || !spread.deviation) {
        return {InstrumentText::tr(
            "Fewer than two readings stand beside one of the station's: nothing can be said yet.")};
    }
    lines << InstrumentText::tr(
                 "The station reads %1 % RH against the reference (95 %), over %2 readings; one "
                 "difference scatters by %3.")
                 .arg(estimateWords(locale, *spread.bias, 1), count(locale, spread.differences.size()),
                      numberWords(locale, *spread.deviation, 1));
    for (const comparison::BandSpread& band : spread.bands) {
        if (band.n == 0 || !band.bias) {
            continue;
        }
        QString line = InstrumentText::tr("%1 to %2 %: %3, n %4")
                           .arg(numberWords(locale, band.from, 0), numberWords(locale, band.to, 0),
                                signedWords(locale, *band.bias, 1), count(locale, band.n));
        if (band.deviation) {
            line += InstrumentText::tr(", scatter %1").arg(numberWords(locale, *band.deviation, 1));
        }
        lines << line;
    }
    if (spread.onDepression) {
        lines << lineWords(locale, *spread.onDepression,
                           InstrumentText::tr("% RH for each degree of depression"));
    }
    if (spread.onWind) {
        lines << lineWords(locale, *spread.onWind, InstrumentText::tr("% RH for each step of wind"));
    }
    if (spread.withoutHumidity > 0) {
        lines << InstrumentText::tr("%1 readings gave no humidity and take no part.")
                     .arg(count(locale, spread.withoutHumidity));
    }
    return lines;
}

QString thinEvidenceWords(comparison::ThinEvidence reason, const comparison::FittedCoefficient& fitted) {
    const QLocale locale;
    switch (reason) {
    case comparison::ThinEvidence::TooFew:
        return InstrumentText::tr("%1 pairs with a depression of 3 °C or more, and 30 are needed")
            .arg(count(locale, fitted.given - fitted.smallDepression));
    case comparison::ThinEvidence::DepressionsSmall:
        return InstrumentText::tr(
                   "%1 of %2 pairs have a depression under 3 °C, where the coefficient hardly shows")
            .arg(count(locale, fitted.smallDepression), count(locale, fitted.given));
    case comparison::ThinEvidence::NarrowRange:
        return InstrumentText::tr("the depressions lie between %1 and %2 °C, and they must span 3 °C")
            .arg(numberWords(locale, fitted.leastDepression, 1),
                 numberWords(locale, fitted.largestDepression, 1));
    case comparison::ThinEvidence::NotACoefficient:
        return InstrumentText::tr("no psychrometer has such a coefficient: look at units, wick and times");
    }
    return {};
}

QStringList fittedCoefficientWords(const QLocale& locale, const comparison::FittedCoefficient& fitted) {
    if (fitted.given == 0) {
        return {};
    }
    const QString surface =
        fitted.bulb == psychrometry::Surface::Water ? InstrumentText::tr("Water") : InstrumentText::tr("Ice");
    QStringList lines;
    if (fitted.fit) {
        lines << InstrumentText::tr(
                     "%1: coefficient %2 × 10⁻⁴ per degree, standard error %3, 95 % from %4 to %5, "
                     "%6 pairs, depressions %7 to %8 °C.")
                     .arg(surface, perDegree(locale, fitted.fit->slope.value),
                          perDegree(locale, fitted.fit->slope.standardError),
                          perDegree(locale, fitted.fit->slope.lower95),
                          perDegree(locale, fitted.fit->slope.upper95), count(locale, fitted.fit->n),
                          numberWords(locale, fitted.leastDepression, 1),
                          numberWords(locale, fitted.largestDepression, 1));
        if (fitted.usable()) {
            lines << InstrumentText::tr("The evidence is enough to use it, with ± %1 % (standard).")
                         .arg(numberWords(locale, fitted.relativeUncertainty * 100, 1));
        }
    }
    if (!fitted.usable()) {
        QStringList reasons;
        for (const comparison::ThinEvidence reason : fitted.refused) {
            reasons << thinEvidenceWords(reason, fitted);
        }
        lines << InstrumentText::tr("%1: not enough to use it: %2.")
                     .arg(surface, reasons.join(QStringLiteral("; ")));
    }
    if (fitted.residualOnDepression && fitted.usable()) {
        lines << lineWords(locale, *fitted.residualOnDepression,
                           InstrumentText::tr("What is left over, hPa for each degree of depression"));
    }
    if (fitted.residualOnWind && fitted.usable()) {
        lines << lineWords(locale, *fitted.residualOnWind,
                           InstrumentText::tr("What is left over, hPa for each step of wind"));
    }
    return lines;
}

QStringList overlapWords(const QLocale& locale, const comparison::Overlap& overlap) {
    QStringList lines;
    switch (overlap.verdict) {
    case comparison::JoinVerdict::TooFew:
        lines << InstrumentText::tr(
                     "%1 common readings: with fewer than 30 nothing is decided. Go on side by side.")
                     .arg(count(locale, overlap.n));
        break;
    case comparison::JoinVerdict::Alike:
        lines << InstrumentText::tr(
            "The two agree within 0.2 °C and 3 % RH: the records may be joined as they are.");
        break;
    case comparison::JoinVerdict::Differs:
        lines << InstrumentText::tr(
            "The two differ: the record breaks here, and averages must not be pooled across it.");
        break;
    case comparison::JoinVerdict::Undecided:
        lines << InstrumentText::tr("The readings do not decide it yet. Go on side by side.");
        break;
    }
    const auto line = [&](const QString& what, const std::optional<comparison::Estimate>& estimate,
                          const QString& unit, int decimals) {
        if (estimate) {
            lines << InstrumentText::tr("%1, new against old: %2 %3 (95 %)")
                         .arg(what, estimateWords(locale, *estimate, decimals), unit);
        }
    };
    line(InstrumentText::tr("Dry bulb"), overlap.dry, QStringLiteral("°C"), 2);
    line(InstrumentText::tr("Wet bulb"), overlap.wet, QStringLiteral("°C"), 2);
    line(InstrumentText::tr("Relative humidity"), overlap.humidity, QStringLiteral("%"), 1);
    line(InstrumentText::tr("Dew point"), overlap.dewPoint, QStringLiteral("°C"), 2);
    if (overlap.n > 0) {
        lines << InstrumentText::tr("%1 common readings in %2 of the 12 months.")
                     .arg(count(locale, overlap.n), count(locale, overlap.months));
        if (!overlap.showsAllSeasons()) {
            lines << InstrumentText::tr("A season that was not seen may differ: a whole year is better.");
        }
    }
    return lines;
}

} // namespace wickbook::ui
