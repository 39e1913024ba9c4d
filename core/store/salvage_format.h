// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/salvage_source.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The few pieces of SQLite's file format that the salvage reads by itself, from "Database File Format"
/// (sqlite.org/fileformat2.html). SQLite is never asked to open a damaged file. Nothing here trusts a length
/// or a page number: whatever the bytes are, every piece ends, within the bytes that are there.

namespace wickbook::store {

/// A big-endian number of two, three, four … eight bytes. Pre: they are there.
std::uint64_t bigEndianAt(std::string_view bytes, std::size_t at, std::size_t width);

/// Section 1.6, "varint": up to nine bytes, big-endian, seven bits each.
struct Varint {
    std::uint64_t value = 0;
    std::size_t length = 0; ///< 0: cut off
};
Varint varintAt(std::string_view bytes, std::size_t at);
/// As SQLite writes it: in the fewest bytes.
std::string varintOf(std::uint64_t value);

/// Section 2.1, "Record Format": bytes that a value of this serial type takes; none for the two that are
/// reserved.
std::optional<std::uint64_t> lengthOfSerial(std::uint64_t serial);
bool isIntegerSerial(std::uint64_t serial);
constexpr bool isTextSerial(std::uint64_t serial) {
    return serial >= 13 && serial % 2 == 1;
}
constexpr std::uint64_t blobSerial(std::uint64_t length) {
    return 12 + 2 * length;
}
/// Pre: isIntegerSerial and its bytes are there.
std::int64_t integerAt(std::string_view bytes, std::size_t at, std::uint64_t serial);

/// Section 1.3: page size and what of each page is used.
struct PageLayout {
    std::uint32_t pageSize = 4096;
    std::uint32_t usable = 4096;
    bool operator==(const PageLayout&) const = default;
};
/// How the pages may lie: what the header says first, then what every book has, then all others; a header
/// that is damaged may say anything.
std::vector<PageLayout> layoutsOf(const ByteSource& source);

/// Section 1.6, table b-tree leaf: bytes of a payload that stand in the cell itself.
std::uint64_t localPayload(const PageLayout& layout, std::uint64_t payload);

/// One page, 1 the first. False where it is past the end or the disk refuses it.
bool readPage(const ByteSource& source, const PageLayout& layout, std::uint64_t number, std::string& page);
std::uint64_t pagesIn(const ByteSource& source, const PageLayout& layout);

/// Section 1.6, "overflow pages": so many bytes from the chain that begins at this page; fewer where the
/// chain breaks. Pages read are added to budget's use, and nothing more is read once it is used up.
std::string overflowBytes(const ByteSource& source, const PageLayout& layout, std::uint64_t firstPage,
                          std::uint64_t wanted, std::uint64_t& budget);

/// Section 1.6, the header of a b-tree page. None where the bytes are not such a page, or not a whole one.
struct TreePage {
    bool leaf = false;
    bool table = false;
    std::vector<std::size_t> cells; ///< where each begins
    std::uint64_t rightmost = 0;    ///< interior pages only
};
/// begin: 100 on the first page, else 0.
std::optional<TreePage> treePageIn(std::string_view page, std::size_t begin);

} // namespace wickbook::store
