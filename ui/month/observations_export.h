// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QString>
#include <tl/expected.hpp>

namespace wickbook::ui {

/// Every observation of the book, derived and judged, as CSV, with its sidecar beside it (path +
/// "-metadata.json"). How many rows were written, or the sentence why they could not be.
tl::expected<qsizetype, QString> exportObservations(const Session& session, const QString& path);

} // namespace wickbook::ui
