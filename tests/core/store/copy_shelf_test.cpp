// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/copy_shelf.h"
#include "tests/core/store/book_testing.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

namespace {

constexpr std::int64_t kOneDay = 86400;

std::vector<std::string> namesIn(const std::filesystem::path& folder) {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        names.push_back(entry.path().filename().string());
    std::ranges::sort(names);
    return names;
}

/// One more copy, and the rotation after it, as the program does it every day.
CopyRotation keepAndRotate(const Book& book, const CopyShelf& shelf, record::Instant now) {
    const auto kept = keepCopy(book, shelf, CopyReason::Daily, now);
    if (!kept)
        throw std::runtime_error(kept.error().detail);
    auto rotation = rotateCopies(book, shelf.folder, kept->path, now);
    if (!rotation)
        throw std::runtime_error(rotation.error().detail);
    return *rotation;
}

} // namespace

TEST(TheNameOfACopy, TellsBookMomentAndReasonAndIsReadBack) {
    CopyName name{"Nirgends am Bach", at(kMarch2025 + 3661), CopyReason::BeforeBringingIn, 1};
    EXPECT_EQ(copyFileName(name), "Nirgends am Bach copy 20250301T010101Z before-bringing-in.wickbook");
    for (const CopyReason reason : {CopyReason::Daily, CopyReason::ByHand, CopyReason::BeforeBringingIn,
                                    CopyReason::BeforeTakingBack}) {
        for (const int number : {1, 2, 17}) {
            name.reason = reason;
            name.number = number;
            EXPECT_EQ(copyNameFrom(copyFileName(name)), name) << copyFileName(name);
        }
    }
    // A copy that is used as a book has copies of its own.
    name.book = copyFileName(name).substr(0, 40) + " copy 20250101T000000Z daily";
    EXPECT_EQ(copyNameFrom(copyFileName(name)), name);
    // The longest name a file may have here is 255 bytes, SQLite's journal beside it included.
    name.book.clear();
    for (int i = 0; i < 100; ++i)
        name.book += "ö€";
    const std::string cut = copyFileName(name);
    EXPECT_LE(cut.size() + 8, 255U);
    EXPECT_TRUE(name.book.starts_with(copyNameFrom(cut)->book));
    EXPECT_NE(static_cast<unsigned char>(name.book[copyNameFrom(cut)->book.size()]) & 0xC0U, 0x80U)
        << "cut within a character";
}

TEST(TheNameOfACopy, IsNoOtherFilesName) {
    for (const char* other :
         {"", "station.wickbook", "copy.wickbook", " copy 20250301T010101Z daily.wickbook",
          "a copy 20250301T010101Z daily", "a copy 20250301T010101Z weekly.wickbook",
          "a copy 20250230T010101Z daily.wickbook", "a copy 20250301T240000Z daily.wickbook",
          "a copy 20250301T010101Z.wickbook", "a copy 20250301T010101Z daily 1.wickbook",
          "a copy 20250301T010101Z daily 2x.wickbook", "a copy 20250301T010101Zdaily.wickbook",
          "a copy 2025-03-01T0101Z daily.wickbook", "a copy 20250301T010101Z daily.wickbook-journal",
          "a before bringing in, 2025-03-01 010101.wickbook"})
        EXPECT_FALSE(copyNameFrom(other)) << other;
}

TEST(AShelf, KeepsVerifiedCopiesSeveralInOneSecondToo) {
    const TempFolder folder;
    Book book = newBook(folder / "hill.wickbook");
    ASSERT_TRUE(book.append(change(reading(0), 0)));
    const CopyShelf shelf{usualCopyFolder(book.path()), true};
    EXPECT_EQ(shelf.folder, folder / "hill copies");
    const auto first = keepCopy(book, shelf, CopyReason::ByHand, at(kMarch2025));
    ASSERT_TRUE(first) << first.error().detail;
    ASSERT_TRUE(book.append(change(reading(1), 1)));
    const auto second = keepCopy(book, shelf, CopyReason::ByHand, at(kMarch2025));
    ASSERT_TRUE(second) << second.error().detail;
    EXPECT_THAT(namesIn(shelf.folder), ElementsAre("hill copy 20250301T000000Z by-hand 2.wickbook",
                                                   "hill copy 20250301T000000Z by-hand.wickbook"));
    const auto copies = copiesIn(shelf.folder);
    ASSERT_TRUE(copies);
    ASSERT_EQ(copies->size(), 2U);
    EXPECT_EQ(copies->front().path, second->path) << "the newest first";
    EXPECT_EQ(copies->front().readings, 2);
    EXPECT_EQ(copies->back().readings, 1);
    EXPECT_EQ(copies->front().chain, book.chainMark());
    EXPECT_EQ(problemsOf(*Book::open(second->path, OpenMode::ReadOnly)), "");
    EXPECT_THAT(*copiesIn(folder / "nowhere"), IsEmpty());
}

