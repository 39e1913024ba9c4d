// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/replace_observations.h"

namespace wickbook::ui {

ReplaceObservations::ReplaceObservations(Session& session, std::vector<Swapped> swapped,
                                         record::Author author, const QString& text)
    : QUndoCommand(text), session_(session), swapped_(std::move(swapped)), author_(std::move(author)) {}

store::Result<std::size_t> ReplaceObservations::perform(Session& session,
                                                        const std::vector<Replacement>& replacements,
                                                        const record::Author& author, const QString& text) {
    std::vector<store::ObservationChange> changes;
    std::vector<Swapped> swapped;
    for (const Replacement& one : replacements) {
        store::ObservationChange change;
        change.subject = one.before.id();
        change.replaces = one.before.stamp.sequence;
        change.values = one.after;
        change.author = author;
        changes.push_back(std::move(change));
        swapped.push_back({one.before.id(), one.before.values, one.after});
    }
    if (changes.empty()) {
        return std::size_t{0};
    }
    if (const auto stored = session.writeAll(changes); !stored) {
        return tl::unexpected(stored.error());
    }
    session.undoStack().push(new ReplaceObservations(session, std::move(swapped), author, text));
    return changes.size();
}

void ReplaceObservations::undo() {
    swap(QObject::tr("undone: %1").arg(text()));
}

void ReplaceObservations::redo() {
    if (stored_) {
        stored_ = false;
        return;
    }
    swap(QObject::tr("done again: %1").arg(text()));
}

void ReplaceObservations::swap(const QString& why) {
    std::vector<store::ObservationChange> changes;
    for (const Swapped& one : swapped_) {
        store::ObservationChange change;
        change.subject = one.subject;
        change.values = one.other;
        change.author = {author_.who, why.toStdString()};
        changes.push_back(std::move(change));
    }
    if (!session_.writeAll(changes)) {
        setObsolete(true); // the session has told why; the stack drops a command that can't be done
        return;
    }
    for (Swapped& one : swapped_) {
        std::swap(one.other, one.current);
    }
}

} // namespace wickbook::ui
