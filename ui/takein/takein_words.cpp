// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/takein/takein_words.h"

#include "ui/text/error_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/number_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace wickbook::ui {

namespace {

class TakeInText {
    Q_DECLARE_TR_FUNCTIONS(TakeInText)
};

QString pairWords(const QLocale& locale, const record::Observation& values) {
    return QStringLiteral("%1 / %2").arg(bulbWithUnit(locale, values.dry), bulbWithUnit(locale, values.wet));
}

} // namespace

QString bulbWithUnit(const QLocale& locale, const record::BulbReading& bulb) {
    return bulb.value ? readTemperatureWords(locale, *bulb.value) : bulbWords(locale, bulb);
}

QString fieldWords(exchange::ImportField field) {
    using Field = exchange::ImportField;
    switch (field) {
    case Field::Time:
        return TakeInText::tr("date and time");
    case Field::Date:
        return TakeInText::tr("date");
    case Field::Hour:
        return TakeInText::tr("observing hour");
    case Field::Clock:
        return TakeInText::tr("clock time");
    case Field::Dry:
        return TakeInText::tr("dry bulb");
    case Field::Wet:
        return TakeInText::tr("wet bulb");
    case Field::Wick:
        return TakeInText::tr("wick");
    case Field::Pressure:
        return TakeInText::tr("pressure, hPa");
    case Field::Weather:
        return TakeInText::tr("weather");
    case Field::Wind:
        return TakeInText::tr("wind, Beaufort");
    case Field::Maximum:
        return TakeInText::tr("maximum");
    case Field::Minimum:
        return TakeInText::tr("minimum");
    case Field::Note:
        return TakeInText::tr("note");
    case Field::Observer:
        return TakeInText::tr("observer");
    case Field::Origin:
        return TakeInText::tr("origin");
    case Field::Quality:
        return TakeInText::tr("quality");
    case Field::Unit:
        return TakeInText::tr("unit of the bulbs");
    case Field::PressureSource:
        return TakeInText::tr("pressure source");
    case Field::MaxMinUnit:
        return TakeInText::tr("unit of maximum and minimum");
    case Field::WickCare:
        return TakeInText::tr("care of the wick");
    case Field::Whirls:
        return TakeInText::tr("whirls");
    case Field::MissingReason:
        return TakeInText::tr("why missing");
    case Field::FromPaper:
        return TakeInText::tr("copied from paper");
    case Field::PaperBook:
        return TakeInText::tr("paper book");
    case Field::PaperPage:
        return TakeInText::tr("paper page");
    case Field::ReadBack:
        return TakeInText::tr("read back");
    case Field::Zone:
        return TakeInText::tr("time zone");
    case Field::UtcOffset:
        return TakeInText::tr("offset from UTC");
    }
    return {};
}

QString takeInErrorWords(const exchange::ImportError& error, const QString& name) {
    using Kind = exchange::ImportErrorKind;
    exchange::ImportError named = error;
    switch (error.kind) {
    case Kind::NoTimeColumn:
        return TakeInText::tr(
            "Say above which column is the date and time, or which are the date and the hour.");
    case Kind::NoDryOrWetColumn:
        return TakeInText::tr("Say above which column is the dry bulb and which the wet bulb.");
    case Kind::FieldTwice:
        return TakeInText::tr("Two columns can't be the same: choose “left aside” for one of them.");
    case Kind::EmptyFile:
    case Kind::NotReadable:
    case Kind::NoLines:
    case Kind::BinaryFile:
        named.detail = name.toStdString();
        return importErrorWords(named);
    case Kind::TooManyLines:
        return TakeInText::tr(
                   "%1 has more than %2 lines, too many to be shown one by one: bring it in with the command "
                   "wickbook import, or in parts.")
            .arg(name, QString::fromStdString(error.detail));
    case Kind::UnknownMappedColumn:
    case Kind::NoBesideColumns: // of another kind of file
    case Kind::Stopped:
    case Kind::DatesWait:
    case Kind::SefVersion:
    case Kind::SefHeader:
    case Kind::SefUnits:
    case Kind::SefCalendar:
    case Kind::SefStationsDiffer:
    case Kind::SefNothing:
        break;
    }
    return QStringLiteral("%1: %2").arg(name, importErrorWords(error));
}

