// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

/// Text that a person typed, in a CSV cell that a spreadsheet may open. A spreadsheet takes a cell for a
/// formula that begins with one of = + - @ (also in their full width, and behind blanks), a tab or the end of
/// a line: the list of the OWASP page "CSV Injection". Such a text goes out with an apostrophe in front, and
/// so does one that begins with apostrophes and goes on like that, so that taking one apostrophe off gives
/// back every text as it was. Only cells of text are written so: a number such as -0.6 stays a number.
///
/// Not covered, since nothing reversible would: a spreadsheet told to part lines at something else than
/// commas parts the text too.

namespace wickbook::exchange {

/// The text as it goes into a cell. Bytes that are not UTF-8 are taken for Latin-1, a zero byte becomes its
/// sign U+2400: neither can stand in a text file.
std::string spreadsheetText(std::string_view text);

/// For a cell that holds text or a number as read: a number goes out as it is.
std::string spreadsheetCell(std::string_view text);

/// What spreadsheetText was given, for a cell that it has written.
std::string fromSpreadsheetText(std::string_view cell);

} // namespace wickbook::exchange
