// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instant.h"

#include <optional>
#include <string>
#include <variant>

/// Time zones of the IANA database as installed on the system. A local time that a clock change makes
/// double or impossible is told, never guessed.

namespace date {
class time_zone;
}

namespace wickbook::record {

/// A zone by its IANA name ("Europe/London", "UTC"). Copyable, refers to the database that lives as long as
/// the program.
class Zone {
public:
    static std::optional<Zone> named(const std::string& name);
    static Zone utc();

    [[nodiscard]] std::string name() const;
    /// Offset in force at a moment, local = UTC + offset, to the second.
    [[nodiscard]] std::chrono::seconds offsetAt(Instant instant) const;
    /// Offset without daylight saving at that moment.
    [[nodiscard]] std::chrono::seconds standardOffsetAt(Instant instant) const;
    [[nodiscard]] LocalTime localAt(Instant instant) const;

    bool operator==(const Zone& other) const { return zone_ == other.zone_; }

private:
    explicit Zone(const date::time_zone* zone) : zone_(zone) {}
    friend struct LocalTimeResolver;
    const date::time_zone* zone_;
};

/// What a local time means in a zone.
struct UniqueTime {
    Instant instant;
};
struct DoubleTime { ///< the clock showed it twice
    Instant first;
    Instant second;
};
struct ImpossibleTime { ///< the clock jumped over it; the moment of the jump
    Instant jump;
};
using ResolvedTime = std::variant<UniqueTime, DoubleTime, ImpossibleTime>;

ResolvedTime resolveLocal(const Zone& zone, LocalTime local);

} // namespace wickbook::record
