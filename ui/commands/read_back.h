// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/commands/replace_observations.h"

#include <optional>
#include <vector>

namespace wickbook::ui {

/// Ticks lines that were held against the paper, or takes the tick off again: a revision each, all in one
/// transaction, undone and done again as one. Nothing that was read changes. The session outlives it.
class ReadBackLines {
public:
    /// As ReplaceObservations::perform; lines that stand so already are not counted.
    static store::Result<std::size_t> perform(Session& session,
                                              const std::vector<record::StoredObservation>& lines,
                                              bool ticked, const record::Author& author, const QString& text);
};

/// Says on which page of the paper register lines stand; none: not known any more. A tick stays, since the
/// words it stands for stay. As ReadBackLines otherwise.
class PlaceOnPaper {
public:
    static store::Result<std::size_t> perform(Session& session,
                                              const std::vector<record::StoredObservation>& lines,
                                              const std::optional<record::PaperPlace>& place,
                                              const record::Author& author, const QString& text);
};

} // namespace wickbook::ui
