// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/answer_panel.h"

#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QStringList>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

/// A large number with its unit and its ± on one baseline.
QHBoxLayout* answerRow(QLabel* number, QLabel* unit, QLabel* plusMinus) {
    number->setFont(typeFont(TypeSize::Answer, true));
    unit->setFont(typeFont(TypeSize::Entry));
    plusMinus->setFont(typeFont(TypeSize::Entry));
    auto* row = new QHBoxLayout;
    row->setSpacing(space::kGroup);
    const int drop = QFontMetrics(number->font()).descent() - QFontMetrics(unit->font()).descent();
    for (QLabel* small : {unit, plusMinus}) {
        small->setContentsMargins(0, 0, 0, drop);
        small->setAlignment(Qt::AlignBottom);
    }
    row->addWidget(number, 0, Qt::AlignBottom);
    row->addWidget(unit, 0, Qt::AlignBottom);
    row->addWidget(plusMinus, 0, Qt::AlignBottom);
    row->addStretch();
    return row;
}

/// 7.99e-4 as it stands in tables: "7.99 × 10⁻⁴".
QString coefficientWords(double perKelvin) {
    return numberWords(QLocale(), perKelvin * 1e4, 2) + QStringLiteral(" × 10⁻⁴");
}

} // namespace

QString smallerQuantities(const record::DerivedReading& reading, units::TemperatureUnit unit) {
    const QLocale locale;
    const psychrometry::Derivation& derived = *reading.derivation;
    QStringList parts;
    if (derived.frostPoint) {
        parts << AnswerPanel::tr("frost point %1 %2")
                     .arg(temperatureWords(locale, derived.frostPoint, unit), unitWords(unit));
    }
    if (derived.vapourPressure) {
        parts << AnswerPanel::tr("vapour pressure %1 hPa")
                     .arg(numberWords(locale, derived.vapourPressure->hectopascals(), 1));
    }
    parts << AnswerPanel::tr("depression %1 %2")
                 .arg(differenceWords(locale, derived.depression, unit), unitWords(unit));
    if (derived.vapourPressureDeficit) {
        parts << AnswerPanel::tr("deficit %1 hPa")
                     .arg(numberWords(locale, derived.vapourPressureDeficit->hectopascals(), 1));
    }
    // U+2060 keeps a unit on one line.
    if (derived.absoluteHumidity) {
        parts << AnswerPanel::tr("%1 g/\u2060m³").arg(numberWords(locale, derived.absoluteHumidity, 1));
    }
    if (derived.mixingRatio) {
        parts << AnswerPanel::tr("%1 g/\u2060kg").arg(numberWords(locale, derived.mixingRatio, 1));
    }
    return parts.join(QStringLiteral(" · "));
}

QString originOfAnswer(const record::DerivedReading& reading, const record::StationPeriod& period) {
    const QLocale locale;
    QString coefficient;
    if (reading.derivation && reading.derivation->coefficient) {
        coefficient = AnswerPanel::tr(", coefficient %1")
                          .arg(coefficientWords(reading.derivation->coefficient->perKelvin));
    }
    const QString pressure = numberWords(locale, reading.pressure.hectopascals(), 0);
    const QString from = reading.pressureSource == record::PressureSource::Read
                             ? AnswerPanel::tr("pressure %1 hPa as read").arg(pressure)
                         : reading.pressureSource == record::PressureSource::StationMean
                             ? AnswerPanel::tr("pressure %1 hPa, the station's mean").arg(pressure)
                             : AnswerPanel::tr("pressure %1 hPa worked out from %2 m")
                                   .arg(pressure, numberWords(locale, period.elevation.metres(), 0));
    return exposureWords(period.exposure) + coefficient + QStringLiteral(" · ") + from;
}

