// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <string_view>

/// A folder in memory where the system has one, so that trying a hundred thousand books wears out no disk.

namespace wickbook::fuzz {

class MemoryFolder {
public:
    MemoryFolder();
    MemoryFolder(const MemoryFolder&) = delete;
    MemoryFolder& operator=(const MemoryFolder&) = delete;
    ~MemoryFolder();
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    void clear() const;
    /// Every file by name, with its bytes.
    [[nodiscard]] std::map<std::string, std::string> contents() const;

private:
    std::filesystem::path path_;
};

std::string readWhole(const std::filesystem::path& path);
void writeWhole(const std::filesystem::path& path, std::string_view bytes);

} // namespace wickbook::fuzz
