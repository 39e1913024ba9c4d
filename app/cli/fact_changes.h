// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/book_access.h"

#include <optional>
#include <string>

/// What the verbs for instruments share: a fact is kept with its reason, or with --dry-run only the months it
/// would change are written, as CSV.

namespace wickbook::cli {

struct FactOptions {
    std::string book, why;
    bool dryRun = false;

    void declare(class OptionList& command);
};

/// Opens the book to be written, or with --dry-run to be read. Refused without --why where something is kept.
Outcome<OpenedBook> openForFacts(const FactOptions& options);
/// Stores the facts and says done; with --dry-run writes the months that would change, and stores nothing.
Outcome<ExitCode> keepFacts(OpenedBook& opened, const record::StationFacts& after, const FactOptions& options,
                            const std::string& done);

/// Beginning of a date by the station's clock; empty text: none, from the beginning.
Outcome<std::optional<record::Instant>> beginningFrom(const std::string& text,
                                                      const record::StationRecord& station);
/// The thermometer of this name; refused with the names there are.
Outcome<const record::Thermometer*> thermometerNamed(const record::StationRecord& station,
                                                     const std::string& name);

} // namespace wickbook::cli
