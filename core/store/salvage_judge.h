// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/salvage.h"
#include "core/store/salvage_reader.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

/// Which of the rows found in a damaged book are what was written: the chain of checksums decides.
///
/// - A row is *proved* where its checksum follows from the one before and its bytes. Where only the stored
///   checksum is hurt, the row is proved by the next: the checksum that its bytes give is the one that the
///   next row's checksum was made from. Where only its number is hurt, it is proved at the gap it fits into.
/// - It is *altered* where the checksum before is known and says that bytes changed, and its values still
///   parse, if need be with ? for what is no letter any more.
/// - It is *unproven* where the row before is lost or altered and with it the checksum that would prove it:
///   nothing says that it changed. That checksum is looked for among the bytes beside it first.
/// - What does not parse, or is not there, is *lost*.

namespace wickbook::store {

enum class Standing { Proved, Unproven, Altered };

struct JudgedRevision {
    RevisionRow row; ///< with its place in the damaged book
    Standing standing = Standing::Proved;
};

/// A row that can't be returned as a revision, as text for a person's eye.
struct Fragment {
    std::int64_t sequence = 0;
    std::string kind, who, why, body; ///< UTF-8; what was none is shown as ?
};

struct Judgement {
    std::vector<JudgedRevision> rows; ///< by sequence, each once
    std::vector<SequenceRange> lost;
    std::vector<Fragment> fragments; ///< of those that are lost
    std::int64_t expected = 0;       ///< how many there were, as far as it can be known
    /// The last checksum of the damaged book, where a row of "chain" and the rows agree on it.
    std::optional<std::string> head;

    [[nodiscard]] std::int64_t count(Standing standing) const;
    /// Every revision is there and proved.
    [[nodiscard]] bool whole() const;
};

/// The page's bytes, for a lost row's checksum; empty where there are none.
using PageBytes = std::function<std::string(std::uint64_t page)>;

/// mostRows: more than the file could hold; a row that says a higher number is hurt there.
Judgement judge(const std::vector<FoundRevision>& found, const std::vector<FoundEnd>& ends,
                std::int64_t mostRows, const PageBytes& pageBytes);

/// The same places, neighbours as one range. Pre: sorted.
std::vector<SequenceRange> joined(std::vector<SequenceRange> ranges);

/// Whether the values can be read as this program writes them; verify of a book that holds it finds nothing.
bool valuesParse(const RevisionRow& row);

} // namespace wickbook::store
