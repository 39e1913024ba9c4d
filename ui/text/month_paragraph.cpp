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
    Q_DECLARE_TR_FUNCTIONS(ParagraphText)
};

/// One month's words: the facts, and how numbers are said here.
class Paragraph {
public:
    Paragraph(const QLocale& locale, const report::MonthReport& report, units::TemperatureUnit unit)
        : locale_(locale), report_(report), facts_(report::monthFacts(report)), unit_(unit) {}

    [[nodiscard]] QString text() const {
        QStringList sentences;
        if (facts_.n == 0) {
            sentences << ParagraphText::tr("No humidity could be worked out at %1 in %2.")
                             .arg(station(), monthWords(locale_, facts_.month));
        } else {
            sentences << means() << usualSentences(locale_, report_, unit_) << extremes() << days()
                      << completeness() << corrections() << caution();
        }
        sentences << invented();
        sentences.removeAll(QString{});
        return sentences.join(QLatin1Char(' '));
    }

private:
    [[nodiscard]] QString station() const { return QString::fromStdString(facts_.stationName); }

    [[nodiscard]] QString temperature(double celsius) const {
        return temperatureWords(locale_, units::Temperature::fromCelsius(celsius), unit_) + kNoBreakSpace +
               unitWords(unit_);
    }

    /// "6 Sep, 9 h": the year has been said.
    [[nodiscard]] QString when(const climate::Extreme& extreme) const {
        return shortDateWords(locale_, extreme.at.date) + QStringLiteral(", ") + hourWords(extreme.at.hour);
    }

    [[nodiscard]] QString hours() const {
        QStringList names;
        for (const climate::HourSummary& hour : report_.summary.hours) {
            names << hourWords(*hour.hour);
        }
        const QString last = names.takeLast();
        //: several observing hours, "7 h, 14 h and 21 h"
        return names.isEmpty() ? last
                               : ParagraphText::tr("%1 and %2").arg(names.join(QStringLiteral(", ")), last);
    }

    [[nodiscard]] QString means() const {
        const QString month = monthWords(locale_, facts_.month);
        if (!facts_.monthOver) {
            return ParagraphText::tr("%1 at %2 is not over, so there is no mean yet.").arg(month, station());
        }
        if (!facts_.meanHumidity || !facts_.meanDewPoint) {
            const QString why = facts_.withheld.empty() ? QString{}
                                                        : withheldWords(facts_.withheld.front().because,
                                                                        report_.options.completeness);
            return ParagraphText::tr("%1 at %2:").arg(month, station()) + QLatin1Char(' ') + why;
        }
        QString sentence =
            //: %1 month, %2 station, %3 "9 h and 21 h", %4 a humidity, %5 a temperature
            ParagraphText::tr("In %1 the relative humidity at %2, read at %3, was %4 on average, and the dew "
                              "point %5")
                .arg(month, station(), hours(), percentWords(locale_, facts_.meanHumidity),
                     temperature(*facts_.meanDewPoint));
        if (facts_.humidityU95 && facts_.dewPointU95) {
            const double inUnit =
                unit_ == units::TemperatureUnit::Celsius ? *facts_.dewPointU95 : *facts_.dewPointU95 * 1.8;
            sentence += ParagraphText::tr("; a single reading is sure to about %1 %2 and %3 %4")
                            .arg(plusMinusWords(locale_, facts_.humidityU95, 0), locale_.percent(),
                                 plusMinusWords(locale_, inUnit, 1), unitWords(unit_));
        }
        return sentence + QLatin1Char('.');
    }

