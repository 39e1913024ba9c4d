// SPDX-License-Identifier: GPL-3.0-or-later
// How long pairs take to derive, by Google Benchmark: the equation one by one, over columns with the
// instructions every processor has and with the widest at hand, and all that derive() gives. Nothing is
// asserted; the table of all measurements reads what --benchmark_format=json writes.
#include "core/psychrometry/derive.h"
#include "core/psychrometry/humidity_columns.h"

#include <benchmark/benchmark.h>

#include <cmath>
#include <numbers>
#include <random>
#include <vector>

using namespace wickbook;
using namespace wickbook::psychrometry;

namespace {

/// As much as stays close to the processor, over and over, so that arithmetic is measured and not memory.
constexpr std::size_t kPairs = 1'024;

/// A year of air in a register's order: whirled, −15…33 °C, 15…100 %, ice below zero.
const std::vector<PairInput>& readPairs() {
    static const std::vector<PairInput> kMade = [] {
        std::mt19937_64 random(1);
        std::uniform_real_distribution<double> weather(-12, 12);
        std::uniform_real_distribution<double> humidity(15, 100);
        std::vector<PairInput> made;
        while (made.size() < kPairs) {
            PairInput input;
            const double season = -std::cos(2 * std::numbers::pi * static_cast<double>(made.size()) /
                                            static_cast<double>(kPairs));
            input.dry = units::Temperature::fromCelsius(9 + 12 * season + weather(random));
            const auto bulb = input.dry.celsius() < 0 ? Surface::Ice : Surface::Water;
            const auto wet = wetBulbFor(input.dry, units::RelativeHumidity::fromPercent(humidity(random)),
                                        bulb, input.pressure, input.coefficient);
            if (wet) {
                input.wet = *wet;
                input.wick = bulb == Surface::Ice ? WickState::Ice : WickState::Water;
                made.push_back(input);
            }
        }
        return made;
    }();
    return kMade;
}

struct EquationInput {
    std::vector<EquationPair> rows;
    std::vector<double> dry, wet, pressure, perKelvin, enhancement;
    std::vector<Surface> bulb;

    EquationInput() {
        for (const PairInput& input : readPairs()) {
            const auto surface = input.wick == WickState::Ice ? Surface::Ice : Surface::Water;
            const auto c = coefficientFor(input.coefficient.exposure, surface, input.wet, input.pressure);
            rows.push_back({input.dry.celsius(), input.wet.celsius(), surface, input.pressure.hectopascals(),
                            c.perKelvin, c.enhancement});
            dry.push_back(rows.back().dry);
            wet.push_back(rows.back().wet);
            bulb.push_back(surface);
            pressure.push_back(rows.back().pressure);
            perKelvin.push_back(c.perKelvin);
            enhancement.push_back(c.enhancement);
        }
    }
};

const EquationInput& equationInput() {
    static const EquationInput kMade;
    return kMade;
}

void counted(benchmark::State& state) {
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(kPairs));
}

void equationOneByOne(benchmark::State& state) {
    const auto& rows = equationInput().rows;
    for ([[maybe_unused]] const auto round : state) {
        for (const EquationPair& pair : rows) {
            benchmark::DoNotOptimize(humidityOf(pair));
        }
    }
    counted(state);
}

void equationColumns(benchmark::State& state, Width width) {
    const EquationInput& in = equationInput();
    std::vector<double> e(kPairs);
    std::vector<double> humidity(kPairs);
    std::vector<double> dew(kPairs);
    for ([[maybe_unused]] const auto round : state) {
        humidityOf({in.dry, in.wet, in.bulb, in.pressure, in.perKelvin, in.enhancement}, {e, humidity, dew},
                   width);
        benchmark::DoNotOptimize(dew.data());
        benchmark::ClobberMemory();
    }
    counted(state);
}

void deriveOneByOne(benchmark::State& state) {
    for ([[maybe_unused]] const auto round : state) {
        for (const PairInput& input : readPairs()) {
            benchmark::DoNotOptimize(derive(input));
        }
    }
    counted(state);
}

BENCHMARK(equationOneByOne);
BENCHMARK_CAPTURE(equationColumns, baseline, Width::Baseline);
BENCHMARK_CAPTURE(equationColumns, widest, Width::Widest);
BENCHMARK(deriveOneByOne);

} // namespace

BENCHMARK_MAIN();
