// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instrument_checks.h"
#include "core/store/body.h"

/// What was done to know the instruments, as bodies of revisions and back. Reading throws MalformedBody,
/// writing UnkeepableValue for a number that isn't finite.

namespace wickbook::store {

body::Json toJson(const record::PairCheck& check);
record::PairCheck pairCheckFrom(const record::Uuid& subject, const body::Json& object);
body::Json toJson(const record::SaltCheck& check);
record::SaltCheck saltCheckFrom(const record::Uuid& subject, const body::Json& object);
body::Json toJson(const record::SideBySide& other);
record::SideBySide sideBySideFrom(const record::Uuid& subject, const body::Json& object);
body::Json toJson(const record::BesideReading& reading);
record::BesideReading besideReadingFrom(const record::Uuid& subject, const body::Json& object);

} // namespace wickbook::store
