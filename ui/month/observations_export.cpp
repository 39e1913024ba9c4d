// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/observations_export.h"

#include "core/desk/checked_range.h"
#include "core/exchange/csv.h"
#include "core/exchange/observation_columns.h"
#include "core/exchange/sidecar.h"
#include "ui/print/month_files.h"
#include "ui/text/error_words.h"

#include <QFileInfo>

namespace wickbook::ui {

tl::expected<qsizetype, QString> exportObservations(const Session& session, const QString& path) {
    const auto readings = session.checkedAll();
    if (!readings) {
        return tl::unexpected(storeErrorWords(readings.error()));
    }
    std::string text = exchange::csvLine(exchange::observationHeader());
    text += exchange::kCsvLineEnd;
    for (const checks::CheckedReading& reading : *readings) {
        text += exchange::csvLine(exchange::observationRow(reading, session.station()));
        text += exchange::kCsvLineEnd;
    }
    if (auto done = writeWholeFile(path, QByteArray(text.data(), static_cast<qsizetype>(text.size())));
        !done) {
        return tl::unexpected(done.error().sentence);
    }
    const std::string sidecar =
        exchange::sidecarMetadata(session.station(), QFileInfo(path).fileName().toStdString());
    const QByteArray metadata(sidecar.data(), static_cast<qsizetype>(sidecar.size()));
    if (auto done = writeWholeFile(path + QStringLiteral("-metadata.json"), metadata); !done) {
        return tl::unexpected(done.error().sentence);
    }
    return static_cast<qsizetype>(readings->size());
}

} // namespace wickbook::ui
