// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

/// The SELECTs behind Book's questions, apart from it so that a test can ask SQLite how it would answer them:
/// each must find its rows through an index, whatever the length of the register.
/// CROSS JOIN fixes the order: first the finding aid, then one row of "revision" for each row found.

namespace wickbook::store::queries {

std::string between();     ///< ?1 ≤ instant < ?2
std::string filedOn();     ///< ?1 ≤ filed day ≤ ?2
std::string earlier();     ///< instant < ?1, newest first, at most ?2
std::string later();       ///< instant ≥ ?1, oldest first, at most ?2
std::string bySubject();   ///< ?1
std::string atHour();      ///< day ?1, minute ?2
std::string atInstant();   ///< ?1
std::string withdrawnAt(); ///< instant ?1, or day ?2 and minute ?3; newest first
std::string history();     ///< every revision of ?1
std::string facts();       ///< every revision that isn't an observation's

} // namespace wickbook::store::queries
