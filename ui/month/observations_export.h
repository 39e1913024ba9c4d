// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QString>
#include <tl/expected.hpp>

namespace wickbook::ui {

/// Every observation of the book, derived and judged, as CSV, with its sidecar beside it (path +
/// "-metadata.json"). Files of these names are replaced, but never a book. How many rows were written, or the
/// sentence why they could not be; then neither file is there but as it was.
tl::expected<qsizetype, QString> exportObservations(const Session& session, const QString& path);

} // namespace wickbook::ui
