// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/judge_readings.h"

namespace wickbook::ui {

store::Result<std::size_t> JudgeReadings::perform(Session& session,
                                                  const std::vector<record::StoredObservation>& readings,
                                                  record::Quality quality, const record::Author& author,
                                                  const QString& text) {
    std::vector<Replacement> judged;
    for (const record::StoredObservation& before : readings) {
        if (before.values.quality != quality) {
            judged.push_back({before, before.values});
            judged.back().after.quality = quality;
        }
    }
    return ReplaceObservations::perform(session, judged, author, text);
}

} // namespace wickbook::ui