TEST(AShelf, IsRotatedAndTouchesNothingButThisBooksOwnCopies) {
    const TempFolder folder;
    Book book = newBook(folder / "hill.wickbook");
    const CopyShelf shelf{folder / "copies", true};
    // Another station's copy, old: its first revision is another one.
    auto otherFacts = inventedStation();
    otherFacts.name = "Anderswo (invented)";
    {
        auto other = Book::create(folder / "other.wickbook", otherFacts, kAuthor);
        ASSERT_TRUE(other);
        for (int hour = 0; hour < 3; ++hour)
            ASSERT_TRUE(keepCopy(*other, shelf, CopyReason::Daily, at(kMarch2025 - 400 * kOneDay + hour)));
    }
    // A copy of this book that went its own way: it holds a reading that the book doesn't.
    {
        ASSERT_TRUE(keepCopy(book, shelf, CopyReason::Daily, at(kMarch2025 - 399 * kOneDay)));
        auto branch = Book::open(shelf.folder / "hill copy 20240127T000000Z daily.wickbook");
        ASSERT_TRUE(branch) << branch.error().detail;
        ASSERT_TRUE(branch->append(change(reading(50), 50)));
        ASSERT_TRUE(keepCopy(book, shelf, CopyReason::Daily, at(kMarch2025 - 399 * kOneDay + 5)));
    }
    // Files of our name that are no books; a damaged one; a folder and a link of that name.
    writeBytes(shelf.folder / "hill copy 20200101T000000Z daily.wickbook", "a letter");
    writeBytes(shelf.folder / "hill copy 20200101T000001Z daily.wickbook",
               bytesAt(folder / "hill.wickbook").substr(0, 5000));
    std::filesystem::create_directory(shelf.folder / "hill copy 20200101T000002Z daily.wickbook");
    std::filesystem::create_symlink(folder / "other.wickbook",
                                    shelf.folder / "hill copy 20200101T000003Z daily.wickbook");
    writeBytes(shelf.folder / "notes.txt", "mine");
    std::filesystem::copy(folder / "hill.wickbook", shelf.folder / "hill.wickbook");
    const auto foreign = contentsOf(shelf.folder);

    std::int64_t dropped = 0;
    CopyRotation rotation;
    for (int day = 0; day < 40; ++day) {
        ASSERT_TRUE(book.append(change(reading(day), static_cast<std::uint64_t>(day))));
        rotation = keepAndRotate(book, shelf, at(kMarch2025 + day * kOneDay));
        dropped += std::ssize(rotation.dropped);
        EXPECT_THAT(rotation.stuck, IsEmpty());
    }
    const auto after = contentsOf(shelf.folder);
    for (const auto& [name, bytes] : foreign) {
        // The first copy of the branch's day is this book's own: it may go by the rule, and stays as a
        // month's.
        EXPECT_TRUE(after.contains(name)) << name << " is gone";
        if (after.contains(name)) {
            EXPECT_TRUE(after.at(name) == bytes) << name << " was written to";
        }
    }
    // 41 copies of this book were made; what stays of them, told by the rotation and by counting files.
    EXPECT_EQ(rotation.left, 41 - dropped);
    EXPECT_EQ(std::ssize(after) - std::ssize(foreign) + 1, rotation.left);
    // The forty days end on Wednesday, 9 April 2025: 7 days, 5 Sundays before them, the last day of March,
    // and the one of January 2024.
    EXPECT_EQ(rotation.left, 7 + 5 + 1 + 1);
    EXPECT_TRUE(after.contains("hill copy 20250331T000000Z daily.wickbook"));
    EXPECT_TRUE(after.contains("hill copy 20250330T000000Z daily.wickbook"));
    EXPECT_FALSE(after.contains("hill copy 20250329T000000Z daily.wickbook"));
}

TEST(AShelf, WithoutACopyKnownToBeSoundDropsNothing) {
    const TempFolder folder;
    Book book = newBook(folder / "hill.wickbook");
    const CopyShelf shelf{folder / "copies", true};
    for (int second = 0; second < 5; ++second)
        ASSERT_TRUE(keepCopy(book, shelf, CopyReason::Daily, at(kMarch2025 + second)));
    const auto before = namesIn(shelf.folder);
    const auto rotation = rotateCopies(book, shelf.folder, shelf.folder / "not there", at(kMarch2025 + 100));
    ASSERT_TRUE(rotation);
    EXPECT_THAT(rotation->dropped, IsEmpty());
    EXPECT_EQ(namesIn(shelf.folder), before);
}

TEST(AShelf, LeavesACopyThatAnInterruptedWriteLiesBeside) {
    const TempFolder folder;
    Book book = newBook(folder / "hill.wickbook");
    const CopyShelf shelf{folder / "copies", true};
    const auto old = keepCopy(book, shelf, CopyReason::Daily, at(kMarch2025));
    ASSERT_TRUE(old);
    writeBytes(old->path.string() + "-journal", "");
    ASSERT_TRUE(book.append(change(reading(0), 0)));
    const auto rotation = keepAndRotate(book, shelf, at(kMarch2025 + 60));
    EXPECT_THAT(rotation.dropped, IsEmpty());
    EXPECT_TRUE(std::filesystem::exists(old->path));
}

