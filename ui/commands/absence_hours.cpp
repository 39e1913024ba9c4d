// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/absence_hours.h"

namespace wickbook::ui {

ExcuseHours::ExcuseHours(Session& session, std::vector<store::ObservationChange> lines, record::Author author,
                         const QString& text)
    : QUndoCommand(text), session_(session), lines_(std::move(lines)), author_(std::move(author)) {}

store::Result<void> ExcuseHours::perform(Session& session, std::span<const record::ExpectedHour> hours,
                                         const std::string& reason, const record::Author& author,
                                         const QString& text) {
    if (hours.empty()) {
        return {};
    }
    std::vector<store::ObservationChange> lines;
    for (const record::ExpectedHour& hour : hours) {
        store::ObservationChange line;
        record::placeInTime(line.values, session.station(), hour.instant);
        line.values.hour = hour.hour;
        line.values.observer = author.who;
        line.values.origin = record::Origin::Missing;
        line.values.missingReason = reason;
        line.author = author;
        lines.push_back(std::move(line));
    }
    if (const auto stored = session.writeAll(lines); !stored) {
        return tl::unexpected(stored.error());
    }
    session.undoStack().push(new ExcuseHours(session, std::move(lines), author, text));
    return {};
}

void ExcuseHours::undo() {
    write(true, QObject::tr("undone: %1").arg(text()));
}

void ExcuseHours::redo() {
    if (stored_) {
        stored_ = false;
        return;
    }
    write(false, QObject::tr("done again: %1").arg(text()));
}

void ExcuseHours::write(bool withdrawn, const QString& why) {
    std::vector<store::ObservationChange> toStore = lines_;
    for (store::ObservationChange& line : toStore) {
        line.revision = record::Uuid::random();
        line.values.withdrawn = withdrawn;
        line.author = {author_.who, why.toStdString()};
    }
    if (!session_.writeAll(toStore)) {
        setObsolete(true); // the session has told why; the stack drops a command that can't be done
    }
}

} // namespace wickbook::ui
