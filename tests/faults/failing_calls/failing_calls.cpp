// SPDX-License-Identifier: GPL-3.0-or-later
// Preloaded into the real program, makes the calls fail that change files of one folder: the n-th, or every
// one from the n-th on, with any errno. See switchboard.h. Calls for other files, and the program's own
// start, are left alone.
#include "tests/faults/failing_calls/switchboard.h"

#include <dlfcn.h>
#include <fcntl.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <sys/uio.h>
#include <unistd.h>

#include <cerrno>
#include <cstdarg>
#include <cstdio>
#include <cstdlib>
#include <cstring>

// glibc declares these with nonnull or throw attributes that a definition need not repeat.
#pragma GCC diagnostic ignored "-Wattributes"
#pragma GCC diagnostic ignored "-Wmissing-attributes"
#pragma GCC visibility push(default)

using namespace wickbook::store::testing;

namespace {

template <typename Function>
Function real(const char* name) {
    void* found = dlsym(RTLD_NEXT, name);
    Function function = nullptr;
    static_assert(sizeof found == sizeof function);
    std::memcpy(&function, &found, sizeof found);
    return function;
}

Switchboard* board() {
    static Switchboard* mapped = [] {
        const char* path = std::getenv("WICKBOOK_FAILING_CALLS");
        if (path == nullptr)
            return static_cast<Switchboard*>(nullptr);
        const int descriptor = real<int (*)(const char*, int, ...)>("open")(path, O_RDWR | O_CLOEXEC);
        if (descriptor < 0)
            return static_cast<Switchboard*>(nullptr);
        void* memory =
            ::mmap(nullptr, sizeof(Switchboard), PROT_READ | PROT_WRITE, MAP_SHARED, descriptor, 0);
        ::close(descriptor);
        return memory == MAP_FAILED ? nullptr : static_cast<Switchboard*>(memory);
    }();
    return mapped;
}

bool isUnder(const char* path) {
    static const char* folder = std::getenv("WICKBOOK_FAILING_UNDER");
    return folder != nullptr && path != nullptr && std::strncmp(path, folder, std::strlen(folder)) == 0;
}

bool isUnder(int descriptor) {
    char link[64];
    char path[4096];
    std::snprintf(link, sizeof link, "/proc/self/fd/%d", descriptor);
    const ssize_t length = ::readlink(link, path, sizeof path - 1);
    if (length <= 0)
        return false;
    path[length] = '\0';
    return isUnder(path);
}

/// Counts a call; whether it is one that fails.
bool fails(FailingCall kind) {
    Switchboard* b = board();
    if (b == nullptr || (b->calls & kind) == 0)
        return false;
    const int now = __sync_add_and_fetch(&b->seen, 1);
    if (b->failFrom == 0 || now < b->failFrom || (b->failTo != 0 && now > b->failTo))
        return false;
    __sync_add_and_fetch(&b->failed, 1);
    errno = b->error;
    return true;
}

bool halves() {
    return board()->halfWrite == 1;
}

bool forWriting(int flags) {
    return (flags & O_ACCMODE) != O_RDONLY;
}

bool openFails(const char* path, int flags) {
    if (!forWriting(flags) || !isUnder(path))
        return false;
    struct stat found {};
    const bool makes = (flags & O_CREAT) != 0 && ::stat(path, &found) != 0;
    return fails(kOpens) || (makes && fails(kNewFiles));
}

mode_t modeFrom(int flags, va_list arguments) {
    return (flags & (O_CREAT | O_TMPFILE)) != 0 ? static_cast<mode_t>(va_arg(arguments, int)) : 0;
}

} // namespace

