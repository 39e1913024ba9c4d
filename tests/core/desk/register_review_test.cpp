// SPDX-License-Identifier: GPL-3.0-or-later
// Questions of a register in runs, worst first: made by hand, no book. The register of the story is made up.
#include "core/desk/register_review.h"

#include <gtest/gtest.h>

namespace {

using namespace wickbook;
using namespace std::chrono_literals;
using namespace date::literals;
using checks::CheckedReading;
using checks::Finding;
using checks::Severity;
using desk::reviewOf;

constexpr record::StationDate day(unsigned dayOfMonth, unsigned month = 1) {
    return record::StationDate{
        date::local_days{date::year{1881} / date::month{month} / date::day{dayOfMonth}}};
}

CheckedReading reading(record::StationDate date, record::HourOfDay hour, std::vector<Finding> findings = {}) {
    CheckedReading checked;
    checked.reading.stored.stamp.subject = record::Uuid::random();
    record::Observation& values = checked.reading.stored.values;
    values.hour = {date, hour};
    values.instant = record::Instant{(date + hour).time_since_epoch()};
    values.dry.value = units::ReadTemperature{{120, 1}, units::TemperatureUnit::Celsius};
    values.wet.value = values.dry.value;
    checked.findings = std::move(findings);
    return checked;
}

Finding finding(std::string_view code, Severity severity, std::vector<checks::LikelyCause> causes = {}) {
    return {code, severity, checks::Root::Pair, {}, std::move(causes)};
}

checks::LikelyCause cause(std::string code, double weight) {
    checks::LikelyCause made;
    made.code = std::move(code);
    made.weight = weight;
    return made;
}

TEST(RegisterReview, aWeekOfFoggyMorningsIsOneRunThoughTheEveningsAreSound) {
    std::vector<CheckedReading> all;
    for (unsigned d = 3; d <= 9; ++d) {
        all.push_back(reading(day(d), 9h, {finding("fine-but-saturated", Severity::Soft)}));
        all.push_back(reading(day(d), 21h));
    }
    const auto review = reviewOf(all);
    ASSERT_EQ(review.runs.size(), 1U);
    EXPECT_EQ(review.runs[0].asked, 7U);
    EXPECT_EQ(review.runs[0].from, day(3));
    EXPECT_EQ(review.runs[0].to, day(9));
    EXPECT_EQ(review.looked, 14U);
    EXPECT_EQ(review.asked, 7U);
}

TEST(RegisterReview, aRunEndsWhereNothingIsAskedForMoreThanThreeDays) {
    std::vector<CheckedReading> all;
    for (const unsigned d : {1U, 4U, 8U}) { // three days apart: one run; four: another
        all.push_back(reading(day(d), 9h, {finding("wet-above-dry", Severity::Doubtful)}));
    }
    const auto review = reviewOf(all);
    ASSERT_EQ(review.runs.size(), 2U);
    EXPECT_EQ(review.runs[0].asked, 2U);
    EXPECT_EQ(review.runs[1].from, day(8));
}

TEST(RegisterReview, anotherCauseOrAnotherBulbIsAnotherQuestion) {
    Finding dry = finding("off-scale", Severity::Erroneous);
    dry.arguments = {{"bulb", std::string{"dry"}}};
    Finding wet = dry;
    wet.arguments = {{"bulb", std::string{"wet"}}};
    const std::vector<CheckedReading> all{
        reading(day(1), 9h, {finding("wet-above-dry", Severity::Doubtful, {cause("swapped", 0.9)})}),
        reading(day(1), 21h, {finding("wet-above-dry", Severity::Doubtful, {cause("wet-ten-high", 0.9)})}),
        reading(day(2), 9h, {finding("wet-above-dry", Severity::Doubtful)}),
        reading(day(2), 21h, {dry}),
        reading(day(3), 9h, {wet}),
        reading(day(3), 21h, {finding("wet-above-dry", Severity::Doubtful, {cause("swapped", 0.7)})}),
    };
    const auto review = reviewOf(all);
    EXPECT_EQ(review.runs.size(), 5U); // the two swaps are one run, over the others' heads
    EXPECT_EQ(review.asked, 6U);
}

TEST(RegisterReview, worstFirst) {
    std::vector<CheckedReading> all{
        reading(day(1, 1), 9h, {finding("step-temperature", Severity::Soft)}),
        reading(day(1, 2), 9h, {finding("wet-above-dry", Severity::Doubtful)}),
        reading(day(1, 3), 9h, {finding("off-scale", Severity::Erroneous)}),
        reading(day(1, 4), 9h, {finding("wet-above-dry", Severity::Doubtful, {cause("swapped", 0.93)})}),
        reading(day(1, 5), 9h, {finding("no-vapour", Severity::Doubtful)}),
        reading(day(1, 5), 21h, {finding("no-vapour", Severity::Doubtful)}),
        reading(day(1, 6), 9h, {finding("no-vapour", Severity::Doubtful)}),
    };
    const auto review = reviewOf(all);
    std::vector<unsigned> months;
    for (const auto& run : review.runs) {
        months.push_back(static_cast<unsigned>(date::year_month_day{run.from}.month()));
    }
    // Erroneous; then by belief in a slip; then two before one; then the earlier; soft last.
    EXPECT_EQ(months, (std::vector<unsigned>{3, 4, 5, 2, 6, 1}));
}

TEST(RegisterReview, ahairsBreadthOfBeliefDecidesNothing) {
    const std::vector<CheckedReading> all{
        reading(day(1, 1), 9h, {finding("unlikely", Severity::Soft, {cause("dry-ten-high", 0.91)})}),
        reading(day(1, 2), 9h, {finding("unlikely", Severity::Soft, {cause("wet-ten-high", 0.93)})}),
    };
    EXPECT_EQ(reviewOf(all).runs.front().from, day(1, 1)) << "the earlier first";
    EXPECT_NEAR(desk::beliefInSlip(all[1]), 0.93, 1e-12);
}

TEST(RegisterReview, judgedMissingAndMerelyNotedReadingsAskNothing) {
    std::vector<CheckedReading> all(4, reading(day(1), 9h, {finding("wet-above-dry", Severity::Doubtful)}));
    all[0].reading.stored.values.quality = record::Quality::Sound;
    all[1].reading.stored.values.quality = record::Quality::Erroneous;
    all[2].reading.stored.values.origin = record::Origin::Missing;
    all[3].findings = {finding("late", Severity::Note)};
    const auto review = reviewOf(all);
    EXPECT_TRUE(review.runs.empty());
    EXPECT_EQ(review.looked, 4U);
    EXPECT_TRUE(reviewOf({}).runs.empty());
}

TEST(RegisterReview, neighboursStandThereForComparisonOnce) {
    std::vector<CheckedReading> all;
    for (unsigned d = 1; d <= 20; ++d) {
        all.push_back(reading(day(d), 9h));
    }
    all[9].findings = {finding("wet-above-dry", Severity::Doubtful)};
    all[11].findings = {finding("wet-above-dry", Severity::Doubtful)};
    const auto review = reviewOf(all);
    ASSERT_EQ(review.runs.size(), 1U);
    const auto& lines = review.runs[0].lines;
    ASSERT_EQ(lines.size(), 7U); // 8 9 [10] 11 [12] 13 14
    for (std::size_t i = 0; i < lines.size(); ++i) {
        EXPECT_EQ(lines[i].asked, i == 2 || i == 4);
        EXPECT_EQ(record::filedDate(lines[i].checked.reading.values()), day(static_cast<unsigned>(8 + i)));
    }
}

} // namespace
