// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/takein/takein_steps.h"

#include "core/exchange/sef_join.h"
#include "ui/takein/takein_words.h"
#include "ui/text/copy_words.h"
#include "ui/text/error_words.h"

#include <QFile>
#include <QFileInfo>
#include <QObject>
#include <QSaveFile>

#include <fstream>

namespace wickbook::ui {

namespace {

constexpr std::size_t kRowsShown = 40;
/// Beyond this the head alone is tried at first.
constexpr qint64 kLargeFile = 4'000'000;

std::filesystem::path pathOf(const QString& file) {
    return {file.toStdU16String()};
}

QString nameOf(const QString& file) {
    return QFileInfo(file).fileName();
}

Tried failed(const QString& sentence) {
    Tried tried;
    tried.sentence = sentence;
    return tried;
}

/// The plans of the files, or the error with the name of its file.
tl::expected<std::vector<desk::NamedPlan>, Tried> plansOf(const TryRequest& request, WorkWatch& watch) {
    std::vector<desk::NamedPlan> plans;
    std::vector<exchange::SefFile> sefFiles;
    std::string names;
    for (const QString& file : request.files) {
        const std::string name = nameOf(file).toStdString();
        std::ifstream input(pathOf(file), std::ios::binary);
        const qint64 size = QFileInfo(file).size();
        const auto progress = [&](std::int64_t bytes) { return watch.go(bytes, size); };
        std::optional<exchange::ImportError> error;
        if (request.kind == exchange::FileKind::Sef) {
            auto read = exchange::readSef(input, name, progress);
            if (read) {
                names += (names.empty() ? "" : ", ") + name;
                sefFiles.push_back(std::move(*read));
            } else {
                error = read.error();
            }
        } else {
            auto plan = exchange::planCsvImport(input, name, request.station, request.options, progress);
            if (plan) {
                plans.push_back({name, std::move(*plan)});
            } else {
                error = plan.error();
            }
        }
        if (error) {
            return tl::unexpected(error->kind == exchange::ImportErrorKind::Stopped
                                      ? Tried{}
                                      : failed(takeInErrorWords(*error, nameOf(file))));
        }
    }
    if (request.kind == exchange::FileKind::Sef) {
        auto joined = exchange::joinSef(sefFiles, request.station);
        if (!joined) {
            return tl::unexpected(failed(takeInErrorWords(joined.error(), QString::fromStdString(names))));
        }
        plans.push_back({names, std::move(*joined)});
    }
    return plans;
}

/// The copy of the book as it is before a register comes in.
class CopyBefore {
public:
    explicit CopyBefore(const StoreRequest& request)
        : request_(request)
        , folderWasThere_(request.shelf && std::filesystem::exists(request.shelf->folder)) {}

