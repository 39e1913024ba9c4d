// SPDX-License-Identifier: GPL-3.0-or-later
// Entering a reading from the command line names what probably went wrong.
#include "tests/app/station.h"

#include <gmock/gmock.h>

using namespace wickbook::apptest;
using testing::HasSubstr;
using testing::Not;

namespace {

/// Three weeks of quiet summer readings, as a script would hand them in.
std::string threeWeeks() {
    std::string rows = "time,dry,wet,weather\n";
    for (int day = 1; day <= 21; ++day) {
        const std::string date = "2024-07-" + std::string(day < 10 ? "0" : "") + std::to_string(day);
        const int swing = day % 5;
        rows += date + "T08:00,1" + std::to_string(5 + swing / 2) + "." + std::to_string(swing) + ",13." +
                std::to_string(2 + swing) + ",none\n";
        rows += date + "T20:00,1" + std::to_string(7 + swing / 2) + "." + std::to_string(9 - swing) + ",14." +
                std::to_string(1 + swing) + ",none\n";
    }
    return rows;
}

} // namespace

TEST(Add, AMarkedReadingNamesWhatProbablyWentWrong) {
    const Station station;
    ASSERT_EQ(station.verb("add", {"--in", "-"}, threeWeeks()).code, 0);
    // Dry 16.4 and wet 13.8, written the wrong way round.
    const auto swapped = station.verb(
        "add", {"--at", "2024-07-22T08:00", "--dry", "13.8", "--wet", "16.4", "--weather", "none"});
    EXPECT_EQ(swapped.code, 0);
    EXPECT_THAT(swapped.out, HasSubstr("saved 2024-07-22T07:00:00Z"));
    EXPECT_THAT(swapped.err, HasSubstr("wet-above-dry (doubtful)"));
    EXPECT_THAT(swapped.err, HasSubstr("likely: "));
    EXPECT_THAT(swapped.err, HasSubstr("swapped"));
    // The same words as check gives.
    const auto checked = station.verb("check", {"--from", "2024-07-22", "--to", "2024-07-22"});
    for (const std::string& line : lines(swapped.err)) {
        const auto at = line.find("likely: ");
        if (at != std::string::npos) {
            EXPECT_THAT(checked.out, HasSubstr(line.substr(at, line.rfind(" (") - at)));
        }
    }
    // A quiet reading says nothing, and what was read stays as it was.
    const auto quiet = station.verb(
        "add", {"--at", "2024-07-22T20:00", "--dry", "17.6", "--wet", "14.2", "--weather", "none"});
    EXPECT_THAT(quiet.err, Not(HasSubstr("likely")));
    EXPECT_EQ(station.exported().rows[42].at("dry_read"), "13.8");
}

TEST(Add, AStreamNamesCausesToo) {
    const Station station;
    const auto ran =
        station.verb("add", {"--in", "-"},
                     threeWeeks() + "2024-07-22T08:00,26.4,13.8,none\n2024-07-22T20:00,17.6,140.2,none\n");
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr("2024-07-22T19:00:00Z off-scale (erroneous)"));
    EXPECT_THAT(ran.err, HasSubstr("2024-07-22T19:00:00Z likely: "));
}
