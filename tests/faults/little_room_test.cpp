// SPDX-License-Identifier: GPL-3.0-or-later
// The real program with little to work with: a file-size limit, no file descriptors, little memory, no right
// to write. Promise: a sentence, never a crash; what was said to be saved is there.
#include "tests/app/program.h"
#include "tests/faults/fault_ledger.h"
#include "tests/faults/long_run.h"
#include "tests/faults/processes.h"

#include <gmock/gmock.h>
#include <grp.h>
#include <gtest/gtest.h>
#include <sys/mount.h>
#include <sys/resource.h>

#include <csignal>

#ifdef WICKBOOK_PROGRAM

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;
using ::testing::HasSubstr;

namespace {

std::string manyRows(int count) {
    std::string rows = "time,dry,wet,note\n";
    for (int i = 0; i < count; ++i) {
        const date::sys_days day{date::days{10'000 + i / 2}};
        rows += date::format("%F", day) + (i % 2 == 0 ? "T09:00Z" : "T21:00Z") + ",61.5,57," +
                std::string(400, 'n') + "\n";
    }
    return rows;
}

std::function<void()> limit(int what, rlim_t value) {
    return [=] {
        const rlimit set{value, value};
        ::setrlimit(static_cast<__rlimit_resource>(what), &set);
    };
}

class AProgramWithLittle : public ::testing::Test {
protected:
    TempFolder folder;
    std::filesystem::path path = folder / "book";
    void SetUp() override { newBook(path); }
    void TearDown() override {
        ::umount2((folder / "disk").c_str(), MNT_DETACH);
        ::chmod(folder.path().c_str(), 0755);
    }
    /// Checks the book against what was said, and enters the line.
    void account(FaultLine line, const apptest::Ran& ran) {
        const auto book = Book::open(path);
        ASSERT_TRUE(book) << line.fault << ": " << book.error().detail;
        const std::string problems = problemsOf(*book);
        EXPECT_EQ(problems, "") << line.fault;
        line.unsound += problems.empty() ? 0 : 1;
        for (const std::string& one : apptest::lines(ran.out)) {
            if (!one.starts_with("saved "))
                continue;
            ++line.acknowledged;
            const auto time = record::parseTime(one.substr(6));
            const auto stored = book->atInstant(record::Instant{time->local.time_since_epoch()});
            line.lost += stored && *stored ? 0 : 1;
        }
        line.message = lastSentence(ran.err);
        enterFault(line);
        EXPECT_EQ(line.lost, 0) << line.fault;
    }
};

} // namespace

TEST_F(AProgramWithLittle, FileSizeKeepsWhatItSaidAndSaysWhatFailed) {
    apptest::Strain strain;
    strain.before = [] {
        ::signal(SIGXFSZ, SIG_IGN);
        limit(RLIMIT_FSIZE, 300 * 1024)();
    };
    const auto ran = apptest::run({"add", "--book", path.string(), "--in", "-"}, manyRows(1'000), strain);
    EXPECT_EQ(ran.code, 3) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr("book"));
    account({"file-size limit", 1, 0, 0, 0, {}}, ran);
    // Without the limit the rest goes in.
    const auto again = apptest::run(
        {"add", "--book", path.string(), "--at", "2020-01-01T09:00Z", "--dry", "50", "--wet", "45"});
    EXPECT_EQ(again.code, 0) << again.err;
}

TEST_F(AProgramWithLittle, DescriptorsSaysSo) {
    int ended = 0;
    apptest::Ran last;
    for (rlim_t descriptors = 3; descriptors < 24; ++descriptors) {
        apptest::Strain strain;
        strain.before = limit(RLIMIT_NOFILE, descriptors);
        const auto ran = apptest::run({"add", "--book", path.string(), "--in", "-"}, manyRows(2), strain);
        ASSERT_TRUE(ran.code == 0 || ran.code == 2 || ran.code == 3 || ran.code == 127)
            << descriptors << " descriptors: " << ran.code << ' ' << ran.err;
        if (ran.code == 2 || ran.code == 3) {
            ++ended;
            EXPECT_NE(lastSentence(ran.err), "");
            last = ran;
        }
        if (ran.code == 0)
            break;
    }
    EXPECT_GT(ended, 0) << "never out of descriptors: this proved nothing";
    account({"descriptor limit", ended, 0, 0, 0, {}}, last);
}

TEST_F(AProgramWithLittle, MemoryEndsWithASentenceAndKeepsWhatItSaid) {
    // Below some limit the program can't even be loaded; above it every size in turn, until the work
    // succeeds.
    FaultLine line{"memory limit", 0, 0, 0, 0, {}};
    bool succeeded = false;
    bool began = false;
    for (rlim_t megabytes = 60; megabytes < 700 && !succeeded; ++megabytes) {
        std::filesystem::remove(path);
        newBook(path);
        apptest::Strain strain;
        strain.before = limit(RLIMIT_AS, megabytes * 1024 * 1024);
        const auto ran =
            apptest::run({"import", "--book", path.string(), "--in", "-"}, manyRows(4'000), strain);
        if (ran.code == 127 || ran.err.find("error while loading shared libraries") != std::string::npos)
            continue;
        // Loaded, but the desktop's libraries run short while they set themselves up, before main: not yet
        // ours.
        if (!began && ran.code >= 128 && ran.out.empty() && ran.err.starts_with("terminate called"))
            continue;
        began = true;
        ++line.trials;
        EXPECT_LT(ran.code, 128) << megabytes << " MB: ended by a signal\n" << ran.err;
        const auto book = Book::open(path);
        ASSERT_TRUE(book) << book.error().detail;
        EXPECT_EQ(problemsOf(*book), "") << megabytes;
        succeeded = ran.code == 0;
        EXPECT_EQ(book->observationCount(), succeeded ? 4'000 : 0) << megabytes;
        if (!succeeded) {
            line.message = lastSentence(ran.err);
            EXPECT_NE(line.message, "") << megabytes;
        }
    }
    EXPECT_TRUE(succeeded);
    EXPECT_GT(line.trials, 1) << "never short of memory: this proved nothing";
    enterFault(line);
}

TEST_F(AProgramWithLittle, RightsReadsAndSaysThatItCantWrite) {
    if (::geteuid() != 0)
        GTEST_SKIP() << "needs root, to become another and to mount";
    FaultLine line{"read only: permission, attribute, mount", 0, 0, 0, 0, {}};
    const apptest::Arguments add{"add",   "--book", path.string(), "--at", "2025-03-20T09:00Z",
                                 "--dry", "50",     "--wet",       "45"};
    const auto refused = [&](const apptest::Arguments& arguments, const apptest::Strain& strain,
                             const char* how) {
        const std::string before = bytesAt(arguments[2]);
        const auto ran = apptest::run(arguments, {}, strain);
        ++line.trials;
        EXPECT_EQ(ran.code, 3) << how << ": " << ran.err;
        EXPECT_THAT(ran.err, HasSubstr("can't be written")) << how;
        EXPECT_TRUE(bytesAt(arguments[2]) == before) << how;
        EXPECT_EQ(apptest::run({"verify", "--book", arguments[2]}, {}, strain).code, 0) << how;
        line.message = lastSentence(ran.err);
    };
    ::chmod(path.c_str(), 0444);
    apptest::Strain nobody;
    nobody.before = [] {
        if (::setgroups(0, nullptr) != 0 || ::setresgid(65534, 65534, 65534) != 0 ||
            ::setresuid(65534, 65534, 65534) != 0)
            ::_exit(97);
    };
    // Only where nobody may reach the program at all.
    if (apptest::run({"--version"}, {}, nobody).code == 0)
        refused(add, nobody, "permission");
    ::chmod(path.c_str(), 0644);

    if (std::system(("chattr +i '" + path.string() + "' 2>/dev/null").c_str()) == 0) {
        refused(add, {}, "attribute");
        static_cast<void>(std::system(("chattr -i '" + path.string() + "'").c_str()));
    }

    const auto disk = folder / "disk";
    std::filesystem::create_directory(disk);
    if (::mount("tmpfs", disk.c_str(), "tmpfs", 0, "size=2m") == 0) {
        std::filesystem::copy_file(path, disk / "book");
        ASSERT_EQ(::mount("tmpfs", disk.c_str(), "tmpfs", MS_REMOUNT | MS_RDONLY, "size=2m"), 0);
        apptest::Arguments there = add;
        there[2] = (disk / "book").string();
        refused(there, {}, "mount");
    }
    EXPECT_GT(line.trials, 0) << "no way of taking the right away was to be had here";
    enterFault(line);
}

#endif
