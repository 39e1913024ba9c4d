// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store_error.h"

#include <tl/expected.hpp>

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

/// Where the salvage reads its bytes from: a damaged file, bytes in memory, or a file as an interrupted write
/// would leave it once taken back (salvage_journal.h). Only ever read; what the disk refuses to give is
/// missing, never a failure of the whole.

namespace wickbook::store {

class ByteSource {
public:
    ByteSource() = default;
    ByteSource(const ByteSource&) = delete;
    ByteSource& operator=(const ByteSource&) = delete;
    virtual ~ByteSource() = default;

    /// Bytes.
    [[nodiscard]] virtual std::uint64_t size() const = 0;
    /// Exactly so many bytes from this place on into the text; false where they are past the end or the disk
    /// refuses them, and then what the text holds means nothing.
    virtual bool read(std::uint64_t place, std::size_t length, std::string& into) const = 0;
};

/// Bytes that lie in memory. They must outlive it.
class MemorySource final : public ByteSource {
public:
    explicit MemorySource(std::string_view bytes) : bytes_(bytes) {}
    [[nodiscard]] std::uint64_t size() const override { return bytes_.size(); }
    bool read(std::uint64_t place, std::size_t length, std::string& into) const override;

private:
    std::string_view bytes_;
};

/// An ordinary file that nobody locks: a journal.
class PlainFile final : public ByteSource {
public:
    /// Nothing where it can't be opened or is no ordinary file.
    static std::unique_ptr<PlainFile> open(const std::filesystem::path& path);
    ~PlainFile() override;
    [[nodiscard]] std::uint64_t size() const override { return size_; }
    bool read(std::uint64_t place, std::size_t length, std::string& into) const override;

private:
    PlainFile(int descriptor, std::uint64_t size) : descriptor_(descriptor), size_(size) {}
    int descriptor_;
    std::uint64_t size_;
};

/// The book's file, read through SQLite's own file layer (book_header.h says why) under its shared lock, so
/// that no other program writes meanwhile. Where locks can't be had at all, it is read without.
class LockedFile final : public ByteSource {
public:
    /// Errors: NoSuchFile, CannotOpen, Busy (a writer longer than the patience), InputOutput.
    static tl::expected<std::unique_ptr<LockedFile>, StoreError> open(const std::filesystem::path& path);
    ~LockedFile() override;
    [[nodiscard]] std::uint64_t size() const override { return size_; }
    bool read(std::uint64_t place, std::size_t length, std::string& into) const override;
    /// Another program is about to write: the journal beside is its own and not to be taken back.
    [[nodiscard]] bool beingWritten() const;

private:
    struct Handle;
    explicit LockedFile(std::unique_ptr<Handle> handle);
    std::unique_ptr<Handle> handle_;
    std::uint64_t size_ = 0;
    bool locked_ = false;
};

} // namespace wickbook::store
