// SPDX-License-Identifier: GPL-3.0-or-later
// Looking after the instruments from the command line, on a real book.
#include "tests/app/station.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <fstream>

using namespace wickbook::apptest;
using testing::HasSubstr;
using testing::Not;

namespace {

nlohmann::json listed(const Station& station) {
    const auto ran = station.verb("instruments", {"--format", "json"});
    EXPECT_EQ(ran.code, 0) << ran.err;
    return nlohmann::json::parse(ran.out);
}

std::map<std::string, double> expectedValues() {
    std::map<std::string, double> expected;
    std::ifstream file(WICKBOOK_TEST_DATA "/reference/beside_expected.csv");
    std::string line;
    while (std::getline(file, line)) {
        const auto comma = line.rfind(',');
        if (comma != std::string::npos && line.compare(comma, 6, ",value") != 0) {
            const std::string value = line.substr(comma + 1);
            expected[line.substr(0, comma)] =
                value.find_first_of("0123456789") == 0 || value.front() == '-' ? std::stod(value) : 0.0;
        }
    }
    return expected;
}

/// The pairs of tests/reference with a time in front of each, as a logger writes them.
std::string pairsWithTimes() {
    std::ifstream file(WICKBOOK_TEST_DATA "/reference/beside_pairs.csv");
    std::string line;
    std::getline(file, line);
    std::string text = "time,dry,wet,wick,pressure,rh,wind\n";
    for (int day = 1; std::getline(file, line); ++day) {
        if (!line.empty() && line.back() == '\r') {
            line.pop_back();
        }
        const int month = 1 + (day - 1) / 28;
        text += "2025-0" + std::to_string(month) + "-" + (day % 28 < 9 ? "0" : "") +
                std::to_string(day % 28 + 1) + "T12:00Z," + line + "\n";
    }
    return text;
}

} // namespace

// A new wet thermometer's certificate comes late: --dry-run shows the months, then it holds from its date.
TEST(Instruments, ALateCorrectionShowsItsMonthsFirst) {
    const Station station;
    for (const char* date : {"2025-03-10", "2025-04-10", "2025-05-10"}) {
        ASSERT_EQ(
            station.verb("add", {"--at", std::string{date} + "T08:00", "--dry", "20", "--wet", "15"}).code,
            0);
    }
    ASSERT_EQ(station
                  .verb("thermometer",
                        {"--name", "W-2", "--hang", "wet", "--from", "2025-04-01", "--why", "broken"})
                  .code,
              0);
    const Arguments correction{"--thermometer", "W-2",     "--from",  "2025-04-01", "--point",
                               "0=-0.3",        "--point", "30=-0,3", "--source",   "certificate"};
    Arguments dry = correction;
    dry.emplace_back("--dry-run");
    const auto shown = station.verb("correction", dry);
    EXPECT_EQ(shown.code, 0) << shown.err;
    const auto months = table(shown.out).rows;
    ASSERT_EQ(months.size(), 2U);
    EXPECT_EQ(months[0].at("month"), "2025-04");
    EXPECT_LT(std::stod(months[0].at("mean_rh_after")), std::stod(months[0].at("mean_rh_before")));
    EXPECT_THAT(shown.err, HasSubstr("Nothing was stored"));
    const Table before = station.exported();

    EXPECT_EQ(station.verb("correction", correction).code, 2); // without --why
    Arguments kept = correction;
    kept.insert(kept.end(), {"--why", "certificate came"});
    EXPECT_EQ(station.verb("correction", kept).code, 0);
    const Table after = station.exported();
    EXPECT_EQ(before.rows[0].at("relative_humidity_pct"), after.rows[0].at("relative_humidity_pct"));
    EXPECT_EQ(before.rows[1].at("wet_read"), after.rows[1].at("wet_read"));
    // What --dry-run said is what came.
    EXPECT_NEAR(std::stod(after.rows[1].at("relative_humidity_pct")),
                std::stod(months[0].at("mean_rh_after")), 1e-6);
    // The same once more changes nothing; taking back brings the first values again.
    EXPECT_THAT(station.verb("correction", kept).err, HasSubstr("Nothing to change"));
    EXPECT_EQ(
        station
            .verb("correction", {"--thermometer", "W-2", "--from", "2025-04-01", "--take-back", "--why", "x"})
            .code,
        0);
    EXPECT_EQ(station.exported().rows[1].at("relative_humidity_pct"),
              before.rows[1].at("relative_humidity_pct"));
    EXPECT_EQ(station.verb("verify").code, 0);
}

