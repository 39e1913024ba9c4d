// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"
#include "core/record/revision.h"

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <vector>

/// A plan held against what is in the book: which lines are new, which would take an hour that is taken, and
/// what becomes of those. Values only: who calls has read the book and writes the changes.
///
/// A line conflicts with the reading of the same hour, an extra reading with one at the same moment. A line
/// that says nothing new is passed over whatever was chosen. Where a reading is revised, a blank in the file
/// never erases what the book has; a judgement and an origin stay where the readings they were about stay.

namespace wickbook::exchange {

/// What is taken, by hour and, for extra readings, by moment. Holds copies, unless a long work asks the book
/// each time.
class TakenReadings {
public:
    using AskBook =
        std::function<std::optional<record::StoredObservation>(const record::Observation& values)>;
    /// Readings of the book are asked for one by one: the live one at the hour or, for an extra reading, the
    /// moment.
    void askBook(AskBook ask) { askBook_ = std::move(ask); }
    /// Lines taken over need not be remembered: there is one file, whose plan knows its own.
    void forgetLines() { remembersLines_ = false; }
    /// A live reading of the book.
    void add(record::StoredObservation reading);
    /// A line of a file taken before; what follows for the same hour is the same hour twice.
    void addFromFile(const record::Observation& values);

    /// The book's reading in the way; nullptr: none. Holds until the next question.
    [[nodiscard]] const record::StoredObservation* inBook(const record::Observation& values) const;
    /// Values of an earlier file for the same hour or moment; nullptr: none.
    [[nodiscard]] const record::Observation* inFiles(const record::Observation& values) const;

private:
    AskBook askBook_;
    bool remembersLines_ = true;
    mutable std::optional<record::StoredObservation> asked_;
    std::map<record::ObservingHour, record::StoredObservation> bookHours_;
    std::map<record::Instant, record::StoredObservation> bookExtras_;
    std::map<record::ObservingHour, record::Observation> fileHours_;
    std::map<record::Instant, record::Observation> fileExtras_;
};

/// One change for the store: a new observation, or a revision of the one it replaces.
struct PlannedChange {
    std::int64_t line = 0;
    std::optional<record::StoredObservation> replaces;
    record::Observation values;
    std::string file{}; ///< as in PlannedObservation
};

struct ImportDecision {
    std::vector<PlannedChange> changes;
    std::vector<RejectedLine> rejected; ///< HourTaken and SameHourTwice; the plan's own are not repeated
    std::int64_t added = 0;             ///< of changes: new
    std::int64_t revised = 0;           ///< of changes: revisions
    std::int64_t kept = 0;              ///< conflicts where the book's reading stays
    std::int64_t same = 0;              ///< lines that say what is there already
};

/// Decides the lines of one file; with several files call it for each with the same taken, which learns the
/// lines taken over. fileName is for the rejects.
ImportDecision decideConflicts(const ImportPlan& plan, const std::string& fileName, TakenReadings& taken,
                               OnConflict onConflict);

/// The values a revision would have: the file's, and the book's where the file is blank.
record::Observation mergedForRevision(const record::Observation& book, const record::Observation& file);

} // namespace wickbook::exchange