extern "C" {

#define OPEN_LIKE(name)                                                                                      \
    int name(const char* path, int flags, ...) {                                                             \
        va_list arguments;                                                                                   \
        va_start(arguments, flags);                                                                          \
        const mode_t mode = modeFrom(flags, arguments);                                                      \
        va_end(arguments);                                                                                   \
        if (openFails(path, flags))                                                                          \
            return -1;                                                                                       \
        static const auto next = real<int (*)(const char*, int, ...)>(#name);                                \
        return next(path, flags, mode);                                                                      \
    }
OPEN_LIKE(open)
OPEN_LIKE(open64)

#define OPENAT_LIKE(name)                                                                                    \
    int name(int folder, const char* path, int flags, ...) {                                                 \
        va_list arguments;                                                                                   \
        va_start(arguments, flags);                                                                          \
        const mode_t mode = modeFrom(flags, arguments);                                                      \
        va_end(arguments);                                                                                   \
        if (openFails(path, flags))                                                                          \
            return -1;                                                                                       \
        static const auto next = real<int (*)(int, const char*, int, ...)>(#name);                           \
        return next(folder, path, flags, mode);                                                              \
    }
OPENAT_LIKE(openat)
OPENAT_LIKE(openat64)

ssize_t write(int descriptor, const void* bytes, size_t count) {
    static const auto next = real<ssize_t (*)(int, const void*, size_t)>("write");
    if (isUnder(descriptor) && fails(kWrites)) {
        const int reason = errno;
        // As a disk that runs full does: first what still fits, and the error at the next call.
        if (halves() && count > 1)
            return next(descriptor, bytes, count / 2);
        errno = reason;
        return -1;
    }
    return next(descriptor, bytes, count);
}

#define PWRITE_LIKE(name, offset_type)                                                                       \
    ssize_t name(int descriptor, const void* bytes, size_t count, offset_type at) {                          \
        static const auto next = real<ssize_t (*)(int, const void*, size_t, offset_type)>(#name);            \
        if (isUnder(descriptor) && fails(kWrites)) {                                                         \
            const int reason = errno;                                                                        \
            if (halves() && count > 1)                                                                       \
                return next(descriptor, bytes, count / 2, at);                                               \
            errno = reason;                                                                                  \
            return -1;                                                                                       \
        }                                                                                                    \
        return next(descriptor, bytes, count, at);                                                           \
    }
PWRITE_LIKE(pwrite, off_t)
PWRITE_LIKE(pwrite64, off64_t)

ssize_t writev(int descriptor, const struct iovec* parts, int count) {
    if (isUnder(descriptor) && fails(kWrites))
        return -1;
    static const auto next = real<ssize_t (*)(int, const struct iovec*, int)>("writev");
    return next(descriptor, parts, count);
}

ssize_t read(int descriptor, void* into, size_t count) {
    if (isUnder(descriptor) && fails(kReads))
        return -1;
    static const auto next = real<ssize_t (*)(int, void*, size_t)>("read");
    return next(descriptor, into, count);
}

#define PREAD_LIKE(name, offset_type)                                                                        \
    ssize_t name(int descriptor, void* into, size_t count, offset_type at) {                                 \
        if (isUnder(descriptor) && fails(kReads))                                                            \
            return -1;                                                                                       \
        static const auto next = real<ssize_t (*)(int, void*, size_t, offset_type)>(#name);                  \
        return next(descriptor, into, count, at);                                                            \
    }
PREAD_LIKE(pread, off_t)
PREAD_LIKE(pread64, off64_t)

#define DESCRIPTOR_CALL(name, kind)                                                                          \
    int name(int descriptor) {                                                                               \
        if (isUnder(descriptor) && fails(kind))                                                              \
            return -1;                                                                                       \
        static const auto next = real<int (*)(int)>(#name);                                                  \
        return next(descriptor);                                                                             \
    }
DESCRIPTOR_CALL(fsync, kSyncs)
DESCRIPTOR_CALL(fdatasync, kSyncs)

#define LENGTH_CALL(name, offset_type)                                                                       \
    int name(int descriptor, offset_type length) noexcept {                                                  \
        if (isUnder(descriptor) && fails(kTruncations))                                                      \
            return -1;                                                                                       \
        static const auto next = real<int (*)(int, offset_type)>(#name);                                     \
        return next(descriptor, length);                                                                     \
    }
LENGTH_CALL(ftruncate, off_t)
LENGTH_CALL(ftruncate64, off64_t)

int rename(const char* from, const char* to) noexcept {
    if (isUnder(to) && fails(kNames))
        return -1;
    static const auto next = real<int (*)(const char*, const char*)>("rename");
    return next(from, to);
}

int renameat2(int fromFolder, const char* from, int toFolder, const char* to, unsigned int flags) noexcept {
    if (isUnder(to) && fails(kNames))
        return -1;
    static const auto next = real<int (*)(int, const char*, int, const char*, unsigned int)>("renameat2");
    return next(fromFolder, from, toFolder, to, flags);
}

int link(const char* from, const char* to) noexcept {
    if (isUnder(to) && fails(kNames))
        return -1;
    static const auto next = real<int (*)(const char*, const char*)>("link");
    return next(from, to);
}

int unlink(const char* path) noexcept {
    if (isUnder(path) && fails(kNames))
        return -1;
    static const auto next = real<int (*)(const char*)>("unlink");
    return next(path);
}

} // extern "C"
