// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store_error.h"

#include <tl/expected.hpp>

#include <filesystem>

/// Putting a finished file under its name: written beside under another name, synced, renamed without ever
/// overwriting. A crash leaves the name free or the whole file there, never half of it.

namespace wickbook::store {

/// A name in the folder of the file that is to be; whatever stands there is deleted when this goes, together
/// with its journal, unless it was placed.
class FileBeside {
public:
    explicit FileBeside(const std::filesystem::path& target);
    FileBeside(const FileBeside&) = delete;
    FileBeside& operator=(const FileBeside&) = delete;
    ~FileBeside();

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    /// Makes the file, empty; what the disk or the folder has against it is known here, before SQLite, which
    /// would keep the reason to itself. Errors: DiskFull, ReadOnly, CannotOpen, InputOutput.
    tl::expected<void, StoreError> make();
    /// Syncs the file, gives it the target's name, syncs the folder. Pre: nothing has it open.
    /// Errors: AlreadyThere, DiskFull, InputOutput, ReadOnly, CannotOpen.
    tl::expected<void, StoreError> place();

private:
    std::filesystem::path target_;
    std::filesystem::path path_;
    bool placed_ = false;
};

/// Whether a new file may take this name. Error AlreadyThere where anything stands there, be it a broken
/// link, or where the journal of another book lies beside (SQLite would play it into the new one); CannotOpen
/// where the folder is missing.
tl::expected<void, StoreError> checkNameIsFree(const std::filesystem::path& path);

/// Errors: NoSuchFile, CannotOpen (something else of this name; not reachable).
tl::expected<void, StoreError> checkFolder(const std::filesystem::path& folder);
/// Makes a folder where there is none, durably; the one above must be there. Errors: as above, DiskFull,
/// ReadOnly, InputOutput.
tl::expected<void, StoreError> makeFolder(const std::filesystem::path& folder);

} // namespace wickbook::store
