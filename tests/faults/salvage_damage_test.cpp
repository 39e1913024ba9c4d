// SPDX-License-Identifier: GPL-3.0-or-later
// Whole pages lost, files cut short, headers overwritten: what lies on pages that are still there comes back.
#include "tests/faults/salvage_case.h"

#include <gtest/gtest.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

class ADamagedBook : public DamageCase {
protected:
    std::mt19937_64 random{20250322};

    [[nodiscard]] std::string garbage(std::size_t length) {
        std::string bytes(length, '\0');
        for (char& c : bytes)
            c = static_cast<char>(random());
        return bytes;
    }
    [[nodiscard]] std::size_t pageCount() const { return sound.size() / 4096; }
    [[nodiscard]] std::size_t rootOf(const std::string& table) const {
        const auto rows =
            askSqlite(folder / "sound", "SELECT rootpage FROM sqlite_schema WHERE name = '" + table + "'");
        return static_cast<std::size_t>(std::stoll(rows.at(0).at(0).substr(2)));
    }
    /// How many revisions have a byte that is known to stand on one of these pages, and how many may have
    /// one: those with pages of their own for a long note.
    [[nodiscard]] std::pair<std::int64_t, std::int64_t> onPages(const std::set<std::size_t>& pages) const {
        std::int64_t surely = 0;
        std::int64_t perhaps = 0;
        for (const PlainRow& row : revisions) {
            const auto own = pagesOf(row);
            const bool meets =
                std::ranges::any_of(own, [&](std::size_t page) { return pages.contains(page); });
            surely += meets ? 1 : 0;
            perhaps += meets || row[7].size() > 3000 ? 1 : 0;
        }
        return {surely, perhaps};
    }
};

} // namespace

TEST_F(ADamagedBook, ReturnsWhatStandsOnOtherPagesWhereOnePageIsGarbage) {
    make(60);
    for (std::size_t page = 1; page <= pageCount(); ++page) {
        for (const bool zeros : {false, true}) {
            std::string damaged = sound;
            damaged.replace((page - 1) * 4096, 4096, zeros ? std::string(4096, '\0') : garbage(4096));
            const std::string what = (zeros ? "zeros in page " : "garbage in page ") + std::to_string(page);
            const auto outcome = salvageOf(damaged, what);
            ASSERT_TRUE(outcome.made) << what;
            const auto [surely, perhaps] = onPages({page});
            EXPECT_LE(outcome.missing, perhaps) << what;
            EXPECT_LE(outcome.missing, surely + 1) << what << ": those there, and one note's page at most";
            const TempFolder here;
            writeBytes(here / "book", damaged);
            const auto book = Book::open(here / "book");
            if (book && askSqlite(here / "book", kEveryTable) != values) {
                const auto report = book->verify();
                EXPECT_TRUE(!report || !report->sound()) << what;
            }
        }
    }
}

TEST_F(ADamagedBook, ReturnsEverythingWhereOnlyTheWayToItIsLost) {
    make(400, 6000);
    ASSERT_EQ(sound[(rootOf("revision") - 1) * 4096], '\5')
        << "the root is no interior page: nothing to lose";
    std::set<std::size_t> pages{1, rootOf("revision"), rootOf("chain"), rootOf("observation"),
                                rootOf("revision_by_subject")};
    for (const std::size_t page : pages) {
        std::string damaged = sound;
        damaged.replace((page - 1) * 4096, 4096, garbage(4096));
        const auto outcome = salvageOf(damaged, "page " + std::to_string(page));
        ASSERT_TRUE(outcome.made);
        EXPECT_TRUE(outcome.report.chainKept) << page;
    }
    std::string all = sound;
    for (const std::size_t page : pages)
        all.replace((page - 1) * 4096, 4096, std::string(4096, '\0'));
    const auto outcome = salvageOf(all, "all of them");
    ASSERT_TRUE(outcome.made);
    EXPECT_TRUE(outcome.report.chainKept);
    EXPECT_GT(outcome.report.pagesUnread, 0U);
}

