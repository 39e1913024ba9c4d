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

/// The live readings round each place of a series, so that a context can be a window onto them. Where
/// something between them must be left out, which is seldom, the few that are wanted are copied.
class LiveSeries {
public:
    explicit LiveSeries(std::span<const record::DerivedReading> series) : all_(series) {}
    LiveSeries(const LiveSeries&) = delete;
    LiveSeries& operator=(const LiveSeries&) = delete;

    /// Valid until it is asked again.
    [[nodiscard]] std::span<const record::DerivedReading> before(std::size_t index) {
        const std::size_t wanted = std::min<std::size_t>(index, kNeighboursBefore);
        const auto window = all_.subspan(index - wanted, wanted);
        if (std::all_of(window.begin(), window.end(), isLive)) {
            return window;
        }
        before_.clear();
        for (std::size_t i = index; i > 0 && before_.size() < kNeighboursBefore; --i) {
            if (isLive(all_[i - 1])) {
                before_.push_back(all_[i - 1]);
            }
        }
        std::reverse(before_.begin(), before_.end());
        return before_;
    }
    [[nodiscard]] std::span<const record::DerivedReading> after(std::size_t index) {
        const std::size_t wanted = std::min<std::size_t>(all_.size() - index - 1, kNeighboursAfter);
        const auto window = all_.subspan(index + 1, wanted);
        if (std::all_of(window.begin(), window.end(), isLive)) {
            return window;
        }
        after_.clear();
        for (std::size_t i = index + 1; i < all_.size() && after_.size() < kNeighboursAfter; ++i) {
            if (isLive(all_[i])) {
                after_.push_back(all_[i]);
            }
        }
        return after_;
    }

private:
    std::span<const record::DerivedReading> all_;
    std::vector<record::DerivedReading> before_, after_;
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

using SeriesProgress = std::function<bool(std::size_t done, std::size_t total)>;

std::vector<Judgement> judgeSeries(std::span<const record::DerivedReading> series, std::size_t first,
                                   std::size_t count, const record::StationRecord& station,
                                   const StationLimits& limits, std::optional<record::Instant> now,
                                   const SeriesProgress& progress, const StationModel* model, Slips slips) {
    constexpr std::size_t kProgressEvery = 256;
    LiveSeries live{series};
    const auto averages = averagesOf(series, static_cast<int>(limits.lowest("climatology.years")));
    std::vector<Judgement> judged;
    judged.reserve(count);
    for (std::size_t index = first; index < first + count; ++index) {
        if (progress && (index - first) % kProgressEvery == 0 && !progress(index - first, count)) {
            return judged;
        }
        const record::DerivedReading& reading = series[index];
        Judgement result;
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
                              live.after(index), now, false, average, model, slips});
        }
        result.leftOut = leftOut(reading.values(), result.findings);
        judged.push_back(std::move(result));
    }
    markCopiedDays(
        series, first, [&](record::Instant at, std::string_view name) { return limits.at(at).value(name); },
        judged);
    if (progress) {
        progress(count, count);
    }
    return judged;
}

} // namespace

std::vector<CheckedReading> checkSeries(std::span<const record::DerivedReading> series, std::size_t first,
                                        std::size_t count, const record::StationRecord& station,
                                        const StationLimits& limits, std::optional<record::Instant> now,
                                        const SeriesProgress& progress, const StationModel* model,
                                        Slips slips) {
    first = std::min(first, series.size());
    count = std::min(count, series.size() - first);
    auto judged = judgeSeries(series, first, count, station, limits, now, progress, model, slips);
    std::vector<CheckedReading> checked;
    checked.reserve(judged.size());
    for (std::size_t i = 0; i < judged.size(); ++i) {
        checked.push_back({series[first + i], std::move(judged[i].findings), judged[i].leftOut});
    }
    return checked;
}

std::vector<CheckedReading> checkWholeSeries(std::vector<record::DerivedReading> series,
                                             const record::StationRecord& station,
                                             const StationLimits& limits, std::optional<record::Instant> now,
                                             const SeriesProgress& progress, const StationModel* model,
                                             Slips slips) {
    auto judged = judgeSeries(series, 0, series.size(), station, limits, now, progress, model, slips);
    std::vector<CheckedReading> checked;
    checked.reserve(judged.size());
    for (std::size_t i = 0; i < judged.size(); ++i) {
        checked.push_back({std::move(series[i]), std::move(judged[i].findings), judged[i].leftOut});
    }
    return checked;
}

} // namespace wickbook::checks