TEST(Instruments, AreListedWithWhatHoldsFromWhen) {
    const Station station;
    ASSERT_EQ(station
                  .verb("thermometer", {"--name", "D-9", "--liquid", "spirit", "--step", "0.5", "--lowest",
                                        "-20", "--highest", "50", "--why", "spare"})
                  .code,
              0);
    ASSERT_EQ(station
                  .verb("period", {"--from", "2025-06-01", "--own-water", "7.1e-4", "--own-uncertainty", "3",
                                   "--mean-pressure", "1001.5"})
                  .code,
              0);
    const auto list = listed(station);
    EXPECT_EQ(list["thermometers"].size(), 3U);
    EXPECT_EQ(list["thermometers"][2]["step"], "0.5");
    EXPECT_EQ(list["periods"][1]["exposure"], "own");
    EXPECT_EQ(list["periods"][1]["coefficient_water_at_0"], 7.1e-4);
    EXPECT_EQ(list["periods"][1]["mean_pressure"], 1001.5);
    EXPECT_NEAR(list["periods"][1]["relative_standard_uncertainty"].get<double>(), 0.03, 1e-12);
    ASSERT_EQ(station.verb("add", {"--at", "2025-06-02T08:00", "--dry", "20", "--wet", "15"}).code, 0);
    const Row row = station.exported().rows.at(0);
    EXPECT_EQ(row.at("pressure_source"), "station-mean");
    // e = e_w(15) - A p (t - t_w), e_w(15) = 17.057 and e_w(20) = 23.393 hPa by IAPWS-95
    // (tests/reference/svp_water.csv).
    EXPECT_NEAR(std::stod(row.at("relative_humidity_pct")), 100 * (17.057 - 7.1e-4 * 1001.5 * 5) / 23.393,
                0.05);
    EXPECT_THAT(station.verb("instruments").out, HasSubstr("7.10 × 10⁻⁴"));
}

TEST(Instruments, APairCheckTakesItsIcePointsOver) {
    const Station station;
    const auto ran = station.verb("pair-check", {"--date", "2025-01-10", "--dry-ice", "0.2", "--wet-ice",
                                                 "0.0", "--take-over", "--why", "yearly"});
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr("differ by more than 0.1"));
    const auto list = listed(station);
    ASSERT_EQ(list["corrections"].size(), 2U);
    EXPECT_NEAR(list["corrections"][0]["points"][0]["add"].get<double>(), -0.2, 1e-12);
    EXPECT_EQ(list["corrections"][0]["from"], "2025-01-10");
    EXPECT_EQ(list["pair_checks"], 1);
}

TEST(Instruments, WickAndWaterAreALog) {
    const Station station;
    EXPECT_EQ(station.verb("wick", {"--new", "--water", "--date", "2025-02-01", "--note", "rain water"}).code,
              0);
    ASSERT_EQ(station.verb("add", {"--at", "2025-02-03T08:00", "--dry", "5", "--wet", "4"}).code, 0);
    const auto rows = table(station.verb("wick").out).rows;
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].at("care"), "new-wick");
    EXPECT_EQ(rows[1].at("care"), "water");
    EXPECT_EQ(rows[1].at("note"), "rain water");
}

// CRC Handbook of Chemistry and Physics, 25 °C: NaCl 75, K2SO4 97, ± 2 % RH.
TEST(Instruments, ASensorOverSaltsNeedsNoBook) {
    const auto ran = run({"salt-check", "--at", "NaCl=77", "--at", "k2so4=99.5", "--format", "json"});
    EXPECT_EQ(ran.code, 0) << ran.err;
    const auto verdict = nlohmann::json::parse(ran.out);
    EXPECT_EQ(verdict["points"][0]["published_rh"], 75.0);
    EXPECT_TRUE(verdict["points"][0]["within"].get<bool>());
    EXPECT_FALSE(verdict["points"][1]["within"].get<bool>());
    EXPECT_EQ(verdict["off"], 1);
    const Station station;
    EXPECT_EQ(station.verb("salt-check", {"--at", "LiCl=11", "--sensor", "S 1", "--date", "2025-05-05"}).code,
              0);
    EXPECT_EQ(listed(station)["salt_checks"], 1);
}

// tests/reference/beside_numpy.py: the same pairs through numpy, to 1e-9.
TEST(Beside, AgreesWithNumpyThroughTheProgram) {
    const auto ran =
        run({"beside", "--in", "-", "--exposure", "screen", "--format", "json"}, pairsWithTimes());
    EXPECT_EQ(ran.code, 0) << ran.err;
    const auto answer = nlohmann::json::parse(ran.out);
    const auto expected = expectedValues();
    const auto close = [&](const nlohmann::json& value, const std::string& name) {
        EXPECT_NEAR(value.get<double>(), expected.at(name), 1e-9 * std::abs(expected.at(name))) << name;
    };
    const auto& water = answer["coefficient"]["water"];
    close(water["per_kelvin"]["value"], "water coefficient");
    close(water["per_kelvin"]["standard_error"], "water error");
    close(water["per_kelvin"]["upper95"], "water upper95");
    close(water["residual_deviation_hpa"], "water residual deviation");
    close(water["residual_on_depression"]["slope"]["value"], "water residual on depression slope");
    EXPECT_TRUE(water["usable"].get<bool>());
    EXPECT_FALSE(answer["coefficient"]["ice"]["usable"].get<bool>());
    EXPECT_THAT(answer["coefficient"]["ice"]["refused"].dump(), HasSubstr("too-few"));
    close(answer["coefficient"]["ice"]["per_kelvin"]["value"], "ice coefficient");
    close(answer["spread"]["bias"]["value"], "bias");
    close(answer["spread"]["deviation"], "deviation");
    const auto pairs =
        run({"beside", "--in", "-", "--exposure", "screen", "--format", "csv"}, pairsWithTimes());
    EXPECT_EQ(table(pairs.out).rows.size(), 60U);
}

