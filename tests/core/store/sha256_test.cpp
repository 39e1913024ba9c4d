// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/chain.h"
#include "core/store/sha256.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

using namespace wickbook::store;

namespace {

std::string hex(const Checksum& digest) {
    std::string text;
    for (const std::uint8_t byte : digest)
        text += fmt::format("{:02x}", byte);
    return text;
}

std::string sha256(std::string_view bytes) {
    Sha256 hash;
    hash.addBytes(bytes);
    return hex(hash.finish());
}

} // namespace

// The example messages of FIPS 180-4 and their digests, from memory; `printf abc | sha256sum` gives the same.
TEST(Sha256Digest, IsTheOneOfThePublishedExamples) {
    EXPECT_EQ(sha256("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    EXPECT_EQ(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}

TEST(Sha256Digest, IsTheSameInOnePieceAndInMany) {
    Sha256 pieces;
    for (const char* piece : {"a", "", "b", "c"})
        pieces.addBytes(piece);
    EXPECT_EQ(hex(pieces.finish()), sha256("abc"));
    pieces.addBytes("abc");
    EXPECT_EQ(hex(pieces.finish()), sha256("abc")) << "finish must begin afresh";
}

// The canonical bytes as resources/schema/0001_book.sql describes them, put together by hand here.
TEST(ChainChecksum, CoversExactlyTheBytesThatTheSchemaDescribes) {
    RevisionRow row{3, "IIIIIIIIIIIIIIII", "observation", "SSSSSSSSSSSSSSSS", -2, "ab", "", "{}"};
    Checksum previous;
    previous.fill(0x11);
    using namespace std::string_literals;
    const auto length = [](std::size_t n) { return "\0\0\0\0\0\0\0"s + static_cast<char>(n); };
    const std::string bytes = std::string(32, '\x11') + "\0\0\0\0\0\0\0\3"s + length(16) + row.id +
                              length(11) + "observation" + length(16) + row.subject +
                              "\xff\xff\xff\xff\xff\xff\xff\xfe"s + length(2) + "ab" + length(0) + length(2) +
                              "{}";
    EXPECT_EQ(hex(chainChecksum(previous, row)), sha256(bytes));
}
