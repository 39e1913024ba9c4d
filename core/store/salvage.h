// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

/// Salvage: what can be read of a damaged book, into a new one, and a count of what could not.
///
/// The damaged file is read page by page without SQLite (salvage_reader.h), the chain of checksums tells
/// which rows are what was written (salvage_judge.h), and the new book is written beside, verified, synced
/// and given its name like every other. The damaged file and a journal beside it are only read; a write that
/// was interrupted is taken back on the way (salvage_journal.h).
///
/// In the new book stand the revisions in the order they were written in, with their own identities, moments,
/// authors and bodies. Where every one is there and proved, the chain is the old one to the last byte, and
/// nothing is added. Otherwise the revisions are numbered anew without gaps, the chain is new, and after them
/// come, in this order:
/// - one revision for each reading whose newest revision is altered: the same values, judged doubtful (one
///   already judged erroneous stays so);
/// - one for each reading that lost its hour: no two live readings ever stood at one, so where two claim it,
/// what
///   took the earlier away is lost. The one written last keeps the hour, never an altered one before another;
///   the other becomes an extra reading, judged doubtful. Nothing is dropped;
/// - where the station's own fact is lost, one that gives it the name asked for, and nothing else: no place,
/// hour
///   or thermometer is invented;
/// - one of the kind "salvage", which readers pass over. Its body: from_head (the old chain's last checksum
/// in
///   hexadecimal, where it is known), expected (how many revisions there were), lost, altered, unproven
///   ([[first, last], …] in the old numbers), fragments [{sequence, kind, who, why, body}, …] (what could be
///   read of the lost ones, as text; the first hundred).

namespace wickbook::store {

/// From first to last, both included.
struct SequenceRange {
    std::int64_t first = 0;
    std::int64_t last = 0;
    [[nodiscard]] std::int64_t count() const { return last - first + 1; }
    bool operator==(const SequenceRange&) const = default;
};

/// What the new book says in words of its own; core has none.
struct SalvageWords {
    record::Author author;   ///< of the revisions that are added
    std::string alteredWhy;  ///< why a reading is judged doubtful
    std::string hourWhy;     ///< why a reading lost its hour
    std::string stationName; ///< where the station's own is lost
};

struct SalvageReport {
    std::int64_t expected = 0; ///< revisions the damaged book held, as far as it can be known
    std::int64_t proved = 0;   ///< returned as they were written
    std::int64_t unproven = 0; ///< returned; the checksum that would prove them is lost
    std::int64_t altered = 0;  ///< returned as they read, bytes changed
    std::int64_t lost = 0;     ///< expected, and not returned
    std::vector<SequenceRange> unprovenAt, alteredAt, lostAt; ///< numbers in the damaged book
    /// Facts of the station among the altered ones, by kind ("period", "thermometer" …): nothing marks these.
    std::vector<std::string> alteredFacts;
    std::int64_t observations = 0;   ///< live ones in the new book
    std::int64_t judgedDoubtful = 0; ///< readings whose newest revision is altered
    std::int64_t movedFromHour = 0;  ///< readings that became extra ones
    std::uint64_t pages = 0;         ///< of the damaged book
    std::uint64_t pagesUnread = 0;   ///< that could not be read as what they should be
    bool writeTakenBack = false;     ///< an interrupted write lay beside
    bool stationLost = false;        ///< the station's own fact: the new book bears the name asked for
    bool chainKept = false;          ///< nothing is lost, altered or unproven: the new chain is the old one
    bool stopped = false;            ///< by progress; there is no new book
};

/// Reads the damaged file into a new book. Errors: AlreadyThere over any existing path, NoSuchFile,
/// CannotOpen, Busy; Damaged or NotABook where no revision can be read; and those of writing. Progress counts
/// in thousandths of the whole; false stops, and nothing of the new book stays.
Result<SalvageReport> salvage(const std::filesystem::path& damaged, const std::filesystem::path& path,
                              const SalvageWords& words, std::shared_ptr<const record::Clock> clock,
                              const Progress& progress = {});

} // namespace wickbook::store
