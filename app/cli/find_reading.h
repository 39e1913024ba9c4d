// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/book_access.h"

#include <string>

namespace wickbook::cli {

/// The reading meant by a time: the moment it was read, or its observing hour. Without an offset the time is
/// the station's clock (and for an hour the station's own rule); one that a clock change made double is
/// refused unless a reading stands at just one of the two.
Outcome<record::StoredObservation> findReading(const OpenedBook& opened, const std::string& text);

} // namespace wickbook::cli
