// SPDX-License-Identifier: GPL-3.0-or-later
// The power fails after every single write and sync of a session in turn, and the disk forgets what it is
// free to forget. Promise: what was said to be saved is there, what was not is there whole or not at all, and
// the book is sound.
#include "core/store/schema.h"
#include "core/store/sqlite_error.h"
#include "tests/core/store/book_testing.h"
#include "tests/faults/forgetful_disk.h"
#include "tests/faults/long_run.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

using Memory = ForgetfulDisk::Memory;

/// The end of the chain covers every byte of every revision: two books with the same end are the same.
std::string chainEnd(const std::filesystem::path& path) {
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
    return database.execAndGet("SELECT count || ' ' || hex(head) FROM chain").getString();
}

using Step = std::function<bool(Book&)>;

ObservationChange revised(std::uint64_t number, std::uint64_t revision, const record::Observation& values) {
    ObservationChange made = change(values, number, "misread by five");
    made.revision = record::Uuid::fromSeed(4, revision);
    return made;
}

/// A day at the station: a reading, its correction, a page of twelve, the station's facts, a withdrawal.
std::vector<Step> everydaySteps() {
    return {
        [](Book& book) { return book.append(change(reading(0), 0)).has_value(); },
        [](Book& book) { return book.append(change(reading(1), 1)).has_value(); },
        [](Book& book) {
            record::Observation right = reading(1);
            right.dry.value->value.mantissa += 50;
            return book.append(revised(1, 1, right)).has_value();
        },
        [](Book& book) {
            std::vector<ObservationChange> page;
            for (int i = 2; i < 14; ++i)
                page.push_back(change(reading(i), static_cast<std::uint64_t>(i)));
            return book.appendAll(page).has_value();
        },
        [](Book& book) {
            record::StationFacts facts = inventedStation();
            facts.hourWindowMinutes = 60;
            facts.limits[{"very-dry.lowest-humidity"}] = 7.0;
            return book.reviseFacts(facts, kAuthor).has_value();
        },
        [](Book& book) {
            record::Observation gone = reading(0);
            gone.withdrawn = true;
            return book.append(revised(0, 2, gone)).has_value();
        },
    };
}

/// Runs the steps until one fails; how many were acknowledged.
std::size_t run(const std::filesystem::path& path, const std::vector<Step>& steps) {
    auto book =
        Book::open(path, OpenMode::ReadWrite, std::make_shared<StandingClock>(at(kMarch2025 + 8 * 3600)));
    std::size_t acknowledged = 0;
    while (book && acknowledged < steps.size() && steps[acknowledged](*book))
        ++acknowledged;
    return acknowledged;
}

/// The end of the chain before the first step and after each.
std::vector<std::string> endsOf(const std::filesystem::path& start, const std::filesystem::path& scratch,
                                const std::vector<Step>& steps) {
    std::vector<std::string> ends;
    for (std::size_t count = 0; count <= steps.size(); ++count) {
        std::filesystem::copy_file(start, scratch, std::filesystem::copy_options::overwrite_existing);
        EXPECT_EQ(run(scratch, {steps.begin(), steps.begin() + static_cast<std::ptrdiff_t>(count)}), count);
        ends.push_back(chainEnd(scratch));
    }
    return ends;
}

struct Trial {
    Memory memory;
    std::uint64_t seed;
};

std::vector<Trial> trials(int torn) {
    std::vector<Trial> made{{Memory::Nothing, 0}, {Memory::Everything, 0}};
    for (int i = 0; i < torn; ++i)
        made.push_back({Memory::Torn, 1000 + static_cast<std::uint64_t>(i)});
    return made;
}

class APowerCut : public ::testing::Test {
protected:
    TempFolder folder;
    std::filesystem::path start = folder / "start";
    std::filesystem::path disk = folder / "disk";
    std::filesystem::path found = folder / "found";
    int states = 0;
    int takenBack = 0;

    void SetUp() override {
        newBook(start);
        std::filesystem::create_directory(disk);
        std::filesystem::create_directory(found);
    }
    void emptyInto(const std::filesystem::path& place, const std::filesystem::path& book) const {
        std::filesystem::remove_all(place);
        std::filesystem::create_directory(place);
        std::filesystem::copy_file(book, place / "book");
    }
    void recall(const ForgetfulDisk& forgetful, const Trial& trial) {
        std::filesystem::remove_all(found);
        std::filesystem::create_directory(found);
        forgetful.recall(found, trial.memory, trial.seed);
        ++states;
        takenBack += std::filesystem::exists(found / "book-journal") ? 1 : 0;
    }
    /// What the book must be after so many acknowledged steps.
    void expectKept(const std::vector<std::string>& ends, std::size_t acknowledged,
                    const std::string& where) {
        {
            const auto book = Book::open(found / "book");
            ASSERT_TRUE(book) << where << ": " << book.error().detail;
            ASSERT_EQ(problemsOf(*book), "") << where;
        }
        const std::string end = chainEnd(found / "book");
        const bool asSaid = end == ends[acknowledged];
        const bool oneMore = acknowledged + 1 < ends.size() && end == ends[acknowledged + 1];
        ASSERT_TRUE(asSaid || oneMore)
            << where << ": " << acknowledged << " steps were acknowledged, found " << end;
        // One that was never whole lies there until the next write, which goes through.
        if (std::filesystem::exists(found / "book-journal")) {
            ASSERT_TRUE(Book::open(found / "book")->append(change(reading(500), 500))) << where;
            ASSERT_FALSE(std::filesystem::exists(found / "book-journal")) << where;
        }
    }
};

