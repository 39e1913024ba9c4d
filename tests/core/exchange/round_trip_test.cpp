// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"
#include "core/exchange/observation_columns.h"
#include "core/record/observing_hours.h"
#include "tests/core/exchange/stations.h"

#include <gmock/gmock.h>

#include <sstream>

namespace wickbook::exchange {
namespace {

using testing::celsius;
using testing::fahrenheit;
using testing::station;

record::Observation reading(const record::StationRecord& at, std::string_view time) {
    const auto written = record::parseTime(time);
    EXPECT_TRUE(written && written->offset);
    record::Observation values;
    record::placeInTime(values, at, record::Instant{written->local.time_since_epoch() - *written->offset});
    return values;
}

checks::CheckedReading checked(const record::Observation& values, const record::StationRecord& at) {
    return {record::deriveReading(values, at), {}, false};
}

std::string cellOf(const checks::CheckedReading& reading, const record::StationRecord& at,
                   std::string_view name) {
    for (const auto& column : observationColumns()) {
        if (column.name == name) {
            return column.cell(reading, at);
        }
    }
    return "no such column";
}

/// What an observer may write down, one oddity each.
std::vector<record::Observation> oddReadings(const record::StationRecord& at) {
    std::vector<record::Observation> all;
    const auto next = [&](std::string_view time) -> record::Observation& {
        all.push_back(reading(at, time));
        all.back().dry.value = celsius(160);
        all.back().wet.value = celsius(14, 0);
        return all.back();
    };
    auto& full = next("2025-03-01T09:05:30Z");
    full.wick = record::WickState::Water;
    full.pressure = units::Decimal{100'510, 2};
    full.weather = record::WeatherSet{};
    full.weather->add(record::Weather::Fog);
    full.weather->add(record::Weather::HoarFrost);
    full.windBeaufort = 0;
    full.note = "a \"new\" wick,\nwetted; –";
    full.observer = "M";
    full.quality = record::Quality::Doubtful;
    full.origin = record::Origin::Corrected;
    next("2025-03-01T21:00:00Z").weather = record::WeatherSet{}; // "none" was noted
    auto& american = next("2025-03-02T09:00:00Z");
    american.dry.value = fahrenheit(615);
    american.wet.value = fahrenheit(58, 0);
    auto& mixed = next("2025-03-02T21:00:00Z");
    mixed.dry.value = fahrenheit(-5);
    mixed.wet.value = celsius(-182);
    mixed.wick = record::WickState::Ice;
    next("2025-03-03T09:00:00Z").wet = {};
    auto& below = next("2025-03-03T21:00:00Z");
    below.dry = {std::nullopt, true};
    below.wet = {};
    auto& away = next("2025-03-04T09:00:00Z");
    away.dry = {};
    away.wet = {};
    away.origin = record::Origin::Missing;
    away.missingReason = "away";
    away.note = "back on Monday; deputy ill";
    next("2025-03-04T15:10:00Z");                     // an extra reading
    next("2025-03-05T09:50:00Z").hour = std::nullopt; // extra though near the hour
    next("2025-03-06T00:30:00Z").hour =
        record::ObservingHour{// late, and filed under the day before
                              *record::parseDate("2025-03-05"), std::chrono::hours{21}};
    next("2025-03-30T09:00:00Z");
    next("2025-10-26T01:30:00Z"); // a clock time that came twice
    next("2025-10-26T00:30:00Z");
    next("1886-03-18T09:00:00Z").dry.value = celsius(0, 3);
    auto& extremes = next("2025-04-01T09:00:00Z"); // a maximum and a minimum, and no bulb
    extremes.dry = {};
    extremes.wet = {};
    extremes.maximum = fahrenheit(61, 0);
    extremes.minimum = celsius(-5);
    auto& onlyMaximum = next("2025-04-01T21:00:00Z");
    onlyMaximum.dry = {};
    onlyMaximum.wet = {};
    onlyMaximum.maximum = celsius(203);
    auto& whirled = next("2025-04-02T09:00:00Z");
    whirled.repeats = {
        {celsius(-5), celsius(1)}, {fahrenheit(31, 0), std::nullopt}, {}, {std::nullopt, celsius(2)}};
    whirled.wickCare = record::WickCare::Wetted;
    auto& emptyWhirl = next("2025-04-02T21:00:00Z");
    emptyWhirl.repeats = {{}};
    emptyWhirl.wickCare = record::WickCare::Changed;
    auto& fromPaper = next("2025-04-03T09:00:00Z");
    fromPaper.paper = record::PaperPlace{"=Book \"3\"", "-17"};
    fromPaper.readBack = true;
    next("2025-04-03T21:00:00Z").paper = record::PaperPlace{}; // copied, and nobody wrote from where
    auto& noReason = next("2025-04-04T09:00:00Z");
    noReason.dry = {};
    noReason.wet = {};
    noReason.origin = record::Origin::Missing;
    noReason.note = "away; a note that looks like a reason";
    auto& twice = next("2025-04-04T21:00:00Z");
    twice.dry = {};
    twice.wet = {};
    twice.origin = record::Origin::Missing;
    twice.missingReason = "ill; at home";
    twice.note = "ill; at home";
    next("2025-04-05T09:00:00Z").missingReason = "forgotten"; // read later, and the reason kept
    auto& blanks = next("2025-04-05T21:00:00Z");
    blanks.note = "  in front, behind \t";
    blanks.observer = " M ";
    auto& noteOnly = next("2025-04-06T09:00:00Z");
    noteOnly.dry = {};
    noteOnly.wet = {};
    noteOnly.note = "hut painted";
    auto& elsewhere = next("2025-04-06T21:00:00Z"); // the zone was put right after it was read
    elsewhere.zone = "America/Argentina/Cordoba";
    elsewhere.offset = -std::chrono::seconds{4 * 3600 + 16 * 60 + 48};
    next("2025-04-07T15:00:00Z").hour =
        record::ObservingHour{*record::parseDate("2025-04-07"), std::chrono::hours{14}}; // kept no more
    auto& cold = next("2025-04-08T09:00:00Z");
    cold.dry.value = fahrenheit(-999); // elsewhere a mark for nothing read
    cold.pressure = units::Decimal{1'005, 3};
    int day = 8;
    for (const char* note : {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r\n=1", "'=1", "''-1", "'quoted'", "'",
                             " =1", "\u00A0@x", "\uFF1D1", "a=1",
                             "\u2212"
                             "1",
                             "-", "NA", "\"=1\"", "- -"}) {
        auto& formula = next("2025-04-08T12:00:00Z");
        formula.instant += std::chrono::minutes{++day};
        formula.note = note;
        formula.observer = note;
    }
    return all;
}

TEST(RoundTrip, AnExportComesBackUnchanged) {
    const auto at = station();
    const auto written = oddReadings(at);
    std::string text = csvLine(observationHeader()) + std::string(kCsvLineEnd);
    for (const auto& values : written) {
        text += csvLine(observationRow(checked(values, at), at)) + std::string(kCsvLineEnd);
    }
    std::istringstream input(text);
    const auto plan = planCsvImport(input, "export.csv", at, {});
    ASSERT_TRUE(plan);
    for (const auto& line : plan->rejected) {
        ADD_FAILURE() << line.line << " " << reasonName(line.reason) << " " << line.field << " "
                      << line.detail;
    }
    ASSERT_EQ(plan->observations.size(), written.size());
    for (std::size_t i = 0; i < written.size(); ++i) {
        EXPECT_TRUE(plan->observations[i].values == written[i]) << plan->observations[i].text;
    }
}

TEST(ObservationColumns, NamesAndOrderAreThosePromised) {
    EXPECT_EQ(
        csvLine(observationHeader()),
        "time_utc,local_date,hour,utc_offset,dry_read,wet_read,unit,dry_used_c,wet_used_c,wick,pressure_hpa,"
        "pressure_source,relative_humidity_pct,relative_humidity_u95_pct,dew_point_c,vapour_pressure_hpa,"
        "weather,wind_beaufort,origin,quality,quality_code,set_aside,findings,observer,note,revision,"
        "max_read,min_read,max_min_unit,wick_care,whirls,missing_reason,from_paper,paper_book,paper_page,"
        "read_back,zone");
}

TEST(ObservationColumns, CellsOfADerivedReading) {
    const auto at = station();
    auto values = reading(at, "2025-07-01T09:05:00Z");
    values.dry.value = celsius(200);
    values.wet.value = celsius(150);
    auto row = checked(values, at);
    row.findings.push_back({"big-step", checks::Severity::Soft, checks::Root::Step, {}, {}});
    row.findings.push_back({"wet-above-dry", checks::Severity::Doubtful, checks::Root::Pair, {}, {}});
    row.leftOut = true;
    row.reading.stored.revisionCount = 3;
    const auto cell = [&](std::string_view name) { return cellOf(row, at, name); };
    EXPECT_EQ(cell("time_utc"), "2025-07-01T09:05:00Z");
    EXPECT_EQ(cell("local_date"), "2025-07-01");
    EXPECT_EQ(cell("hour"), "09:00");
    EXPECT_EQ(cell("utc_offset"), "+01:00");
    EXPECT_EQ(cell("dry_read"), "20.0");
    EXPECT_EQ(cell("unit"), "c");
    EXPECT_EQ(cell("dry_used_c"), "20.000000");
    EXPECT_EQ(cell("pressure_source"), "elevation");
    // Standard atmosphere at 120 m, ISO 2533: p = 1013.25 (1 − 0.0065·120/288.15)^5.25588 = 998.95 hPa.
    EXPECT_NEAR(std::stod(cell("pressure_hpa")), 998.95, 0.05);
    // By hand: e = e_w(15) − A p (t − t_w) with e_w(15) = 17.04 hPa and e_w(20) = 23.37 hPa from published
    // tables and A = 0.0008 per K for a screen (common practice, no source): 17.04 − 4.00 = 13.04 hPa, 55.8
    // %.
    EXPECT_NEAR(std::stod(cell("vapour_pressure_hpa")), 13.04, 0.1);
    EXPECT_NEAR(std::stod(cell("relative_humidity_pct")), 55.8, 0.5);
    EXPECT_GT(std::stod(cell("relative_humidity_u95_pct")), 0);
    // e_w(10.9 °C) = 13.03 hPa from the same tables.
    EXPECT_NEAR(std::stod(cell("dew_point_c")), 10.9, 0.15);
    EXPECT_EQ(cell("weather"), "");
    EXPECT_EQ(cell("quality_code"), "4");
    EXPECT_EQ(cell("set_aside"), "yes");
    EXPECT_EQ(cell("findings"), "big-step;wet-above-dry");
    EXPECT_EQ(cell("revision"), "3");
}

TEST(ObservationColumns, MissingIsAnEmptyCell) {
    const auto at = station();
    auto values = reading(at, "2025-07-01T15:00:00Z");
    values.dry.value = celsius(200);
    const auto row = checked(values, at);
    for (const auto* name :
         {"hour", "wet_read", "wet_used_c", "wick", "pressure_hpa", "pressure_source",
          "relative_humidity_pct", "relative_humidity_u95_pct", "dew_point_c", "vapour_pressure_hpa",
          "weather", "wind_beaufort", "findings", "observer", "note"}) {
        EXPECT_EQ(cellOf(row, at, name), "") << name;
    }
    EXPECT_EQ(cellOf(row, at, "set_aside"), "no");
    EXPECT_EQ(cellOf(row, at, "origin"), "observed");
}

} // namespace
} // namespace wickbook::exchange
