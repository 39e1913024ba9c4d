// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QUndoCommand>

#include <vector>

namespace wickbook::ui {

/// What a person judges of several readings at once. Each gets a revision of its own, all in one transaction
/// and with the same reason; undone and done again as one. Undo gives every reading back the quality it had,
/// by one more revision each. Holds copies; the session outlives it.
class JudgeReadings : public QUndoCommand {
public:
    /// Stores at once and pushes on the undo stack; how many readings were judged, those that were judged so
    /// before not counted (0: nothing stored, nothing pushed). On failure nothing is stored, least of all
    /// some of them: ChangedMeanwhile where one of them is not what it was when it was looked at.
    static store::Result<std::size_t> perform(Session& session,
                                              const std::vector<record::StoredObservation>& readings,
                                              record::Quality quality, const record::Author& author,
                                              const QString& text);

    void undo() override;
    void redo() override;

private:
    struct Change {
        record::Uuid subject;
        record::Observation other;   ///< what a swap will store next
        record::Observation current; ///< what the book holds now
    };

    JudgeReadings(Session& session, std::vector<Change> changes, record::Author author, const QString& text);
    void swap(const QString& why);

    Session& session_;
    std::vector<Change> changes_;
    record::Author author_;
    bool stored_ = true; ///< the redo on pushing has been done by perform
};

} // namespace wickbook::ui
