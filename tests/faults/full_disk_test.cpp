// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/processes.h"
#include "tests/faults/small_disk.h"

#include <gtest/gtest.h>
#include <sys/resource.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

TEST(ABookOnAFullDisk, SaysSoLosesNothingAndGoesOnWhenThereIsRoom) {
    const TempFolder folder;
    const SmallDisk disk(folder / "disk");
    SKIP_WITHOUT(disk);
    Book book = newBook(disk / "book");
    ASSERT_TRUE(book.append(change(reading(0), 0)));
    disk.fill();
    const auto refused = book.append(change(reading(1), 1));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, StoreErrorKind::DiskFull) << refused.error().detail;
    EXPECT_NE(refused.error().detail.find("SQLITE_"), std::string::npos) << refused.error().detail;
    EXPECT_EQ(book.observationCount(), 1);
    EXPECT_EQ(problemsOf(book), "");

    const auto created = Book::create(disk / "second", inventedStation(), kAuthor);
    ASSERT_FALSE(created);
    EXPECT_EQ(created.error().kind, StoreErrorKind::DiskFull) << created.error().detail;
    EXPECT_FALSE(std::filesystem::exists(disk / "second"));
    const auto backup = book.backupTo(disk / "copy");
    ASSERT_FALSE(backup);
    EXPECT_EQ(backup.error().kind, StoreErrorKind::DiskFull) << backup.error().detail;
    EXPECT_FALSE(std::filesystem::exists(disk / "copy"));
    EXPECT_EQ(contentsOf(folder / "disk").size(), 2U) << "the book and the ballast";

    std::filesystem::remove(disk / "ballast");
    const auto receipt = book.append(change(reading(1), 1));
    ASSERT_TRUE(receipt) << receipt.error().detail;
    EXPECT_EQ(book.observationCount(), 2);
    EXPECT_EQ(problemsOf(book), "");
}

TEST(ABookOnADiskThatFillsUp, KeepsEveryReadingUntilThen) {
    const TempFolder folder;
    const SmallDisk disk(folder / "disk");
    SKIP_WITHOUT(disk);
    Book book = newBook(disk / "book");
    int stored = 0;
    for (; stored < 100'000; ++stored) {
        record::Observation o = reading(stored);
        o.note = std::string(500, 'n');
        const auto receipt = book.append(change(o, static_cast<std::uint64_t>(stored)));
        if (!receipt) {
            EXPECT_EQ(receipt.error().kind, StoreErrorKind::DiskFull) << receipt.error().detail;
            break;
        }
    }
    EXPECT_GT(stored, 100);
    EXPECT_EQ(book.observationCount(), stored);
    EXPECT_EQ(problemsOf(book), "");
    EXPECT_EQ(Book::open(disk / "book")->observationCount(), stored);
}

TEST(ABookUnderAFileSizeLimit, SaysThatWritingFailedAndStaysSound) {
    const TempFolder folder;
    newBook(folder / "book");
    const int code = apart([&] {
        ::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{200 * 1024, 200 * 1024};
        ::setrlimit(RLIMIT_FSIZE, &limit);
        auto book = Book::open(folder / "book");
        for (int i = 0; i < 10'000; ++i) {
            record::Observation o = reading(i);
            o.note = std::string(2000, 'n');
            const auto receipt = book->append(change(o, static_cast<std::uint64_t>(i)));
            if (!receipt)
                return problemsOf(*book).empty() ? codeOf(receipt) : 99;
        }
        return kDone;
    });
    EXPECT_EQ(code, codeOf(StoreErrorKind::InputOutput));
    auto book = Book::open(folder / "book");
    ASSERT_TRUE(book);
    EXPECT_EQ(problemsOf(*book), "");
    EXPECT_GT(book->observationCount().value(), 10);
    EXPECT_TRUE(book->append(change(reading(20'000), 20'000)));
}

#if defined(__has_feature)
#if __has_feature(undefined_behavior_sanitizer)
#define WICKBOOK_SANITIZER_WANTS_DESCRIPTORS
#endif
#endif

TEST(ABookWithoutFreeFileDescriptors, SaysThatItCantBeWrittenAndGoesOnAfterwards) {
#ifdef WICKBOOK_SANITIZER_WANTS_DESCRIPTORS
    GTEST_SKIP()
        << "the sanitizer looks at memory through a pipe and wants descriptors of its own; the program "
           "without it is starved of them in AProgramWithLittle";
#endif
    const TempFolder folder;
    newBook(folder / "book");
    const int code = apart([&] {
        auto book = Book::open(folder / "book");
        std::vector<int> held;
        const rlimit limit{64, 64};
        ::setrlimit(RLIMIT_NOFILE, &limit);
        for (int one = ::open("/dev/null", O_RDONLY); one >= 0; one = ::open("/dev/null", O_RDONLY))
            held.push_back(one);
        const auto refused = book->append(change(reading(0), 0));
        const auto unopened = Book::open(folder / "book");
        for (const int one : held)
            ::close(one);
        if (unopened || unopened.error().kind != StoreErrorKind::CannotOpen)
            return 98;
        if (!book->append(change(reading(0), 0)) || !problemsOf(*book).empty())
            return 99;
        return codeOf(refused);
    });
    EXPECT_EQ(code, codeOf(StoreErrorKind::CannotOpen));
    EXPECT_EQ(Book::open(folder / "book")->observationCount(), 1);
}
