// SPDX-License-Identifier: GPL-3.0-or-later
// The verbs for the instruments: what can't be taken.
#include "tests/errors/provocations.h"

namespace wickbook::errors {

namespace {

const char* const kPairs = "time,dry,wet,rh\n2025-03-02T09:00Z,20,15,58\n2025-03-03T09:00Z,21,15,50\n";

std::vector<Provocation> ofThermometers() {
    return {
        said("Say why with --why: the reason is kept with the change.",
             {"thermometer", "--book", "{book}", "--name", "T"}),
        said("--step 5: the finest step that is read lies between 0.01 and 2 degrees.",
             {"thermometer", "--book", "{book}", "--name", "T", "--step", "5", "--why", "w"}),
        said("--lowest 60 must lie below --highest 60.", {"thermometer", "--book", "{book}", "--name", "T",
                                                          "--lowest", "60", "--highest", "60", "--why", "w"}),
        said("--hang north: it can hang as dry or as wet.",
             {"thermometer", "--book", "{book}", "--name", "T", "--hang", "north", "--why", "w"}),
        said("Say from when it hangs there with --from, such as --from 2026-11-01.",
             {"thermometer", "--book", "{book}", "--name", "T", "--hang", "wet", "--why", "w"}),
        said("wet hangs as the other bulb then; one thermometer can't be both.",
             {"thermometer", "--book", "{book}", "--name", "wet", "--hang", "dry", "--from", "2025-01-01",
              "--why", "w"}),
        said("There is no thermometer \"X\" in the book; there are: dry, wet.",
             {"correction", "--book", "{book}", "--thermometer", "X", "--point", "0=0.1", "--source", "s",
              "--why", "w"}),
        said("--point 0: write it as READING=ADD, such as 20=-0.15.",
             {"correction", "--book", "{book}", "--thermometer", "wet", "--point", "0", "--source", "s",
              "--why", "w"}),
        said("--point 0=12: a correction of more than 10 degrees is that of a broken thermometer.",
             {"correction", "--book", "{book}", "--thermometer", "wet", "--point", "0=12", "--source", "s",
              "--why", "w"}),
        said("Give at least one --point READING=ADD: a reading, and what to add to it.",
             {"correction", "--book", "{book}", "--thermometer", "wet", "--source", "s", "--why", "w"}),
        said("Two points stand at the reading 10; leave one of them out.",
             {"correction", "--book", "{book}", "--thermometer", "wet", "--point", "10=0.1", "--point",
              "10=0.2", "--source", "s", "--why", "w"}),
        said("Give points, or take a correction back with --take-back, not both at once.",
             {"correction", "--book", "{book}", "--thermometer", "wet", "--point", "10=0.1", "--take-back",
              "--why", "w"}),
        said("Say where the correction comes from with --source: a certificate, an ice point.",
             {"correction", "--book", "{book}", "--thermometer", "wet", "--point", "10=0.1", "--why", "w"}),
        said("wet has no correction from the beginning.",
             {"correction", "--book", "{book}", "--thermometer", "wet", "--take-back", "--why", "w"}),
        said("--own-ice and --own-uncertainty belong to --own-water: give it too.",
             {"period", "--book", "{book}", "--from", "2025-01-01", "--mean-pressure", "1000", "--own-ice",
              "6e-4"}),
        said("Give --exposure or --own-water, not both: an own coefficient is an exposure of its own.",
             {"period", "--book", "{book}", "--from", "2025-01-01", "--exposure", "screen", "--own-water",
              "7e-4"}),
        said("The instruments are no table; choose --format text or json.",
             {"instruments", "--book", "{book}", "--format", "csv"}),
    };
}

std::vector<Provocation> ofChecks() {
    return {
        said("Give what at least one of them showed at the ice point (--dry-ice, --wet-ice), or both in the "
             "bath "
             "(--dry-bath, --wet-bath).",
             {"pair-check", "--book", "{book}", "--date", "2025-03-02", "--dry-bath", "20", "--why", "w"}),
        said("Without an ice point there is nothing to take over: a difference alone does not say which "
             "thermometer "
             "errs.",
             {"pair-check", "--book", "{book}", "--date", "2025-03-02", "--dry-bath", "20", "--wet-bath",
              "20", "--take-over", "--why", "w"}),
        said("--at NaCl: write it as SALT=READING, with one of LiCl, MgCl2, Mg(NO3)2, NaCl, KCl, K2SO4.",
             {"salt-check", "--at", "NaCl"}),
        said("--at NaCl=140: that is not a relative humidity in per cent.",
             {"salt-check", "--at", "NaCl=140"}),
        said("Say with --sensor which sensor it was.",
             {"salt-check", "--at", "NaCl=75", "--book", "{book}", "--date", "2025-03-02"}),
        said("--date 2199-01-01: write it down once it has happened.",
             {"wick", "--book", "{book}", "--new", "--date", "2199-01-01"}),
        said("Say what was done: --new for a new wick, --water for a clean, filled reservoir.",
             {"wick", "--book", "{book}", "--date", "2025-03-02"}),
    };
}

std::vector<Provocation> ofComparisons() {
    return {
        said("Give the readings with --in FILE, or a book with --book and --name.", {"beside"}),
        said("Say how the station's thermometers hang: --exposure with one of aspirated, whirled, sling-us, "
             "screen, "
             "still, or --book.",
             {"beside", "--in", "{dir}/p.csv"}, {.files = {{"p.csv", kPairs}}}),
        said("The first line of p.csv must name the columns: time (or date and clock), and rh or other_dry "
             "and "
             "other_wet.",
             {"beside", "--in", "{dir}/p.csv", "--exposure", "screen"},
             {.files = {{"p.csv", "dry,wet\n1,1\n"}}}),
        said("Say with --name which instrument it is.", {"beside", "--book", "{book}"}),
        said("There is no comparison with \"R\" in the book.", {"beside", "--book", "{book}", "--name", "R"}),
        said("\"R\" is not in the book yet: say with --from since when it stands there.",
             {"beside", "--book", "{book}", "--name", "R", "--purpose", "overlap"}),
        said("--purpose fun: it is reference or overlap.",
             {"beside", "--book", "{book}", "--name", "R", "--purpose", "fun", "--from", "2025-01-01"}),
        said("--to 2024-01-01 lies before its first day.",
             {"beside", "--book", "{book}", "--name", "R", "--from", "2025-01-01", "--to", "2024-01-01"}),
        said("Say why with --why: the reason is kept with the joined record.",
             {"beside", "--book", "{book}", "--name", "R", "--purpose", "overlap", "--from", "2025-01-01",
              "--join"}),
        said("The overlap does not say that the records may be joined; its numbers do without --join.",
             {"beside", "--book", "{book}", "--name", "R", "--purpose", "overlap", "--from", "2025-01-01",
              "--join", "--why", "w"}),
        said("Say why with --why: the reason is kept with the coefficient.",
             {"beside", "--book", "{book}", "--name", "R", "--from", "2025-01-01", "--in", "{dir}/p.csv",
              "--use-from", "2025-04-01"},
             {.files = {{"p.csv", kPairs}}}),
        said("The evidence is not enough to use this coefficient; the reasons stand above.",
             {"beside", "--book", "{book}", "--name", "R", "--from", "2025-01-01", "--in", "{dir}/p.csv",
              "--use-from", "2025-04-01", "--why", "w"},
             {.files = {{"p.csv", kPairs}}}),
    };
}

} // namespace

std::vector<Provocation> instrumentProvocations() {
    std::vector<Provocation> all = ofThermometers();
    for (auto more : {ofChecks(), ofComparisons()}) {
        all.insert(all.end(), more.begin(), more.end());
    }
    return all;
}

} // namespace wickbook::errors
