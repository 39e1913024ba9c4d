// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/option_list.h"
#include "app/cli/outcome.h"

#include <functional>
#include <span>
#include <string_view>

/// Every verb of the command line in one table. To add one: a file verb_<name>.cpp with its declare function,
/// a line here and in verb_table.cpp, a test in tests/app.

namespace wickbook::cli {

/// Does the work once the options are read.
using VerbAction = std::function<Outcome<ExitCode>()>;

struct VerbEntry {
    std::string_view name;
    std::string_view summary;
    /// Declares the options on the verb's own command line and hands back what is to be done with them.
    VerbAction (*declare)(OptionList command);
};

/// In the order of the work: derive, keep, look through, hand on, look after the file.
std::span<const VerbEntry> verbTable();
bool isVerb(std::string_view name);

VerbAction declareDerive(OptionList command);
VerbAction declareNew(OptionList command);
VerbAction declarePeriod(OptionList command);
VerbAction declareAdd(OptionList command);
VerbAction declareImport(OptionList command);
VerbAction declareCheck(OptionList command);
VerbAction declareLimits(OptionList command);
VerbAction declareExport(OptionList command);
VerbAction declareReport(OptionList command);
VerbAction declareTable(OptionList command);
VerbAction declareClass(OptionList command);
VerbAction declareInstruments(OptionList command);
VerbAction declareThermometer(OptionList command);
VerbAction declareCorrection(OptionList command);
VerbAction declareWick(OptionList command);
VerbAction declarePairCheck(OptionList command);
VerbAction declareSaltCheck(OptionList command);
VerbAction declareBeside(OptionList command);
VerbAction declareHistory(OptionList command);
VerbAction declareRevise(OptionList command);
VerbAction declareWithdraw(OptionList command);
VerbAction declareMove(OptionList command);
VerbAction declareJudge(OptionList command);
VerbAction declareReadback(OptionList command);
VerbAction declareSign(OptionList command);
VerbAction declareForm(OptionList command);
VerbAction declareCard(OptionList command);
VerbAction declareYearBook(OptionList command);
VerbAction declarePutback(OptionList command);
VerbAction declareVerify(OptionList command);
VerbAction declareBackup(OptionList command);
VerbAction declareRestore(OptionList command);
VerbAction declareSalvage(OptionList command);
VerbAction declareSample(OptionList command);

} // namespace wickbook::cli
