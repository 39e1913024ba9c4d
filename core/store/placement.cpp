// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/placement.h"

#include "core/record/uuid.h"
#include "core/store/book_header.h"
#include "core/store/sqlite_error.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>

namespace wickbook::store {

namespace {

std::filesystem::path folderOf(const std::filesystem::path& path) {
    return path.has_parent_path() ? path.parent_path() : std::filesystem::path{"."};
}

tl::expected<void, StoreError> syncPath(const std::filesystem::path& path, int flags) {
    const int descriptor = ::open(path.c_str(), flags | O_CLOEXEC);
    if (descriptor < 0)
        return tl::unexpected(errorFromSystem(errno, path, "opening to sync"));
    const int result = ::fsync(descriptor);
    const int reason = errno;
    ::close(descriptor);
    // Some file systems can't sync a folder and say so; there is nothing more to be done there.
    if (result != 0 && reason != EINVAL)
        return tl::unexpected(errorFromSystem(reason, path, "syncing"));
    return {};
}

bool somethingAt(const std::filesystem::path& path) {
    struct stat status {};
    return ::lstat(path.c_str(), &status) == 0;
}

/// 0, or the reason.
int renameWithoutOverwriting(const std::filesystem::path& from, const std::filesystem::path& to) {
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0)
        return 0;
    if (errno != EINVAL && errno != ENOSYS && errno != ENOTSUP)
        return errno;
    // Network shares: a hard link refuses an existing name as well.
    if (::link(from.c_str(), to.c_str()) != 0)
        return errno;
    ::unlink(from.c_str());
    return 0;
}

} // namespace

/// The end of an identity is chance; its beginning is the time.
FileBeside::FileBeside(const std::filesystem::path& target)
    : target_(target)
    , path_(folderOf(target) / (".wickbook-" + record::Uuid::random().toText().substr(19) + ".part")) {}

FileBeside::~FileBeside() {
    if (!placed_)
        ::unlink(path_.c_str());
    ::unlink(journalOf(path_).c_str());
}

tl::expected<void, StoreError> FileBeside::make() {
    const int descriptor = ::open(path_.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0644);
    if (descriptor < 0)
        return tl::unexpected(errorFromSystem(errno, target_, "making a file in the folder"));
    ::close(descriptor);
    return {};
}

tl::expected<void, StoreError> FileBeside::place() {
    if (auto synced = syncPath(path_, O_RDWR); !synced)
        return synced;
    if (const int reason = renameWithoutOverwriting(path_, target_); reason != 0)
        return tl::unexpected(errorFromSystem(reason, target_, "giving the file its name"));
    placed_ = true;
    return syncPath(folderOf(target_), O_RDONLY | O_DIRECTORY);
}

tl::expected<void, StoreError> checkNameIsFree(const std::filesystem::path& path) {
    if (path.empty() || !path.has_filename())
        return tl::unexpected(StoreError{StoreErrorKind::CannotOpen, path.string(), "there is no file name"});
    if (somethingAt(path))
        return tl::unexpected(
            StoreError{StoreErrorKind::AlreadyThere, path.string(), "something stands there already"});
    for (const char* ending : {"-journal", "-wal"}) {
        std::filesystem::path beside = path;
        beside += ending;
        if (somethingAt(beside))
            return tl::unexpected(StoreError{StoreErrorKind::AlreadyThere, beside.string(),
                                             "the journal of another book of this name lies there"});
    }
    struct stat status {};
    if (::stat(folderOf(path).c_str(), &status) != 0)
        return tl::unexpected(
            StoreError{StoreErrorKind::CannotOpen, folderOf(path).string(),
                       "the folder can't be reached: " + std::generic_category().message(errno)});
    if (!S_ISDIR(status.st_mode))
        return tl::unexpected(
            StoreError{StoreErrorKind::CannotOpen, folderOf(path).string(), "this is not a folder"});
    return {};
}

tl::expected<void, StoreError> checkFolder(const std::filesystem::path& folder) {
    struct stat status {};
    if (::stat(folder.c_str(), &status) != 0) {
        const bool absent = errno == ENOENT || errno == ENOTDIR;
        return tl::unexpected(
            StoreError{absent ? StoreErrorKind::NoSuchFile : StoreErrorKind::CannotOpen, folder.string(),
                       "the folder can't be reached: " + std::generic_category().message(errno)});
    }
    if (!S_ISDIR(status.st_mode))
        return tl::unexpected(
            StoreError{StoreErrorKind::CannotOpen, folder.string(), "this is not a folder"});
    return {};
}

tl::expected<void, StoreError> makeFolder(const std::filesystem::path& folder) {
    if (::mkdir(folder.c_str(), 0777) != 0) {
        if (errno == EEXIST)
            return checkFolder(folder);
        return tl::unexpected(errorFromSystem(errno, folder, "making the folder"));
    }
    return syncPath(folderOf(folder), O_RDONLY | O_DIRECTORY);
}

} // namespace wickbook::store
