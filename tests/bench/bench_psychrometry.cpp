// SPDX-License-Identifier: GPL-3.0-or-later
// How long a book of readings takes to derive: the batch, the same one by one, and the bare equation (vapour
// pressure and humidity alone) as the yardstick. The ratios are printed at the end; nothing is asserted.
#include "core/psychrometry/derive.h"

#include <benchmark/benchmark.h>

#include <cstdio>
#include <map>
#include <random>
#include <string>

using namespace wickbook;
using namespace wickbook::psychrometry;

namespace {

/// Ten years of hourly readings.
constexpr std::size_t kPairs = 87'600;

/// Air as it may be over the years: whirled, −15…32 °C, 15…100 %, ice below zero.
const std::vector<PairInput>& pairs() {
    static const std::vector<PairInput> kMade = [] {
        std::mt19937_64 random(1);
        std::uniform_real_distribution<double> temperature(-15, 32);
        std::uniform_real_distribution<double> humidity(15, 100);
        std::vector<PairInput> made;
        while (made.size() < kPairs) {
            PairInput input;
            input.dry = units::Temperature::fromCelsius(temperature(random));
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

void batch(benchmark::State& state) {
    for ([[maybe_unused]] const auto round : state) {
        benchmark::DoNotOptimize(deriveAll(pairs()));
    }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(kPairs));
}
BENCHMARK(batch)->Unit(benchmark::kMillisecond);

void oneByOne(benchmark::State& state) {
    for ([[maybe_unused]] const auto round : state) {
        for (const PairInput& input : pairs()) {
            benchmark::DoNotOptimize(derive(input));
        }
    }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(kPairs));
}
BENCHMARK(oneByOne)->Unit(benchmark::kMillisecond);

void bareEquation(benchmark::State& state) {
    for ([[maybe_unused]] const auto round : state) {
        for (const PairInput& input : pairs()) {
            const auto bulb = input.wick == WickState::Ice ? Surface::Ice : Surface::Water;
            const auto c = coefficientFor(Exposure::Whirled, bulb, input.wet, input.pressure);
            const auto e = vapourPressure(input.dry, input.wet, bulb, input.pressure, c);
            benchmark::DoNotOptimize(e ? relativeHumidity(*e, input.dry, c.enhancement)
                                       : tl::unexpected(PsychrometryError::NoVapour));
        }
    }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(kPairs));
}
BENCHMARK(bareEquation)->Unit(benchmark::kMillisecond);

class Remembering : public benchmark::ConsoleReporter {
public:
    void ReportRuns(const std::vector<Run>& runs) override {
        for (const Run& run : runs) {
            times[run.run_name.function_name] = run.GetAdjustedRealTime();
        }
        ConsoleReporter::ReportRuns(runs);
    }
    std::map<std::string, double> times;
};

} // namespace

int main(int count, char** arguments) {
    benchmark::Initialize(&count, arguments);
    if (benchmark::ReportUnrecognizedArguments(count, arguments)) {
        return 1;
    }
    Remembering reporter;
    benchmark::RunSpecifiedBenchmarks(&reporter);
    const double batchTime = reporter.times["batch"];
    if (batchTime > 0) {
        std::printf("one by one / batch: %.2f   batch / bare equation: %.2f\n",
                    reporter.times["oneByOne"] / batchTime, batchTime / reporter.times["bareEquation"]);
    }
    return 0;
}
