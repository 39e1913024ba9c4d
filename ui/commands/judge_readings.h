// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/commands/replace_observations.h"

#include <vector>

namespace wickbook::ui {

/// What a person judges of several readings at once. Each gets a revision of its own, all in one transaction
/// and with the same reason; undone and done again as one. Undo gives every reading back the quality it had,
/// by one more revision each. Holds copies; the session outlives it.
class JudgeReadings {
public:
    /// As ReplaceObservations::perform; those that were judged so before are not counted. ChangedMeanwhile
    /// where one of them is not what it was when it was looked at.
    static store::Result<std::size_t> perform(Session& session,
                                              const std::vector<record::StoredObservation>& readings,
                                              record::Quality quality, const record::Author& author,
                                              const QString& text);
};

} // namespace wickbook::ui
