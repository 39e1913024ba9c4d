// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"
#include "ui/takein/takein_steps.h"

#include <QUndoCommand>

namespace wickbook::ui {

/// All that was brought in at once, as one step that can be taken back and done again: new readings are
/// withdrawn, revised ones get their values of before, each by one more revision, all in one transaction.
/// Where one of them was changed meanwhile from elsewhere nothing is taken back, and the session tells why.
class WithdrawImport : public QUndoCommand {
public:
    /// The readings are in the book already.
    WithdrawImport(Session& session, std::vector<BroughtIn> readings, std::string who, const QString& text);

    void undo() override;
    void redo() override;

private:
    void store(bool back);
    /// Beside the window, by a book of its own, after a copy has been kept.
    store::Result<std::vector<store::Receipt>>
    storeMany(const std::vector<store::ObservationChange>& changes);

    Session& session_;
    std::vector<BroughtIn> readings_;
    std::string who_;
    bool stored_ = true; ///< the first redo was done before this was made
};

} // namespace wickbook::ui
