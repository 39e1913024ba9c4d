// SPDX-License-Identifier: GPL-3.0-or-later
// Copies kept on a disk that is full, or that has become read only: told, and the copies that were there
// stay.
#include "core/store/copy_shelf.h"
#include "tests/core/store/book_testing.h"
#include "tests/faults/small_disk.h"

#include <gtest/gtest.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

TEST(AShelfOnAFullDisk, TellsItAndKeepsTheOldCopies) {
    const TempFolder folder;
    const SmallDisk disk(folder / "disk");
    SKIP_WITHOUT(disk);
    Book book = newBook(folder / "hill.wickbook");
    ASSERT_TRUE(book.append(change(reading(0), 0)));
    const CopyShelf shelf{disk.path(), false};
    ASSERT_TRUE(keepCopy(book, shelf, CopyReason::Daily, at(kMarch2025)));
    disk.fill();
    ASSERT_TRUE(book.append(change(reading(1), 1)));
    const auto before = contentsOf(disk.path());
    const auto refused = keepCopy(book, shelf, CopyReason::Daily, at(kMarch2025 + 86400));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, StoreErrorKind::DiskFull) << refused.error().detail;
    EXPECT_TRUE(contentsOf(disk.path()) == before) << "something was left behind or went";
    EXPECT_EQ(problemsOf(book), "");

    disk.empty();
    const auto kept = keepCopy(book, shelf, CopyReason::Daily, at(kMarch2025 + 86400));
    ASSERT_TRUE(kept) << kept.error().detail;
    EXPECT_EQ(kept->readings, 2);

    // A second one of the same day, which the first should give way to.
    const auto second = keepCopy(book, shelf, CopyReason::ByHand, at(kMarch2025 + 86400 + 60));
    ASSERT_TRUE(second) << second.error().detail;

    ASSERT_TRUE(disk.makeReadOnly());
    ASSERT_TRUE(book.append(change(reading(2), 2)));
    const auto readOnly = keepCopy(book, shelf, CopyReason::Daily, at(kMarch2025 + 2 * 86400));
    ASSERT_FALSE(readOnly);
    EXPECT_EQ(readOnly.error().kind, StoreErrorKind::ReadOnly) << readOnly.error().detail;
    // A copy that should go and can't be deleted is told, and counted as staying.
    const auto rotation = rotateCopies(book, disk.path(), second->path, at(kMarch2025 + 86400 + 60));
    ASSERT_TRUE(rotation);
    EXPECT_TRUE(rotation->dropped.empty());
    ASSERT_EQ(rotation->stuck.size(), 1U);
    EXPECT_EQ(rotation->stuck.front().path, kept->path.string());
    EXPECT_EQ(rotation->left, 3);
    EXPECT_EQ(copiesIn(disk.path())->size(), 3U);
}
