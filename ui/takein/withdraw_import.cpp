// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/takein/withdraw_import.h"

namespace wickbook::ui {

WithdrawImport::WithdrawImport(Session& session, std::vector<BroughtIn> readings, std::string who,
                               const QString& text)
    : QUndoCommand(text), session_(session), readings_(std::move(readings)), who_(std::move(who)) {}

void WithdrawImport::undo() {
    store(true);
}

void WithdrawImport::redo() {
    if (stored_) {
        stored_ = false;
        return;
    }
    store(false);
}

void WithdrawImport::store(bool back) {
    const QString why = back ? QObject::tr("undone: %1") : QObject::tr("done again: %1");
    std::vector<store::ObservationChange> changes;
    changes.reserve(readings_.size());
    for (const BroughtIn& reading : readings_) {
        store::ObservationChange change;
        change.subject = reading.subject;
        change.replaces = reading.sequence;
        change.values = back && reading.before ? *reading.before : reading.after;
        change.values.withdrawn = back && !reading.before;
        change.author = {who_, why.arg(text()).toStdString()};
        changes.push_back(std::move(change));
    }
    const auto receipts = session_.writeAll(changes);
    if (!receipts) {
        setObsolete(true); // the session has told why
        return;
    }
    for (std::size_t i = 0; i < readings_.size(); ++i) {
        readings_[i].sequence = (*receipts)[i].sequence;
    }
}

} // namespace wickbook::ui
