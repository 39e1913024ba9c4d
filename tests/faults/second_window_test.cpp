// SPDX-License-Identifier: GPL-3.0-or-later
// A second window on the same book: the first one comes forward. A window that was killed holds nobody off.
#include "tests/faults/shown_window.h"

#include <gtest/gtest.h>

#include <thread>

#ifdef WICKBOOK_PROGRAM

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;
using namespace std::chrono_literals;

TEST(ASecondWindowOnABook, BringsTheFirstForwardAndAfterAKillTheNextOneOpens) {
    if (!onPath("Xvfb") || !onPath("xdotool"))
        GTEST_SKIP() << "Xvfb or xdotool is not installed";
    const TempFolder folder;
    newBook(folder / "hill.wickbook");
    const Display display;
    ASSERT_NE(display.name(), "") << "Xvfb did not come up";
    const char* find = "search --sync --onlyvisible --name 'Nirgends am Bach' >/dev/null";
    auto first = showBook(WICKBOOK_PROGRAM, folder / "hill.wickbook", folder.path().string(), display);
    ASSERT_EQ(display.hand(find), 0) << "the window did not show the book";
    const auto lock = folder / ".hill.wickbook.open";
    EXPECT_TRUE(std::filesystem::exists(lock));

    auto second = showBook(WICKBOOK_PROGRAM, folder / "hill.wickbook", folder.path().string(), display);
    EXPECT_EQ(second->waitAtMost(20s), 0) << "it should have ended by itself, having called the first";
    EXPECT_EQ(display.hand("search --onlyvisible --name 'Nirgends am Bach' >/dev/null"), 0);

    ASSERT_EQ(first->kill(), SIGKILL);
    EXPECT_TRUE(std::filesystem::exists(lock)) << "killed: its mark stays behind";
    auto third = showBook(WICKBOOK_PROGRAM, folder / "hill.wickbook", folder.path().string(), display);
    ASSERT_EQ(display.hand(find), 0) << "the mark of a window that is gone held the next one off";
    EXPECT_EQ(third->kill(), SIGKILL);
}

#endif
