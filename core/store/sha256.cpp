// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sha256.h"

#include <nettle/sha2.h>

namespace wickbook::store {

struct Sha256::Context {
    sha256_ctx value;
};

Sha256::Sha256() : context_(std::make_unique<Context>()) {
    sha256_init(&context_->value);
}
Sha256::~Sha256() = default;

void Sha256::addBytes(std::string_view bytes) {
    sha256_update(&context_->value, bytes.size(), reinterpret_cast<const std::uint8_t*>(bytes.data()));
}

void Sha256::addInteger(std::int64_t value) {
    const auto bits = static_cast<std::uint64_t>(value);
    std::array<std::uint8_t, 8> bytes{};
    for (std::size_t i = 0; i < bytes.size(); ++i)
        bytes[i] = static_cast<std::uint8_t>(bits >> (8 * (bytes.size() - 1 - i)));
    sha256_update(&context_->value, bytes.size(), bytes.data());
}

void Sha256::addText(std::string_view text) {
    addInteger(static_cast<std::int64_t>(text.size()));
    addBytes(text);
}

Checksum Sha256::finish() {
    Checksum digest{};
    sha256_digest(&context_->value, digest.size(), digest.data());
    return digest;
}

} // namespace wickbook::store
