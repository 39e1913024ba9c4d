// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/whole_register.h"

#include <algorithm>

namespace wickbook::desk {

namespace {

/// How much of the book is read under one lock: a writer waits for no more than this.
constexpr std::chrono::hours kStretch{24 * 60};

} // namespace

Result<std::optional<std::vector<record::DerivedReading>>>
wholeRegister(const store::Book& book, const record::StationRecord& station,
              const std::function<bool(std::size_t done, std::size_t total)>& progress) {
    std::vector<record::DerivedReading> readings;
    const auto span = book.span();
    if (!span) {
        return tl::unexpected(span.error());
    }
    const auto count = book.observationCount();
    if (!count) {
        return tl::unexpected(count.error());
    }
    if (!*span) {
        return std::optional{std::move(readings)};
    }
    const auto total = static_cast<std::size_t>(*count);
    readings.reserve(total);
    const record::Instant end = (*span)->second + std::chrono::seconds{1};
    for (record::Instant from = (*span)->first; from < end;) {
        if (progress && !progress(std::min(readings.size(), total), total)) {
            return std::optional<std::vector<record::DerivedReading>>{};
        }
        const record::Instant to = std::min(end, from + kStretch);
        auto stored = book.observationsBetween(from, to);
        if (!stored) {
            return tl::unexpected(stored.error());
        }
        for (record::StoredObservation& observation : *stored) {
            readings.push_back(record::deriveReading(std::move(observation), station));
        }
        from = to;
    }
    return std::optional{std::move(readings)};
}

Result<std::optional<std::vector<checks::CheckedReading>>> checkWhole(const store::Book& book,
                                                                      const record::StationRecord& station,
                                                                      std::optional<record::Instant> now,
                                                                      const WholeProgress& progress) {
    using Checked = std::optional<std::vector<checks::CheckedReading>>;
    bool stopped = false;
    const auto go = [&](WholeStage stage, std::size_t done, std::size_t total) {
        stopped = stopped || (progress && !progress(stage, done, total));
        return !stopped;
    };
    auto readings = wholeRegister(book, station, [&](std::size_t done, std::size_t total) {
        return go(WholeStage::Reading, done, total);
    });
    if (!readings) {
        return tl::unexpected(readings.error());
    }
    if (!*readings) {
        return Checked{};
    }
    const std::size_t total = (*readings)->size();
    const checks::StationModel model{**readings, [&] { return go(WholeStage::Learning, 0, total); }};
    if (stopped) {
        return Checked{};
    }
    auto checked = checks::checkWholeSeries(
        std::move(**readings), station, checks::StationLimits{station.facts().limits}, now,
        [&](std::size_t done, std::size_t all) { return go(WholeStage::Judging, done, all); }, &model);
    return stopped ? Checked{} : Checked{std::move(checked)};
}

} // namespace wickbook::desk
