// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"
#include "core/store/copy_name.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <span>
#include <vector>

/// A folder in which copies of a book are kept and rotated. What it promises:
/// - a copy stands under its name only once it is whole, synced and verified;
/// - nothing is dropped before the new copy stands;
/// - dropped is only what bears our name, is a book, and holds nothing that this book does not hold too: a
///   stranger's file, another station's copy, or one that went its own way is never touched;
/// - whatever fails, the copies that were there stay.

namespace wickbook::store {

/// Where copies go.
struct CopyShelf {
    std::filesystem::path folder;
    /// Make the folder where it is missing. Not for one that somebody chose: that it is missing may mean that
    /// a drive is not plugged in, and then a folder of its name would swallow the copies.
    bool makeFolder = false;
};

/// One copy found in a folder.
struct KeptCopy {
    std::filesystem::path path;
    CopyName name;
    std::uintmax_t bytes = 0;
    ChainMark chain;           ///< as the copy records it; only verifying proves it
    std::int64_t readings = 0; ///< live observations
    /// Why it could not be read; then chain and readings are not known.
    std::optional<StoreError> trouble;
};

/// "<book> copies" beside the book.
std::filesystem::path usualCopyFolder(const std::filesystem::path& book);

/// Copies of any book in a folder, the newest first; files that bear another name or are no books are passed
/// over. Pages are not verified. A folder that isn't there is empty. Errors: CannotOpen, InputOutput.
Result<std::vector<KeptCopy>> copiesIn(const std::filesystem::path& folder);

/// Of these, the copies whose revisions all stand in this book too, read or not: what this book may rotate.
Result<std::vector<KeptCopy>> copiesOf(const Book& book, std::span<const KeptCopy> copies);

/// Whether a daily copy is due: none of the book's own copies holds all that the book holds, and none is of
/// today (UTC).
bool copyIsDue(std::span<const KeptCopy> ownCopies, const ChainMark& book, record::Instant now);

/// Keeps one more. Errors: as Book::backupTo; NoSuchFile where the folder is missing and not to be made.
Result<KeptCopy> keepCopy(const Book& book, const CopyShelf& shelf, CopyReason reason, record::Instant now);

struct CopyRotation {
    std::vector<std::filesystem::path> dropped;
    std::vector<StoreError> stuck; ///< copies that should have gone and could not be deleted
    std::int64_t left = 0;         ///< copies of this book that stay
};

/// Drops what copiesToDrop() names (core/store/copy_rotation.h). verified: a copy that has just been
/// verified, as keepCopy() gives it; it stays.
Result<CopyRotation> rotateCopies(const Book& book, const std::filesystem::path& folder,
                                  const std::filesystem::path& verified, record::Instant now);

/// A verified copy to hand on, which nobody may write to by its file mode. False: the disk it lies on knows
/// no such mode; the copy is there all the same. Errors: as Book::backupTo.
Result<bool> copyToHandOn(const Book& book, const std::filesystem::path& path);

} // namespace wickbook::store