TEST(Beside, TheCoefficientIsUsedFromADateOnWhereTheEvidenceIsEnough) {
    const Station station;
    std::ofstream(station.file("pairs.csv")) << pairsWithTimes();
    const auto came = station.verb("beside", {"--name", "reference", "--from", "2025-01-01", "--uncertainty",
                                              "1", "--in", station.file("pairs.csv"), "--use-from",
                                              "2025-06-01", "--why", "own comparison"});
    EXPECT_EQ(came.code, 0) << came.err;
    EXPECT_THAT(came.err, HasSubstr("60 readings came in"));
    const auto list = listed(station);
    EXPECT_EQ(list["periods"][1]["from"], "2025-06-01");
    EXPECT_NEAR(list["periods"][1]["coefficient_water_at_0"].get<double>(),
                expectedValues().at("water coefficient"), 1e-12);
    EXPECT_EQ(list["beside"][0]["readings"], 60);
    // The same file again adds nothing, and is no reason to change anything.
    const auto again = station.verb("beside", {"--name", "reference", "--in", station.file("pairs.csv")});
    EXPECT_THAT(again.err, HasSubstr("60 were there already"));
    EXPECT_EQ(station.verb("verify").code, 0);
}

TEST(Beside, ThinEvidenceIsRefusedWithItsReasons) {
    const Station station;
    std::string few = pairsWithTimes();
    few.resize(few.find("2025-01-12"));
    std::ofstream(station.file("few.csv")) << few;
    const auto ran =
        station.verb("beside", {"--name", "reference", "--from", "2025-01-01", "--in",
                                station.file("few.csv"), "--use-from", "2025-06-01", "--why", "x"});
    EXPECT_EQ(ran.code, 2);
    EXPECT_THAT(ran.out, HasSubstr("30 are needed"));
    EXPECT_THAT(ran.err, HasSubstr("not enough to use this coefficient"));
    EXPECT_EQ(listed(station)["periods"].size(), 1U);
}

TEST(Beside, AnOverlapSaysWhetherToJoin) {
    const Station station;
    std::string other = "time,other_dry,other_wet\n";
    for (int day = 1; day <= 31; ++day) {
        const std::string date = std::string{"2025-01-"} + (day < 10 ? "0" : "") + std::to_string(day);
        ASSERT_EQ(station.verb("add", {"--at", date + "T08:00", "--dry", "10", "--wet", "8"}).code, 0);
        other += date + "T08:02,10.9,8.5\n";
    }
    std::ofstream(station.file("other.csv")) << other;
    const auto ran =
        station.verb("beside", {"--name", "new screen", "--purpose", "overlap", "--from", "2025-01-01",
                                "--in", station.file("other.csv"), "--format", "json"});
    EXPECT_EQ(ran.code, 0) << ran.err;
    const auto answer = nlohmann::json::parse(ran.out);
    EXPECT_EQ(answer["n"], 31);
    EXPECT_EQ(answer["verdict"], "differs");
    EXPECT_NEAR(answer["dry"]["value"].get<double>(), 0.9, 1e-9);
}

TEST(Beside, AnOverlapThatAgreesIsJoined) {
    const Station station;
    std::string other = "time,other_dry,other_wet\n";
    for (int day = 1; day <= 31; ++day) {
        const std::string date = std::string{"2025-01-"} + (day < 10 ? "0" : "") + std::to_string(day);
        ASSERT_EQ(station.verb("add", {"--at", date + "T08:00", "--dry", "10", "--wet", "8"}).code, 0);
        other += date + "T08:02,10.0,8.0\n";
    }
    std::ofstream(station.file("other.csv")) << other;
    const Arguments join{"--name", "new screen", "--join", "--why", "overlap"};
    ASSERT_EQ(station
                  .verb("beside", {"--name", "new screen", "--purpose", "overlap", "--from", "2025-01-01",
                                   "--in", station.file("other.csv")})
                  .code,
              0);
    const auto early = station.verb("beside", join);
    EXPECT_EQ(early.code, 2);
    EXPECT_THAT(early.err,
                HasSubstr("There is no change of place or exposure yet; write it down with wickbook period, "
                          "then join."));
    ASSERT_EQ(station.verb("period", {"--from", "2025-02-01", "--latitude", "53.4036"}).code, 0);
    EXPECT_EQ(station.verb("beside", join).code, 0);
    EXPECT_EQ(station.verb("verify").code, 0);
}
