// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/body.h"

#include <cmath>

namespace wickbook::store {

bool isUtf8(std::string_view text) {
    std::size_t i = 0;
    const auto byte = [&](std::size_t at) { return static_cast<unsigned char>(text[at]); };
    while (i < text.size()) {
        const unsigned char lead = byte(i);
        std::size_t following = 0;
        unsigned char lowest = 0x80;
        unsigned char highest = 0xBF;
        if (lead < 0x80) {
            ++i;
            continue;
        }
        if (lead >= 0xC2 && lead <= 0xDF) {
            following = 1;
        } else if (lead >= 0xE0 && lead <= 0xEF) {
            following = 2;
            if (lead == 0xE0)
                lowest = 0xA0;
            if (lead == 0xED)
                highest = 0x9F;
        } else if (lead >= 0xF0 && lead <= 0xF4) {
            following = 3;
            if (lead == 0xF0)
                lowest = 0x90;
            if (lead == 0xF4)
                highest = 0x8F;
        } else {
            return false;
        }
        if (text.size() - i <= following)
            return false;
        for (std::size_t k = 1; k <= following; ++k) {
            if (byte(i + k) < lowest || byte(i + k) > highest)
                return false;
            lowest = 0x80;
            highest = 0xBF;
        }
        i += following + 1;
    }
    return true;
}

namespace body {

void malformed(const char* what) {
    throw MalformedBody(std::string{"the stored value \""} + what + "\" can't be read");
}

std::string dump(const Json& object) {
    try {
        return object.dump();
    } catch (const Json::exception&) {
        throw UnkeepableValue("a text is not UTF-8");
    }
}

Json parse(std::string_view text) {
    Json object = Json::parse(text, nullptr, false);
    if (!object.is_object())
        throw MalformedBody("the stored values are not a JSON object");
    return object;
}

const Json* find(const Json& object, const char* key) {
    const auto it = object.find(key);
    return it == object.end() ? nullptr : &*it;
}

std::int64_t integer(const Json& value, const char* what, std::int64_t lowest, std::int64_t highest) {
    if (!value.is_number_integer())
        malformed(what);
    if (value.is_number_unsigned() &&
        value.get<std::uint64_t>() > static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max()))
        malformed(what);
    const auto read = value.get<std::int64_t>();
    if (read < lowest || read > highest)
        malformed(what);
    return read;
}

double number(const Json& value, const char* what) {
    if (!value.is_number())
        malformed(what);
    const auto read = value.get<double>();
    if (!std::isfinite(read))
        malformed(what);
    return read;
}

bool flag(const Json& object, const char* key) {
    const Json* value = find(object, key);
    if (value == nullptr)
        return false;
    if (!value->is_boolean())
        malformed(key);
    return value->get<bool>();
}

void putTemperature(Json& object, const char* key, const std::optional<units::ReadTemperature>& value) {
    if (value)
        object[key] = of(*value);
}

std::optional<units::ReadTemperature> temperature(const Json& object, const char* key) {
    const Json* value = find(object, key);
    if (value == nullptr)
        return std::nullopt;
    return readTemperature(*value, key);
}

record::StationDate date(const Json& object, const char* key) {
    const auto read = record::parseDate(text(object, key));
    if (!read)
        malformed(key);
    return *read;
}

void putText(Json& object, const char* key, const std::string& text) {
    if (!text.empty())
        object[key] = text;
}

std::string text(const Json& object, const char* key) {
    const Json* value = find(object, key);
    return value == nullptr ? std::string{} : textValue(*value, key);
}

std::string textValue(const Json& value, const char* what) {
    if (!value.is_string())
        malformed(what);
    return value.get<std::string>();
}

const Json& array(const Json& value, std::size_t size, const char* what) {
    if (!value.is_array() || value.size() != size)
        malformed(what);
    return value;
}

Json of(const units::Decimal& value) {
    return Json::array({value.mantissa, value.decimals});
}

namespace {
units::Decimal decimalParts(const Json& parts, const char* what) {
    units::Decimal read;
    read.mantissa = integer(parts[0], what, -kMantissaLimit, kMantissaLimit);
    read.decimals = static_cast<int>(integer(parts[1], what, 0, kMostDecimals));
    return read;
}
} // namespace

units::Decimal decimal(const Json& value, const char* what) {
    return decimalParts(array(value, 2, what), what);
}

Json of(const units::ReadTemperature& value) {
    return Json::array({value.value.mantissa, value.value.decimals, unitName(value.unit)});
}

units::ReadTemperature readTemperature(const Json& value, const char* what) {
    const Json& parts = array(value, 3, what);
    return {decimalParts(parts, what), unit(parts[2], what)};
}

const char* unitName(units::TemperatureUnit unit) {
    return unit == units::TemperatureUnit::Celsius ? "C" : "F";
}

units::TemperatureUnit unit(const Json& value, const char* what) {
    const std::string name = textValue(value, what);
    if (name == "C")
        return units::TemperatureUnit::Celsius;
    if (name == "F")
        return units::TemperatureUnit::Fahrenheit;
    malformed(what);
}

} // namespace body

} // namespace wickbook::store
