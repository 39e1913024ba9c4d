// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/outcome.h"

#include <functional>
#include <span>
#include <string_view>

namespace CLI {
class App;
}

/// Every verb of the command line in one table. To add one: a file verb_<name>.cpp with its declare function,
/// a line here and in verb_table.cpp, a test in tests/app.

namespace wickbook::cli {

/// Does the work once the options are read.
using VerbAction = std::function<Outcome<ExitCode>()>;

struct VerbEntry {
    std::string_view name;
    std::string_view summary;
    /// Declares the options on the verb's own command line and hands back what is to be done with them.
    VerbAction (*declare)(CLI::App& command);
};

/// In the order of the work: derive, keep, look through, hand on, look after the file.
std::span<const VerbEntry> verbTable();
bool isVerb(std::string_view name);

VerbAction declareDerive(CLI::App& command);
VerbAction declareNew(CLI::App& command);
VerbAction declarePeriod(CLI::App& command);
VerbAction declareAdd(CLI::App& command);
VerbAction declareImport(CLI::App& command);
VerbAction declareCheck(CLI::App& command);
VerbAction declareExport(CLI::App& command);
VerbAction declareReport(CLI::App& command);
VerbAction declareTable(CLI::App& command);
VerbAction declareHistory(CLI::App& command);
VerbAction declareVerify(CLI::App& command);
VerbAction declareBackup(CLI::App& command);
VerbAction declareRestore(CLI::App& command);
VerbAction declareSample(CLI::App& command);

} // namespace wickbook::cli
