// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/class_sheet.h"

#include "core/psychrometry/humidity_table.h"
#include "ui/print/page_writer.h"
#include "ui/text/class_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace wickbook::ui {

namespace {

struct SheetText {
    Q_DECLARE_TR_FUNCTIONS(SheetText)
};

constexpr double kSheetBody = 10;
constexpr double kSheetSmall = 9;
constexpr double kRoomToWrite = 20; // points, about 7 mm
constexpr int kEmptyLines = 16;
constexpr int kMostColumns = 15;

double inUnit(double celsius, units::TemperatureUnit unit) {
    const auto temperature = units::Temperature::fromCelsius(celsius);
    return unit == units::TemperatureUnit::Celsius ? temperature.celsius() : temperature.fahrenheit();
}

QString readOrBlank(const QLocale& locale, const std::optional<units::ReadTemperature>& reading) {
    return reading ? readWords(locale, reading->value) : QString{};
}

QStringList pupilRow(const QLocale& locale, const comparison::PupilResult& pupil, const ClassSheet& sheet) {
    QStringList row{locale.toString(pupil.pair.number), readOrBlank(locale, pupil.pair.dry),
                    readOrBlank(locale, pupil.pair.wet)};
    if (!sheet.answers) {
        return row << QString{} << QString{} << QString{};
    }
    if (!pupil.derivation) {
        return row << QStringLiteral("–") << QStringLiteral("–") << SheetText::tr("One bulb is missing.");
    }
    row << differenceWords(locale, pupil.derivation->depression, sheet.unit);
    row << percentWords(locale, pupil.derivation->relativeHumidity
                                    ? std::optional{pupil.derivation->relativeHumidity->percent()}
                                    : std::nullopt);
    return row << pupilWords(locale, pupil, sheet.unit);
}

PageTable pupilTable(const QLocale& locale, const ClassSheet& sheet) {
    PageTable table;
    table.fontSize = kSheetBody;
    table.leastRowHeight = sheet.answers ? 0 : kRoomToWrite;
    const QString unit = unitWords(sheet.unit);
    table.columns = {{SheetText::tr("Number"), 0.8, Qt::AlignRight},
                     {SheetText::tr("Dry %1").arg(unit), 1, Qt::AlignRight},
                     {SheetText::tr("Wet %1").arg(unit), 1, Qt::AlignRight},
                     {SheetText::tr("Dry less wet"), 1.2, Qt::AlignRight},
                     {SheetText::tr("Humidity"), 1, Qt::AlignRight},
                     {SheetText::tr("What I notice"), 4.4, Qt::AlignLeft}};
    for (const comparison::PupilResult& pupil : sheet.round.pupils) {
        table.rows.push_back(pupilRow(locale, pupil, sheet));
    }
    if (sheet.round.pupils.empty()) {
        for (int i = 1; i <= kEmptyLines; ++i) {
            table.rows.push_back({locale.toString(i), {}, {}, {}, {}, {}});
        }
    }
    return table;
}

/// The rows and columns that the round's pairs need, with room on each side.
psychrometry::HumidityTableRequest excerptFor(const ClassSheet& sheet) {
    const bool celsius = sheet.unit == units::TemperatureUnit::Celsius;
    psychrometry::HumidityTableRequest request;
    request.unit = sheet.unit;
    request.coefficient = sheet.round.setting.coefficient;
    request.pressure = sheet.round.setting.pressure;
    const double middle =
        sheet.round.dry ? std::round(inUnit(sheet.round.dry->median, sheet.unit)) : (celsius ? 18 : 64);
    const double reach = sheet.round.dry ? (celsius ? 4 : 6) : (celsius ? 8 : 14);
    request.lowestDry = middle - reach;
    request.highestDry = middle + reach;
    request.dryStep = celsius ? 1 : 2;
    double depression = celsius ? 12 : 22;
    if (sheet.round.dry && sheet.round.wet) {
        const double usual =
            inUnit(sheet.round.dry->median, sheet.unit) - inUnit(sheet.round.wet->median, sheet.unit);
        depression = std::max(celsius ? 7.0 : 14.0, std::ceil(usual + (celsius ? 2 : 4)));
    }
    request.highestDepression = depression;
    request.depressionStep = celsius ? 0.5 : 1;
    while (request.highestDepression / request.depressionStep + 1 > kMostColumns) {
        request.depressionStep *= 2;
    }
    return request;
}

void humidityExcerpt(PageWriter& page, const QLocale& locale, const ClassSheet& sheet) {
    const auto humidity = psychrometry::humidityTable(excerptFor(sheet));
    if (!humidity) {
        return;
    }
    PageTable table;
    table.fontSize = kSheetSmall;
    table.columns.push_back({SheetText::tr("Dry"), 1.2, Qt::AlignRight});
    for (const double depression : humidity->depressions) {
        table.columns.push_back({numberWords(locale, depression, 1), 1, Qt::AlignRight});
    }
    const bool ice = sheet.round.wet && sheet.round.wet->median < 0;
    for (const auto& row : ice ? humidity->iceRows : humidity->waterRows) {
        QStringList cells{numberWords(locale, row.dry, 0)};
        for (const auto& cell : row.cells) {
            cells << (cell.humidity ? numberWords(locale, cell.humidity->percent(), 0) : QString{});
        }
        table.rows.push_back(cells);
    }
    page.heading(ice ? SheetText::tr("Relative humidity in %, ice on the wick")
                     : SheetText::tr("Relative humidity in %"),
                 12);
    page.paragraph(
        SheetText::tr("Down: the dry bulb in %1. Across: dry less wet in %1. Where your row and your "
                      "column meet stands the humidity.")
            .arg(unitWords(sheet.unit)),
        kSheetSmall, lightTokens().soft);
    page.table(table);
}

void questions(PageWriter& page, const QLocale& locale, const ClassSheet& sheet) {
    page.need(150);
    page.heading(sheet.answers ? SheetText::tr("Answers") : SheetText::tr("Questions"), 12);
    if (sheet.answers) {
        page.paragraph(roundWords(locale, sheet.round), kSheetBody, lightTokens().ink);
        page.paragraph(
            SheetText::tr(
                "The middle value stays where it is when a few go wrong; the mean would move with them. "
                "Pairs differ because thermometers, wicks, places and eyes do."),
            kSheetBody, lightTokens().ink);
        return;
    }
    for (const QString& question :
         {SheetText::tr("1. Write all humidities in order, lowest first. Which one stands in the middle?"),
          SheetText::tr("2. Between which two values does the middle half of the class lie?"),
          SheetText::tr(
              "3. Whose pair is far from the others? What may have happened? How would you find out?"),
          SheetText::tr(
              "4. Compare the mean with the middle value. Which of them moves when one wick is dry?")}) {
        page.paragraph(question, kSheetBody, lightTokens().ink);
        page.space(26);
    }
}

} // namespace

