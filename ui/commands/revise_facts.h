// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QUndoCommand>

#include <optional>
#include <variant>
#include <vector>

/// Adds, changes or takes back facts of the station: an absence, a thermometer, a correction, a check. Undo
/// and redo append revisions too, and touch those facts only: whatever else became known of the station
/// meanwhile stays. Several facts of one act (a new thermometer and where it hangs) are one step.

namespace wickbook::ui {

/// One fact as it shall be; an empty optional takes it back.
struct FactEdit {
    record::Uuid id;
    std::variant<std::optional<record::Absence>, std::optional<record::DiaryEntry>,
                 std::optional<record::PeriodChange>, std::optional<record::Thermometer>,
                 std::optional<record::Fitting>, std::optional<record::Correction>,
                 std::optional<record::PairCheck>, std::optional<record::SaltCheck>,
                 std::optional<record::SideBySide>, std::optional<record::BesideReading>,
                 std::optional<record::MonthSigning>>
        after;
};

/// The station's facts with these as given, or without them.
record::StationFacts factsWith(record::StationFacts facts, const std::vector<FactEdit>& edits);

class ReviseFacts : public QUndoCommand {
public:
    /// Stores at once, in one transaction, and pushes on the undo stack; on failure nothing is pushed, the
    /// error is returned and the session has emitted storageFailed. What changes nothing is neither stored
    /// nor pushed.
    static store::Result<void> perform(Session& session, std::vector<FactEdit> edits,
                                       const record::Author& author, const QString& text);

    void undo() override;
    void redo() override;

private:
    ReviseFacts(Session& session, std::vector<FactEdit> other, record::Author author, const QString& text);
    void swap(const QString& why);

    Session& session_;
    std::vector<FactEdit> other_; ///< what a swap will store next
    record::Author author_;
    bool stored_ = true; ///< the redo on pushing has been done by perform
};

/// One fact. before: as the station has it, none to add. after: none to take it back.
template <typename Fact>
store::Result<void> reviseFact(Session& session, const std::optional<Fact>& before,
                               const std::optional<Fact>& after, const record::Author& author,
                               const QString& text) {
    if (before == after) {
        return {};
    }
    return ReviseFacts::perform(session, {{before ? before->id : after->id, after}}, author, text);
}

/// The fact of this kind with this identity; none where the station has none.
template <typename Fact>
std::optional<Fact> factNamed(const std::vector<Fact>& facts, const record::Uuid& id) {
    for (const Fact& fact : facts) {
        if (fact.id == id && !fact.withdrawn) {
            return fact;
        }
    }
    return std::nullopt;
}

} // namespace wickbook::ui
