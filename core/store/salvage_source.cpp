// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/salvage_source.h"

#include "core/store/connection.h"
#include "core/store/sqlite_error.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <limits>
#include <thread>
#include <vector>

namespace wickbook::store {

namespace {

bool isWithin(std::uint64_t place, std::size_t length, std::uint64_t size) {
    return place <= size && length <= size - place;
}

} // namespace

bool MemorySource::read(std::uint64_t place, std::size_t length, std::string& into) const {
    if (!isWithin(place, length, bytes_.size()))
        return false;
    into.assign(bytes_.substr(static_cast<std::size_t>(place), length));
    return true;
}

std::unique_ptr<PlainFile> PlainFile::open(const std::filesystem::path& path) {
    // Without waiting, should a pipe stand there.
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
    if (descriptor < 0)
        return nullptr;
    struct stat status {};
    if (::fstat(descriptor, &status) != 0 || !S_ISREG(status.st_mode)) {
        ::close(descriptor);
        return nullptr;
    }
    return std::unique_ptr<PlainFile>{new PlainFile(descriptor, static_cast<std::uint64_t>(status.st_size))};
}

PlainFile::~PlainFile() {
    ::close(descriptor_);
}

bool PlainFile::read(std::uint64_t place, std::size_t length, std::string& into) const {
    if (!isWithin(place, length, size_))
        return false;
    into.resize(length);
    std::size_t have = 0;
    while (have < length) {
        const ssize_t got =
            ::pread(descriptor_, into.data() + have, length - have, static_cast<off_t>(place + have));
        if (got < 0 && errno == EINTR)
            continue;
        if (got <= 0)
            return false;
        have += static_cast<std::size_t>(got);
    }
    return true;
}

/// SQLite asks for the file object in memory that it describes by a size only.
struct LockedFile::Handle {
    std::vector<std::max_align_t> memory;
    bool isOpen = false;

    explicit Handle(std::size_t bytes) : memory(bytes / sizeof(std::max_align_t) + 1) {}
    Handle(const Handle&) = delete;
    Handle& operator=(const Handle&) = delete;
    ~Handle() {
        if (isOpen)
            file()->pMethods->xClose(file());
    }
    sqlite3_file* file() { return static_cast<sqlite3_file*>(static_cast<void*>(memory.data())); }
};

LockedFile::LockedFile(std::unique_ptr<Handle> handle) : handle_(std::move(handle)) {}

LockedFile::~LockedFile() {
    if (locked_)
        handle_->file()->pMethods->xUnlock(handle_->file(), SQLITE_LOCK_NONE);
}

tl::expected<std::unique_ptr<LockedFile>, StoreError> LockedFile::open(const std::filesystem::path& path) {
    using enum StoreErrorKind;
    const auto refuse = [&](StoreErrorKind kind, std::string detail) {
        return tl::unexpected(StoreError{kind, path.string(), std::move(detail)});
    };
    std::error_code missing;
    const std::filesystem::path file = std::filesystem::canonical(path, missing);
    if (missing)
        return refuse(missing == std::errc::no_such_file_or_directory || missing == std::errc::not_a_directory
                          ? NoSuchFile
                          : CannotOpen,
                      missing.message());
    if (!std::filesystem::is_regular_file(file, missing))
        return refuse(CannotOpen, "this is not an ordinary file");

    sqlite3_vfs* vfs = sqlite3_vfs_find(nullptr);
    auto handle = std::make_unique<Handle>(static_cast<std::size_t>(vfs->szOsFile));
    const std::string name = file.string();
    int flags = 0;
    const int opened =
        vfs->xOpen(vfs, name.c_str(), handle->file(), SQLITE_OPEN_READONLY | SQLITE_OPEN_MAIN_DB, &flags);
    if (opened != SQLITE_OK) {
        const int reason = errno;
        return refuse(CannotOpen, extendedCodeName(opened) + ": " + std::generic_category().message(reason));
    }
    handle->isOpen = true;
    std::unique_ptr<LockedFile> source{new LockedFile(std::move(handle))};
    sqlite3_file* raw = source->handle_->file();
    const auto deadline = std::chrono::steady_clock::now() + std::chrono::milliseconds(kPatienceMilliseconds);
    int locking = SQLITE_OK;
    while ((locking = raw->pMethods->xLock(raw, SQLITE_LOCK_SHARED)) == SQLITE_BUSY) {
        if (std::chrono::steady_clock::now() > deadline)
            return refuse(Busy, "another program is writing the book");
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
    source->locked_ = locking == SQLITE_OK;
    sqlite3_int64 size = 0;
    if (const int asked = raw->pMethods->xFileSize(raw, &size); asked != SQLITE_OK || size < 0)
        return refuse(InputOutput, extendedCodeName(asked) + ": the file's size can't be read");
    source->size_ = static_cast<std::uint64_t>(size);
    return source;
}

bool LockedFile::read(std::uint64_t place, std::size_t length, std::string& into) const {
    if (!isWithin(place, length, size_) || length > std::size_t{std::numeric_limits<int>::max()})
        return false;
    into.resize(length);
    sqlite3_file* raw = handle_->file();
    return raw->pMethods->xRead(raw, into.data(), static_cast<int>(length),
                                static_cast<sqlite3_int64>(place)) == SQLITE_OK;
}

bool LockedFile::beingWritten() const {
    int reserved = 0;
    sqlite3_file* raw = handle_->file();
    return raw->pMethods->xCheckReservedLock(raw, &reserved) == SQLITE_OK && reserved != 0;
}

} // namespace wickbook::store
