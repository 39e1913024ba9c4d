// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/salvage_reader.h"

#include <algorithm>
#include <array>

namespace wickbook::store {

namespace {

constexpr std::size_t kColumns = 9;
constexpr std::uint64_t kIdentitySerial = blobSerial(16);
constexpr std::uint64_t kChecksumSerial = blobSerial(32);
constexpr std::size_t kPageCountAt = 28; // section 1.3.7

/// The header of a record of the table "revision": what each value takes, and how long the whole is.
struct RevisionShape {
    std::array<std::uint64_t, kColumns> serials{};
    std::uint64_t headerLength = 0;
    std::uint64_t payload = 0;
};

/// begin: where the record's header begins with its own length.
std::optional<RevisionShape> shapeAt(std::string_view page, std::size_t begin) {
    RevisionShape shape;
    shape.headerLength = static_cast<unsigned char>(page[begin]);
    if (shape.headerLength >= 0x80 || begin + shape.headerLength > page.size())
        return std::nullopt;
    std::size_t at = begin + 1;
    shape.payload = shape.headerLength;
    for (std::uint64_t& serial : shape.serials) {
        const Varint read = varintAt(page.substr(0, begin + shape.headerLength), at);
        const auto length = lengthOfSerial(read.value);
        if (read.length == 0 || !length || *length > std::uint64_t{1} << 40U)
            return std::nullopt;
        serial = read.value;
        shape.payload += *length;
        at += read.length;
    }
    const auto& s = shape.serials;
    const bool fits = at == begin + shape.headerLength && s[0] == 0 && s[1] == kIdentitySerial &&
                      isTextSerial(s[2]) && s[3] == kIdentitySerial && isIntegerSerial(s[4]) &&
                      isTextSerial(s[5]) && isTextSerial(s[6]) && isTextSerial(s[7]) &&
                      s[8] == kChecksumSerial;
    return fits ? std::optional{shape} : std::nullopt;
}

/// The row's number stands before the record, and before that the record's length, both as varints of which
/// only the ends are known from here. The length is known from the record itself, which tells them apart;
/// where it is hurt, the number is taken as far as its bytes go on.
std::uint64_t sequenceBefore(std::string_view page, std::size_t record, std::uint64_t payload) {
    const std::string length = varintOf(payload);
    std::size_t longest = 0;
    for (std::size_t bytes = 1; bytes <= 9 && bytes <= record; ++bytes) {
        const Varint number = varintAt(page, record - bytes);
        if (number.length != bytes)
            break;
        longest = bytes;
        const std::size_t begin = record - bytes;
        if (begin >= length.size() && page.substr(begin - length.size(), length.size()) == length)
            return number.value;
    }
    return longest == 0 ? 0 : varintAt(page, record - longest).value;
}

class PageReading {
public:
    PageReading(const ByteSource& source, const PageLayout& layout, FoundRows& found)
        : source_(source)
        , layout_(layout)
        , found_(found)
        // Copies that were left behind share their overflow pages with the row; more than a few, or rows that
        // overlap, would be bytes made to keep us busy.
        , budget_(8 * source.size() + 8 * layout.pageSize) {}

    void read(std::uint64_t number, std::string_view page) {
        page = page.substr(0, layout_.usable);
        for (std::size_t at = page.find('\0'); at != std::string_view::npos; at = page.find('\0', at + 1)) {
            if (at < 2 || at + 2 > page.size())
                continue;
            const auto next = static_cast<unsigned char>(page[at + 1]);
            if (next == kIdentitySerial)
                revision(number, page, at - 1);
            else if (next == kChecksumSerial && page[at - 1] == '\4')
                end(page, at - 1);
        }
    }

private:
    void revision(std::uint64_t number, std::string_view page, std::size_t record) {
        const auto shape = shapeAt(page, record);
        if (!shape || shape->payload > source_.size())
            return;
        const std::uint64_t local = localPayload(layout_, shape->payload);
        if (local < shape->headerLength || record + local > page.size() || local > budget_)
            return;
        budget_ -= local;
        std::string payload{page.substr(record, static_cast<std::size_t>(local))};
        if (local < shape->payload) {
            const auto pointer = static_cast<std::size_t>(record + local);
            if (pointer + 4 > page.size())
                return;
            payload += overflowBytes(source_, layout_, bigEndianAt(page, pointer, 4), shape->payload - local,
                                     budget_);
            if (payload.size() < shape->payload) {
                found_.brokenOffAt.push_back(number);
                return;
            }
        }
        keep(number, *shape, payload, sequenceBefore(page, record, shape->payload));
    }

