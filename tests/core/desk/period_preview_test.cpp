// SPDX-License-Identifier: GPL-3.0-or-later
// What another period would change is worked out with progress, and can be stopped.
#include "core/desk/period_preview.h"
#include "core/desk/sample_book.h"

#include <gtest/gtest.h>

#include <filesystem>

using namespace wickbook;
using namespace date::literals;

TEST(PeriodPreview, CountsWhatIsDerivedOtherwiseGoesOnAndStops) {
    const auto path = std::filesystem::temp_directory_path() /
                      ("period-preview-" + record::Uuid::random().toText() + ".wickbook");
    {
        auto clock = std::make_shared<record::SystemClock>();
        ASSERT_TRUE(desk::createSampleBook(
            path, {.lastDay = record::StationDate{date::local_days{2026_y / 6 / 30}}, .weeks = 5}, clock));
        const auto book = store::Book::open(path);
        ASSERT_TRUE(book);
        const auto now = book->station();
        ASSERT_TRUE(now);
        record::StationFacts facts = now->facts();
        facts.periods.front().exposure = psychrometry::Exposure::Still;
        const record::StationRecord after{facts};

        std::size_t seen = 0;
        std::size_t whole = 0;
        const auto preview =
            desk::previewPeriods(*book, *now, after, [&](std::size_t done, std::size_t total) {
                EXPECT_GE(done, seen);
                seen = done;
                whole = total;
                return true;
            });
        ASSERT_TRUE(preview);
        ASSERT_TRUE(*preview);
        EXPECT_EQ((*preview)->readings, book->observationCount().value());
        EXPECT_GT((*preview)->rederived, (*preview)->readings / 2) << "still air is another coefficient";
        EXPECT_EQ((*preview)->anotherHour, 0U);
        EXPECT_LE(seen, whole);
        EXPECT_GE(2 * seen, whole);

        const auto same = desk::previewPeriods(*book, *now, *now);
        ASSERT_TRUE(same && *same);
        EXPECT_EQ((*same)->rederived, 0U);
        for (const std::size_t patience : {std::size_t{0}, whole / 2}) {
            const auto stopped = desk::previewPeriods(
                *book, *now, after, [&](std::size_t done, std::size_t) { return done < patience; });
            ASSERT_TRUE(stopped);
            EXPECT_FALSE(*stopped) << "half a count is no count";
        }
    }
    std::filesystem::remove(path);
}
