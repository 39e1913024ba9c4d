// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/copy_shelf.h"

#include "core/store/book_header.h"
#include "core/store/connection.h"
#include "core/store/copy_rotation.h"
#include "core/store/placement.h"

#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>

namespace wickbook::store {

namespace {

/// One second holds no more copies than this; beyond it something is amiss.
constexpr int kMostInOneSecond = 1000;

bool isPlainFile(const std::filesystem::path& path) {
    struct stat status {};
    return ::lstat(path.c_str(), &status) == 0 && S_ISREG(status.st_mode);
}

bool isSameFile(const std::filesystem::path& one, const std::filesystem::path& other) {
    std::error_code ignored;
    return std::filesystem::equivalent(one, other, ignored);
}

bool hasJournal(const std::filesystem::path& path) {
    struct stat status {};
    return ::lstat(journalOf(path).c_str(), &status) == 0;
}

KeptCopy lookedAt(const std::filesystem::path& path, CopyName name) {
    KeptCopy copy;
    copy.path = path;
    copy.name = std::move(name);
    std::error_code ignored;
    copy.bytes = std::filesystem::file_size(path, ignored);
    const auto book = Book::open(path, OpenMode::ReadOnly);
    if (!book) {
        copy.trouble = book.error();
        return copy;
    }
    const auto chain = book->chainMark();
    const auto readings = book->observationCount();
    if (!chain || !readings)
        copy.trouble = !chain ? chain.error() : readings.error();
    else {
        copy.chain = *chain;
        copy.readings = *readings;
    }
    return copy;
}

/// Nothing in the copy that the book lacks: equal checksums at one place prove all before them equal.
Result<bool> isOwn(const Book& book, const KeptCopy& copy) {
    if (copy.trouble || copy.chain.count < 1)
        return false;
    const auto there = book.checksumAt(copy.chain.count);
    if (!there)
        return tl::unexpected(there.error());
    return *there && **there == copy.chain.head;
}

} // namespace

std::filesystem::path usualCopyFolder(const std::filesystem::path& book) {
    return book.parent_path() / (book.stem().string() + " copies");
}

Result<std::vector<KeptCopy>> copiesIn(const std::filesystem::path& folder) {
    return guarded(folder, nullptr, [&]() -> Result<std::vector<KeptCopy>> {
        std::vector<KeptCopy> copies;
        std::error_code error;
        std::filesystem::directory_iterator entry(folder, error);
        if (error == std::errc::no_such_file_or_directory)
            return copies;
        for (; !error && entry != std::filesystem::directory_iterator{}; entry.increment(error)) {
            const auto name = copyNameFrom(entry->path().filename().string());
            if (!name || !isPlainFile(entry->path()))
                continue;
            KeptCopy copy = lookedAt(entry->path(), *name);
            if (!copy.trouble || copy.trouble->kind != StoreErrorKind::NotABook)
                copies.push_back(std::move(copy));
        }
        if (error)
            return tl::unexpected(errorFromSystem(error.value(), folder, "reading the folder"));
        std::ranges::sort(copies, [](const KeptCopy& one, const KeptCopy& other) {
            return std::tie(other.name.moment, other.name.number, one.path) <
                   std::tie(one.name.moment, one.name.number, other.path);
        });
        return copies;
    });
}

Result<std::vector<KeptCopy>> copiesOf(const Book& book, std::span<const KeptCopy> copies) {
    std::vector<KeptCopy> own;
    for (const KeptCopy& copy : copies) {
        const auto mine = isOwn(book, copy);
        if (!mine)
            return tl::unexpected(mine.error());
        if (*mine && !isSameFile(copy.path, book.path()))
            own.push_back(copy);
    }
    return own;
}

bool copyIsDue(std::span<const KeptCopy> ownCopies, const ChainMark& book, record::Instant now) {
    const auto today = date::floor<date::days>(now);
    return std::ranges::none_of(ownCopies, [&](const KeptCopy& copy) {
        return copy.chain.head == book.head || date::floor<date::days>(copy.name.moment) == today;
    });
}

Result<KeptCopy> keepCopy(const Book& book, const CopyShelf& shelf, CopyReason reason, record::Instant now) {
    return guarded(shelf.folder, nullptr, [&]() -> Result<KeptCopy> {
        if (auto there = shelf.makeFolder ? makeFolder(shelf.folder) : checkFolder(shelf.folder); !there)
            return tl::unexpected(there.error());
        CopyName name{book.path().stem().string(), now, reason, 1};
        for (;; ++name.number) {
            const auto path = shelf.folder / copyFileName(name);
            const auto made = book.backupTo(path);
            if (made)
                return lookedAt(path, *copyNameFrom(path.filename().string()));
            if (made.error().kind != StoreErrorKind::AlreadyThere || name.number == kMostInOneSecond)
                return tl::unexpected(made.error());
        }
    });
}

Result<CopyRotation> rotateCopies(const Book& book, const std::filesystem::path& folder,
                                  const std::filesystem::path& verified, record::Instant now) {
    return guarded(folder, nullptr, [&]() -> Result<CopyRotation> {
        const auto all = copiesIn(folder);
        if (!all)
            return tl::unexpected(all.error());
        const auto own = copiesOf(book, *all);
        if (!own)
            return tl::unexpected(own.error());
        std::vector<CopyAge> ages;
        bool stands = false;
        for (const KeptCopy& copy : *own) {
            const bool isVerified = isSameFile(copy.path, verified);
            stands = stands || isVerified;
            ages.push_back({copy.name.moment, isVerified ? std::optional{true} : std::nullopt,
                            copy.name.reason == CopyReason::BeforeBringingIn ||
                                copy.name.reason == CopyReason::BeforeTakingBack});
        }
        CopyRotation rotation;
        rotation.left = std::ssize(*own);
        if (!stands)
            return rotation; // without a copy known to be sound nothing goes
        for (const std::size_t i : copiesToDrop(ages, now)) {
            const auto& path = (*own)[i].path;
            if (hasJournal(path))
                continue; // book and journal belong together
            if (::unlink(path.c_str()) == 0) {
                rotation.dropped.push_back(path);
                --rotation.left;
            } else {
                rotation.stuck.push_back(errorFromSystem(errno, path, "deleting an old copy"));
            }
        }
        return rotation;
    });
}

Result<bool> copyToHandOn(const Book& book, const std::filesystem::path& path) {
    if (auto made = book.backupTo(path); !made)
        return tl::unexpected(made.error());
    if (::chmod(path.c_str(), S_IRUSR | S_IRGRP | S_IROTH) != 0)
        return false;
    struct stat status {};
    return ::stat(path.c_str(), &status) == 0 && (status.st_mode & (S_IWUSR | S_IWGRP | S_IWOTH)) == 0;
}

} // namespace wickbook::store
