// SPDX-License-Identifier: GPL-3.0-or-later
// The monthly return as files: all of them, readable by programs that are not ours.
#include "core/exchange/csv.h"
#include "core/exchange/observation_columns.h"
#include "core/report/summary_table.h"
#include "tests/ui/print/print_support.h"
#include "ui/print/month_figure.h"
#include "ui/print/month_files.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QJsonDocument>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <gtest/gtest.h>

#include <sstream>

namespace wickbook::ui {

namespace {

using namespace std::chrono_literals;
using test::day;

const date::year_month kMay = date::year{2025} / 5;

QByteArray bytes(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

/// Text of a PDF as an independent program reads it; empty where there is none such.
QString pdfText(const QString& path, const QStringList& options = {}) {
    const QString program = QStandardPaths::findExecutable(QStringLiteral("pdftotext"));
    if (program.isEmpty()) {
        return {};
    }
    QProcess process;
    process.start(program, QStringList(options) << path << QStringLiteral("-"));
    EXPECT_TRUE(process.waitForFinished(60000));
    return QString::fromUtf8(process.readAllStandardOutput());
}

std::vector<std::vector<std::string>> cells(const QByteArray& csv) {
    std::istringstream input(csv.toStdString());
    exchange::CsvReader reader(input);
    std::vector<std::vector<std::string>> rows;
    for (;;) {
        auto record = reader.next();
        EXPECT_TRUE(record.has_value());
        if (!record || !*record) {
            return rows;
        }
        rows.push_back((*record)->cells);
    }
}

class MonthFilesCase : public ::testing::Test {
protected:
    QStringList write(const report::MonthReport& report, Paper paper = Paper::A4,
                      const QLocale& locale = QLocale(QLocale::English, QLocale::UnitedKingdom)) {
        const auto written =
            writeMonthFiles(report, {folder_.filePath(QStringLiteral("may")), paper, locale});
        EXPECT_TRUE(written.has_value()) << (written ? "" : written.error().sentence.toStdString());
        return written.value_or(QStringList{});
    }
    [[nodiscard]] QString path(const char* name) const {
        return folder_.filePath(QStringLiteral("may/") + QLatin1String(name));
    }
    QTemporaryDir folder_;
};

TEST_F(MonthFilesCase, EveryFileIsThereAndNothingElse) {
    write(test::month(test::station({9h, 21h}), kMay));
    EXPECT_EQ(QDir(folder_.filePath(QStringLiteral("may"))).entryList(QDir::Files, QDir::Name),
              (QStringList{"chart.png", "chart.svg", "month.csv", "month.csv-metadata.json", "paragraph.txt",
                           "report.pdf", "summary.csv"}));
}

TEST_F(MonthFilesCase, TablesAreTheRowsOfTheCore) {
    const auto report = test::month(test::station({9h, 21h}), kMay);
    write(report);
    const auto rows = cells(bytes(path("month.csv")));
    ASSERT_EQ(rows.size(), report.readings.size() + 1);
    EXPECT_EQ(rows[0], exchange::observationHeader());
    for (std::size_t i = 0; i < report.readings.size(); ++i) {
        EXPECT_EQ(rows[i + 1], exchange::observationRow(report.readings[i], report.station));
    }
    auto expected = report::summaryRows(report.summary);
    expected.insert(expected.begin(), report::summaryHeader());
    EXPECT_EQ(cells(bytes(path("summary.csv"))), expected);
    EXPECT_FALSE(QJsonDocument::fromJson(bytes(path("month.csv-metadata.json"))).isNull());
}

TEST_F(MonthFilesCase, PictureIsOfPrintSizeAndSvgIsWellFormed) {
    write(test::month(test::station({9h, 21h}), kMay));
    const QImage picture(path("chart.png"));
    EXPECT_EQ(picture.width(), 2400);
    // 300 dots an inch are 11811 a metre.
    EXPECT_NEAR(picture.dotsPerMeterX(), 11811, 2);
    QXmlStreamReader svg(bytes(path("chart.svg")));
    bool hasText = false;
    while (!svg.atEnd()) {
        hasText =
            svg.readNext() == QXmlStreamReader::Characters && svg.text().contains(QLatin1String("Elder Bank"))
                ? true
                : hasText;
    }
    EXPECT_FALSE(svg.hasError()) << svg.errorString().toStdString();
    EXPECT_TRUE(hasText);
}

TEST_F(MonthFilesCase, ReportSaysWhatItMustAndNeverDailyMean) {
    const auto report = test::month(test::station({9h, 21h}), kMay, [](record::StoredObservation& stored) {
        return stored.values.hour != record::ObservingHour{day(2025, 5, 10), 9h};
    });
    write(report);
    const QString text = pdfText(path("report.pdf")).simplified();
    if (text.isEmpty()) {
        GTEST_SKIP() << "pdftotext is not installed: the report's text was not read back";
    }
    for (const char* words : {"Elder Bank", "invented station", "May 2025", "at observing hours",
                              "counted (n)", "mean of observing hours", "missing",
                              "How the numbers were made", "in a louvred screen", "84.0 m"}) {
        EXPECT_TRUE(text.contains(QLatin1String(words))) << words;
    }
    EXPECT_FALSE(text.contains(QLatin1String("daily mean"), Qt::CaseInsensitive));
    EXPECT_TRUE(text.contains(QStringLiteral("61"))) << "n of the month: 62 hours but one";
}

TEST_F(MonthFilesCase, CommaLocaleReachesPaperButNotData) {
    write(test::month(test::station({9h}), kMay), Paper::A4, QLocale(QLocale::German, QLocale::Germany));
    EXPECT_TRUE(bytes(path("month.csv")).contains(",12.0,"));
    const QString text = pdfText(path("report.pdf"));
    if (text.isEmpty()) {
        GTEST_SKIP() << "pdftotext is not installed: the report's text was not read back";
    }
    EXPECT_TRUE(text.contains(QStringLiteral("12,0")));
    EXPECT_FALSE(text.contains(QStringLiteral("12.0")));
}

TEST_F(MonthFilesCase, PaperIsTheOneAskedFor) {
    // ISO 216 A4: 210 × 297 mm = 595 × 842 pt; ANSI Letter: 8.5 × 11 in = 612 × 792 pt.
    const auto report = test::month(test::station({9h}), kMay);
    for (const auto& [paper, width, height] :
         {std::tuple{Paper::A4, 595.0, 842.0}, std::tuple{Paper::Letter, 612.0, 792.0}}) {
        write(report, paper);
        const QByteArray pdf = bytes(path("report.pdf"));
        const auto box = pdf.indexOf("/MediaBox [0 0 ");
        ASSERT_GE(box, 0);
        const QList<QByteArray> numbers = pdf.mid(box + 15, 40).split(']').first().simplified().split(' ');
        EXPECT_NEAR(numbers[0].toDouble(), width, 1);
        EXPECT_NEAR(numbers[1].toDouble(), height, 1);
        EXPECT_TRUE(pdf.contains("Creator"));
        EXPECT_FALSE(pdf.contains(folder_.path().toUtf8()));
    }
}

TEST_F(MonthFilesCase, ManyHoursAndAnEmptyMonthAreReportedToo) {
    write(test::month(test::station({7h, 14h, 21h}), kMay));
    write(test::month(test::station({0h, 3h, 6h, 9h, 12h, 15h, 18h, 21h}), kMay));
    const auto none = [](record::StoredObservation&) { return false; };
    write(test::month(test::station({9h}), kMay, none));
    EXPECT_EQ(cells(bytes(path("month.csv"))).size(), 1U);
    write(test::month(test::station({}), kMay));
}

TEST_F(MonthFilesCase, WhatCannotBeWrittenIsSaidWithItsCause) {
    const auto report = test::month(test::station({9h}), kMay);
    QFile file(folder_.filePath(QStringLiteral("taken")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.close();
    const auto overFile =
        writeMonthFiles(report, {folder_.filePath(QStringLiteral("taken")), Paper::A4, QLocale::c()});
    ASSERT_FALSE(overFile.has_value());
    EXPECT_TRUE(overFile.error().sentence.contains(QStringLiteral("taken")));
    // A folder in a file's place: the name is taken by what can't be written over.
    ASSERT_TRUE(QDir(folder_.path()).mkpath(QStringLiteral("may/report.pdf/x")));
    const auto blocked =
        writeMonthFiles(report, {folder_.filePath(QStringLiteral("may")), Paper::A4, QLocale::c()});
    ASSERT_FALSE(blocked.has_value());
    EXPECT_TRUE(blocked.error().path.endsWith(QStringLiteral("report.pdf")));
    EXPECT_TRUE(blocked.error().sentence.contains(QStringLiteral("report.pdf")));
}

} // namespace

} // namespace wickbook::ui
