// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/processes.h"

#include <grp.h>
#include <gtest/gtest.h>
#include <sys/mount.h>
#include <sys/stat.h>

#include <cerrno>
#include <cstring>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

/// Permissions don't bind root: then the piece runs as nobody.
int asPlainUser(const std::function<int()>& piece) {
    return apart([&] {
        constexpr uid_t kNobody = 65534;
        if (::geteuid() == 0 &&
            (::setgroups(0, nullptr) != 0 || ::setresgid(kNobody, kNobody, kNobody) != 0 ||
             ::setresuid(kNobody, kNobody, kNobody) != 0))
            return 97;
        return piece();
    });
}

/// Opens, expects a book for reading only whose readings can be read, and gives the code of an append.
int readsButDoesNotWrite(const std::filesystem::path& path) {
    auto book = Book::open(path);
    if (!book)
        return 90;
    if (!book->readOnlyBecause() || book->readOnlyBecause()->kind != StoreErrorKind::ReadOnly)
        return 91;
    if (book->observationCount() != 1 || !problemsOf(*book).empty())
        return 92;
    return codeOf(book->append(change(reading(1), 1)));
}

class ABookThatCantBeWritten : public ::testing::Test {
protected:
    TempFolder folder;
    std::filesystem::path path = folder / "book";
    void SetUp() override {
        Book book = newBook(path);
        ASSERT_TRUE(book.append(change(reading(0), 0)));
    }
    void TearDown() override { ::chmod(folder.path().c_str(), 0755); }
};

} // namespace

TEST_F(ABookThatCantBeWritten, ByItsPermissionsIsRead) {
    ::chmod(path.c_str(), 0444);
    ::chmod(folder.path().c_str(), 0777);
    const auto before = contentsOf(folder.path());
    EXPECT_EQ(asPlainUser([&] { return readsButDoesNotWrite(path); }), codeOf(StoreErrorKind::ReadOnly));
    EXPECT_TRUE(contentsOf(folder.path()) == before);
}

TEST_F(ABookThatCantBeWritten, ByItsFoldersPermissionsIsRead) {
    ::chmod(path.c_str(), 0666);
    ::chmod(folder.path().c_str(), 0555);
    const auto before = contentsOf(folder.path());
    EXPECT_EQ(asPlainUser([&] { return readsButDoesNotWrite(path); }), codeOf(StoreErrorKind::ReadOnly));
    EXPECT_EQ(asPlainUser([&] { return codeOf(Book::create(folder / "new", inventedStation(), kAuthor)); }),
              codeOf(StoreErrorKind::ReadOnly));
    EXPECT_TRUE(contentsOf(folder.path()) == before);
}

TEST_F(ABookThatCantBeWritten, NorReadIsToldFromOneThatIsNotThere) {
    ::chmod(path.c_str(), 0000);
    EXPECT_EQ(asPlainUser([&] { return codeOf(Book::open(path)); }), codeOf(StoreErrorKind::CannotOpen));
    ::chmod(path.c_str(), 0644);
    ::chmod(folder.path().c_str(), 0000);
    EXPECT_EQ(asPlainUser([&] { return codeOf(Book::open(path)); }), codeOf(StoreErrorKind::CannotOpen));
}

TEST_F(ABookThatCantBeWritten, OnADiskMountedForReadingIsRead) {
    const TempFolder mounts;
    std::filesystem::create_directory(mounts / "disk");
    const auto disk = mounts / "disk";
    if (::mount(folder.path().c_str(), disk.c_str(), nullptr, MS_BIND, nullptr) != 0)
        GTEST_SKIP() << "needs the right to mount (run as root): " << std::strerror(errno);
    ASSERT_EQ(::mount(nullptr, disk.c_str(), nullptr, MS_REMOUNT | MS_BIND | MS_RDONLY, nullptr), 0);
    EXPECT_EQ(readsButDoesNotWrite(disk / "book"), codeOf(StoreErrorKind::ReadOnly));
    const auto created = Book::create(disk / "new", inventedStation(), kAuthor);
    ::umount2(disk.c_str(), MNT_DETACH);
    ASSERT_FALSE(created);
    EXPECT_EQ(created.error().kind, StoreErrorKind::ReadOnly) << created.error().detail;
}

TEST_F(ABookThatCantBeWritten, BecauseItWasDeletedMeanwhileIsToldSo) {
    auto book = Book::open(path);
    ASSERT_TRUE(book);
    std::filesystem::remove(path);
    const auto refused = book->append(change(reading(1), 1));
    ASSERT_FALSE(refused) << "a reading saved into a file without a name is lost";
    EXPECT_EQ(refused.error().kind, StoreErrorKind::NoSuchFile) << refused.error().detail;
}
