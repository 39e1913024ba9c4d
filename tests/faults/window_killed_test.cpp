// SPDX-License-Identifier: GPL-3.0-or-later
// The real window on a display of its own: what was typed and entered is in the book when the program is
// killed a second later. Needs Xvfb and xdotool; without them the case says so and is skipped.
#include "tests/faults/shown_window.h"

#include <gtest/gtest.h>

#include <chrono>
#include <thread>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

using namespace std::chrono_literals;

} // namespace

TEST(AReadingTypedInTheWindow, IsInTheBookWhenTheProgramIsKilledASecondLater) {
#ifndef WICKBOOK_PROGRAM
    GTEST_SKIP() << "the window is not built";
#else
    if (!onPath("Xvfb") || !onPath("xdotool"))
        GTEST_SKIP() << "Xvfb or xdotool is not installed";
    const TempFolder folder;
    newBook(folder / "hill.wickbook");
    const Display display;
    ASSERT_NE(display.name(), "") << "Xvfb did not come up";
    const auto window = showBook(WICKBOOK_PROGRAM, folder / "hill.wickbook", folder.path().string(), display);
    const auto hand = [&](const std::string& words) { return display.hand(words); };
    ASSERT_EQ(hand("search --sync --onlyvisible --name 'Nirgends am Bach' windowfocus --sync >/dev/null"), 0)
        << "the window did not show the book";
    std::this_thread::sleep_for(1s);
    ASSERT_EQ(hand("type --delay 40 61.5"), 0);
    ASSERT_EQ(hand("key Tab"), 0);
    ASSERT_EQ(hand("type --delay 40 57"), 0);
    // Twice: once for the reading, once for a note that the margin may have on the hour.
    ASSERT_EQ(hand("key --delay 300 Return Return"), 0);
    std::this_thread::sleep_for(1s);
    ASSERT_EQ(window->kill(), SIGKILL) << "the program had ended before";

    const auto book = Book::open(folder / "hill.wickbook");
    ASSERT_TRUE(book) << book.error().detail;
    EXPECT_EQ(problemsOf(*book), "");
    ASSERT_EQ(book->observationCount().value(), 1);
    const auto span = book->span();
    ASSERT_TRUE(span && *span);
    const auto stored = book->atInstant((*span)->first);
    ASSERT_TRUE(stored && *stored);
    const record::Observation& values = (*stored)->values;
    ASSERT_TRUE(values.dry.value && values.wet.value);
    EXPECT_EQ(values.dry.value->value, (units::Decimal{615, 1}));
    EXPECT_EQ(values.wet.value->value, (units::Decimal{57, 0}));
    EXPECT_EQ(values.dry.value->unit, units::TemperatureUnit::Fahrenheit);
#endif
}
