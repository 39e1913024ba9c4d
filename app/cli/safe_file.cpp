// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/safe_file.h"

#include "core/record/uuid.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <system_error>
#include <utility>

namespace wickbook::cli {

namespace {

constexpr std::size_t kBufferBytes = 64U * 1024U;

tl::unexpected<std::string> failed(const std::string& path, int cause) {
    return tl::unexpected(fmt::format("{} can't be written: {}. Choose another folder or make room, then try "
                                      "again.",
                                      path, std::generic_category().message(cause)));
}

/// The folder's own entry must be on the disk too, else a power cut forgets the rename.
int syncFolder(const std::string& path) {
    const auto folder = std::filesystem::path(path).parent_path();
    const int descriptor = ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor < 0) {
        return errno;
    }
    const int cause = ::fsync(descriptor) == 0 ? 0 : errno;
    ::close(descriptor);
    // Some network shares know no sync of folders; the file itself has been synced.
    return cause == EINVAL || cause == ENOTSUP ? 0 : cause;
}

} // namespace

SafeFile::SafeFile(SafeFile&& other) noexcept
    : path_(std::move(other.path_))
    , beside_(std::move(other.beside_))
    , buffer_(std::move(other.buffer_))
    , descriptor_(std::exchange(other.descriptor_, -1)) {
    other.beside_.clear();
}

SafeFile& SafeFile::operator=(SafeFile&& other) noexcept {
    if (this != &other) {
        giveUp();
        path_ = std::move(other.path_);
        beside_ = std::exchange(other.beside_, {});
        buffer_ = std::move(other.buffer_);
        descriptor_ = std::exchange(other.descriptor_, -1);
    }
    return *this;
}

SafeFile::~SafeFile() {
    giveUp();
}

void SafeFile::giveUp() {
    if (descriptor_ >= 0) {
        ::close(std::exchange(descriptor_, -1));
        if (!beside_.empty()) {
            ::unlink(beside_.c_str());
        }
    }
}

tl::expected<SafeFile, std::string> SafeFile::create(const std::string& path) {
    SafeFile file;
    file.path_ = path;
    struct stat found {};
    if (::stat(path.c_str(), &found) == 0 && !S_ISREG(found.st_mode)) {
        file.descriptor_ = S_ISDIR(found.st_mode) ? -1 : ::open(path.c_str(), O_WRONLY | O_CLOEXEC);
        if (file.descriptor_ < 0) {
            return failed(path, S_ISDIR(found.st_mode) ? EISDIR : errno);
        }
        return file;
    }
    const std::filesystem::path target(path);
    // The end of an identity is chance; its beginning is the time.
    const std::string name =
        fmt::format(".{}.{}.part", target.filename().string(), record::Uuid::random().toText().substr(24));
    file.beside_ = (target.parent_path() / name).string();
    file.descriptor_ = ::open(file.beside_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (file.descriptor_ < 0) {
        return failed(path, errno);
    }
    return file;
}

tl::expected<void, std::string> SafeFile::write(std::string_view bytes) {
    buffer_ += bytes;
    return buffer_.size() < kBufferBytes ? tl::expected<void, std::string>{} : flushBuffer();
}

tl::expected<void, std::string> SafeFile::flushBuffer() {
    std::string_view rest = buffer_;
    while (!rest.empty()) {
        const auto written = ::write(descriptor_, rest.data(), rest.size());
        if (written < 0) {
            if (errno == EINTR) {
                continue;
            }
            return failed(path_, errno);
        }
        rest.remove_prefix(static_cast<std::size_t>(written));
    }
    buffer_.clear();
    return {};
}

tl::expected<void, std::string> SafeFile::finish() {
    if (auto flushed = flushBuffer(); !flushed) {
        return flushed;
    }
    const bool straight = beside_.empty();
    if (!straight && ::fsync(descriptor_) != 0) {
        return failed(path_, errno);
    }
    if (::close(std::exchange(descriptor_, -1)) != 0) {
        const int cause = errno;
        if (!straight) {
            ::unlink(beside_.c_str());
        }
        return failed(path_, cause);
    }
    if (straight) {
        return {};
    }
    if (std::rename(beside_.c_str(), path_.c_str()) != 0) {
        const int cause = errno;
        ::unlink(beside_.c_str());
        return failed(path_, cause);
    }
    if (const int cause = syncFolder(path_); cause != 0) {
        return failed(path_, cause);
    }
    return {};
}

} // namespace wickbook::cli
