// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

/// What the preloaded library is told and what it tells, in a small file that both sides map: a test can arm
/// it, disarm it and look at its counts while the program runs. The file's path is in WICKBOOK_FAILING_CALLS,
/// the folder whose files are meant in WICKBOOK_FAILING_UNDER.

namespace wickbook::store::testing {

/// Kinds of call, as bits of Switchboard::calls.
enum FailingCall : std::uint32_t {
    kWrites = 1,       ///< write, pwrite, writev
    kSyncs = 2,        ///< fsync, fdatasync
    kOpens = 4,        ///< open for writing
    kNewFiles = 64,    ///< of these, the ones that make a new file
    kNames = 8,        ///< rename, link, unlink
    kTruncations = 16, ///< ftruncate, posix_fallocate
    kReads = 32,       ///< read, pread
    kEveryChange = kWrites | kSyncs | kOpens | kNewFiles | kNames | kTruncations,
};

struct Switchboard {
    volatile std::uint32_t calls;    ///< which kinds are counted, and may fail
    volatile std::int32_t failFrom;  ///< the first call that fails, counted from 1; 0: none
    volatile std::int32_t failTo;    ///< the last one; 0: every one from failFrom on
    volatile std::int32_t error;     ///< errno of a failing call
    volatile std::int32_t halfWrite; ///< 1: a failing write puts half of its bytes down first
    volatile std::int32_t seen;      ///< calls counted
    volatile std::int32_t failed;    ///< calls that failed
};

} // namespace wickbook::store::testing
