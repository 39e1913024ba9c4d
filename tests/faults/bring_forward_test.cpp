// SPDX-License-Identifier: GPL-3.0-or-later
// A book is brought to a new schema while the program is killed, or while the disk fails at every call in
// turn. Promise: the old book or the new one, whole; the copy made before is whole or not there.
#include "tests/app/program.h"
#include "tests/faults/failing_disk.h"
#include "tests/faults/fault_ledger.h"
#include "tests/faults/invented_schema.h"
#include "tests/faults/long_run.h"
#include "tests/faults/processes.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <random>

#ifdef WICKBOOK_PROGRAM

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

class ABookBroughtForward : public ::testing::Test {
protected:
    TempFolder folder;
    TempFolder aside;
    std::filesystem::path path = folder / "book";
    std::string before;

    void SetUp() override {
        {
            Book book = newBook(aside / "start");
            for (int i = 0; i < 200; ++i)
                ASSERT_TRUE(book.append(change(reading(i), static_cast<std::uint64_t>(i))));
        }
        before = bytesAt(aside / "start");
    }
    void prepare() const {
        std::filesystem::remove_all(folder.path());
        std::filesystem::create_directory(folder.path());
        writeBytes(path, before);
    }
    static apptest::Strain forward(apptest::Strain strain = {}) {
        strain.program = WICKBOOK_BRING_FORWARD;
        return strain;
    }
    /// The schema the book has, after what was interrupted has been taken back.
    int expectWhole(const std::string& where) const {
        int schema = 0;
        {
            SQLite::Database database(path.string(), SQLite::OPEN_READWRITE, 10'000);
            EXPECT_EQ(database.execAndGet("PRAGMA integrity_check").getString(), "ok") << where;
            schema = database.execAndGet("PRAGMA user_version").getInt();
            const bool invented = database.tableExists("invented");
            EXPECT_EQ(schema, currentSchema() + (invented ? 1 : 0)) << where;
            if (invented) {
                EXPECT_EQ(database.execAndGet("SELECT count(*) FROM invented").getInt(), 400) << where;
            }
        }
        // Every revision with its chain: verify doesn't ask after the tables of a newer schema.
        const auto book = Book::open(path);
        EXPECT_TRUE(book) << where << ": " << (book ? "" : book.error().detail);
        if (book) {
            EXPECT_EQ(problemsOf(*book), "") << where;
            EXPECT_EQ(book->observationCount(), 200) << where;
        }
        bool copied = false;
        for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
            const std::string name = entry.path().filename().string();
            if (name.starts_with("book before schema") && name.find("-journal") == std::string::npos) {
                copied = true;
                EXPECT_EQ(problemsOf(*Book::open(entry.path(), OpenMode::ReadOnly)), "") << where;
            }
        }
        EXPECT_TRUE(schema == currentSchema() || copied) << where << ": changed without a copy";
        return schema;
    }
};

} // namespace

TEST_F(ABookBroughtForward, IsTheOldOneOrTheNewWhenTheProgramIsKilled) {
    prepare();
    const auto start = std::chrono::steady_clock::now();
    ASSERT_EQ(apptest::run({path.string()}, {}, forward()).code, 0);
    const auto whole =
        std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - start);
    ASSERT_EQ(expectWhole("unhindered"), currentSchema() + 1);
    std::mt19937 draw(7);
    std::uniform_int_distribution<int> milliseconds(1, static_cast<int>(whole.count()) + 10);
    FaultLine line{"kill -9 while migrating", trialCount(15, 200), 0, 0, 0, {}};
    int oldOnes = 0;
    for (int trial = 0; trial < line.trials; ++trial) {
        prepare();
        apptest::Strain strain = forward();
        strain.killAfterMilliseconds = milliseconds(draw);
        apptest::run({path.string()}, {}, strain);
        oldOnes += expectWhole("trial " + std::to_string(trial)) == currentSchema() ? 1 : 0;
        line.unsound += HasFailure() ? 1 : 0;
        ASSERT_FALSE(HasFailure());
        const auto again = apptest::run({path.string()}, {}, forward());
        ASSERT_EQ(again.code, 0) << again.err;
        ASSERT_EQ(expectWhole("again"), currentSchema() + 1);
    }
    enterFault(line);
    std::printf("%d of %ld kills left the old book\n", oldOnes, static_cast<long>(line.trials));
    EXPECT_GT(oldOnes, 0);
}

TEST_F(ABookBroughtForward, IsTheOldOneOrTheNewWhereverTheDiskFails) {
    FailingDisk disk(folder.path().string() + "/", aside / "board");
    constexpr std::uint32_t kFullDisk = kWrites | kSyncs | kNewFiles;
    for (const auto& [name, calls, error] :
         {std::tuple{"disk full while migrating", kFullDisk, ENOSPC},
          std::tuple{"sync fails while migrating", std::uint32_t{kSyncs}, EIO}}) {
        prepare();
        disk.count(calls);
        ASSERT_EQ(apptest::run({path.string()}, {}, forward(disk.strain())).code, 0);
        const int all = disk.seen();
        ASSERT_GE(all, 4);
        FaultLine line{name, 0, 0, 0, 0, {}};
        const int stride = std::max(1, all / (longRun() ? all : 25));
        for (int call = 1; call <= all; call += stride) {
            const std::string where = std::string{name} + ", call " + std::to_string(call);
            prepare();
            disk.breakFrom(calls, call, error, 0, call % 2 == 0);
            const auto ran = apptest::run({path.string()}, {}, forward(disk.strain()));
            disk.repair();
            ++line.trials;
            EXPECT_LT(ran.code, 128) << where;
            const int schema = expectWhole(where);
            if (ran.code == 0) {
                EXPECT_EQ(schema, currentSchema() + 1) << where;
            } else {
                line.message = lastSentence(ran.err);
            }
            for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
                EXPECT_FALSE(entry.path().extension() == ".part") << where << ": " << entry.path();
            line.unsound += HasFailure() ? 1 : 0;
            ASSERT_FALSE(HasFailure()) << where;
            if (schema == currentSchema()) {
                ASSERT_EQ(apptest::run({path.string()}, {}, forward()).code, 0) << where;
                ASSERT_EQ(expectWhole(where), currentSchema() + 1);
            }
        }
        enterFault(line);
    }
}

#endif
