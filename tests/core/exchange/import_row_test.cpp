// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"
#include "tests/core/exchange/stations.h"

#include <gtest/gtest.h>

namespace wickbook::exchange {
namespace {

using testing::celsius;
using testing::fahrenheit;
using testing::station;
using Fields = std::map<ImportField, std::string>;

Fields row(Fields more) {
    more.emplace(ImportField::Time, "2025-03-01T09:00Z");
    return more;
}

record::Observation read(const Fields& fields, const ImportOptions& options = {},
                         const record::StationRecord& at = station()) {
    const auto values = observationFromFields(fields, at, options);
    EXPECT_TRUE(values) << (values ? ""
                                   : std::string(reasonName(values.error().reason)) + " " +
                                         values.error().field);
    return values.value_or(record::Observation{});
}

std::string refusal(const Fields& fields, const ImportOptions& options = {}) {
    const auto values = observationFromFields(fields, station(), options);
    if (values) {
        return "taken";
    }
    const auto& line = values.error();
    return std::string(reasonName(line.reason)) + (line.detail.empty() ? "" : ":" + line.detail) + " " +
           line.field + " '" + line.value + "'";
}

TEST(Row, APairWithEverythingBesideIt) {
    const auto values = read(row({{ImportField::Dry, "1.4"},
                                  {ImportField::Wet, "-0.6"},
                                  {ImportField::Wick, "I"},
                                  {ImportField::Pressure, "1005.1"},
                                  {ImportField::Weather, "fog, rime"},
                                  {ImportField::Wind, "3"},
                                  {ImportField::Maximum, "4.0"},
                                  {ImportField::Minimum, "-2"},
                                  {ImportField::Note, " new muslin "},
                                  {ImportField::Observer, " NA "},
                                  {ImportField::Origin, "Corrected"},
                                  {ImportField::Quality, "sound"}}));
    EXPECT_EQ(values.dry.value, celsius(14));
    EXPECT_EQ(values.wet.value, celsius(-6));
    EXPECT_EQ(values.wick, record::WickState::Ice);
    EXPECT_EQ(values.pressure, (units::Decimal{10'051, 1}));
    ASSERT_TRUE(values.weather);
    EXPECT_TRUE(values.weather->has(record::Weather::Fog) && values.weather->has(record::Weather::Rime));
    EXPECT_EQ(values.windBeaufort, 3);
    EXPECT_EQ(values.maximum, celsius(40));
    EXPECT_EQ(values.minimum, celsius(-2, 0));
    EXPECT_EQ(values.note, " new muslin ");
    EXPECT_EQ(values.observer, "NA"); // initials, not a missing value
    EXPECT_EQ(values.origin, record::Origin::Corrected);
    EXPECT_EQ(values.quality, record::Quality::Sound);
    ASSERT_TRUE(values.hour);
    EXPECT_EQ(record::hourText(values.hour->hour), "09:00");
    EXPECT_EQ(values.zone, "Europe/London");
}

class MissingMark : public ::testing::TestWithParam<std::string> {};
TEST_P(MissingMark, IsNoReadingAndNoZero) {
    const auto values = read(row({{ImportField::Dry, "4.2"}, {ImportField::Wet, GetParam()}}));
    EXPECT_FALSE(values.wet.given());
    EXPECT_TRUE(values.dry.given());
    EXPECT_EQ(refusal(row({{ImportField::Dry, GetParam()}, {ImportField::Wet, GetParam()}})),
              "nothing-read dry '" + GetParam() + "'");
}
INSTANTIATE_TEST_SUITE_P(Row, MissingMark,
                         ::testing::Values("", "  ", "-", "\u2013", "\u2014", "*", "M", "NA", "n/a", "NULL",
                                           "None", "NaN", "-9999", "-9999.0", "\u22129999", "-999", "-999.9",
                                           "-999,00", "-99.9", "-99.90"));

TEST(Row, ZeroAndImplausibleValuesAreReadings) {
    const auto values = read(row({{ImportField::Dry, "0.0"}, {ImportField::Wet, "-99.8"}}));
    EXPECT_EQ(values.dry.value, celsius(0));
    EXPECT_EQ(values.wet.value, celsius(-998));
    EXPECT_EQ(read(row({{ImportField::Dry, "999"}})).dry.value, celsius(999, 0));
}

TEST(Row, DecimalMarks) {
    EXPECT_EQ(read(row({{ImportField::Dry, "16,4"}})).dry.value, celsius(164));
    EXPECT_EQ(read(row({{ImportField::Dry, "\u22120.6"}})).dry.value, celsius(-6));
    EXPECT_EQ(read(row({{ImportField::Dry, "16.0"}})).dry.value, celsius(160));
    ImportOptions comma;
    comma.decimal = units::DecimalMark::Comma;
    EXPECT_EQ(read(row({{ImportField::Dry, "16,4"}}), comma).dry.value, celsius(164));
    EXPECT_EQ(refusal(row({{ImportField::Dry, "16.4"}}), comma), "bad-number:grouped-digits dry '16.4'");
}

TEST(Row, GroupsOfThousandsAreNeverGuessed) {
    EXPECT_EQ(refusal(row({{ImportField::Dry, "4"}, {ImportField::Pressure, "1,013.2"}})),
              "bad-number:grouped-digits pressure '1,013.2'");
    EXPECT_EQ(refusal(row({{ImportField::Dry, "4"}, {ImportField::Pressure, "1 013"}})),
              "bad-number:grouped-digits pressure '1 013'");
    EXPECT_EQ(refusal(row({{ImportField::Dry, "4"}, {ImportField::Pressure, "1.013"}})),
              "bad-number:grouped-digits pressure '1.013'");
    ImportOptions point;
    point.decimal = units::DecimalMark::Point;
    EXPECT_EQ(read(row({{ImportField::Dry, "4"}, {ImportField::Pressure, "1.013"}}), point).pressure,
              (units::Decimal{1013, 3}));
}

TEST(Row, NumbersThatAreNone) {
    EXPECT_EQ(refusal(row({{ImportField::Dry, "four"}})), "bad-number:not-a-number dry 'four'");
    EXPECT_EQ(refusal(row({{ImportField::Dry, "4.2 C"}})).substr(0, 10), "bad-number");
    EXPECT_EQ(refusal(row({{ImportField::Dry, "1e1"}})), "bad-number:not-a-number dry '1e1'");
    EXPECT_EQ(refusal(row({{ImportField::Dry, "1234567890123456"}})),
              "bad-number:too-many-digits dry '1234567890123456'");
    EXPECT_EQ(refusal(row({{ImportField::Dry, "4"}, {ImportField::Wind, "13"}})),
              "bad-number:not-beaufort wind '13'");
    EXPECT_EQ(refusal(row({{ImportField::Dry, "4"}, {ImportField::Wind, "-1"}})),
              "bad-number:not-beaufort wind '-1'");
    EXPECT_EQ(refusal(row({{ImportField::Dry, "4"}, {ImportField::Wind, "3.5"}})),
              "bad-number:not-beaufort wind '3.5'");
    EXPECT_EQ(read(row({{ImportField::Dry, "4"}, {ImportField::Wind, "12"}})).windBeaufort, 12);
    EXPECT_EQ(read(row({{ImportField::Dry, "4"}, {ImportField::Wind, "0"}})).windBeaufort, 0);
}

TEST(Row, WordsThatAreNone) {
    EXPECT_EQ(refusal(row({{ImportField::Dry, "4"}, {ImportField::Wick, "snow"}})), "bad-word wick 'snow'");
    EXPECT_EQ(refusal(row({{ImportField::Dry, "4"}, {ImportField::Origin, "guess"}})),
              "bad-word origin 'guess'");
    EXPECT_EQ(refusal(row({{ImportField::Dry, "4"}, {ImportField::Quality, "fine"}})),
              "bad-word quality 'fine'");
    EXPECT_EQ(refusal(row({{ImportField::Dry, "4"}, {ImportField::Unit, "k"}})), "bad-word unit 'k'");
    EXPECT_EQ(read(row({{ImportField::Dry, "4"}, {ImportField::Wick, "w"}})).wick, record::WickState::Water);
    EXPECT_EQ(read(row({{ImportField::Dry, "4"}, {ImportField::Wick, ""}})).wick,
              record::WickState::NotGiven);
}

TEST(Row, WeatherOfTheirOwnStaysInTheNote) {
    const auto values = read(
        row({{ImportField::Dry, "4"}, {ImportField::Weather, "Fog and gale"}, {ImportField::Note, "windy"}}));
    EXPECT_EQ(values.note, "windy; Fog and gale");
    ASSERT_TRUE(values.weather);
    EXPECT_EQ(values.weather->toText(), "fog");
    const auto none = read(row({{ImportField::Dry, "4"}, {ImportField::Weather, "none"}}));
    ASSERT_TRUE(none.weather);
    EXPECT_TRUE(none.weather->empty());
    EXPECT_FALSE(read(row({{ImportField::Dry, "4"}, {ImportField::Weather, "-"}})).weather);
    EXPECT_EQ(read(row({{ImportField::Dry, "4"}, {ImportField::Weather, "-"}})).note, "");
}

TEST(Row, BelowTheScale) {
    const auto values = read(row({{ImportField::Dry, "Below"}, {ImportField::Wet, " < "}}));
    EXPECT_TRUE(values.dry.belowScale && values.wet.belowScale);
    EXPECT_FALSE(values.dry.value || values.wet.value);
}

TEST(Row, UnitsFromTheNearestWord) {
    auto american = testing::newStation("America/New_York", record::HourRule::Clock);
    american.unit = units::TemperatureUnit::Fahrenheit;
    american.step = units::Decimal{5, 1};
    const auto newYork = testing::stationOf(american);
    const auto plain = row({{ImportField::Dry, "61.5"}, {ImportField::Wet, "58.0"}});
    EXPECT_EQ(read(plain, {}, newYork).dry.value, fahrenheit(615));
    ImportOptions options;
    options.unit = units::TemperatureUnit::Celsius;
    EXPECT_EQ(read(plain, options, newYork).dry.value, celsius(615));
    options.columnUnits[ImportField::Dry] = units::TemperatureUnit::Fahrenheit;
    EXPECT_EQ(read(plain, options, newYork).dry.value, fahrenheit(615));
    EXPECT_EQ(read(plain, options, newYork).wet.value, celsius(580));
    auto stated = plain;
    stated[ImportField::Unit] = "c;\u00B0F";
    EXPECT_EQ(read(stated, options, newYork).dry.value, celsius(615));
    EXPECT_EQ(read(stated, options, newYork).wet.value, fahrenheit(580));
}

TEST(Row, PressureOnlyWhereItWasRead) {
    auto fields = row({{ImportField::Dry, "4"}, {ImportField::Pressure, "998.5"}});
    EXPECT_TRUE(read(fields).pressure);
    fields[ImportField::PressureSource] = "elevation";
    EXPECT_FALSE(read(fields).pressure);
    fields[ImportField::PressureSource] = "read";
    EXPECT_TRUE(read(fields).pressure);
}

TEST(Row, AMissingReadingHasItsReason) {
    const auto values = read(row({{ImportField::Dry, ""},
                                  {ImportField::Origin, "missing"},
                                  {ImportField::Note, "ill; bridge closed"}}));
    EXPECT_EQ(values.origin, record::Origin::Missing);
    EXPECT_EQ(values.missingReason, "ill");
    EXPECT_EQ(values.note, "bridge closed");
}

TEST(Row, AMissingReadingsReasonMayHaveAColumnOfItsOwn) {
    const auto values = read(row({{ImportField::Dry, ""},
                                  {ImportField::Origin, "missing"},
                                  {ImportField::Note, "bridge; closed"},
                                  {ImportField::MissingReason, " ill "}}));
    EXPECT_EQ(values.missingReason, "ill");
    EXPECT_EQ(values.note, "bridge; closed");
}

TEST(Row, WhatElseAnObservationHolds) {
    auto fields = row({{ImportField::Dry, "4"},
                       {ImportField::Maximum, "61"},
                       {ImportField::Minimum, "-0,5"},
                       {ImportField::MaxMinUnit, "f;c"},
                       {ImportField::WickCare, "Wetted"},
                       {ImportField::Whirls, "wet 3,5 c dry 4 c; wet 3,4 c"},
                       {ImportField::PaperBook, "Book 3"},
                       {ImportField::PaperPage, "-"},
                       {ImportField::ReadBack, "TRUE"},
                       {ImportField::Zone, "America/New_York"}});
    const auto values = read(fields);
    EXPECT_EQ(values.maximum, fahrenheit(61, 0));
    EXPECT_EQ(values.minimum, celsius(-5));
    EXPECT_EQ(values.wickCare, record::WickCare::Wetted);
    ASSERT_EQ(values.repeats.size(), 2U);
    EXPECT_EQ(values.repeats[1], (record::Repeat{celsius(34), std::nullopt}));
    EXPECT_EQ(values.paper, (record::PaperPlace{"Book 3", ""}));
    EXPECT_TRUE(values.readBack);
    EXPECT_EQ(values.zone, "America/New_York");
    fields[ImportField::UtcOffset] = "-04:56:02";
    EXPECT_EQ(read(fields).offset, -std::chrono::seconds{4 * 3600 + 56 * 60 + 2});
}

TEST(Row, AWordThatIsNoneOfTheColumnsIsTold) {
    for (const auto& [field, text] :
         {std::pair{ImportField::WickCare, "mended"}, std::pair{ImportField::Whirls, "3.5/4"},
          std::pair{ImportField::ReadBack, "perhaps"}, std::pair{ImportField::FromPaper, "ja"},
          std::pair{ImportField::MaxMinUnit, "k"}, std::pair{ImportField::Zone, "Mars/Dust"},
          std::pair{ImportField::UtcOffset, "one hour"}}) {
        EXPECT_EQ(refusal(row({{ImportField::Dry, "4"}, {field, text}})),
                  "bad-word " + std::string(fieldName(field)) + " '" + text + "'");
    }
}

/// An apostrophe in a file that is not ours is the writer's own.
TEST(Row, OnlyOurOwnExportHasApostrophesTakenOff) {
    auto fields =
        row({{ImportField::Dry, "-99.9"}, {ImportField::Note, "'=1"}, {ImportField::Observer, " M "}});
    fields[ImportField::Wet] = "4";
    EXPECT_EQ(read(fields).note, "'=1");
    EXPECT_EQ(read(fields).observer, "M");
    EXPECT_FALSE(read(fields).dry.given());
    ImportOptions options;
    options.exported = true;
    EXPECT_EQ(read(fields, options).note, "=1");
    EXPECT_EQ(read(fields, options).observer, " M ");
    EXPECT_EQ(read(fields, options).dry.value, celsius(-999));
    fields[ImportField::Dry] = "16,4"; // a spreadsheet has put commas
    EXPECT_EQ(read(fields, options).dry.value, celsius(164));
}

TEST(Row, NothingReadOrNoTime) {
    EXPECT_EQ(refusal({{ImportField::Time, ""}, {ImportField::Dry, ""}, {ImportField::Wet, ""}}),
              "nothing-read dry ''");
    EXPECT_EQ(refusal({{ImportField::Time, ""}, {ImportField::Dry, "4"}}), "no-time time ''");
    EXPECT_EQ(refusal(row({{ImportField::Wet, ""}, {ImportField::Note, "away"}})), "nothing-read wet ''");
    // Something was read, if not a bulb: kept as incomplete.
    EXPECT_EQ(read(row({{ImportField::Dry, ""}, {ImportField::Pressure, "998.5"}})).pressure,
              (units::Decimal{9985, 1}));
}

} // namespace
} // namespace wickbook::exchange