    void keep(std::uint64_t number, const RevisionShape& shape, const std::string& payload,
              std::uint64_t sequence) {
        std::size_t at = static_cast<std::size_t>(shape.headerLength);
        const auto take = [&](std::size_t column) {
            const auto length = static_cast<std::size_t>(lengthOfSerial(shape.serials[column]).value_or(0));
            std::string value = payload.substr(at, length);
            at += length;
            return value;
        };
        FoundRevision found;
        found.page = number;
        found.row.sequence = static_cast<std::int64_t>(sequence);
        found.row.id = take(1);
        found.row.kind = take(2);
        found.row.subject = take(3);
        found.row.recordedAt = integerAt(payload, at, shape.serials[4]);
        take(4);
        found.row.who = take(5);
        found.row.why = take(6);
        found.row.body = take(7);
        found.checksum = take(8);
        found_.revisions.push_back(std::move(found));
    }

    /// A row of "chain": header length 4, no key, a checksum, an integer; its number is always 1.
    void end(std::string_view page, std::size_t record) {
        if (record + 4 > page.size())
            return;
        const auto serial = static_cast<unsigned char>(page[record + 3]);
        if (!isIntegerSerial(serial))
            return;
        const auto length = static_cast<std::size_t>(lengthOfSerial(serial).value_or(0));
        const bool isOnlyRow = record >= 2 && page[record - 1] == '\1' &&
                               static_cast<unsigned char>(page[record - 2]) == 4 + 32 + length;
        if (!isOnlyRow || record + 4 + 32 + length > page.size())
            return;
        FoundEnd found{std::string{page.substr(record + 4, 32)}, integerAt(page, record + 4 + 32, serial)};
        if (found.count >= 0 && std::ranges::find(found_.ends, found) == found_.ends.end() &&
            found_.ends.size() < kMostEnds)
            found_.ends.push_back(std::move(found));
    }

    static constexpr std::size_t kMostEnds = 1000;
    const ByteSource& source_;
    const PageLayout& layout_;
    FoundRows& found_;
    std::uint64_t budget_;
};

} // namespace

FoundRows rowsIn(const ByteSource& source, const PageLayout& layout, const PageProgress& progress) {
    FoundRows found;
    found.layout = layout;
    PageReading reading(source, layout, found);
    const std::uint64_t there = pagesIn(source, layout);
    found.pages = there;
    std::string page;
    if (source.read(0, 100, page)) {
        // A header that names far more pages than there are is itself hurt.
        const std::uint64_t named = bigEndianAt(page, kPageCountAt, 4);
        if (named > there && named / 16 <= there)
            found.pages = named;
    }
    for (std::uint64_t number = 1; number <= there; ++number) {
        if (progress && !progress(number, there)) {
            found.stopped = true;
            return found;
        }
        if (readPage(source, layout, number, page))
            reading.read(number, page);
        else
            found.unreadPages.push_back(number);
        if (number == there && page.size() < layout.pageSize)
            found.unreadPages.push_back(number);
    }
    for (std::uint64_t number = there + 1; number <= found.pages; ++number)
        found.unreadPages.push_back(number);
    std::ranges::move(brokenTreePages(source, layout, "revision"), std::back_inserter(found.unreadPages));
    std::ranges::sort(found.unreadPages);
    found.unreadPages.erase(std::unique(found.unreadPages.begin(), found.unreadPages.end()),
                            found.unreadPages.end());
    return found;
}

std::vector<FoundRevision> revisionsIn(std::string_view bytes) {
    const MemorySource source(bytes);
    std::vector<FoundRevision> most;
    for (const PageLayout& layout : layoutsOf(source)) {
        FoundRows found = rowsIn(source, layout);
        if (found.revisions.size() > most.size())
            most = std::move(found.revisions);
    }
    return most;
}

} // namespace wickbook::store
