// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book_header.h"

#include "core/store/sqlite_error.h"

#include <sqlite3.h>
#include <sys/stat.h>

#include <array>
#include <cerrno>
#include <cstddef>
#include <fstream>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace wickbook::store {

namespace {

// SQLite file format, "Database File Format", section 1.3: the header is the first 100 bytes.
constexpr std::size_t kHeaderBytes = 100;
constexpr std::string_view kMagic{"SQLite format 3\0", 16};
constexpr std::size_t kWriteVersionAt = 18; // 1: rollback journal, 2: WAL
constexpr std::size_t kReadVersionAt = 19;
constexpr std::size_t kUserVersionAt = 60;
constexpr std::size_t kApplicationIdAt = 68;
// The same, section 3, "The Rollback Journal".
constexpr std::string_view kJournalMagic{"\xd9\xd5\x05\xf9\x20\xa1\x63\xd7", 8};
constexpr std::size_t kJournalHeaderBytes = 28;
constexpr std::size_t kSectorSizeAt = 20;
constexpr std::size_t kPageSizeAt = 24;

std::uint32_t bigEndian(std::string_view bytes, std::size_t at) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < 4; ++i)
        value = (value << 8U) | static_cast<unsigned char>(bytes[at + i]);
    return value;
}

StoreError error(StoreErrorKind kind, const std::filesystem::path& path, std::string detail) {
    return {kind, path.string(), std::move(detail)};
}

/// The first bytes of the file, fewer where it is shorter.
tl::expected<std::string, StoreError> firstBytes(const std::filesystem::path& path) {
    sqlite3_vfs* vfs = sqlite3_vfs_find(nullptr);
    // SQLite asks for the file object in memory that it describes by a size only.
    std::vector<std::max_align_t> memory(static_cast<std::size_t>(vfs->szOsFile) / sizeof(std::max_align_t) +
                                         1);
    auto* file = static_cast<sqlite3_file*>(static_cast<void*>(memory.data()));
    file->pMethods = nullptr;
    const std::string name = path.string();
    int flags = 0;
    const int opened =
        vfs->xOpen(vfs, name.c_str(), file, SQLITE_OPEN_READONLY | SQLITE_OPEN_MAIN_DB, &flags);
    if (opened != SQLITE_OK) {
        const int reason = errno;
        return tl::unexpected(
            error(StoreErrorKind::CannotOpen, path,
                  extendedCodeName(opened) + ": " + std::generic_category().message(reason)));
    }
    struct Closer {
        sqlite3_file* file;
        ~Closer() { file->pMethods->xClose(file); }
    } closer{file};
    sqlite3_int64 size = 0;
    int result = file->pMethods->xFileSize(file, &size);
    std::array<char, kHeaderBytes> bytes{};
    const auto wanted = std::min<sqlite3_int64>(size, static_cast<sqlite3_int64>(kHeaderBytes));
    if (result == SQLITE_OK && wanted > 0)
        result = file->pMethods->xRead(file, bytes.data(), static_cast<int>(wanted), 0);
    if (result != SQLITE_OK)
        return tl::unexpected(error(StoreErrorKind::InputOutput, path,
                                    extendedCodeName(result) + ": the file's beginning can't be read"));
    return std::string{bytes.data(), static_cast<std::size_t>(wanted)};
}

/// What is wrong with these first bytes; none: they are a book's.
std::optional<StoreError> judge(std::string_view bytes, const std::filesystem::path& path) {
    using enum StoreErrorKind;
    if (bytes.empty())
        return error(NotABook, path, "the file is empty");
    if (bytes.substr(0, kMagic.size()) != kMagic)
        return error(NotABook, path, "the file is not a database");
    if (bytes.size() < kHeaderBytes)
        return error(Damaged, path, "the file is cut short within its first 100 bytes");
    if (bigEndian(bytes, kApplicationIdAt) != static_cast<std::uint32_t>(kApplicationId))
        return error(NotABook, path, "the file is a database of another program");
    if (bytes[kWriteVersionAt] != 1 || bytes[kReadVersionAt] != 1)
        return error(Damaged, path,
                     "the file is not in rollback-journal mode, which every book is kept in; if it was set "
                     "to WAL by hand, set it back with PRAGMA journal_mode=DELETE");
    return std::nullopt;
}

/// The first page's beginning as a journal keeps it; none where the journal isn't one or doesn't hold it.
std::optional<std::string> firstPageInJournal(const std::filesystem::path& journal) {
    std::ifstream in(journal, std::ios::binary);
    std::string header(kJournalHeaderBytes, '\0');
    if (!in.read(header.data(), static_cast<std::streamsize>(header.size())) ||
        !std::string_view{header}.starts_with(kJournalMagic))
        return std::nullopt;
    const std::uint64_t sectorSize = bigEndian(header, kSectorSizeAt);
    const std::uint64_t pageSize = bigEndian(header, kPageSizeAt);
    // The bounds SQLite itself sets.
    if (sectorSize < 32 || sectorSize > 65536 || pageSize < 512 || pageSize > 65536)
        return std::nullopt;
    std::string record(4 + kHeaderBytes, '\0');
    for (std::uint64_t at = sectorSize;; at += 4 + pageSize + 4) {
        in.seekg(static_cast<std::streamoff>(at));
        if (!in.read(record.data(), static_cast<std::streamsize>(record.size())))
            return std::nullopt;
        const std::uint32_t page = bigEndian(record, 0);
        if (page == 1)
            return record.substr(4);
        if (page == 0)
            return std::nullopt;
    }
}

} // namespace

std::filesystem::path journalOf(const std::filesystem::path& path) {
    std::filesystem::path journal = path;
    journal += "-journal";
    return journal;
}

tl::expected<BookHeader, StoreError> readBookHeader(const std::filesystem::path& path) {
    using enum StoreErrorKind;
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0) {
        const bool absent = errno == ENOENT || errno == ENOTDIR;
        return tl::unexpected(
            error(absent ? NoSuchFile : CannotOpen, path, std::generic_category().message(errno)));
    }
    if (S_ISDIR(status.st_mode))
        return tl::unexpected(error(CannotOpen, path, "this is a folder"));
    if (!S_ISREG(status.st_mode))
        return tl::unexpected(error(CannotOpen, path, "this is not an ordinary file"));

    auto bytes = firstBytes(path);
    if (!bytes)
        return tl::unexpected(bytes.error());
    BookHeader header;
    struct stat journalStatus {};
    header.journalBeside = ::stat(journalOf(path).c_str(), &journalStatus) == 0 && journalStatus.st_size > 0;
    if (header.journalBeside) {
        if (auto restored = firstPageInJournal(journalOf(path))) {
            if (auto wrong = judge(*restored, path)) {
                wrong->kind = Damaged;
                wrong->detail = "the journal beside the file belongs to something else";
                return tl::unexpected(*wrong);
            }
            // The page may be torn; a file that never was a book is not made one by a journal beside it.
            if (!bytes->starts_with(kMagic))
                return tl::unexpected(
                    error(bytes->empty() ? Damaged : NotABook, path,
                          "the file doesn't begin as a book, though the journal of one lies "
                          "beside it"));
            bytes = std::move(*restored);
        }
    }
    if (const auto wrong = judge(*bytes, path))
        return tl::unexpected(*wrong);
    header.userVersion = static_cast<std::int32_t>(bigEndian(*bytes, kUserVersionAt));
    return header;
}

} // namespace wickbook::store
