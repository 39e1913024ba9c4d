// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QUndoCommand>

#include <optional>

/// Adds, changes or takes back one dated fact of the station: an absence, an entry of the exposure diary, a
/// period. Undo and redo append revisions too, and touch that one fact only: whatever else became known of
/// the station meanwhile stays.

namespace wickbook::ui {

/// Fact: record::Absence, record::DiaryEntry or record::PeriodChange.
template <typename Fact>
class ReviseFact : public QUndoCommand {
public:
    /// before: as the station has it, none to add. after: none to take it back. Stores at once and pushes on
    /// the undo stack; on failure nothing is pushed, the error is returned and the session has emitted
    /// storageFailed. What changes nothing is neither stored nor pushed.
    static store::Result<void> perform(Session& session, const std::optional<Fact>& before,
                                       const std::optional<Fact>& after, const record::Author& author,
                                       const QString& text);

    void undo() override;
    void redo() override;

private:
    ReviseFact(Session& session, record::Uuid id, std::optional<Fact> other, record::Author author,
               const QString& text);
    void swap(const QString& why);

    Session& session_;
    record::Uuid id_;
    std::optional<Fact> other_; ///< what a swap will store next
    record::Author author_;
    bool stored_ = true; ///< the redo on pushing has been done by perform
};

/// The station's facts with this one as given, or without it.
template <typename Fact>
record::StationFacts factsWith(record::StationFacts facts, const record::Uuid& id,
                               const std::optional<Fact>& fact);

} // namespace wickbook::ui
