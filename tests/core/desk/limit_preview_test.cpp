// SPDX-License-Identifier: GPL-3.0-or-later
// What other limits would change, counted over the invented sample station, against judging the register
// twice.
#include "core/desk/limit_preview.h"
#include "core/desk/sample_book.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <set>

namespace {

using namespace wickbook;
using namespace std::chrono_literals;
using namespace date::literals;
namespace fs = std::filesystem;

class FixedClock final : public record::Clock {
public:
    explicit FixedClock(record::Instant now) : now_(now) {}
    [[nodiscard]] record::Instant now() const override { return now_; }

private:
    record::Instant now_;
};

constexpr record::Instant kNow{date::sys_days{2026_y / 11 / 22} + 8h + 52min};

class LimitPreview : public ::testing::Test {
protected:
    static void SetUpTestSuite() {
        folder = fs::temp_directory_path() / ("wickbook-limits-" + record::Uuid::random().toText());
        fs::create_directories(folder);
        auto book = desk::createSampleBook(folder / "sample.wickbook", desk::samplePlanUntil(kNow),
                                           std::make_shared<FixedClock>(kNow));
        ASSERT_TRUE(book) << book.error().detail;
    }
    static void TearDownTestSuite() { fs::remove_all(folder); }

    LimitPreview() : book(*store::Book::open(folder / "sample.wickbook")), station(*book.station()) {}

    /// Readings with a finding of this code under these limits, from a moment on.
    std::size_t marked(const record::LimitChanges& limits, std::string_view code,
                       record::Instant from = {}) const {
        record::StationFacts facts = station.facts();
        facts.limits = limits;
        const record::StationRecord changed{facts};
        std::size_t count = 0;
        const auto checked = desk::checkedAll(book, changed, kNow);
        for (const auto& one : *checked) {
            for (const checks::Finding& finding : one.findings) {
                count += finding.code == code && one.reading.values().instant >= from ? 1U : 0U;
            }
        }
        return count;
    }

    static fs::path folder;
    store::Book book;
    record::StationRecord station;
};
fs::path LimitPreview::folder;

TEST_F(LimitPreview, countsWhatAStricterNoteWouldChange) {
    // "late" is a note by itself and takes nothing else along: what changes can be counted by hand.
    record::LimitChanges stricter = station.facts().limits;
    stricter[{"late.minutes"}] = 2;
    const auto preview = desk::previewLimits(book, station, stricter, kNow);
    ASSERT_TRUE(preview && *preview);
    const std::size_t more = marked(stricter, "late") - marked(station.facts().limits, "late");
    ASSERT_GT(more, 0U);
    EXPECT_EQ((*preview)->changed, more);
    EXPECT_EQ((*preview)->newlyMarked, 0U) << "a note asks nothing";
    EXPECT_EQ((*preview)->setAside, 0U);
    EXPECT_EQ((*preview)->readings, static_cast<std::size_t>(*book.observationCount()));

    // From a date on only the readings from then on are judged otherwise.
    const record::Instant from{date::sys_days{2026_y / 6 / 1}};
    record::LimitChanges later = station.facts().limits;
    later[{"late.minutes", from}] = 2;
    const auto part = desk::previewLimits(book, station, later, kNow);
    ASSERT_TRUE(part && *part);
    EXPECT_LT((*part)->changed, more);
    EXPECT_EQ((*part)->changed,
              marked(stricter, "late", from) - marked(station.facts().limits, "late", from));
}

TEST_F(LimitPreview, tellsWhatIsSetAsideAndNothingWhereNothingChanges) {
    const auto same = desk::previewLimits(book, station, station.facts().limits, kNow);
    ASSERT_TRUE(same && *same);
    EXPECT_EQ((*same)->changed, 0U);
    record::LimitChanges cold = station.facts().limits;
    cold[{"gross-temperature.high-summer-doubtful-high"}] = 20;
    const auto preview = desk::previewLimits(book, station, cold, kNow);
    ASSERT_TRUE(preview && *preview);
    EXPECT_GT((*preview)->setAside, 0U);
    EXPECT_EQ((*preview)->takenIn, 0U);
    EXPECT_GE((*preview)->changed, (*preview)->setAside);
}

TEST_F(LimitPreview, stopsWhenToldAtEveryStage) {
    record::LimitChanges stricter = station.facts().limits;
    stricter[{"late.minutes"}] = 2;
    std::size_t calls = 0;
    std::size_t last = 0;
    bool forward = true;
    const auto counted =
        desk::previewLimits(book, station, stricter, kNow, [&](std::size_t done, std::size_t total) {
            ++calls;
            forward = forward && done >= last && done <= total;
            last = done;
            return true;
        });
    ASSERT_TRUE(counted && *counted);
    EXPECT_TRUE(forward);
    for (const std::size_t stopAt : {std::size_t{1}, calls / 2, calls - 1}) {
        std::size_t call = 0;
        const auto stopped = desk::previewLimits(book, station, stricter, kNow,
                                                 [&](std::size_t, std::size_t) { return ++call < stopAt; });
        ASSERT_TRUE(stopped);
        EXPECT_FALSE(*stopped) << stopAt << " of " << calls;
    }
}

} // namespace
