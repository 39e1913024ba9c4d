// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sample/sample_register.h"

#include <algorithm>

namespace wickbook::sample {

namespace {

using namespace std::chrono_literals;

constexpr std::size_t kQuietRound = 4;
constexpr int kSearchDays = 400;

/// Moments are identities: no two entries share one, so the same moment in another plan has the same UUID.
std::uint64_t identityOf(record::Instant instant, std::uint64_t revision) {
    const auto seconds = static_cast<std::uint64_t>(instant.time_since_epoch().count()) & 0xFFFFFFFFFFULL;
    return (seconds << 8U) | revision;
}

} // namespace

void SampleRegister::add(const record::Observation& values) {
    SampleObservation observation;
    observation.subject = record::Uuid::fromSeed(plan_.seed, identityOf(values.instant, 0));
    observation.revisions.push_back({record::Uuid::fromSeed(plan_.seed, identityOf(values.instant, 1)),
                                     values,
                                     {values.observer, {}},
                                     values.instant + 4min});
    observations_.push_back(std::move(observation));
    marked_.push_back(false);
}

void SampleRegister::revise(std::size_t index, const record::Observation& values, const std::string& why,
                            std::chrono::minutes later) {
    SampleObservation& observation = observations_[index];
    const std::uint64_t number = observation.revisions.size() + 1;
    const record::Instant first = observation.revisions.front().values.instant;
    observation.revisions.push_back({record::Uuid::fromSeed(plan_.seed, identityOf(first, number)),
                                     values,
                                     {"A", why},
                                     observation.revisions.back().recordedAt + later});
    mark(index);
}

void SampleRegister::write(std::size_t index, const record::Observation& values) {
    observations_[index].revisions.front().values = values;
    mark(index);
}

bool SampleRegister::isQuiet(std::size_t index) const {
    if (index < kQuietRound || index + kQuietRound >= observations_.size()) {
        return false;
    }
    for (std::size_t i = index - kQuietRound; i <= index + kQuietRound; ++i) {
        if (marked_[i] || !newest(i).hasPair()) {
            return false;
        }
    }
    return true;
}

std::optional<std::size_t> SampleRegister::find(int daysBefore,
                                                const std::function<bool(std::size_t)>& fits) const {
    const record::StationDate latest = plan_.lastDay - date::days{daysBefore};
    const record::StationDate earliest = latest - date::days{kSearchDays};
    for (std::size_t i = observations_.size(); i-- > 0;) {
        const record::StationDate day = record::filedDate(newest(i));
        if (day > latest) {
            continue;
        }
        if (day < earliest) {
            break;
        }
        if (isQuiet(i) && fits(i)) {
            return i;
        }
    }
    return std::nullopt;
}

} // namespace wickbook::sample
