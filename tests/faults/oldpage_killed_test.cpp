// SPDX-License-Identifier: GPL-3.0-or-later
// A page typed off in the real window, and the program killed in the middle of a line: every line that the
// pen has left is in the book, and nothing else. Needs Xvfb and xdotool; without them the case is skipped.
#include "tests/faults/shown_window.h"

#include <gtest/gtest.h>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

TEST(APageTypedOff, LosesAtMostTheLineBeingTypedWhenTheProgramIsKilled) {
#ifndef WICKBOOK_PROGRAM
    GTEST_SKIP() << "the window is not built";
#else
    using namespace std::chrono_literals;
    if (!onPath("Xvfb") || !onPath("xdotool"))
        GTEST_SKIP() << "Xvfb or xdotool is not installed";
    const TempFolder folder;
    newBook(folder / "hill.wickbook");
    const Display display;
    ASSERT_NE(display.name(), "") << "Xvfb did not come up";
    const auto program =
        showBook(WICKBOOK_PROGRAM, folder / "hill.wickbook", folder.path().string(), display);
    ASSERT_EQ(
        display.hand("search --sync --onlyvisible --name 'Nirgends am Bach' windowfocus --sync >/dev/null"),
        0)
        << "the window did not show the book";
    std::this_thread::sleep_for(1s);
    ASSERT_EQ(display.hand("key --delay 300 ctrl+6"), 0);
    std::this_thread::sleep_for(1s);
    // Five lines, and the sixth begun: its dry bulb taken, its wet bulb half typed.
    for (int line = 0; line < 5; ++line) {
        const std::string dry = std::to_string(55 + line) + ".5";
        const std::string wet = std::to_string(52 + line);
        ASSERT_EQ(display.hand("type --delay 15 " + dry), 0);
        ASSERT_EQ(display.hand("key Return"), 0);
        ASSERT_EQ(display.hand("type --delay 15 " + wet), 0);
        ASSERT_EQ(display.hand("key Return"), 0);
    }
    ASSERT_EQ(display.hand("type --delay 15 64.5"), 0);
    ASSERT_EQ(display.hand("key Return"), 0);
    ASSERT_EQ(display.hand("type --delay 15 6"), 0);
    // As long as the slowest machine needs to see the keys; the sixth line has been left by nobody.
    std::this_thread::sleep_for(2s);
    ASSERT_EQ(program->kill(), SIGKILL) << "the program had ended before";

    const auto book = Book::open(folder / "hill.wickbook");
    ASSERT_TRUE(book) << book.error().detail;
    EXPECT_EQ(problemsOf(*book), "");
    ASSERT_EQ(book->observationCount().value(), 5);
    const auto span = book->span();
    ASSERT_TRUE(span && *span);
    const auto stored = book->observationsBetween((*span)->first, (*span)->second + 1s);
    ASSERT_TRUE(stored);
    ASSERT_EQ(stored->size(), 5U);
    for (std::size_t line = 0; line < 5; ++line) {
        const record::Observation& values = (*stored)[line].values;
        ASSERT_TRUE(values.dry.value && values.wet.value);
        EXPECT_EQ(values.dry.value->value, (units::Decimal{555 + 10 * static_cast<int>(line), 1}));
        EXPECT_EQ(values.wet.value->value, (units::Decimal{52 + static_cast<int>(line), 0}));
        EXPECT_EQ(values.dry.value->unit, units::TemperatureUnit::Fahrenheit);
        EXPECT_TRUE(values.paper.has_value());
    }
#endif
}
