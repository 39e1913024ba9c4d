// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/revise_limits.h"

#include <memory>

namespace wickbook::ui {

ReviseLimits::ReviseLimits(Session& session, record::LimitChanges after, record::Author author,
                           const QString& text)
    : QUndoCommand(text), session_(session), other_(std::move(after)), author_(std::move(author)) {}

store::Result<void> ReviseLimits::perform(Session& session, record::LimitChanges after, record::Author author,
                                          const QString& text) {
    record::StationFacts facts = session.station().facts();
    if (facts.limits == after) {
        return {};
    }
    auto command = std::make_unique<ReviseLimits>(session, facts.limits, author, text);
    facts.limits = std::move(after);
    if (auto kept = session.reviseFacts(facts, author); !kept) {
        return kept;
    }
    command->stored_ = true;
    session.undoStack().push(command.release());
    return {};
}

void ReviseLimits::undo() {
    swap(QObject::tr("undone: %1").arg(text()));
}

void ReviseLimits::redo() {
    if (stored_) {
        stored_ = false; // QUndoStack redoes on push; perform has done it already
        return;
    }
    swap(QObject::tr("done again: %1").arg(text()));
}

void ReviseLimits::swap(const QString& why) {
    record::StationFacts facts = session_.station().facts();
    std::swap(facts.limits, other_);
    if (!session_.reviseFacts(facts, {author_.who, why.toStdString()})) {
        setObsolete(true); // the session has told why; the stack drops a command that can't be done
    }
}

} // namespace wickbook::ui
