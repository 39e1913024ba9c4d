// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>

/// What became of a fault, a line each: printed, and appended to the file that WICKBOOK_FAULT_LEDGER names,
/// out of which tests/faults/run.sh makes its table.

namespace wickbook::store::testing {

struct FaultLine {
    std::string fault;
    std::int64_t trials = 0;
    std::int64_t acknowledged = 0; ///< readings that were said to be saved
    std::int64_t lost = 0;         ///< of these, not in the book afterwards
    std::int64_t unsound = 0;      ///< books that did not verify afterwards
    std::string message;           ///< the sentence shown, one of them where they differ; empty: none is due
};

void enterFault(const FaultLine& line);

/// The last line of what a program said on standard error, for the ledger.
std::string lastSentence(const std::string& said);

} // namespace wickbook::store::testing
