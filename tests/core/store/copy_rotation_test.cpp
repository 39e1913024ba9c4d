// SPDX-License-Identifier: GPL-3.0-or-later
// The rule of rotation against a plain restatement that knows nothing of it: days, ISO weeks and months come
// from the C library's calendar (strftime %F, %G-%V, %Y-%m; ISO 8601 weeks by ISO C 7.27.3.5), and every copy
// is held against every other.
#include "core/store/copy_rotation.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <ctime>
#include <iomanip>
#include <random>
#include <set>
#include <sstream>
#include <string>

using namespace wickbook;
using namespace wickbook::store;
using ::testing::IsEmpty;

namespace {

constexpr std::int64_t kDay = 86400;
constexpr std::int64_t kMonday2024 =
    1704067200; ///< 2024-01-01T00:00:00Z, `date -u -d 2024-01-01 +%s`, %A: Monday

record::Instant moment(std::int64_t seconds) {
    return record::Instant{std::chrono::seconds{seconds}};
}

std::string stretchOf(record::Instant instant, const char* format) {
    const std::time_t seconds = instant.time_since_epoch().count();
    std::tm parts{};
    ::gmtime_r(&seconds, &parts);
    std::ostringstream text;
    text << std::put_time(&parts, format);
    return text.str();
}

/// Whether copy i is the newest of its stretch and fewer than `most` later stretches have a copy.
bool staysAs(const std::vector<CopyAge>& copies, std::size_t i, const char* format, std::size_t most) {
    const std::string mine = stretchOf(copies[i].moment, format);
    std::set<std::string> later;
    for (std::size_t k = 0; k < copies.size(); ++k) {
        const std::string other = stretchOf(copies[k].moment, format);
        if (other == mine && copies[k].moment > copies[i].moment)
            return false;
        if (other > mine)
            later.insert(other);
    }
    return later.size() < most;
}

/// What stays, said plainly; all copies from before now, with moments of their own.
std::set<std::size_t> staying(const std::vector<CopyAge>& copies) {
    std::set<std::size_t> stay;
    for (std::size_t i = 0; i < copies.size(); ++i) {
        if (staysAs(copies, i, "%F", 7) || staysAs(copies, i, "%G-%V", 8) || staysAs(copies, i, "%Y-%m", 24))
            stay.insert(i);
    }
    return stay;
}

std::set<std::size_t> without(const std::vector<CopyAge>& copies, const std::vector<std::size_t>& dropped) {
    std::set<std::size_t> left;
    for (std::size_t i = 0; i < copies.size(); ++i)
        left.insert(i);
    for (const std::size_t i : dropped)
        EXPECT_EQ(left.erase(i), 1U) << "dropped twice, or never there";
    return left;
}

std::vector<CopyAge> kept(const std::vector<CopyAge>& copies, record::Instant now) {
    std::vector<CopyAge> left;
    for (const std::size_t i : without(copies, copiesToDrop(copies, now)))
        left.push_back(copies[i]);
    return left;
}

} // namespace

TEST(TheRotation, KeepsWhatThePlainRuleKeepsOverYearsWithGapsAndSeveralADay) {
    for (unsigned seed = 1; seed <= 5; ++seed) {
        std::mt19937 random(seed);
        std::vector<CopyAge> copies;
        record::Instant now = moment(kMonday2024 + seed * 1000);
        for (int day = 0; day < 1100; ++day, now += std::chrono::seconds{kDay}) {
            if (random() % 10 < seed) // away: no copy that day
                continue;
            for (auto n = 1 + random() % 3; n > 0; --n)
                copies.push_back({now + std::chrono::seconds{random() % 20000}, true});
            std::ranges::sort(copies, {}, &CopyAge::moment);
            copies.erase(std::unique(copies.begin(), copies.end(),
                                     [](const CopyAge& a, const CopyAge& b) { return a.moment == b.moment; }),
                         copies.end());
            std::ranges::shuffle(copies, random);
            const auto at = now + std::chrono::seconds{20000};
            const auto left = without(copies, copiesToDrop(copies, at));
            if (day % 5 == 0) { // the restatement holds every copy against every other
                ASSERT_EQ(left, staying(copies)) << "seed " << seed << ", day " << day;
            }
            ASSERT_LE(left.size(), 39U);
            // As on the shelf: what was dropped is gone when the next day comes.
            std::vector<CopyAge> next;
            for (const std::size_t i : left)
                next.push_back(copies[i]);
            copies = std::move(next);
        }
    }
}

