// SPDX-License-Identifier: GPL-3.0-or-later
// The real window, killed in mid-entry and on a disk that runs full at every call of a save. Promise: what
// was entered is in the book, whole or not at all; a save that fails leaves the entry on the screen, and the
// same Enter saves once there is room, without starting again.
#include "tests/faults/failing_disk.h"
#include "tests/faults/fault_ledger.h"
#include "tests/faults/long_run.h"
#include "tests/faults/shown_window.h"

#include <gtest/gtest.h>

#include <random>

#ifdef WICKBOOK_PROGRAM

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;
using namespace std::chrono_literals;

namespace {

constexpr const char* kFindWindow =
    "search --sync --onlyvisible --name 'Nirgends am Bach' windowfocus --sync >/dev/null 2>&1";

class TheWindow : public ::testing::Test {
protected:
    TempFolder folder;
    TempFolder home;
    std::filesystem::path path = folder / "hill.wickbook";
    std::unique_ptr<Display> display;

    void SetUp() override {
        if (!onPath("Xvfb") || !onPath("xdotool"))
            GTEST_SKIP() << "Xvfb or xdotool is not installed";
        display = std::make_unique<Display>();
        ASSERT_NE(display->name(), "") << "Xvfb did not come up";
    }
    std::unique_ptr<Running> show(const std::vector<std::string>& more = {}) {
        auto window = showBook(WICKBOOK_PROGRAM, path, home.path().string(), *display, more);
        EXPECT_EQ(display->hand(kFindWindow), 0) << "the window did not show the book";
        std::this_thread::sleep_for(700ms);
        return window;
    }
    /// What the book would hold if the computer stopped now: a copy, with the journal beside it, opened.
    std::int64_t heldNow(const std::string& where) {
        const TempFolder copy;
        for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
            if (entry.is_regular_file() && entry.path().filename().string().starts_with("hill.wickbook"))
                std::filesystem::copy_file(entry.path(), copy.path() / entry.path().filename());
        const auto book = Book::open(copy / "hill.wickbook");
        EXPECT_TRUE(book) << where << ": " << (book ? "" : book.error().detail);
        if (!book)
            return -1;
        const std::string problems = problemsOf(*book);
        EXPECT_EQ(problems, "") << where;
        unsound_ += problems.empty() ? 0 : 1;
        return static_cast<std::int64_t>(book->observationsBetween(at(0), at(4'000'000'000))->size());
    }
    /// Waits up to five seconds for so many live readings.
    bool comesTo(std::int64_t readings, const std::string& where) {
        for (int i = 0; i < 25; ++i) {
            if (heldNow(where) == readings)
                return true;
            std::this_thread::sleep_for(200ms);
        }
        return false;
    }
    void typeReading() {
        display->hand("type --delay 15 61.5");
        display->hand("key Tab");
        display->hand("type --delay 15 57");
    }
    std::int64_t unsound_ = 0;
};

} // namespace

TEST_F(TheWindow, KilledInMidEntryKeepsEveryReadingThatWasEntered) {
    FaultLine line{"kill -9 of the window in mid-entry", trialCount(3, 100), 0, 0, 0, {}};
    std::mt19937 draw(5);
    int withinTheSave = 0;
    for (int trial = 0; trial < line.trials; ++trial) {
        const std::string where = "trial " + std::to_string(trial);
        std::filesystem::remove_all(folder.path());
        std::filesystem::remove_all(home.path());
        std::filesystem::create_directory(folder.path());
        std::filesystem::create_directory(home.path());
        newBook(path);
        const auto window = show();
        typeReading();
        if (trial % 3 == 2) {
            // Within the save itself: whole or not at all.
            display->hand("key --delay 0 Return Return");
            std::this_thread::sleep_for(std::chrono::microseconds(draw() % 60'000));
            ASSERT_EQ(window->kill(), SIGKILL) << where;
            const std::int64_t readings = heldNow(where);
            EXPECT_TRUE(readings == 0 || readings == 1) << where;
            ++withinTheSave;
        } else {
            // Twice: once for the reading, once for a note that the margin may have on the hour.
            display->hand("key --delay 250 Return Return");
            std::this_thread::sleep_for(700ms);
            ++line.acknowledged;
            display->hand("type --delay 30 " + std::string("62.5").substr(0, 1 + draw() % 4));
            std::this_thread::sleep_for(std::chrono::milliseconds(draw() % 200));
            ASSERT_EQ(window->kill(), SIGKILL) << where;
            const std::int64_t readings = heldNow(where);
            line.lost += readings == 1 ? 0 : 1;
            EXPECT_EQ(readings, 1) << where;
        }
        ASSERT_FALSE(HasFailure()) << where;
    }
    line.unsound = unsound_;
    enterFault(line);
    std::printf("%d of %ld kills aimed within the save\n", withinTheSave, static_cast<long>(line.trials));
}

TEST_F(TheWindow, OnADiskThatRunsFullKeepsTheEntryAndSavesItOnceThereIsRoom) {
    newBook(path);
    FailingDisk disk(folder.path().string() + "/", home / "board");
    constexpr std::uint32_t kFullDisk = kWrites | kSyncs | kNewFiles;
    const auto window = show(disk.environment());
    std::this_thread::sleep_for(1'500ms); // whatever is done on opening is done
    // How many calls a save makes.
    typeReading();
    disk.count(kFullDisk);
    display->hand("key --delay 250 Return Return");
    ASSERT_TRUE(comesTo(1, "the first save"));
    const int calls = disk.seen();
    ASSERT_GT(calls, 3) << "the calls did not pass the library";
    disk.repair();
    const auto takeBack = [&](const std::string& where) {
        display->hand("key ctrl+z");
        ASSERT_TRUE(comesTo(0, where + ": taking back"));
    };
    takeBack("the first save");

    FaultLine line{"disk full in the window, every call of a save", 0, 0, 0, 0, {}};
    const int stride = longRun() ? 1 : std::max(1, calls / 3);
    for (int call = 1; call <= calls; call += stride) {
        const std::string where = "call " + std::to_string(call);
        typeReading();
        disk.breakFrom(kFullDisk, call, ENOSPC, 0, call % 2 == 0);
        display->hand("key --delay 250 Return Return");
        std::this_thread::sleep_for(500ms);
        EXPECT_GT(disk.failed(), 0) << where;
        EXPECT_EQ(heldNow(where), 0) << where << ": half a reading, or one that was not said to be saved";
        disk.repair();
        // The entry is still there: the same key, and nothing typed again.
        display->hand("key --delay 250 Return Return");
        const bool saved = comesTo(1, where);
        EXPECT_TRUE(saved) << where << ": there is room again, and it does not save";
        ++line.trials;
        line.acknowledged += saved ? 1 : 0;
        line.lost += saved ? 0 : 1;
        if (HasFailure()) {
            if (const char* picture = std::getenv("WICKBOOK_FAULT_PICTURE"))
                static_cast<void>(
                    std::system(("DISPLAY=" + display->name() + " import -window root " + picture).c_str()));
            break;
        }
        takeBack(where);
    }
    line.unsound = unsound_;
    enterFault(line);
    EXPECT_EQ(window->kill(), SIGKILL) << "the window had ended";
}

#endif
