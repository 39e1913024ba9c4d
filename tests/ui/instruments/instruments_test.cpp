// SPDX-License-Identifier: GPL-3.0-or-later
// Looking after the instrument: a new thermometer, a correction that comes late, checks, a moved screen.
#include "core/record/derived_reading.h"
#include "tests/ui/instruments/instrument_case.h"

namespace {

using namespace wickbook;
using test::day;
using test::InstrumentCase;

TEST_F(InstrumentCase, AnEmptyStationShowsItsPairAndSaysWhatIsMissing) {
    const auto labels = page->findChildren<QLabel*>();
    const bool told = std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->text().contains(QStringLiteral("none known; readings are used as they are read"));
    });
    EXPECT_TRUE(told);
    EXPECT_EQ(open("thermometer").count(), 2);
    EXPECT_EQ(open("correction").count(), 0);
    EXPECT_EQ(open("fitting").count(), 1);
    EXPECT_EQ(open("coefficient").count(), 1);
}

// A new wet thermometer that reads 0.3 °C high hangs from 1 October; its certificate comes six weeks later
// and is applied from its date: the months it changes are shown first, what was read stays.
TEST_F(InstrumentCase, ACertificateThatComesLateHoldsFromItsDate) {
    keepDays(day(2026, 9, 20), 60);
    open("thermometer");
    whenAsked([&](QDialog& dialog) {
        type(dialog, "thermometerName", "W-2");
        choose(dialog, "thermometerHangs", QStringLiteral("as the wet bulb"));
        type(dialog, "thermometerFrom", "2026-10-01");
        keep(dialog);
    });
    QTest::keyClick(&on<QListWidget>(*page, "thermometerList"), Qt::Key_Insert);
    const record::StationRecord& station = book.session().station();
    const record::Instant october = record::startOfDate(day(2026, 10, 1), station);
    EXPECT_EQ(station.wetThermometerAt(october)->name, "W-2");
    EXPECT_NE(station.wetThermometerAt(october - std::chrono::seconds{1})->name, "W-2");
    const double before = humidityAt(day(2026, 10, 5), 9);

    open("correction");
    QString sentence;
    int months = 0;
    whenAsked([&](QDialog& dialog) {
        choose(dialog, "correctionThermometer", QStringLiteral("W-2"));
        type(dialog, "correctionFrom", "2026-10-01");
        auto& points = on<QTableWidget>(dialog, "correctionPoints");
        points.setItem(0, 0, new QTableWidgetItem(QStringLiteral("0")));
        points.setItem(0, 1, new QTableWidgetItem(QStringLiteral("-0,3")));
        points.setItem(1, 0, new QTableWidgetItem(QStringLiteral("20")));
        points.setItem(1, 1, new QTableWidgetItem(QStringLiteral("−0.3")));
        type(dialog, "correctionUncertainty", "0.05");
        type(dialog, "correctionSource", "certificate 1234");
        QTest::keyClick(&dialog, Qt::Key_Return);
        auto& button = on<QPushButton>(dialog, "factKeep");
        ASSERT_TRUE(QTest::qWaitFor([&] { return button.text() == QStringLiteral("Keep it"); }, 20'000));
        sentence = on<QLabel>(dialog, "previewSentence").text();
        months = on<QTableWidget>(dialog, "previewMonths").rowCount();
        button.click();
    });
    QTest::keyClick(&on<QListWidget>(*page, "correctionList"), Qt::Key_Insert);
    EXPECT_TRUE(sentence.contains(QStringLiteral("in 2 months"))) << sentence.toStdString();
    EXPECT_EQ(months, 2); // October and November, not September
    const double after = humidityAt(day(2026, 10, 5), 9);
    // 20.0/14.7 against 20.0/15.0 in a screen at sea level: about 3 % RH less (core/psychrometry's own checks
    // hold the number; 1.07 % RH a tenth at 10 °C and 0.73 at 20 °C, OIML Bulletin 123).
    EXPECT_NEAR(before - after, 2.2, 0.5);
    EXPECT_EQ(book.at(day(2026, 10, 5), 9)->wet.value->value, (units::Decimal{150, 1})); // as read
    EXPECT_EQ(humidityAt(day(2026, 9, 25), 9), before);

    book.session().undoStack().undo();
    EXPECT_EQ(humidityAt(day(2026, 10, 5), 9), before);
    book.session().undoStack().redo();
    EXPECT_EQ(humidityAt(day(2026, 10, 5), 9), after);
    const auto report = book.session().book().verify();
    ASSERT_TRUE(report && report->sound());
}

TEST_F(InstrumentCase, ACorrectionMustSayWhatAndWhence) {
    open("correction");
    QStringList said;
    whenAsked([&](QDialog& dialog) {
        const auto enter = [&] {
            QTest::keyClick(&dialog, Qt::Key_Return);
            said << on<QLabel>(dialog, "factMessage").text();
        };
        type(dialog, "correctionSource", "certificate");
        enter();
        auto& points = on<QTableWidget>(dialog, "correctionPoints");
        points.setItem(0, 0, new QTableWidgetItem(QStringLiteral("abc")));
        enter();
        points.item(0, 0)->setText(QStringLiteral("10"));
        points.setItem(0, 1, new QTableWidgetItem(QStringLiteral("25")));
        enter();
        points.item(0, 1)->setText(QStringLiteral("0.1"));
        points.setItem(1, 0, new QTableWidgetItem(QStringLiteral("10")));
        points.setItem(1, 1, new QTableWidgetItem(QStringLiteral("0.2")));
        enter();
        points.item(1, 0)->setText(QStringLiteral("20"));
        type(dialog, "correctionUncertainty", "-1");
        enter();
        type(dialog, "correctionUncertainty", "0");
        type(dialog, "correctionSource", "");
        enter();
        type(dialog, "correctionSource", "certificate");
        type(dialog, "correctionFrom", "1 May");
        enter();
        dialog.reject();
    });
    QTest::keyClick(&on<QListWidget>(*page, "correctionList"), Qt::Key_Insert);
    ASSERT_EQ(said.size(), 7);
    EXPECT_TRUE(said[0].contains(QStringLiteral("at least one point")));
    EXPECT_TRUE(said[1].contains(QStringLiteral("line 1")));
    EXPECT_TRUE(said[2].contains(QStringLiteral("broken thermometer")));
    EXPECT_TRUE(said[3].contains(QStringLiteral("Two points")));
    EXPECT_TRUE(said[4].contains(QStringLiteral("not below zero")));
    EXPECT_TRUE(said[5].contains(QStringLiteral("where the correction comes from")));
    EXPECT_FALSE(said[6].isEmpty());
    EXPECT_TRUE(book.session().station().facts().corrections.empty());
}

TEST_F(InstrumentCase, TheIcePointsOfAPairCheckBecomeCorrections) {
    keepDays(day(2026, 11, 1), 20);
    open("pairCheck");
    whenAsked([&](QDialog& dialog) {
        type(dialog, "pairDate", "2026-11-10");
        type(dialog, "pairDryIce", "0,2");
        type(dialog, "pairWetIce", "−0.1");
        type(dialog, "pairDryBath", "20.3");
        type(dialog, "pairWetBath", "20.0");
        EXPECT_TRUE(on<QLabel>(dialog, "pairVerdict").text().contains(QStringLiteral("differ by more than")));
        keep(dialog);
    });
    QTest::keyClick(&on<QListWidget>(*page, "pairCheckList"), Qt::Key_Insert);
    ASSERT_EQ(book.session().station().facts().pairChecks.size(), 1U);
    EXPECT_TRUE(book.session().station().facts().corrections.empty());

    whenAsked([&](QDialog& dialog) { keep(dialog); });
    on<QPushButton>(*page, "pairCheckTakeOver").click();
    ASSERT_EQ(book.session().station().facts().corrections.size(), 2U);
    const auto& station = book.session().station();
    const record::Instant then = record::startOfDate(day(2026, 11, 10), station);
    EXPECT_NEAR(
        record::correctionAtReading(*station.correctionAt(station.dryThermometerAt(then)->id, then), 15),
        -0.2, 1e-9);
    EXPECT_EQ(station.correctionAt(station.dryThermometerAt(then)->id, then - std::chrono::seconds{1}),
              nullptr);
    // Both corrections are one step.
    book.session().undoStack().undo();
    EXPECT_TRUE(book.session().station().facts().corrections.empty());
}

// A station moved by 400 m is a period of its own; exposure and an own coefficient are periods too.
TEST_F(InstrumentCase, AnOwnCoefficientHoldsFromItsDate) {
    keepDays(day(2026, 10, 25), 14);
    const double screen = humidityAt(day(2026, 11, 3), 9);
    const double october = humidityAt(day(2026, 10, 28), 9);
    open("coefficient");
    whenAsked([&](QDialog& dialog) {
        type(dialog, "coefficientFrom", "2026-11-01");
        auto& exposure = on<QComboBox>(dialog, "coefficientExposure");
        exposure.setCurrentIndex(exposure.findData(static_cast<int>(psychrometry::Exposure::Own)));
        QTest::keyClick(&dialog, Qt::Key_Return);
        EXPECT_TRUE(on<QLabel>(dialog, "factMessage").text().contains(QStringLiteral("own coefficient")));
        type(dialog, "coefficientWater", "6,66");
        type(dialog, "coefficientUncertainty", "3");
        type(dialog, "coefficientPressure", "1003.5");
        keep(dialog);
    });
    QTest::keyClick(&on<QListWidget>(*page, "coefficientList"), Qt::Key_Insert);
    EXPECT_EQ(humidityAt(day(2026, 10, 28), 9), october);
    EXPECT_GT(humidityAt(day(2026, 11, 3), 9), screen);
    const auto stored = book.session().book().atHour({day(2026, 11, 3), std::chrono::hours{9}});
    const auto derived = record::deriveReading(**stored, book.session().station());
    EXPECT_EQ(derived.pressureSource, record::PressureSource::StationMean);
    EXPECT_NEAR(derived.pressure.hectopascals(), 1003.5, 1e-9);
    EXPECT_NEAR(derived.derivation->coefficient->perKelvin, 6.66e-4, 1e-12);
    EXPECT_NEAR(derived.derivation->coefficient->relativeUncertainty, 0.03, 1e-12);
}

TEST_F(InstrumentCase, ABathWithoutIceGivesNoCorrection) {
    record::PairCheck check;
    check.id = record::Uuid::random();
    check.date = day(2026, 11, 2);
    check.dry = book.session().station().facts().thermometers[0].id;
    check.wet = book.session().station().facts().thermometers[1].id;
    check.dryInBath = units::ReadTemperature{{203, 1}, units::TemperatureUnit::Celsius};
    check.wetInBath = units::ReadTemperature{{200, 1}, units::TemperatureUnit::Celsius};
    record::StationFacts facts = book.session().station().facts();
    facts.pairChecks.push_back(check);
    ASSERT_TRUE(book.session().reviseFacts(facts, {"A", ""}));
    open("pairCheck").setCurrentRow(0);
    on<QPushButton>(*page, "pairCheckTakeOver").click();
    EXPECT_EQ(message("pairCheck"),
              QStringLiteral("This check has no ice point, and a difference alone does not say "
                             "which thermometer errs."));
}

TEST_F(InstrumentCase, TheBeginningStays) {
    auto& list = open("coefficient");
    list.setCurrentRow(0);
    QTest::keyClick(&list, Qt::Key_Delete);
    EXPECT_EQ(message("coefficient"),
              QStringLiteral("The beginning can't be taken back, for the pair must hang somehow. "
                             "Change it instead."));
}

TEST_F(InstrumentCase, ThermometerInUseIsNotTakenBackUnderItsReadings) {
    auto& list = open("thermometer");
    list.setCurrentRow(0);
    QTest::keyClick(&list, Qt::Key_Delete);
    EXPECT_TRUE(message("thermometer").contains(QStringLiteral("take it down")));
    EXPECT_EQ(book.session().station().facts().thermometers.size(), 2U);
}

TEST_F(InstrumentCase, WickAndWaterAreWrittenDownAndRemembered) {
    open("wick");
    whenAsked([&](QDialog& dialog) {
        type(dialog, "wickDate", "2026-11-01");
        keep(dialog);
    });
    QTest::keyClick(&on<QListWidget>(*page, "wickList"), Qt::Key_Insert);
    const auto log =
        desk::wickCare(book.session().book(), book.session().station(), day(2026, 1, 1), day(2026, 11, 22));
    ASSERT_TRUE(log);
    ASSERT_EQ(log->size(), 1U);
    const QString words = ui::lastWickWords(QLocale::c(), *log, book.session().today());
    EXPECT_TRUE(words.contains(QStringLiteral("21 days ago"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("frayed")));
    // To come is not yet done.
    whenAsked([&](QDialog& dialog) {
        type(dialog, "wickDate", "2027-01-01");
        QTest::keyClick(&dialog, Qt::Key_Return);
        EXPECT_TRUE(on<QLabel>(dialog, "factMessage").text().contains(QStringLiteral("still to come")));
        dialog.reject();
    });
    on<QPushButton>(*page, "wickAdd").click();
    book.session().undoStack().undo();
    EXPECT_TRUE(book.session().station().facts().diary.empty());
}

TEST_F(InstrumentCase, ASensorOverSaltsIsJudged) {
    open("saltCheck");
    whenAsked([&](QDialog& dialog) {
        type(dialog, "saltSensor", "invented sensor 3");
        type(dialog, "saltTemperature", "24.5");
        type(dialog, "salt3", "79");
        EXPECT_TRUE(on<QLabel>(dialog, "saltVerdict").text().contains(QStringLiteral("more than 2 % off")));
        keep(dialog);
    });
    QTest::keyClick(&on<QListWidget>(*page, "saltCheckList"), Qt::Key_Insert);
    ASSERT_EQ(book.session().station().facts().saltChecks.size(), 1U);
    EXPECT_EQ(book.session().station().facts().saltChecks.front().readings.front().salt,
              record::Salt::SodiumChloride);
}

TEST_F(InstrumentCase, EverythingIsThereWhenTheBookIsOpenedAgain) {
    record::StationFacts facts = book.session().station().facts();
    record::PairCheck check;
    check.id = record::Uuid::random();
    check.date = day(2026, 11, 2);
    check.dry = facts.thermometers[0].id;
    check.wet = facts.thermometers[1].id;
    check.dryAtIce = units::ReadTemperature{{1, 1}, units::TemperatureUnit::Celsius};
    facts.pairChecks.push_back(check);
    record::SaltCheck salts;
    salts.id = record::Uuid::random();
    salts.date = day(2026, 11, 3);
    salts.sensor = "S";
    salts.temperature = units::Decimal{251, 1};
    salts.readings = {{record::Salt::LithiumChloride, {112, 1}}, {record::Salt::PotassiumSulphate, {97, 0}}};
    facts.saltChecks.push_back(salts);
    record::SideBySide other;
    other.id = record::Uuid::random();
    other.name = "new screen";
    other.purpose = record::BesidePurpose::Overlap;
    other.from = day(2026, 11, 1);
    other.to = day(2027, 10, 31);
    other.exposure = psychrometry::Exposure::Aspirated;
    other.humidityUncertainty = 1.5;
    other.decision = "joined";
    facts.sideBySides.push_back(other);
    record::BesideReading reading;
    reading.id = record::Uuid::random();
    reading.comparison = other.id;
    reading.instant = book.session().now();
    reading.humidity = units::Decimal{655, 1};
    reading.otherDry = units::ReadTemperature{{201, 1}, units::TemperatureUnit::Celsius};
    reading.otherWick = record::WickState::Ice;
    reading.windBeaufort = 3;
    reading.pressure = units::Decimal{10011, 1};
    facts.besideReadings.push_back(reading);
    facts.periods.front().meanPressure = 987.5;
    ASSERT_TRUE(book.session().reviseFacts(facts, {"A", ""}));
    const auto again =
        store::Book::open(std::filesystem::path{book.path().toStdString()}, store::OpenMode::ReadOnly);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->station()->facts(), facts);
    EXPECT_TRUE(again->verify()->sound());
}

} // namespace