TEST(TheRotation, OfThreeYearsOfDailyCopiesKeepsDaysWeeksAndMonths) {
    std::vector<CopyAge> copies;
    record::Instant now = moment(kMonday2024 + 10 * 3600);
    for (int day = 0; day < 3 * 365; ++day, now += std::chrono::seconds{kDay}) {
        copies.push_back({now, true});
        copies = kept(copies, now);
    }
    // 2024-01-01 + 1094 days is Wednesday 2026-12-30 (`date -u -d "2024-01-01 + 1094 days"`).
    std::vector<std::string> days;
    for (const CopyAge& copy : copies)
        days.push_back(stretchOf(copy.moment, "%F"));
    std::ranges::sort(days, std::greater{});
    // Seven days; the Sundays that end the weeks before (the newest two weeks are among the days); month
    // ends.
    EXPECT_THAT(days,
                ::testing::ElementsAre(
                    "2026-12-30", "2026-12-29", "2026-12-28", "2026-12-27", "2026-12-26", "2026-12-25",
                    "2026-12-24", "2026-12-20", "2026-12-13", "2026-12-06", "2026-11-30", "2026-11-29",
                    "2026-11-22", "2026-11-15", "2026-10-31", "2026-09-30", "2026-08-31", "2026-07-31",
                    "2026-06-30", "2026-05-31", "2026-04-30", "2026-03-31", "2026-02-28", "2026-01-31",
                    "2025-12-31", "2025-11-30", "2025-10-31", "2025-09-30", "2025-08-31", "2025-07-31",
                    "2025-06-30", "2025-05-31", "2025-04-30", "2025-03-31", "2025-02-28", "2025-01-31"));
}

TEST(TheRotation, GivesADayWithoutACopyNoPlace) {
    std::vector<CopyAge> copies;
    for (int fortnight = 0; fortnight < 7; ++fortnight)
        copies.push_back({moment(kMonday2024 + fortnight * 14 * kDay), true});
    EXPECT_THAT(copiesToDrop(copies, moment(kMonday2024 + 400 * kDay)), IsEmpty());
}

TEST(TheRotation, NeverDropsACopyOfAClockThatWasSetBackSinceNorCountsIt) {
    const record::Instant now = moment(kMonday2024 + 100 * kDay);
    std::vector<CopyAge> copies;
    for (int day = 0; day < 60; ++day) // a clock that ran years ahead, several a day
        copies.push_back({now + std::chrono::seconds{day * kDay / 2 + 1}, std::nullopt});
    std::vector<CopyAge> sane;
    for (int day = 0; day < 60; ++day)
        sane.push_back({now - std::chrono::seconds{day * kDay}, std::nullopt});
    copies.insert(copies.end(), sane.begin(), sane.end());
    const auto left = without(copies, copiesToDrop(copies, now));
    for (std::size_t i = 0; i < 60; ++i)
        EXPECT_TRUE(left.contains(i)) << "a copy from after now went";
    std::set<std::size_t> ofTheSane;
    for (const std::size_t i : left) {
        if (i >= 60)
            ofTheSane.insert(i - 60);
    }
    EXPECT_EQ(ofTheSane, staying(sane))
        << "the others must go by the rule as if the later ones were not there";
}

TEST(TheRotation, AlwaysLeavesTheNewestThatVerifiedAndOnesKnownToBeDamaged) {
    const record::Instant now = moment(kMonday2024);
    std::vector<CopyAge> copies{{now - std::chrono::seconds{10}, std::nullopt},
                                {now - std::chrono::seconds{20}, false},
                                {now - std::chrono::seconds{30}, true},
                                {now - std::chrono::seconds{40}, true}};
    EXPECT_THAT(copiesToDrop(copies, now), ::testing::UnorderedElementsAre(3))
        << "all are of one day: the newest, the damaged one and the newest that verified stay";
    // The damaged one, were it the newest, takes no day from the sound one below it.
    copies = {{now - std::chrono::seconds{10}, false}, {now - std::chrono::seconds{20}, std::nullopt}};
    EXPECT_THAT(copiesToDrop(copies, now), IsEmpty());
    EXPECT_THAT(copiesToDrop({}, now), IsEmpty());
}

TEST(TheRotation, LeavesCopiesMadeBeforeALargeActForSevenDays) {
    std::vector<CopyAge> copies;
    record::Instant now = moment(kMonday2024 + 2 * kDay); // a Wednesday
    copies.push_back({now, std::nullopt, true});
    copies.push_back({now + std::chrono::seconds{60}, std::nullopt, true});
    copies.push_back({now + std::chrono::seconds{120}, std::nullopt, false});
    copies.push_back({now + std::chrono::seconds{180}, std::nullopt, false});
    for (int day = 1; day <= 6; ++day) {
        copies.push_back({now + std::chrono::seconds{day * kDay}, std::nullopt, false});
        EXPECT_THAT(copiesToDrop(copies, copies.back().moment), ::testing::UnorderedElementsAre(2))
            << "day " << day << ": of the first day's four the two before an act and the newest stay";
    }
    copies.push_back({now + std::chrono::seconds{7 * kDay}, std::nullopt, false});
    EXPECT_THAT(copiesToDrop(copies, copies.back().moment), ::testing::IsSupersetOf({0U, 1U, 2U, 3U}))
        << "the eighth day: its week has a later copy, of the Sunday";
}
