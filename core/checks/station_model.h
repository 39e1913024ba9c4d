// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/neighbour_habits.h"
#include "core/climate/station_average.h"
#include "core/record/derived_reading.h"

#include <array>
#include <functional>
#include <map>
#include <optional>
#include <span>
#include <tuple>
#include <vector>

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
///  3. What this leaves over is put down to the three nearest neighbours each way and to the pressures, as
///  the
///     station's own readings at that hour have shown (neighbour_habits.h).
///  4. Per observing hour and two months, with readings after or without, the covariance is brought to the
///     size that the station's own readings have round their expectations.
///  5. Round the expectation, (T, D) has a bivariate Student t of 6.5 degrees of freedom: honest weather
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
    /// keepGoing is asked every few hundred readings: false stops the learning, and the model is of no use.
    explicit StationModel(std::span<const record::DerivedReading> series,
                          const std::function<bool()>& keepGoing = {});

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
        double pressure = 0, pressureSpread = 0;          ///< hPa; no spread where too few were read
    };
    struct MonthlyMiddle {
        std::array<std::optional<Middle>, 12> months; ///< round the middle of each month
    };
    /// Lower triangle that brings the covariance to the station's own size.
    struct Size {
        double temperature = 1, mixed = 0, dewPoint = 1;
    };
    /// What the neighbours say before the habits and the station's own sizes: in spreads.
    struct Ground {
        Middle middle;
        std::vector<NeighbourDeparture> neighbours;
        ExpectedDeparture expected;
        std::optional<double> pressure; ///< the reading's own departure
        bool onlyEarlier = true;
    };
    using SizeKey = std::tuple<int, unsigned, bool>; ///< hour of day, pair of months, only earlier neighbours

    [[nodiscard]] std::optional<Middle> middleOf(const record::DerivedReading& reading) const;
    [[nodiscard]] std::optional<Ground> groundOf(const record::DerivedReading& reading,
                                                 std::span<const record::DerivedReading> before,
                                                 std::span<const record::DerivedReading> after) const;
    [[nodiscard]] Habit habitIn(const record::DerivedReading& reading, const Ground& ground) const;
    [[nodiscard]] Expectation fromNeighboursAlone(const record::DerivedReading& reading,
                                                  std::span<const record::DerivedReading> before,
                                                  std::span<const record::DerivedReading> after) const;
    void learnMiddles(std::span<const record::DerivedReading* const> sound);
    using KeepGoing = std::function<bool()>;
    void learnHabits(std::span<const record::DerivedReading> newest, const KeepGoing& keepGoing);
    void learnSizes(std::span<const record::DerivedReading> newest, const KeepGoing& keepGoing);
    /// Calls take(reading, ground) for sound readings, with what follows them and without.
    template <typename Take>
    void eachGround(std::span<const record::DerivedReading> newest, const KeepGoing& keepGoing,
                    Take take) const;

    std::map<int, MonthlyMiddle> hours_; ///< by hour of day, local
    NeighbourHabits habits_;
    std::map<SizeKey, Size> sizes_;
    std::map<std::pair<unsigned, record::HourOfDay>, climate::StationAverage> averages_;
};

} // namespace wickbook::checks
