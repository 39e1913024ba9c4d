// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/signing_body.h"

#include <limits>

namespace wickbook::store {

using body::Json;
using body::putText;

Json toJson(const record::MonthSigning& signing) {
    Json object = Json::object();
    object["month"] = record::monthText(signing.month);
    object["at"] = signing.at.time_since_epoch().count();
    putText(object, "by", signing.by);
    putText(object, "note", signing.note);
    if (signing.openQueries != 0)
        object["open_queries"] = signing.openQueries;
    putText(object, "numbers", signing.numbers);
    Json readings = Json::array();
    for (const record::SignedReading& each : signing.readings)
        readings.push_back(Json::array({each.reading.toText(), each.revisions}));
    object["readings"] = std::move(readings);
    if (signing.withdrawn)
        object["withdrawn"] = true;
    return object;
}

record::MonthSigning monthSigningFrom(const record::Uuid& subject, const Json& object) {
    constexpr int kMost = std::numeric_limits<int>::max();
    record::MonthSigning signing;
    signing.id = subject;
    const auto month = record::parseMonth(body::text(object, "month"));
    if (!month)
        body::malformed("month");
    signing.month = *month;
    const Json* at = body::find(object, "at");
    if (at == nullptr)
        body::malformed("at");
    signing.at = record::Instant{
        std::chrono::seconds{body::integer(*at, "at", -body::kInstantLimit, body::kInstantLimit)}};
    signing.by = body::text(object, "by");
    signing.note = body::text(object, "note");
    if (const Json* open = body::find(object, "open_queries"))
        signing.openQueries = static_cast<int>(body::integer(*open, "open_queries", 0, kMost));
    signing.numbers = body::text(object, "numbers");
    if (const Json* readings = body::find(object, "readings")) {
        if (!readings->is_array())
            body::malformed("readings");
        for (const Json& each : *readings) {
            const Json& parts = body::array(each, 2, "readings");
            const auto id = record::Uuid::fromText(body::textValue(parts[0], "readings"));
            if (!id)
                body::malformed("readings");
            signing.readings.push_back(
                {*id, static_cast<int>(body::integer(parts[1], "readings", 1, kMost))});
        }
    }
    return signing;
}

} // namespace wickbook::store
