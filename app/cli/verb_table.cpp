// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/verb_table.h"

#include <algorithm>

namespace wickbook::cli {

std::span<const VerbEntry> verbTable() {
    static constexpr VerbEntry kTable[] = {
        {"derive", "Humidity and dew point from a pair of readings, or from a file of pairs", declareDerive},
        {"new", "Begin a book for a station", declareNew},
        {"period", "Say what differs at the station from a date on", declarePeriod},
        {"add", "Enter readings", declareAdd},
        {"import", "Bring in a register from CSV files", declareImport},
        {"check", "What the plausibility checks say of the readings", declareCheck},
        {"limits", "The limits of the checks: list, change with a reason, history", declareLimits},
        {"export", "Observations as CSV, with their metadata beside them", declareExport},
        {"report", "A month's return: tables, page, chart and paragraph", declareReport},
        {"table", "Humidity table for an instrument and pressure", declareTable},
        {"class", "A class round: many pairs of the same air, the middle and who is far off", declareClass},
        {"instruments", "Thermometers, corrections, coefficients and what was done to them",
         declareInstruments},
        {"thermometer", "Write down or change a thermometer, and where it hangs", declareThermometer},
        {"correction", "What to add to a thermometer's readings from a date on", declareCorrection},
        {"wick", "The log of wick and water", declareWick},
        {"pair-check", "Both bulbs without wick in one bath", declarePairCheck},
        {"salt-check", "A sensor over saturated salt solutions", declareSaltCheck},
        {"beside", "Another instrument beside the station's: bias, own coefficient, overlap", declareBeside},
        {"history", "Every revision of one reading", declareHistory},
        {"revise", "Correct a reading with a reason; what stood there first is kept", declareRevise},
        {"withdraw", "Take readings back with a reason; their history stays", declareWithdraw},
        {"move", "Move readings to the date, hour or month they belong to", declareMove},
        {"judge", "Say of readings that they are sound, doubtful or erroneous", declareJudge},
        {"form", "A blank month to write in by hand, or to fill as CSV", declareForm},
        {"card", "A card for whoever reads the station in your place", declareCard},
        {"yearbook", "A year bound as one PDF: numbers, charts, twelve months, the hut's table",
         declareYearBook},
        {"sign", "Sign a month off, or take that back", declareSign},
        {"readback", "Tick readings as read back against the paper, and name its page", declareReadback},
        {"putback", "Let an earlier revision's values stand again", declarePutback},
        {"verify", "Read every page of a book and prove its chain of revisions", declareVerify},
        {"backup", "Copy a book, verified", declareBackup},
        {"restore", "Make a new book from a copy, verified", declareRestore},
        {"salvage", "Save what can be read of a damaged book into a new one", declareSalvage},
        {"sample", "Write the invented sample station into a new book", declareSample},
    };
    return kTable;
}

bool isVerb(std::string_view name) {
    const auto table = verbTable();
    return std::any_of(table.begin(), table.end(), [&](const VerbEntry& verb) { return verb.name == name; });
}

} // namespace wickbook::cli
