// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/outcome.h"
#include "core/store/book.h"

#include <string>

namespace wickbook::cli {

struct OpenedBook {
    store::Book book;
    record::StationRecord station;

    /// Unit the station's thermometers read in now, for sentences.
    [[nodiscard]] units::TemperatureUnit unit() const;
};

/// Opens a book to be read. Nothing is written to it, whatever its state.
Outcome<OpenedBook> openToRead(const std::string& path);
/// Opens a book to be written; a read-only or newer one is refused with its sentence.
Outcome<OpenedBook> openToWrite(const std::string& path);

/// Name and account of who works here, as author of what the command line writes where no observer is named.
/// Empty where the system doesn't tell.
std::string accountName();

} // namespace wickbook::cli
