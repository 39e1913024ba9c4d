// SPDX-License-Identifier: GPL-3.0-or-later
// The year book and the month's pages, read back: contents name the pages, the overview has the months' own
// numbers, and no line of the text is lost where it breaks.
#include "tests/ui/print/pdf_support.h"
#include "tests/ui/print/print_support.h"
#include "ui/print/report_pdf.h"
#include "ui/print/year_book.h"
#include "ui/text/month_paragraph.h"
#include "ui/text/number_words.h"

#include <QTemporaryDir>

namespace wickbook::ui {

namespace {

using namespace test;

class YearBookCase : public ::testing::Test {
protected:
    YearBook book(date::year year, bool empty = false) {
        YearBook made{year, {}, hutTableOf(station_, record::Instant{date::sys_days{year / 12 / 31}})};
        for (unsigned month = 1; month <= 12; ++month) {
            made.months.push_back(
                test::month(station_, year / date::month{month},
                            [&](record::StoredObservation&) { return !empty && month != 6; }));
        }
        return made;
    }
    QString write(const PaperSheet& sheet) {
        const QString path = folder_.filePath(QStringLiteral("year.pdf"));
        const auto written = writeSheetPdf(sheet, path);
        EXPECT_TRUE(written) << written.error().sentence.toStdString();
        return path;
    }

    record::StationRecord station_ = station({9h, 21h});
    QTemporaryDir folder_;
};

TEST_F(YearBookCase, ContentsNameThePagesAndTheOverviewHasTheMonthsNumbers) {
    if (!hasPoppler()) {
        GTEST_SKIP() << "pdftotext is not installed: the year book was not read back.";
    }
    const YearBook made = book(date::year{2025});
    const QString path = write(yearBookSheet(made, QLocale::c(), Paper::A4));
    expectSoundPages(path, 15);
    const QStringList pages = textOf(path).split(QLatin1Char('\f'));
    const QRegularExpression line(QStringLiteral("^\\s*(\\S.*\\S)\\s{2,}(\\d+)\\s*$"));
    int found = 0;
    for (const QString& text : pages.front().split(QLatin1Char('\n'))) {
        const auto match = line.match(text);
        if (!match.hasMatch() || !text.contains(QRegularExpression(QStringLiteral("2025|year|hut")))) {
            continue;
        }
        const int page = match.captured(2).toInt();
        ASSERT_LT(page, pages.size());
        QString wanted = match.captured(1);
        wanted =
            wanted.startsWith(QStringLiteral("The hut")) ? QStringLiteral("Relative humidity, %") : wanted;
        EXPECT_TRUE(pages[page - 1].contains(wanted)) << wanted.toStdString() << " on page " << page;
        ++found;
    }
    EXPECT_EQ(found, 16) << "two parts, twelve months, the table, and the foot of the page";
    const QString overview = pages[1];
    for (const report::MonthReport& month : made.months) {
        if (!month.summary.all.meanHumidity) {
            continue;
        }
        const QString row =
            QLocale::c().standaloneMonthName(static_cast<int>(static_cast<unsigned>(month.month.month())),
                                             QLocale::ShortFormat) +
            QStringLiteral("%1 of %2")
                .arg(QString::number(month.summary.all.n), QString::number(month.summary.all.expected)) +
            percentWords(QLocale::c(), month.summary.all.meanHumidity);
        const QString bare = QString(overview).remove(QRegularExpression(QStringLiteral("\\s|\\x{a0}")));
        EXPECT_TRUE(bare.contains(QString(row).remove(QRegularExpression(QStringLiteral("\\s|\\x{a0}")))))
            << row.toStdString();
    }
    EXPECT_TRUE(overview.contains(QStringLiteral("No mean: nothing was read"))) << "June is empty";
    EXPECT_TRUE(pages.front().contains(QStringLiteral("invented")));
}

TEST_F(YearBookCase, AYearWithoutAReadingSaysSo) {
    if (!hasPoppler()) {
        GTEST_SKIP() << "pdftotext is not installed: the year book was not read back.";
    }
    const QString text =
        textOf(write(yearBookSheet(book(date::year{2024}, true), QLocale::c(), Paper::Letter)));
    EXPECT_TRUE(text.contains(QStringLiteral("No reading of this year is in the book.")));
    EXPECT_EQ(text.count(QStringLiteral("Nothing was written down in this month.")), 12);
}

TEST_F(YearBookCase, NoLineOfTheParagraphIsLostWhereItBreaks) {
    if (!hasPoppler()) {
        GTEST_SKIP() << "pdftotext is not installed: the pages were not read back.";
    }
    // Names of many lengths move the breaks to many places.
    for (int length = 1; length <= 40; length += 3) {
        record::StationFacts facts = station_.facts();
        facts.name = "Elder " + std::string(static_cast<std::size_t>(length), 'i');
        const report::MonthReport month = test::month(
            record::StationRecord{facts}, date::year{2025} / 5,
            [&](record::StoredObservation& stored) { return stored.values.hour->date != day(2025, 5, 7); });
        const PaperSheet sheet{
            reportTitle(month, QLocale::c()), length % 2 == 0 ? Paper::A4 : Paper::Letter,
            [&](QPagedPaintDevice& device) { return paintReport(month, QLocale::c(), device); }};
        const QString text = tool(QStringLiteral("pdftotext"), {QStringLiteral("-l"), QStringLiteral("1"),
                                                                write(sheet), QStringLiteral("-")});
        const auto bare = [](QString some) {
            return some.remove(QRegularExpression(QStringLiteral("\\s|\\x{a0}")));
        };
        const QString wanted = bare(monthParagraph(QLocale::c(), month, units::TemperatureUnit::Celsius));
        EXPECT_TRUE(bare(text).contains(wanted)) << length << '\n' << text.toStdString();
    }
}

} // namespace

} // namespace wickbook::ui
