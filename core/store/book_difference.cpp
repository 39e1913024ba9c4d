// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book_difference.h"

#include "core/store/connection.h"

#include <algorithm>
#include <set>

namespace wickbook::store {

namespace {

/// One book as the comparison sees it: what it has after the common beginning.
struct ComparedSide {
    const Book& book;
    std::set<record::Uuid> ids{};                  ///< of its own revisions
    std::map<record::Uuid, RevisionBrief> facts{}; ///< newest of each fact it revised itself

    /// Whether a revision of the other book is here too.
    [[nodiscard]] bool has(const record::RevisionStamp& stamp, std::int64_t common) const {
        return stamp.sequence <= common || ids.contains(stamp.id);
    }
};

std::int64_t sumOf(const std::map<DifferenceKind, std::int64_t>& totals) {
    std::int64_t all = 0;
    for (const auto& [kind, count] : totals)
        all += count;
    return all;
}

std::int64_t countOf(const std::map<DifferenceKind, std::int64_t>& totals, DifferenceKind kind) {
    const auto it = totals.find(kind);
    return it == totals.end() ? 0 : it->second;
}

/// The longest beginning that both share, by halving: checksums that are equal prove all before them equal.
Result<std::int64_t> commonBeginning(const Book& first, const Book& second) {
    const auto firstEnd = first.chainMark();
    if (!firstEnd)
        return tl::unexpected(firstEnd.error());
    const auto secondEnd = second.chainMark();
    if (!secondEnd)
        return tl::unexpected(secondEnd.error());
    std::int64_t equal = 0;
    std::int64_t differs = std::min({firstEnd->count, secondEnd->count, kMostRowsOfABook}) + 1;
    while (differs - equal > 1) {
        const std::int64_t middle = equal + (differs - equal) / 2;
        const auto one = first.checksumAt(middle);
        if (!one)
            return tl::unexpected(one.error());
        const auto other = second.checksumAt(middle);
        if (!other)
            return tl::unexpected(other.error());
        (*one && *one == *other ? equal : differs) = middle;
    }
    return equal;
}

/// none: the same revision stands in both, or nothing in either.
std::optional<DifferenceKind> differenceKind(const ComparedSide& first, const ComparedSide& second,
                                             std::int64_t common, const record::RevisionStamp* inFirst,
                                             const record::RevisionStamp* inSecond) {
    if (inFirst == nullptr && inSecond == nullptr)
        return std::nullopt;
    if (inSecond == nullptr)
        return DifferenceKind::OnlyInFirst;
    if (inFirst == nullptr)
        return DifferenceKind::OnlyInSecond;
    if (inFirst->id == inSecond->id)
        return std::nullopt;
    if (first.has(*inSecond, common))
        return DifferenceKind::LaterInFirst;
    if (second.has(*inFirst, common))
        return DifferenceKind::LaterInSecond;
    return DifferenceKind::Diverged;
}

const record::RevisionStamp* stampIn(const std::optional<record::StoredObservation>& observation) {
    return observation ? &observation->stamp : nullptr;
}

record::Instant momentOf(const ReadingDifference& difference) {
    return (difference.first ? difference.first : difference.second)->values.instant;
}

bool isEarlier(const ReadingDifference& one, const ReadingDifference& other) {
    return momentOf(one) < momentOf(other);
}

class Comparing {
public:
    Comparing(const Book& first, const Book& second, std::size_t mostLines, const Progress& progress)
        : first_{first}, second_{second}, mostLines_(mostLines), progress_(progress) {}

