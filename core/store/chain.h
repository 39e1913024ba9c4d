// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/uuid.h"
#include "core/store/sha256.h"

#include <cstdint>
#include <string>
#include <string_view>

/// The chain over all revisions: each row's checksum covers the row and the checksum before it, so that a
/// changed byte, a missing row or a changed order is found even where SQLite's own check sees a sound file.
/// The canonical bytes are described in resources/schema/0001_book.sql and never change: a book written
/// today must be provable in fifty years.

namespace wickbook::store {

/// A row of the table "revision", blobs as bytes.
struct RevisionRow {
    std::int64_t sequence = 0;
    std::string id;
    std::string kind;
    std::string subject;
    std::int64_t recordedAt = 0; ///< UTC, seconds since 1970
    std::string who;
    std::string why;
    std::string body;
};

Checksum chainChecksum(const Checksum& previous, const RevisionRow& row);

std::string bytesOf(const record::Uuid& uuid);
std::string bytesOf(const Checksum& checksum);
/// A UUID (version 8) made from text: the same text always gives the same one.
record::Uuid uuidFromText(std::string_view text);

} // namespace wickbook::store
