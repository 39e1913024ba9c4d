// SPDX-License-Identifier: GPL-3.0-or-later
// The months that a correction found later would change, over the invented sample station, against deriving
// every reading by hand.
#include "core/desk/changed_months.h"
#include "core/desk/sample_book.h"
#include "core/desk/wick_care.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <map>

namespace {

using namespace wickbook;
using namespace std::chrono_literals;
using namespace date::literals;
namespace fs = std::filesystem;

class StillClock final : public record::Clock {
public:
    [[nodiscard]] record::Instant now() const override {
        return date::sys_days{2026_y / 11 / 22} + 8h + 52min;
    }
};

class ChangedMonths : public ::testing::Test {
protected:
    fs::path folder = fs::temp_directory_path() / ("wickbook-months-" + record::Uuid::random().toText());
    std::optional<store::Book> book;
    record::StationRecord station;

    void SetUp() override {
        fs::create_directories(folder);
        const StillClock clock;
        auto made = desk::createSampleBook(folder / "sample.wickbook", desk::samplePlanUntil(clock.now()),
                                           std::make_shared<StillClock>());
        ASSERT_TRUE(made) << made.error().detail;
        book.emplace(std::move(*made));
        station = *book->station();
    }
    void TearDown() override {
        book.reset();
        fs::remove_all(folder);
    }

    /// As it would be with this much more on the wet thermometer in use at the moment, from there on.
    record::StationRecord corrected(record::Instant from, double add) const {
        record::StationFacts facts = station.facts();
        record::Correction correction;
        correction.id = record::Uuid::fromSeed(71, 1);
        correction.thermometer = station.wetThermometerAt(from)->id;
        correction.from = from;
        correction.points = {{0, add}};
        correction.source = "certificate";
        facts.corrections.push_back(correction);
        return record::StationRecord{facts};
    }
};

TEST_F(ChangedMonths, EachMonthAsIfWorkedOutByHand) {
    const record::Instant from{date::sys_days{2026_y / 9 / 15}};
    const record::StationRecord after = corrected(from, -0.4);
    const auto changed = desk::changedMonths(*book, station, after);
    ASSERT_TRUE(changed && *changed);
    const auto stored =
        book->observationsBetween(record::Instant{}, record::Instant{date::sys_days{2027_y / 1 / 1}});
    ASSERT_TRUE(stored);
    EXPECT_EQ((*changed)->readings, stored->size());
    struct ByHand {
        std::size_t n = 0, rederived = 0;
        double before = 0, later = 0;
    };
    std::map<date::year_month, ByHand> months;
    for (const record::StoredObservation& each : *stored) {
        const auto was = record::deriveReading(each, station);
        const auto becomes = record::deriveReading(each, after);
        const date::year_month_day day{record::filedDate(each.values)};
        ByHand& month = months[day.year() / day.month()];
        month.rederived += was.humidityPercent() != becomes.humidityPercent() ||
                           was.dewPointCelsius() != becomes.dewPointCelsius();
        if (was.humidityPercent() && becomes.humidityPercent()) {
            ++month.n;
            month.before += *was.humidityPercent();
            month.later += *becomes.humidityPercent();
        }
    }
    std::erase_if(months, [](const auto& month) { return month.second.rederived == 0; });
    ASSERT_EQ((*changed)->months.size(), months.size());
    ASSERT_GE(months.size(), 2U);
    EXPECT_EQ(months.begin()->first, 2026_y / 9);
    for (const desk::ChangedMonth& month : (*changed)->months) {
        const ByHand& hand = months.at(month.month);
        EXPECT_EQ(month.readings, hand.n);
        EXPECT_EQ(month.rederived, hand.rederived);
        EXPECT_NEAR(*month.humidityBefore, hand.before / static_cast<double>(hand.n), 1e-9);
        EXPECT_NEAR(*month.humidityAfter, hand.later / static_cast<double>(hand.n), 1e-9);
        EXPECT_LT(month.largestChange, 0); // a lower wet bulb is drier air
    }
}

TEST_F(ChangedMonths, NothingChangesNothing) {
    const auto changed = desk::changedMonths(*book, station, station);
    ASSERT_TRUE(changed && *changed);
    EXPECT_EQ((*changed)->rederived, 0U);
    EXPECT_TRUE((*changed)->months.empty());
}

TEST_F(ChangedMonths, StopsWhenTold) {
    const auto changed =
        desk::changedMonths(*book, station, station, [](std::size_t, std::size_t) { return false; });
    ASSERT_TRUE(changed);
    EXPECT_FALSE(*changed);
}

TEST_F(ChangedMonths, TheWicksLogIsOfReadingsAndDiary) {
    record::StationFacts facts = station.facts();
    facts.diary.push_back({record::Uuid::random(), date::local_days{2026_y / 11 / 21},
                           record::DiaryKind::Water, "rain", false});
    facts.diary.push_back(
        {record::Uuid::random(), date::local_days{2026_y / 11 / 20}, record::DiaryKind::NewWick, "", true});
    const record::StationRecord with{facts};
    const auto log =
        desk::wickCare(*book, with, date::local_days{2026_y / 11 / 1}, date::local_days{2026_y / 11 / 22});
    ASSERT_TRUE(log);
    ASSERT_FALSE(log->empty());
    EXPECT_TRUE(std::is_sorted(log->begin(), log->end(),
                               [](const auto& a, const auto& b) { return a.date < b.date; }));
    EXPECT_EQ(std::count_if(log->begin(), log->end(),
                            [](const auto& line) { return line.deed == desk::WickDeed::Water; }),
              1);
    EXPECT_NE(desk::lastNewWick(*log),
              (std::optional{record::StationDate{date::local_days{2026_y / 11 / 20}}}));
}

} // namespace
