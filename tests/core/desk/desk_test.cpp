// SPDX-License-Identifier: GPL-3.0-or-later
// The desk over a real book of the invented sample station.
#include "core/desk/checked_range.h"
#include "core/desk/hour_marks.h"
#include "core/desk/sample_book.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <map>

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

class Desk : public ::testing::Test {
protected:
    static void SetUpTestSuite() {
        folder = fs::temp_directory_path() / ("wickbook-desk-" + record::Uuid::random().toText());
        fs::create_directories(folder);
        auto book = desk::createSampleBook(folder / "sample.wickbook", desk::samplePlanUntil(kNow),
                                           std::make_shared<FixedClock>(kNow));
        ASSERT_TRUE(book) << book.error().detail;
    }
    static void TearDownTestSuite() { fs::remove_all(folder); }

    Desk() : book(*store::Book::open(folder / "sample.wickbook")), station(*book.station()) {}

    static constexpr record::Instant kNow{date::sys_days{2026_y / 11 / 22} + 8h + 52min};
    static fs::path folder;
    store::Book book;
    record::StationRecord station;
};
fs::path Desk::folder;

TEST_F(Desk, theSampleIsMarkedInventedAndSound) {
    EXPECT_TRUE(station.facts().invented);
    const auto report = book.verify();
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->sound()) << report->problems.front().detail;
    EXPECT_GT(report->observations, 1400);
    EXPECT_GT(report->revisions, report->observations);
}

TEST_F(Desk, aMonthByItselfIsJudgedAsInTheWholeRegister) {
    const auto all = desk::checkedAll(book, station, kNow);
    ASSERT_TRUE(all);
    std::map<record::Uuid, std::vector<std::string_view>> codes;
    for (const auto& reading : *all) {
        for (const auto& finding : reading.findings) {
            codes[reading.reading.stored.id()].push_back(finding.code);
        }
    }
    const record::StationDate from{date::local_days{2026_y / 10 / 1}};
    const auto month = desk::checkedOn(book, station, from, from + date::days{30}, kNow);
    ASSERT_TRUE(month);
    ASSERT_GT(month->size(), 50U);
    for (const auto& reading : *month) {
        std::vector<std::string_view> here;
        for (const auto& finding : reading.findings) {
            here.push_back(finding.code);
        }
        EXPECT_EQ(here, codes[reading.reading.stored.id()])
            << record::instantText(reading.reading.values().instant);
    }
}

TEST_F(Desk, anEntryIsJudgedAgainstItsNeighboursButNotItself) {
    const auto last = book.neighbours(kNow, 1, 0);
    ASSERT_TRUE(last);
    ASSERT_EQ(last->size(), 1U);
    const auto judged = desk::judgeEntry(book, station, last->front().values, last->front().id(), kNow, true);
    ASSERT_TRUE(judged);
    for (const auto& finding : judged->findings) {
        EXPECT_NE(finding.code, "duplicate");
    }
    const auto twice = desk::judgeEntry(book, station, last->front().values, std::nullopt, kNow, true);
    ASSERT_TRUE(twice);
    EXPECT_TRUE(std::any_of(twice->findings.begin(), twice->findings.end(),
                            [](const auto& finding) { return finding.code == "duplicate"; }));
}

TEST_F(Desk, theHourOnOfferIsTheNearest) {
    // At 08:52 that is 9 h, not last night's 21 h.
    const auto offer = desk::hourOnOffer(book, station, kNow);
    ASSERT_TRUE(offer);
    ASSERT_TRUE(*offer);
    EXPECT_EQ((*offer)->hour.hour, 9h);
    EXPECT_EQ((*offer)->hour.date, record::StationDate{date::local_days{2026_y / 11 / 22}});
}

TEST_F(Desk, theMarginShowsKeptMissedAndDue) {
    const record::StationDate today{date::local_days{2026_y / 11 / 22}};
    const auto marks = desk::hourMarks(book, station, today - date::days{55}, today, kNow);
    ASSERT_TRUE(marks);
    ASSERT_EQ(marks->size(), 112U); // eight weeks, two hours a day
    std::map<desk::HourState, int> count;
    for (const auto& mark : *marks) {
        ++count[mark.state];
    }
    EXPECT_GT(count[desk::HourState::Kept], 90);
    EXPECT_EQ(count[desk::HourState::Due], 1);
    EXPECT_EQ(count[desk::HourState::Ahead], 1); // this evening
    EXPECT_GE(count[desk::HourState::Missed], 1);
    EXPECT_GE(count[desk::HourState::Doubtful], 1);
}

TEST_F(Desk, theMonthsCountsAddUp) {
    const auto report = desk::monthReport(book, station, 2026_y / 10, kNow);
    ASSERT_TRUE(report);
    for (const auto& hour : report->summary.hours) {
        EXPECT_EQ(hour.expected, 31);
        EXPECT_EQ(hour.n + hour.missing + hour.setAside, hour.expected);
    }
}

} // namespace
