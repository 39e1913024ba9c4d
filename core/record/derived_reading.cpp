// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/derived_reading.h"

#include "core/psychrometry/standard_atmosphere.h"

#include <cmath>

namespace wickbook::record {

namespace {

/// Standard uncertainty of a pressure read and of the usual one (a mean, or from the elevation), hPa: our
/// judgement, the weather moves the station pressure by about 10 hPa round its mean.
constexpr double kReadPressureUncertainty = 1.0;
constexpr double kUsualPressureUncertainty = 10.0;

UsedBulb useBulb(const BulbReading& read, const Thermometer* thermometer, const StationRecord& station,
                 Instant instant) {
    UsedBulb used;
    if (thermometer != nullptr) {
        used.step = units::scaleDegrees(thermometer->step.toDouble(), thermometer->unit);
    }
    if (read.belowScale) {
        used.offScale = true;
        return used;
    }
    if (!read.value) {
        return used;
    }
    const units::Temperature asRead = read.value->temperature();
    if (thermometer == nullptr) {
        used.temperature = asRead;
        return used;
    }
    // The thermometer's own unit is what its marks and its correction table speak of.
    const bool celsius = thermometer->unit == units::TemperatureUnit::Celsius;
    const double onScale = read.value->unit == thermometer->unit ? read.value->value.toDouble()
                           : celsius                             ? asRead.celsius()
                                                                 : asRead.fahrenheit();
    // Half a step past the last mark can still be judged by eye.
    const double slack = thermometer->step.toDouble() / 2 + 1e-9;
    used.offScale = onScale < thermometer->lowestMark.toDouble() - slack ||
                    onScale > thermometer->highestMark.toDouble() + slack;
    if (const Correction* correction = station.correctionAt(thermometer->id, instant)) {
        used.correction = units::scaleDegrees(correctionAtReading(*correction, onScale), thermometer->unit);
    }
    used.temperature = asRead + used.correction;
    return used;
}

double correctionUncertainty(const Thermometer* thermometer, const StationRecord& station, Instant instant) {
    const Correction* correction =
        thermometer == nullptr ? nullptr : station.correctionAt(thermometer->id, instant);
    return correction == nullptr
               ? 0.0
               : units::scaleDegrees(correction->standardUncertainty, thermometer->unit).kelvins();
}

} // namespace

psychrometry::CoefficientRule coefficientRule(const StationPeriod& period) {
    psychrometry::CoefficientRule rule;
    rule.exposure = period.exposure;
    if (period.exposure == psychrometry::Exposure::Own && period.ownCoefficient) {
        rule.perKelvin = period.ownCoefficient->waterPerKelvin;
        rule.perKelvinIce = period.ownCoefficient->icePerKelvin;
        rule.relativeUncertainty = period.ownCoefficient->relativeUncertainty;
    }
    return rule;
}

std::string_view pressureSourceName(PressureSource source) {
    return source == PressureSource::Read          ? "read"
           : source == PressureSource::StationMean ? "station-mean"
                                                   : "elevation";
}

std::optional<double> DerivedReading::humidityPercent() const {
    if (derivation && derivation->relativeHumidity) {
        return derivation->relativeHumidity->percent();
    }
    return std::nullopt;
}

std::optional<double> DerivedReading::dewPointCelsius() const {
    if (derivation && derivation->dewPoint) {
        return derivation->dewPoint->celsius();
    }
    return std::nullopt;
}

std::optional<double> DerivedReading::vapourPressureHectopascals() const {
    if (derivation && derivation->vapourPressure) {
        return derivation->vapourPressure->hectopascals();
    }
    return std::nullopt;
}

DerivedReading deriveReading(StoredObservation stored, const StationRecord& station) {
    DerivedReading reading;
    reading.stored = std::move(stored);
    const Observation& values = reading.stored.values;
    const Instant instant = values.instant;
    const StationPeriod& period = station.periodAt(instant);
    const Thermometer* dryThermometer = station.dryThermometerAt(instant);
    const Thermometer* wetThermometer = station.wetThermometerAt(instant);

    reading.dry = useBulb(values.dry, dryThermometer, station, instant);
    reading.wet = useBulb(values.wet, wetThermometer, station, instant);

    if (values.pressure) {
        reading.pressure = units::Pressure::fromHectopascals(values.pressure->toDouble());
        reading.pressureSource = PressureSource::Read;
    } else if (period.meanPressure) {
        reading.pressure = units::Pressure::fromHectopascals(*period.meanPressure);
        reading.pressureSource = PressureSource::StationMean;
    } else {
        reading.pressure =
            psychrometry::standardPressure(period.elevation)
                .value_or(units::Pressure::fromHectopascals(psychrometry::kStandardSeaLevelHectopascals));
        reading.pressureSource = PressureSource::Elevation;
    }

    if (!reading.dry.temperature || !reading.wet.temperature || reading.dry.offScale ||
        reading.wet.offScale) {
        return reading;
    }
    psychrometry::PairInput& input = reading.input;
    input.dry = *reading.dry.temperature;
    input.wet = *reading.wet.temperature;
    input.wick = values.wick;
    input.pressure = reading.pressure;
    input.coefficient = coefficientRule(period);
    input.resolution = std::max(reading.dry.step, reading.wet.step);
    input.wetCorrection =
        units::TemperatureDifference::fromKelvins(std::abs(reading.wet.correction.kelvins()));
    input.uncertainty.dryCorrectionKelvins = correctionUncertainty(dryThermometer, station, instant);
    input.uncertainty.wetCorrectionKelvins = correctionUncertainty(wetThermometer, station, instant);
    input.uncertainty.pressureHectopascals =
        values.pressure ? kReadPressureUncertainty : kUsualPressureUncertainty;
    reading.derivation = psychrometry::derive(input);
    return reading;
}

DerivedReading deriveReading(const Observation& observation, const StationRecord& station) {
    StoredObservation entry;
    entry.values = observation;
    return deriveReading(std::move(entry), station);
}

} // namespace wickbook::record
