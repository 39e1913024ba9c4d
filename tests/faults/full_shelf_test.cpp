// SPDX-License-Identifier: GPL-3.0-or-later
// Copies kept on a disk that is full, or that has become read only: told, and the copies that were there
// stay.
#include "core/store/copy_shelf.h"
#include "tests/core/store/book_testing.h"

#include <gtest/gtest.h>
#include <sys/mount.h>

#include <cerrno>
#include <cstring>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

/// A disk of one megabyte, made of memory, that copies go to.
class ShelfDisk {
public:
    explicit ShelfDisk(const std::filesystem::path& at) : at_(at) {
        std::filesystem::create_directory(at_);
        if (::mount("tmpfs", at_.c_str(), "tmpfs", 0, "size=1m") != 0)
            reason_ = std::strerror(errno);
    }
    ShelfDisk(const ShelfDisk&) = delete;
    ShelfDisk& operator=(const ShelfDisk&) = delete;
    ~ShelfDisk() {
        if (reason_.empty())
            ::umount2(at_.c_str(), MNT_DETACH);
    }
    [[nodiscard]] const std::string& reason() const { return reason_; } ///< empty: there is a disk
    [[nodiscard]] const std::filesystem::path& path() const { return at_; }
    void fill() const {
        std::ofstream out(at_ / "ballast", std::ios::binary);
        const std::string block(4096, 'x');
        while (out << block << std::flush) {
        }
    }
    void empty() const { std::filesystem::remove(at_ / "ballast"); }
    [[nodiscard]] bool makeReadOnly() const {
        return ::mount(nullptr, at_.c_str(), nullptr, MS_REMOUNT | MS_RDONLY, nullptr) == 0;
    }

private:
    std::filesystem::path at_;
    std::string reason_;
};

} // namespace

TEST(AShelfOnAFullDisk, TellsItAndKeepsTheOldCopies) {
    const TempFolder folder;
    const ShelfDisk disk(folder / "disk");
    if (!disk.reason().empty())
        GTEST_SKIP() << "needs the right to mount a small disk (run as root): " << disk.reason();
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