    /// Why there is none; empty where there is, or none was wanted.
    QString keep(const store::Book& book) {
        if (!request_.shelf) {
            return {};
        }
        auto kept = store::keepCopy(book, *request_.shelf, store::CopyReason::BeforeBringingIn, request_.now);
        if (!kept) {
            return copyTroubleWords(kept.error(), request_.shelf->folder);
        }
        kept_ = std::move(*kept);
        return {};
    }
    /// Nothing came in: the folder is to be as it was.
    void takeAway() {
        std::error_code ignored;
        if (kept_) {
            std::filesystem::remove(kept_->path, ignored);
            if (!folderWasThere_) {
                std::filesystem::remove(request_.shelf->folder, ignored); // only where it is empty
            }
        }
    }
    /// Old copies that are left where something fails are dropped another day.
    void rotate(const store::Book& book) const {
        if (kept_) {
            (void)store::rotateCopies(book, request_.shelf->folder, kept_->path, request_.now);
        }
    }
    [[nodiscard]] QString name() const {
        return kept_ ? QString::fromStdString(kept_->path.filename().string()) : QString{};
    }

private:
    const StoreRequest& request_;
    bool folderWasThere_;
    std::optional<store::KeptCopy> kept_;
};

} // namespace

LookedAt lookAt(const QStringList& files, std::optional<char> separator) {
    LookedAt looked;
    looked.files = files;
    std::optional<exchange::FileKind> kind;
    for (const QString& file : files) {
        QFile input(file);
        if (QFileInfo(file).isDir()) {
            looked.sentence = QObject::tr("%1 is a folder: choose a file in it.").arg(nameOf(file));
            return looked;
        }
        if (!input.open(QIODevice::ReadOnly)) {
            looked.sentence =
                QObject::tr("%1 can't be read: %2. Check that you may read it, or choose another file.")
                    .arg(nameOf(file), input.errorString());
            return looked;
        }
        const auto found =
            exchange::fileKindOf(input.read(static_cast<qint64>(exchange::kHeadBytes)).toStdString());
        if (found == exchange::FileKind::Empty || found == exchange::FileKind::Binary) {
            looked.sentence =
                takeInErrorWords({found == exchange::FileKind::Empty ? exchange::ImportErrorKind::EmptyFile
                                                                     : exchange::ImportErrorKind::BinaryFile,
                                  {}},
                                 nameOf(file));
            return looked;
        }
        if (kind && (*kind != found || found == exchange::FileKind::Csv)) {
            looked.sentence =
                QObject::tr("Bring in one table at a time; several files together only where they are of "
                            "the Station Exchange Format.");
            return looked;
        }
        kind = found;
        looked.large = looked.large || (found == exchange::FileKind::Csv && input.size() > kLargeFile);
    }
    looked.kind = kind.value_or(exchange::FileKind::Empty);
    if (looked.kind == exchange::FileKind::Csv) {
        std::ifstream input(pathOf(files.front()), std::ios::binary);
        looked.head = exchange::readFileHead(input, kRowsShown, separator);
        if (looked.head.rows.empty()) {
            looked.sentence =
                takeInErrorWords({exchange::ImportErrorKind::NotReadable, {}}, nameOf(files.front()));
        }
    }
    return looked;
}

Tried tryFiles(const TryRequest& request, WorkWatch& watch) {
    auto plans = plansOf(request, watch);
    if (!plans) {
        return std::move(plans.error());
    }
    Tried tried;
    for (const desk::NamedPlan& plan : *plans) {
        tried.dateOrder = plan.plan.dateOrder;
        tried.aside.insert(tried.aside.end(), plan.plan.aside.begin(), plan.plan.aside.end());
    }
    const auto book = store::Book::open(pathOf(request.book), store::OpenMode::ReadOnly);
    if (!book) {
        return failed(storeErrorWords(book.error()));
    }
    auto preview = desk::previewImport(
        *book, request.station, std::move(*plans), request.now, [&](std::size_t done, std::size_t total) {
            return watch.go(static_cast<std::int64_t>(done), static_cast<std::int64_t>(total));
        });
    if (!preview) {
        return failed(storeErrorWords(preview.error()));
    }
    if (!preview->stopped) {
        tried.preview = std::move(*preview);
    }
    return tried;
}

Stored storeReadings(const StoreRequest& request, WorkWatch& watch) {
    Stored stored;
    auto book = store::Book::open(pathOf(request.book), store::OpenMode::ReadWrite);
    if (!book) {
        stored.sentence = storeErrorWords(book.error());
        return stored;
    }
    CopyBefore copy(request);
    if (const QString trouble = copy.keep(*book); !trouble.isEmpty()) {
        stored.sentence = QObject::tr("Nothing was brought in. %1").arg(trouble);
        return stored;
    }
    const auto changes = desk::changesOf(*request.preview, request.onConflict, request.who.toStdString());
    const auto receipts = book->appendAll(
        changes, [&](std::int64_t done, std::int64_t total) { return watch.go(done, total); });
    if (!receipts || receipts->empty()) {
        stored.sentence = receipts ? QString{} : storeErrorWords(receipts.error());
        copy.takeAway();
        return stored;
    }
    std::size_t at = 0;
    for (const desk::PreviewLine& line : request.preview->lines) {
        if (at < changes.size() && (line.verdict == desk::LineVerdict::Fresh ||
                                    (line.verdict == desk::LineVerdict::Conflict &&
                                     request.onConflict == exchange::OnConflict::Revise))) {
            BroughtIn reading;
            reading.subject = changes[at].subject;
            reading.sequence = (*receipts)[at].sequence;
            reading.after = changes[at].values;
            if (line.replaces) {
                reading.before = line.replaces->values;
            }
            stored.readings.push_back(std::move(reading));
            ++at;
        }
    }
    stored.copy = copy.name();
    copy.rotate(*book);
    return stored;
}

QString saveRejects(const QString& path, const std::vector<exchange::RejectedLine>& rejects) {
    QSaveFile file(path);
    const auto failed = [&] {
        return QObject::tr(
                   "%1 could not be written: %2. Choose another folder or free some space, then try again.")
            .arg(nameOf(path), file.errorString());
    };
    if (!file.open(QIODevice::WriteOnly)) {
        return failed();
    }
    const auto write = [&](const std::vector<std::string>& cells) {
        std::string line = exchange::csvLine(cells);
        line += exchange::kCsvLineEnd;
        return file.write(line.data(), static_cast<qint64>(line.size())) == static_cast<qint64>(line.size());
    };
    bool written = write(exchange::rejectsHeader());
    for (const exchange::RejectedLine& line : rejects) {
        written = written && write(exchange::rejectsRow(line));
    }
    return written && file.commit() ? QString{} : failed();
}

} // namespace wickbook::ui
