// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/import_preview.h"

#include "core/record/derived_reading.h"

#include <algorithm>
#include <map>
#include <set>

namespace wickbook::desk {

namespace {

using store::Result;

/// Readings of the book this far round those of the file are their neighbours.
constexpr date::days kMargin{31};

Result<std::vector<record::StoredObservation>> everythingIn(const store::Book& book) {
    const auto span = book.span();
    if (!span) {
        return tl::unexpected(span.error());
    }
    if (!*span) {
        return std::vector<record::StoredObservation>{};
    }
    return book.observationsBetween((*span)->first, (*span)->second + std::chrono::seconds{1});
}

/// Lines of one plan with their verdicts. SameHourTwice of earlier files is among the rejected.
void addLines(NamedPlan& named, exchange::TakenReadings& taken, ImportPreview& preview) {
    // As if conflicts were revised: what they would become is shown, and the choice is made later.
    auto decision = exchange::decideConflicts(named.plan, named.name, taken, exchange::OnConflict::Revise);
    const auto first = static_cast<std::ptrdiff_t>(preview.lines.size());
    using Key = std::pair<std::string, std::int64_t>;
    std::map<Key, exchange::PlannedChange*> changes;
    for (exchange::PlannedChange& change : decision.changes) {
        changes[{change.file, change.line}] = &change;
    }
    std::set<Key> refused;
    for (auto* rejected : {&named.plan.rejected, &decision.rejected}) {
        for (exchange::RejectedLine& line : *rejected) {
            if (rejected == &decision.rejected) {
                refused.insert({line.file == named.name ? std::string{} : line.file, line.line});
            }
            PreviewLine shown;
            shown.file = line.file;
            shown.line = line.line;
            shown.text = line.text;
            shown.verdict = LineVerdict::Rejected;
            shown.rejected = std::move(line);
            preview.lines.push_back(std::move(shown));
            ++preview.rejected;
        }
    }
    for (exchange::PlannedObservation& planned : named.plan.observations) {
        const Key key{planned.file, planned.line};
        if (refused.contains(key)) {
            continue;
        }
        PreviewLine shown;
        shown.file = planned.file.empty() ? named.name : planned.file;
        shown.line = planned.line;
        shown.text = std::move(planned.text);
        const auto change = changes.find(key);
        if (change == changes.end()) {
            shown.verdict = LineVerdict::Same;
            shown.values = std::move(planned.values);
            ++preview.same;
        } else {
            shown.values = std::move(change->second->values);
            shown.replaces = std::move(change->second->replaces);
            shown.verdict = shown.replaces ? LineVerdict::Conflict : LineVerdict::Fresh;
            ++(shown.replaces ? preview.conflicts : preview.fresh);
        }
        preview.lines.push_back(std::move(shown));
    }
    std::stable_sort(preview.lines.begin() + first, preview.lines.end(), [](const auto& a, const auto& b) {
        return std::tie(a.file, a.line) < std::tie(b.file, b.line);
    });
    preview.cut = preview.cut || named.plan.cut;
}

/// A reading of the series and the line it comes from; none: the book's.
struct Member {
    record::StoredObservation reading;
    PreviewLine* line = nullptr;
};

std::vector<Member> membersOf(ImportPreview& preview, std::vector<record::StoredObservation> stored) {
    std::vector<Member> members;
    std::set<record::Uuid> replaced;
    for (PreviewLine& line : preview.lines) {
        if (line.verdict == LineVerdict::Fresh || line.verdict == LineVerdict::Conflict) {
            record::StoredObservation reading;
            reading.stamp.subject = record::Uuid::random();
            reading.values = line.values;
            members.push_back({std::move(reading), &line});
            if (line.replaces) {
                replaced.insert(line.replaces->id());
            }
        }
    }
    if (members.empty()) {
        return members;
    }
    const auto [earliest, latest] =
        std::minmax_element(members.begin(), members.end(), [](const Member& a, const Member& b) {
            return a.reading.values.instant < b.reading.values.instant;
        });
    const auto from = earliest->reading.values.instant - kMargin;
    const auto to = latest->reading.values.instant + kMargin;
    for (record::StoredObservation& reading : stored) {
        if (reading.values.instant >= from && reading.values.instant <= to &&
            !replaced.contains(reading.id())) {
            members.push_back({std::move(reading), nullptr});
        }
    }
    std::stable_sort(members.begin(), members.end(), [](const Member& a, const Member& b) {
        return a.reading.values.instant < b.reading.values.instant;
    });
    return members;
}

/// Judges what would come in among its neighbours; false where stopped.
bool judge(ImportPreview& preview, std::vector<record::StoredObservation> stored,
           const record::StationRecord& station, std::optional<record::Instant> now,
           const PreviewProgress& progress) {
    auto members = membersOf(preview, std::move(stored));
    std::vector<record::DerivedReading> series;
    series.reserve(members.size());
    for (Member& member : members) {
        series.push_back(record::deriveReading(std::move(member.reading), station));
    }
    const checks::StationLimits limits{station.facts().limits};
    auto checked = checks::checkSeries(series, 0, series.size(), station, limits, now, progress);
    if (checked.size() != series.size()) {
        return false;
    }
    for (std::size_t i = 0; i < members.size(); ++i) {
        if (members[i].line == nullptr) {
            continue;
        }
        auto& findings = checked[i].findings;
        std::erase_if(findings,
                      [](const auto& finding) { return finding.severity < checks::Severity::Soft; });
        preview.marked += findings.empty() ? 0 : 1;
        members[i].line->findings = std::move(findings);
    }
    return true;
}

} // namespace

Result<ImportPreview> previewImport(const store::Book& book, const record::StationRecord& station,
                                    std::vector<NamedPlan> plans, std::optional<record::Instant> now,
                                    const PreviewProgress& progress) {
    auto stored = everythingIn(book);
    if (!stored) {
        return tl::unexpected(stored.error());
    }
    exchange::TakenReadings taken;
    for (const record::StoredObservation& reading : *stored) {
        taken.add(reading);
    }
    ImportPreview preview;
    for (NamedPlan& plan : plans) {
        addLines(plan, taken, preview);
    }
    preview.stopped = !judge(preview, std::move(*stored), station, now, progress);
    return preview;
}

std::vector<store::ObservationChange> changesOf(const ImportPreview& preview, exchange::OnConflict onConflict,
                                                const std::string& who) {
    std::vector<store::ObservationChange> changes;
    for (const PreviewLine& line : preview.lines) {
        const bool comes = line.verdict == LineVerdict::Fresh || (line.verdict == LineVerdict::Conflict &&
                                                                  onConflict == exchange::OnConflict::Revise);
        if (!comes) {
            continue;
        }
        store::ObservationChange change;
        change.values = line.values;
        change.author = {line.values.observer.empty() ? who : line.values.observer,
                         "imported from " + line.file + ", line " + std::to_string(line.line)};
        if (line.replaces) {
            change.subject = line.replaces->id();
            change.replaces = line.replaces->stamp.sequence;
        }
        changes.push_back(std::move(change));
    }
    return changes;
}

std::vector<exchange::RejectedLine> rejectsOf(const ImportPreview& preview, exchange::OnConflict onConflict) {
    std::vector<exchange::RejectedLine> rejects;
    for (const PreviewLine& line : preview.lines) {
        if (line.rejected) {
            rejects.push_back(*line.rejected);
        } else if (line.verdict == LineVerdict::Conflict && onConflict == exchange::OnConflict::Reject) {
            const auto& values = line.values;
            rejects.push_back(
                {line.file,
                 line.line,
                 line.text,
                 exchange::RejectReason::HourTaken,
                 std::string(exchange::fieldName(exchange::ImportField::Time)),
                 values.hour ? record::dateText(values.hour->date) + " " + record::hourText(values.hour->hour)
                             : record::instantText(values.instant),
                 {}});
        }
    }
    return rejects;
}

} // namespace wickbook::desk
