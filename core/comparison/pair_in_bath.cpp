// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/pair_in_bath.h"

#include <algorithm>
#include <cmath>

namespace wickbook::comparison {

namespace {

using units::TemperatureUnit;

double stepKelvins(const record::Thermometer& thermometer) {
    return units::scaleDegrees(thermometer.step.toDouble(), thermometer.unit).kelvins();
}

/// Half a scale step as a rectangular distribution.
double readingUncertainty(const record::Thermometer& thermometer) {
    return stepKelvins(thermometer) / (2 * std::sqrt(3.0));
}

double icePointOn(TemperatureUnit unit) {
    return unit == TemperatureUnit::Celsius ? 0.0 : 32.0;
}

/// A difference in kelvins as degrees of the thermometer's scale.
double onScale(double kelvins, TemperatureUnit unit) {
    return kelvins / units::scaleDegrees(1.0, unit).kelvins();
}

std::optional<IcePoint> icePoint(const std::optional<units::ReadTemperature>& read,
                                 const record::Thermometer& thermometer) {
    if (!read) {
        return std::nullopt;
    }
    IcePoint ice;
    ice.off = read->temperature().celsius();
    ice.standardUncertainty = std::hypot(readingUncertainty(thermometer), kIcePointUncertainty);
    ice.correction = -onScale(ice.off, thermometer.unit);
    return ice;
}

PairDifference difference(double value, double standardUncertainty, double tolerance) {
    // Read values are decimals: 0.1 + 0.2 must not exceed 0.3.
    return {value, 2 * standardUncertainty, std::abs(value) > tolerance + 1e-9};
}

} // namespace

PairVerdict judgePair(const record::PairCheck& check, const record::Thermometer& dry,
                      const record::Thermometer& wet) {
    PairVerdict verdict;
    verdict.tolerance = std::max({kPairTolerance, stepKelvins(dry), stepKelvins(wet)});
    verdict.dryAtIce = icePoint(check.dryAtIce, dry);
    verdict.wetAtIce = icePoint(check.wetAtIce, wet);
    const double readings = std::hypot(readingUncertainty(dry), readingUncertainty(wet));
    if (verdict.dryAtIce && verdict.wetAtIce) {
        verdict.atIce = difference(verdict.dryAtIce->off - verdict.wetAtIce->off,
                                   std::hypot(readings, kBathUncertainty), verdict.tolerance);
    }
    if (check.dryInBath && check.wetInBath) {
        const double asRead = (check.dryInBath->temperature() - check.wetInBath->temperature()).kelvins();
        const double uncertainty = std::hypot(readings, kBathUncertainty);
        verdict.inBath = difference(asRead, uncertainty, verdict.tolerance);
        if (verdict.atIce) {
            verdict.inBathCorrected = difference(
                asRead - verdict.atIce->value,
                std::hypot(uncertainty, verdict.atIce->expandedUncertainty / 2), verdict.tolerance);
        }
    }
    return verdict;
}

record::Correction correctionFromIce(const IcePoint& ice, const record::Thermometer& thermometer,
                                     const record::Correction* known) {
    record::Correction correction;
    correction.thermometer = thermometer.id;
    correction.standardUncertainty = onScale(ice.standardUncertainty, thermometer.unit);
    const double zero = icePointOn(thermometer.unit);
    if (known == nullptr || known->points.empty()) {
        correction.points = {{zero, ice.correction}};
        return correction;
    }
    const double reading = zero - ice.correction;
    const double shift = ice.correction - record::correctionAtReading(*known, reading);
    correction.points = known->points;
    for (record::CorrectionPoint& point : correction.points) {
        point.correction += shift;
    }
    correction.standardUncertainty = std::max(correction.standardUncertainty, known->standardUncertainty);
    return correction;
}

std::vector<record::Correction> iceCorrections(const record::StationRecord& station,
                                               const record::PairCheck& check, const std::string& source) {
    const record::Thermometer* dry = station.thermometer(check.dry);
    const record::Thermometer* wet = station.thermometer(check.wet);
    if (dry == nullptr || wet == nullptr) {
        return {};
    }
    const PairVerdict verdict = judgePair(check, *dry, *wet);
    const record::Instant from = record::startOfDate(check.date, station);
    std::vector<record::Correction> corrections;
    const auto add = [&](const std::optional<IcePoint>& ice, const record::Thermometer& thermometer) {
        if (ice) {
            record::Correction made =
                correctionFromIce(*ice, thermometer, station.correctionAt(thermometer.id, from));
            made.id = record::Uuid::random();
            made.from = from;
            made.source = source;
            corrections.push_back(std::move(made));
        }
    };
    add(verdict.dryAtIce, *dry);
    add(verdict.wetAtIce, *wet);
    return corrections;
}

} // namespace wickbook::comparison
