// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/zone.h"

#include <date/tz.h>

#include <stdexcept>

namespace wickbook::record {

std::optional<Zone> Zone::named(const std::string& name) {
    // The library reads zone files by name: a name that could leave the database is no zone.
    if (name.empty() || name.find("..") != std::string::npos || name.front() == '/') {
        return std::nullopt;
    }
    try {
        return Zone{date::locate_zone(name)};
    } catch (const std::runtime_error&) {
        return std::nullopt;
    }
}

Zone Zone::utc() {
    static const date::time_zone* const kUtc = date::locate_zone("UTC");
    return Zone{kUtc};
}

std::string Zone::name() const {
    return zone_->name();
}

std::chrono::seconds Zone::offsetAt(Instant instant) const {
    return zone_->get_info(instant).offset;
}

std::chrono::seconds Zone::standardOffsetAt(Instant instant) const {
    // The system's zone files say whether a span is daylight saving, not by how much: the standard offset is
    // the one in force just before the span began. Double summer time has two such spans in a row, hence the
    // loop.
    date::sys_info info = zone_->get_info(instant);
    for (int spans = 0; spans < 40 && info.save != std::chrono::minutes{0}; ++spans) {
        info = zone_->get_info(info.begin - std::chrono::seconds{1});
    }
    return info.offset;
}

LocalTime Zone::localAt(Instant instant) const {
    return LocalTime{instant.time_since_epoch() + offsetAt(instant)};
}

struct LocalTimeResolver {
    static ResolvedTime resolve(const Zone& zone, LocalTime local) {
        const date::local_info info = zone.zone_->get_info(local);
        const auto at = [&](const date::sys_info& span) {
            return Instant{local.time_since_epoch() - span.offset};
        };
        switch (info.result) {
        case date::local_info::ambiguous:
            return DoubleTime{at(info.first), at(info.second)};
        case date::local_info::nonexistent:
            return ImpossibleTime{info.second.begin};
        default:
            return UniqueTime{at(info.first)};
        }
    }
};

ResolvedTime resolveLocal(const Zone& zone, LocalTime local) {
    return LocalTimeResolver::resolve(zone, local);
}

} // namespace wickbook::record
