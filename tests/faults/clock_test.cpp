// SPDX-License-Identifier: GPL-3.0-or-later
// The computer's clock steps back, and the station's clocks change. Promise: every reading keeps its true
// moment, the order in which things were written stays the order of the book, and nothing is refused or lost
// for a wrong clock.
#include "tests/app/program.h"
#include "tests/faults/fault_ledger.h"
#include "tests/faults/processes.h"
#include "tests/faults/shown_window.h"

#include <gtest/gtest.h>

#ifdef WICKBOOK_PROGRAM

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

class AClockThatSteps : public ::testing::Test {
protected:
    TempFolder folder;
    std::filesystem::path path = folder / "book";
    FaultLine line;

    void SetUp() override {
        if (!onPath("faketime"))
            GTEST_SKIP() << "faketime is not installed";
        newBook(path);
    }
    /// A reading entered at what the computer takes for this moment, without saying when.
    void addAt(const std::string& utc) {
        apptest::Strain strain;
        strain.wrapper = {"faketime", "-f", "@" + utc};
        strain.environment = {"TZ=UTC"};
        const auto ran =
            apptest::run({"add", "--book", path.string(), "--dry", "61.5", "--wet", "57"}, {}, strain);
        ASSERT_EQ(ran.code, 0) << utc << ": " << ran.err;
        ++line.trials;
        ++line.acknowledged;
        std::string expected = "saved " + utc + "Z\n";
        expected[16] = 'T';
        // A second may have passed.
        EXPECT_EQ(ran.out.substr(0, 22), expected.substr(0, 22));
    }
    std::vector<record::StoredObservation> all() {
        const auto book = Book::open(path);
        EXPECT_TRUE(book);
        EXPECT_EQ(problemsOf(*book), "");
        return book->observationsBetween(at(0), at(4'000'000'000)).value();
    }
};

} // namespace

TEST_F(AClockThatSteps, BackADayKeepsEveryReadingAndTheOrderOfWriting) {
    line.fault = "clock stepping back";
    addAt("2025-03-20 09:00:00");
    addAt("2025-03-19 09:02:00");
    addAt("2025-03-20 21:01:00");
    const auto kept = all();
    ASSERT_EQ(kept.size(), 3U);
    // In the order of their moments, while the chain remembers that the second was written after the first.
    EXPECT_GT(kept[0].stamp.sequence, kept[1].stamp.sequence);
    EXPECT_LT(kept[0].stamp.recordedAt, kept[1].stamp.recordedAt);
    enterFault(line);
}

TEST_F(AClockThatSteps, InSpringAndAutumnKeepsTrueMoments) {
    // London, 2025: forward on 30 March at 01:00 UTC, back on 26 October at 01:00 UTC (IANA time zone
    // database, europe: EU rules).
    line.fault = "clock change, spring and autumn";
    addAt("2025-03-30 00:59:00");
    addAt("2025-03-30 01:01:00");
    addAt("2025-10-26 00:30:00");
    addAt("2025-10-26 01:30:00");
    const auto kept = all();
    ASSERT_EQ(kept.size(), 4U);
    EXPECT_EQ(kept[0].values.offset, std::chrono::hours{0});
    EXPECT_EQ(kept[1].values.offset, std::chrono::hours{1});
    // Both at half past one by the clock on the wall.
    EXPECT_EQ(kept[2].values.offset, std::chrono::hours{1});
    EXPECT_EQ(kept[3].values.offset, std::chrono::hours{0});
    EXPECT_EQ(kept[3].values.instant - kept[2].values.instant >= std::chrono::seconds{3590}, true);
    enterFault(line);
}

#endif
