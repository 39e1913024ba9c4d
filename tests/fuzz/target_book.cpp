// SPDX-License-Identifier: GPL-3.0-or-later
// 'r' and a whole file, or 'e' and edits of a sound book (book_edits.h). Whatever comes of it is opened to be
// read and to be written, read to the last row, verified, and written to.
#include "core/store/book.h"
#include "tests/fuzz/book_edits.h"
#include "tests/fuzz/memory_folder.h"
#include "tests/fuzz/targets.h"

#include <array>
#include <optional>

namespace wickbook::fuzz {

namespace {

using store::Book;
using store::OpenMode;
using store::StoreErrorKind;

constexpr const char* kName = "book.wbk";

/// Everything that can be read of a book; none where reading stopped at damage.
struct Contents {
    std::vector<record::StoredObservation> readings;
    std::vector<record::ObservationRevision> revisions;
    record::StationFacts facts;
};

bool sameStamp(const record::RevisionStamp& one, const record::RevisionStamp& other) {
    return one.sequence == other.sequence && one.id == other.id && one.subject == other.subject &&
           one.recordedAt == other.recordedAt && one.author == other.author;
}

bool sameContents(const Contents& one, const Contents& other) {
    if (one.readings.size() != other.readings.size() || one.revisions.size() != other.revisions.size()) {
        return false;
    }
    for (std::size_t i = 0; i < one.readings.size(); ++i) {
        if (!sameStamp(one.readings[i].stamp, other.readings[i].stamp) ||
            !(one.readings[i].values == other.readings[i].values)) {
            return false;
        }
    }
    for (std::size_t i = 0; i < one.revisions.size(); ++i) {
        if (!sameStamp(one.revisions[i].stamp, other.revisions[i].stamp) ||
            !(one.revisions[i].values == other.revisions[i].values)) {
            return false;
        }
    }
    return one.facts == other.facts;
}

/// Every error of a read names the file and a cause.
template <typename T>
bool wasRead(const store::Result<T>& result) {
    if (!result) {
        promise(!result.error().path.empty(), "an error names its file", result.error().detail);
        promise(!result.error().detail.empty(), "an error has a cause", result.error().path);
    }
    return result.has_value();
}

std::optional<Contents> readAll(const Book& book) {
    Contents all;
    const record::Instant begin{std::chrono::seconds{-100'000'000'000}};
    const record::Instant end{std::chrono::seconds{100'000'000'001}};
    const auto readings = book.observationsBetween(begin, end);
    const auto station = book.station();
    const auto limits = book.limitHistory();
    const auto span = book.span();
    const auto count = book.observationCount();
    const auto near = book.neighbours(record::Instant{std::chrono::seconds{1741000000}}, 5, 5);
    const auto dates = book.observationsOn(record::StationDate{date::local_days{date::year{2025} / 3 / 1}},
                                           record::StationDate{date::local_days{date::year{2025} / 3 / 31}});
    bool whole = wasRead(readings);
    whole = wasRead(station) && whole;
    whole = wasRead(limits) && whole;
    whole = wasRead(span) && whole;
    whole = wasRead(count) && whole;
    whole = wasRead(near) && whole;
    whole = wasRead(dates) && whole;
    if (!whole) {
        return std::nullopt;
    }
    all.readings = *readings;
    all.facts = station->facts();
    for (const auto& reading : all.readings) {
        const auto history = book.history(reading.id());
        if (!wasRead(history)) {
            return std::nullopt;
        }
        all.revisions.insert(all.revisions.end(), history->begin(), history->end());
        if (reading.values.hour) {
            static_cast<void>(wasRead(book.atHour(*reading.values.hour)));
        }
    }
    return all;
}

const Contents& soundContents() {
    static const Contents kContents = [] {
        const MemoryFolder folder;
        writeWhole(folder.path() / kName, soundBook());
        const auto book = Book::open(folder.path() / kName, OpenMode::ReadOnly);
        promise(book.has_value(), "a sound book opens", book ? "" : book.error().detail);
        auto contents = readAll(*book);
        promise(contents.has_value(), "a sound book can be read");
        return *contents;
    }();
    return kContents;
}

/// One more reading, long after all others.
store::ObservationChange oneMore() {
    store::ObservationChange change;
    change.revision = record::Uuid::fromSeed(31, 1);
    change.subject = record::Uuid::fromSeed(31, 2);
    change.values.instant = record::Instant{date::sys_days{date::year{2025} / 6 / 1}} + std::chrono::hours{9};
    change.values.zone = "Europe/London";
    change.values.dry.value = {{211, 1}, units::TemperatureUnit::Celsius};
    change.author = {"cd", ""};
    return change;
}

void checkReadOnly(const MemoryFolder& folder, const EditedBook& input) {
    const auto before = folder.contents();
    {
        auto book = Book::open(folder.path() / kName, OpenMode::ReadOnly);
        if (wasRead(book)) {
            const auto report = book->verify();
            static_cast<void>(wasRead(report));
            const auto contents = readAll(*book);
            if (report && report->sound()) {
                promise(contents.has_value(), "what verify calls sound can be read");
                promise(input.forged || sameContents(*contents, soundContents()),
                        "what was changed outside SQLite's and our own writing is found");
            }
            promise(!book->append(oneMore()).has_value(), "a book opened for reading takes nothing");
        }
    }
    promise(folder.contents() == before, "reading a book changes nothing in its folder");
}

void checkWriting(const MemoryFolder& folder, const EditedBook& input) {
    const auto before = folder.contents();
    bool mayWrite = !input.journal.empty(); // taking back an interrupted write is writing
    {
        auto book = Book::open(folder.path() / kName);
        if (wasRead(book)) {
            const bool canWrite = !book->readOnlyBecause();
            const auto report = book->verify();
            const bool sound = report && report->sound();
            const auto written = book->append(oneMore());
            mayWrite = mayWrite || written.has_value();
            promise(canWrite || !written, "a book that is only to be read takes nothing");
            promise(!canWrite || !sound || written, "a sound book takes a reading",
                    written ? "" : written.error().detail);
            if (written) {
                const auto stored = book->observation(oneMore().subject);
                promise(stored && *stored && (*stored)->values == oneMore().values,
                        "what was saved is there");
                const auto after = book->verify();
                promise(!sound || (after && after->sound()), "a sound book stays sound",
                        after && !after->problems.empty() ? after->problems.front().detail : "");
            } else {
                static_cast<void>(wasRead(written));
            }
        }
    }
    promise(mayWrite || folder.contents() == before, "a book that took nothing is left as it was");
}

} // namespace

void runBook(std::string_view bytes) {
    static const MemoryFolder kFolder;
    if (bytes.empty()) {
        return;
    }
    kFolder.clear();
    EditedBook book;
    if (bytes.front() == 'r') {
        book = {std::string{bytes.substr(1)}, {}, true};
    } else {
        book = editedBook(bytes.substr(1), kFolder.path());
    }
    writeWhole(kFolder.path() / kName, book.bytes);
    if (!book.journal.empty()) {
        writeWhole(kFolder.path() / (std::string{kName} + "-journal"), book.journal);
    }
    checkReadOnly(kFolder, book);
    checkWriting(kFolder, book);
}

} // namespace wickbook::fuzz
