// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/check_series.h"

#include "core/checks/copied_days.h"
#include "core/checks/rule_support.h"
#include "core/checks/station_model.h"

#include <algorithm>
#include <map>

namespace wickbook::checks {

namespace {

bool isLive(const record::DerivedReading& reading) {
    return !reading.values().withdrawn && reading.values().origin != record::Origin::Missing;
}

/// The live readings side by side, so that a context can be a window onto them. Copies only where something
/// must be left out.
class LiveSeries {
public:
    explicit LiveSeries(std::span<const record::DerivedReading> series) : all_(series) {
        if (std::all_of(series.begin(), series.end(), isLive)) {
            return;
        }
        positions_.reserve(series.size());
        for (const auto& reading : series) {
            positions_.push_back(kept_.size());
            if (isLive(reading)) {
                kept_.push_back(reading);
            }
        }
        all_ = kept_;
    }
    LiveSeries(const LiveSeries&) = delete;
    LiveSeries& operator=(const LiveSeries&) = delete;

    [[nodiscard]] std::span<const record::DerivedReading> before(std::size_t index) const {
        const std::size_t position = positionOf(index);
        const std::size_t count = std::min<std::size_t>(position, kNeighboursBefore);
        return all_.subspan(position - count, count);
    }
    /// Pre: the reading at index is live.
    [[nodiscard]] std::span<const record::DerivedReading> after(std::size_t index) const {
        const std::size_t next = positionOf(index) + 1;
        return all_.subspan(next, std::min<std::size_t>(all_.size() - next, kNeighboursAfter));
    }

private:
    [[nodiscard]] std::size_t positionOf(std::size_t index) const {
        return positions_.empty() ? index : positions_[index];
    }
    std::span<const record::DerivedReading> all_;
    std::vector<record::DerivedReading> kept_;
    std::vector<std::size_t> positions_;
};

/// Month and hour of day of a reading that has an observing hour.
using Slot = std::pair<unsigned, long>;

std::optional<Slot> slotOf(const record::DerivedReading& reading) {
    const auto& hour = reading.values().hour;
    return hour ? std::optional{Slot{monthOf(reading), hour->hour.count()}} : std::nullopt;
}

std::map<Slot, climate::StationAverage> averagesOf(std::span<const record::DerivedReading> series,
                                                   int fewestYears) {
    std::map<Slot, std::vector<const record::DerivedReading*>> bySlot;
    for (const auto& reading : series) {
        if (const auto slot = slotOf(reading); slot && isSoundNeighbour(reading)) {
            bySlot[*slot].push_back(&reading);
        }
    }
    std::map<Slot, climate::StationAverage> averages;
    for (const auto& [slot, readings] : bySlot) {
        if (const auto average = climate::stationAverage(readings, fewestYears)) {
            averages.emplace(slot, *average);
        }
    }
    return averages;
}

} // namespace

std::vector<CheckedReading> checkSeries(
    std::span<const record::DerivedReading> series, std::size_t first, std::size_t count,
    const record::StationRecord& station, const StationLimits& limits, std::optional<record::Instant> now,
    const std::function<bool(std::size_t done, std::size_t total)>& progress, const StationModel* model) {
    constexpr std::size_t kProgressEvery = 256;
    first = std::min(first, series.size());
    count = std::min(count, series.size() - first);

    const LiveSeries live{series};
    const auto averages = averagesOf(series, static_cast<int>(limits.lowest("climatology.years")));
    std::vector<CheckedReading> checked;
    checked.reserve(count);
    for (std::size_t index = first; index < first + count; ++index) {
        if (progress && (index - first) % kProgressEvery == 0 && !progress(index - first, count)) {
            return checked;
        }
        const record::DerivedReading& reading = series[index];
        CheckedReading result{reading, {}, false};
        if (isLive(reading)) {
            std::optional<climate::StationAverage> average;
            if (const auto slot = slotOf(reading)) {
                if (model != nullptr) {
                    average = model->average(slot->first, record::HourOfDay{slot->second});
                }
                if (const auto found = averages.find(*slot); !average && found != averages.end()) {
                    average = found->second;
                }
            }
            result.findings =
                checkReading({reading, station, limits.at(reading.values().instant), live.before(index),
                              live.after(index), now, false, average, model});
        }
        result.leftOut = leftOut(reading.values(), result.findings);
        checked.push_back(std::move(result));
    }
    markCopiedDays(
        series, first, [&](record::Instant at, std::string_view name) { return limits.at(at).value(name); },
        checked);
    if (progress) {
        progress(count, count);
    }
    return checked;
}

} // namespace wickbook::checks
