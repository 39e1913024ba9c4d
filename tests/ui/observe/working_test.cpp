// SPDX-License-Identifier: GPL-3.0-or-later
// The same answer twice: the equation's steps, and the marked cell of the station's own table.
#include "tests/support/open_book.h"
#include "ui/observe/working_dialog.h"
#include "ui/observe/working_excerpt.h"
#include "ui/observe/working_text.h"
#include "ui/style/tokens.h"

#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QMimeData>
#include <QTextDocument>

namespace {

using namespace wickbook;

record::StationRecord stationWith(psychrometry::Exposure exposure,
                                  units::TemperatureUnit unit = units::TemperatureUnit::Celsius) {
    record::NewStation station = test::hillStation();
    station.exposure = exposure;
    station.unit = unit;
    if (unit == units::TemperatureUnit::Fahrenheit) {
        station.lowestMark = {-20, 0};
        station.highestMark = {120, 0};
    }
    return record::StationRecord(record::factsOf(station, [] { return record::Uuid::random(); }));
}

record::DerivedReading readingOf(const record::StationRecord& station, units::Decimal dry, units::Decimal wet,
                                 record::WickState wick = record::WickState::NotGiven,
                                 std::optional<units::Decimal> pressure = std::nullopt) {
    record::Observation observation;
    const record::Instant now = date::sys_days{date::year{2026} / 11 / 22} + std::chrono::hours{9};
    record::placeInTime(observation, station, now);
    const units::TemperatureUnit unit = station.dryThermometerAt(now)->unit;
    observation.dry.value = units::ReadTemperature{dry, unit};
    observation.wet.value = units::ReadTemperature{wet, unit};
    observation.wick = wick;
    observation.pressure = pressure;
    return record::deriveReading(observation, station);
}

QString textOf(const record::DerivedReading& reading, const record::StationRecord& station,
               units::TemperatureUnit unit = units::TemperatureUnit::Celsius) {
    QTextDocument document;
    document.setHtml(
        ui::workingHtml(reading, station.periods().front(), unit, QStringLiteral("Hill"), ui::lightTokens()));
    return document.toPlainText();
}

void expectCellIsTheAnswer(const record::DerivedReading& reading, units::TemperatureUnit unit) {
    const auto excerpt = ui::workingExcerpt(reading, unit);
    ASSERT_TRUE(excerpt.has_value());
    const auto& cell = excerpt->humidity[excerpt->row][excerpt->column];
    ASSERT_TRUE(cell.has_value());
    ASSERT_TRUE(reading.humidityPercent().has_value());
    EXPECT_NEAR(*cell, *reading.humidityPercent(), 1e-6);
}

// 23 °C / 16 °C at 1013.25 hPa: 47.90 % whirled (printed tables 48 %; common practice, no source) and 44.54 %
// in a louvred screen with the coefficient of Sargent 1980.
TEST(WorkingExcerpt, CellOfAPrintedLineIsTheAnswer) {
    const auto whirled = stationWith(psychrometry::Exposure::Whirled);
    const auto reading =
        readingOf(whirled, {230, 1}, {160, 1}, record::WickState::NotGiven, units::Decimal{101325, 2});
    expectCellIsTheAnswer(reading, units::TemperatureUnit::Celsius);
    const auto excerpt = ui::workingExcerpt(reading, units::TemperatureUnit::Celsius);
    EXPECT_NEAR(*excerpt->humidity[excerpt->row][excerpt->column], 47.90, 0.05);
    EXPECT_EQ(excerpt->dryBulbs, (std::vector<double>{21, 22, 23, 24, 25}));
    EXPECT_EQ(excerpt->depressions, (std::vector<double>{6, 6.5, 7, 7.5, 8}));
    const auto screen = stationWith(psychrometry::Exposure::Screen);
    const auto slower =
        readingOf(screen, {230, 1}, {160, 1}, record::WickState::NotGiven, units::Decimal{101325, 2});
    const auto other = ui::workingExcerpt(slower, units::TemperatureUnit::Celsius);
    EXPECT_NEAR(*other->humidity[other->row][other->column], 44.54, 0.05);
}

TEST(WorkingExcerpt, ReadingInTenthsHasItsOwnRowAndColumnBetweenThePrintedOnes) {
    const auto station = stationWith(psychrometry::Exposure::Screen);
    const auto reading = readingOf(station, {164, 1}, {142, 1});
    expectCellIsTheAnswer(reading, units::TemperatureUnit::Celsius);
    const auto excerpt = ui::workingExcerpt(reading, units::TemperatureUnit::Celsius);
    ASSERT_EQ(excerpt->dryBulbs.size(), 5U);
    EXPECT_EQ(excerpt->row, 2U);
    EXPECT_EQ(excerpt->dryBulbs[1], 16.0);
    EXPECT_EQ(excerpt->dryBulbs[3], 17.0);
    // Between its printed neighbours in humidity too: drier with a greater depression.
    const auto& row = excerpt->humidity[excerpt->row];
    EXPECT_GT(*row[excerpt->column - 1], *row[excerpt->column]);
    EXPECT_LT(*row[excerpt->column + 1], *row[excerpt->column]);
}

TEST(WorkingExcerpt, EveryExposureIceAndFahrenheitAgreeWithTheAnswer) {
    using psychrometry::Exposure;
    for (const Exposure exposure :
         {Exposure::Aspirated, Exposure::Whirled, Exposure::SlingUs, Exposure::Screen, Exposure::Still}) {
        const auto station = stationWith(exposure);
        expectCellIsTheAnswer(readingOf(station, {164, 1}, {142, 1}), units::TemperatureUnit::Celsius);
        const auto ice = readingOf(station, {-20, 1}, {-31, 1}, record::WickState::Ice);
        expectCellIsTheAnswer(ice, units::TemperatureUnit::Celsius);
        EXPECT_TRUE(ui::workingExcerpt(ice, units::TemperatureUnit::Celsius)->ice);
        const auto water = readingOf(station, {-20, 1}, {-31, 1}, record::WickState::Water);
        expectCellIsTheAnswer(water, units::TemperatureUnit::Celsius);
        const auto fahrenheit = stationWith(exposure, units::TemperatureUnit::Fahrenheit);
        expectCellIsTheAnswer(readingOf(fahrenheit, {615, 1}, {570, 1}), units::TemperatureUnit::Fahrenheit);
    }
}

TEST(WorkingExcerpt, SaturatedAirIsTheFirstColumn) {
    const auto station = stationWith(psychrometry::Exposure::Screen);
    const auto equal = readingOf(station, {120, 1}, {120, 1});
    expectCellIsTheAnswer(equal, units::TemperatureUnit::Celsius);
    const auto above = readingOf(station, {120, 1}, {121, 1}); // within reading error: taken as saturated
    ASSERT_TRUE(above.derivation->takenAsSaturation);
    expectCellIsTheAnswer(above, units::TemperatureUnit::Celsius);
    EXPECT_EQ(ui::workingExcerpt(above, units::TemperatureUnit::Celsius)->column, 0U);
    EXPECT_TRUE(textOf(above, station).contains(QStringLiteral("taken as saturated")));
}

TEST(WorkingExcerpt, MeltingIceReadATenthAboveZeroIsZero) {
    const auto station = stationWith(psychrometry::Exposure::Screen);
    const auto reading = readingOf(station, {20, 1}, {1, 1}, record::WickState::Ice);
    ASSERT_TRUE(reading.humidityPercent().has_value());
    expectCellIsTheAnswer(reading, units::TemperatureUnit::Celsius);
    EXPECT_TRUE(textOf(reading, station).contains(QStringLiteral("e = f")));
}

TEST(Working, NoVapourShowsTheEquationAndAnEmptyCell) {
    const auto station = stationWith(psychrometry::Exposure::Whirled);
    const auto reading = readingOf(station, {200, 1}, {20, 1});
    ASSERT_EQ(reading.derivation->problem, psychrometry::PsychrometryError::NoVapour);
    const auto excerpt = ui::workingExcerpt(reading, units::TemperatureUnit::Celsius);
    ASSERT_TRUE(excerpt.has_value());
    EXPECT_FALSE(excerpt->humidity[excerpt->row][excerpt->column].has_value());
    const QString text = textOf(reading, station);
    EXPECT_TRUE(text.contains(QStringLiteral("The cell is empty"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("× (20.00 − 2.00) = −"))) << text.toStdString();
}

TEST(Working, WithoutAWickBelowZeroThereIsASentenceAndNoTable) {
    const auto station = stationWith(psychrometry::Exposure::Screen);
    const auto reading = readingOf(station, {-10, 1}, {-14, 1});
    EXPECT_FALSE(ui::workingExcerpt(reading, units::TemperatureUnit::Celsius).has_value());
    EXPECT_FALSE(textOf(reading, station).isEmpty());
}

TEST(Working, IceBulbAboveTheDryBulbInFogHasStepsButNoTable) {
    const auto station = stationWith(psychrometry::Exposure::Screen);
    const auto reading = readingOf(station, {-50, 1}, {-49, 1}, record::WickState::Ice);
    ASSERT_TRUE(reading.humidityPercent().has_value());
    EXPECT_FALSE(ui::workingExcerpt(reading, units::TemperatureUnit::Celsius).has_value());
    EXPECT_TRUE(textOf(reading, station).contains(QStringLiteral("(−5.00) − (−4.90)")))
        << textOf(reading, station).toStdString();
}

TEST(Working, FahrenheitIsConvertedBeforeTheEquation) {
    const auto station = stationWith(psychrometry::Exposure::Screen, units::TemperatureUnit::Fahrenheit);
    const auto reading = readingOf(station, {615, 1}, {570, 1});
    const QString text = textOf(reading, station, units::TemperatureUnit::Fahrenheit);
    EXPECT_TRUE(text.contains(QStringLiteral("61.50 °F, that is 16.39 °C"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("°F"))); // the dew point too
    EXPECT_TRUE(text.contains(QStringLiteral("▸ 61.5")));
    EXPECT_TRUE(text.contains(QStringLiteral("▾ 4.5")));
}

class WorkingDialogTest : public ::testing::Test {
protected:
    void SetUp() override {
        dialog_.showWorking([this](const ui::Tokens& tokens) {
            return ui::workingHtml(reading_, station_.periods().front(), units::TemperatureUnit::Celsius,
                                   QStringLiteral("Invented Hill"), tokens);
        });
    }
    record::StationRecord station_ = stationWith(psychrometry::Exposure::Screen);
    record::DerivedReading reading_ = readingOf(station_, {164, 1}, {142, 1});
    ui::WorkingDialog dialog_;
};

TEST_F(WorkingDialogTest, CopiesAsTextAndAsAPicture) {
    dialog_.copyText();
    const QMimeData* copied = QApplication::clipboard()->mimeData();
    ASSERT_NE(copied, nullptr);
    EXPECT_TRUE(copied->hasText() && copied->hasHtml());
    EXPECT_TRUE(copied->text().contains(QStringLiteral("Relative humidity")));
    dialog_.copyPicture();
    const QImage picture = QApplication::clipboard()->image();
    EXPECT_GT(picture.width(), 1000);
    EXPECT_GT(picture.height(), 300);
    // Dark on light, and not empty.
    const QImage small = picture.scaled(200, 120);
    int dark = 0;
    for (int y = 0; y < small.height(); ++y) {
        for (int x = 0; x < small.width(); ++x) {
            dark += qGray(small.pixel(x, y)) < 200 ? 1 : 0;
        }
    }
    EXPECT_GT(dark, 50);
    EXPECT_GT(qGray(picture.pixel(2, 2)), 240);
}

TEST_F(WorkingDialogTest, KeepsAPdfAndSaysWhenItCannot) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("working.pdf"));
    EXPECT_EQ(dialog_.writePdf(path), QString());
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.read(5) == "%PDF-");
    EXPECT_GT(file.size(), 2000);
    EXPECT_FALSE(dialog_.writePdf(folder.filePath(QStringLiteral("nowhere/working.pdf"))).isEmpty());
}

} // namespace
