// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/signing_words.h"

#include "core/units/number_text.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QCoreApplication>

#include <array>
#include <string_view>

namespace wickbook::ui {

namespace {

struct SigningText {
    Q_DECLARE_TR_FUNCTIONS(SigningText)
};

struct ColumnName {
    std::string_view column;
    const char* words;
};

constexpr std::array kNames{
    ColumnName{"expected", QT_TRANSLATE_NOOP("SigningText", "expected")},
    ColumnName{"n", QT_TRANSLATE_NOOP("SigningText", "counted (n)")},
    ColumnName{"missing", QT_TRANSLATE_NOOP("SigningText", "missing")},
    ColumnName{"set_aside", QT_TRANSLATE_NOOP("SigningText", "set aside")},
    ColumnName{"mean_dry_c", QT_TRANSLATE_NOOP("SigningText", "mean dry bulb, °C")},
    ColumnName{"mean_wet_c", QT_TRANSLATE_NOOP("SigningText", "mean wet bulb, °C")},
    ColumnName{"mean_vapour_pressure_hpa", QT_TRANSLATE_NOOP("SigningText", "mean vapour pressure, hPa")},
    ColumnName{"dew_point_of_mean_vapour_pressure_c",
               QT_TRANSLATE_NOOP("SigningText", "dew point of the mean vapour pressure, °C")},
    ColumnName{"mean_dew_point_c", QT_TRANSLATE_NOOP("SigningText", "mean dew point, °C")},
    ColumnName{"mean_relative_humidity_pct", QT_TRANSLATE_NOOP("SigningText", "mean relative humidity, %")},
    ColumnName{"highest_relative_humidity_pct",
               QT_TRANSLATE_NOOP("SigningText", "highest relative humidity, %")},
    ColumnName{"lowest_relative_humidity_pct",
               QT_TRANSLATE_NOOP("SigningText", "lowest relative humidity, %")},
    ColumnName{"highest_dew_point_c", QT_TRANSLATE_NOOP("SigningText", "highest dew point, °C")},
    ColumnName{"lowest_dew_point_c", QT_TRANSLATE_NOOP("SigningText", "lowest dew point, °C")},
    ColumnName{"mean_withheld_because", QT_TRANSLATE_NOOP("SigningText", "why there is no mean")},
};

/// More than these would bury the rest; the signed table itself is in the book.
constexpr std::size_t kMostNamed = 4;

QString cellWords(const QLocale& locale, const std::string& cell) {
    if (cell.empty()) {
        return SigningText::tr("none");
    }
    const QString text = QString::fromStdString(cell);
    bool isNumber = false;
    const double value = QLocale::c().toDouble(text, &isNumber);
    return isNumber ? numberWords(locale, value, text.contains(QLatin1Char('.')) ? 2 : 0) : text;
}

QString countedWords(const report::SignedMonth& signedOff) {
    QStringList parts;
    const auto add = [&](std::size_t count, const QString& one, const QString& many) {
        if (count > 0) {
            parts << (count == 1 ? one : many);
        }
    };
    add(signedOff.changed.size(), SigningText::tr("one reading revised"),
        SigningText::tr("%n readings revised", nullptr, static_cast<int>(signedOff.changed.size())));
    add(signedOff.added.size(), SigningText::tr("one reading added"),
        SigningText::tr("%n readings added", nullptr, static_cast<int>(signedOff.added.size())));
    add(static_cast<std::size_t>(signedOff.gone), SigningText::tr("one reading taken out"),
        SigningText::tr("%n readings taken out", nullptr, static_cast<int>(signedOff.gone)));
    return parts.join(QStringLiteral(", "));
}

QString numbersWords(const QLocale& locale, const report::SignedMonth& signedOff) {
    // What holds for the month together says more than the hours; the dates of extremes go with their values.
    std::vector<const report::NumberChange*> told;
    for (const bool together : {true, false}) {
        for (const report::NumberChange& change : signedOff.numbers) {
            if ((change.hour == "all") == together && !change.column.ends_with("_at")) {
                told.push_back(&change);
            }
        }
    }
    QStringList parts;
    for (std::size_t at = 0; at < told.size() && at < kMostNamed; ++at) {
        const report::NumberChange& change = *told[at];
        const QString name = summaryColumnWords(change.column);
        //: %1 a number's name, %2 and %3 its value as signed and now
        QString part = SigningText::tr("%1 %2 → %3")
                           .arg(name, cellWords(locale, change.before), cellWords(locale, change.after));
        if (change.hour != "all") {
            part = SigningText::tr("at %1 %2").arg(QString::fromStdString(change.hour), part);
        }
        parts << part;
    }
    if (told.size() > kMostNamed) {
        parts << SigningText::tr("%1 more").arg(QString::number(told.size() - kMostNamed));
    }
    return parts.join(QStringLiteral("; "));
}

} // namespace

QString summaryColumnWords(const std::string& column) {
    for (const ColumnName& name : kNames) {
        if (name.column == column) {
            return SigningText::tr(name.words);
        }
    }
    QString words = QString::fromStdString(column);
    return words.replace(QLatin1Char('_'), QLatin1Char(' '));
}

QStringList signingSentences(const QLocale& locale, const report::MonthReport& report) {
    if (!report.signedOff) {
        return {};
    }
    const report::SignedMonth& signedOff = *report.signedOff;
    const record::Zone& zone = report.station.periodAt(signedOff.signing.at).zone;
    const QString day = longDateWords(locale, date::floor<date::days>(zone.localAt(signedOff.signing.at)));
    //: %1 initials or a name, %2 a date
    QStringList sentences{
        SigningText::tr("Signed off by %1 on %2.").arg(QString::fromStdString(signedOff.signing.by), day)};
    if (!signedOff.signing.note.empty()) {
        QString note = QString::fromStdString(signedOff.signing.note);
        while (note.endsWith(QLatin1Char('.'))) {
            note.chop(1);
        }
        sentences << SigningText::tr("Note: %1.").arg(note);
    }
    if (signedOff.signing.openQueries > 0) {
        sentences
            << SigningText::tr("Queries then open: %1.").arg(QString::number(signedOff.signing.openQueries));
    }
    if (signedOff.asSigned()) {
        sentences << SigningText::tr("Nothing has changed since.");
        return sentences;
    }
    QStringList since{countedWords(signedOff), numbersWords(locale, signedOff)};
    since.removeAll(QString{});
    sentences << SigningText::tr("Changed since it was signed: %1.").arg(since.join(QStringLiteral("; ")));
    return sentences;
}

} // namespace wickbook::ui
