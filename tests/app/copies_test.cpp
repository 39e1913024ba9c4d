// SPDX-License-Identifier: GPL-3.0-or-later
// Copies kept on a shelf, listed, restored and held against the book, by the real program.
#include "core/store/copy_shelf.h"
#include "tests/app/station.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace wickbook::apptest;
using ::testing::HasSubstr;
using ::testing::SizeIs;

std::vector<std::string> filesIn(const std::string& folder) {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        names.push_back(entry.path().filename().string());
    }
    return names;
}

Ran addReading(const Station& station, const std::string& time, const std::string& dry) {
    return station.verb("add", {"--at", time, "--dry", dry, "--wet", "10.0"});
}

TEST(BackupOntoAShelf, KeepsAndSaysWhatItKept) {
    const Station station;
    ASSERT_EQ(addReading(station, "2025-05-01T08:00", "12.1").code, 0);
    const std::string shelf = station.file("shelf");
    const auto missing = station.verb("backup", {"--shelf", shelf});
    EXPECT_EQ(missing.code, 3);
    EXPECT_THAT(missing.err, HasSubstr("“shelf”, is not there"));
    std::filesystem::create_directory(shelf);
    const auto kept = station.verb("backup", {"--shelf", shelf});
    EXPECT_EQ(kept.code, 0) << kept.err;
    EXPECT_EQ(kept.out, "");
    EXPECT_THAT(kept.err, HasSubstr("verified, 1 reading in "));
    EXPECT_THAT(kept.err, HasSubstr("1 copy of this book in the folder."));
    const auto again = station.verb("backup", {"--shelf", shelf});
    EXPECT_EQ(again.code, 0);
    // The first is of the same day, week and month, and gives way.
    EXPECT_THAT(again.err, HasSubstr("dropped test copy "));
    ASSERT_THAT(filesIn(shelf), SizeIs(1));
    EXPECT_TRUE(wickbook::store::copyNameFrom(filesIn(shelf).front()));

    const auto listed = run({"restore", "--list", shelf});
    EXPECT_EQ(listed.code, 0) << listed.err;
    const auto rows = table(listed.out);
    ASSERT_THAT(rows.rows, SizeIs(1));
    EXPECT_EQ(rows.rows[0].at("file"), filesIn(shelf).front());
    EXPECT_EQ(rows.rows[0].at("readings"), "1");
    EXPECT_EQ(rows.rows[0].at("reason"), "by-hand");
    EXPECT_EQ(run({"restore", "--list", station.file("nowhere")}).code, 3);
}

TEST(BackupOntoAShelf, IsOneOfTwoWays) {
    const Station station;
    EXPECT_EQ(station.verb("backup").code, 2);
    EXPECT_EQ(station.verb("backup", {"--out", station.file("a"), "--shelf", station.file("b")}).code, 2);
    EXPECT_EQ(run({"restore"}).code, 2);
    EXPECT_EQ(run({"restore", "--from", station.book()}).code, 2);
    EXPECT_EQ(run({"restore", "--list", station.file("a"), "--from", station.book()}).code, 2);
}

TEST(Restore, ShowsWhatDiffersFromTheBook) {
    const Station station;
    ASSERT_EQ(addReading(station, "2025-05-01T08:00", "12.1").code, 0);
    ASSERT_EQ(station.verb("backup", {"--out", station.file("copy.wickbook")}).code, 0);
    ASSERT_EQ(addReading(station, "2025-05-01T20:00", "14.2").code, 0);
    ASSERT_EQ(addReading(station, "2025-05-02T08:00", "11.0").code, 0);
    const auto restored = run({"restore", "--from", station.file("copy.wickbook"), "--book",
                               station.file("new.wickbook"), "--compare", station.book()});
    EXPECT_EQ(restored.code, 0) << restored.err;
    EXPECT_THAT(restored.err, HasSubstr("new.wickbook is written and sound: 1 observations"));
    EXPECT_THAT(restored.err, HasSubstr("2 readings: only in test.wickbook."));
    EXPECT_THAT(lines(restored.out), SizeIs(2));
    EXPECT_THAT(restored.out, HasSubstr("1 May 2025, 20 h: 14.2 / 10.0\u00A0°C, only in test.wickbook"));

    const auto same = run({"restore", "--from", station.book(), "--book", station.file("same.wickbook"),
                           "--compare", station.book()});
    EXPECT_EQ(same.code, 0);
    EXPECT_EQ(same.out, "");
    EXPECT_THAT(same.err, HasSubstr("hold the same readings and the same facts"));
}

} // namespace
