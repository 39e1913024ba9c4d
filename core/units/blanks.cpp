// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/blanks.h"

#include <array>

namespace wickbook::units {

namespace {

/// A first or last byte that can't belong to a blank: nearly every cell has both.
bool isPlain(char c) {
    return c > ' ' && c != '\x7F';
}

} // namespace

std::string_view withoutBlanks(std::string_view text) {
    if (!text.empty() && isPlain(text.front()) && isPlain(text.back())) {
        return text;
    }
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
