// SPDX-License-Identifier: GPL-3.0-or-later
// Likely causes at an invented station whose weather is drawn from a seeded source: five years, three times a
// day. What a person would say of each slip: common practice, no source.
#include "core/checks/broken_column.h"
#include "core/checks/likely_causes.h"
#include "core/checks/slip_candidates.h"
#include "tests/core/checks/checks_support.h"

#include <cmath>
#include <numbers>
#include <random>

namespace wickbook::checks::test {

namespace {

/// A register without slips: a year's and a day's course, and weather that fades over two days.
Page inventedYears(int years, const StationChoice& choice = {}) {
    Page page{choice};
    std::mt19937 random{7};
    std::normal_distribution<double> normal;
    double lastingT = 0;
    double lastingD = 0;
    for (int day = 0; day < 365 * years; ++day) {
        const auto date = date::local_days{date::year{2015} / 1 / 1} + date::days{day};
        const double season = -std::cos(2 * std::numbers::pi * (day - 20) / 365.0);
        for (const int hour : {7, 14, 21}) {
            const double shared = normal(random);
            lastingT = 0.85 * lastingT + 1.6 * (0.8 * shared + 0.6 * normal(random));
            lastingD = 0.85 * lastingD + 1.6 * (0.8 * shared + 0.6 * normal(random));
            const double dry = 12 + 8 * season +
                               (hour == 14  ? 6
                                : hour == 7 ? -2
                                            : 0) +
                               lastingT + 0.6 * normal(random);
            const double dewPoint = std::min(dry - 0.3, 7 + 6 * season + lastingD + 0.5 * normal(random));
            const auto e = psychrometry::vapourPressureOf(units::RelativeHumidity::fromPercent(100),
                                                          units::Temperature::fromCelsius(dewPoint));
            const auto humidity =
                psychrometry::relativeHumidity(e.value(), units::Temperature::fromCelsius(dry));
            psychrometry::CoefficientRule rule;
            rule.exposure = choice.exposure;
            const auto wet = psychrometry::wetBulbFor(units::Temperature::fromCelsius(dry), humidity.value(),
                                                      psychrometry::Surface::Water,
                                                      units::Pressure::fromHectopascals(1001), rule);
            const int decimals = choice.step.decimals;
            page.write(record::dateText(date) + (hour == 7    ? "T07:00Z"
                                                 : hour == 14 ? "T14:00Z"
                                                              : "T21:00Z"),
                       units::fixedText(dry, decimals), units::fixedText(wet.value().celsius(), decimals),
                       {.wick = wet.value().celsius() < 0.3 ? WickState::Water : WickState::NotGiven});
        }
    }
    return page;
}

struct Station {
    Page page = inventedYears(5);
    StationModel model{page.series()};

    /// The first reading of a summer afternoon near the middle whose pair the test finds fit.
    template <typename Fit>
    std::size_t find(Fit fit) const {
        for (std::size_t i = 2500; i < page.series().size() - 20; ++i) {
            const auto& values = page.series()[i].values();
            if (fit(values.dry.value->value.mantissa, values.wet.value->value.mantissa)) {
                return i;
            }
        }
        ADD_FAILURE() << "no such reading in the invented register";
        return 2500;
    }
    record::Observation observation(std::size_t i) const { return page.series()[i].values(); }

