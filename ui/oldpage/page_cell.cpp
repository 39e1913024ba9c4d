// SPDX-License-Identifier: GPL-3.0-or-later
// From what the keys typed into a cell to what stands there.
#include "ui/oldpage/page_line.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace wickbook::ui {

namespace {

class PageCellText {
    Q_DECLARE_TR_FUNCTIONS(PageCellText)
};

bool isRepeatingMark(const QString& typed) {
    static const QStringList kMarks{QStringLiteral("\""), QStringLiteral("''"), QStringLiteral("”"),
                                    QStringLiteral("″"), QStringLiteral("〃")};
    return kMarks.contains(typed);
}

bool isThermometer(PageField field) {
    return field == PageField::Dry || field == PageField::Wet || field == PageField::Maximum ||
           field == PageField::Minimum;
}

/// Takes a number into the cell; the problem otherwise.
QString takeNumber(LineText::Cell& cell, PageField field, const QString& typed, const CellReading& reading) {
    const auto number = units::parseDecimal(typed.toStdString());
    if (!number) {
        return decimalErrorWords(number.error(), pageFieldWhat(field), typed);
    }
    units::Decimal value = *number;
    const bool pointWritten = typed.contains(QLatin1Char('.')) || typed.contains(QLatin1Char(','));
    if (isThermometer(field) && !pointWritten) {
        value.decimals = reading.impliedDecimals;
    }
    if (field == PageField::Wind && (value.decimals != 0 || value.mantissa < 0 || value.mantissa > 12)) {
        return PageCellText::tr(
                   "Write the wind as a Beaufort force, a whole number from 0 to 12; “%1” is none.")
            .arg(typed);
    }
    cell.text = readWords(reading.locale, value);
    return {};
}

QString takeWick(LineText::Cell& cell, const QString& typed) {
    for (const auto wick : {record::WickState::Water, record::WickState::Ice}) {
        const QString words = wickWords(wick);
        const QString name = QString::fromUtf8(record::wickName(wick).data());
        if (typed.compare(words, Qt::CaseInsensitive) == 0 || typed.compare(name, Qt::CaseInsensitive) == 0 ||
            typed.compare(name.left(1), Qt::CaseInsensitive) == 0) {
            cell.text = words;
            return {};
        }
    }
    return PageCellText::tr("Write w for water or i for ice; “%1” is neither.").arg(typed);
}

/// The one weather term that is or begins with what was typed; none where several do, or none does.
std::optional<record::Weather> weatherBeginning(const QString& typed) {
    std::vector<record::Weather> beginning;
    for (int i = 0; i < record::kWeatherCount; ++i) {
        const auto weather = static_cast<record::Weather>(i);
        const QString name = QString::fromUtf8(record::weatherName(weather).data());
        const QString words = weatherWords(weather);
        if (words.compare(typed, Qt::CaseInsensitive) == 0 || name.compare(typed, Qt::CaseInsensitive) == 0) {
            return weather;
        }
        if (words.startsWith(typed, Qt::CaseInsensitive)) {
            beginning.push_back(weather);
        }
    }
    return beginning.size() == 1 ? std::optional{beginning.front()} : std::nullopt;
}

QString takeWeather(LineText::Cell& cell, const QString& typed) {
    record::WeatherSet set;
    const QString none = weatherSetWords(record::WeatherSet{});
    if (typed != QLatin1String("0") && typed != QLatin1String("-") &&
        typed.compare(none, Qt::CaseInsensitive) != 0) {
        static const QRegularExpression kBetween{QStringLiteral("[,;+]")};
        for (const QString& part : typed.split(kBetween, Qt::SkipEmptyParts)) {
            const auto weather = weatherBeginning(part.simplified());
            if (!weather) {
                QStringList known;
                for (int i = 0; i < record::kWeatherCount; ++i) {
                    known << weatherWords(static_cast<record::Weather>(i));
                }
                return PageCellText::tr(
                           "Write the weather so that it can't be two things: %1, or 0 for none. “%2” is not "
                           "clear; a remark in other words goes into the note.")
                    .arg(known.join(QStringLiteral(", ")), part.simplified());
            }
            set.add(*weather);
        }
    }
    cell.text = weatherSetWords(set);
    return {};
}

/// "m" and a key, or "m" and words of one's own.
QString takeMissing(LineText& line, const QString& after) {
    const QString reason = after.simplified();
    line.missing.clear();
    for (const MissingReason& known : pageMissingReasons()) {
        if ((reason.size() == 1 && reason.front().toLower() == known.key) ||
            reason.compare(missingWords(known.stored), Qt::CaseInsensitive) == 0) {
            line.missing = known.stored;
        }
    }
    if (line.missing.isEmpty() && after.startsWith(QLatin1Char(' ')) && reason.size() > 1) {
        line.missing = reason;
    }
    if (line.missing.isEmpty()) {
        return PageCellText::tr("Say why nothing was read: %1; or m and your own words.")
            .arg(missingKeysWords());
    }
    line.cell(PageField::Dry) = {};
    line.cell(PageField::Wet) = {};
    line.cell(PageField::Wick) = {};
    return {};
}

/// The bulbs' cells; also where a missing line is written, and where a wick's letter may follow.
QString takeBulb(LineText& line, PageField field, const QString& typed, const CellReading& reading) {
    LineText::Cell& cell = line.cell(field);
    if (typed == QLatin1String("<")) {
        cell.text = typed;
        return {};
    }
    if (isRepeatingMark(typed)) {
        if (reading.above != nullptr && !reading.above->missing.isEmpty()) {
            return takeMissing(line, QLatin1Char(' ') + missingWords(reading.above->missing));
        }
        return PageCellText::tr(
            "A bulb's reading is written out on every line; only a missing line is repeated so.");
    }
    if (typed.front().toLower() == QLatin1Char('m')) {
        return takeMissing(line, typed.mid(1));
    }
    QString digits = typed;
    const QChar last = typed.back().toLower();
    QString wick;
    if (field == PageField::Wet && typed.size() > 1 &&
        (last == QLatin1Char('w') || last == QLatin1Char('i'))) {
        wick = QString(last);
        digits.chop(1);
    }
    const QString problem = takeNumber(cell, field, digits.trimmed(), reading);
    if (problem.isEmpty() && !wick.isEmpty()) {
        takeWick(line.cell(PageField::Wick), wick);
    }
    return problem;
}

} // namespace

