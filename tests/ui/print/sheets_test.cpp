// SPDX-License-Identifier: GPL-3.0-or-later
// Sheets on paper, as PDF files that are read back by poppler's tools where they are installed: the figures
// are those of derive(), the text can be selected, fonts are embedded, everything stands within the margins.
#include "core/psychrometry/derive.h"
#include "core/report/blank_month.h"
#include "tests/core/climate/month_builder.h"
#include "tests/ui/print/pdf_support.h"
#include "ui/print/deputy_card.h"
#include "ui/print/humidity_table_sheet.h"
#include "ui/print/month_form.h"

#include <QRegularExpression>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include <cmath>

namespace wickbook::ui {

namespace {

using namespace climate::testing;
using psychrometry::Surface;
using namespace test;

class Sheets : public ::testing::Test {
protected:
    QString write(const PaperSheet& sheet) {
        const QString path = folder_.filePath(QStringLiteral("sheet.pdf"));
        const auto written = writeSheetPdf(sheet, path);
        EXPECT_TRUE(written) << written.error().sentence.toStdString();
        return path;
    }
    QTemporaryDir folder_;
};

psychrometry::HumidityTable tableOf(units::TemperatureUnit unit, psychrometry::Exposure exposure) {
    psychrometry::HumidityTableRequest request;
    request.unit = unit;
    request.coefficient.exposure = exposure;
    request.pressure = units::Pressure::fromHectopascals(950);
    if (unit == units::TemperatureUnit::Fahrenheit) {
        request.lowestDry = 14;
        request.highestDry = 95;
        request.highestDepression = 22;
        request.depressionStep = 1;
    }
    return *psychrometry::humidityTable(request);
}

// The same question asked of derive(), which tests/core/psychrometry holds against published tables.
TEST_F(Sheets, EveryCellOfTheTableIsWhatDeriveGives) {
    for (const auto unit : {units::TemperatureUnit::Celsius, units::TemperatureUnit::Fahrenheit}) {
        for (const auto exposure : {psychrometry::Exposure::Screen, psychrometry::Exposure::Whirled,
                                    psychrometry::Exposure::Aspirated, psychrometry::Exposure::SlingUs}) {
            const auto table = tableOf(unit, exposure);
            int compared = 0;
            for (const auto* rows : {&table.waterRows, &table.iceRows}) {
                for (const auto& row : *rows) {
                    for (std::size_t column = 0; column < row.cells.size(); ++column) {
                        const auto& cell = row.cells[column];
                        if (!cell.humidity || cell.humidity->percent() > 100) {
                            continue; // beyond saturation derive() asks questions of its own
                        }
                        const auto temperature = [&](double degrees) {
                            return unit == units::TemperatureUnit::Celsius
                                       ? units::Temperature::fromCelsius(degrees)
                                       : units::Temperature::fromFahrenheit(degrees);
                        };
                        psychrometry::PairInput pair;
                        pair.dry = temperature(row.dry);
                        pair.wet = temperature(row.dry - table.depressions[column]);
                        pair.wick = row.bulb == Surface::Ice ? psychrometry::WickState::Ice
                                                             : psychrometry::WickState::Water;
                        pair.pressure = table.request.pressure;
                        pair.coefficient = table.request.coefficient;
                        const auto derived = psychrometry::derive(pair);
                        ASSERT_FALSE(derived.problem) << row.dry << " less " << table.depressions[column];
                        ASSERT_TRUE(derived.relativeHumidity);
                        EXPECT_NEAR(derived.relativeHumidity->percent(), cell.humidity->percent(), 1e-9);
                        if (cell.dewPoint && derived.dewPoint) {
                            EXPECT_NEAR(derived.dewPoint->celsius(), cell.dewPoint->celsius(), 1e-9);
                        }
                        ++compared;
                    }
                }
            }
            EXPECT_GT(compared, 500);
        }
    }
}

TEST_F(Sheets, TheTableOnPaperHasTheModelsFigures) {
    if (!hasPoppler()) {
        GTEST_SKIP() << "pdftotext is not installed: the printed figures were not read back.";
    }
    const auto table = tableOf(units::TemperatureUnit::Celsius, psychrometry::Exposure::Screen);
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        const QString path =
            write(humidityTableSheet({table, QStringLiteral("Testfield")}, QLocale::c(), paper));
        expectSoundPages(path, 15);
        const QStringList lines = textOf(path).split(QLatin1Char('\n'));
        // The first part: humidity with water, thirteen columns from 0.0 on, the dry bulb at both sides.
        int rows = 0;
        for (const auto& row : table.waterRows) {
            QStringList wanted{QString::number(row.dry).replace(QLatin1Char('-'), QChar(0x2212))};
            for (std::size_t column = 0; column < 13; ++column) {
                if (row.cells[column].humidity) {
                    wanted << QString::number(std::lround(row.cells[column].humidity->percent()));
                }
            }
            wanted << wanted.front();
            const bool found = std::any_of(lines.begin(), lines.end(), [&](const QString& line) {
                return line.simplified() == wanted.join(QLatin1Char(' '));
            });
            EXPECT_TRUE(found) << wanted.join(QLatin1Char(' ')).toStdString();
            rows += found ? 1 : 0;
        }
        EXPECT_EQ(rows, 46);
        const QString text = lines.join(QLatin1Char('\n'));
        EXPECT_TRUE(text.contains(QStringLiteral("ICE on the wick")));
        EXPECT_TRUE(text.contains(QStringLiteral("950 hPa")));
        EXPECT_TRUE(text.contains(QStringLiteral("Not for aviation")));
    }
}

TEST_F(Sheets, ThePressureNamedIsGoodToOnePercent) {
    const auto table = tableOf(units::TemperatureUnit::Celsius, psychrometry::Exposure::Whirled);
    const double reach = pressureWithinOnePercent(table);
    for (const double sign : {-1.0, 1.0}) {
        auto other = table.request;
        other.pressure = units::Pressure::fromHectopascals(other.pressure.hectopascals() + sign * reach);
        const auto shifted = *psychrometry::humidityTable(other);
        double most = 0;
        for (std::size_t row = 0; row < table.waterRows.size(); ++row) {
            for (std::size_t column = 0; column < table.depressions.size(); ++column) {
                const auto& here = table.waterRows[row].cells[column].humidity;
                const auto& there = shifted.waterRows[row].cells[column].humidity;
                if (here && there && here->percent() <= 100) {
                    most = std::max(most, std::abs(here->percent() - there->percent()));
                }
            }
        }
        EXPECT_LE(most, 1.02);
        EXPECT_GE(most, 0.8) << "the range named is needlessly narrow";
    }
}

TEST_F(Sheets, AFormHasALineForEveryPlannedHour) {
    // March 2025 in London, hours by the clock, one of them at 01:30: skipped on the 30th.
    const record::StationRecord station{stationFacts({90min, 21h}, "Europe/London")};
    const auto blank = report::blankMonth(station, 2025_y / 3);
    EXPECT_EQ(blank.lines.size(), 61U);
    EXPECT_EQ(report::blankMonthRows(blank).size(), 61U);
    EXPECT_EQ(report::blankMonthRows(blank).front().at(0), "2025-03-01");
    EXPECT_EQ(report::blankMonthRows(blank).front().at(1), "01:30");
    EXPECT_TRUE(blank.whirled);
    EXPECT_TRUE(blank.dryTenths);
    if (!hasPoppler()) {
        GTEST_SKIP() << "pdftotext is not installed: the form was not read back.";
    }
    const QString path = write(monthFormSheet(blank, QLocale::c(), Paper::A4));
    expectSoundPages(path, 15);
    const QString text = textOf(path);
    EXPECT_EQ(text.count(QRegularExpression(QStringLiteral("\\b21 h\\b"))), 31);
    EXPECT_EQ(text.count(QRegularExpression(QStringLiteral("\\b1:30\\b|\\b1\\.30\\b"))), 30)
        << text.toStdString();
    EXPECT_TRUE(text.simplified().contains(QStringLiteral("wet bulb first"))) << text.toStdString();
}

TEST_F(Sheets, TheDeputysCardFitsBothSidesOfA5) {
    record::StationFacts facts = stationFacts();
    record::Absence away;
    away.id = record::Uuid::random();
    away.from = record::StationDate{2025_y / 8 / 3};
    away.to = record::StationDate{2025_y / 8 / 12};
    away.deputy = "JB";
    facts.absences.push_back(away);
    const record::StationRecord station{facts};
    if (!hasPoppler()) {
        GTEST_SKIP() << "pdftotext is not installed: the card was not read back.";
    }
    const QString path = write(deputyCardSheet(station, record::StationDate{2025_y / 7 / 30}, QLocale::c()));
    expectSoundPages(path, 10);
    const QString text = textOf(path).simplified();
    EXPECT_TRUE(text.contains(QStringLiteral("3 Aug to 12 Aug; JB reads"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("read the wet bulb first"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Spilled mercury is poisonous")));
    const QString info = tool(QStringLiteral("pdfinfo"), {path});
    EXPECT_TRUE(info.contains(QRegularExpression(QStringLiteral("Pages:\\s+2\\n")))) << info.toStdString();
    EXPECT_TRUE(info.contains(QStringLiteral("420 x 595"))) << info.toStdString();
    // Once it is over, the absence is not on the card any more.
    const QString later =
        textOf(write(deputyCardSheet(station, record::StationDate{2025_y / 8 / 13}, QLocale::c())));
    EXPECT_FALSE(later.contains(QStringLiteral("JB reads")));
}

} // namespace

} // namespace wickbook::ui
