// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/observations_export.h"

#include "core/desk/checked_range.h"
#include "core/exchange/csv.h"
#include "core/exchange/file_head.h"
#include "core/exchange/observation_columns.h"
#include "core/exchange/sidecar.h"
#include "ui/text/error_words.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QSaveFile>

namespace wickbook::ui {

namespace {

struct ExportText {
    Q_DECLARE_TR_FUNCTIONS(ExportText)
};

tl::unexpected<QString> notWritten(const QSaveFile& file) {
    //: %1 a path, %2 the system's own reason
    return tl::unexpected(
        ExportText::tr(
            "%1 could not be written: %2. Choose another folder or free some space, then try again.")
            .arg(QDir::toNativeSeparators(file.fileName()), file.errorString()));
}

/// Flushed by hand: a full disk shows here, with its reason, which commit() no longer tells.
bool isWritten(QSaveFile& file, const std::string& bytes) {
    const auto size = static_cast<qsizetype>(bytes.size());
    return file.open(QIODevice::WriteOnly) && file.write(bytes.data(), size) == size && file.flush();
}

} // namespace

tl::expected<qsizetype, QString> exportObservations(const Session& session, const QString& path,
                                                    const ExportProgress& progress) {
    const QString sidecarPath = path + QStringLiteral("-metadata.json");
    for (const QString& name : {path, sidecarPath}) {
        if (exchange::isDatabase(QFileInfo(name).filesystemFilePath())) {
            //: %1 a path
            return tl::unexpected(
                ExportText::tr(
                    "%1 is a book or another database, and nothing is written over one. Choose another name.")
                    .arg(QDir::toNativeSeparators(name)));
        }
    }
    // Judging is the first half of the way, writing the rows the other.
    bool stopped = false;
    const auto go = [&](std::size_t done, std::size_t total) {
        stopped = stopped || (progress && !progress(done, 2 * total));
        return !stopped;
    };
    const auto readings = session.checkedAll(go);
    if (!readings) {
        return tl::unexpected(storeErrorWords(readings.error()));
    }
    std::string text = exchange::csvLine(exchange::observationHeader());
    text += exchange::kCsvLineEnd;
    constexpr std::size_t kRowsBetweenLooks = 500;
    for (std::size_t row = 0; row < readings->size() && !stopped; ++row) {
        const checks::CheckedReading& reading = (*readings)[row];
        if (row % kRowsBetweenLooks == 0) {
            go(readings->size() + row, readings->size());
        }
        text += exchange::csvLine(exchange::observationRow(reading, session.station()));
        text += exchange::kCsvLineEnd;
    }
    if (stopped) {
        return tl::unexpected(ExportText::tr("Stopped; nothing was written."));
    }
    // Both are written before either gets its name: a table without its metadata is half an export.
    QSaveFile table(path);
    QSaveFile sidecar(sidecarPath);
    if (!isWritten(table, text)) {
        return notWritten(table);
    }
    if (!isWritten(sidecar,
                   exchange::sidecarMetadata(session.station(), QFileInfo(path).fileName().toStdString()))) {
        return notWritten(sidecar);
    }
    for (QSaveFile* file : {&table, &sidecar}) {
        if (!file->commit()) {
            return notWritten(*file);
        }
    }
    return static_cast<qsizetype>(readings->size());
}

} // namespace wickbook::ui