    [[nodiscard]] QString extremes() const {
        QStringList sentences;
        if (facts_.n == 1 && facts_.highestHumidity && facts_.highestDewPoint) {
            return ParagraphText::tr("The one reading that counts (%1) gave %2 and a dew point of %3.")
                .arg(when(*facts_.highestHumidity), percentWords(locale_, facts_.highestHumidity->value),
                     temperature(facts_.highestDewPoint->value));
        }
        if (facts_.highestHumidity && facts_.lowestHumidity) {
            sentences << ParagraphText::tr("The driest reading, %1, came on %2, the dampest, %3, on %4.")
                             .arg(percentWords(locale_, facts_.lowestHumidity->value),
                                  when(*facts_.lowestHumidity),
                                  percentWords(locale_, facts_.highestHumidity->value),
                                  when(*facts_.highestHumidity));
        }
        if (facts_.highestDewPoint && facts_.lowestDewPoint) {
            sentences << ParagraphText::tr("The dew point lay between %1 (%2) and %3 (%4).")
                             .arg(temperature(facts_.lowestDewPoint->value), when(*facts_.lowestDewPoint),
                                  temperature(facts_.highestDewPoint->value), when(*facts_.highestDewPoint));
        }
        return sentences.join(QLatin1Char(' '));
    }

    [[nodiscard]] QString days() const {
        QStringList parts;
        const auto add = [&](int count, const QString& one, const QString& many) {
            if (count > 0) {
                parts << (count == 1 ? one : many);
            }
        };
        const QString high = percentWords(locale_, facts_.highThreshold);
        const QString low = percentWords(locale_, facts_.lowThreshold);
        add(facts_.daysWithFog, ParagraphText::tr("fog on one day"),
            ParagraphText::tr("fog on %n days", nullptr, facts_.daysWithFog));
        add(facts_.daysAtOrAboveHigh, ParagraphText::tr("%1 or more on one day").arg(high),
            ParagraphText::tr("%1 or more on %n days", nullptr, facts_.daysAtOrAboveHigh).arg(high));
        add(facts_.daysAtOrBelowLow, ParagraphText::tr("%1 or less on one day").arg(low),
            ParagraphText::tr("%1 or less on %n days", nullptr, facts_.daysAtOrBelowLow).arg(low));
        return parts.isEmpty() ? QString{}
                               : ParagraphText::tr("At observing hours there was %1.")
                                     .arg(parts.join(QStringLiteral(", ")));
    }

    [[nodiscard]] QString completeness() const {
        const QString counted = QString::number(facts_.n);
        const QString expected = QString::number(facts_.expected);
        QStringList rest;
        if (facts_.missing > 0) {
            rest << ParagraphText::tr("%1 missing").arg(QString::number(facts_.missing));
        }
        if (facts_.setAside > 0) {
            rest << ParagraphText::tr("%1 set aside").arg(QString::number(facts_.setAside));
        }
        if (facts_.hoursToCome > 0) {
            rest << ParagraphText::tr("%1 still to come").arg(QString::number(facts_.hoursToCome));
        }
        return rest.isEmpty() ? ParagraphText::tr("None of the %1 readings is missing.").arg(expected)
                              : ParagraphText::tr("Of %1 readings %2 count (%3).")
                                    .arg(expected, counted, rest.join(QStringLiteral(", ")));
    }

    [[nodiscard]] QString corrections() const {
        QStringList sentences;
        if (facts_.corrected > 0) {
            sentences
                << (facts_.corrected == 1
                        ? ParagraphText::tr("One reading was revised later; what was first written is kept.")
                        : ParagraphText::tr("%n readings were revised later; what was first written is kept.",
                                            nullptr, facts_.corrected));
        }
        if (facts_.openQueries > 0) {
            sentences << (facts_.openQueries == 1
                              ? ParagraphText::tr("One marked reading is not yet judged and is left out.")
                              : ParagraphText::tr("%n marked readings are not yet judged and are left out.",
                                                  nullptr, facts_.openQueries));
        }
        return sentences.join(QLatin1Char(' '));
    }

    [[nodiscard]] static QString caution() {
        return ParagraphText::tr(
            "Worked out from a dry and a wet bulb read at fixed hours; these are not 24-hour means.");
    }

    [[nodiscard]] QString invented() const {
        return facts_.invented ? ParagraphText::tr("Station and readings are invented.") : QString{};
    }

    const QLocale& locale_;
    const report::MonthReport& report_;
    report::MonthFacts facts_;
    units::TemperatureUnit unit_;
};

} // namespace

QString monthParagraph(const QLocale& locale, const report::MonthReport& report,
                       units::TemperatureUnit unit) {
    return Paragraph{locale, report, unit}.text();
}

} // namespace wickbook::ui
