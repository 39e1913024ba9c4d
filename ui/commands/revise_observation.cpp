// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/revise_observation.h"

namespace wickbook::ui {

namespace {

record::Observation withdrawn(record::Observation observation) {
    observation.withdrawn = true;
    return observation;
}

} // namespace

ReviseObservation::ReviseObservation(Session& session, std::optional<record::StoredObservation> before,
                                     record::Observation after, record::Author author, const QString& text)
    : QUndoCommand(text)
    , session_(session)
    , subject_(before ? before->id() : record::Uuid::random())
    , other_(before ? before->values : withdrawn(after))
    , current_(std::move(after))
    , author_(std::move(author)) {}

store::Result<std::optional<store::Receipt>>
ReviseObservation::perform(Session& session, std::optional<record::StoredObservation> before,
                           record::Observation after, record::Author author, const QString& text) {
    if (before && before->values == after) {
        return std::optional<store::Receipt>{};
    }
    auto command = std::make_unique<ReviseObservation>(session, before, after, author, text);
    store::ObservationChange change;
    change.subject = command->subject_;
    change.replaces = before ? std::optional{before->stamp.sequence} : std::nullopt;
    change.values = std::move(after);
    change.author = std::move(author);
    auto receipt = session.write(change);
    if (!receipt) {
        return tl::unexpected(receipt.error());
    }
    command->stored_ = true;
    session.undoStack().push(command.release());
    return std::optional{*receipt};
}

void ReviseObservation::undo() {
    swap(QObject::tr("undone: %1").arg(text()));
}

void ReviseObservation::redo() {
    if (stored_) {
        stored_ = false; // QUndoStack redoes on push; perform has done it already
        return;
    }
    swap(QObject::tr("done again: %1").arg(text()));
}

void ReviseObservation::swap(const QString& why) {
    store::ObservationChange change;
    change.subject = subject_;
    change.values = other_;
    change.author = {author_.who, why.toStdString()};
    if (!session_.write(change)) {
        setObsolete(true); // the session has told why; the stack drops a command that can't be done
        return;
    }
    std::swap(other_, current_);
}

} // namespace wickbook::ui
