// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"

#include <string>
#include <string_view>

/// An observation as the body of a revision; the keys are listed in resources/schema/0001_book.sql.

namespace wickbook::store {

/// Canonical JSON. Throws UnkeepableValue where the text would not read back as the same observation (text
/// that isn't UTF-8, a number out of its range).
std::string observationBody(const record::Observation& observation);

/// Throws MalformedBody.
record::Observation observationFromBody(std::string_view text);
/// The same by the general reader of JSON alone, whatever the order of the keys and the blanks.
record::Observation observationFromAnyBody(std::string_view text);

inline constexpr std::int64_t kDayLimit = 1'000'000;    ///< days: the years −768 … 4707
inline constexpr std::int64_t kOffsetLimit = 48 * 3600; ///< s
inline constexpr std::int64_t kLastMinute = 24 * 60;

/// "wetted", "changed"; empty for none.
std::string_view wickCareName(record::WickCare care);
std::optional<record::WickCare> wickCareFromName(std::string_view name);

} // namespace wickbook::store
