// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

/// What a person may set for the window itself, whatever book is open. Few, since all that a reading depends
/// on belongs to the station and is kept in its book.

namespace wickbook::ui {

enum class Shade { AsDesktop, Light, Dark };

struct Preferences {
    QString language; ///< a code of languages(); empty: as the system
    Shade shade = Shade::AsDesktop;
    int letters = 100; ///< per cent of the desktop's own letters: 100 to 200

    friend bool operator==(const Preferences&, const Preferences&) = default;
};

inline constexpr int kSmallestLetters = 100;
inline constexpr int kLargestLetters = 200;

} // namespace wickbook::ui
