// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/salvage_source.h"

#include <cstdint>
#include <map>
#include <memory>

/// An interrupted write, taken back while reading: the pages that the journal beside a book kept stand in the
/// place of those in the file, and neither file is touched. "Database File Format", section 3, "The Rollback
/// Journal"; a record counts as SQLite itself would count it when it plays the journal back.

namespace wickbook::store {

class TakenBack final : public ByteSource {
public:
    /// Nothing where the journal holds nothing that would be played back, or belongs to a write over several
    /// files, which a book's never does. Both outlive it.
    static std::unique_ptr<TakenBack> over(const ByteSource& file, const ByteSource& journal);

    [[nodiscard]] std::uint64_t size() const override { return pages_ * pageSize_; }
    bool read(std::uint64_t place, std::size_t length, std::string& into) const override;

private:
    TakenBack(const ByteSource& file, const ByteSource& journal) : file_(file), journal_(journal) {}
    bool readRecords(std::uint64_t header);
    [[nodiscard]] bool belongsToSeveralFiles() const;
    bool readPart(std::uint64_t page, std::uint64_t within, std::size_t length, std::string& into) const;

    const ByteSource& file_;
    const ByteSource& journal_;
    std::uint64_t pageSize_ = 0;
    std::uint64_t sectorSize_ = 0;
    std::uint64_t pages_ = 0;                     ///< that the file had before the write
    std::map<std::uint64_t, std::uint64_t> kept_; ///< page → where its bytes stand in the journal
    std::uint64_t end_ = 0;                       ///< of what was played back so far
};

} // namespace wickbook::store
