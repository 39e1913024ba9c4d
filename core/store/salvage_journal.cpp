// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/salvage_journal.h"

#include "core/store/salvage_format.h"

#include <algorithm>
#include <string>
#include <string_view>

namespace wickbook::store {

namespace {

constexpr std::string_view kJournalBegins{"\xd9\xd5\x05\xf9\x20\xa1\x63\xd7", 8};
constexpr std::size_t kJournalHeadLength = 28;
constexpr std::uint64_t kAllThatFollow = 0xFFFFFFFF;
constexpr std::uint64_t kPendingByte = 0x40000000; // the page that holds it is never used

bool isPowerOfTwoWithin(std::uint64_t value, std::uint64_t least, std::uint64_t most) {
    return value >= least && value <= most && (value & (value - 1)) == 0;
}

/// Every two-hundredth byte of the page, counted from its end, and the journal's own random number.
std::uint32_t recordChecksum(std::uint32_t nonce, std::string_view page) {
    std::uint32_t sum = nonce;
    for (std::size_t at = page.size(); at > 200;) {
        at -= 200;
        sum += static_cast<unsigned char>(page[at]);
    }
    return sum;
}

} // namespace

std::unique_ptr<TakenBack> TakenBack::over(const ByteSource& file, const ByteSource& journal) {
    std::unique_ptr<TakenBack> taken{new TakenBack(file, journal)};
    if (taken->belongsToSeveralFiles())
        return nullptr;
    std::uint64_t header = 0;
    while (taken->readRecords(header)) {
        // Each further part of the journal begins at a sector of its own.
        const std::uint64_t sector = taken->sectorSize_;
        header = (taken->end_ + sector - 1) / sector * sector;
    }
    if (taken->pages_ == 0)
        return nullptr;
    return taken;
}

bool TakenBack::belongsToSeveralFiles() const {
    std::string end;
    if (journal_.size() < 16 || !journal_.read(journal_.size() - 16, 16, end))
        return false;
    return std::string_view{end}.substr(8) == kJournalBegins && bigEndianAt(end, 0, 4) != 0;
}

bool TakenBack::readRecords(std::uint64_t header) {
    std::string head;
    if (!journal_.read(header, kJournalHeadLength, head) || !head.starts_with(kJournalBegins))
        return false;
    std::uint64_t count = bigEndianAt(head, 8, 4);
    const auto nonce = static_cast<std::uint32_t>(bigEndianAt(head, 12, 4));
    if (header == 0) {
        sectorSize_ = bigEndianAt(head, 20, 4);
        pageSize_ = bigEndianAt(head, 24, 4);
        if (!isPowerOfTwoWithin(sectorSize_, 32, 65536) || !isPowerOfTwoWithin(pageSize_, 512, 65536))
            return false;
    }
    const std::uint64_t first = header + sectorSize_;
    if (first > journal_.size())
        return false;
    const std::uint64_t recordLength = 4 + pageSize_ + 4;
    const std::uint64_t there = (journal_.size() - first) / recordLength;
    if (header == 0) {
        // A number made to harm would have us look for four thousand million pages.
        constexpr std::uint64_t kCutOffPages = 1000;
        pages_ = std::min(bigEndianAt(head, 16, 4), file_.size() / pageSize_ + kCutOffPages * (there + 1));
    }
    if (count == kAllThatFollow)
        count = there;
    std::string record;
    for (std::uint64_t i = 0; i < count; ++i) {
        const std::uint64_t place = first + i * recordLength;
        if (i >= there || !journal_.read(place, static_cast<std::size_t>(recordLength), record))
            return false;
        const std::uint64_t page = bigEndianAt(record, 0, 4);
        if (page == 0 || page == kPendingByte / pageSize_ + 1)
            return false;
        const std::string_view bytes =
            std::string_view{record}.substr(4, static_cast<std::size_t>(pageSize_));
        if (page > pages_ || kept_.contains(page))
            continue;
        if (recordChecksum(nonce, bytes) != bigEndianAt(record, 4 + static_cast<std::size_t>(pageSize_), 4))
            return false;
        kept_.emplace(page, place + 4);
    }
    end_ = first + count * recordLength;
    return count > 0;
}

bool TakenBack::readPart(std::uint64_t page, std::uint64_t within, std::size_t length,
                         std::string& into) const {
    const auto found = kept_.find(page);
    return found == kept_.end() ? file_.read((page - 1) * pageSize_ + within, length, into)
                                : journal_.read(found->second + within, length, into);
}

bool TakenBack::read(std::uint64_t place, std::size_t length, std::string& into) const {
    if (place > size() || length > size() - place)
        return false;
    into.clear();
    std::string part;
    while (into.size() < length) {
        const std::uint64_t here = place + into.size();
        const std::uint64_t within = here % pageSize_;
        const auto wanted =
            static_cast<std::size_t>(std::min<std::uint64_t>(length - into.size(), pageSize_ - within));
        if (!readPart(here / pageSize_ + 1, within, wanted, part))
            return false;
        into += part;
    }
    return true;
}

} // namespace wickbook::store
