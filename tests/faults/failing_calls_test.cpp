// SPDX-License-Identifier: GPL-3.0-or-later
// The real program on a disk that runs full, or fails, at every call of its work in turn. Promise: what was
// said to be saved is there; what was not is there whole or not at all; nothing half-written stands about;
// the sentence names the cause; and once the disk is well the same work succeeds.
#include "tests/faults/failing_disk.h"
#include "tests/faults/fault_ledger.h"
#include "tests/faults/long_run.h"
#include "tests/faults/processes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstring>
#include <set>

#ifdef WICKBOOK_PROGRAM

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;
using apptest::Arguments;

namespace {

/// One piece of a session: what is run, which new file it should leave (none: the book itself changes).
struct Work {
    std::string name;
    Arguments arguments; ///< FOLDER stands for the folder
    std::string product; ///< a file or folder that must be there afterwards and nowhere half
};

std::vector<Work> session() {
    return {
        {"add",
         {"add", "--book", "FOLDER/book", "--at", "2025-03-20T09:00Z", "--dry", "61.5", "--wet", "57"},
         ""},
        {"import", {"import", "--book", "FOLDER/book", "--in", "FOLDER/rows.csv"}, ""},
        {"period", {"period", "--book", "FOLDER/book", "--from", "2025-04-01", "--elevation", "150"}, ""},
        {"backup", {"backup", "--book", "FOLDER/book", "--out", "FOLDER/copy"}, "copy"},
        {"restore", {"restore", "--from", "FOLDER/book", "--book", "FOLDER/restored"}, "restored"},
        {"export", {"export", "--book", "FOLDER/book", "--out", "FOLDER/month.csv"}, "month.csv"},
        {"new",
         {"new", "--book", "FOLDER/second", "--name", "Invented", "--elevation", "9", "--latitude", "50",
          "--longitude", "5", "--zone", "UTC", "--hours", "09:00", "--exposure", "screen"},
         "second"},
    };
}

struct Failure {
    std::string name;
    std::uint32_t calls;
    int error;
    const char* sentence; ///< what the sentence must say
};

std::vector<Failure> failures() {
    return {
        {"disk full", kWrites | kSyncs | kNewFiles, ENOSPC, "is full"},
        {"sync fails", kSyncs, EIO, "failed to read or write"},
        {"write fails", kWrites, EIO, "failed to read or write"},
        {"name or removal fails", kNames, EIO, "failed to read or write"},
    };
}

class ADiskThatFails : public ::testing::Test {
protected:
    TempFolder folder;
    TempFolder aside;
    std::filesystem::path start = aside / "start";
    std::string rows;

    void SetUp() override {
        Book book = newBook(start);
        for (int i = 0; i < 6; ++i)
            ASSERT_TRUE(book.append(change(reading(i), static_cast<std::uint64_t>(i))));
        rows = "time,dry,wet\n";
        for (int day = 4; day < 16; ++day)
            rows += "2025-03-" + std::string(day < 10 ? "0" : "") + std::to_string(day) + "T09:00Z,61.5,57\n";
    }
    void prepare() const {
        std::filesystem::remove_all(folder.path());
        std::filesystem::create_directory(folder.path());
        std::filesystem::copy_file(start, folder / "book");
        writeBytes(folder / "rows.csv", rows);
    }
    [[nodiscard]] Arguments of(const Work& work) const {
        Arguments arguments = work.arguments;
        for (std::string& one : arguments)
            if (one.starts_with("FOLDER"))
                one = folder.path().string() + one.substr(6);
        return arguments;
    }
    [[nodiscard]] std::set<std::string> names() const {
        std::set<std::string> found;
        for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
            found.insert(entry.path().filename().string());
        return found;
    }
    /// Readings and revisions of the book after SQLite has taken an interrupted write back.
    std::pair<std::int64_t, std::int64_t> held(const std::string& where) const {
        const auto book = Book::open(folder / "book");
        if (!book) {
            ADD_FAILURE() << where << ": " << book.error().detail;
            return {-1, -1};
        }
        EXPECT_EQ(problemsOf(*book), "") << where;
        const auto report = book->verify();
        return {report->observations, report->revisions};
    }
};

} // namespace

