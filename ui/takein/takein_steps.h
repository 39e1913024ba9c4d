// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/import_preview.h"
#include "core/exchange/file_head.h"
#include "core/store/copy_shelf.h"
#include "ui/session/background_work.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

/// The steps of bringing files in, without any widget: look at the head of a file, try what every line would
/// become, store it. The last two run in a thread of their own with a book they open themselves.

namespace wickbook::ui {

/// What the files are, by their beginnings.
struct LookedAt {
    QStringList files;
    exchange::FileKind kind = exchange::FileKind::Empty; ///< Csv: one file; Sef: one or more
    exchange::FileHead head;                             ///< of CSV
    bool large = false; ///< only the head is tried until the person wants the whole
    QString sentence;   ///< why nothing can be done with them; empty: go on
};
/// separator: what the person chose; none: as found.
LookedAt lookAt(const QStringList& files, std::optional<char> separator = {});

/// What a dry run needs to know.
struct TryRequest {
    QString book;
    record::StationRecord station;
    record::Instant now{};
    QStringList files;
    exchange::FileKind kind = exchange::FileKind::Csv;
    exchange::ImportOptions options;
};
struct Tried {
    std::optional<desk::ImportPreview> preview;
    QString sentence; ///< why there is none; empty where stopped
    exchange::DateOrder dateOrder = exchange::DateOrder::Unknown;
    std::vector<exchange::AsideFile> aside;
};
Tried tryFiles(const TryRequest& request, WorkWatch& watch);

/// One observation as it came in, for taking it back.
struct BroughtIn {
    record::Uuid subject;
    std::int64_t sequence = 0;
    std::optional<record::Observation> before; ///< none: it was new
    record::Observation after;
};
struct Stored {
    std::vector<BroughtIn> readings; ///< empty where stopped or failed: then nothing was stored
    QString sentence;                ///< why nothing was stored; empty where all went well or it was stopped
    QString copy;                    ///< name of the copy of the book before; empty: none was wanted
};
struct StoreRequest {
    QString book;
    std::shared_ptr<const desk::ImportPreview> preview;
    exchange::OnConflict onConflict = exchange::OnConflict::Reject;
    QString who;
    std::optional<store::CopyShelf> shelf{}; ///< where a copy of the book as it is now is kept; none: nowhere
    record::Instant now{};
};
/// One transaction or nothing: a stop or a failure leaves the book, and the folder it lies in, as they were.
Stored storeReadings(const StoreRequest& request, WorkWatch& watch);

/// Writes the rejects file; a sentence where that can't be done.
QString saveRejects(const QString& path, const std::vector<exchange::RejectedLine>& rejects);

} // namespace wickbook::ui
