// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/copy_shelf.h"
#include "ui/session/background_work.h"

#include <filesystem>
#include <map>
#include <optional>
#include <vector>

/// What is done with a book's copies beside the window: looking, keeping one more, verifying. Each runs in a
/// thread of its own, with a book that it opens itself to read only.

namespace wickbook::ui {

/// A copy of this book as a page shows it.
struct ShownCopy {
    store::KeptCopy copy;
    bool ahead = false;          ///< it holds something the book does not hold: it is never dropped by itself
    std::optional<bool> sound{}; ///< none: not verified since the book was opened
    QString problem{};           ///< what verifying found
};

/// What verifying found of a file, until it changes.
struct Verified {
    std::filesystem::file_time_type written;
    QString problem; ///< empty: sound
};
using VerifiedCopies = std::map<std::filesystem::path, Verified>;

struct CopyRequest {
    enum class Task { Look, KeepIfDue, Keep, Verify };
    Task task = Task::Look;
    std::filesystem::path book;
    store::CopyShelf shelf;
    store::CopyReason reason = store::CopyReason::Daily;
    record::Instant now{};
    std::vector<std::filesystem::path> toVerify;
    VerifiedCopies verified;
};

struct CopyAnswer {
    std::vector<ShownCopy> copies;
    VerifiedCopies verified;
    std::optional<store::KeptCopy> kept; ///< of Keep and KeepIfDue: the new one
    std::int64_t dropped = 0;
    QString trouble; ///< why no copy was kept, or the shelf can't be read; empty: all went well
    QString stuck;   ///< an old copy that could not be deleted
};

CopyAnswer workOnCopies(const CopyRequest& request, WorkWatch& watch);

} // namespace wickbook::ui
