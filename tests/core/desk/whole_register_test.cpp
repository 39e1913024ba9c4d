// SPDX-License-Identifier: GPL-3.0-or-later
// The whole register over a real book: the same answer as in one go, stopped at any stage without a trace, a
// copied page found, and one entry judged by a bounded number of rows whatever the age of the book.
#include "core/desk/register_review.h"
#include "core/desk/sample_book.h"
#include "core/desk/whole_register.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

namespace {

using namespace wickbook;
using namespace std::chrono_literals;
using namespace date::literals;
namespace fs = std::filesystem;

constexpr record::StationDate kLastDay{date::local_days{2026_y / 11 / 22}};
constexpr record::Instant kNow{date::sys_days{2026_y / 11 / 22} + 8h + 52min};

class WholeRegister : public ::testing::Test {
protected:
    WholeRegister() : folder(fs::temp_directory_path() / ("wickbook-" + record::Uuid::random().toText())) {
        fs::create_directories(folder);
    }
    ~WholeRegister() override {
        std::error_code ignored;
        fs::remove_all(folder, ignored);
    }
    store::Book sample(const std::string& name, int years, int weeks, bool slips = true) const {
        auto book = desk::createSampleBook(
            folder / name,
            {.lastDay = kLastDay, .years = years, .weeks = weeks, .until = kNow, .slips = slips},
            std::make_shared<record::SystemClock>());
        EXPECT_TRUE(book) << book.error().detail;
        return std::move(*book);
    }
    std::string bytes(const std::string& name) const {
        std::ifstream file(folder / name, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }
    fs::path folder;
};

TEST_F(WholeRegister, readInStretchesItIsTheSameRegister) {
    const store::Book book = sample("two.wickbook", 2, 5);
    const record::StationRecord station = *book.station();
    const auto span = *book.span();
    const auto atOnce = book.observationsBetween(span->first, span->second + 1s);
    const auto stretched = desk::wholeRegister(book, station);
    ASSERT_TRUE(atOnce && stretched && *stretched);
    ASSERT_EQ((*stretched)->size(), atOnce->size());
    for (std::size_t i = 0; i < atOnce->size(); ++i) {
        EXPECT_EQ((**stretched)[i].stored.stamp.sequence, (*atOnce)[i].stamp.sequence);
    }
}

TEST_F(WholeRegister, stoppedAtEveryStageWithinAMomentAndWithoutATrace) {
    const store::Book book = sample("two.wickbook", 2, 5);
    const record::StationRecord station = *book.station();
    const std::string before = bytes("two.wickbook");
    using desk::WholeStage;
    for (const WholeStage stage : {WholeStage::Reading, WholeStage::Learning, WholeStage::Judging}) {
        int askedAfter = 0;
        bool stop = false;
        const auto checked =
            desk::checkWhole(book, station, kNow, [&](WholeStage now, std::size_t done, std::size_t total) {
                askedAfter += stop ? 1 : 0;
                EXPECT_LE(done, total);
                stop = stop || now == stage;
                return !stop;
            });
        ASSERT_TRUE(checked);
        EXPECT_FALSE(checked->has_value()) << "an answer though it was stopped";
        EXPECT_EQ(askedAfter, 0) << "went on after being told to stop";
    }
    std::set<std::string> files;
    for (const auto& entry : fs::directory_iterator(folder)) {
        files.insert(entry.path().filename().string());
    }
    EXPECT_EQ(files, (std::set<std::string>{"two.wickbook"}));
    EXPECT_EQ(bytes("two.wickbook"), before);
    const auto again = desk::checkWhole(book, station, kNow);
    ASSERT_TRUE(again && *again);
    EXPECT_EQ(static_cast<std::int64_t>((*again)->size()), *book.observationCount());
}

TEST_F(WholeRegister, progressRunsThroughTheStagesInOrder) {
    const store::Book book = sample("two.wickbook", 1, 0);
    std::vector<desk::WholeStage> stages;
    std::size_t last = 0;
    const auto checked = desk::checkWhole(book, *book.station(), kNow,
                                          [&](desk::WholeStage stage, std::size_t done, std::size_t) {
                                              if (stages.empty() || stages.back() != stage) {
                                                  stages.push_back(stage);
                                                  last = 0;
                                              }
                                              EXPECT_GE(done, last);
                                              last = done;
                                              return true;
                                          });
    ASSERT_TRUE(checked && *checked);
    EXPECT_EQ(stages, (std::vector{desk::WholeStage::Reading, desk::WholeStage::Learning,
                                   desk::WholeStage::Judging}));
    EXPECT_EQ(last, (*checked)->size());
}

TEST_F(WholeRegister, theSamplesSlipsAreAskedAboutWorstFirst) {
    const store::Book book = sample("two.wickbook", 2, 5);
    const auto checked = desk::checkWhole(book, *book.station(), kNow);
    ASSERT_TRUE(checked && *checked);
    const auto review = desk::reviewOf(**checked);
    ASSERT_GE(review.runs.size(), 5U);
    for (std::size_t i = 1; i < review.runs.size(); ++i) {
        EXPECT_GE(review.runs[i - 1].lead.severity, review.runs[i].lead.severity);
    }
    const bool swapped = std::any_of(review.runs.begin(), review.runs.end(), [](const auto& run) {
        return run.lead.code == "wet-above-dry" && run.belief > 0.5;
    });
    EXPECT_TRUE(swapped) << "the swapped pair six days before the end";
}

TEST_F(WholeRegister, aDayCopiedFromThreeWeeksBeforeIsFoundByMonthAndRegisterAlike) {
    store::Book book = sample("one.wickbook", 1, 0, false);
    const record::StationRecord station = *book.station();
    const record::StationDate from{date::local_days{2026_y / 10 / 5}};
    const record::StationDate to{date::local_days{2026_y / 10 / 26}};
    int copied = 0;
    for (const record::HourOfDay hour : {9h, 21h}) {
        const auto original = *book.atHour({from, hour});
        const auto copy = *book.atHour({to, hour});
        ASSERT_TRUE(original && copy);
        store::ObservationChange change;
        change.subject = copy->id();
        change.values = copy->values;
        change.values.dry = original->values.dry;
        change.values.wet = original->values.wet;
        change.values.wick = original->values.wick;
        ASSERT_TRUE(book.append(change));
        ++copied;
    }
    const auto marked = [&](const std::vector<checks::CheckedReading>& checked) {
        std::set<record::StationDate> dates;
        int count = 0;
        for (const auto& one : checked) {
            for (const auto& finding : one.findings) {
                if (finding.code == "copied-day") {
                    dates.insert(record::filedDate(one.reading.values()));
                    EXPECT_EQ(finding.word("date"), record::dateText(from));
                    ++count;
                }
            }
        }
        EXPECT_EQ(dates, std::set{to});
        return count;
    };
    const auto whole = desk::checkWhole(book, station, kNow);
    ASSERT_TRUE(whole && *whole);
    EXPECT_EQ(marked(**whole), copied);
    const auto week = desk::checkedOn(book, station, to - date::days{3}, to + date::days{3}, kNow);
    ASSERT_TRUE(week);
    EXPECT_EQ(marked(*week), copied) << "a part of the month must say what the whole register says";
}

struct Work {
    int rows = 0, scanned = 0, steps = 0;
};

/// What SQLite did on every connection opened while it lives. An auto-extension is the one way in: the book
/// shows its connection to nobody.
class Watched {
public:
    Watched() {
        work = Work{};
        sqlite3_auto_extension(reinterpret_cast<void (*)()>(&watch));
    }
    ~Watched() { sqlite3_cancel_auto_extension(reinterpret_cast<void (*)()>(&watch)); }
    Watched(const Watched&) = delete;
    Watched& operator=(const Watched&) = delete;
    static inline Work work;

private:
    static int watch(sqlite3* database, char** /*error*/, const void* /*api*/) {
        return sqlite3_trace_v2(database, SQLITE_TRACE_ROW | SQLITE_TRACE_PROFILE, &traced, nullptr);
    }
    static int traced(unsigned what, void* /*context*/, void* statement, void* /*time*/) {
        auto* done = static_cast<sqlite3_stmt*>(statement);
        if (what == SQLITE_TRACE_ROW) {
            ++work.rows;
        } else {
            work.scanned += sqlite3_stmt_status(done, SQLITE_STMTSTATUS_FULLSCAN_STEP, 1);
            work.steps += sqlite3_stmt_status(done, SQLITE_STMTSTATUS_VM_STEP, 1);
        }
        return 0;
    }
};

TEST_F(WholeRegister, oneEntryReadsAsManyRowsInABookOfAHundredYearsAsInOneOfAMonth) {
    const auto workFor = [&](const std::string& name, int years, int weeks) {
        sample(name, years, weeks, false);
        const Watched watched;
        const auto book = store::Book::open(folder / name);
        EXPECT_TRUE(book);
        const record::StationRecord station = *book->station();
        // Between the readings of three weeks ago, so that there are neighbours both ways.
        auto entry = (*book->neighbours(kNow - std::chrono::hours{21 * 24}, 1, 0)).front().values;
        entry.hour.reset();
        entry.instant += 1h;
        Watched::work = Work{};
        const auto judged = desk::judgeEntry(*book, station, entry, std::nullopt, kNow, true);
        EXPECT_TRUE(judged);
        return Watched::work;
    };
    const Work month = workFor("month.wickbook", 0, 5);
    const Work century = workFor("century.wickbook", 100, 0);
    constexpr int kNeighbours = checks::kNeighboursBefore + checks::kNeighboursAfter + 2;
    EXPECT_EQ(month.rows, kNeighbours) << "the instrument must see the rows";
    EXPECT_EQ(century.rows, kNeighbours);
    EXPECT_EQ(century.scanned, month.scanned);
    EXPECT_EQ(century.steps, month.steps);
}

} // namespace
