// SPDX-License-Identifier: GPL-3.0-or-later
// A month signed off, and what has become of it since: on a real book.
#include "core/desk/checked_range.h"
#include "core/report/signed_month.h"
#include "tests/core/climate/month_builder.h"

#include <gtest/gtest.h>

#include <filesystem>

namespace {

using namespace wickbook;
using namespace climate::testing;
namespace fs = std::filesystem;

class SignedBook : public ::testing::Test {
protected:
    SignedBook() {
        fs::create_directories(folder_);
        auto made = store::Book::create(folder_ / "b.wickbook", stationFacts(), {"T", ""});
        EXPECT_TRUE(made.has_value());
        book_.emplace(std::move(*made));
        for (int day = 1; day <= 31; ++day) {
            for (const record::HourOfDay hour : {record::HourOfDay{9h}, record::HourOfDay{21h}}) {
                keep(2025_y / 3 / day, hour, 8 + 0.1 * day, 6 + 0.1 * day);
            }
        }
    }
    ~SignedBook() override { fs::remove_all(folder_); }

    void keep(date::year_month_day day, record::HourOfDay hour, double dry, double wet) {
        const auto station = *book_->station();
        record::Observation values;
        values.hour = record::ObservingHour{record::StationDate{day}, hour};
        record::placeInTime(values, station, *record::momentOf(station, *values.hour));
        values.dry = bulb(dry);
        values.wet = bulb(wet);
        values.wick = record::WickState::Water;
        store::ObservationChange change;
        change.values = values;
        change.author = {"T", ""};
        ASSERT_TRUE(book_->append(change));
    }
    report::MonthReport month(date::year_month month = 2025_y / 3) {
        return *desk::monthReport(*book_, *book_->station(), month, {});
    }
    void sign(const std::string& by) {
        record::StationFacts facts = book_->station()->facts();
        facts.signings.push_back(
            report::signingOf(month(), record::Instant{date::sys_days{2025_y / 4 / 2}}, by, "looked at"));
        ASSERT_TRUE(book_->reviseFacts(facts, {by, "signed off"}));
    }
    void revise(date::year_month_day day, record::HourOfDay hour,
                const std::function<void(record::Observation&)>& change) {
        const auto stored = *book_->atHour({record::StationDate{day}, hour});
        store::ObservationChange revised;
        revised.subject = stored->id();
        revised.values = stored->values;
        change(revised.values);
        revised.author = {"T", "found later"};
        ASSERT_TRUE(book_->append(revised));
    }

    fs::path folder_ = fs::temp_directory_path() / ("wickbook-signed-" + record::Uuid::random().toText());
    std::optional<store::Book> book_;
};

TEST_F(SignedBook, NobodyHasSigned) {
    EXPECT_FALSE(month().signedOff);
}

TEST_F(SignedBook, WhatWasSignedIsKeptAndStands) {
    sign("MK");
    const auto report = month();
    ASSERT_TRUE(report.signedOff);
    EXPECT_EQ(report.signedOff->signing.by, "MK");
    EXPECT_EQ(report.signedOff->signing.readings.size(), 62U);
    EXPECT_TRUE(report.signedOff->asSigned());
    EXPECT_NE(report.signedOff->signing.numbers.find("mean_relative_humidity_pct"), std::string::npos);
    EXPECT_FALSE(month(2025_y / 4).signedOff) << "another month";
}

TEST_F(SignedBook, ALaterChangeShowsWhateverItCameFrom) {
    sign("MK");
    revise(2025_y / 3 / 7, 9h, [](record::Observation& values) { values.wet = bulb(6.0); });
    auto report = month();
    ASSERT_EQ(report.signedOff->changed.size(), 1U);
    EXPECT_FALSE(report.signedOff->asSigned());
    bool mean = false;
    for (const report::NumberChange& change : report.signedOff->numbers) {
        mean = mean || (change.hour == "all" && change.column == "mean_relative_humidity_pct" &&
                        std::stod(change.after) < std::stod(change.before));
    }
    EXPECT_TRUE(mean);

    // One taken out, one moved into another month.
    revise(2025_y / 3 / 8, 9h, [](record::Observation& values) { values.withdrawn = true; });
    const auto station = *book_->station();
    revise(2025_y / 3 / 9, 9h, [&](record::Observation& values) {
        values.hour = record::ObservingHour{record::StationDate{2025_y / 4 / 9}, 9h};
        record::placeInTime(values, station, *record::momentOf(station, *values.hour));
    });
    EXPECT_EQ(month().signedOff->gone, 2);
    keep(2025_y / 3 / 9, 9h, 9, 7);
    EXPECT_EQ(month().signedOff->added.size(), 1U);
}

TEST_F(SignedBook, ACorrectionOfAThermometerShowsInTheNumbersAlone) {
    sign("MK");
    record::StationFacts facts = book_->station()->facts();
    record::Correction correction;
    correction.id = record::Uuid::random();
    correction.thermometer = facts.fittings.front().wet;
    correction.points = {{0, 0.3}};
    facts.corrections.push_back(correction);
    ASSERT_TRUE(book_->reviseFacts(facts, {"MK", "certificate"}));
    const auto report = month();
    EXPECT_TRUE(report.signedOff->changed.empty());
    EXPECT_FALSE(report.signedOff->numbers.empty());
}

TEST_F(SignedBook, SignedAgainTheLatestCountsAndTakenBackTheEarlier) {
    sign("MK");
    revise(2025_y / 3 / 7, 9h, [](record::Observation& values) { values.wet = bulb(6.0); });
    sign("JB");
    auto report = month();
    EXPECT_EQ(report.signedOff->signing.by, "JB");
    EXPECT_EQ(report.signedOff->earlierSignings, 1);
    EXPECT_TRUE(report.signedOff->asSigned());
    record::StationFacts facts = book_->station()->facts();
    facts.signings.pop_back();
    ASSERT_TRUE(book_->reviseFacts(facts, {"JB", "too early"}));
    report = month();
    EXPECT_EQ(report.signedOff->signing.by, "MK");
    EXPECT_EQ(report.signedOff->changed.size(), 1U);
    EXPECT_TRUE(book_->verify()->sound());
}

TEST_F(SignedBook, ThresholdsTheStationSetsNameTheColumns) {
    record::StationFacts facts = book_->station()->facts();
    facts.limits[{"month.damp-day", {}}] = 80;
    facts.limits[{"month.days-missing", {}}] = 5;
    facts.limits[{"month.days-in-a-row", {}}] = 3;
    ASSERT_TRUE(book_->reviseFacts(facts, {"T", "stricter"}));
    auto report = month();
    EXPECT_EQ(report.options.completeness.daysMissing, 5);
    const auto table = report::summaryTable(report.summary, report.options);
    EXPECT_NE(std::find(table[0].begin(), table[0].end(), "days_at_or_above_80"), table[0].end());
    EXPECT_EQ(report.summary.all.withheld, climate::Withheld::No);
    for (const int day : {11, 12, 13}) { // three in a row at nine: the stricter rule withholds, the usual not
        revise(2025_y / 3 / day, 9h, [](record::Observation& values) { values.withdrawn = true; });
    }
    EXPECT_EQ(month().summary.all.withheld, climate::Withheld::TooManyInARow);
    EXPECT_FALSE(desk::monthReport(*book_, *book_->station(), 2025_y / 3, {}, climate::MonthOptions{})
                     ->summary.all.withheld != climate::Withheld::No);
}

} // namespace
