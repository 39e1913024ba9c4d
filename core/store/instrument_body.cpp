// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/instrument_body.h"

#include "core/record/observation.h"

#include <cmath>

namespace wickbook::store {

using body::Json;
using body::putTemperature;
using body::putText;

namespace {

void putDecimal(Json& object, const char* key, const std::optional<units::Decimal>& value) {
    if (value)
        object[key] = body::of(*value);
}

std::optional<units::Decimal> decimalOf(const Json& object, const char* key) {
    const Json* value = body::find(object, key);
    return value == nullptr ? std::nullopt : std::optional{body::decimal(*value, key)};
}

void putEnd(Json& object, bool withdrawn) {
    if (withdrawn)
        object["withdrawn"] = true;
}

record::Uuid identityOf(const Json& object, const char* key) {
    const auto read = record::Uuid::fromText(body::text(object, key));
    if (!read)
        body::malformed(key);
    return *read;
}

void putWick(Json& object, const char* key, record::WickState wick) {
    if (wick != record::WickState::NotGiven)
        object[key] = record::wickName(wick);
}

} // namespace

Json toJson(const record::PairCheck& check) {
    Json object = Json::object();
    object["date"] = record::dateText(check.date);
    object["dry"] = check.dry.toText();
    object["wet"] = check.wet.toText();
    putTemperature(object, "dry_at_ice", check.dryAtIce);
    putTemperature(object, "wet_at_ice", check.wetAtIce);
    putTemperature(object, "dry_in_bath", check.dryInBath);
    putTemperature(object, "wet_in_bath", check.wetInBath);
    putText(object, "observer", check.observer);
    putText(object, "note", check.note);
    putEnd(object, check.withdrawn);
    return object;
}

record::PairCheck pairCheckFrom(const record::Uuid& subject, const Json& object) {
    record::PairCheck check;
    check.id = subject;
    check.date = body::date(object, "date");
    check.dry = identityOf(object, "dry");
    check.wet = identityOf(object, "wet");
    check.dryAtIce = body::temperature(object, "dry_at_ice");
    check.wetAtIce = body::temperature(object, "wet_at_ice");
    check.dryInBath = body::temperature(object, "dry_in_bath");
    check.wetInBath = body::temperature(object, "wet_in_bath");
    check.observer = body::text(object, "observer");
    check.note = body::text(object, "note");
    return check;
}

Json toJson(const record::SaltCheck& check) {
    Json object = Json::object();
    object["date"] = record::dateText(check.date);
    putText(object, "sensor", check.sensor);
    putDecimal(object, "temperature", check.temperature);
    Json readings = Json::array();
    for (const record::SaltReading& reading : check.readings)
        readings.push_back(Json::array({record::saltName(reading.salt), body::of(reading.humidity)}));
    object["readings"] = std::move(readings);
    putText(object, "observer", check.observer);
    putText(object, "note", check.note);
    putEnd(object, check.withdrawn);
    return object;
}

record::SaltCheck saltCheckFrom(const record::Uuid& subject, const Json& object) {
    record::SaltCheck check;
    check.id = subject;
    check.date = body::date(object, "date");
    check.sensor = body::text(object, "sensor");
    check.temperature = decimalOf(object, "temperature");
    if (const Json* readings = body::find(object, "readings")) {
        if (!readings->is_array())
            body::malformed("readings");
        for (const Json& reading : *readings) {
            const Json& parts = body::array(reading, 2, "readings");
            const auto salt = record::saltFromName(body::textValue(parts[0], "readings"));
            if (!salt)
                body::malformed("readings");
            check.readings.push_back({*salt, body::decimal(parts[1], "readings")});
        }
    }
    check.observer = body::text(object, "observer");
    check.note = body::text(object, "note");
    return check;
}

Json toJson(const record::SideBySide& other) {
    Json object = Json::object();
    putText(object, "name", other.name);
    object["purpose"] = record::besidePurposeName(other.purpose);
    object["from"] = record::dateText(other.from);
    if (other.to)
        object["to"] = record::dateText(*other.to);
    if (other.humidityUncertainty) {
        if (!std::isfinite(*other.humidityUncertainty))
            throw UnkeepableValue("the other instrument's uncertainty is not finite");
        object["uncertainty"] = *other.humidityUncertainty;
    }
    if (other.exposure)
        object["exposure"] = psychrometry::entryOf(*other.exposure).name;
    putText(object, "decision", other.decision);
    putText(object, "note", other.note);
    putEnd(object, other.withdrawn);
    return object;
}

record::SideBySide sideBySideFrom(const record::Uuid& subject, const Json& object) {
    record::SideBySide other;
    other.id = subject;
    other.name = body::text(object, "name");
    other.purpose =
        body::word(object, "purpose", record::BesidePurpose::Reference, record::besidePurposeFromName);
    other.from = body::date(object, "from");
    if (body::find(object, "to") != nullptr)
        other.to = body::date(object, "to");
    if (const Json* uncertainty = body::find(object, "uncertainty"))
        other.humidityUncertainty = body::number(*uncertainty, "uncertainty");
    if (body::find(object, "exposure") != nullptr) {
        other.exposure = psychrometry::exposureFromName(body::text(object, "exposure"));
        if (!other.exposure)
            body::malformed("exposure");
    }
    other.decision = body::text(object, "decision");
    other.note = body::text(object, "note");
    return other;
}

Json toJson(const record::BesideReading& reading) {
    Json object = Json::object();
    object["comparison"] = reading.comparison.toText();
    object["instant"] = reading.instant.time_since_epoch().count();
    putDecimal(object, "humidity", reading.humidity);
    putTemperature(object, "temperature", reading.temperature);
    putTemperature(object, "other_dry", reading.otherDry);
    putTemperature(object, "other_wet", reading.otherWet);
    putWick(object, "other_wick", reading.otherWick);
    putTemperature(object, "own_dry", reading.ownDry);
    putTemperature(object, "own_wet", reading.ownWet);
    putWick(object, "own_wick", reading.ownWick);
    putDecimal(object, "pressure", reading.pressure);
    if (reading.windBeaufort)
        object["wind"] = *reading.windBeaufort;
    putText(object, "note", reading.note);
    putEnd(object, reading.withdrawn);
    return object;
}

record::BesideReading besideReadingFrom(const record::Uuid& subject, const Json& object) {
    record::BesideReading reading;
    reading.id = subject;
    reading.comparison = identityOf(object, "comparison");
    const Json* instant = body::find(object, "instant");
    if (instant == nullptr)
        body::malformed("instant");
    reading.instant = record::Instant{
        std::chrono::seconds{body::integer(*instant, "instant", -body::kInstantLimit, body::kInstantLimit)}};
    reading.humidity = decimalOf(object, "humidity");
    reading.temperature = body::temperature(object, "temperature");
    reading.otherDry = body::temperature(object, "other_dry");
    reading.otherWet = body::temperature(object, "other_wet");
    reading.otherWick = body::word(object, "other_wick", record::WickState::NotGiven, record::wickFromName);
    reading.ownDry = body::temperature(object, "own_dry");
    reading.ownWet = body::temperature(object, "own_wet");
    reading.ownWick = body::word(object, "own_wick", record::WickState::NotGiven, record::wickFromName);
    reading.pressure = decimalOf(object, "pressure");
    if (const Json* wind = body::find(object, "wind"))
        reading.windBeaufort = static_cast<int>(body::integer(*wind, "wind", 0, 12));
    reading.note = body::text(object, "note");
    return reading;
}

} // namespace wickbook::store
