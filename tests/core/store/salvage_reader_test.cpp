// SPDX-License-Identifier: GPL-3.0-or-later
// The salvage's own reader of the file format beside SQLite's: of a sound book both must say the same.
#include "core/store/salvage_format.h"
#include "core/store/salvage_journal.h"
#include "tests/core/store/salvage_testing.h"

#include <gtest/gtest.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

/// A note of so many characters, of all lengths of UTF-8, and bytes that a reader could take for a row.
std::string noteOf(std::size_t length) {
    std::string note;
    while (note.size() < length)
        note += "wie gehört, 雨 ☂ \x12,#,";
    return note;
}

void fillBook(const std::filesystem::path& path, int readings, int everyLong, std::size_t longNote) {
    Book book = newBook(path);
    std::vector<ObservationChange> changes;
    for (int i = 0; i < readings; ++i) {
        auto values = reading(i);
        if (i % everyLong == 0)
            values.note = noteOf(longNote + static_cast<std::size_t>(i % 7) * 1000);
        changes.push_back(change(values, static_cast<std::uint64_t>(i), "typed"));
    }
    ASSERT_TRUE(book.appendAll(changes));
}

} // namespace

TEST(SalvageReader, FindsInALargeBookExactlyWhatSqliteSays) {
    const TempFolder folder;
    fillBook(folder / "book", 20'000, 40, 6000);
    const auto said = askSqlite(folder / "book", kAllRevisions);
    ASSERT_GT(said.size(), 20'000U);
    // Two levels of interior pages: more leaves than one interior page of 4096 bytes can name.
    const auto depth =
        askSqlite(folder / "book", "SELECT count(*) > 0 FROM pragma_page_count WHERE page_count > 2000");
    ASSERT_EQ(depth, (std::vector<PlainRow>{{"1:1"}}));
    EXPECT_TRUE(foundIn(bytesAt(folder / "book")) == asSet(said));
}

TEST(SalvageReader, FindsTheSameInEveryPageSizeAndWithReservedBytes) {
    const TempFolder folder;
    fillBook(folder / "book", 300, 10, 3000);
    const auto said = asSet(askSqlite(folder / "book", kAllRevisions));
    ASSERT_GT(said.size(), 300U);
    for (const int pageSize : {512, 1024, 2048, 4096, 8192, 16384, 32768, 65536}) {
        const std::string name = "pages of " + std::to_string(pageSize);
        writeBytes(folder / name, bytesAt(folder / "book"));
        runSql(folder / name, "PRAGMA page_size=" + std::to_string(pageSize) + "; VACUUM;");
        ASSERT_EQ(askSqlite(folder / name, "PRAGMA page_size"),
                  (std::vector<PlainRow>{{"1:" + std::to_string(pageSize)}}));
        EXPECT_TRUE(foundIn(bytesAt(folder / name)) == said) << name;
    }
}

TEST(SalvageReader, FindsRowsAfterAHeaderThatSaysNothing) {
    const TempFolder folder;
    fillBook(folder / "book", 200, 20, 5000);
    const auto said = asSet(askSqlite(folder / "book", kAllRevisions));
    std::string damaged = bytesAt(folder / "book");
    damaged.replace(0, 100, std::string(100, '\xff'));
    EXPECT_TRUE(foundIn(damaged) == said);
}

// Section 1.6 of the format: the values of its own description of varints, and the signs of integers.
TEST(SalvageFormat, ReadsVarintsAndIntegersAsTheFormatSays) {
    for (const std::uint64_t value :
         {std::uint64_t{0}, std::uint64_t{127}, std::uint64_t{128}, std::uint64_t{16383},
          std::uint64_t{16384}, std::uint64_t{0xFFFFFFFF}, (std::uint64_t{1} << 56U) - 1,
          std::uint64_t{1} << 56U, ~std::uint64_t{0}}) {
        const std::string bytes = varintOf(value);
        const Varint read = varintAt(bytes, 0);
        EXPECT_EQ(read.value, value);
        EXPECT_EQ(read.length, bytes.size());
        EXPECT_EQ(varintAt(bytes.substr(0, bytes.size() - 1), 0).length, 0U) << "cut off";
    }
    EXPECT_EQ(varintOf(127).size(), 1U);
    EXPECT_EQ(varintOf(128).size(), 2U);
    EXPECT_EQ(varintOf(~std::uint64_t{0}).size(), 9U);
    EXPECT_EQ(integerAt("\xff", 0, 1), -1);
    EXPECT_EQ(integerAt(std::string{"\x80\x00\x00", 3}, 0, 3), -8388608);
    EXPECT_EQ(integerAt(std::string{"\x00\x00\x00\x00\x00\x01", 6}, 0, 5), 1);
    EXPECT_EQ(integerAt({}, 0, 8), 0);
    EXPECT_EQ(integerAt({}, 0, 9), 1);
}

TEST(SalvageReader, EndsOnWhateverBytesThereAre) {
    std::mt19937_64 source(20250311);
    const TempFolder folder;
    fillBook(folder / "book", 60, 10, 5000);
    const std::string sound = bytesAt(folder / "book");
    for (int round = 0; round < 200; ++round) {
        std::string bytes = sound;
        const std::size_t many = 1U << (round % 14);
        for (std::size_t i = 0; i < many; ++i)
            bytes[source() % bytes.size()] = static_cast<char>(source());
        if (round % 3 == 0)
            bytes.resize(source() % bytes.size());
        const auto found = revisionsIn(bytes);
        EXPECT_LE(found.size(), bytes.size());
        const MemorySource memory(bytes);
        for (const PageLayout& layout : layoutsOf(memory))
            EXPECT_LE(brokenTreePages(memory, layout, "revision").size(), 2 + 2 * pagesIn(memory, layout));
    }
    EXPECT_TRUE(revisionsIn({}).empty());
    EXPECT_TRUE(revisionsIn(std::string(100'000, '\0')).empty());
}
