// SPDX-License-Identifier: GPL-3.0-or-later
// As for "book": 'r' and a whole file, or 'e' and edits of a sound book (book_edits.h). Whatever comes of it
// is salvaged.
#include "core/store/salvage.h"
#include "core/store/salvage_reader.h"
#include "tests/fuzz/book_edits.h"
#include "tests/fuzz/memory_folder.h"
#include "tests/fuzz/targets.h"

#include <set>

namespace wickbook::fuzz {

namespace {

constexpr const char* kDamaged = "damaged.wbk";
constexpr const char* kSalvaged = "salvaged.wbk";

class SalvageClock final : public record::Clock {
public:
    [[nodiscard]] record::Instant now() const override {
        return record::Instant{date::sys_days{date::year{2025} / 7 / 1}};
    }
};

const store::SalvageWords& salvageWords() {
    static const store::SalvageWords kWords{
        {"wickbook", "salvaged"}, "its bytes had changed", "another reading stood there", "salvaged station"};
    return kWords;
}

/// Checksums of the sound book's rows: what they prove was written.
const std::set<std::string>& soundChecksums() {
    static const std::set<std::string> kChecksums = [] {
        std::set<std::string> all;
        for (const auto& found : store::revisionsIn(soundBook())) {
            all.insert(found.checksum);
        }
        return all;
    }();
    return kChecksums;
}

/// Rows have the shape of rows, whatever the bytes.
void checkRows(std::string_view bytes) {
    for (const store::FoundRevision& found : store::revisionsIn(bytes)) {
        promise(found.row.id.size() == 16 && found.row.subject.size() == 16, "an identity has sixteen bytes");
        promise(found.checksum.size() == 32, "a checksum has thirty-two");
    }
}

void checkReport(const store::SalvageReport& report, const EditedBook& input) {
    promise(!report.stopped, "nobody stopped it");
    promise(report.proved + report.unproven + report.altered + report.lost == report.expected,
            "every revision that was expected is accounted for", std::to_string(report.expected));
    const std::string counts = "proved " + std::to_string(report.proved) + ", unproven " +
                               std::to_string(report.unproven) + ", altered " +
                               std::to_string(report.altered) + ", lost " + std::to_string(report.lost);
    // Forged rows may be proved and still contradict each other: two readings at one hour, no station.
    const bool whole = report.lost == 0 && report.unproven == 0 && report.altered == 0 &&
                       report.movedFromHour == 0 && !report.stationLost;
    promise(report.chainKept == whole, "a whole chain is kept, no other", counts);
    promise(report.pagesUnread <= report.pages, "no more pages unread than there are");
    const auto sound = static_cast<std::int64_t>(soundChecksums().size());
    promise(input.forged || report.proved <= sound, "nothing is proved that was not written");
    if (input.bytes == soundBook() && input.journal.empty()) {
        promise(report.chainKept && report.proved == sound, "of a sound book everything comes back");
    }
}

} // namespace

void runSalvage(std::string_view bytes) {
    static const MemoryFolder kFolder;
    if (bytes.empty()) {
        return;
    }
    kFolder.clear();
    EditedBook input;
    if (bytes.front() == 'r') {
        input = {std::string{bytes.substr(1)}, {}, true};
    } else {
        input = editedBook(bytes.substr(1), kFolder.path());
    }
    checkRows(input.bytes);
    writeWhole(kFolder.path() / kDamaged, input.bytes);
    if (!input.journal.empty()) {
        writeWhole(kFolder.path() / (std::string{kDamaged} + "-journal"), input.journal);
    }
    const auto before = kFolder.contents();
    const auto clock = std::make_shared<SalvageClock>();
    const auto report =
        store::salvage(kFolder.path() / kDamaged, kFolder.path() / kSalvaged, salvageWords(), clock);
    auto after = kFolder.contents();
    if (!report) {
        promise(!report.error().path.empty() && !report.error().detail.empty(),
                "an error names file and cause");
        promise(after == before, "what can't be salvaged leaves no trace");
        return;
    }
    promise(after.erase(kSalvaged) == 1 && after == before, "one new book, and nothing else");
    checkReport(*report, input);
    const auto book = store::Book::open(kFolder.path() / kSalvaged, store::OpenMode::ReadOnly);
    promise(book.has_value(), "the new book opens", book ? "" : book.error().detail);
    const auto verified = book->verify();
    promise(verified && verified->sound(), "the new book is sound",
            verified && !verified->problems.empty() ? verified->problems.front().detail : "");
    const auto count = book->observationCount();
    promise(count && *count == report->observations, "as many readings as the report says");
}

} // namespace wickbook::fuzz
