// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/climate/station_average.h"
#include "core/record/derived_reading.h"

#include <array>
#include <map>
#include <optional>
#include <span>

/// What this station usually reads, and how far a reading may stand from what its neighbours in time lead one
/// to expect. Needed to say which slip explains a reading (likely_causes.h).
///
/// The model, symbols T dry bulb and D dew point, °C:
///  1. Per observing hour, the middle (median) and spread (quartile range / 1.349) of T and D round the
///  middle of
///     each month, straight lines between; a = (value − middle) / spread is a reading's departure.
///  2. Departures of T and D go together and fade with time: cov(a(s), a(t)) = B exp(−|s − t| / 85 h), and N
///  more
///     for s = t. B and N are 2×2, measured on a manual register of fifteen years read two and three times a
///     day. The expectation from neighbours is the best linear one (kriging); its weights fall off over the
///     first day much as exp(−Δt / 18 h), and its variance says how much the neighbours know; where they
///     stand far from one another (fronts), it is wider.
///  3. Per observing hour and two months, the covariance is brought to the size that the station's own
///  readings
///     have round their expectations.
///  4. Round the expectation, (T, D) has a bivariate Student t of 6.5 degrees of freedom: honest weather
///  jumps.
/// An hour or month with too few readings has no middle of its own: then the neighbours' own mean serves,
/// with a spread wide enough for the difference between day and night. An empty model works that way
/// throughout.
///
/// A value; built once from a series, at most the newest 12,000 readings of it, so that its cost does not
/// grow with the age of the book.

namespace wickbook::checks {

/// Expectation of the dry bulb and the dew point at a moment, with covariance; °C, K².
struct Expectation {
    double temperature = 0;
    double dewPoint = 0;
    double varianceTemperature = 1;
    double varianceDewPoint = 1;
    double covariance = 0;
    int neighbours = 0; ///< how many readings it leans on

    /// Squared distance of a pair from the expectation, in the covariance's own measure.
    [[nodiscard]] double distance(double temperatureCelsius, double dewPointCelsius) const;
    /// Log density of the Student t at a pair, per K².
    [[nodiscard]] double logDensity(double temperatureCelsius, double dewPointCelsius) const;
    /// Log density of the dry bulb alone, per K.
    [[nodiscard]] double logDensityTemperature(double temperatureCelsius) const;
};

class StationModel {
public:
    /// Knows nothing of the station.
    StationModel() = default;
    /// Takes the sound ones out of a series in time order: a pair that can be, not judged bad, no estimate.
    explicit StationModel(std::span<const record::DerivedReading> series);

    /// What the neighbours lead one to expect at the reading's moment; the reading's own values are not used.
    /// before newest last, after nearest first; unsound ones and ones far out of line are passed over.
    [[nodiscard]] Expectation expectation(const record::DerivedReading& reading,
                                          std::span<const record::DerivedReading> before,
                                          std::span<const record::DerivedReading> after) const;

    /// The station average of a month (1…12) and nominal hour, where three years are known.
    [[nodiscard]] std::optional<climate::StationAverage> average(unsigned month,
                                                                 record::HourOfDay hour) const;

    [[nodiscard]] bool empty() const { return hours_.empty(); }

private:
    struct Middle {
        double temperature = 0, dewPoint = 0;             ///< median, °C
        double temperatureSpread = 1, dewPointSpread = 1; ///< K
    };
    struct MonthlyMiddle {
        std::array<std::optional<Middle>, 12> months; ///< round the middle of each month
    };
    /// Lower triangle that brings the covariance to the station's own size.
    struct Size {
        double temperature = 1, mixed = 0, dewPoint = 1;
    };
    struct Departure {
        double hours = 0; ///< from the reading in question
        double temperature = 0, dewPoint = 0;
    };

    [[nodiscard]] std::optional<Middle> middleOf(const record::DerivedReading& reading) const;
    [[nodiscard]] std::optional<Departure> departureOf(const record::DerivedReading& neighbour,
                                                       const record::DerivedReading& reading) const;
    [[nodiscard]] Expectation fromNeighboursAlone(const record::DerivedReading& reading,
                                                  std::span<const record::DerivedReading> before,
                                                  std::span<const record::DerivedReading> after) const;
    void learnMiddles(std::span<const record::DerivedReading* const> sound);
    void learnSizes(std::span<const record::DerivedReading> newest);

    std::map<int, MonthlyMiddle> hours_;             ///< by hour of day, local
    std::map<std::pair<int, unsigned>, Size> sizes_; ///< by hour of day and pair of months
    std::map<std::pair<unsigned, record::HourOfDay>, climate::StationAverage> averages_;
};

} // namespace wickbook::checks
