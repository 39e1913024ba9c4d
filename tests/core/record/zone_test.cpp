// SPDX-License-Identifier: GPL-3.0-or-later
// Clock changes as the IANA time zone database has them.
#include "core/record/zone.h"

#include <gtest/gtest.h>

namespace {

using namespace wickbook::record;
using namespace std::chrono_literals;
using namespace date::literals;

Zone zone(const char* name) {
    const auto found = Zone::named(name);
    EXPECT_TRUE(found) << name;
    return *found;
}

LocalTime local(date::year_month_day day, std::chrono::seconds time) {
    return LocalTime{date::local_days{day}} + time;
}

Instant utc(date::year_month_day day, std::chrono::seconds time) {
    return Instant{date::sys_days{day}} + time;
}

TEST(Zone, unknownNamesAreNoZone) {
    EXPECT_FALSE(Zone::named(""));
    EXPECT_FALSE(Zone::named("Europe/Atlantis"));
    EXPECT_FALSE(Zone::named("../../etc/passwd"));
    EXPECT_FALSE(Zone::named("/etc/localtime"));
}

TEST(Zone, londonSpringHasNoHalfPastOne) {
    const auto resolved = resolveLocal(zone("Europe/London"), local(2025_y / 3 / 30, 1h + 30min));
    ASSERT_TRUE(std::holds_alternative<ImpossibleTime>(resolved));
    EXPECT_EQ(std::get<ImpossibleTime>(resolved).jump, utc(2025_y / 3 / 30, 1h));
}

TEST(Zone, londonAutumnHasHalfPastOneTwice) {
    const auto resolved = resolveLocal(zone("Europe/London"), local(2025_y / 10 / 26, 1h + 30min));
    ASSERT_TRUE(std::holds_alternative<DoubleTime>(resolved));
    EXPECT_EQ(std::get<DoubleTime>(resolved).first, utc(2025_y / 10 / 26, 30min));
    EXPECT_EQ(std::get<DoubleTime>(resolved).second, utc(2025_y / 10 / 26, 1h + 30min));
}

TEST(Zone, newYorkAndSydneyChangeOnTheirOwnDays) {
    EXPECT_TRUE(std::holds_alternative<ImpossibleTime>(
        resolveLocal(zone("America/New_York"), local(2025_y / 3 / 9, 2h + 30min))));
    EXPECT_TRUE(std::holds_alternative<DoubleTime>(
        resolveLocal(zone("America/New_York"), local(2025_y / 11 / 2, 1h + 30min))));
    EXPECT_TRUE(std::holds_alternative<ImpossibleTime>(
        resolveLocal(zone("Australia/Sydney"), local(2025_y / 10 / 5, 2h + 30min))));
    EXPECT_TRUE(std::holds_alternative<DoubleTime>(
        resolveLocal(zone("Australia/Sydney"), local(2025_y / 4 / 6, 2h + 30min))));
}

TEST(Zone, cordobaOnceStoodAtLocalMeanTime) {
    EXPECT_EQ(zone("America/Argentina/Cordoba").offsetAt(utc(1886_y / 3 / 18, 12h)), -(4h + 16min + 48s));
}

TEST(Zone, standardOffsetIsThatOfWinter) {
    EXPECT_EQ(zone("Europe/London").standardOffsetAt(utc(2025_y / 7 / 1, 12h)), 0s);
    EXPECT_EQ(zone("Europe/London").standardOffsetAt(utc(2025_y / 1 / 1, 12h)), 0s);
    EXPECT_EQ(zone("Europe/Berlin").standardOffsetAt(utc(2025_y / 7 / 1, 12h)), 1h);
    EXPECT_EQ(zone("Australia/Sydney").standardOffsetAt(utc(2025_y / 1 / 1, 12h)), 10h);
    EXPECT_EQ(zone("America/New_York").standardOffsetAt(utc(2025_y / 7 / 1, 12h)), -5h);
    // Double summer time in the war years.
    EXPECT_EQ(zone("Europe/London").offsetAt(utc(1943_y / 7 / 1, 12h)), 2h);
    EXPECT_EQ(zone("Europe/London").standardOffsetAt(utc(1943_y / 7 / 1, 12h)), 0s);
}

TEST(Zone, localAndBackAgain) {
    for (const char* name : {"Europe/London", "America/New_York", "Australia/Sydney", "Asia/Kathmandu"}) {
        const Zone here = zone(name);
        for (int i = 0; i < 4000; ++i) {
            const Instant instant = utc(2024_y / 1 / 1, 0s) + i * (5h + 7min);
            const auto resolved = resolveLocal(here, here.localAt(instant));
            if (const auto* unique = std::get_if<UniqueTime>(&resolved)) {
                EXPECT_EQ(unique->instant, instant) << name;
            } else {
                const auto* twice = std::get_if<DoubleTime>(&resolved);
                ASSERT_NE(twice, nullptr) << name << ": a time that was can't be impossible";
                EXPECT_TRUE(twice->first == instant || twice->second == instant) << name;
            }
        }
    }
}

} // namespace
