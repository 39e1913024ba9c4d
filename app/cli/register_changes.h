// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/book_access.h"
#include "app/cli/option_list.h"

#include <string>
#include <vector>

/// What the verbs that change readings share: which readings are meant, who changes them and why, and storing
/// it. Every change appends a revision, all of one call in one transaction; what stood there before stays in
/// the history and is put back with the verb putback.

namespace wickbook::cli {

struct WhichReadings {
    std::string book;
    std::vector<std::string> at;
    std::string from, to;

    void declare(OptionList& command, bool several);
};

struct HowToChange {
    std::string why, by, format = "text";
    bool dryRun = false;

    void declare(OptionList& command, const std::string& whyHelp);
    /// The person's reason, which is needed.
    [[nodiscard]] Outcome<void> hasReason() const;
    [[nodiscard]] record::Author author(const std::string& usualWhy) const;
};

struct ReadingChange {
    record::StoredObservation before;
    record::Observation after;
};

/// The book of the call: to be read where it is a dry run, else to be written.
Outcome<OpenedBook> openFor(const WhichReadings& which, const HowToChange& how);

/// The readings by their times, or all filed under the dates, in time order. Refused: none, a withdrawn one,
/// no reading there.
Outcome<std::vector<record::StoredObservation>> readingsMeant(const OpenedBook& opened,
                                                              const WhichReadings& which);
/// Leaves out what changes nothing, stores the rest, and puts out what changed, reading by reading, in the
/// format asked for. usualWhy: the reason where the person gave none.
Outcome<ExitCode> storeChanges(OpenedBook& opened, std::vector<ReadingChange> changes, const HowToChange& how,
                               const std::string& usualWhy);

} // namespace wickbook::cli
