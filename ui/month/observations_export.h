// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QString>
#include <tl/expected.hpp>

#include <functional>

namespace wickbook::ui {

/// Every observation of the book, derived and judged, as CSV, with its sidecar beside it (path +
/// "-metadata.json"). Files of these names are replaced, but never a book. How many rows were written, or the
/// sentence why they could not be; then neither file is there but as it was.
/// progress: told how far it is, false stops it; then nothing is written.
using ExportProgress = std::function<bool(std::size_t done, std::size_t total)>;
tl::expected<qsizetype, QString> exportObservations(const Session& session, const QString& path,
                                                    const ExportProgress& progress = {});

} // namespace wickbook::ui
