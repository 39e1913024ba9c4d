// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/takein/withdraw_import.h"

#include "ui/takein/wait_beside.h"

namespace wickbook::ui {

namespace {

/// From so many readings on the act is long enough to be seen.
constexpr std::size_t kMany = 1000;

} // namespace

WithdrawImport::WithdrawImport(Session& session, std::vector<BroughtIn> readings, std::string who,
                               const QString& text)
    : QUndoCommand(text), session_(session), readings_(std::move(readings)), who_(std::move(who)) {}

void WithdrawImport::undo() {
    store(true);
}

void WithdrawImport::redo() {
    if (stored_) {
        stored_ = false;
        return;
    }
    store(false);
}

void WithdrawImport::store(bool back) {
    const QString why = back ? QObject::tr("undone: %1") : QObject::tr("done again: %1");
    std::vector<store::ObservationChange> changes;
    changes.reserve(readings_.size());
    for (const BroughtIn& reading : readings_) {
        store::ObservationChange change;
        change.subject = reading.subject;
        change.replaces = reading.sequence;
        change.values = back && reading.before ? *reading.before : reading.after;
        change.values.withdrawn = back && !reading.before;
        change.author = {who_, why.arg(text()).toStdString()};
        changes.push_back(std::move(change));
    }
    const auto receipts = changes.size() < kMany ? session_.writeAll(changes) : storeMany(changes);
    if (!receipts) {
        setObsolete(true); // the session has told why
        return;
    }
    for (std::size_t i = 0; i < readings_.size(); ++i) {
        readings_[i].sequence = (*receipts)[i].sequence;
    }
}

store::Result<std::vector<store::Receipt>>
WithdrawImport::storeMany(const std::vector<store::ObservationChange>& changes) {
    store::Result<std::vector<store::Receipt>> receipts;
    const std::filesystem::path path{session_.path().toStdString()};
    const record::Instant now = session_.now();
    // Where copies are kept; the sample station keeps none.
    const auto shelf =
        session_.copies().isKeeping() ? std::optional{session_.copies().shelf()} : std::nullopt;
    waitBeside(QObject::tr("Writing %n readings…", nullptr, static_cast<int>(changes.size())),
               [&](WorkWatch& watch) {
                   auto book = store::Book::open(path, store::OpenMode::ReadWrite);
                   if (!book) {
                       receipts = tl::unexpected(book.error());
                       return;
                   }
                   if (shelf) {
                       // Taking back erases nothing: it goes on without a copy too, and the keeper tells what
                       // is wrong.
                       if (const auto kept =
                               store::keepCopy(*book, *shelf, store::CopyReason::BeforeTakingBack, now)) {
                           (void)store::rotateCopies(*book, shelf->folder, kept->path, now);
                       }
                   }
                   receipts = book->appendAll(
                       changes, [&](std::int64_t done, std::int64_t total) { return watch.go(done, total); });
               });
    if (!receipts) {
        emit session_.storageFailed(receipts.error());
        return receipts;
    }
    session_.lookForOutsideChanges();
    session_.copies().look();
    return receipts;
}

} // namespace wickbook::ui
