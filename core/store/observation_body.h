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

} // namespace wickbook::store
