// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QUndoCommand>

#include <optional>

/// The one command behind adding, amending, judging and withdrawing: it swaps what an observation is for what
/// it shall be. Undo swaps back, by one more revision; nothing is ever taken out of the book. Undo of a first
/// entry appends a withdrawn revision.

namespace wickbook::ui {

class ReviseObservation : public QUndoCommand {
public:
    /// before: none for a new observation. What it is called in the undo menu is text.
    ReviseObservation(Session& session, std::optional<record::StoredObservation> before,
                      record::Observation after, record::Author author, const QString& text);

    /// Stores at once and pushes on the undo stack; on failure nothing is pushed, the error is returned and
    /// the session has emitted storageFailed. A change that changes nothing is not stored: an empty receipt.
    static store::Result<std::optional<store::Receipt>>
    perform(Session& session, std::optional<record::StoredObservation> before, record::Observation after,
            record::Author author, const QString& text);

    void undo() override;
    void redo() override;

private:
    void swap(const QString& why);

    Session& session_;
    record::Uuid subject_;
    record::Observation other_;   ///< what a swap will store next
    record::Observation current_; ///< what the book holds now
    record::Author author_;
    bool stored_ = false; ///< the first redo has been done by perform
};

} // namespace wickbook::ui