TEST_F(ADiskThatFails, AtAnyCallOfAnyWorkLosesNothingAndSaysWhy) {
    FailingDisk disk(folder.path().string() + "/", aside / "board");
    for (const Failure& failure : failures()) {
        FaultLine line{failure.name + " at every call", 0, 0, 0, 0, {}};
        int untold = 0;
        for (const Work& work : session()) {
            prepare();
            const auto before = held("at the start");
            disk.count(failure.calls);
            const auto well = apptest::run(of(work), {}, disk.strain());
            ASSERT_EQ(well.code, 0) << work.name << ": " << well.err;
            const int calls = disk.seen();
            ASSERT_GT(calls, 0) << work.name;
            const auto after = held(work.name);
            const auto namesAfter = names();
            // Every call in the long run; in the short one every call of what saves, every third elsewhere.
            const int stride = longRun() || work.name == "add" ? 1 : 3;
            for (int call = 1; call <= calls; call += stride) {
                const std::string where = failure.name + ", " + work.name + ", call " + std::to_string(call);
                prepare();
                const auto namesBefore = names();
                disk.breakFrom(failure.calls, call, failure.error, 0, call % 2 == 0);
                const auto ran = apptest::run(of(work), {}, disk.strain());
                const int failed = disk.failed();
                disk.repair();
                ++line.trials;
                ASSERT_LT(ran.code, 128) << where << ": killed by a signal\n" << ran.err;
                auto left = names();
                const auto now = held(where);
                if (ran.code == 0) {
                    // It may have found another way, but then all of it is there.
                    line.acknowledged += now.first - before.first;
                    line.lost += now == after ? 0 : 1;
                    EXPECT_EQ(now, after) << where << ": it said done";
                } else {
                    ASSERT_GT(failed, 0) << where << ": nothing failed, yet " << ran.err;
                    untold += lastSentence(ran.err).empty() ? 1 : 0;
                    EXPECT_THAT(ran.err, ::testing::AnyOf(::testing::HasSubstr(failure.sentence),
                                                          ::testing::HasSubstr(std::strerror(failure.error))))
                        << where;
                    EXPECT_EQ(ran.out.find("saved "), std::string::npos)
                        << where << ": said saved and failed";
                    if (line.message.empty())
                        line.message = lastSentence(ran.err);
                    // The book is as it was; only where its very last sync failed may it be as it was to
                    // become.
                    EXPECT_TRUE(now == before || now == after) << where;
                    // No half file: the product is there whole or not at all. A part that even its removal
                    // failed for is told by its name.
                    for (const std::string& name : left) {
                        const bool expected = namesBefore.contains(name) || name == "book-journal" ||
                                              (name == work.product && failure.calls != kWrites);
                        const bool part = (failure.calls & kNames) != 0 && name.starts_with(".");
                        EXPECT_TRUE(expected || part) << where << ": " << name << " was left";
                    }
                }
                line.unsound += ::testing::Test::HasFailure() ? 1 : 0;
                if (::testing::Test::HasFailure())
                    return;
                // The disk is well again.
                if (!work.product.empty())
                    std::filesystem::remove(folder / work.product);
                const bool stored = work.product.empty() && now == after && after != before;
                if (!stored) {
                    const auto again = apptest::run(of(work));
                    ASSERT_EQ(again.code, 0) << where << ", again: " << again.err;
                    ASSERT_EQ(held(where), after) << where << ", again";
                }
                left = names();
                for (const std::string& name : namesAfter)
                    EXPECT_TRUE(left.contains(name)) << where << ": " << name << " is missing";
            }
        }
        enterFault(line);
        EXPECT_EQ(untold, 0);
        EXPECT_GT(line.trials, 5);
    }
}

#endif