    std::vector<Finding> judge(std::size_t i, const record::Observation& written,
                               bool withModel = true) const {
        const std::span<const record::DerivedReading> all{page.series()};
        const auto reading = record::deriveReading(written, page.station());
        return checkReading({reading,
                             page.station(),
                             Limits{},
                             all.subspan(i - 12, 12),
                             all.subspan(i + 1, 8),
                             {},
                             false,
                             {},
                             withModel ? &model : nullptr});
    }
    std::vector<LikelyCause> causes(std::size_t i, const record::Observation& written) const {
        for (const Finding& finding : judge(i, written)) {
            if (!finding.causes.empty()) {
                return finding.causes;
            }
        }
        return {};
    }
};

const Station& station() {
    static const Station kStation;
    return kStation;
}

std::string told(const std::vector<LikelyCause>& causes) {
    std::string text;
    for (const auto& cause : causes) {
        text += cause.code + ' ' + units::fixedText(cause.weight, 2) + "; ";
    }
    return text;
}

} // namespace

TEST(LikelyCauses, ASwappedPairIsTurnedRound) {
    const auto i = station().find([](auto dry, auto wet) { return dry - wet > 60 && wet > 50; });
    auto written = station().observation(i);
    std::swap(written.dry, written.wet);
    const auto causes = station().causes(i, written);
    ASSERT_FALSE(causes.empty());
    EXPECT_EQ(causes[0].code, "swapped") << told(causes);
    EXPECT_EQ(causes[0].dryRead, station().observation(i).dry.value);
    EXPECT_EQ(causes[0].wetRead, station().observation(i).wet.value);
    EXPECT_NEAR(causes[0].humidityPercent.value_or(0), *station().page.series()[i].humidityPercent(), 0.01);
    EXPECT_NEAR(causes[0].dewPointCelsius.value_or(0), *station().page.series()[i].dewPointCelsius(), 0.01);
}

TEST(LikelyCauses, TenOffIsMarkedThoughNoRuleTrips) {
    const auto i =
        station().find([](auto dry, auto wet) { return dry > 200 && dry - wet > 20 && dry - wet < 50; });
    auto written = station().observation(i);
    written.dry.value->value.mantissa += 100;
    const auto findings = station().judge(i, written);
    ASSERT_TRUE(has(findings, "unlikely")) << codes(findings);
    const auto causes = station().causes(i, written);
    ASSERT_FALSE(causes.empty());
    EXPECT_EQ(causes[0].code, "dry-ten-high") << told(causes);
    EXPECT_GT(causes[0].weight, 0.5);
    EXPECT_LT(find(findings, "unlikely")->number("belief").value_or(1), 0.42);
    EXPECT_EQ(spokenNotes(findings).size(), 1U) << codes(findings);
    // Without a model nothing is looked for.
    const auto plain = station().judge(i, written, false);
    EXPECT_FALSE(has(plain, "unlikely"));
    EXPECT_TRUE(std::all_of(plain.begin(), plain.end(), [](const auto& f) { return f.causes.empty(); }));
}

TEST(LikelyCauses, AnOffScaleNumberIsExplainedByItsDigits) {
    const auto i =
        station().find([](auto dry, auto wet) { return dry > 200 && dry < 260 && dry - wet > 30; });
    auto written = station().observation(i);
    written.dry.value->value.mantissa *= 10; // the point was lost
    const auto causes = station().causes(i, written);
    ASSERT_FALSE(causes.empty());
    EXPECT_EQ(causes[0].code, "dry-decimal-point") << told(causes);
    EXPECT_EQ(causes[0].dryRead->temperature().celsius(),
              station().observation(i).dry.value->temperature().celsius());
}

TEST(LikelyCauses, FahrenheitTypedAsCelsius) {
    const auto i = station().find([](auto dry, auto wet) { return dry > 150 && dry - wet > 20; });
    auto written = station().observation(i);
    for (auto* bulb : {&written.dry, &written.wet}) {
        bulb->value->value = units::roundedDecimal(bulb->value->value.toDouble() * 1.8 + 32, 1);
    }
    const auto causes = station().causes(i, written);
    ASSERT_FALSE(causes.empty());
    EXPECT_EQ(causes[0].code, "fahrenheit-as-celsius") << told(causes);
    EXPECT_EQ(causes[0].dryRead->unit, units::TemperatureUnit::Fahrenheit);
}

TEST(LikelyCauses, TheLineAboveCopied) {
    const auto i = station().find([](auto dry, auto) { return dry > 220; });
    auto written = station().observation(i);
    written.dry = station().observation(i - 1).dry;
    written.wet = station().observation(i - 1).wet;
    const auto causes = station().causes(i, written);
    ASSERT_FALSE(causes.empty());
    EXPECT_EQ(causes[0].code, "line-above-copied") << told(causes);
    EXPECT_FALSE(causes[0].dryCelsius); // what stood there is not known
}

TEST(LikelyCauses, TheTenthsCountedDownwardsBelowZero) {
    // −3.1 read as −4.9 against steady neighbours: the slip must be weighed, with its own pair.
    Page page;
    page.write("2025-01-10T07:00Z", "-3.0", "-4.9", {.wick = WickState::Water});
    const auto candidates = slipCandidates(page.series().back());
    const auto it = std::find_if(candidates.begin(), candidates.end(), [](const SlipCandidate& candidate) {
        return candidate.code == "wet-tenths-downwards";
    });
    ASSERT_NE(it, candidates.end());
    EXPECT_EQ(it->wet.value.toText(), "-3.1");
    EXPECT_EQ(it->dry.value.toText(), "-3.0");
    EXPECT_EQ(it->wick, WickState::Water);
}

TEST(LikelyCauses, WaterForIceIsWeighedWhereTheWickWasGiven) {
    const auto codesOf = [](WickState wick, const char* wet) {
        Page page;
        page.write("2025-01-16T07:00Z", "1.0", wet, {.wick = wick});
        std::string all;
        for (const auto& candidate : slipCandidates(page.series().back())) {
            if (candidate.code.find("taken-for") != std::string::npos) {
                EXPECT_EQ(candidate.wet.value.toText(), wet);
                EXPECT_NE(candidate.wick, wick);
                all += candidate.code;
            }
        }
        return all;
    };
    EXPECT_EQ(codesOf(WickState::Water, "-1.4"), "ice-taken-for-water");
    EXPECT_EQ(codesOf(WickState::Ice, "-1.4"), "water-taken-for-ice");
    EXPECT_EQ(codesOf(WickState::NotGiven, "-1.4"), "");
    EXPECT_EQ(codesOf(WickState::Water, "0.4"), "");
}

TEST(LikelyCauses, ADryWickLeavesTheDryBulbAlone) {
    // A hot dry afternoon, and a wet bulb that reads what the dry one reads: twelve kelvins of dew point too
    // much.
    const auto i = station().find([](auto dry, auto wet) { return dry > 240 && dry - wet > 80; });
    auto written = station().observation(i);
    written.wet.value = written.dry.value;
    const auto causes = station().causes(i, written);
    const auto it = std::find_if(causes.begin(), causes.end(),
                                 [](const LikelyCause& cause) { return cause.code == "dry-wick"; });
    ASSERT_NE(it, causes.end()) << told(causes);
    EXPECT_TRUE(it->dryCelsius);
    EXPECT_FALSE(it->wetCelsius);
    EXPECT_FALSE(it->humidityPercent);
}

TEST(LikelyCauses, AColumnThatPartedReadsOffBySteadyDegrees) {
    // From one morning on the wet thermometer reads five degrees too low. Three readings can't always tell a
    // wet bulb too low from a dry one too high; over many mornings they must.
    int tried = 0;
    int wetFound = 0;
    int wetLikelier = 0;
    const auto& series = station().page.series();
    for (std::size_t i = 2500; i + 20 < series.size() && tried < 60; i += 17) {
        const auto& values = series[i].values();
        if (values.dry.value->value.mantissa < 150 || values.wet.value->value.mantissa < 100) {
            continue;
        }
        ++tried;
        std::vector<record::DerivedReading> before(series.begin() + static_cast<std::ptrdiff_t>(i) - 12,
                                                   series.begin() + static_cast<std::ptrdiff_t>(i));
        const auto parted = [&](std::size_t at) {
            auto written = station().observation(at);
            written.wet.value->value.mantissa -= 50;
            return record::deriveReading(written, station().page.station());
        };
        before[10] = parted(i - 2);
        before[11] = parted(i - 1);
        const auto found = brokenColumns(parted(i), before, station().model);
        const auto wet = std::find_if(found.begin(), found.end(), [](const auto& one) { return !one.dry; });
        const auto dry = std::find_if(found.begin(), found.end(), [](const auto& one) { return one.dry; });
        if (wet == found.end()) {
            continue;
        }
        wetFound += wet->offset < -2.5 && wet->offset > -8 ? 1 : 0;
        wetLikelier += dry == found.end() || wet->logWeight > dry->logWeight ? 1 : 0;
    }
    EXPECT_EQ(tried, 60);
    EXPECT_GE(wetFound, 48) << "of " << tried;
    EXPECT_GE(wetLikelier, 48) << "of " << tried;
}

TEST(LikelyCauses, WholeDegreesAreNotBlamedForTheirCoarseness) {
    const Page page = inventedYears(4, {50, 100, Exposure::Screen, {1, 0}});
    const StationModel model{page.series()};
    const auto checked = checkSeries(page.series(), 1500, 1500, page.station(), Limits{}, {}, {}, &model);
    const auto marked = std::count_if(checked.begin(), checked.end(), [](const CheckedReading& one) {
        return has(one.findings, "unlikely");
    });
    EXPECT_LE(marked, 15) << "of " << checked.size();
}

TEST(LikelyCauses, SoundReadingsAreSeldomMarked) {
    int marked = 0;
    int judged = 0;
    for (std::size_t i = 1000; i < 4000; i += 3) {
        const auto findings = station().judge(i, station().observation(i));
        marked += has(findings, "unlikely") ? 1 : 0;
        ++judged;
        for (const Finding& finding : findings) {
            double sum = 0;
            for (const auto& cause : finding.causes) {
                sum += cause.weight;
            }
            EXPECT_LE(finding.causes.size(), 3U);
            EXPECT_LE(sum, 1.0 + 1e-9);
        }
    }
    EXPECT_LE(marked, judged / 100) << marked << " of " << judged;
}

TEST(LikelyCauses, ANewBookHasNeighboursOnly) {
    // Ten days are no climate: an impossible pair still gets its cause, ordinary weather no mark.
    const Page years = inventedYears(1);
    const std::span all{years.series()};
    const StationModel young{all.subspan(540, 30)};
    EXPECT_TRUE(young.empty());
    auto written = all[571].values();
    const auto sound = record::deriveReading(written, years.station());
    EXPECT_FALSE(explain(sound, all.subspan(559, 12), {}, young).unlikely);
    written.dry.value->value.mantissa *= 10;
    const auto lost = record::deriveReading(written, years.station());
    const auto explanation = explain(lost, all.subspan(559, 12), {}, young);
    ASSERT_FALSE(explanation.causes.empty());
    EXPECT_EQ(explanation.causes[0].code, "dry-decimal-point") << told(explanation.causes);
    // No neighbours at all: no crash, and no claim.
    EXPECT_FALSE(explain(sound, {}, {}, StationModel{}).unlikely);
}

TEST(LikelyCauses, AReadingWithOneBulbHasNone) {
    auto written = station().observation(3000);
    written.wet.value.reset();
    EXPECT_TRUE(station().causes(3000, written).empty());
}

} // namespace wickbook::checks::test
