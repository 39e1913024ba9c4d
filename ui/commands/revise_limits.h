// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QUndoCommand>

/// Changes the limits of the checks. Undo and redo append revisions too; what else is known of the station is
/// left as it is at that moment.

namespace wickbook::ui {

class ReviseLimits : public QUndoCommand {
public:
    ReviseLimits(Session& session, record::LimitChanges after, record::Author author, const QString& text);

    /// Stores at once and pushes on the undo stack; on failure nothing is pushed, the error is returned and
    /// the session has emitted storageFailed. A change that changes nothing is neither stored nor pushed.
    static store::Result<void> perform(Session& session, record::LimitChanges after, record::Author author,
                                       const QString& text);

    void undo() override;
    void redo() override;

private:
    void swap(const QString& why);

    Session& session_;
    record::LimitChanges other_; ///< what a swap will store next
    record::Author author_;
    bool stored_ = false; ///< the first redo has been done by perform
};

} // namespace wickbook::ui
