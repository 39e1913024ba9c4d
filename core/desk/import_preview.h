// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/check_series.h"
#include "core/exchange/conflict.h"
#include "core/store/book.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

/// What would become of every line of a file, held against the book and judged by the rules, before anything
/// is stored: a dry run whose result can be shown, thrown away without a trace, or handed to the store.

namespace wickbook::desk {

enum class LineVerdict {
    Fresh,    ///< comes in as a new reading
    Same,     ///< the book has it already
    Conflict, ///< the book has another reading in its place; what becomes of it is the person's choice
    Rejected  ///< can't come in
};

struct PreviewLine {
    std::string file; ///< name without folders
    std::int64_t line = 0;
    std::string text;
    LineVerdict verdict = LineVerdict::Fresh;
    record::Observation values; ///< unless rejected; of a conflict, the revision it would be
    std::optional<record::StoredObservation> replaces; ///< of a conflict
    std::optional<exchange::RejectedLine> rejected;
    std::vector<checks::Finding> findings; ///< soft or graver, of fresh lines and of conflicts if revised
};

struct ImportPreview {
    std::vector<PreviewLine> lines; ///< by file as given and line
    std::int64_t fresh = 0;
    std::int64_t same = 0;
    std::int64_t conflicts = 0;
    std::int64_t rejected = 0;
    std::int64_t marked = 0; ///< lines with findings
    bool cut = false;        ///< the file goes on behind the last line
    bool stopped = false;    ///< by progress: what is here is of no use
};

/// A plan and the name of its file, without folders.
struct NamedPlan {
    std::string name;
    exchange::ImportPlan plan;
};

using PreviewProgress = std::function<bool(std::size_t done, std::size_t total)>;

/// Plans are used up. now: for readings in the future.
store::Result<ImportPreview> previewImport(const store::Book& book, const record::StationRecord& station,
                                           std::vector<NamedPlan> plans, std::optional<record::Instant> now,
                                           const PreviewProgress& progress = {});

/// What the store would take. who: kept with the revisions where a line names no observer.
std::vector<store::ObservationChange> changesOf(const ImportPreview& preview, exchange::OnConflict onConflict,
                                                const std::string& who);

/// The lines for the rejects file: those that can't come in and, where conflicts are rejected, these.
std::vector<exchange::RejectedLine> rejectsOf(const ImportPreview& preview, exchange::OnConflict onConflict);

} // namespace wickbook::desk
