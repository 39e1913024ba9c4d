// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/beside_reference.h"

namespace wickbook::comparison {

namespace {

std::size_t bandOf(double humidity) {
    std::size_t band = 0;
    while (band + 2 < kBandEdges.size() && humidity >= kBandEdges.at(band + 1)) {
        ++band;
    }
    return band;
}

std::vector<double> values(const std::vector<HumidityDifference>& differences, auto of) {
    std::vector<double> result;
    result.reserve(differences.size());
    for (const HumidityDifference& each : differences) {
        result.push_back(of(each));
    }
    return result;
}

void spreadByBand(BesideReference& result) {
    std::array<std::vector<double>, 4> inBand;
    for (const HumidityDifference& each : result.differences) {
        inBand.at(bandOf(each.reference)).push_back(each.difference());
    }
    for (std::size_t band = 0; band < inBand.size(); ++band) {
        const std::vector<double>& differences = inBand.at(band);
        BandSpread& spread = result.bands.at(band);
        spread = {kBandEdges.at(band), kBandEdges.at(band + 1), differences.size(), {}, {}};
        if (differences.size() == 1) {
            spread.bias = differences.front();
        } else if (const auto mean = meanOf(differences)) {
            spread.bias = mean->value;
            spread.deviation = deviationOf(differences);
        }
    }
}

} // namespace

std::optional<double> referenceVapourPressure(const ComparedPair& pair) {
    const auto air = pair.referenceTemperature ? units::Temperature::fromCelsius(*pair.referenceTemperature)
                                               : pair.own.dry;
    const auto saturation = psychrometry::saturationVapourPressure(air, psychrometry::Surface::Water);
    if (!saturation) {
        return std::nullopt;
    }
    return pair.referenceHumidity / 100.0 * saturation->hectopascals();
}

BesideReference compareWithReference(std::span<const ComparedPair> pairs) {
    BesideReference result;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const auto derived = psychrometry::derive(pairs[i].own);
        if (!derived.relativeHumidity) {
            ++result.withoutHumidity;
            continue;
        }
        result.differences.push_back({i, derived.relativeHumidity->percent(), pairs[i].referenceHumidity,
                                      derived.depression.kelvins(), pairs[i].windBeaufort});
    }
    const auto off = values(result.differences, [](const auto& each) { return each.difference(); });
    result.bias = meanOf(off);
    result.deviation = deviationOf(off);
    spreadByBand(result);
    result.onDepression =
        fitLine(values(result.differences, [](const auto& each) { return each.depression; }), off);
    std::vector<double> wind;
    std::vector<double> offInWind;
    for (const HumidityDifference& each : result.differences) {
        if (each.windBeaufort) {
            wind.push_back(*each.windBeaufort);
            offInWind.push_back(each.difference());
        }
    }
    result.onWind = fitLine(wind, offInWind);
    return result;
}

} // namespace wickbook::comparison
