// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/comparison/pair_in_bath.h"
#include "core/comparison/salt_points.h"
#include "core/desk/beside_register.h"

#include <QLocale>
#include <QString>
#include <QStringList>

/// What the instruments and their checks are and say, in words: for the window and the command line.

namespace wickbook::ui {

/// "−5 °C to 50 °C, read to 0.1": unit once.
QString scaleWords(const QLocale& locale, const record::Thermometer& thermometer);
/// "at 0.0 add −0.10; at 20.0 add 0.15 °C".
QString pointsWords(const QLocale& locale, const record::Correction& correction, units::TemperatureUnit unit);
/// "7.31 × 10⁻⁴ per degree ± 3 %, ice 6.55".
QString ownCoefficientWords(const QLocale& locale, const record::OwnCoefficient& own);

QString besidePurposeWords(record::BesidePurpose purpose);
QString besideLackWords(desk::BesideLack lack);

/// Sentences, each a line; the first is the judgement.
QStringList pairVerdictWords(const QLocale& locale, const comparison::PairVerdict& verdict);
QStringList saltVerdictWords(const QLocale& locale, const comparison::SaltVerdict& verdict);
/// Bias and spread, then the bands that hold anything, then residuals against depression and wind.
QStringList besideReferenceWords(const QLocale& locale, const comparison::BesideReference& spread);
/// The coefficient over one surface, and whether the evidence is enough. Empty where there is no pair over
/// it.
QStringList fittedCoefficientWords(const QLocale& locale, const comparison::FittedCoefficient& fitted);
QString thinEvidenceWords(comparison::ThinEvidence reason, const comparison::FittedCoefficient& fitted);
QStringList overlapWords(const QLocale& locale, const comparison::Overlap& overlap);

} // namespace wickbook::ui
