// SPDX-License-Identifier: GPL-3.0-or-later
// The hands of a whole book, over the invented sample station, against a count made here another way.
#include "core/desk/observers_of_book.h"
#include "core/desk/sample_book.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <map>

namespace {

using namespace wickbook;
using namespace std::chrono_literals;
namespace fs = std::filesystem;

class NoonClock final : public record::Clock {
public:
    [[nodiscard]] record::Instant now() const override {
        return date::sys_days{date::year{2026} / 11 / 22} + 12h;
    }
};

class ObserversOfBook : public ::testing::Test {
protected:
    void SetUp() override {
        fs::create_directories(folder_);
        auto made = desk::createSampleBook(folder_ / "s.wickbook", desk::samplePlanUntil(NoonClock{}.now()),
                                           std::make_shared<NoonClock>());
        ASSERT_TRUE(made) << made.error().detail;
    }
    void TearDown() override { fs::remove_all(folder_); }

    fs::path folder_ = fs::temp_directory_path() / ("wickbook-observers-" + record::Uuid::random().toText());
};

TEST_F(ObserversOfBook, AreAllOfThemAndEachReadingOnce) {
    const auto book = store::Book::open(folder_ / "s.wickbook");
    ASSERT_TRUE(book);
    const auto station = *book->station();
    const auto all = book->observationsOn(date::local_days{date::year{1900} / 1 / 1},
                                          date::local_days{date::year{2100} / 1 / 1});
    ASSERT_TRUE(all);
    std::map<std::string, int> wanted;
    for (const record::StoredObservation& line : *all) {
        if (line.values.origin == record::Origin::Observed ||
            line.values.origin == record::Origin::Corrected) {
            ++wanted[line.values.observer];
        }
    }
    ASSERT_GT(wanted.size(), 1U) << "the sample has one hand only";
    const auto found = desk::observersOfBook(*book, station);
    ASSERT_TRUE(found && *found);
    std::map<std::string, int> counted;
    for (const checks::ObserverHabits& habits : **found) {
        counted[habits.initials] = habits.readings;
        EXPECT_LE(habits.first, habits.last);
    }
    EXPECT_EQ(counted, wanted);
}

TEST_F(ObserversOfBook, StopLeavesNothing) {
    const auto book = store::Book::open(folder_ / "s.wickbook");
    const auto station = *book->station();
    int asked = 0;
    const auto found = desk::observersOfBook(*book, station, [&](std::int64_t done, std::int64_t total) {
        EXPECT_LE(done, total);
        return ++asked < 3;
    });
    ASSERT_TRUE(found);
    EXPECT_FALSE(found->has_value());
    EXPECT_EQ(asked, 3);
}

} // namespace
