// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/observation_body.h"

#include "core/store/body.h"
#include "core/store/canonical_body.h"

#include <optional>

namespace wickbook::store {

using body::Json;
using body::kInstantLimit;
using body::temperature;
using body::word;
using record::Observation;

std::string_view wickCareName(record::WickCare care) {
    return care == record::WickCare::Wetted ? "wetted" : care == record::WickCare::Changed ? "changed" : "";
}

std::optional<record::WickCare> wickCareFromName(std::string_view name) {
    if (name == "wetted")
        return record::WickCare::Wetted;
    if (name == "changed")
        return record::WickCare::Changed;
    return std::nullopt;
}

std::string observationBody(const Observation& observation) {
    std::string text;
    text.reserve(320);
    appendCanonicalBody(text, observation);
    try {
        if (observationFromBody(text) == observation)
            return text;
    } catch (const MalformedBody& error) {
        throw UnkeepableValue(error.what());
    }
    throw UnkeepableValue("a value would not read back as it was given");
}

Observation observationFromBody(std::string_view text) {
    if (auto read = readCanonicalBody(text))
        return std::move(*read);
    return observationFromAnyBody(text);
}

Observation observationFromAnyBody(std::string_view text) {
    const Json object = body::parse(text);
    Observation o;
    if (const Json* hour = body::find(object, "hour")) {
        const Json& parts = body::array(*hour, 2, "hour");
        const auto day = static_cast<int>(body::integer(parts[0], "hour", -kDayLimit, kDayLimit));
        const auto minute = static_cast<int>(body::integer(parts[1], "hour", 0, kLastMinute));
        o.hour = record::ObservingHour{record::StationDate{date::days{day}}, record::HourOfDay{minute}};
    }
    if (const Json* instant = body::find(object, "instant"))
        o.instant = record::Instant{
            std::chrono::seconds{body::integer(*instant, "instant", -kInstantLimit, kInstantLimit)}};
    o.zone = body::text(object, "zone");
    if (const Json* offset = body::find(object, "offset"))
        o.offset = std::chrono::seconds{body::integer(*offset, "offset", -kOffsetLimit, kOffsetLimit)};
    o.dry = {temperature(object, "dry"), body::flag(object, "dry_below_scale")};
    o.wet = {temperature(object, "wet"), body::flag(object, "wet_below_scale")};
    o.wick = word(object, "wick", record::WickState::NotGiven, record::wickFromName);
    o.wickCare = word(object, "wick_care", record::WickCare::None, wickCareFromName);
    if (const Json* pressure = body::find(object, "pressure"))
        o.pressure = body::decimal(*pressure, "pressure");
    if (const Json* weather = body::find(object, "weather")) {
        o.weather = record::WeatherSet::fromText(body::textValue(*weather, "weather"));
        if (!o.weather)
            body::malformed("weather");
    }
    if (const Json* wind = body::find(object, "wind"))
        o.windBeaufort = static_cast<int>(
            body::integer(*wind, "wind", std::numeric_limits<int>::min(), std::numeric_limits<int>::max()));
    o.maximum = temperature(object, "maximum");
    o.minimum = temperature(object, "minimum");
    if (const Json* repeats = body::find(object, "repeats")) {
        if (!repeats->is_array())
            body::malformed("repeats");
        for (const Json& one : *repeats) {
            if (!one.is_object())
                body::malformed("repeats");
            o.repeats.push_back({temperature(one, "wet"), temperature(one, "dry")});
        }
    }
    o.note = body::text(object, "note");
    o.observer = body::text(object, "observer");
    o.origin = word(object, "origin", record::Origin::Observed, record::originFromName);
    o.quality = word(object, "quality", record::Quality::NotJudged, record::qualityFromName);
    o.missingReason = body::text(object, "missing_reason");
    o.withdrawn = body::flag(object, "withdrawn");
    if (const Json* paper = body::find(object, "paper")) {
        if (!paper->is_object())
            body::malformed("paper");
        o.paper = record::PaperPlace{body::text(*paper, "book"), body::text(*paper, "page")};
    }
    o.readBack = body::flag(object, "read_back");
    return o;
}

} // namespace wickbook::store
