// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/judge_readings.h"

namespace wickbook::ui {

JudgeReadings::JudgeReadings(Session& session, std::vector<Change> changes, record::Author author,
                             const QString& text)
    : QUndoCommand(text), session_(session), changes_(std::move(changes)), author_(std::move(author)) {}

store::Result<std::size_t> JudgeReadings::perform(Session& session,
                                                  const std::vector<record::StoredObservation>& readings,
                                                  record::Quality quality, const record::Author& author,
                                                  const QString& text) {
    std::vector<Change> changes;
    std::vector<store::ObservationChange> toStore;
    for (const record::StoredObservation& before : readings) {
        if (before.values.quality == quality) {
            continue;
        }
        record::Observation after = before.values;
        after.quality = quality;
        store::ObservationChange change;
        change.subject = before.id();
        change.replaces = before.stamp.sequence;
        change.values = after;
        change.author = author;
        toStore.push_back(std::move(change));
        changes.push_back({before.id(), before.values, std::move(after)});
    }
    if (changes.empty()) {
        return std::size_t{0};
    }
    if (const auto stored = session.writeAll(toStore); !stored) {
        return tl::unexpected(stored.error());
    }
    const std::size_t count = changes.size();
    session.undoStack().push(new JudgeReadings(session, std::move(changes), author, text));
    return count;
}

void JudgeReadings::undo() {
    swap(QObject::tr("undone: %1").arg(text()));
}

void JudgeReadings::redo() {
    if (stored_) {
        stored_ = false;
        return;
    }
    swap(QObject::tr("done again: %1").arg(text()));
}

void JudgeReadings::swap(const QString& why) {
    std::vector<store::ObservationChange> toStore;
    for (const Change& one : changes_) {
        store::ObservationChange change;
        change.subject = one.subject;
        change.values = one.other;
        change.author = {author_.who, why.toStdString()};
        toStore.push_back(std::move(change));
    }
    if (!session_.writeAll(toStore)) {
        setObsolete(true); // the session has told why; the stack drops a command that can't be done
        return;
    }
    for (Change& one : changes_) {
        std::swap(one.other, one.current);
    }
}

} // namespace wickbook::ui
