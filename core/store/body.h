// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instant.h"
#include "core/store/body_error.h"
#include "core/units/decimal.h"
#include "core/units/read_temperature.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <string_view>

/// How values become the JSON of a revision's body and come back. The text is canonical (sorted keys, no
/// blanks), so equal values give equal bytes. Reading passes over absent and unknown keys; what is there but
/// can't be read as it should throws MalformedBody, which the room turns into "Damaged".

namespace wickbook::store::body {

using Json = nlohmann::json;

/// Throws UnkeepableValue for text that isn't UTF-8.
std::string dump(const Json& object);
/// The object in a body; throws MalformedBody.
Json parse(std::string_view text);

/// The value under a key; nullptr where it is absent.
const Json* find(const Json& object, const char* key);

std::int64_t integer(const Json& value, const char* what,
                     std::int64_t lowest = std::numeric_limits<std::int64_t>::min(),
                     std::int64_t highest = std::numeric_limits<std::int64_t>::max());
double number(const Json& value, const char* what);
bool flag(const Json& object, const char* key);
/// Instants far enough for any register, and so near that sums of them never overflow.
/// The bounds of units::Decimal.
inline constexpr std::int64_t kMantissaLimit = 999'999'999'999'999;
inline constexpr std::int64_t kMostDecimals = 9;
inline constexpr std::int64_t kInstantLimit = 100'000'000'000; // s: the years −1199 … 5138

/// An empty text is not written: absent means not given.
void putText(Json& object, const char* key, const std::string& text);
/// Empty where absent.
std::string text(const Json& object, const char* key);
std::string textValue(const Json& value, const char* what);
const Json& array(const Json& value, std::size_t size, const char* what);

Json of(const units::Decimal& value);
units::Decimal decimal(const Json& value, const char* what);
Json of(const units::ReadTemperature& value);
units::ReadTemperature readTemperature(const Json& value, const char* what);
const char* unitName(units::TemperatureUnit unit);
units::TemperatureUnit unit(const Json& value, const char* what);

[[noreturn]] void malformed(const char* what);

/// What is missing is not written.
void putTemperature(Json& object, const char* key, const std::optional<units::ReadTemperature>& value);
std::optional<units::ReadTemperature> temperature(const Json& object, const char* key);
/// A date that must be there, as year-month-day.
record::StationDate date(const Json& object, const char* key);

/// A word from one of record's tables; the default where it is absent.
template <typename T, typename FromName>
T word(const Json& object, const char* key, T absent, FromName fromName) {
    const Json* value = find(object, key);
    if (value == nullptr)
        return absent;
    const std::optional<T> found = fromName(textValue(*value, key));
    if (!found)
        malformed(key);
    return *found;
}

} // namespace wickbook::store::body