QString verdictWords(const desk::PreviewLine& line, exchange::OnConflict onConflict) {
    switch (line.verdict) {
    case desk::LineVerdict::Fresh:
        return line.findings.empty() ? TakeInText::tr("new") : TakeInText::tr("new, marked");
    case desk::LineVerdict::Same:
        return TakeInText::tr("there already");
    case desk::LineVerdict::Conflict:
        switch (onConflict) {
        case exchange::OnConflict::Keep:
            return TakeInText::tr("conflict: kept");
        case exchange::OnConflict::Revise:
            return TakeInText::tr("conflict: revised");
        case exchange::OnConflict::Reject:
            return TakeInText::tr("conflict: left out");
        }
        break;
    case desk::LineVerdict::Rejected:
        return TakeInText::tr("left out");
    }
    return {};
}

QString verdictSentence(const QLocale& locale, const desk::PreviewLine& line,
                        exchange::OnConflict onConflict) {
    if (line.rejected) {
        if (line.rejected->reason == exchange::RejectReason::DoubleTime) {
            return TakeInText::tr(
                       "“%1” came twice that night, when the clocks went back: say above which is meant.")
                .arg(QString::fromStdString(line.rejected->value));
        }
        if (line.rejected->detail == "day-or-month") {
            return TakeInText::tr("“%1” can be read as day and month or as month and day: say above which.")
                .arg(QString::fromStdString(line.rejected->value));
        }
        QString words = rejectWords(*line.rejected);
        if (!words.isEmpty()) {
            words[0] = words[0].toUpper();
        }
        return words + QLatin1Char('.');
    }
    if (line.verdict == desk::LineVerdict::Conflict && line.replaces) {
        const record::Observation& book = line.replaces->values;
        if (book.dry == line.values.dry && book.wet == line.values.wet) {
            return TakeInText::tr("The bulbs agree; the file differs in what stands beside them.");
        }
        const QString there =
            TakeInText::tr("The book has %1, the file %2.")
                .arg(pairWords(locale, line.replaces->values), pairWords(locale, line.values));
        return onConflict == exchange::OnConflict::Revise
                   ? there + QLatin1Char(' ') + TakeInText::tr("The old one stays in the history.")
                   : there;
    }
    if (line.verdict == desk::LineVerdict::Fresh && !line.findings.empty()) {
        const auto gravest =
            std::max_element(line.findings.begin(), line.findings.end(),
                             [](const auto& a, const auto& b) { return a.severity < b.severity; });
        const auto unit =
            line.values.dry.value ? line.values.dry.value->unit : units::TemperatureUnit::Celsius;
        return findingWords(locale, *gravest, unit).message;
    }
    return {};
}

QString countsSentence(const QLocale& locale, const desk::ImportPreview& preview) {
    const auto number = [&](std::int64_t count) { return locale.toString(static_cast<qlonglong>(count)); };
    QStringList parts;
    QString fresh = TakeInText::tr("%1 new").arg(number(preview.fresh));
    if (preview.marked > 0) {
        fresh += QLatin1Char(' ') + TakeInText::tr("(%1 marked)").arg(number(preview.marked));
    }
    parts << fresh;
    if (preview.same > 0) {
        parts << TakeInText::tr("%1 there already").arg(number(preview.same));
    }
    if (preview.conflicts > 0) {
        parts << TakeInText::tr("%1 in conflict with the book").arg(number(preview.conflicts));
    }
    parts << TakeInText::tr("%1 that can't come in").arg(number(preview.rejected));
    const auto lines = static_cast<std::int64_t>(preview.lines.size());
    const QString head =
        preview.cut  ? TakeInText::tr("The first %1 lines of a long file").arg(number(lines))
        : lines == 1 ? TakeInText::tr("One line")
                     : TakeInText::tr("%1 lines", nullptr, static_cast<int>(lines)).arg(number(lines));
    return head + QStringLiteral(": ") + parts.join(QStringLiteral(", ")) + QLatin1Char('.');
}

QString separatorWords(char separator) {
    switch (separator) {
    case ';':
        return TakeInText::tr("semicolon");
    case '\t':
        return TakeInText::tr("tab");
    default:
        return TakeInText::tr("comma");
    }
}

} // namespace wickbook::ui
