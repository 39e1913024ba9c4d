// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instant.h"

namespace wickbook::record {

/// Now, by interface, so that tests can stand at any hour.
class Clock {
public:
    virtual ~Clock() = default;
    [[nodiscard]] virtual Instant now() const = 0;
};

class SystemClock final : public Clock {
public:
    [[nodiscard]] Instant now() const override {
        return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
    }
};

} // namespace wickbook::record
