// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/store/salvage_testing.h"
#include "tests/faults/long_run.h"
#include "tests/faults/processes.h"

#include <set>
#include <string>

/// A book, the ways in which it is damaged, and what must hold of every salvage whatever the damage was. What
/// the book held is known from SQLite, asked before the damage.

namespace wickbook::store::testing {

inline constexpr const char* kEveryTable =
    "SELECT sequence, id, kind, subject, recorded_at, who, why, body, checksum FROM revision "
    "UNION ALL SELECT one, head, count, 0, 0, 0, 0, 0, 0 FROM chain "
    "UNION ALL SELECT subject, sequence, revisions, instant, filed_day, hour_day, hour_minute, live, 0 "
    "FROM observation ORDER BY 1, 2";

/// What is the same of a revision in the old book and in the new one: all but its number and checksum.
inline std::multiset<PlainRow> withoutNumbers(const std::vector<PlainRow>& rows) {
    std::multiset<PlainRow> kept;
    for (const PlainRow& row : rows) {
        if (row.size() == 9)
            kept.insert({row.begin() + 1, row.end() - 1});
    }
    return kept;
}

struct SalvageOutcome {
    bool made = false; ///< false: no revision could be read
    SalvageReport report;
    std::int64_t missing = 0; ///< revisions of the sound book that the new one does not hold as they were
};

class DamageCase : public ::testing::Test {
protected:
    TempFolder folder;
    std::string sound;
    std::vector<PlainRow> revisions;
    std::vector<PlainRow> values;

    /// A book of so many readings, every tenth with a note that takes pages of its own, some revised.
    void make(int readings, std::size_t longNote = 9000) {
        const auto path = folder / "sound";
        {
            Book book = newBook(path);
            std::vector<ObservationChange> changes;
            for (int i = 0; i < readings; ++i) {
                auto observation = reading(i);
                if (i % 10 == 0)
                    observation.note = std::string(longNote, static_cast<char>('a' + i % 26));
                changes.push_back(change(observation, static_cast<std::uint64_t>(i), "typed"));
            }
            for (int i = 0; i < readings; i += 7) {
                auto again =
                    change(reading(i), static_cast<std::uint64_t>(100'000 + i), "read the wrong mark");
                again.subject = changes[static_cast<std::size_t>(i)].subject;
                again.values.note = "corrected";
                changes.push_back(again);
            }
            ASSERT_TRUE(book.appendAll(changes));
        }
        sound = bytesAt(path);
        revisions = askSqlite(path, kAllRevisions);
        values = askSqlite(path, kEveryTable);
    }

    /// Salvages the file and holds what came of it against the sound book.
    SalvageOutcome salvageOf(const std::string& damaged, const std::string& what) {
        const TempFolder here;
        writeBytes(here / "damaged", damaged);
        return salvageAt(here, what);
    }

    /// The same of the file "damaged" in a folder, with whatever lies beside it.
    SalvageOutcome salvageAt(const TempFolder& here, const std::string& what) {
        const auto before = contentsOf(here.path());
        const auto report = salvaged(here / "damaged", here / "fresh");
        SalvageOutcome outcome;
        auto after = contentsOf(here.path());
        after.erase("fresh");
        EXPECT_TRUE(after == before) << what << ": something beside the new book was written";
        if (!report) {
            EXPECT_TRUE(report.error().kind == StoreErrorKind::Damaged ||
                        report.error().kind == StoreErrorKind::NotABook)
                << what << ": " << report.error().detail;
            EXPECT_FALSE(std::filesystem::exists(here / "fresh")) << what;
            return outcome;
        }
        outcome.made = true;
        outcome.report = *report;
        EXPECT_EQ(report->proved + report->unproven + report->altered + report->lost, report->expected)
            << what;
        const auto book = Book::open(here / "fresh");
        EXPECT_TRUE(book) << what;
        EXPECT_EQ(book ? problemsOf(*book) : "none", "") << what;
        const auto fresh = askSqlite(here / "fresh", kAllRevisions);
        const auto was = withoutNumbers(revisions);
        const auto is = withoutNumbers(fresh);
        std::multiset<PlainRow> gone;
        std::ranges::set_difference(was, is, std::inserter(gone, gone.end()));
        outcome.missing = static_cast<std::int64_t>(gone.size());
        const auto asWritten = static_cast<std::int64_t>(was.size()) - outcome.missing;
        EXPECT_GE(asWritten, report->proved) << what << ": what is called proved is not what was written";
        EXPECT_LE(asWritten, report->proved + report->unproven + report->altered) << what;
        EXPECT_TRUE(!report->chainKept || fresh == revisions) << what;
        return outcome;
    }

    /// The pages, from 1, that hold a byte of this revision's record, found by its texts in the sound bytes.
    [[nodiscard]] std::set<std::size_t> pagesOf(const PlainRow& row) const {
        std::set<std::size_t> pages;
        const std::size_t begin = sound.find(row[1].substr(2) + row[2].substr(2));
        EXPECT_NE(begin, std::string::npos);
        pages.insert(begin / 4096 + 1);
        const std::string checksum = row[8].substr(2);
        for (std::size_t at = sound.find(checksum); at != std::string::npos;
             at = sound.find(checksum, at + 1))
            pages.insert(at / 4096 + 1);
        return pages;
    }
};

} // namespace wickbook::store::testing