TEST(AShelf, OfAClockThatIsSetBackLosesNothing) {
    const TempFolder folder;
    Book book = newBook(folder / "hill.wickbook");
    const CopyShelf shelf{folder / "copies", true};
    ASSERT_TRUE(book.append(change(reading(0), 0)));
    ASSERT_TRUE(keepCopy(book, shelf, CopyReason::Daily, at(kMarch2025 + 3000 * kOneDay)));
    ASSERT_TRUE(book.append(change(reading(1), 1)));
    for (int day = 0; day < 10; ++day) {
        ASSERT_TRUE(book.append(change(reading(2 + day), static_cast<std::uint64_t>(2 + day))));
        keepAndRotate(book, shelf, at(kMarch2025 + day * kOneDay));
        EXPECT_TRUE(std::filesystem::exists(shelf.folder / "hill copy 20330518T000000Z daily.wickbook"));
    }
    EXPECT_EQ(copiesIn(shelf.folder)->size(), 1U + 7U + 1U) << "the later one, seven days, one week's Sunday";
}

TEST(ACopy, IsDueOnceADayAndOnlyWhenTheBookHasGrown) {
    const TempFolder folder;
    Book book = newBook(folder / "hill.wickbook");
    const CopyShelf shelf{folder / "copies", true};
    const auto due = [&](record::Instant now) {
        return copyIsDue(*copiesOf(book, *copiesIn(shelf.folder)), *book.chainMark(), now);
    };
    const record::Instant morning = at(kMarch2025 + 9 * 3600);
    EXPECT_TRUE(due(morning)) << "none yet";
    keepAndRotate(book, shelf, morning);
    EXPECT_FALSE(due(morning + std::chrono::hours{24})) << "nothing new";
    ASSERT_TRUE(book.append(change(reading(0), 0)));
    EXPECT_FALSE(due(morning + std::chrono::hours{14})) << "still the same day";
    EXPECT_TRUE(due(morning + std::chrono::hours{15})) << "midnight has passed, UTC";
    EXPECT_TRUE(due(morning - std::chrono::hours{24})) << "the clock was set back a day";
    keepAndRotate(book, shelf, morning - std::chrono::hours{24});
    EXPECT_FALSE(due(morning + std::chrono::hours{24}));
}

TEST(ACopy, ThatFailsIsToldAndLeavesEverythingAsItWas) {
    const TempFolder folder;
    Book book = newBook(folder / "hill.wickbook");
    ASSERT_TRUE(book.append(change(reading(0), 0)));
    const CopyShelf shelf{folder / "copies", true};
    ASSERT_TRUE(keepCopy(book, shelf, CopyReason::Daily, at(kMarch2025)));

    const auto gone = keepCopy(book, {folder / "unplugged", false}, CopyReason::Daily, at(kMarch2025));
    ASSERT_FALSE(gone);
    EXPECT_EQ(gone.error().kind, StoreErrorKind::NoSuchFile);
    EXPECT_FALSE(std::filesystem::exists(folder / "unplugged"));
    const auto above = keepCopy(book, {folder / "no/such/folder", true}, CopyReason::Daily, at(kMarch2025));
    ASSERT_FALSE(above);
    EXPECT_EQ(above.error().kind, StoreErrorKind::CannotOpen);
    writeBytes(folder / "a file", "");
    const auto file = keepCopy(book, {folder / "a file", true}, CopyReason::Daily, at(kMarch2025));
    ASSERT_FALSE(file);
    EXPECT_EQ(file.error().kind, StoreErrorKind::CannotOpen);

    // A damaged book gives no copy, and the copies that were there stay.
    std::string bytes = bytesAt(folder / "hill.wickbook");
    const auto where = bytes.find("\"observer\":\"ab\"");
    ASSERT_NE(where, std::string::npos);
    bytes.replace(where + 12, 2, "cd");
    writeBytes(folder / "hill.wickbook", bytes);
    const auto before = contentsOf(shelf.folder);
    const auto damaged =
        keepCopy(*Book::open(folder / "hill.wickbook"), shelf, CopyReason::Daily, at(kMarch2025 + kOneDay));
    ASSERT_FALSE(damaged);
    EXPECT_EQ(damaged.error().kind, StoreErrorKind::Damaged);
    EXPECT_TRUE(contentsOf(shelf.folder) == before);
}

TEST(ACopyToHandOn, CannotBeWrittenByItsMode) {
    const TempFolder folder;
    Book book = newBook(folder / "hill.wickbook");
    ASSERT_TRUE(book.append(change(reading(0), 0)));
    const auto made = copyToHandOn(book, folder / "for the club.wickbook");
    ASSERT_TRUE(made) << made.error().detail;
    EXPECT_TRUE(*made);
    struct stat status {};
    ASSERT_EQ(::stat((folder / "for the club.wickbook").c_str(), &status), 0);
    EXPECT_EQ(status.st_mode & 0777U, 0444U);
    EXPECT_EQ(Book::open(folder / "for the club.wickbook", OpenMode::ReadOnly)->observationCount(), 1);
    EXPECT_EQ(copyToHandOn(book, folder / "for the club.wickbook").error().kind,
              StoreErrorKind::AlreadyThere);
}
