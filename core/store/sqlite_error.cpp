// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_error.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <system_error>

namespace wickbook::store {

namespace {

struct CodeName {
    int code;
    const char* name;
};

#define WICKBOOK_CODE(name)                                                                                  \
    CodeName {                                                                                               \
        name, #name                                                                                          \
    }
constexpr auto kCodeNames = std::to_array<CodeName>({
    WICKBOOK_CODE(SQLITE_ERROR),
    WICKBOOK_CODE(SQLITE_INTERNAL),
    WICKBOOK_CODE(SQLITE_PERM),
    WICKBOOK_CODE(SQLITE_ABORT),
    WICKBOOK_CODE(SQLITE_BUSY),
    WICKBOOK_CODE(SQLITE_BUSY_RECOVERY),
    WICKBOOK_CODE(SQLITE_BUSY_SNAPSHOT),
    WICKBOOK_CODE(SQLITE_BUSY_TIMEOUT),
    WICKBOOK_CODE(SQLITE_LOCKED),
    WICKBOOK_CODE(SQLITE_NOMEM),
    WICKBOOK_CODE(SQLITE_READONLY),
    WICKBOOK_CODE(SQLITE_READONLY_CANTLOCK),
    WICKBOOK_CODE(SQLITE_READONLY_ROLLBACK),
    WICKBOOK_CODE(SQLITE_READONLY_DBMOVED),
    WICKBOOK_CODE(SQLITE_READONLY_DIRECTORY),
    WICKBOOK_CODE(SQLITE_INTERRUPT),
    WICKBOOK_CODE(SQLITE_IOERR),
    WICKBOOK_CODE(SQLITE_IOERR_READ),
    WICKBOOK_CODE(SQLITE_IOERR_SHORT_READ),
    WICKBOOK_CODE(SQLITE_IOERR_WRITE),
    WICKBOOK_CODE(SQLITE_IOERR_FSYNC),
    WICKBOOK_CODE(SQLITE_IOERR_DIR_FSYNC),
    WICKBOOK_CODE(SQLITE_IOERR_TRUNCATE),
    WICKBOOK_CODE(SQLITE_IOERR_FSTAT),
    WICKBOOK_CODE(SQLITE_IOERR_UNLOCK),
    WICKBOOK_CODE(SQLITE_IOERR_RDLOCK),
    WICKBOOK_CODE(SQLITE_IOERR_DELETE),
    WICKBOOK_CODE(SQLITE_IOERR_NOMEM),
    WICKBOOK_CODE(SQLITE_IOERR_ACCESS),
    WICKBOOK_CODE(SQLITE_IOERR_CHECKRESERVEDLOCK),
    WICKBOOK_CODE(SQLITE_IOERR_LOCK),
    WICKBOOK_CODE(SQLITE_IOERR_CLOSE),
    WICKBOOK_CODE(SQLITE_IOERR_DIR_CLOSE),
    WICKBOOK_CODE(SQLITE_IOERR_SEEK),
    WICKBOOK_CODE(SQLITE_IOERR_DELETE_NOENT),
    WICKBOOK_CODE(SQLITE_IOERR_GETTEMPPATH),
    WICKBOOK_CODE(SQLITE_IOERR_DATA),
    WICKBOOK_CODE(SQLITE_IOERR_CORRUPTFS),
    WICKBOOK_CODE(SQLITE_CORRUPT),
    WICKBOOK_CODE(SQLITE_CORRUPT_SEQUENCE),
    WICKBOOK_CODE(SQLITE_CORRUPT_INDEX),
    WICKBOOK_CODE(SQLITE_NOTFOUND),
    WICKBOOK_CODE(SQLITE_FULL),
    WICKBOOK_CODE(SQLITE_CANTOPEN),
    WICKBOOK_CODE(SQLITE_CANTOPEN_ISDIR),
    WICKBOOK_CODE(SQLITE_CANTOPEN_FULLPATH),
    WICKBOOK_CODE(SQLITE_CANTOPEN_SYMLINK),
    WICKBOOK_CODE(SQLITE_PROTOCOL),
    WICKBOOK_CODE(SQLITE_SCHEMA),
    WICKBOOK_CODE(SQLITE_TOOBIG),
    WICKBOOK_CODE(SQLITE_CONSTRAINT),
    WICKBOOK_CODE(SQLITE_CONSTRAINT_CHECK),
    WICKBOOK_CODE(SQLITE_CONSTRAINT_FOREIGNKEY),
    WICKBOOK_CODE(SQLITE_CONSTRAINT_NOTNULL),
    WICKBOOK_CODE(SQLITE_CONSTRAINT_PRIMARYKEY),
    WICKBOOK_CODE(SQLITE_CONSTRAINT_TRIGGER),
    WICKBOOK_CODE(SQLITE_CONSTRAINT_UNIQUE),
    WICKBOOK_CODE(SQLITE_CONSTRAINT_ROWID),
    WICKBOOK_CODE(SQLITE_CONSTRAINT_DATATYPE),
    WICKBOOK_CODE(SQLITE_MISMATCH),
    WICKBOOK_CODE(SQLITE_MISUSE),
    WICKBOOK_CODE(SQLITE_NOLFS),
    WICKBOOK_CODE(SQLITE_AUTH),
    WICKBOOK_CODE(SQLITE_NOTADB),
});
#undef WICKBOOK_CODE

bool isNoSpace(int errorNumber) {
    return errorNumber == ENOSPC || errorNumber == EDQUOT;
}

bool isReadOnly(int errorNumber) {
    return errorNumber == EACCES || errorNumber == EPERM || errorNumber == EROFS;
}

StoreErrorKind kindOf(int code, int errorNumber) {
    switch (code & 0xFF) {
    case SQLITE_FULL:
        return StoreErrorKind::DiskFull;
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return StoreErrorKind::Busy;
    case SQLITE_IOERR:
        // A failed sync can be how a full disk shows; for the person it is one thing.
        return isNoSpace(errorNumber) ? StoreErrorKind::DiskFull : StoreErrorKind::InputOutput;
    case SQLITE_READONLY:
        return code == SQLITE_READONLY_DBMOVED ? StoreErrorKind::NoSuchFile : StoreErrorKind::ReadOnly;
    case SQLITE_CORRUPT:
        return StoreErrorKind::Damaged;
    case SQLITE_NOTADB:
        return StoreErrorKind::NotABook;
    case SQLITE_CANTOPEN:
        if (isNoSpace(errorNumber))
            return StoreErrorKind::DiskFull;
        return isReadOnly(errorNumber) ? StoreErrorKind::ReadOnly : StoreErrorKind::CannotOpen;
    case SQLITE_NOMEM:
        return StoreErrorKind::OutOfMemory;
    case SQLITE_PERM:
    case SQLITE_AUTH:
        return StoreErrorKind::CannotOpen;
    default:
        return StoreErrorKind::Internal;
    }
}

/// Why nothing new can be written in a folder, told by writing a little; 0: it can.
int reasonAgainstWriting(const std::filesystem::path& folder) {
    const std::string name = (folder / (".wickbook-" + std::to_string(::getpid()) + ".room")).string();
    const int descriptor = ::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (descriptor < 0)
        return errno == EEXIST ? 0 : errno;
    constexpr std::array<char, 16 * 1024> kLittle{};
    int reason = 0;
    if (::write(descriptor, kLittle.data(), kLittle.size()) != static_cast<ssize_t>(kLittle.size()) ||
        ::fsync(descriptor) != 0)
        reason = errno;
    ::close(descriptor);
    ::unlink(name.c_str());
    return reason;
}

/// The system's reason for what this connection could not do just now; 0: it isn't known.
int systemReason(int code, sqlite3* handle, const std::filesystem::path& path) {
    // Kept by SQLite only for these two; for any other code it would be an old one.
    const int primary = code & 0xFF;
    if (handle == nullptr || (primary != SQLITE_IOERR && primary != SQLITE_CANTOPEN))
        return 0;
    const int reason = sqlite3_system_errno(handle);
    // A journal that can't be made is tried for reading next, and then SQLite only knows that it isn't there;
    // of a sync that failed it keeps no reason at all.
    const bool masked = primary == SQLITE_CANTOPEN ? reason == ENOENT : reason == 0;
    if (masked && sqlite3_db_readonly(handle, "main") == 0) {
        if (const int why = reasonAgainstWriting(path.has_parent_path() ? path.parent_path() : "."); why != 0)
            return why;
    }
    return reason;
}

} // namespace

std::string extendedCodeName(int code) {
    const auto* const found = std::ranges::find(kCodeNames, code, &CodeName::code);
    const std::string number = std::to_string(code);
    return found == kCodeNames.end() ? number : std::string{found->name} + " (" + number + ")";
}

StoreError errorFrom(const SQLite::Exception& exception, sqlite3* handle, const std::filesystem::path& path) {
    const int code =
        exception.getExtendedErrorCode() > 0 ? exception.getExtendedErrorCode() : exception.getErrorCode();
    const int errorNumber = systemReason(code, handle, path);
    std::string detail = extendedCodeName(code) + ": " + exception.what();
    if (errorNumber != 0)
        detail += " [" + std::generic_category().message(errorNumber) + "]";
    if (code == SQLITE_READONLY_DBMOVED)
        detail += " (the file was moved or deleted while it was open)";
    return {kindOf(code, errorNumber), path.string(), detail};
}

StoreError errorFromSystem(int errorNumber, const std::filesystem::path& path, const std::string& doing) {
    StoreErrorKind kind = StoreErrorKind::InputOutput;
    if (isNoSpace(errorNumber))
        kind = StoreErrorKind::DiskFull;
    else if (errorNumber == EEXIST)
        kind = StoreErrorKind::AlreadyThere;
    else if (isReadOnly(errorNumber))
        kind = StoreErrorKind::ReadOnly;
    else if (errorNumber != EIO)
        kind = StoreErrorKind::CannotOpen;
    return {kind, path.string(), doing + ": " + std::generic_category().message(errorNumber)};
}

} // namespace wickbook::store
