// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/blanks.h"

#include <array>

namespace wickbook::units {

std::string_view withoutBlanks(std::string_view text) {
    static constexpr std::array<std::string_view, 6> kBlanks{" ", "\t", "\r", "\n", "\u00A0", "\u202F"};
    for (bool again = true; again;) {
        again = false;
        for (const auto blank : kBlanks) {
            if (text.starts_with(blank)) {
                text.remove_prefix(blank.size());
                again = true;
            }
            if (text.ends_with(blank)) {
                text.remove_suffix(blank.size());
                again = true;
            }
        }
    }
    return text;
}

} // namespace wickbook::units
