// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/fault_ledger.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>

namespace wickbook::store::testing {

void enterFault(const FaultLine& line) {
    std::string message = line.message;
    std::replace_if(
        message.begin(), message.end(), [](char c) { return c == '\t' || c == '\n'; }, ' ');
    std::ostringstream text;
    text << line.fault << '\t' << line.trials << '\t' << line.acknowledged << '\t' << line.lost << '\t'
         << (line.unsound == 0 ? "all" : std::to_string(line.unsound) + " do not") << '\t'
         << (message.empty() ? "-" : message) << '\n';
    std::fputs(text.str().c_str(), stdout);
    if (const char* ledger = std::getenv("WICKBOOK_FAULT_LEDGER"))
        std::ofstream(ledger, std::ios::app) << text.str();
}

std::string lastSentence(const std::string& said) {
    std::string last;
    std::istringstream in(said);
    for (std::string line; std::getline(in, line);)
        if (!line.empty())
            last = line;
    return last;
}

} // namespace wickbook::store::testing
