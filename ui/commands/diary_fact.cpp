// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/diary_fact.h"

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

} // namespace

template <typename Fact>
record::StationFacts factsWith(record::StationFacts facts, const record::Uuid& id,
                               const std::optional<Fact>& fact) {
    std::vector<Fact>& list = listOf(facts, static_cast<const Fact*>(nullptr));
    const auto place =
        std::find_if(list.begin(), list.end(), [&](const Fact& candidate) { return candidate.id == id; });
    if (place == list.end()) {
        if (fact) {
            list.push_back(*fact);
        }
    } else if (fact) {
        *place = *fact;
    } else {
        list.erase(place); // the book withdraws what is left out
    }
    return facts;
}

template <typename Fact>
ReviseFact<Fact>::ReviseFact(Session& session, record::Uuid id, std::optional<Fact> other,
                             record::Author author, const QString& text)
    : QUndoCommand(text), session_(session), id_(id), other_(std::move(other)), author_(std::move(author)) {}

template <typename Fact>
store::Result<void> ReviseFact<Fact>::perform(Session& session, const std::optional<Fact>& before,
                                              const std::optional<Fact>& after, const record::Author& author,
                                              const QString& text) {
    if (before == after) {
        return {};
    }
    const record::Uuid id = before ? before->id : after->id;
    if (auto kept = session.reviseFacts(factsWith(session.station().facts(), id, after), author); !kept) {
        return kept;
    }
    session.undoStack().push(new ReviseFact(session, id, before, author, text));
    return {};
}

template <typename Fact>
void ReviseFact<Fact>::undo() {
    swap(QObject::tr("undone: %1").arg(text()));
}

template <typename Fact>
void ReviseFact<Fact>::redo() {
    if (stored_) {
        stored_ = false;
        return;
    }
    swap(QObject::tr("done again: %1").arg(text()));
}

template <typename Fact>
void ReviseFact<Fact>::swap(const QString& why) {
    record::StationFacts facts = session_.station().facts();
    const auto& list = listOf(facts, static_cast<const Fact*>(nullptr));
    const auto place =
        std::find_if(list.begin(), list.end(), [&](const Fact& fact) { return fact.id == id_; });
    std::optional<Fact> now = place == list.end() ? std::nullopt : std::optional{*place};
    if (!session_.reviseFacts(factsWith(std::move(facts), id_, other_), {author_.who, why.toStdString()})) {
        setObsolete(true); // the session has told why; the stack drops a command that can't be done
        return;
    }
    other_ = std::move(now);
}

template class ReviseFact<record::Absence>;
template class ReviseFact<record::DiaryEntry>;
template class ReviseFact<record::PeriodChange>;
template record::StationFacts factsWith(record::StationFacts, const record::Uuid&,
                                        const std::optional<record::PeriodChange>&);

} // namespace wickbook::ui
