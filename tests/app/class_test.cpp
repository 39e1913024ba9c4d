// SPDX-License-Identifier: GPL-3.0-or-later
// A class round through the program: pairs in, the middle and who is far off out, sheets as files.
#include "tests/app/station.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

using namespace wickbook::apptest;
using testing::HasSubstr;

namespace {

/// One air, one dry wick (4), one swapped pair (6), one bulb alone (7).
const std::string kClass =
    "number,dry,wet\n"
    "1,23.0,16.0\n2,23.5,16.5\n3,23.0,16.0\n4,23.0,22.0\n5,22.5,16.0\n6,16.0,23.0\n7,23.0,\n";

const Arguments kWhirled{"class", "--in", "-", "--exposure", "whirled", "--pressure", "1013.25"};

Arguments whirled(const Arguments& more) {
    Arguments all = kWhirled;
    all.insert(all.end(), more.begin(), more.end());
    return all;
}

} // namespace

TEST(ClassVerb, NamesWhoIsFarOffInWords) {
    const auto ran = run(kWhirled, kClass);
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("The wick was probably dry"));
    EXPECT_THAT(ran.out, HasSubstr("5 pairs. The middle value is 49 %."));
    EXPECT_THAT(ran.out, HasSubstr("Far off: 4, 6."));
}

TEST(ClassVerb, GivesTheSameAsDataEachHumidityAsDeriveHasIt) {
    const auto ran = run(whirled({"--format", "json"}), kClass);
    ASSERT_EQ(ran.code, 0) << ran.err;
    const auto round = nlohmann::json::parse(ran.out);
    ASSERT_EQ(round.at("pupils").size(), 7U);
    // The program's own derive is the independent way here; it is held against published tables elsewhere.
    const auto derived = run({"derive", "--dry", "23.0", "--wet", "16.0", "--exposure", "whirled",
                              "--pressure", "1013.25", "--format", "json"});
    const auto one = nlohmann::json::parse(derived.out);
    EXPECT_NEAR(round.at("pupils")[0].at("relative_humidity_pct").get<double>(),
                one.at("relative_humidity_pct").get<double>(), 1e-4);
    EXPECT_EQ(round.at("pupils")[3].at("cause"), "dry-wick");
    EXPECT_EQ(round.at("pupils")[5].at("cause"), "swapped");
    EXPECT_TRUE(round.at("pupils")[6].at("relative_humidity_pct").is_null());
    EXPECT_EQ(round.at("dry_c").at("n"), 7);
}

TEST(ClassVerb, KeepsNamesOut) {
    const auto ran = run(kWhirled, "name,dry,wet\nAnn,23,16\n");
    EXPECT_EQ(ran.code, 2);
    EXPECT_THAT(ran.err, HasSubstr("pupils are numbers here, not names"));
    EXPECT_EQ(ran.out, "");
}

TEST(ClassVerb, ABadCellIsRefusedWithItsLine) {
    const auto ran = run(kWhirled, "number,dry,wet\n1,23,16\n2,warm,16\n");
    EXPECT_EQ(ran.code, 2);
    EXPECT_THAT(ran.err, HasSubstr("line 3: \"warm\" is not a number"));
    EXPECT_EQ(run(kWhirled, "").code, 2);
    EXPECT_EQ(run(kWhirled, "number,dry\n1,23\n").code, 2);
}

TEST(ClassVerb, WritesSheetsAndAnEmptyOneWithoutPairs) {
    const Station station;
    const auto ran = run(whirled({"--sheet", station.file("answers.pdf"), "--answers"}), kClass);
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(contents(station.file("answers.pdf")).substr(0, 5), "%PDF-");
    const auto empty =
        run({"class", "--exposure", "screen", "--elevation", "165", "--sheet", station.file("empty.pdf")});
    EXPECT_EQ(empty.code, 0) << empty.err;
    EXPECT_EQ(contents(station.file("empty.pdf")).substr(0, 5), "%PDF-");
    EXPECT_EQ(run(whirled({"--sheet", station.file("sheet.odt")}), kClass).code, 2);
    EXPECT_EQ(run({"class", "--exposure", "screen"}).code, 2) << "neither pairs nor a sheet";
}
