// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/mount.h>

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <string>

/// A disk of one megabyte, made of memory, that a test can fill and lock. Needs the right to mount.

namespace wickbook::store::testing {

class SmallDisk {
public:
    explicit SmallDisk(const std::filesystem::path& at) : at_(at) {
        std::filesystem::create_directory(at_);
        mounted_ = ::mount("tmpfs", at_.c_str(), "tmpfs", 0, "size=1m") == 0;
        reason_ = std::strerror(errno);
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;
    ~SmallDisk() {
        if (mounted_)
            ::umount2(at_.c_str(), MNT_DETACH);
    }
    [[nodiscard]] bool mounted() const { return mounted_; }
    [[nodiscard]] const std::string& reason() const { return reason_; } ///< why it is not mounted
    [[nodiscard]] const std::filesystem::path& path() const { return at_; }
    std::filesystem::path operator/(const std::string& name) const { return at_ / name; }
    void fill() const {
        std::ofstream out(at_ / "ballast", std::ios::binary);
        const std::string block(4096, 'x');
        while (out << block << std::flush) {
        }
    }
    void empty() const { std::filesystem::remove(at_ / "ballast"); }
    [[nodiscard]] bool makeReadOnly() const {
        return ::mount(nullptr, at_.c_str(), nullptr, MS_REMOUNT | MS_RDONLY, nullptr) == 0;
    }

private:
    std::filesystem::path at_;
    bool mounted_ = false;
    std::string reason_;
};

#define SKIP_WITHOUT(disk)                                                                                   \
    if (!(disk).mounted())                                                                                   \
    GTEST_SKIP() << "needs the right to mount a small disk (run as root): " << (disk).reason()

} // namespace wickbook::store::testing
