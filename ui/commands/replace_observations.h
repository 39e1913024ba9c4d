// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QUndoCommand>

#include <cstddef>
#include <vector>

/// Several observations get other values as one step: one transaction, one step of undo, all of them or none.
/// What judging a run and moving a page have in common. The session is borrowed and outlives the undo stack.

namespace wickbook::ui {

struct Replacement {
    record::StoredObservation before;
    record::Observation after;
};

class ReplaceObservations : public QUndoCommand {
public:
    /// Stores at once and pushes on the undo stack; how many were stored. Nothing to replace stores and
    /// pushes nothing. On failure (storage, or one changed since it was looked at) nothing is stored, nothing
    /// is pushed, and the session has emitted storageFailed.
    static store::Result<std::size_t> perform(Session& session, const std::vector<Replacement>& replacements,
                                              const record::Author& author, const QString& text);

    void undo() override;
    void redo() override;

private:
    struct Swapped {
        record::Uuid subject;
        record::Observation other;   ///< what a swap will store next
        record::Observation current; ///< what the book holds now
    };

    ReplaceObservations(Session& session, std::vector<Swapped> swapped, record::Author author,
                        const QString& text);
    void swap(const QString& why);

    Session& session_;
    std::vector<Swapped> swapped_;
    record::Author author_;
    bool stored_ = true; ///< the redo on pushing has been done by perform
};

} // namespace wickbook::ui
