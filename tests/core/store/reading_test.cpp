// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book_queries.h"
#include "tests/core/store/book_testing.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

std::vector<std::int64_t> momentsOf(const Result<std::vector<record::StoredObservation>>& found) {
    std::vector<std::int64_t> moments;
    for (const auto& one : found.value())
        moments.push_back((one.values.instant.time_since_epoch().count() - kMarch2025) / 3600);
    return moments;
}

/// Hours since the beginning of March 2025 as the moment.
record::Instant hour(std::int64_t hours) {
    return at(kMarch2025 + 3600 * hours);
}
record::StationDate march(int day) {
    return record::StationDate{date::days{kMarch2025 / 86400 + day - 1}};
}

Book bookOfTwoDays(const std::filesystem::path& path) {
    Book book = newBook(path);
    std::vector<ObservationChange> changes;
    for (const int i : {3, 1, 0, 2}) // typed in any order
        changes.push_back(change(reading(i), static_cast<std::uint64_t>(i)));
    record::Observation extra = reading(0);
    extra.hour.reset();
    extra.instant = hour(15);
    changes.push_back(change(extra, 10));
    record::Observation withdrawn = extra;
    withdrawn.instant = hour(16);
    withdrawn.withdrawn = true;
    changes.push_back(change(withdrawn, 11));
    if (!book.appendAll(changes))
        throw std::runtime_error("not stored");
    return book;
}

/// How SQLite would answer, as text.
std::string planOf(const std::filesystem::path& path, const std::string& query) {
    sqlite3* handle = nullptr;
    sqlite3_open_v2(path.c_str(), &handle, SQLITE_OPEN_READONLY, nullptr);
    sqlite3_stmt* statement = nullptr;
    EXPECT_EQ(sqlite3_prepare_v2(handle, ("EXPLAIN QUERY PLAN " + query).c_str(), -1, &statement, nullptr),
              SQLITE_OK)
        << sqlite3_errmsg(handle);
    std::string plan;
    while (sqlite3_step(statement) == SQLITE_ROW)
        plan += std::string{static_cast<const char*>(sqlite3_column_blob(statement, 3))} + "\n";
    sqlite3_finalize(statement);
    sqlite3_close(handle);
    return plan;
}

Book bookOf(const std::filesystem::path& path, int count) {
    Book book = newBook(path);
    std::vector<ObservationChange> changes;
    changes.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) {
        record::Observation o = reading(i);
        o.dry.value->value.mantissa = i % 300;
        o.wet.value->value.mantissa = i % 280;
        changes.push_back(change(o, static_cast<std::uint64_t>(i)));
    }
    const auto receipts = book.appendAll(changes);
    if (!receipts)
        throw std::runtime_error(receipts.error().detail);
    return book;
}

} // namespace

TEST(ReadingsOfABook, ComeInTimeOrderWithinTheMomentsAskedFor) {
    const TempFolder folder;
    const Book book = bookOfTwoDays(folder / "book");
    using ::testing::ElementsAre;
    EXPECT_THAT(momentsOf(book.observationsBetween(hour(0), hour(48))), ElementsAre(9, 15, 21, 33, 45));
    EXPECT_THAT(momentsOf(book.observationsBetween(hour(9), hour(21))), ElementsAre(9, 15)) << "half-open";
    EXPECT_THAT(momentsOf(book.observationsBetween(hour(21), hour(9))), ElementsAre());
    EXPECT_EQ(book.observationCount(), 5);
    EXPECT_EQ(book.span()->value(), std::pair(hour(9), hour(45)));
}

TEST(ReadingsOfABook, AreFiledUnderTheirHoursDateOrTheClocks) {
    const TempFolder folder;
    Book book = bookOfTwoDays(folder / "book");
    using ::testing::ElementsAre;
    EXPECT_THAT(momentsOf(book.observationsOn(march(1), march(1))), ElementsAre(9, 15, 21));
    EXPECT_THAT(momentsOf(book.observationsOn(march(2), march(3))), ElementsAre(33, 45));
    // The 23:00 reading made at 00:30 belongs to the day before; an extra one at 00:30 by a clock one hour
    // ahead of 23:30 UTC belongs to the day after.
    record::Observation late = reading(4);
    late.hour = record::ObservingHour{march(5), record::HourOfDay{23 * 60}};
    late.instant = hour(5 * 24) + std::chrono::minutes{30};
    record::Observation extra = reading(4);
    extra.hour.reset();
    extra.instant = hour(6 * 24) + std::chrono::minutes{-30};
    extra.offset = std::chrono::hours{1};
    ASSERT_TRUE(book.appendAll(std::vector{change(late, 20), change(extra, 21)}));
    EXPECT_THAT(momentsOf(book.observationsOn(march(5), march(5))), ElementsAre(120));
    EXPECT_THAT(momentsOf(book.observationsOn(march(7), march(7))), ElementsAre(143));
}

