// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QUndoCommand>

#include <span>
#include <string>
#include <vector>

namespace wickbook::ui {

/// One reason for a run of hours at which nothing was read: a missing line for each, all in one transaction
/// and one step of undo. Undo withdraws them, by one more revision each; what was read there meanwhile is no
/// concern of it. Holds copies; the session outlives it.
class ExcuseHours : public QUndoCommand {
public:
    /// The hours must be without anything written down. Stores at once and pushes on the undo stack; on
    /// failure nothing is stored, least of all some of them.
    static store::Result<void> perform(Session& session, std::span<const record::ExpectedHour> hours,
                                       const std::string& reason, const record::Author& author,
                                       const QString& text);

    void undo() override;
    void redo() override;

private:
    ExcuseHours(Session& session, std::vector<store::ObservationChange> lines, record::Author author,
                const QString& text);
    void write(bool withdrawn, const QString& why);

    Session& session_;
    std::vector<store::ObservationChange> lines_;
    record::Author author_;
    bool stored_ = true; ///< the redo on pushing has been done by perform
};

} // namespace wickbook::ui
