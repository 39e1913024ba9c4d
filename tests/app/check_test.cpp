// SPDX-License-Identifier: GPL-3.0-or-later
// check over a register: groups worst first, and Ctrl-C in the middle of the work. The readings are made up.
#include "tests/app/program.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <thread>

using namespace wickbook::apptest;
using testing::HasSubstr;

namespace {

class CheckRuns : public testing::Test {
protected:
    void SetUp() override {
        const auto made = run({"new", "--book", book_, "--name", "Elder Bank", "--elevation", "84",
                               "--latitude", "52.25", "--longitude", "-1.5", "--zone", "UTC", "--hours",
                               "09:00,21:00", "--hour-rule", "utc", "--exposure", "screen"});
        ASSERT_EQ(made.code, 0) << made.err;
    }
    void enter(const std::string& rows) {
        put(folder_.file("rows.csv"), "time,dry,wet\n" + rows);
        const auto added = run({"import", "--book", book_, "--in", folder_.file("rows.csv")});
        ASSERT_EQ(added.code, 0) << added.err;
    }
    Folder folder_;
    std::string book_ = folder_.file("elder.wickbook");
};

TEST_F(CheckRuns, GroupedPutsSimilarOnesTogetherWorstFirst) {
    std::string rows;
    for (int day = 1; day <= 9; ++day) {
        rows +=
            fmt::format("2025-05-{:02}T09:00:00Z,1{}.{},1{}.{}\n", day, day % 4 + 1, day, day % 4, day % 7);
    }
    for (int day = 10; day <= 13; ++day) { // wet above dry, four mornings
        rows += fmt::format("2025-05-{:02}T09:00:00Z,11.{},13.{}\n", day, day % 10, day % 7);
    }
    rows += "2025-05-14T09:00:00Z,120.0,10.1\n"; // off the scale
    enter(rows);
    const auto checked = run({"check", "--book", book_, "--grouped"});
    ASSERT_EQ(checked.code, 0) << checked.err;
    const auto erroneous = checked.out.find("(erroneous), 1 reading, 2025-05-14");
    const auto doubtful = checked.out.find("(doubtful), ");
    ASSERT_NE(erroneous, std::string::npos) << checked.out;
    ASSERT_NE(doubtful, std::string::npos) << checked.out;
    EXPECT_LT(erroneous, doubtful);
    EXPECT_THAT(checked.out, HasSubstr("2025-05-10"));
}

TEST_F(CheckRuns, GroupedIsForReadingOnly) {
    const auto refused = run({"check", "--book", book_, "--grouped", "--format", "json"});
    EXPECT_EQ(refused.code, 2);
    EXPECT_THAT(refused.err, HasSubstr("--format text"));
    EXPECT_TRUE(refused.out.empty());
}

TEST_F(CheckRuns, CtrlCStopsWithASentenceAndTheBookIsAsItWas) {
    std::string rows;
    for (int year = 1990; year < 2010; ++year) { // twenty years, some seconds of work
        for (int month = 1; month <= 12; ++month) {
            for (int day = 1; day <= 28; ++day) {
                for (int hour : {9, 21}) {
                    rows += fmt::format("{}-{:02}-{:02}T{:02}:00:00Z,1{}.{},{}.{}\n", year, month, day, hour,
                                        (day * 7 + hour) % 6, (day + month) % 10, (day * 3) % 9,
                                        (day * month) % 10);
                }
            }
        }
    }
    enter(rows);
    const std::string before = contents(book_);
    const std::string out = folder_.file("out"), err = folder_.file("err");
    const pid_t child = fork();
    if (child == 0) {
        if (freopen(out.c_str(), "w", stdout) == nullptr || freopen(err.c_str(), "w", stderr) == nullptr) {
            _exit(99);
        }
        execl(WICKBOOK_PROGRAM, "wickbook", "check", "--book", book_.c_str(), static_cast<char*>(nullptr));
        _exit(98);
    }
    ASSERT_GT(child, 0);
    std::this_thread::sleep_for(std::chrono::milliseconds{400});
    kill(child, SIGINT);
    const auto asked = std::chrono::steady_clock::now();
    int status = 0;
    ASSERT_EQ(waitpid(child, &status, 0), child);
    if (WIFEXITED(status) && WEXITSTATUS(status) == 0) {
        GTEST_SKIP() << "The check was done before it could be stopped: nothing was tried.";
    }
    ASSERT_TRUE(WIFEXITED(status)) << "killed by signal " << WTERMSIG(status);
    EXPECT_EQ(WEXITSTATUS(status), 130);
    EXPECT_LT(std::chrono::steady_clock::now() - asked, std::chrono::seconds{20}) << "it went on";
    EXPECT_THAT(contents(err), HasSubstr("nothing was changed"));
    EXPECT_TRUE(contents(out).empty());
    EXPECT_EQ(contents(book_), before);
    EXPECT_EQ(run({"verify", "--book", book_}).code, 0);
}

} // namespace
