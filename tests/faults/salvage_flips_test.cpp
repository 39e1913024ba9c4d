// SPDX-License-Identifier: GPL-3.0-or-later
// One byte of a book changes, anywhere: what changed is named, and everything else comes back.
#include "tests/faults/salvage_case.h"

#include <gtest/gtest.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {
using ABookWithOneByteChanged = DamageCase;
}

TEST_F(ABookWithOneByteChanged, IsNamedDamagedAndComesBackButForThatByte) {
    make(60);
    std::mt19937_64 source(20250321);
    const int flips = trialCount(120, 1000);
    int refused = 0;
    int named = 0;
    int changed = 0;
    int whole = 0;
    int lost = 0;
    int altered = 0;
    int unproven = 0;
    for (int i = 0; i < flips; ++i) {
        const std::size_t place = i % 12 == 0 ? source() % 100 : source() % sound.size();
        std::string flipped = sound;
        while (flipped[place] == sound[place])
            flipped[place] = static_cast<char>(source());
        const std::string what = "flip " + std::to_string(i) + " at byte " + std::to_string(place);
        bool isNamed = true;
        std::vector<PlainRow> revisionsNow;
        {
            const TempFolder here;
            writeBytes(here / "book", flipped);
            revisionsNow = askSqlite(here / "book", kAllRevisions);
            const bool valuesChanged = askSqlite(here / "book", kEveryTable) != values;
            const auto book = Book::open(here / "book");
            if (!book) {
                ++refused;
                EXPECT_TRUE(bytesAt(here / "book") == flipped) << what;
            } else {
                const auto report = book->verify();
                isNamed = !report || !report->sound();
            }
            changed += valuesChanged ? 1 : 0;
            named += isNamed ? 1 : 0;
            EXPECT_TRUE(isNamed || !valuesChanged) << what << " changed a stored value and nothing names it";
        }
        const auto outcome = salvageOf(flipped, what);
        ASSERT_TRUE(outcome.made) << what;
        const SalvageReport& report = outcome.report;
        EXPECT_EQ(report.expected, static_cast<std::int64_t>(revisions.size())) << what;
        EXPECT_LE(report.lost + report.altered, 1) << what << ": one byte stands in one revision";
        EXPECT_LE(report.unproven, report.lost) << what;
        EXPECT_EQ(outcome.missing, report.lost + report.altered) << what;
        const bool untouched = !isNamed || revisionsNow == revisions || place < 100;
        EXPECT_TRUE(report.chainKept || !untouched) << what << ": no revision changed, and not all came back";
        whole += report.chainKept ? 1 : 0;
        lost += report.lost > 0 ? 1 : 0;
        altered += report.altered > 0 ? 1 : 0;
        unproven += report.unproven > 0 ? 1 : 0;
    }
    std::printf(
        "%d flips of %zu bytes: %d refused at opening, %d named, %d changed a stored value; salvage: %d "
        "everything back, %d lost one, %d altered one, %d left one unproven\n",
        flips, sound.size(), refused, named, changed, whole, lost, altered, unproven);
    EXPECT_GT(changed, flips / 10) << "too few flips met a value: this proved little";
    EXPECT_GT(altered, 0);
}
