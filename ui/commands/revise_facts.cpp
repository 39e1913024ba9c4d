// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/revise_facts.h"

#include <algorithm>
#include <memory>

namespace wickbook::ui {

namespace {

std::vector<record::Absence>& listOf(record::StationFacts& facts, const record::Absence*) {
    return facts.absences;
}
std::vector<record::DiaryEntry>& listOf(record::StationFacts& facts, const record::DiaryEntry*) {
    return facts.diary;
}
std::vector<record::PeriodChange>& listOf(record::StationFacts& facts, const record::PeriodChange*) {
    return facts.periods;
}
std::vector<record::Thermometer>& listOf(record::StationFacts& facts, const record::Thermometer*) {
    return facts.thermometers;
}
std::vector<record::Fitting>& listOf(record::StationFacts& facts, const record::Fitting*) {
    return facts.fittings;
}
std::vector<record::Correction>& listOf(record::StationFacts& facts, const record::Correction*) {
    return facts.corrections;
}
std::vector<record::PairCheck>& listOf(record::StationFacts& facts, const record::PairCheck*) {
    return facts.pairChecks;
}
std::vector<record::SaltCheck>& listOf(record::StationFacts& facts, const record::SaltCheck*) {
    return facts.saltChecks;
}
std::vector<record::SideBySide>& listOf(record::StationFacts& facts, const record::SideBySide*) {
    return facts.sideBySides;
}
std::vector<record::BesideReading>& listOf(record::StationFacts& facts, const record::BesideReading*) {
    return facts.besideReadings;
}
std::vector<record::MonthSigning>& listOf(record::StationFacts& facts, const record::MonthSigning*) {
    return facts.signings;
}

/// Lays the fact in, or takes it out; what stood there before is returned.
template <typename Fact>
std::optional<Fact> lay(record::StationFacts& facts, const record::Uuid& id,
                        const std::optional<Fact>& fact) {
    std::vector<Fact>& list = listOf(facts, static_cast<const Fact*>(nullptr));
    const auto place =
        std::find_if(list.begin(), list.end(), [&](const Fact& candidate) { return candidate.id == id; });
    if (place == list.end()) {
        if (fact) {
            list.push_back(*fact);
        }
        return std::nullopt;
    }
    std::optional<Fact> before = *place;
    if (fact) {
        *place = *fact;
    } else {
        list.erase(place); // the book withdraws what is left out
    }
    return before;
}

/// The edits that would put everything back.
std::vector<FactEdit> layAll(record::StationFacts& facts, const std::vector<FactEdit>& edits) {
    std::vector<FactEdit> back;
    for (const FactEdit& edit : edits) {
        std::visit(
            [&](const auto& after) {
                back.push_back({edit.id, lay(facts, edit.id, after)});
            },
            edit.after);
    }
    std::reverse(back.begin(), back.end());
    return back;
}

} // namespace

record::StationFacts factsWith(record::StationFacts facts, const std::vector<FactEdit>& edits) {
    layAll(facts, edits);
    return facts;
}

ReviseFacts::ReviseFacts(Session& session, std::vector<FactEdit> other, record::Author author,
                         const QString& text)
    : QUndoCommand(text), session_(session), other_(std::move(other)), author_(std::move(author)) {}

store::Result<void> ReviseFacts::perform(Session& session, std::vector<FactEdit> edits,
                                         const record::Author& author, const QString& text) {
    record::StationFacts facts = session.station().facts();
    std::vector<FactEdit> back = layAll(facts, edits);
    if (facts == session.station().facts()) {
        return {};
    }
    if (auto kept = session.reviseFacts(facts, author); !kept) {
        return kept;
    }
    session.undoStack().push(new ReviseFacts(session, std::move(back), author, text));
    return {};
}

void ReviseFacts::undo() {
    swap(QObject::tr("undone: %1").arg(text()));
}

void ReviseFacts::redo() {
    if (stored_) {
        stored_ = false;
        return;
    }
    swap(QObject::tr("done again: %1").arg(text()));
}

void ReviseFacts::swap(const QString& why) {
    record::StationFacts facts = session_.station().facts();
    std::vector<FactEdit> back = layAll(facts, other_);
    if (!session_.reviseFacts(facts, {author_.who, why.toStdString()})) {
        setObsolete(true); // the session has told why; the stack drops a command that can't be done
        return;
    }
    other_ = std::move(back);
}

} // namespace wickbook::ui
