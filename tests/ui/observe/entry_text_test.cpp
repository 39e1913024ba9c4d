// SPDX-License-Identifier: GPL-3.0-or-later
// From what was typed to what is stored, and back.
#include "tests/support/open_book.h"
#include "ui/observe/entry_text.h"
#include "ui/observe/hour_chooser.h"
#include "ui/observe/thermometer_scale.h"

#include <QJsonObject>

namespace {

using namespace wickbook;
using test::day;

record::StationRecord londonByTheClock() {
    record::NewStation station = test::hillStation();
    station.hourRule = record::HourRule::Clock;
    return record::StationRecord(record::factsOf(station, [] { return record::Uuid::random(); }));
}

record::Instant utc(int year, unsigned month, unsigned dayOfMonth, int hour, int minute) {
    return date::sys_days{date::year{year} / date::month{month} / date::day{dayOfMonth}} +
           std::chrono::hours{hour} + std::chrono::minutes{minute};
}

ui::EntryText extraAt(QDate date, const QString& clock) {
    ui::EntryText entry;
    entry.date = date;
    entry.clock = clock;
    return entry;
}

// Clocks in the United Kingdom went forward at 01:00 UTC on 29 March 2026 and back at 01:00 UTC on 25 October
// 2026 (Summer Time Order 2002: last Sundays of March and October, 01:00 GMT).
TEST(EntryTime, TimeThatNeverCameIsToldNotGuessed) {
    const auto time = ui::entryTime(extraAt(QDate(2026, 3, 29), QStringLiteral("01:30")), londonByTheClock(),
                                    utc(2026, 3, 29, 12, 0));
    ASSERT_FALSE(time.has_value());
    EXPECT_EQ(time.error().field, ui::EntryField::Clock);
    EXPECT_FALSE(time.error().sentence.isEmpty());
}

TEST(EntryTime, TimeThatCameTwiceIsAsked) {
    ui::EntryText entry = extraAt(QDate(2026, 10, 25), QStringLiteral("01:30"));
    const auto now = utc(2026, 10, 25, 12, 0);
    const auto first = ui::entryTime(entry, londonByTheClock(), now);
    ASSERT_TRUE(first.has_value());
    EXPECT_TRUE(first->cameTwice);
    EXPECT_EQ(first->instant, utc(2026, 10, 25, 0, 30));
    entry.secondOfDouble = true;
    EXPECT_EQ(ui::entryTime(entry, londonByTheClock(), now)->instant, utc(2026, 10, 25, 1, 30));
}

TEST(EntryTime, NineByTheClockIsEightUtcInSummer) {
    ui::EntryText entry;
    entry.date = QDate(2026, 7, 1);
    entry.hourMinutes = 9 * 60;
    EXPECT_EQ(ui::entryTime(entry, londonByTheClock(), utc(2026, 7, 9, 12, 0))->instant,
              utc(2026, 7, 1, 8, 0));
}

TEST(EntryTime, ReadingForLateEveningMadePastMidnightIsOnTheNextDay) {
    ui::EntryText entry = extraAt(QDate(2026, 1, 10), QStringLiteral("00:20"));
    entry.hourMinutes = 21 * 60;
    EXPECT_EQ(ui::entryTime(entry, londonByTheClock(), utc(2026, 1, 12, 12, 0))->instant,
              utc(2026, 1, 11, 0, 20));
}

TEST(EntryText, GoesThroughADraftUnchanged) {
    ui::EntryText entry;
    entry.date = QDate(2026, 11, 22);
    entry.hourMinutes = 540;
    entry.dry = QStringLiteral(" 16,40");
    entry.wet = QStringLiteral("1x");
    entry.note = QStringLiteral("mist in the valley – \"thin\"");
    entry.weather = QStringLiteral("fog;rime");
    entry.secondOfDouble = true;
    entry.taken = ui::TakenCause{false, QStringLiteral("read one low"), QStringLiteral("1"),
                                 QStringLiteral("2"), QStringLiteral("ice")};
    EXPECT_EQ(ui::EntryText::fromJson(entry.toJson()), entry);
}

TEST(EntryText, WindIsAForce) {
    const auto station = londonByTheClock();
    ui::EntryText entry = extraAt(QDate(2026, 11, 22), QStringLiteral("09:00"));
    for (const char* bad : {"13", "-1", "2.5", "gale"}) {
        entry.wind = QString::fromLatin1(bad);
        const auto read = ui::readEntry(entry, station, utc(2026, 11, 22, 9, 5));
        ASSERT_FALSE(read.has_value()) << bad;
        EXPECT_EQ(read.error().field, ui::EntryField::Wind);
    }
    entry.wind = QStringLiteral("12");
    EXPECT_EQ(ui::readEntry(entry, station, utc(2026, 11, 22, 9, 5))->windBeaufort, 12);
}

TEST(EntryText, StoredObservationComesBackAsItWasRead) {
    const auto station = londonByTheClock();
    ui::EntryText entry = extraAt(QDate(2026, 11, 22), QStringLiteral("09:04"));
    entry.hourMinutes = 540;
    entry.dry = QStringLiteral("16.0");
    entry.wet = QStringLiteral("−0.6"); // a real minus
    entry.wick = QStringLiteral("ice");
    entry.weather = QStringLiteral("fog;rime");
    const auto read = ui::readEntry(entry, station, utc(2026, 11, 22, 9, 5));
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(ui::entryTextOf(*read), entry);
}

TEST(DateFromTyped, FollowsTheLocalesOrder) {
    const QLocale british(QLocale::English, QLocale::UnitedKingdom);
    const QLocale american(QLocale::English, QLocale::UnitedStates);
    const QLocale german(QLocale::German, QLocale::Germany);
    EXPECT_EQ(ui::dateFromTyped(british, QStringLiteral("3/11"), 2026), QDate(2026, 11, 3));
    EXPECT_EQ(ui::dateFromTyped(american, QStringLiteral("3/11/25"), 2026), QDate(2025, 3, 11));
    EXPECT_EQ(ui::dateFromTyped(german, QStringLiteral("3.11."), 2026), QDate(2026, 11, 3));
    EXPECT_EQ(ui::dateFromTyped(german, QStringLiteral("2026-11-03"), 2020), QDate(2026, 11, 3));
    EXPECT_FALSE(ui::dateFromTyped(british, QStringLiteral("31/2/2026"), 2026).isValid());
}

TEST(ThermometerScale, ShowsBothReadingsAndStaysWhileTheyFit) {
    record::Thermometer thermometer;
    thermometer.step = {1, 1};
    const auto scale = ui::scaleOf(&thermometer, 12);
    const auto same = scale.showing(12.0, 10.0);
    EXPECT_EQ(same.low, scale.low);
    const auto cold = scale.showing(-18.0, -18.4);
    EXPECT_LT(cold.low, -18.4);
    EXPECT_GT(cold.high, -18.0);
    const auto wide = scale.showing(45.0, 18.0);
    EXPECT_LT(wide.low, 18.0);
    EXPECT_GT(wide.high, 45.0);
}

TEST(ThermometerScale, DrawsNoFinerThanTheStationReads) {
    record::Thermometer whole;
    whole.step = {1, 0};
    EXPECT_EQ(ui::scaleOf(&whole, 12).markEvery(50), 1.0);
    record::Thermometer halves;
    halves.step = {5, 1};
    EXPECT_EQ(ui::scaleOf(&halves, 12).markEvery(50), 0.5);
    record::Thermometer tenths;
    EXPECT_EQ(ui::scaleOf(&tenths, 12).markEvery(50), 0.1);
    EXPECT_EQ(ui::scaleOf(&tenths, 12).markEvery(20), 0.2); // tenths would run together
}

} // namespace
