// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instant.h"
#include "core/record/observation.h"
#include "core/record/station.h"
#include "core/record/uuid.h"

#include <cstdint>
#include <string>

/// Every change to a book appends a revision; nothing is ever updated in place.
/// What is shown is the newest revision of each subject, what was first written is its first.

namespace wickbook::record {

/// Who wrote, and why. An empty why is right for a first entry.
struct Author {
    std::string who;
    std::string why;
    bool operator==(const Author&) const = default;
};

/// The stamp of a stored revision.
struct RevisionStamp {
    std::int64_t sequence = 0; ///< place in the book, from 1, without gaps
    Uuid id;
    Uuid subject;
    Instant recordedAt{};
    Author author;
};

/// An observation as it stands: its newest revision.
struct StoredObservation {
    RevisionStamp stamp;
    int revisionCount = 1; ///< 1: never revised
    Observation values;
    [[nodiscard]] const Uuid& id() const { return stamp.subject; }
};

/// One line of the history of the checks' limits. Withdrawn: what had been set for this moment was taken
/// back.
struct LimitRevision {
    RevisionStamp stamp;
    LimitMoment limit;
    std::optional<double> value; ///< none: the built-in value
    bool withdrawn = false;
};

/// One line of an observation's history, oldest first.
struct ObservationRevision {
    RevisionStamp stamp;
    Observation values;
};

} // namespace wickbook::record
