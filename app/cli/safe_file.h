// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <tl/expected.hpp>

#include <string>
#include <string_view>

/// A file that is there whole or not at all: written beside its name, synced, renamed. Every write is
/// checked, and the system's own cause is in the message. Whatever stood under the name stays until the
/// rename; a file given up leaves nothing behind. Something that is not a plain file (a pipe, /dev/null)
/// is written straight.

namespace wickbook::cli {

class SafeFile {
public:
    /// error: a sentence.
    static tl::expected<SafeFile, std::string> create(const std::string& path);
    SafeFile(SafeFile&& other) noexcept;
    SafeFile& operator=(SafeFile&& other) noexcept;
    ~SafeFile();

    tl::expected<void, std::string> write(std::string_view bytes);
    /// What was written so far is with the system: a disk that is full says so now.
    tl::expected<void, std::string> flushBuffer();
    /// Syncs and renames; nothing may be written afterwards.
    tl::expected<void, std::string> finish();
    [[nodiscard]] const std::string& path() const { return path_; }
    /// Not a pipe or a device, which is written straight.
    [[nodiscard]] bool isFile() const { return !beside_.empty(); }

private:
    SafeFile() = default;
    void giveUp();

    std::string path_;
    std::string beside_; ///< empty where the path is written straight
    std::string buffer_;
    int descriptor_ = -1;
};

} // namespace wickbook::cli
