// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <string_view>

/// SHA-256 (FIPS 180-4), fed piece by piece. A small room of its own so that only one file knows the library.

namespace wickbook::store {

using Checksum = std::array<std::uint8_t, 32>;

class Sha256 {
public:
    Sha256();
    Sha256(const Sha256&) = delete;
    Sha256& operator=(const Sha256&) = delete;
    ~Sha256();

    void addBytes(std::string_view bytes);
    /// Eight bytes, most significant first, two's complement.
    void addInteger(std::int64_t value);
    /// Length as addInteger, then the bytes: so that two neighbouring texts can't be shifted into each other.
    void addText(std::string_view text);
    /// The digest; begins afresh.
    [[nodiscard]] Checksum finish();

private:
    struct Context;
    std::unique_ptr<Context> context_;
};

} // namespace wickbook::store