TEST_F(ADamagedBook, ReturnsWhatIsLeftOfAFileThatIsCutShort) {
    make(120);
    std::int64_t last = static_cast<std::int64_t>(revisions.size());
    for (std::size_t length = sound.size() - 1; length > 5000;
         length -= std::min<std::size_t>(length, 7919)) {
        const std::string what = "cut to " + std::to_string(length);
        const auto outcome = salvageOf(sound.substr(0, length), what);
        if (!outcome.made) {
            last = 0;
            continue;
        }
        std::set<std::size_t> gone;
        for (std::size_t page = length / 4096 + 1; page <= pageCount(); ++page)
            gone.insert(page);
        const auto [surely, perhaps] = onPages(gone);
        EXPECT_LE(outcome.missing, perhaps) << what;
        const std::int64_t back = static_cast<std::int64_t>(revisions.size()) - outcome.missing;
        EXPECT_LE(back, last) << what;
        last = back;
        EXPECT_GT(outcome.report.pagesUnread, 0U) << what;
        const TempFolder here;
        writeBytes(here / "book", sound.substr(0, length));
        const auto book = Book::open(here / "book");
        EXPECT_FALSE(book) << what << ": a book that is cut short must not open";
    }
    EXPECT_LT(last, static_cast<std::int64_t>(revisions.size()) / 2);
}

TEST_F(ADamagedBook, ReturnsEverythingAfterAnOverwrittenHeaderAndBeforeATailOfZeros) {
    make(60);
    for (const std::size_t length : {1U, 16U, 100U, 512U}) {
        std::string damaged = sound;
        damaged.replace(0, length, garbage(length));
        const auto outcome = salvageOf(damaged, std::to_string(length) + " bytes of the header");
        ASSERT_TRUE(outcome.made);
        EXPECT_TRUE(outcome.report.chainKept) << length;
    }
    const auto longer = salvageOf(sound + std::string(5 * 4096 + 17, '\0'), "zeros after the end");
    ASSERT_TRUE(longer.made);
    EXPECT_TRUE(longer.report.chainKept);
    std::string tail = sound;
    tail.replace(sound.size() / 2, std::string::npos, std::string(sound.size() - sound.size() / 2, '\0'));
    const auto half = salvageOf(tail, "the second half zeros");
    ASSERT_TRUE(half.made);
    EXPECT_GT(half.report.lost, 0);
    EXPECT_GT(half.report.proved, 0);
}

TEST_F(ADamagedBook, LosesOnlyTheNoteWhosePageIsGone) {
    make(60, 20'000);
    std::size_t wiped = 0;
    for (std::size_t page = 2; page <= pageCount() && wiped < 6; ++page) {
        // A page full of one letter is in the middle of a long note.
        const std::string_view text = std::string_view{sound}.substr((page - 1) * 4096 + 4, 4092);
        if (text.find_first_not_of(text.front()) != std::string_view::npos || text.front() < 'a')
            continue;
        ++wiped;
        std::string damaged = sound;
        damaged.replace((page - 1) * 4096, 4096, std::string(4096, '\0'));
        const auto outcome = salvageOf(damaged, "a note's page " + std::to_string(page));
        ASSERT_TRUE(outcome.made);
        EXPECT_EQ(outcome.missing, 1);
        EXPECT_EQ(outcome.report.lost, 1);
    }
    EXPECT_GT(wiped, 2U);
}

TEST_F(ADamagedBook, DoesNotMindGarbageOnAFreePage) {
    make(60);
    runSql(folder / "sound",
           "CREATE TABLE ballast (x); INSERT INTO ballast WITH RECURSIVE n(i) AS (SELECT 1 UNION "
           "ALL SELECT i + 1 FROM n WHERE i < 60) SELECT randomblob(3000) FROM n; DROP TABLE "
           "ballast;");
    const std::string withFree = bytesAt(folder / "sound");
    ASSERT_GT(withFree.size(), sound.size() + 10 * 4096);
    for (std::size_t page = sound.size() / 4096 + 2; page <= withFree.size() / 4096; page += 7) {
        std::string damaged = withFree;
        damaged.replace((page - 1) * 4096, 4096, garbage(4096));
        const auto outcome = salvageOf(damaged, "free page " + std::to_string(page));
        ASSERT_TRUE(outcome.made);
        EXPECT_TRUE(outcome.report.chainKept);
    }
}

TEST_F(ADamagedBook, IsReadWithinBoundsHoweverManyBytesAreWrong) {
    make(60);
    for (int round = 0; round < trialCount(15, 400); ++round) {
        std::string damaged = sound;
        const std::size_t many = std::size_t{1} << (round % 15);
        for (std::size_t i = 0; i < many; ++i)
            damaged[random() % damaged.size()] = static_cast<char>(random());
        salvageOf(damaged, std::to_string(many) + " bytes, round " + std::to_string(round));
    }
}
