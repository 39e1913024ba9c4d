// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book_queries.h"

#include "core/store/revision_log.h"

#include <fmt/format.h>

namespace wickbook::store::queries {

namespace {
std::string observations(const char* where) {
    return fmt::format("SELECT {}, o.revisions FROM observation o CROSS JOIN revision r "
                       "ON r.sequence = o.sequence WHERE {}",
                       kRowColumns, where);
}
} // namespace

std::string between() {
    return observations("o.live = 1 AND o.instant >= ?1 AND o.instant < ?2 ORDER BY o.instant, o.sequence");
}

std::string filedOn() {
    return observations("o.live = 1 AND o.filed_day BETWEEN ?1 AND ?2 ORDER BY o.instant, o.sequence");
}

std::string earlier() {
    return observations("o.live = 1 AND o.instant < ?1 ORDER BY o.instant DESC, o.sequence DESC LIMIT ?2");
}

std::string later() {
    return observations("o.live = 1 AND o.instant >= ?1 ORDER BY o.instant, o.sequence LIMIT ?2");
}

std::string bySubject() {
    return observations("o.subject = ?1");
}

std::string atHour() {
    return observations("o.live = 1 AND o.hour_day = ?1 AND o.hour_minute = ?2");
}

std::string atInstant() {
    return observations("o.live = 1 AND o.instant = ?1 ORDER BY o.hour_day IS NULL, o.sequence LIMIT 1");
}

std::string withdrawnAt() {
    // Through the withdrawn ones only: they are few.
    return observations("o.live = 0 AND (o.instant = ?1 OR (o.hour_day = ?2 AND o.hour_minute = ?3)) "
                        "ORDER BY o.sequence DESC LIMIT 1");
}

std::string history() {
    return fmt::format("SELECT {} FROM revision r WHERE r.subject = ?1 AND r.kind = 'observation' "
                       "ORDER BY r.sequence",
                       kRowColumns);
}

std::string facts() {
    return fmt::format("SELECT {} FROM revision r WHERE r.kind <> 'observation' ORDER BY r.sequence",
                       kRowColumns);
}

} // namespace wickbook::store::queries
