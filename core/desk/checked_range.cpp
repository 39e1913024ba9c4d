// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/checked_range.h"

#include "core/desk/whole_register.h"

#include <algorithm>
#include <set>

namespace wickbook::desk {

namespace {

std::vector<record::DerivedReading> derived(std::vector<record::StoredObservation> stored,
                                            const record::StationRecord& station) {
    std::vector<record::DerivedReading> readings;
    readings.reserve(stored.size());
    for (record::StoredObservation& observation : stored) {
        readings.push_back(record::deriveReading(std::move(observation), station));
    }
    return readings;
}

/// Readings of the dates with the neighbours that the rules look at, and where the dates' own begin and how
/// many they are.
struct Series {
    std::vector<record::DerivedReading> readings;
    std::size_t first = 0;
    std::size_t count = 0;
};

/// Adds the observations that are not there yet, and puts all in time order.
void join(std::vector<record::StoredObservation>& to, std::vector<record::StoredObservation> others) {
    std::set<record::Uuid> known;
    for (const record::StoredObservation& one : to) {
        known.insert(one.id());
    }
    for (record::StoredObservation& other : others) {
        if (!known.contains(other.id())) {
            to.push_back(std::move(other));
        }
    }
    std::stable_sort(to.begin(), to.end(), [](const auto& a, const auto& b) {
        return std::pair{a.values.instant, a.stamp.sequence} < std::pair{b.values.instant, b.stamp.sequence};
    });
}

Result<Series> seriesOn(const store::Book& book, const record::StationRecord& station,
                        record::StationDate from, record::StationDate to) {
    auto inside = book.observationsOn(from, to);
    if (!inside) {
        return tl::unexpected(inside.error());
    }
    Series series;
    if (inside->empty()) {
        return series;
    }
    auto before = book.neighbours(inside->front().values.instant, checks::kNeighboursBefore, 0);
    if (!before) {
        return tl::unexpected(before.error());
    }
    // A day may be a copy of any earlier one of its month.
    const date::year_month_day first{from};
    if (first.day() > date::day{1}) {
        auto earlier = book.observationsOn(
            record::StationDate{date::local_days{first.year() / first.month() / 1}}, from - date::days{1});
        if (!earlier) {
            return tl::unexpected(earlier.error());
        }
        join(*before, std::move(*earlier));
    }
    auto after =
        book.neighbours(inside->back().values.instant + std::chrono::seconds{1}, 0, checks::kNeighboursAfter);
    if (!after) {
        return tl::unexpected(after.error());
    }
    // A reading filed under a date near midnight may stand among the neighbours by time as well: once is
    // enough.
    const auto isInside = [&](const record::StoredObservation& candidate) {
        return std::any_of(inside->begin(), inside->end(),
                           [&](const auto& own) { return own.id() == candidate.id(); });
    };
    std::erase_if(*before, isInside);
    std::erase_if(*after, isInside);

