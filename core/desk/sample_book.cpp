// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/sample_book.h"

#include <algorithm>

namespace wickbook::desk {

store::Result<store::Book> createSampleBook(const std::filesystem::path& path, const sample::SamplePlan& plan,
                                            std::shared_ptr<const record::Clock> clock,
                                            const store::Progress& progress) {
    const sample::SampleStation sample = sample::makeSample(plan);
    std::vector<store::ObservationChange> changes;
    for (const sample::SampleObservation& observation : sample.observations) {
        for (const sample::SampleRevision& revision : observation.revisions) {
            store::ObservationChange change;
            change.revision = revision.id;
            change.subject = observation.subject;
            change.values = revision.values;
            change.author = revision.author;
            change.recordedAt = revision.recordedAt;
            changes.push_back(std::move(change));
        }
    }
    // In the order they were written down, as a real book would hold them.
    std::stable_sort(changes.begin(), changes.end(),
                     [](const auto& a, const auto& b) { return a.recordedAt < b.recordedAt; });

    auto book = store::Book::create(path, sample.facts, {"", "invented sample station"}, std::move(clock));
    if (!book) {
        return book;
    }
    if (auto stored = book->appendAll(changes, progress); !stored) {
        return tl::unexpected(stored.error());
    }
    return book;
}

sample::SamplePlan samplePlanUntil(record::Instant now) {
    // The sample's hours follow UTC, so its last day is UTC's.
    sample::SamplePlan plan{date::floor<date::days>(record::LocalTime{now.time_since_epoch()})};
    plan.until = now;
    return plan;
}

} // namespace wickbook::desk