    Result<BookDifference> run() {
        const auto common = commonBeginning(first_.book, second_.book);
        if (!common)
            return tl::unexpected(common.error());
        found_.common = *common;
        for (ComparedSide* side : {&first_, &second_}) {
            auto own = side->book.revisionsAfter(*common);
            if (!own)
                return tl::unexpected(own.error());
            (side == &first_ ? found_.ownFirst : found_.ownSecond) = std::ssize(*own);
            for (RevisionBrief& brief : *own) {
                side->ids.insert(brief.stamp.id);
                if (brief.kind == "observation")
                    touched_.insert(brief.stamp.subject);
                else
                    side->facts[brief.stamp.subject] = std::move(brief);
            }
        }
        found_.related = found_.common > 0 || std::ranges::any_of(first_.ids, [&](const record::Uuid& id) {
                             return second_.ids.contains(id);
                         });
        if (auto done = readings(); !done)
            return tl::unexpected(done.error());
        if (auto done = facts(); !done)
            return tl::unexpected(done.error());
        return std::move(found_);
    }

private:
    Result<void> readings() {
        std::int64_t done = 0;
        for (const record::Uuid& subject : touched_) {
            if (progress_ && !progress_(done++, std::ssize(touched_)))
                return tl::unexpected(
                    StoreError{StoreErrorKind::Internal, first_.book.path().string(), "stopped"});
            ReadingDifference difference;
            auto inFirst = first_.book.observation(subject);
            if (!inFirst)
                return tl::unexpected(inFirst.error());
            auto inSecond = second_.book.observation(subject);
            if (!inSecond)
                return tl::unexpected(inSecond.error());
            difference.first = std::move(*inFirst);
            difference.second = std::move(*inSecond);
            const auto kind = differenceKind(first_, second_, found_.common, stampIn(difference.first),
                                             stampIn(difference.second));
            if (!kind)
                continue;
            difference.kind = *kind;
            ++found_.readingTotals[*kind];
            keep(std::move(difference));
        }
        std::ranges::sort(found_.readings, isEarlier);
        return {};
    }

    /// Of more than are wanted, the latest goes: a heap has it at the front.
    void keep(ReadingDifference difference) {
        auto& lines = found_.readings;
        lines.push_back(std::move(difference));
        std::ranges::push_heap(lines, isEarlier);
        if (lines.size() > mostLines_) {
            std::ranges::pop_heap(lines, isEarlier);
            lines.pop_back();
        }
    }

    Result<void> facts() {
        // Facts are few: what either has revised may stand in the other's share of the common beginning.
        std::map<record::Uuid, RevisionBrief> shared;
        const auto all = first_.book.factRevisionsAfter(0);
        if (!all)
            return tl::unexpected(all.error());
        for (const RevisionBrief& brief : *all) {
            if (brief.stamp.sequence <= found_.common)
                shared[brief.stamp.subject] = brief;
        }
        std::set<record::Uuid> touched;
        for (const ComparedSide* side : {&first_, &second_}) {
            for (const auto& [subject, brief] : side->facts)
                touched.insert(subject);
        }
        for (const record::Uuid& subject : touched) {
            const auto standing = [&](const ComparedSide& side) -> const RevisionBrief* {
                if (const auto own = side.facts.find(subject); own != side.facts.end())
                    return &own->second;
                const auto before = shared.find(subject);
                return before == shared.end() ? nullptr : &before->second;
            };
            const RevisionBrief* inFirst = standing(first_);
            const RevisionBrief* inSecond = standing(second_);
            const auto kind =
                differenceKind(first_, second_, found_.common, inFirst ? &inFirst->stamp : nullptr,
                               inSecond ? &inSecond->stamp : nullptr);
            if (!kind)
                continue;
            ++found_.factTotals[*kind];
            if (found_.facts.size() < mostLines_) {
                FactDifference difference;
                difference.kind = *kind;
                difference.fact = (inFirst ? inFirst : inSecond)->kind;
                if (inFirst)
                    difference.first = inFirst->stamp;
                if (inSecond)
                    difference.second = inSecond->stamp;
                found_.facts.push_back(std::move(difference));
            }
        }
        return {};
    }

    ComparedSide first_;
    ComparedSide second_;
    std::size_t mostLines_;
    const Progress& progress_;
    BookDifference found_;
    std::set<record::Uuid> touched_; ///< observations that either has revised for itself
};

} // namespace

std::int64_t BookDifference::readingTotal(DifferenceKind kind) const {
    return countOf(readingTotals, kind);
}

std::int64_t BookDifference::factTotal(DifferenceKind kind) const {
    return countOf(factTotals, kind);
}

std::int64_t BookDifference::readingsInAll() const {
    return sumOf(readingTotals);
}

std::int64_t BookDifference::factsInAll() const {
    return sumOf(factTotals);
}

Result<BookDifference> differenceBetween(const Book& first, const Book& second, std::size_t mostLines,
                                         const Progress& progress) {
    return Comparing(first, second, mostLines, progress).run();
}

} // namespace wickbook::store
