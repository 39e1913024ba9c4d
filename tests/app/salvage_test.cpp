// SPDX-License-Identifier: GPL-3.0-or-later
// Salvaging by hand: a damaged book, the table, the exit codes, and what verify says to do.
#include "tests/app/station.h"

#include <gmock/gmock.h>

using namespace wickbook::apptest;
using testing::HasSubstr;

namespace {

/// The table on standard output: what, its count, the places.
std::map<std::string, std::pair<int, std::string>> salvageTable(const std::string& out) {
    std::map<std::string, std::pair<int, std::string>> table;
    for (const std::string& line : lines(out)) {
        const std::string what = line.substr(0, line.find_last_not_of(' ', 12) + 1);
        std::size_t end = 0;
        const int count = std::stoi(line.substr(13), &end);
        const std::size_t places = line.find_first_not_of(' ', 13 + end);
        table[what] = {count, places == std::string::npos ? std::string{} : line.substr(places)};
    }
    return table;
}

/// Twenty readings of an invented September.
void fillStation(const Station& station) {
    std::string rows = "time,dry,wet\n";
    for (int day = 1; day <= 10; ++day) {
        const std::string date = std::string{"2024-09-"} + (day < 10 ? "0" : "") + std::to_string(day);
        rows += date + "T08:00," + std::to_string(10 + day) + ".3," + std::to_string(9 + day) + ".1\n";
        rows += date + "T20:00," + std::to_string(12 + day) + ".6," + std::to_string(10 + day) + ".4\n";
    }
    ASSERT_EQ(station.verb("add", {"--in", "-"}, rows).code, 0);
}

} // namespace

TEST(Salvage, OfASoundBookIsTheSameBook) {
    const Station station;
    fillStation(station);
    const auto before = contents(station.book());
    const auto ran = run({"salvage", "--from", station.book(), "--book", station.file("fresh.wickbook")});
    EXPECT_EQ(ran.code, 0) << ran.err;
    auto table = salvageTable(ran.out);
    EXPECT_EQ(table.at("returned").first, table.at("revisions").first);
    EXPECT_EQ(table.at("proved").first, table.at("revisions").first);
    EXPECT_EQ(table.at("lost").first, 0);
    EXPECT_EQ(table.at("observations").first, 20);
    EXPECT_THAT(ran.err, HasSubstr("Everything came back"));
    EXPECT_EQ(contents(station.book()), before);
    const auto exported = run({"export", "--book", station.file("fresh.wickbook"), "--out", "-"});
    EXPECT_EQ(exported.out, station.verb("export", {"--out", "-"}).out);
}

TEST(Salvage, ReturnsWhatItCanAndNamesTheRest) {
    const Station station;
    fillStation(station);
    std::string bytes = contents(station.book());
    const std::size_t value = bytes.find("\"dry\":[153,1"); // 5 September, 8 h: 15.3
    ASSERT_NE(value, std::string::npos);
    bytes[value + 7] = '7'; // 75.3
    // A reading's record loses the end of its values: no JSON any more.
    const std::size_t other = bytes.find("\"dry\":[173,1"); // 7 September, 8 h
    ASSERT_NE(other, std::string::npos);
    bytes.replace(other, 12, "????????????");
    put(station.book(), bytes);

    const auto verified = station.verb("verify");
    EXPECT_EQ(verified.code, 1);
    EXPECT_THAT(verified.err, HasSubstr("wickbook restore --from"));
    EXPECT_THAT(verified.err, HasSubstr("wickbook salvage --from"));
    EXPECT_LT(verified.err.find("restore"), verified.err.find("salvage"));

    const auto ran = run({"salvage", "--from", station.book(), "--book", station.file("fresh.wickbook")});
    EXPECT_EQ(ran.code, 1) << ran.err;
    auto table = salvageTable(ran.out);
    EXPECT_EQ(table.at("altered").first, 1);
    EXPECT_EQ(table.at("lost").first, 1);
    const int lost = std::stoi(table.at("lost").second);
    EXPECT_EQ(std::stoi(table.at("altered").second), lost - 4) << "four readings lie between";
    EXPECT_EQ(table.at("returned").first, table.at("revisions").first - 1);
    EXPECT_EQ(table.at("observations").first, 19);
    EXPECT_THAT(ran.err, HasSubstr("judged doubtful"));
    EXPECT_EQ(contents(station.book()), bytes) << "the damaged book stays as it is";

    const auto sound = run({"verify", "--book", station.file("fresh.wickbook")});
    EXPECT_EQ(sound.code, 0) << sound.out << sound.err;
    const auto kept =
        wickbook::apptest::table(run({"export", "--book", station.file("fresh.wickbook"), "--out", "-"}).out);
    ASSERT_EQ(kept.rows.size(), 19U);
    int doubtful = 0;
    for (const Row& row : kept.rows) {
        if (row.at("quality") == "doubtful") {
            ++doubtful;
            EXPECT_EQ(row.at("dry_read"), "75.3");
            EXPECT_EQ(row.at("local_date"), "2024-09-05");
        }
    }
    EXPECT_EQ(doubtful, 1);
}

TEST(Salvage, RefusesWithOneSentenceAndLeavesNothing) {
    const Station station;
    fillStation(station);
    const auto refused = [&](const std::string& from, const std::string& to) {
        const auto ran = run({"salvage", "--from", from, "--book", to});
        EXPECT_EQ(ran.out, "");
        EXPECT_EQ(lines(ran.err).size(), 1U) << ran.err;
        return ran.code;
    };
    put(station.file("text"), "dear diary");
    put(station.file("gone.wickbook"), contents(station.book()).substr(0, 100) + std::string(9000, '\0'));
    EXPECT_EQ(refused(station.file("nowhere"), station.file("fresh")), 3);
    EXPECT_EQ(refused(station.file("text"), station.file("fresh")), 3);
    EXPECT_EQ(refused(station.file("gone.wickbook"), station.file("fresh")), 3);
    EXPECT_EQ(refused(station.book(), station.file("text")), 3);
    EXPECT_EQ(refused(station.book(), station.book()), 3);
    EXPECT_FALSE(std::filesystem::exists(station.file("fresh")));
    EXPECT_EQ(contents(station.file("text")), "dear diary");
    EXPECT_EQ(run({"salvage", "--from", station.book()}).code, 2);
}
