// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace wickbook::units {

/// The text without the blanks that a person, a spreadsheet or a line's end puts round a value: space, tab,
/// CR, LF, no-break and narrow no-break space.
std::string_view withoutBlanks(std::string_view text);

} // namespace wickbook::units