std::string placeOf(int cut, const Trial& trial) {
    return "cut after operation " + std::to_string(cut) + ", memory " +
           std::to_string(static_cast<int>(trial.memory)) + ", seed " + std::to_string(trial.seed);
}

} // namespace

TEST_F(APowerCut, AfterAnyWriteOrSyncLosesNothingThatWasSaidToBeSaved) {
    const auto steps = everydaySteps();
    const auto ends = endsOf(start, folder / "scratch", steps);
    emptyInto(disk, start);
    ForgetfulDisk forgetful(disk);
    ASSERT_EQ(run(disk / "book", steps), steps.size());
    const int all = forgetful.operations();
    ASSERT_GT(all, 60);
    ASSERT_EQ(forgetful.unsure(), 0) << "everything acknowledged, and something not on the disk";
    for (int cut = 0; cut < all; ++cut) {
        emptyInto(disk, start);
        forgetful.startAfresh();
        forgetful.cutAfter(cut);
        const std::size_t acknowledged = run(disk / "book", steps);
        for (const Trial& trial : trials(longRun() ? 40 : 4)) {
            recall(forgetful, trial);
            expectKept(ends, acknowledged, placeOf(cut, trial));
            if (HasFatalFailure())
                return;
        }
    }
    std::printf("%d operations, %d states of the disk, %d with a write to take back\n", all, states,
                takenBack);
    EXPECT_GT(takenBack, states / 10) << "hardly a state within a write: this proved little";
}

TEST_F(APowerCut, WhileAnInterruptedWriteIsTakenBackLosesNothingEither) {
    const std::vector<Step> steps{everydaySteps()[3]};
    // The page of twelve is the first step here.
    const auto ends = endsOf(start, folder / "scratch", steps);
    emptyInto(disk, start);
    ForgetfulDisk forgetful(disk);
    ASSERT_EQ(run(disk / "book", steps), 1U);
    const int all = forgetful.operations();
    int secondCuts = 0;
    for (int cut = 0; cut < all; ++cut) {
        emptyInto(disk, start);
        forgetful.startAfresh();
        forgetful.cutAfter(cut);
        const std::size_t acknowledged = run(disk / "book", steps);
        const std::filesystem::path interrupted = folder / "interrupted";
        std::filesystem::remove_all(interrupted);
        std::filesystem::create_directory(interrupted);
        forgetful.recall(interrupted, cut % 2 == 0 ? Memory::Everything : Memory::Torn,
                         static_cast<unsigned>(cut));
        if (!std::filesystem::exists(interrupted / "book-journal"))
            continue;
        for (int second = 0;; ++second) {
            std::filesystem::remove_all(disk);
            std::filesystem::copy(interrupted, disk);
            forgetful.startAfresh();
            forgetful.cutAfter(second);
            const bool opened = Book::open(disk / "book").has_value();
            if (opened && !forgetful.isOff())
                break;
            ++secondCuts;
            for (const Trial& trial : trials(2)) {
                recall(forgetful, trial);
                expectKept(ends, acknowledged,
                           placeOf(cut, trial) + ", second cut " + std::to_string(second));
                if (HasFatalFailure())
                    return;
            }
        }
    }
    EXPECT_GT(secondCuts, 20);
    std::printf("%d cuts while taking back, %d states\n", secondCuts, states);
}