AnswerPanel::AnswerPanel(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kStep);
    auto* pair = new QHBoxLayout;
    pair->setSpacing(space::kEdge);
    const auto answer = [&](const QString& title, QLabel*& number, QLabel*& unit, QLabel*& plusMinus) {
        auto* half = new QVBoxLayout;
        half->setSpacing(0);
        half->addWidget(makeLabel(title));
        number = makeLabel({}, TypeSize::Answer, false);
        unit = makeLabel({});
        plusMinus = makeLabel({});
        half->addLayout(answerRow(number, unit, plusMinus));
        pair->addLayout(half, 1);
    };
    QLabel* percent = nullptr;
    answer(tr("Relative humidity"), humidity_, percent, humidityPlusMinus_);
    percent->setText(QLocale().percent());
    answer(tr("Dew point"), dewPoint_, dewPointUnit_, dewPointPlusMinus_);
    humidity_->setObjectName(QStringLiteral("humidityAnswer"));
    dewPoint_->setObjectName(QStringLiteral("dewPointAnswer"));
    column->addLayout(pair);

    smaller_ = makeLabel({});
    smaller_->setWordWrap(true);
    origin_ = makeLabel({});
    origin_->setWordWrap(true);
    working_ = new QPushButton(tr("Show the working"));
    working_->setProperty("quiet", true);
    working_->setFont(typeFont(TypeSize::Label));
    connect(working_, &QPushButton::clicked, this, &AnswerPanel::workingWanted);
    column->addWidget(smaller_);
    column->addWidget(origin_);
    column->addWidget(working_, 0, Qt::AlignRight);
    showNothing({});
}

void AnswerPanel::showReading(const record::DerivedReading& reading, const record::StationPeriod& period,
                              units::TemperatureUnit unit) {
    const QLocale locale;
    const psychrometry::Derivation& derived = *reading.derivation;
    dewPointUnit_->setText(unitWords(unit));
    if (derived.problem) {
        showNothing(psychrometryErrorWords(*derived.problem));
        working_->setEnabled(true);
        return;
    }
    humidity_->setText(numberWords(locale, reading.humidityPercent(), 0));
    dewPoint_->setText(temperatureWords(locale, derived.dewPoint, unit));
    QString humiditySure;
    QString dewPointSure;
    if (derived.uncertainty) {
        humiditySure = plusMinusWords(locale, derived.uncertainty->relativeHumidityU95, 0);
        if (derived.uncertainty->dewPointU95) {
            const auto half = units::TemperatureDifference::fromKelvins(*derived.uncertainty->dewPointU95);
            dewPointSure = plusMinusWords(
                locale, unit == units::TemperatureUnit::Celsius ? half.kelvins() : half.fahrenheitDegrees(),
                1);
        }
    }
    humidityPlusMinus_->setText(humiditySure);
    dewPointPlusMinus_->setText(dewPointSure);
    // The number with what it is of, so that whoever hears it needs no eye on the label above.
    humidity_->setAccessibleName(tr("Relative humidity %1 %2")
                                     .arg(percentWords(locale, reading.humidityPercent()), humiditySure)
                                     .trimmed());
    dewPoint_->setAccessibleName(
        tr("Dew point %1 %2 %3").arg(dewPoint_->text(), unitWords(unit), dewPointSure).trimmed());
    QString smaller = smallerQuantities(reading, unit);
    if (derived.dewPointProblem) {
        smaller = psychrometryErrorWords(*derived.dewPointProblem) + QLatin1Char('\n') + smaller;
    }
    smaller_->setText(smaller);
    origin_->setText(originOfAnswer(reading, period));
    working_->setEnabled(true);
}

void AnswerPanel::showNothing(const QString& sentence) {
    const QString dash = numberWords(QLocale(), std::nullopt, 0);
    humidity_->setText(dash);
    dewPoint_->setText(dash);
    humidityPlusMinus_->clear();
    dewPointPlusMinus_->clear();
    humidity_->setAccessibleName(tr("Relative humidity: none yet"));
    dewPoint_->setAccessibleName(tr("Dew point: none yet"));
    smaller_->setText(sentence);
    origin_->clear();
    working_->setEnabled(false);
}

} // namespace wickbook::ui
