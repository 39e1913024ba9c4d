// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/chain.h"
#include "core/store/salvage_format.h"

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

/// What lies in the pages of a damaged book. A row of the table "revision" has a shape that nothing else in a
/// book has (resources/schema/0001_book.sql: no key of its own in the record, two identities of sixteen
/// bytes, a checksum of thirty-two), so every byte of every page is looked at for one: a lost page above, a
/// broken list of cells or a page that is no page any more hides nothing that still stands below it. The tree
/// is walked as well, to count the pages that should hold revisions and can't be read. Rows that SQLite has
/// moved leave copies behind; they are the same rows, since no row is ever changed.

namespace wickbook::store {

struct FoundRevision {
    /// As it lies there. Its place is the key before it, which damage may have made 0 or less: a stray then.
    RevisionRow row;
    std::string checksum; ///< as stored: 32 bytes
    std::uint64_t page = 0;
};

/// A row of the table "chain": the last checksum and the number of rows.
struct FoundEnd {
    std::string head;
    std::int64_t count = 0;
    bool operator==(const FoundEnd&) const = default;
};

struct FoundRows {
    PageLayout layout;
    std::vector<FoundRevision> revisions; ///< as they lie, copies among them
    std::vector<FoundEnd> ends;
    std::uint64_t pages = 0;                ///< that the file should have, as its header says, or has
    std::vector<std::uint64_t> unreadPages; ///< refused by the disk, cut off, or no page of the tree any more
    std::vector<std::uint64_t> brokenOffAt; ///< pages with a row whose overflow pages are not there
    bool stopped = false;
};

/// False: stop.
using PageProgress = std::function<bool(std::uint64_t page, std::uint64_t pages)>;

/// Reads every page in one layout. Work and memory in proportion to the size of the source, whatever its
/// bytes.
FoundRows rowsIn(const ByteSource& source, const PageLayout& layout, const PageProgress& progress = {});

/// Every revision in the bytes of a book, copies among them, in the layout that finds most.
std::vector<FoundRevision> revisionsIn(std::string_view bytes);

/// The pages of a table's tree that can't be read as such: past the end, refused, or of another kind. The
/// table is found by its name in the schema; where that is lost too, the first page stands for it.
std::vector<std::uint64_t> brokenTreePages(const ByteSource& source, const PageLayout& layout,
                                           std::string_view table);

} // namespace wickbook::store
