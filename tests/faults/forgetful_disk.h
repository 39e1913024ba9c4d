// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sqlite3.h>

#include <cstdint>
#include <filesystem>
#include <map>
#include <memory>
#include <random>
#include <string>
#include <vector>

/// A disk that forgets: between SQLite and the real files of one folder, it keeps in mind what has been
/// synced and what has only been written, lets the power fail after any operation, and then says what may be
/// found on the platter. What it grants and what it doesn't is what a journalling file system on an ordinary
/// disk does:
/// - what was synced is there (SQLITE_SYNC_DATAONLY included);
/// - of what was written since, any part may be there, in any order, and of each write any 512-byte sectors;
/// - a new file's name is there once the file has been synced through SQLite (which syncs the folder with
/// it);
/// - a deleted file stays deleted only where SQLite asked for the folder to be synced with it.
/// Bytes next to a write are not harmed: SQLite counts on that too (SQLITE_IOCAP_POWERSAFE_OVERWRITE).

namespace wickbook::store::testing {

class ForgetfulDisk {
public:
    /// Becomes SQLite's default file layer until it goes. Only files below the folder are forgotten.
    explicit ForgetfulDisk(std::filesystem::path folder);
    ForgetfulDisk(const ForgetfulDisk&) = delete;
    ForgetfulDisk& operator=(const ForgetfulDisk&) = delete;
    ~ForgetfulDisk();

    /// Takes the folder as it stands for synced, and the power back on.
    void startAfresh();
    /// The power fails once that many operations are done; every later one fails with SQLITE_IOERR.
    void cutAfter(int operations) { cutAfter_ = operations; }
    /// Writes, truncations, syncs, deletions and new files since startAfresh().
    [[nodiscard]] int operations() const { return done_; }
    [[nodiscard]] bool isOff() const { return done_ >= cutAfter_; }
    /// Writes and deletions that the disk is free to forget at this moment.
    [[nodiscard]] int unsure() const;

    /// What is found after the power came back. Nothing: all that was unsure is gone. Everything: all is
    /// there. Torn: drawn from the seed, each write kept, dropped or kept in some of its sectors.
    enum class Memory { Nothing, Everything, Torn };
    /// Writes that state into another, empty folder.
    void recall(const std::filesystem::path& into, Memory memory, std::uint64_t seed = 0) const;

    struct Change {
        bool truncation = false;
        std::int64_t at = 0; ///< offset of a write; new length of a truncation
        std::string bytes;
    };
    struct Remembered {
        std::string synced;         ///< contents at the last sync
        bool nameSynced = false;    ///< whether a file of this name is there for certain
        bool exists = true;         ///< as the program sees it
        std::vector<Change> unsure; ///< since the last sync, in order
    };

    // For the file layer's own functions.
    struct File;
    /// Whether the operation may be done; counts it.
    bool allows();
    void wrote(const std::string& path, std::int64_t at, const void* bytes, int count);
    void cutShort(const std::string& path, std::int64_t length);
    void synced(const std::string& path);
    void created(const std::string& path);
    void deleted(const std::string& path, bool folderSynced);
    [[nodiscard]] bool keeps(const char* path) const;
    [[nodiscard]] sqlite3_vfs* real() const { return real_; }

private:
    std::string folder_;
    sqlite3_vfs* real_ = nullptr;
    std::unique_ptr<sqlite3_vfs> own_;
    std::map<std::string, Remembered> files_; ///< by path
    int done_ = 0;
    int cutAfter_ = 1'000'000'000;
};

} // namespace wickbook::store::testing
