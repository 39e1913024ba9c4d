// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/read_back.h"

namespace wickbook::ui {

store::Result<std::size_t> ReadBackLines::perform(Session& session,
                                                  const std::vector<record::StoredObservation>& lines,
                                                  bool ticked, const record::Author& author,
                                                  const QString& text) {
    std::vector<Replacement> changed;
    for (const record::StoredObservation& before : lines) {
        if (before.values.readBack != ticked) {
            changed.push_back({before, before.values});
            changed.back().after.readBack = ticked;
        }
    }
    return ReplaceObservations::perform(session, changed, author, text);
}

store::Result<std::size_t> PlaceOnPaper::perform(Session& session,
                                                 const std::vector<record::StoredObservation>& lines,
                                                 const std::optional<record::PaperPlace>& place,
                                                 const record::Author& author, const QString& text) {
    std::vector<Replacement> changed;
    for (const record::StoredObservation& before : lines) {
        if (before.values.paper != place) {
            changed.push_back({before, before.values});
            changed.back().after.paper = place;
        }
    }
    return ReplaceObservations::perform(session, changed, author, text);
}

} // namespace wickbook::ui
