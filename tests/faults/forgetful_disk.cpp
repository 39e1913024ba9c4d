// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/forgetful_disk.h"

#include "tests/core/store/book_testing.h"

#include <algorithm>
#include <cstring>

namespace wickbook::store::testing {

namespace {

constexpr std::size_t kSector = 512;

void put(std::string& contents, std::size_t at, std::string_view bytes) {
    if (contents.size() < at + bytes.size())
        contents.resize(at + bytes.size(), '\0');
    contents.replace(at, bytes.size(), bytes);
}

/// Only some sectors of a write reached the platter; a sector is a stretch of the file, not of the write.
void putTorn(std::string& contents, const ForgetfulDisk::Change& change, std::mt19937_64& draw) {
    const auto at = static_cast<std::size_t>(change.at);
    for (std::size_t i = 0; i < change.bytes.size();) {
        const std::size_t end = std::min(change.bytes.size(), i + kSector - (at + i) % kSector);
        if (draw() % 2 == 0)
            put(contents, at + i, std::string_view{change.bytes}.substr(i, end - i));
        i = end;
    }
}

void apply(std::string& contents, const ForgetfulDisk::Change& change) {
    if (change.truncation)
        contents.resize(static_cast<std::size_t>(change.at), '\0');
    else
        put(contents, static_cast<std::size_t>(change.at), change.bytes);
}

} // namespace

/// A file as SQLite holds it; the real one's memory follows.
struct ForgetfulDisk::File {
    sqlite3_file base;
    ForgetfulDisk* disk;
    std::string* path; ///< none: a file that isn't kept in mind
    sqlite3_file* realFile() { return static_cast<sqlite3_file*>(static_cast<void*>(this + 1)); }
};

namespace {

using File = ForgetfulDisk::File;

File* fileOf(sqlite3_file* file) {
    return static_cast<File*>(static_cast<void*>(file));
}
sqlite3_file* realOf(sqlite3_file* file) {
    return fileOf(file)->realFile();
}
ForgetfulDisk* diskOf(sqlite3_vfs* vfs) {
    return static_cast<ForgetfulDisk*>(vfs->pAppData);
}
bool off(sqlite3_file* file) {
    return fileOf(file)->path != nullptr && fileOf(file)->disk->isOff();
}

int closeFile(sqlite3_file* file) {
    const int result = realOf(file)->pMethods->xClose(realOf(file));
    delete fileOf(file)->path;
    return result;
}
int readFile(sqlite3_file* file, void* into, int count, sqlite3_int64 at) {
    return off(file) ? SQLITE_IOERR_READ : realOf(file)->pMethods->xRead(realOf(file), into, count, at);
}
int writeFile(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 at) {
    File* own = fileOf(file);
    if (own->path == nullptr)
        return realOf(file)->pMethods->xWrite(realOf(file), bytes, count, at);
    if (!own->disk->allows())
        return SQLITE_IOERR_WRITE;
    own->disk->wrote(*own->path, at, bytes, count);
    return realOf(file)->pMethods->xWrite(realOf(file), bytes, count, at);
}
int truncateFile(sqlite3_file* file, sqlite3_int64 length) {
    File* own = fileOf(file);
    if (own->path == nullptr)
        return realOf(file)->pMethods->xTruncate(realOf(file), length);
    if (!own->disk->allows())
        return SQLITE_IOERR_TRUNCATE;
    own->disk->cutShort(*own->path, length);
    return realOf(file)->pMethods->xTruncate(realOf(file), length);
}
int syncFile(sqlite3_file* file, int) {
    File* own = fileOf(file);
    if (own->path == nullptr)
        return SQLITE_OK; // a test's own look at what was found needs no real disk either
    if (!own->disk->allows())
        return SQLITE_IOERR_FSYNC;
    // The real disk has no part in this: what it would keep is kept in mind here.
    own->disk->synced(*own->path);
    return SQLITE_OK;
}
int sizeOfFile(sqlite3_file* file, sqlite3_int64* size) {
    return off(file) ? SQLITE_IOERR_FSTAT : realOf(file)->pMethods->xFileSize(realOf(file), size);
}
int lockFile(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xLock(realOf(file), level);
}
int unlockFile(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xUnlock(realOf(file), level);
}
int checkLock(sqlite3_file* file, int* held) {
    return realOf(file)->pMethods->xCheckReservedLock(realOf(file), held);
}
int controlFile(sqlite3_file* file, int what, void* argument) {
    return realOf(file)->pMethods->xFileControl(realOf(file), what, argument);
}
int sectorSize(sqlite3_file* file) {
    return realOf(file)->pMethods->xSectorSize(realOf(file));
}
int characteristics(sqlite3_file* file) {
    return realOf(file)->pMethods->xDeviceCharacteristics(realOf(file));
}

const sqlite3_io_methods* methods() {
    static const sqlite3_io_methods table = [] {
        sqlite3_io_methods made{};
        made.iVersion = 1; // neither shared memory nor mapped pages: a book uses none
        made.xClose = closeFile;
        made.xRead = readFile;
        made.xWrite = writeFile;
        made.xTruncate = truncateFile;
        made.xSync = syncFile;
        made.xFileSize = sizeOfFile;
        made.xLock = lockFile;
        made.xUnlock = unlockFile;
        made.xCheckReservedLock = checkLock;
        made.xFileControl = controlFile;
        made.xSectorSize = sectorSize;
        made.xDeviceCharacteristics = characteristics;
        return made;
    }();
    return &table;
}

int openFile(sqlite3_vfs* vfs, const char* name, sqlite3_file* file, int flags, int* outFlags) {
    ForgetfulDisk* disk = diskOf(vfs);
    File* own = fileOf(file);
    own->base.pMethods = nullptr;
    own->disk = disk;
    own->path = nullptr;
    const bool kept = disk->keeps(name);
    const bool isNew = kept && !std::filesystem::exists(name);
    if (kept && isNew && (flags & SQLITE_OPEN_CREATE) != 0 && !disk->allows())
        return SQLITE_CANTOPEN;
    if (kept && disk->isOff())
        return SQLITE_IOERR;
    const int result = disk->real()->xOpen(disk->real(), name, own->realFile(), flags, outFlags);
    if (own->realFile()->pMethods == nullptr)
        return result;
    if (kept) {
        own->path = new std::string(name);
        if (isNew)
            disk->created(*own->path);
    }
    own->base.pMethods = methods();
    return result;
}
int deleteFile(sqlite3_vfs* vfs, const char* name, int syncFolder) {
    ForgetfulDisk* disk = diskOf(vfs);
    if (disk->keeps(name)) {
        if (!disk->allows())
            return SQLITE_IOERR_DELETE;
        disk->deleted(name, syncFolder != 0);
    }
    return disk->real()->xDelete(disk->real(), name, 0);
}

} // namespace

ForgetfulDisk::ForgetfulDisk(std::filesystem::path folder)
    : folder_(folder.string() + "/")
    , real_(sqlite3_vfs_find(nullptr))
    , own_(std::make_unique<sqlite3_vfs>(*real_)) {
    // What the real layer does without looking at our files it does with its own table of functions.
    own_->zName = "forgetful";
    own_->pAppData = this;
    own_->pNext = nullptr;
    own_->szOsFile = static_cast<int>(sizeof(File)) + real_->szOsFile;
    own_->xOpen = openFile;
    own_->xDelete = deleteFile;
    sqlite3_vfs_register(own_.get(), 1);
    startAfresh();
}

ForgetfulDisk::~ForgetfulDisk() {
    sqlite3_vfs_unregister(own_.get());
    sqlite3_vfs_register(real_, 1);
}

void ForgetfulDisk::startAfresh() {
    files_.clear();
    done_ = 0;
    cutAfter_ = 1'000'000'000;
    for (const auto& [name, contents] : contentsOf(folder_))
        files_[folder_ + name] = {contents, true, true, {}};
}

bool ForgetfulDisk::keeps(const char* path) const {
    return path != nullptr && std::strncmp(path, folder_.c_str(), folder_.size()) == 0;
}

bool ForgetfulDisk::allows() {
    if (isOff())
        return false;
    ++done_;
    return true;
}

void ForgetfulDisk::wrote(const std::string& path, std::int64_t at, const void* bytes, int count) {
    files_[path].unsure.push_back(
        {false, at, std::string(static_cast<const char*>(bytes), static_cast<std::size_t>(count))});
}

void ForgetfulDisk::cutShort(const std::string& path, std::int64_t length) {
    files_[path].unsure.push_back({true, length, {}});
}

void ForgetfulDisk::synced(const std::string& path) {
    Remembered& file = files_[path];
    for (const Change& change : file.unsure)
        apply(file.synced, change);
    file.unsure.clear();
    file.nameSynced = true;
}

void ForgetfulDisk::created(const std::string& path) {
    Remembered& file = files_[path];
    // A new file, whatever stood under the name before. That the old one may come back instead, where its
    // deletion was not synced, is asked about at the deletion itself and no longer here.
    file = {{}, false, true, {}};
}

void ForgetfulDisk::deleted(const std::string& path, bool folderSynced) {
    Remembered& file = files_[path];
    file.exists = false;
    if (folderSynced)
        file = {{}, false, false, {}};
}

int ForgetfulDisk::unsure() const {
    int count = 0;
    for (const auto& [path, file] : files_)
        count += static_cast<int>(file.unsure.size()) + (file.exists == file.nameSynced ? 0 : 1);
    return count;
}

void ForgetfulDisk::recall(const std::filesystem::path& into, Memory memory, std::uint64_t seed) const {
    std::mt19937_64 draw(seed);
    for (const auto& [path, file] : files_) {
        bool there = file.nameSynced;
        if (file.exists != file.nameSynced) {
            // Made or deleted, and not certain yet.
            const bool newState = memory == Memory::Everything || (memory == Memory::Torn && draw() % 2 == 0);
            there = newState ? file.exists : file.nameSynced;
        }
        if (!there)
            continue;
        std::string contents = file.synced;
        for (const Change& change : file.unsure) {
            if (memory == Memory::Nothing)
                break;
            const auto fate = memory == Memory::Everything ? 0 : draw() % 3;
            if (fate == 0)
                apply(contents, change);
            else if (fate == 1 && !change.truncation)
                putTorn(contents, change, draw);
        }
        writeBytes(into / std::filesystem::path(path).filename(), contents);
    }
}

} // namespace wickbook::store::testing
