// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/estimate.h"
#include "tests/support/reference_csv.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

using namespace wickbook::comparison;

namespace {

constexpr double kRelative = 1e-9;

void expectClose(double value, double expected, const char* what) {
    EXPECT_NEAR(value, expected, kRelative * std::abs(expected)) << what;
}

} // namespace

// NIST Statistical Reference Datasets, linear regression through the origin, NoInt1: certified values.
TEST(OriginFit, NistNoInt1) {
    std::array<double, 11> x{};
    std::array<double, 11> y{};
    for (std::size_t i = 0; i < x.size(); ++i) {
        x.at(i) = 60.0 + static_cast<double>(i);
        y.at(i) = 130.0 + static_cast<double>(i);
    }
    const auto fit = fitThroughOrigin(x, y);
    ASSERT_TRUE(fit);
    expectClose(fit->slope.value, 2.07438016528926, "B1");
    expectClose(fit->slope.standardError, 0.165289256198347e-01, "its standard deviation");
    expectClose(fit->residualDeviation, 3.56753034006338, "residual standard deviation");
}

// NIST StRD, NoInt2.
TEST(OriginFit, NistNoInt2) {
    const auto fit = fitThroughOrigin(std::array{4.0, 5.0, 6.0}, std::array{3.0, 4.0, 4.0});
    ASSERT_TRUE(fit);
    expectClose(fit->slope.value, 0.727272727272727, "B1");
    expectClose(fit->slope.standardError, 0.420827318078432e-01, "its standard deviation");
    expectClose(fit->residualDeviation, 0.369274472937998, "residual standard deviation");
    // Two degrees of freedom: t(0.975) = 4.303 in every printed table of Student's t.
    EXPECT_NEAR(fit->slope.upper95 - fit->slope.value, 4.303 * 0.0420827318, 1e-4);
}

TEST(OriginFit, NothingFromTooLittle) {
    EXPECT_FALSE(fitThroughOrigin(std::array{1.0}, std::array{1.0}));
    EXPECT_FALSE(fitThroughOrigin(std::array{0.0, 0.0}, std::array{1.0, 2.0}));
    EXPECT_FALSE(fitThroughOrigin(std::array{1.0, 2.0}, std::array{1.0, 2.0, 3.0}));
}

TEST(LineFit, NothingFromTooLittle) {
    EXPECT_FALSE(fitLine(std::array{1.0, 2.0}, std::array{1.0, 2.0}));
    EXPECT_FALSE(fitLine(std::array{2.0, 2.0, 2.0}, std::array{1.0, 2.0, 3.0}));
}

// F. J. Anscombe, "Graphs in Statistical Analysis", American Statistician 27 (1973): the first of the four
// sets.
TEST(LineFit, AnscombesFirst) {
    const std::array<double, 11> x{10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5};
    const std::array<double, 11> y{8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68};
    const auto fit = fitLine(x, y);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->slope.value, 0.500, 5e-4);
    EXPECT_NEAR(fit->intercept.value, 3.00, 5e-3);
    EXPECT_NEAR(fit->slope.standardError, 0.118, 5e-4);
}

// tests/reference/beside_expected.csv: Student's density integrated by Gauss and Legendre in numpy.
TEST(Student, Quantiles) {
    int rows = 0;
    for (const auto& row : wickbook::support::readReference("beside_expected.csv")) {
        const std::string& name = row.text("quantity");
        if (!name.starts_with("t ")) {
            continue;
        }
        ++rows;
        const std::size_t space = name.find(' ', 2);
        const double probability = std::stod(name.substr(2, space - 2));
        const auto degrees = static_cast<std::size_t>(std::stoul(name.substr(space + 1)));
        expectClose(studentQuantile(probability, degrees), row.need("value"), name.c_str());
    }
    EXPECT_EQ(rows, 6);
}

TEST(Mean, OfFewerThanTwoIsNone) {
    EXPECT_FALSE(meanOf(std::array{1.0}));
    EXPECT_FALSE(deviationOf(std::array<double, 0>{}));
}
