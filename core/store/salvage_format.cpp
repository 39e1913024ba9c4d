// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/salvage_format.h"

#include <algorithm>

namespace wickbook::store {

namespace {

constexpr std::size_t kPageSizeAt16 = 16; // section 1.3.2; 1 stands for 65536
constexpr std::size_t kReservedAt20 = 20; // section 1.3.4
constexpr std::uint32_t kSmallestPage = 512;
constexpr std::uint32_t kLargestPage = 65536;
constexpr std::uint32_t kSmallestUsable = 480;

void addLayout(std::vector<PageLayout>& layouts, std::uint32_t pageSize, std::uint32_t reserved) {
    const bool powerOfTwo = (pageSize & (pageSize - 1)) == 0;
    if (!powerOfTwo || pageSize < kSmallestPage || pageSize > kLargestPage ||
        pageSize - reserved < kSmallestUsable)
        return;
    const PageLayout layout{pageSize, pageSize - reserved};
    if (std::ranges::find(layouts, layout) == layouts.end())
        layouts.push_back(layout);
}

} // namespace

std::uint64_t bigEndianAt(std::string_view bytes, std::size_t at, std::size_t width) {
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < width; ++i)
        value = (value << 8U) | static_cast<unsigned char>(bytes[at + i]);
    return value;
}

Varint varintAt(std::string_view bytes, std::size_t at) {
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < 9 && at + i < bytes.size(); ++i) {
        const auto byte = static_cast<unsigned char>(bytes[at + i]);
        if (i == 8)
            return {(value << 8U) | byte, 9};
        value = (value << 7U) | (byte & 0x7FU);
        if ((byte & 0x80U) == 0)
            return {value, i + 1};
    }
    return {};
}

std::string varintOf(std::uint64_t value) {
    if (value >> 56U != 0) {
        std::string bytes(9, '\0');
        bytes[8] = static_cast<char>(value & 0xFFU);
        value >>= 8U;
        for (std::size_t i = 8; i-- > 0; value >>= 7U)
            bytes[i] = static_cast<char>((value & 0x7FU) | 0x80U);
        return bytes;
    }
    std::string bytes(1, static_cast<char>(value & 0x7FU));
    for (value >>= 7U; value != 0; value >>= 7U)
        bytes.insert(bytes.begin(), static_cast<char>((value & 0x7FU) | 0x80U));
    return bytes;
}

std::optional<std::uint64_t> lengthOfSerial(std::uint64_t serial) {
    constexpr std::uint64_t kLengths[] = {0, 1, 2, 3, 4, 6, 8, 8, 0, 0};
    if (serial < std::size(kLengths))
        return kLengths[serial];
    if (serial < 12)
        return std::nullopt;
    return (serial - 12) / 2;
}

bool isIntegerSerial(std::uint64_t serial) {
    return (serial >= 1 && serial <= 6) || serial == 8 || serial == 9;
}

std::int64_t integerAt(std::string_view bytes, std::size_t at, std::uint64_t serial) {
    if (serial >= 8)
        return static_cast<std::int64_t>(serial - 8);
    const std::size_t width = static_cast<std::size_t>(lengthOfSerial(serial).value_or(0));
    std::uint64_t value = bigEndianAt(bytes, at, width);
    if (width < 8 && (value >> (8 * width - 1)) != 0)
        value |= ~std::uint64_t{0} << (8 * width);
    return static_cast<std::int64_t>(value);
}

std::vector<PageLayout> layoutsOf(const ByteSource& source) {
    std::vector<PageLayout> layouts;
    std::string header;
    if (source.read(0, 100, header)) {
        auto pageSize = static_cast<std::uint32_t>(bigEndianAt(header, kPageSizeAt16, 2));
        if (pageSize == 1)
            pageSize = kLargestPage;
        addLayout(layouts, pageSize, static_cast<unsigned char>(header[kReservedAt20]));
        addLayout(layouts, pageSize, 0);
    }
    addLayout(layouts, PageLayout{}.pageSize, 0);
    for (std::uint32_t pageSize = kSmallestPage; pageSize <= kLargestPage; pageSize *= 2)
        addLayout(layouts, pageSize, 0);
    return layouts;
}

std::uint64_t localPayload(const PageLayout& layout, std::uint64_t payload) {
    const std::uint64_t usable = layout.usable;
    const std::uint64_t most = usable - 35;
    if (payload <= most)
        return payload;
    const std::uint64_t least = (usable - 12) * 32 / 255 - 23;
    const std::uint64_t kept = least + (payload - least) % (usable - 4);
    return kept <= most ? kept : least;
}

bool readPage(const ByteSource& source, const PageLayout& layout, std::uint64_t number, std::string& page) {
    if (number == 0 || number > pagesIn(source, layout))
        return false;
    const std::uint64_t place = (number - 1) * layout.pageSize;
    // The last page of a file that was cut short: what is there of it.
    const auto length =
        static_cast<std::size_t>(std::min<std::uint64_t>(layout.pageSize, source.size() - place));
    return source.read(place, length, page);
}

std::uint64_t pagesIn(const ByteSource& source, const PageLayout& layout) {
    return source.size() / layout.pageSize + (source.size() % layout.pageSize != 0 ? 1 : 0);
}

std::string overflowBytes(const ByteSource& source, const PageLayout& layout, std::uint64_t firstPage,
                          std::uint64_t wanted, std::uint64_t& budget) {
    std::string bytes;
    std::string page;
    std::uint64_t number = firstPage;
    while (bytes.size() < wanted && budget >= layout.pageSize) {
        budget -= layout.pageSize;
        if (!readPage(source, layout, number, page) || page.size() < layout.usable)
            break;
        number = bigEndianAt(page, 0, 4);
        const auto part = std::min<std::uint64_t>(wanted - bytes.size(), layout.usable - 4);
        bytes.append(page, 4, static_cast<std::size_t>(part));
    }
    return bytes;
}

std::optional<TreePage> treePageIn(std::string_view page, std::size_t begin) {
    if (page.size() < begin + 12)
        return std::nullopt;
    const auto flag = static_cast<unsigned char>(page[begin]);
    TreePage tree;
    tree.leaf = flag == 0x0D || flag == 0x0A;
    tree.table = flag == 0x0D || flag == 0x05;
    if (!tree.leaf && flag != 0x05 && flag != 0x02)
        return std::nullopt;
    const std::size_t first = begin + (tree.leaf ? 8 : 12);
    const auto count = static_cast<std::size_t>(bigEndianAt(page, begin + 3, 2));
    if (count > (page.size() - first) / 2)
        return std::nullopt;
    if (!tree.leaf)
        tree.rightmost = bigEndianAt(page, begin + 8, 4);
    for (std::size_t i = 0; i < count; ++i) {
        const auto cell = static_cast<std::size_t>(bigEndianAt(page, first + 2 * i, 2));
        if (cell < first + 2 * count || cell + 4 > page.size())
            return std::nullopt;
        tree.cells.push_back(cell);
    }
    return tree;
}

} // namespace wickbook::store
