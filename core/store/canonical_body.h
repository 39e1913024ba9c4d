// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"

#include <optional>
#include <string>
#include <string_view>

/// The canonical JSON of an observation, written and read without a tree of values between: a book of a
/// century holds it 73,000 times. Canonical: one object, its keys in alphabetical order, no blanks, whole
/// numbers without leading zeros. What is not plainly that, and every text with a backslash in it, is left to
/// the general reader, which also says what is wrong.

namespace wickbook::store {

/// Appends the object. Throws UnkeepableValue where a text is not UTF-8.
void appendCanonicalBody(std::string& to, const record::Observation& observation);

/// The observation, or nothing where the general reader has to look.
std::optional<record::Observation> readCanonicalBody(std::string_view text);

} // namespace wickbook::store
