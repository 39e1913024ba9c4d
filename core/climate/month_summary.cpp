// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: e vapour pressure hPa, f enhancement factor, t_d dew point °C.
// Source:  dew point of the mean vapour pressure by the exact inverse of core/psychrometry/saturation.h;
//          when a mean is given: completeness.h.
// Range:   as the readings'.
#include "core/climate/month_summary.h"

#include "core/psychrometry/saturation.h"

#include <algorithm>
#include <map>
#include <set>

namespace wickbook::climate {

namespace {

/// Computed humidities carry binary dust: 95 % read as 94.99999999999 is still at the threshold.
constexpr double kBinaryFraction = 1e-9;

class Mean {
public:
    void add(double value) {
        sum_ += value;
        ++count_;
    }
    [[nodiscard]] int count() const { return count_; }
    [[nodiscard]] std::optional<double> value() const {
        return count_ == 0 ? std::nullopt : std::optional{sum_ / count_};
    }

private:
    double sum_ = 0;
    int count_ = 0;
};

struct Means {
    Mean dry, wet, vapour, enhancement, dewPoint, humidity, depression;
};

/// One planned hour with what stands under it.
struct Slot {
    record::ExpectedHour expected;
    const MonthEntry* entry = nullptr;
    EntryKind kind = EntryKind::Missing;
};

void keepExtremes(std::optional<Extreme>& highest, std::optional<Extreme>& lowest, double value,
                  const Slot& slot) {
    const Extreme extreme{value, slot.expected.hour, slot.entry->reading->values().instant};
    // Slots come in time order, so "strictly beyond" leaves ties to the earliest; saturated air is 100 % but
    // for the last binary digit.
    if (!highest || value > highest->value + kBinaryFraction) {
        highest = extreme;
    }
    if (!lowest || value < lowest->value - kBinaryFraction) {
        lowest = extreme;
    }
}

void keepAllExtremes(HourSummary& summary, const Slot& slot) {
    const record::DerivedReading& reading = *slot.entry->reading;
    if (const auto humidity = reading.humidityPercent()) {
        keepExtremes(summary.highestHumidity, summary.lowestHumidity, *humidity, slot);
    }
    if (const auto dewPoint = reading.dewPointCelsius()) {
        keepExtremes(summary.highestDewPoint, summary.lowestDewPoint, *dewPoint, slot);
    }
    if (const auto vapour = reading.vapourPressureHectopascals()) {
        keepExtremes(summary.highestVapourPressure, summary.lowestVapourPressure, *vapour, slot);
    }
    keepExtremes(summary.highestDepression, summary.lowestDepression,
                 reading.derivation->depression.kelvins(), slot);
}

void addToMeans(Means& means, const record::DerivedReading& reading) {
    if (reading.dry.temperature) {
        means.dry.add(reading.dry.temperature->celsius());
    }
    if (reading.wet.temperature) {
        means.wet.add(reading.wet.temperature->celsius());
    }
    if (const auto vapour = reading.vapourPressureHectopascals()) {
        means.vapour.add(*vapour);
    }
    if (reading.derivation->coefficient) {
        means.enhancement.add(reading.derivation->coefficient->enhancement);
    }
    if (const auto dewPoint = reading.dewPointCelsius()) {
        means.dewPoint.add(*dewPoint);
    }
    if (const auto humidity = reading.humidityPercent()) {
        means.humidity.add(*humidity);
    }
    means.depression.add(reading.derivation->depression.kelvins());
}

std::optional<double> dewPointOfMean(const std::optional<double>& vapour,
                                     const std::optional<double>& enhancement) {
    if (!vapour) {
        return std::nullopt;
    }
    const auto dewPoint =
        psychrometry::dewPoint(units::VapourPressure::fromHectopascals(*vapour), enhancement.value_or(1.0));
    return dewPoint ? std::optional{dewPoint->celsius()} : std::nullopt;
}

void setMeans(HourSummary& summary, const Means& means, int needed) {
    const auto whole = [needed](const Mean& mean) {
        return mean.count() == needed ? mean.value() : std::nullopt;
    };
    summary.meanDry = whole(means.dry);
    summary.meanWet = whole(means.wet);
    summary.meanVapourPressure = whole(means.vapour);
    summary.dewPointOfMeanVapourPressure =
        dewPointOfMean(summary.meanVapourPressure, means.enhancement.value());
    summary.meanDewPoint = whole(means.dewPoint);
    summary.meanHumidity = whole(means.humidity);
    summary.meanDepression = whole(means.depression);
}

/// Days of one kind, each counted once.
struct DayCounts {
    std::set<record::StationDate> high, low, fog;
};

void countDays(DayCounts& days, const Slot& slot, const MonthOptions& options) {
    if (slot.entry == nullptr) {
        return;
    }
    const record::DerivedReading& reading = *slot.entry->reading;
    if (reading.values().weather && reading.values().weather->has(record::Weather::Fog)) {
        days.fog.insert(slot.expected.hour.date);
    }
    const auto humidity = reading.humidityPercent();
    if (slot.kind != EntryKind::Counted || !humidity) {
        return;
    }
    if (*humidity >= options.highThreshold - kBinaryFraction) {
        days.high.insert(slot.expected.hour.date);
    }
    if (*humidity <= options.lowThreshold + kBinaryFraction) {
        days.low.insert(slot.expected.hour.date);
    }
}

void setDays(HourSummary& summary, const DayCounts& days) {
    summary.daysAtOrAbove95 = static_cast<int>(days.high.size());
    summary.daysAtOrBelow40 = static_cast<int>(days.low.size());
    summary.daysWithFog = static_cast<int>(days.fog.size());
}

void countSlot(HourSummary& summary, const Slot& slot) {
    ++summary.expected;
    summary.n += slot.kind == EntryKind::Counted ? 1 : 0;
    summary.setAside += slot.kind == EntryKind::SetAside ? 1 : 0;
    summary.missing += slot.kind == EntryKind::Missing ? 1 : 0;
}

/// Whether the plan holds this hour on a day where it has no moment: then the clock change jumped over it.
bool isSkipped(const record::StationRecord& station, const record::ObservingHour& hour) {
    const record::LocalTime nominal = record::LocalTime{hour.date} + hour.hour;
    const record::Instant about{nominal.time_since_epoch()};
    const record::StationPeriod& period =
        station.periodAt(about - station.periodAt(about).zone.offsetAt(about));
    return period.hourRule == record::HourRule::Clock &&
           std::find(period.hours.begin(), period.hours.end(), hour.hour) != period.hours.end() &&
           std::holds_alternative<record::ImpossibleTime>(record::resolveLocal(period.zone, nominal));
}

std::vector<DayState> dayStates(const record::StationRecord& station, date::year_month month,
                                record::HourOfDay hour, const std::vector<Slot>& slots) {
    std::map<record::StationDate, EntryKind> kinds;
    for (const Slot& slot : slots) {
        kinds.emplace(slot.expected.hour.date, slot.kind);
    }
    const record::StationDate first{month / 1};
    const record::StationDate last{month / date::last};
    std::vector<DayState> states;
    for (record::StationDate day = first; day <= last; day += date::days{1}) {
        const auto found = kinds.find(day);
        if (found == kinds.end()) {
            states.push_back(isSkipped(station, {day, hour}) ? DayState::Skipped : DayState::Missing);
        } else {
            states.push_back(found->second == EntryKind::Counted ? DayState::Counted : DayState::Missing);
        }
    }
    return states;
}

HourSummary summariseHour(const std::vector<Slot>& slots, const std::vector<DayState>& days,
                          const MonthOptions& options, Means& means) {
    HourSummary summary;
    DayCounts dayCounts;
    for (const Slot& slot : slots) {
        countSlot(summary, slot);
        countDays(dayCounts, slot, options);
        if (slot.kind == EntryKind::Counted) {
            addToMeans(means, *slot.entry->reading);
            keepAllExtremes(summary, slot);
        }
    }
    setDays(summary, dayCounts);
    summary.withheld = judgeCompleteness(days, options.completeness);
    if (summary.withheld == Withheld::No) {
        setMeans(summary, means, summary.n);
    }
    return summary;
}

void addIfGiven(Mean& mean, const std::optional<double>& value) {
    if (value) {
        mean.add(*value);
    }
}

HourSummary summariseAll(const std::vector<Slot>& slots, const std::vector<HourSummary>& hours,
                         const std::vector<Means>& hourMeans, const MonthOptions& options) {
    HourSummary all;
    DayCounts dayCounts;
    for (const Slot& slot : slots) {
        countSlot(all, slot);
        countDays(dayCounts, slot, options);
        if (slot.kind == EntryKind::Counted) {
            keepAllExtremes(all, slot);
        }
    }
    setDays(all, dayCounts);
    if (hours.empty()) {
        all.withheld = Withheld::NothingRead;
        return all;
    }
    const auto withheld = std::find_if(hours.begin(), hours.end(),
                                       [](const HourSummary& hour) { return hour.withheld != Withheld::No; });
    if (withheld != hours.end()) {
        all.withheld = all.n == 0 ? Withheld::NothingRead : withheld->withheld;
        return all;
    }
    Means means;
    for (std::size_t i = 0; i < hours.size(); ++i) {
        addIfGiven(means.dry, hours[i].meanDry);
        addIfGiven(means.wet, hours[i].meanWet);
        addIfGiven(means.vapour, hours[i].meanVapourPressure);
        addIfGiven(means.enhancement, hourMeans[i].enhancement.value());
        addIfGiven(means.dewPoint, hours[i].meanDewPoint);
        addIfGiven(means.humidity, hours[i].meanHumidity);
        addIfGiven(means.depression, hours[i].meanDepression);
    }
    setMeans(all, means, static_cast<int>(hours.size()));
    return all;
}

} // namespace

MonthSummary summariseMonth(const record::StationRecord& station, date::year_month month,
                            std::span<const MonthEntry> entries, const MonthOptions& options) {
    const auto byHour = entriesByHour(entries);
    MonthSummary result;
    result.month = month;

    std::vector<Slot> slots;
    std::map<record::HourOfDay, std::vector<Slot>> slotsByHour;
    const record::StationDate first{month / 1};
    const record::StationDate last{month / date::last};
    for (const record::ExpectedHour& expected : record::expectedHours(station, first, last)) {
        auto& ofHour = slotsByHour[expected.hour.hour]; // an hour wholly to come has its line too
        Slot slot{expected};
        if (const auto found = byHour.find(expected.hour); found != byHour.end()) {
            slot.entry = found->second;
            slot.kind = kindOf(*found->second);
        } else if (options.dueUntil && expected.instant > *options.dueUntil) {
            ++result.hoursToCome;
            continue;
        }
        slots.push_back(slot);
        ofHour.push_back(slot);
    }

    std::vector<Means> hourMeans;
    for (const auto& [hour, ofHour] : slotsByHour) {
        Means means;
        HourSummary summary = summariseHour(ofHour, dayStates(station, month, hour, ofHour), options, means);
        summary.hour = hour;
        result.hours.push_back(std::move(summary));
        hourMeans.push_back(means);
    }
    result.all = summariseAll(slots, result.hours, hourMeans, options);
    return result;
}

} // namespace wickbook::climate
