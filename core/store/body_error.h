// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>
#include <string_view>

/// What can be wrong with a value on its way into a book or out of it. Thrown inside the room, never out of
/// it; apart from body.h, so that only the files that make JSON pay for its header.

namespace wickbook::store {

/// A stored body that can't be what this program wrote.
struct MalformedBody : std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// A value that could not be read back as it is: it is refused before anything is written.
struct UnkeepableValue : std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// UTF-8 without overlong forms, surrogates or anything past U+10FFFF (Unicode 15, table 3-7).
bool isUtf8(std::string_view text);

} // namespace wickbook::store