QString takeCell(LineText& line, PageField field, const QString& typed, const CellReading& reading) {
    const QString plain = typed.simplified();
    const LineText before = line;
    LineText::Cell& cell = line.cell(field);
    cell = {};
    QString problem;
    const bool bulb = field == PageField::Dry || field == PageField::Wet;
    if (bulb) {
        line.missing.clear();
    }
    if (plain.isEmpty()) {
        return {};
    }
    if (bulb) {
        problem = takeBulb(line, field, plain, reading);
    } else if (isRepeatingMark(plain)) {
        if (reading.above == nullptr) {
            problem = PageCellText::tr("There is no line above to repeat: write the cell out.");
        } else {
            cell.text = reading.above->cell(field).text;
        }
    } else if (field == PageField::Note) {
        cell.text = plain;
    } else if (field == PageField::Wick) {
        problem = takeWick(cell, plain);
    } else if (field == PageField::Weather) {
        problem = takeWeather(cell, plain);
    } else {
        problem = takeNumber(cell, field, plain, reading);
    }
    if (!problem.isEmpty()) {
        line = before;
        line.cell(field) = {plain, problem};
    }
    return problem;
}

const std::vector<MissingReason>& pageMissingReasons() {
    static const std::vector<MissingReason> kReasons{
        {QLatin1Char('a'), QStringLiteral("away")},      {QLatin1Char('i'), QStringLiteral("ill")},
        {QLatin1Char('w'), QStringLiteral("wick dry")},  {QLatin1Char('b'), QStringLiteral("broken")},
        {QLatin1Char('f'), QStringLiteral("forgotten")}, {QLatin1Char('l'), QStringLiteral("illegible")}};
    return kReasons;
}

QString missingWords(const QString& reason) {
    // The register's own words for its reasons, and one that only paper has.
    if (reason == QLatin1String("illegible")) {
        return PageCellText::tr("illegible");
    }
    return QCoreApplication::translate("missing", reason.toUtf8().constData());
}

QString missingKeysWords() {
    QStringList keys;
    for (const MissingReason& reason : pageMissingReasons()) {
        keys << QStringLiteral("m%1 %2").arg(reason.key).arg(missingWords(reason.stored));
    }
    return keys.join(QStringLiteral(", "));
}

} // namespace wickbook::ui
