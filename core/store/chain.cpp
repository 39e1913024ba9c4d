// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/chain.h"

#include <algorithm>

namespace wickbook::store {

Checksum chainChecksum(const Checksum& previous, const RevisionRow& row) {
    Sha256 hash;
    hash.addBytes(bytesOf(previous));
    hash.addInteger(row.sequence);
    hash.addText(row.id);
    hash.addText(row.kind);
    hash.addText(row.subject);
    hash.addInteger(row.recordedAt);
    hash.addText(row.who);
    hash.addText(row.why);
    hash.addText(row.body);
    return hash.finish();
}

std::string bytesOf(const record::Uuid& uuid) {
    return {uuid.bytes.begin(), uuid.bytes.end()};
}

std::string bytesOf(const Checksum& checksum) {
    return {checksum.begin(), checksum.end()};
}

record::Uuid uuidFromText(std::string_view text) {
    Sha256 hash;
    hash.addText(text);
    const Checksum digest = hash.finish();
    record::Uuid uuid;
    std::copy_n(digest.begin(), uuid.bytes.size(), uuid.bytes.begin());
    // RFC 9562, 5.8: version 8 in the high half of octet 6, variant 10 in the high bits of octet 8.
    uuid.bytes[6] = static_cast<std::uint8_t>((uuid.bytes[6] & 0x0FU) | 0x80U);
    uuid.bytes[8] = static_cast<std::uint8_t>((uuid.bytes[8] & 0x3FU) | 0x80U);
    return uuid;
}

} // namespace wickbook::store