    series.first = before->size();
    series.count = inside->size();
    std::vector<record::StoredObservation> all = std::move(*before);
    all.insert(all.end(), std::make_move_iterator(inside->begin()), std::make_move_iterator(inside->end()));
    all.insert(all.end(), std::make_move_iterator(after->begin()), std::make_move_iterator(after->end()));
    series.readings = derived(std::move(all), station);
    return series;
}

/// The station's average for the month and hour of a reading, where the model knows it.
std::optional<climate::StationAverage> usualOf(const checks::StationModel* model,
                                               const record::Observation& values) {
    if (model == nullptr || !values.hour) {
        return std::nullopt;
    }
    const date::year_month_day day{values.hour->date};
    return model->average(static_cast<unsigned>(day.month()), values.hour->hour);
}

checks::StationLimits limitsOf(const record::StationRecord& station) {
    return checks::StationLimits{station.facts().limits};
}

} // namespace

Result<checks::StationModel> stationModel(const store::Book& book, const record::StationRecord& station,
                                          const std::function<bool()>& keepGoing) {
    const auto span = book.span();
    if (!span) {
        return tl::unexpected(span.error());
    }
    if (!*span) {
        return checks::StationModel{};
    }
    // The model itself takes no more than the newest 12,000; reading no more keeps an old book as quick as a
    // new one.
    constexpr int kNewest = 12000;
    auto stored = book.neighbours((*span)->second + std::chrono::seconds{1}, kNewest, 0);
    if (!stored) {
        return tl::unexpected(stored.error());
    }
    if (keepGoing && !keepGoing()) {
        return checks::StationModel{};
    }
    return checks::StationModel{derived(std::move(*stored), station), keepGoing};
}

Result<std::vector<checks::CheckedReading>>
checkedOn(const store::Book& book, const record::StationRecord& station, record::StationDate from,
          record::StationDate to, std::optional<record::Instant> now, const checks::StationModel* model,
          const std::function<bool(std::size_t done, std::size_t total)>& progress) {
    const auto series = seriesOn(book, station, from, to);
    if (!series) {
        return tl::unexpected(series.error());
    }
    return checks::checkSeries(series->readings, series->first, series->count, station, limitsOf(station),
                               now, progress, model);
}

Result<std::vector<checks::CheckedReading>>
checkedAll(const store::Book& book, const record::StationRecord& station, std::optional<record::Instant> now,
           const checks::StationModel* model,
           const std::function<bool(std::size_t done, std::size_t total)>& progress, checks::Slips slips) {
    auto readings = wholeRegister(
        book, station, [&](std::size_t, std::size_t total) { return !progress || progress(0, total); });
    if (!readings) {
        return tl::unexpected(readings.error());
    }
    if (!*readings) {
        return std::vector<checks::CheckedReading>{};
    }
    return checks::checkWholeSeries(std::move(**readings), station, limitsOf(station), now, progress, model,
                                    slips);
}

Result<checks::CheckedReading> judgeEntry(const store::Book& book, const record::StationRecord& station,
                                          const record::Observation& entry,
                                          const std::optional<record::Uuid>& replacing,
                                          std::optional<record::Instant> now, bool live,
                                          const checks::StationModel* model) {
    // One more each way, since the observation that is being revised may stand among them.
    auto stored = book.neighbours(entry.instant, checks::kNeighboursBefore + 1, checks::kNeighboursAfter + 1);
    if (!stored) {
        return tl::unexpected(stored.error());
    }
    if (replacing) {
        std::erase_if(*stored, [&](const auto& other) { return other.id() == *replacing; });
    }
    const auto middle = std::partition_point(stored->begin(), stored->end(), [&](const auto& other) {
        return other.values.instant < entry.instant;
    });
    const auto split = static_cast<std::size_t>(middle - stored->begin());
    const auto readings = derived(std::move(*stored), station);
    const std::span<const record::DerivedReading> all{readings};

    checks::CheckedReading judged;
    judged.reading = record::deriveReading(entry, station);
    if (replacing) {
        judged.reading.stored.stamp.subject = *replacing;
    }
    const checks::StationLimits limits = limitsOf(station);
    checks::ReadingContext context{.reading = judged.reading,
                                   .station = station,
                                   .limits = limits.at(judged.reading.values().instant),
                                   .before = all.first(split),
                                   .after = all.subspan(split),
                                   .now = now,
                                   .live = live,
                                   .average = usualOf(model, judged.reading.values()),
                                   .model = model};
    judged.findings = checks::checkReading(context);
    judged.leftOut = checks::leftOut(judged.reading.values(), judged.findings);
    return judged;
}

Result<report::MonthReport> monthReport(const store::Book& book, const record::StationRecord& station,
                                        date::year_month month, std::optional<record::Instant> now,
                                        const std::optional<climate::MonthOptions>& options,
                                        const checks::StationModel* model, checks::Slips slips) {
    const record::StationDate first{date::local_days{month / 1}};
    const record::StationDate last{date::local_days{month / date::last}};
    const auto series = seriesOn(book, station, first, last);
    if (!series) {
        return tl::unexpected(series.error());
    }
    const checks::StationLimits limits = limitsOf(station);
    return report::buildMonthReport(station, month, series->readings, limits, now,
                                    options ? *options : report::monthOptions(limits, month), model, slips);
}

} // namespace wickbook::desk
