// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace wickbook::cli {

/// What the process says when it ends. Scripts rely on the numbers; the table in the help of the program and
/// in the manual page is made from these.
enum class ExitCode {
    Done = 0,
    Found = 1,       ///< done, but verify found damage, or with --strict there are findings or rejected rows
    BadInput = 2,    ///< arguments or input that can't be understood
    BookTrouble = 3, ///< a book, or a file to be written, can't be read or written
    Internal = 4,
    Interrupted =
        130 ///< stopped by Ctrl-C with a sentence; nothing was changed. 128 + SIGINT, as shells say it
};

} // namespace wickbook::cli