TEST_F(APowerCut, InALongWriteThatOutgrowsTheMemoryLosesNothing) {
    // 3 MB in one transaction: more than SQLite keeps (2 MB), so pages go to the file before its end.
    const std::vector<Step> steps{everydaySteps()[0], [](Book& book) {
                                      std::vector<ObservationChange> register_;
                                      for (int i = 1; i < 1'000; ++i) {
                                          record::Observation o = reading(i);
                                          o.note = std::string(3'000, 'n');
                                          register_.push_back(change(o, static_cast<std::uint64_t>(i)));
                                      }
                                      return book.appendAll(register_).has_value();
                                  }};
    const auto ends = endsOf(start, folder / "scratch", steps);
    emptyInto(disk, start);
    ForgetfulDisk forgetful(disk);
    ASSERT_EQ(run(disk / "book", steps), steps.size());
    const int all = forgetful.operations();
    const int stride = std::max(1, all / (longRun() ? 400 : 12));
    for (int cut = 1; cut < all; cut += stride) {
        emptyInto(disk, start);
        forgetful.startAfresh();
        forgetful.cutAfter(cut);
        const std::size_t acknowledged = run(disk / "book", steps);
        for (const Trial& trial : trials(1)) {
            recall(forgetful, trial);
            expectKept(ends, acknowledged, placeOf(cut, trial));
            if (HasFatalFailure())
                return;
        }
    }
    std::printf("%d operations, %d states\n", all, states);
    EXPECT_GT(takenBack, 0);
}

TEST_F(APowerCut, WhileABookIsBroughtToANewSchemaLeavesTheOldOneOrTheNew) {
    const std::vector<Migration> steps{
        migrations().front(),
        {2,
         "CREATE TABLE invented (one INTEGER PRIMARY KEY, text TEXT NOT NULL) STRICT; INSERT INTO invented "
         "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 40) SELECT i, "
         "hex(zeroblob(300)) FROM n;"}};
    const std::string end = chainEnd(start);
    const auto bring = [&] {
        try {
            SQLite::Database database((disk / "book").string(), SQLite::OPEN_READWRITE);
            database.exec("PRAGMA synchronous=EXTRA");
            migrate(database, disk / "book", steps);
            return true;
        } catch (const SQLite::Exception&) {
            return false;
        } catch (const Refusal&) {
            return false; // the check before the commit met the cut
        }
    };
    emptyInto(disk, start);
    ForgetfulDisk forgetful(disk);
    ASSERT_TRUE(bring());
    const int all = forgetful.operations();
    for (int cut = 0; cut <= all; ++cut) {
        emptyInto(disk, start);
        forgetful.startAfresh();
        forgetful.cutAfter(cut);
        const bool acknowledged = bring();
        for (const Trial& trial : trials(6)) {
            recall(forgetful, trial);
            SQLite::Database database((found / "book").string(), SQLite::OPEN_READWRITE);
            const std::string where = placeOf(cut, trial);
            ASSERT_EQ(database.execAndGet("PRAGMA integrity_check").getString(), "ok") << where;
            const int version = database.execAndGet("PRAGMA user_version").getInt();
            const bool invented = database.tableExists("invented");
            ASSERT_EQ(version, invented ? 2 : 1) << where;
            ASSERT_TRUE(version == 2 || !acknowledged) << where;
            if (invented) {
                ASSERT_EQ(database.execAndGet("SELECT count(*) FROM invented").getInt(), 40) << where;
            }
            ASSERT_EQ(chainEnd(found / "book"), end) << where;
        }
    }
    std::printf("%d operations, %d states, %d to take back\n", all, states, takenBack);
    EXPECT_GT(takenBack, 0);
}

namespace {

/// How many states of the disk lose an acknowledged row, or are damaged, under a weaker setting.
struct Losses {
    int lost = 0;
    int damaged = 0;
};

Losses lossesUnder(const std::filesystem::path& disk, const std::filesystem::path& found,
                   const char* setting) {
    Losses losses;
    ForgetfulDisk forgetful(disk);
    for (int cut = 1;; ++cut) {
        std::filesystem::remove_all(disk);
        std::filesystem::create_directory(disk);
        int acknowledged = 0;
        forgetful.startAfresh();
        {
            SQLite::Database made((disk / "table").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
            made.exec("CREATE TABLE t (x)");
        }
        forgetful.startAfresh();
        forgetful.cutAfter(cut);
        try {
            SQLite::Database database((disk / "table").string(), SQLite::OPEN_READWRITE);
            database.exec(std::string{"PRAGMA synchronous="} + setting);
            for (; acknowledged < 4; ++acknowledged)
                database.exec("INSERT INTO t SELECT hex(zeroblob(2000))");
        } catch (const SQLite::Exception&) {
        }
        if (!forgetful.isOff())
            return losses;
        for (const Trial& trial : trials(6)) {
            std::filesystem::remove_all(found);
            std::filesystem::create_directory(found);
            forgetful.recall(found, trial.memory, trial.seed);
            try {
                SQLite::Database database((found / "table").string(), SQLite::OPEN_READWRITE);
                if (database.execAndGet("PRAGMA integrity_check").getString() != "ok")
                    ++losses.damaged;
                else if (database.execAndGet("SELECT count(*) FROM t").getInt() < acknowledged)
                    ++losses.lost;
            } catch (const SQLite::Exception&) {
                ++losses.damaged;
            }
        }
    }
}

} // namespace

TEST_F(APowerCut, IsFeltUnderTheSettingsThatABookDoesNotUse) {
    // That this disk forgets at all, and why a book asks for EXTRA: under FULL the removal of the journal is
    // not synced, and a saved row can be taken back (SQLite, "PRAGMA synchronous").
    const Losses off = lossesUnder(disk, found, "OFF");
    EXPECT_GT(off.lost + off.damaged, 0);
    EXPECT_GT(off.damaged, 0);
    const Losses full = lossesUnder(disk, found, "FULL");
    EXPECT_GT(full.lost, 0);
    EXPECT_EQ(full.damaged, 0);
    const Losses extra = lossesUnder(disk, found, "EXTRA");
    EXPECT_EQ(extra.lost, 0);
    EXPECT_EQ(extra.damaged, 0);
}