QString classSheetTitle(const ClassSheet& sheet) {
    return sheet.answers ? SheetText::tr("How damp is the air? Answers")
                         : SheetText::tr("How damp is the air? Work sheet");
}

bool writeClassSheet(const ClassSheet& sheet, const QLocale& locale, QPagedPaintDevice& device) {
    PageWriter page(device, classSheetTitle(sheet));
    if (!page.isActive()) {
        return false;
    }
    page.heading(classSheetTitle(sheet), 16);
    if (!sheet.answers) {
        page.paragraph(
            SheetText::tr("Date ____________   Time ____________   Place ______________________________"),
            kSheetBody, lightTokens().ink);
        page.paragraph(
            SheetText::tr(
                "All read the same air at the same time. Wet the wick, move air past the bulbs until the "
                "wet one falls no further, read the wet bulb first and tenths before whole degrees. "
                "Write down what you read, also when it looks odd. You are a number here, not a name."),
            kSheetBody, lightTokens().ink);
        for (const QString& caution : cautionWords().mid(0, 2)) {
            page.paragraph(caution, kSheetSmall, lightTokens().ink);
        }
    }
    page.table(pupilTable(locale, sheet));
    humidityExcerpt(page, locale, sheet);
    page.paragraph(SheetText::tr("Table and answers hold for this instrument (%1) and %2 hPa.")
                       .arg(exposureWords(sheet.round.setting.coefficient.exposure),
                            numberWords(locale, sheet.round.setting.pressure.hectopascals(), 0)),
                   kSheetSmall, lightTokens().soft);
    questions(page, locale, sheet);
    return page.finish();
}

} // namespace wickbook::ui
