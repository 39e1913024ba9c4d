// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/instant.h"

#include <gtest/gtest.h>

namespace {

using namespace wickbook::record;
using namespace std::chrono_literals;
using namespace date::literals;

LocalTime local(date::year_month_day day, std::chrono::seconds time) {
    return LocalTime{date::local_days{day}} + time;
}

// ISO 8601-1:2019, sections 5.2 and 5.3: calendar dates, times of day and their combination, basic and
// extended.
TEST(Time, readsIsoForms) {
    const auto wanted = local(2025_y / 3 / 1, 9h);
    for (const char* text :
         {"2025-03-01T09:00", "2025-03-01 09:00", "2025-03-01T09:00:00", "20250301T0900", "20250301T090000",
          "2025-03-01t09:00", " 2025-03-01T09:00 ", "2025-03-01T09:00:00.000"}) {
        const auto time = parseTime(text);
        ASSERT_TRUE(time) << text;
        EXPECT_EQ(time->local, wanted) << text;
        EXPECT_FALSE(time->offset) << text;
    }
}

TEST(Time, readsOffsetsToTheSecond) {
    const std::pair<const char*, std::chrono::seconds> cases[] = {
        {"2025-03-01T09:00Z", 0s},
        {"2025-03-01T09:00+01:00", 1h},
        {"2025-03-01T09:00+0530", 5h + 30min},
        {"2025-03-01T09:00-04:16:48",
         -(4h + 16min + 48s)}, // local mean time of Cordoba, IANA time zone database
        {"2025-03-01T09:00\u221203:00", -3h},
        {"2025-03-01T09:00+01", 1h},
    };
    for (const auto& [text, offset] : cases) {
        const auto time = parseTime(text);
        ASSERT_TRUE(time) << text;
        EXPECT_EQ(time->offset, offset) << text;
    }
}

TEST(Time, refusesWhatIsNoTime) {
    const std::pair<const char*, TimeTextError> cases[] = {
        {"", TimeTextError::Empty},
        {"  ", TimeTextError::Empty},
        {"2025-03-01", TimeTextError::NotATime}, // a date alone
        {"2025-02-29T09:00", TimeTextError::NoSuchDate},
        {"2025-13-01T09:00", TimeTextError::NoSuchDate},
        {"2025-03-01T25:00", TimeTextError::NoSuchClockTime},
        {"2025-03-01T09:60", TimeTextError::NoSuchClockTime},
        {"25-03-01T09:00", TimeTextError::NotATime},
        {"2025-03-01T09:00 and more", TimeTextError::NotATime},
        {"2025-03-01T09:00+17:00", TimeTextError::NotATime},
        {"1599-03-01T09:00", TimeTextError::NoSuchDate},
        {"nine o'clock", TimeTextError::NotATime},
    };
    for (const auto& [text, error] : cases) {
        const auto time = parseTime(text);
        ASSERT_FALSE(time) << text;
        EXPECT_EQ(time.error(), error) << text;
    }
}

TEST(Time, hourOfDayInTheFormsOfAPage) {
    for (const char* text : {"09:00", "9:00", "0900", "9", "9.00", "09:00:00"}) {
        const auto hour = parseHour(text);
        ASSERT_TRUE(hour) << text;
        EXPECT_EQ(*hour, 9h) << text;
    }
    EXPECT_EQ(parseHour("21:30"), 21h + 30min);
    EXPECT_FALSE(parseHour("24:00"));
    EXPECT_FALSE(parseHour("9 o'clock"));
}

TEST(Time, writesWhatItReads) {
    const Instant instant{date::sys_days{1886_y / 3 / 18} + 12h + 17min};
    EXPECT_EQ(instantText(instant), "1886-03-18T12:17:00Z");
    EXPECT_EQ(dateText(date::local_days{1886_y / 3 / 18}), "1886-03-18");
    EXPECT_EQ(hourText(7h + 5min), "07:05");
    EXPECT_EQ(offsetText(0s), "+00:00");
    EXPECT_EQ(offsetText(-(4h + 16min + 48s)), "-04:16:48");
    EXPECT_EQ(offsetText(-30min), "-00:30");
    EXPECT_EQ(parseMonth("2025-03"), date::year_month(2025_y, date::month{3}));
    EXPECT_FALSE(parseMonth("2025-3"));
}

// Every instant printed reads back as itself: one per 97 hours over three centuries.
TEST(Time, roundTripOverCenturies) {
    const Instant first{date::sys_days{1750_y / 1 / 1}};
    for (int i = 0; i < 27000; ++i) {
        const Instant instant = first + i * (97h + 13min + 7s);
        const auto back = parseTime(instantText(instant));
        ASSERT_TRUE(back);
        EXPECT_EQ(Instant{back->local.time_since_epoch()} - *back->offset, instant);
    }
}

} // namespace
