// SPDX-License-Identifier: GPL-3.0-or-later
// A file planned in parts gives what it gives when it is planned at once, whatever its dates.
#include "core/exchange/import_plan.h"
#include "tests/core/exchange/stations.h"

#include <gtest/gtest.h>

#include <sstream>

namespace wickbook::exchange {
namespace {

using testing::station;

/// A stream that can be read once, as a pipe can.
class OnceBuffer final : public std::streambuf {
public:
    explicit OnceBuffer(std::string text) : text_(std::move(text)) {
        setg(text_.data(), text_.data(), text_.data() + text_.size());
    }

private:
    std::string text_;
};

struct InParts {
    std::vector<PlannedObservation> observations;
    std::vector<RejectedLine> rejected;
    std::size_t parts = 0;
    std::size_t largest = 0;
    tl::expected<ImportPlan, ImportError> plan;
};

InParts planInParts(std::istream& input, const ImportOptions& options = {}) {
    InParts collected;
    collected.plan =
        planCsvInParts(input, "register.csv", station(), options, [&](auto& observations, auto& rejected) {
            ++collected.parts;
            collected.largest = std::max(collected.largest, observations.size() + rejected.size());
            std::move(observations.begin(), observations.end(), std::back_inserter(collected.observations));
            std::move(rejected.begin(), rejected.end(), std::back_inserter(collected.rejected));
            return true;
        });
    return collected;
}

void expectSame(const std::string& text, const ImportOptions& options = {}) {
    std::istringstream whole(text);
    const auto expected = planCsvImport(whole, "register.csv", station(), options);
    ASSERT_TRUE(expected);
    std::istringstream again(text);
    const auto parts = planInParts(again, options);
    ASSERT_TRUE(parts.plan) << parts.plan.error().detail;
    EXPECT_EQ(parts.plan->lines, expected->lines);
    EXPECT_EQ(parts.plan->dateOrder, expected->dateOrder);
    EXPECT_TRUE(parts.plan->observations.empty() && parts.plan->rejected.empty());
    ASSERT_EQ(parts.observations.size(), expected->observations.size());
    for (std::size_t i = 0; i < parts.observations.size(); ++i) {
        ASSERT_EQ(parts.observations[i].line, expected->observations[i].line);
        ASSERT_EQ(parts.observations[i].values, expected->observations[i].values);
        ASSERT_EQ(parts.observations[i].text, expected->observations[i].text);
    }
    ASSERT_EQ(parts.rejected.size(), expected->rejected.size());
    for (std::size_t i = 0; i < parts.rejected.size(); ++i) {
        ASSERT_EQ(parts.rejected[i].line, expected->rejected[i].line);
        ASSERT_EQ(parts.rejected[i].reason, expected->rejected[i].reason);
        ASSERT_EQ(parts.rejected[i].detail, expected->rejected[i].detail);
    }
    EXPECT_LE(parts.largest, kLinesOfAPart + 1);
    EXPECT_GE(parts.parts, (expected->observations.size() + expected->rejected.size()) / (kLinesOfAPart + 1));
}

std::string isoLines(int from, int to) {
    std::string text;
    for (int i = from; i < to; ++i) {
        const date::sys_days day{date::days{i}};
        text += date::format("%F", day) + "T09:00Z,12.5,10.1\n";
    }
    return text;
}

/// Days 1 to 12 of a month written so that nothing tells day from month.
std::string slashLines(int years) {
    std::string text;
    for (int year = 1900; year < 1900 + years; ++year)
        for (int month = 1; month <= 12; ++month)
            for (int day = 1; day <= 12; ++day)
                text += std::to_string(day) + "/" + std::to_string(month) + "/" + std::to_string(year) +
                        " 09:00,12.5,10.1\n";
    return text;
}

constexpr const char* kHeader = "time,dry,wet\n";

} // namespace

TEST(APlanInParts, OfManyPlainLinesIsThePlanOfTheWhole) {
    expectSame(kHeader + isoLines(0, 10'000));
}

TEST(APlanInParts, KeepsRejectedLinesInTheirPlaces) {
    std::string text = kHeader;
    for (int i = 0; i < 3'000; ++i)
        text += isoLines(i, i + 1) + "never,1,1\n2025-01-01T09:00Z,\"open\n1,2,3,4,5\n";
    expectSame(text);
}

TEST(APlanInParts, ReadsTheFileTwiceWhereDatesWait) {
    // ISO dates first, then 8,640 lines that wait, then the one that tells, then ISO again.
    expectSame(kHeader + isoLines(40'000, 46'000) + slashLines(60) + "13/1/1990 21:00,12.5,10.1\n" +
               isoLines(60'000, 61'000));
    expectSame(kHeader + slashLines(60) + "1/13/1990 21:00,12.5,10.1\n");
}

TEST(APlanInParts, RejectsDatesThatNothingTellsOrThatContradict) {
    expectSame(kHeader + slashLines(40));
    expectSame(kHeader + slashLines(40) + "13/1/1990 21:00,12.5,10.1\n1/13/1990 21:00,12.5,10.1\n");
}

TEST(APlanInParts, GoesByTheOrderThatIsGiven) {
    ImportOptions options;
    options.dateOrder = DateOrder::MonthFirst;
    expectSame(kHeader + slashLines(40), options);
}

TEST(APlanInParts, OfAPipeHoldsWhatWaitsUpToALimit) {
    OnceBuffer few(kHeader + slashLines(60) + "13/1/1990 21:00,12.5,10.1\n");
    std::istream input(&few);
    const auto plan = planInParts(input);
    ASSERT_TRUE(plan.plan) << plan.plan.error().detail;
    EXPECT_EQ(plan.observations.size(), 60U * 144U + 1);

    OnceBuffer many(kHeader + slashLines(400));
    std::istream longer(&many);
    const auto refused = planInParts(longer);
    ASSERT_FALSE(refused.plan);
    EXPECT_EQ(refused.plan.error().kind, ImportErrorKind::DatesWait);
}

TEST(APlanInParts, StopsWhereWhoTakesThemSaysSo) {
    std::istringstream input(kHeader + isoLines(0, 20'000));
    int parts = 0;
    const auto plan =
        planCsvInParts(input, "register.csv", station(), {}, [&](auto&, auto&) { return ++parts < 2; });
    ASSERT_FALSE(plan);
    EXPECT_EQ(plan.error().kind, ImportErrorKind::Stopped);
    EXPECT_EQ(parts, 2);
}

TEST(APlanInParts, RefusesALongerFileThanIsAllowed) {
    std::istringstream input(kHeader + isoLines(0, 200));
    ImportOptions options;
    options.refusedAbove = 100;
    const auto plan = planCsvImport(input, "register.csv", station(), options);
    ASSERT_FALSE(plan);
    EXPECT_EQ(plan.error(), (ImportError{ImportErrorKind::TooManyLines, "100"}));
}

} // namespace wickbook::exchange
