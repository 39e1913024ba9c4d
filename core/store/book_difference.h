// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"

#include <cstddef>
#include <map>

/// What differs between two books, most often a copy and the book it was made of. Both begin with the same
/// revisions, told by the chain: equal checksums at one place mean that everything before it is equal too.
/// After that each has its own. Readings and facts are compared by the revision that stands in each; books
/// that share no beginning are compared by their revisions' identities, which a book made out of another
/// one's revisions has kept.

namespace wickbook::store {

enum class DifferenceKind {
    OnlyInFirst,
    OnlyInSecond,
    LaterInFirst,  ///< the first has revised what stands in the second
    LaterInSecond, ///< the other way round
    Diverged       ///< each has revised it for itself
};

struct ReadingDifference {
    DifferenceKind kind{};
    /// As it stands in each; none where there is none. May be withdrawn (values.withdrawn).
    std::optional<record::StoredObservation> first, second;
};

struct FactDifference {
    DifferenceKind kind{};
    std::string fact; ///< "station", "period", "thermometer", … as in the schema
    /// The revision that stands in each.
    std::optional<record::RevisionStamp> first, second;
};

struct BookDifference {
    std::int64_t common = 0; ///< revisions that both begin with
    std::int64_t ownFirst = 0, ownSecond = 0;
    /// Whether both are of one book at all: a common beginning, or revisions of the same identity.
    bool related = false;
    std::map<DifferenceKind, std::int64_t> readingTotals, factTotals; ///< exact, kinds without any left out
    std::vector<ReadingDifference> readings; ///< the earliest by time, so many as were asked for
    std::vector<FactDifference> facts;       ///< so many as were asked for

    [[nodiscard]] bool none() const { return readingTotals.empty() && factTotals.empty(); }
    [[nodiscard]] std::int64_t readingTotal(DifferenceKind kind) const;
    [[nodiscard]] std::int64_t factTotal(DifferenceKind kind) const;
    [[nodiscard]] std::int64_t readingsInAll() const;
    [[nodiscard]] std::int64_t factsInAll() const;
};

/// mostLines: of readings and of facts each; totals are exact all the same.
/// Error: what either book has; kind Internal with detail "stopped" where progress said so.
Result<BookDifference> differenceBetween(const Book& first, const Book& second, std::size_t mostLines,
                                         const Progress& progress = {});

} // namespace wickbook::store