TEST(ReadingsOfABook, HaveNeighboursOnBothSides) {
    const TempFolder folder;
    const Book book = bookOfTwoDays(folder / "book");
    using ::testing::ElementsAre;
    EXPECT_THAT(momentsOf(book.neighbours(hour(21), 2, 2)), ElementsAre(9, 15, 21, 33));
    EXPECT_THAT(momentsOf(book.neighbours(hour(21), 0, 1)), ElementsAre(21));
    EXPECT_THAT(momentsOf(book.neighbours(hour(0), 5, 1)), ElementsAre(9));
    EXPECT_THAT(momentsOf(book.neighbours(hour(99), 1, 5)), ElementsAre(45));
    EXPECT_THAT(momentsOf(book.neighbours(hour(21), -1, -1)), ElementsAre()) << "less than none is none";
}

TEST(EveryQuestionToABook, IsAnsweredThroughAnIndexWithoutSortingTheRegister) {
    const TempFolder folder;
    newBook(folder / "book");
    for (const std::string& query : {queries::between(), queries::earlier(), queries::later(),
                                     queries::bySubject(), queries::atHour(), queries::history()}) {
        const std::string plan = planOf(folder / "book", query);
        EXPECT_THAT(plan, ::testing::Not(::testing::HasSubstr("SCAN"))) << query << "\n" << plan;
        EXPECT_THAT(plan, ::testing::Not(::testing::HasSubstr("TEMP B-TREE"))) << query << "\n" << plan;
    }
    // These sort, but only the rows of the days or the moment asked for.
    for (const std::string& query : {queries::filedOn(), queries::atInstant(), queries::withdrawnAt()})
        EXPECT_THAT(planOf(folder / "book", query), ::testing::Not(::testing::HasSubstr("SCAN"))) << query;
    EXPECT_THAT(planOf(folder / "book", queries::facts()), ::testing::HasSubstr("revision_of_facts"));
}

TEST(NeighboursInABook, CostTheSameAfterAHundredYears) {
    const TempFolder folder;
    constexpr int kHundredYears = 2 * 36525; // twice daily
    const Book young = bookOf(folder / "young", 200);
    const Book old = bookOf(folder / "old", kHundredYears);
    ASSERT_EQ(old.observationCount(), kHundredYears);
    // The best of many, so that a busy machine doesn't speak for either.
    const auto best = [](const Book& book, record::Instant middle) {
        auto shortest = std::chrono::steady_clock::duration::max();
        for (int i = 0; i < 200; ++i) {
            const auto began = std::chrono::steady_clock::now();
            const auto found = book.neighbours(middle, 10, 10);
            const auto took = std::chrono::steady_clock::now() - began;
            EXPECT_EQ(found->size(), 20U);
            shortest = std::min(shortest, took);
        }
        return std::chrono::duration<double, std::micro>(shortest).count();
    };
    const double few = best(young, reading(100).instant);
    const double many = best(old, reading(kHundredYears / 2).instant);
    RecordProperty("microsecondsYoung", std::to_string(few));
    RecordProperty("microsecondsOld", std::to_string(many));
    EXPECT_LT(many, 4 * few) << few << " µs and " << many << " µs";
}

TEST(TheViewReading, ShowsTheNewestValuesToAnyoneWithASqliteShell) {
    const TempFolder folder;
    {
        Book book = bookOfTwoDays(folder / "book");
        record::Observation fahrenheit = reading(6);
        fahrenheit.dry.value = units::ReadTemperature{{615, 1}, units::TemperatureUnit::Fahrenheit};
        fahrenheit.wet.value = units::ReadTemperature{{-4, 1}, units::TemperatureUnit::Celsius};
        fahrenheit.pressure = units::Decimal{10132, 1};
        ASSERT_TRUE(book.append(change(fahrenheit, 6)));
    }
    sqlite3* handle = nullptr;
    ASSERT_EQ(sqlite3_open_v2((folder / "book").c_str(), &handle, SQLITE_OPEN_READONLY, nullptr), SQLITE_OK);
    sqlite3_stmt* statement = nullptr;
    ASSERT_EQ(
        sqlite3_prepare_v2(handle,
                           "SELECT time_utc || '|' || local_date || '|' || hour || '|' || dry || dry_unit "
                           "|| '|' || wet || wet_unit || '|' || coalesce(pressure_hpa, '') || '|' || who "
                           "FROM reading WHERE hour IS NOT NULL ORDER BY time_utc",
                           -1, &statement, nullptr),
        SQLITE_OK)
        << sqlite3_errmsg(handle);
    std::vector<std::string> lines;
    while (sqlite3_step(statement) == SQLITE_ROW)
        lines.emplace_back(static_cast<const char*>(sqlite3_column_blob(statement, 0)),
                           static_cast<std::size_t>(sqlite3_column_bytes(statement, 0)));
    sqlite3_finalize(statement);
    sqlite3_close(handle);
    EXPECT_THAT(lines, ::testing::ElementsAre("2025-03-01T09:00:00Z|2025-03-01|09:00|16.0C|14.0C||ab",
                                              "2025-03-01T21:00:00Z|2025-03-01|21:00|16.1C|14.1C||ab",
                                              "2025-03-02T09:00:00Z|2025-03-02|09:00|16.2C|14.2C||ab",
                                              "2025-03-02T21:00:00Z|2025-03-02|21:00|16.3C|14.3C||ab",
                                              "2025-03-04T09:00:00Z|2025-03-04|09:00|61.5F|-0.4C|1013.2|ab"));
}
