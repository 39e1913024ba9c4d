// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/month_signing.h"
#include "core/store/body.h"

namespace wickbook::store {

/// A month's signing as the body of a revision and back. Reading throws MalformedBody.
body::Json toJson(const record::MonthSigning& signing);
record::MonthSigning monthSigningFrom(const record::Uuid& subject, const body::Json& object);

} // namespace wickbook::store
