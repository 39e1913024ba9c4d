// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/month_paragraph.h"

#include "core/report/month_facts.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"
#include "ui/text/usual_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace wickbook::ui {

namespace {

struct ParagraphText {
    Q_DECLARE_TR_FUNCTIONS(paragraph)
};

/// One month's words: the facts, and how numbers are said here.
class Paragraph {
public:
    Paragraph(const QLocale& locale, report::MonthFacts facts, QString usual, units::TemperatureUnit unit)
        : locale_(locale), facts_(std::move(facts)), usual_(std::move(usual)), unit_(unit) {}

    [[nodiscard]] QString text() const {
        if (facts_.n == 0) {
            return opening() + QLatin1Char(' ') +
                   ParagraphText::tr("No humidity could be worked out in this month.");
        }
        QStringList sentences{opening(), completeness(), means(), usual_};
        sentences << extremes() << days() << corrections() << caution();
        sentences.removeAll(QString{});
        return sentences.join(QLatin1Char(' '));
    }

private:
    [[nodiscard]] QString temperature(double celsius) const {
        return temperatureWords(locale_, units::Temperature::fromCelsius(celsius), unit_) + kNoBreakSpace +
               unitWords(unit_);
    }

    [[nodiscard]] QString opening() const {
        const QString station = QString::fromStdString(facts_.stationName);
        const QString month = monthWords(locale_, facts_.month);
        if (facts_.invented) {
            //: %1 a station's name, %2 a month
            return ParagraphText::tr("%1, %2 (invented station, invented readings).").arg(station, month);
        }
        return ParagraphText::tr("%1, %2.").arg(station, month);
    }

    [[nodiscard]] QString completeness() const {
        QString sentence = ParagraphText::tr("%1 of %2 readings at observing hours count")
                               .arg(QString::number(facts_.n), QString::number(facts_.expected));
        QStringList rest;
        if (facts_.missing > 0) {
            rest << ParagraphText::tr("%1 missing").arg(QString::number(facts_.missing));
        }
        if (facts_.setAside > 0) {
            rest << ParagraphText::tr("%1 set aside").arg(QString::number(facts_.setAside));
        }
        if (!rest.isEmpty()) {
            sentence += QStringLiteral(" (%1)").arg(rest.join(QStringLiteral(", ")));
        }
        if (facts_.hoursToCome > 0) {
            sentence += ParagraphText::tr("; the month is not over, %1 hours are to come")
                            .arg(QString::number(facts_.hoursToCome));
        }
        return sentence + QLatin1Char('.');
    }

    [[nodiscard]] QString means() const {
        if (!facts_.meanHumidity || !facts_.meanDewPoint) {
            const bool anyReason = !facts_.withheld.empty();
            return anyReason ? withheldWords(facts_.withheld.front().because) : QString{};
        }
        QString sentence =
            ParagraphText::tr("The mean relative humidity at observing hours was %1, the mean dew point %2")
                .arg(percentWords(locale_, facts_.meanHumidity), temperature(*facts_.meanDewPoint));
        if (facts_.humidityU95 && facts_.dewPointU95) {
            const auto dewPointWidth = units::TemperatureDifference::fromKelvins(*facts_.dewPointU95);
            const double inUnit = unit_ == units::TemperatureUnit::Celsius
                                      ? dewPointWidth.kelvins()
                                      : dewPointWidth.fahrenheitDegrees();
            sentence += ParagraphText::tr("; a single reading is sure to about %1 %2 and %3 %4")
                            .arg(plusMinusWords(locale_, facts_.humidityU95, 0), locale_.percent(),
                                 plusMinusWords(locale_, inUnit, 1), unitWords(unit_));
        }
        return sentence + QLatin1Char('.');
    }

    [[nodiscard]] QString extremes() const {
        QStringList sentences;
        if (facts_.highestHumidity && facts_.lowestHumidity) {
            sentences << ParagraphText::tr("The humidity ranged from %1 (%2) to %3 (%4) at observing hours.")
                             .arg(percentWords(locale_, facts_.lowestHumidity->value),
                                  hourAndDateWords(locale_, facts_.lowestHumidity->at),
                                  percentWords(locale_, facts_.highestHumidity->value),
                                  hourAndDateWords(locale_, facts_.highestHumidity->at));
        }
        if (facts_.highestDewPoint && facts_.lowestDewPoint) {
            sentences << ParagraphText::tr("The dew point ranged from %1 (%2) to %3 (%4).")
                             .arg(temperature(facts_.lowestDewPoint->value),
                                  hourAndDateWords(locale_, facts_.lowestDewPoint->at),
                                  temperature(facts_.highestDewPoint->value),
                                  hourAndDateWords(locale_, facts_.highestDewPoint->at));
        }
        return sentences.join(QLatin1Char(' '));
    }

    [[nodiscard]] QString days() const {
        QStringList parts;
        const auto add = [&](int count, const QString& one, const QString& many) {
            if (count > 0) {
                parts << (count == 1 ? one : many.arg(count));
            }
        };
        add(facts_.daysWithFog, ParagraphText::tr("fog on one day"), ParagraphText::tr("fog on %1 days"));
        const QString high = percentWords(locale_, facts_.highThreshold);
        const QString low = percentWords(locale_, facts_.lowThreshold);
        add(facts_.daysAtOrAboveHigh, ParagraphText::tr("%1 or more on one day").arg(high),
            ParagraphText::tr("%2 or more on %1 days").arg(QStringLiteral("%1"), high));
        add(facts_.daysAtOrBelowLow, ParagraphText::tr("%1 or less on one day").arg(low),
            ParagraphText::tr("%2 or less on %1 days").arg(QStringLiteral("%1"), low));
        return parts.isEmpty() ? QString{}
                               : ParagraphText::tr("At observing hours there was %1.")
                                     .arg(parts.join(QStringLiteral(", ")));
    }

    [[nodiscard]] QString corrections() const {
        QStringList sentences;
        if (facts_.corrected > 0) {
            sentences
                << (facts_.corrected == 1
                        ? ParagraphText::tr("One reading was revised later; what was first written is kept.")
                        : ParagraphText::tr("%1 readings were revised later; what was first written is kept.")
                              .arg(facts_.corrected));
        }
        if (facts_.openQueries > 0) {
            sentences << (facts_.openQueries == 1
                              ? ParagraphText::tr("One marked reading is not yet judged and is left out.")
                              : ParagraphText::tr("%1 marked readings are not yet judged and are left out.")
                                    .arg(facts_.openQueries));
        }
        return sentences.join(QLatin1Char(' '));
    }

    [[nodiscard]] static QString caution() {
        return ParagraphText::tr(
            "Worked out from a dry and a wet bulb read at fixed hours; these are not 24-hour means.");
    }

    const QLocale& locale_;
    report::MonthFacts facts_;
    QString usual_; ///< how the month stands to the station's other years
    units::TemperatureUnit unit_;
};

} // namespace

QString monthParagraph(const QLocale& locale, const report::MonthReport& report,
                       units::TemperatureUnit unit) {
    return Paragraph{locale, report::monthFacts(report), usualSentences(locale, report, unit), unit}.text();
}

} // namespace wickbook::ui
