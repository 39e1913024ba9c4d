// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/uuid.h"

#include <algorithm>
#include <chrono>
#include <mutex>
#include <random>

namespace wickbook::record {

namespace {

void stampVersion(std::array<std::uint8_t, 16>& bytes, std::uint8_t version) {
    // RFC 9562 section 4: version in the high half of byte 6, variant 10 in byte 8.
    bytes[6] = static_cast<std::uint8_t>((bytes[6] & 0x0FU) | static_cast<unsigned>(version << 4U));
    bytes[8] = static_cast<std::uint8_t>((bytes[8] & 0x3FU) | 0x80U);
}

std::uint64_t splitMix(std::uint64_t& state) {
    state += 0x9E3779B97F4A7C15ULL;
    std::uint64_t z = state;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
    return z ^ (z >> 31U);
}

int hexValue(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    if (c >= 'a' && c <= 'f') {
        return c - 'a' + 10;
    }
    if (c >= 'A' && c <= 'F') {
        return c - 'A' + 10;
    }
    return -1;
}

bool dashBefore(std::size_t byte) {
    return byte == 4 || byte == 6 || byte == 8 || byte == 10;
}

} // namespace

Uuid Uuid::random() {
    // RFC 9562, 5.7 and 6.2 (monotonic random): within a millisecond the last 62 bits grow by a random step.
    // A clock that was set back waits for itself.
    static std::mutex guard;
    static std::random_device source;
    static std::uint64_t millisecond = 0;
    static std::uint32_t middle = 0; // 12 bits
    static std::uint64_t tail = 0;   // 62 bits
    constexpr std::uint64_t kTail = (1ULL << 62U) - 1;
    const std::lock_guard lock(guard);
    const auto now = static_cast<std::uint64_t>(std::chrono::duration_cast<std::chrono::milliseconds>(
                                                    std::chrono::system_clock::now().time_since_epoch())
                                                    .count());
    const std::uint64_t grown = tail + source() + 1ULL;
    if (now > millisecond || grown > kTail) {
        millisecond = std::max(now, millisecond + 1);
        middle = source() & 0xFFFU;
        // Room is left above, so that growing hardly ever runs out of it.
        tail = (static_cast<std::uint64_t>(source()) << 29U | source() >> 3U) & (kTail >> 1U);
    } else {
        tail = grown;
    }
    Uuid uuid;
    const auto put = [&uuid](std::size_t from, std::size_t count, std::uint64_t value) {
        for (std::size_t i = 0; i < count; ++i) {
            uuid.bytes.at(from + i) = static_cast<std::uint8_t>(value >> (8U * (count - 1 - i)));
        }
    };
    put(0, 6, millisecond);
    put(6, 2, middle);
    put(8, 8, tail);
    stampVersion(uuid.bytes, 7);
    return uuid;
}

Uuid Uuid::fromSeed(std::uint64_t seed, std::uint64_t counter) {
    std::uint64_t state = seed * 0xD1342543DE82EF95ULL + counter;
    Uuid uuid;
    for (std::size_t i = 0; i < uuid.bytes.size(); i += 8) {
        const std::uint64_t word = splitMix(state);
        for (std::size_t k = 0; k < 8; ++k) {
            uuid.bytes.at(i + k) = static_cast<std::uint8_t>(word >> (8U * k));
        }
    }
    stampVersion(uuid.bytes, 8);
    return uuid;
}

std::optional<Uuid> Uuid::fromText(std::string_view text) {
    if (text.size() != 36) {
        return std::nullopt;
    }
    Uuid uuid;
    std::size_t at = 0;
    for (std::size_t byte = 0; byte < uuid.bytes.size(); ++byte) {
        if (dashBefore(byte) && text[at++] != '-') {
            return std::nullopt;
        }
        const int high = hexValue(text[at]);
        const int low = hexValue(text[at + 1]);
        if (high < 0 || low < 0) {
            return std::nullopt;
        }
        uuid.bytes.at(byte) = static_cast<std::uint8_t>(high * 16 + low);
        at += 2;
    }
    return uuid;
}

std::string Uuid::toText() const {
    static constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text;
    text.reserve(36);
    for (std::size_t byte = 0; byte < bytes.size(); ++byte) {
        if (dashBefore(byte)) {
            text += '-';
        }
        text += kDigits[bytes.at(byte) >> 4U];
        text += kDigits[bytes.at(byte) & 0x0FU];
    }
    return text;
}

} // namespace wickbook::record
