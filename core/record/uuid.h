// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

/// Identity of an observation, a revision, a thermometer: RFC 9562 UUID. Made once, kept for ever,
/// so a save that is tried twice can't appear twice and books can be compared.

namespace wickbook::record {

struct Uuid {
    std::array<std::uint8_t, 16> bytes{};

    /// New (version 7): the time in milliseconds, then chance from the system's random source. Each is
    /// greater than the one before it in this process, so that what is written together stands together in a
    /// book's indexes.
    static Uuid random();
    /// Made from a seed and a counter (version 8), for a generator that must give the same book every time.
    static Uuid fromSeed(std::uint64_t seed, std::uint64_t counter);
    static std::optional<Uuid> fromText(std::string_view text);
    /// "123e4567-e89b-42d3-a456-426614174000".
    [[nodiscard]] std::string toText() const;

    auto operator<=>(const Uuid&) const = default;
};

} // namespace wickbook::record
