// SPDX-License-Identifier: GPL-3.0-or-later
// What the verbs refuse that put a register right.
#include "tests/errors/provocations.h"

#include <gtest/gtest.h>

namespace wickbook::errors {

namespace {

void withdrawn(const Bench& bench) {
    const auto ran =
        apptest::run({"withdraw", "--book", bench.book(), "--at", "2025-03-01T08:00", "--why", "wick dry"});
    EXPECT_EQ(ran.code, 0) << ran.err;
}

void markedMissing(const Bench& bench) {
    const auto ran = apptest::run({"import", "--book", bench.book(), "--in", "-"},
                                  "time,dry,wet,origin,note\n2025-03-02T08:00,,,missing,ill\n");
    EXPECT_EQ(ran.code, 0) << ran.err;
}

void signedOff(const Bench& bench) {
    const auto ran =
        apptest::run({"sign", "--book", bench.book(), "--month", "2025-03", "--by", "MK", "--note", "seen"});
    EXPECT_EQ(ran.code, 0) << ran.err;
}

void oneMore(const Bench& bench) {
    const auto ran = apptest::run(
        {"add", "--book", bench.book(), "--at", "2025-03-02T08:00", "--dry", "10.0", "--wet", "9.0"});
    EXPECT_EQ(ran.code, 0) << ran.err;
}

} // namespace

std::vector<Provocation> registerProvocations() {
    const std::string at = "2025-03-01T08:00";
    return {
        said("Say why with --why: what stood there first is kept, and so is the reason.",
             {"revise", "--book", "{book}", "--at", at, "--dry", "11"}),
        said("Say what to change: a field such as --dry or --note, --estimated or --observed.",
             {"revise", "--book", "{book}", "--at", at, "--why", "x"}),
        said("A value is --estimated or --observed, not both.",
             {"revise", "--book", "{book}", "--at", at, "--estimated", "--observed", "--why", "x"}),
        said("Not changed: “warm” in the column dry is not a number that can be read: check it.",
             {"revise", "--book", "{book}", "--at", at, "--dry", "warm", "--why", "x"}),
        said("note is not UTF-8 text; write it again.",
             {"revise", "--book", "{book}", "--at", at, "--note", std::string("\377", 1), "--why", "x"}),
        said("A reading has at least one of its two bulbs; to take back the one of 2025-03-01T08:00 use "
             "withdraw.",
             {"revise", "--book", "{book}", "--at", at, "--dry", "-", "--wet", "-", "--why", "x"}),
        said("Say which readings: each with --at, or those of some dates with --from and --to.",
             {"withdraw", "--book", "{book}", "--from", "2025-03-01", "--why", "x"}),
        said("No reading stands from 2024-01-01 to 2024-01-31; give other dates.",
             {"withdraw", "--book", "{book}", "--from", "2024-01-01", "--to", "2024-01-31", "--why", "x"}),
        said("The reading of 2025-03-01T08:00 was withdrawn; putback brings it back, with the number of the "
             "revision that history gives.",
             {"judge", "--book", "{book}", "--at", at, "--as", "sound"}, {.before = withdrawn}),
        said("--as can be sound, doubtful, erroneous or not-judged; \"fine\" is none of them.",
             {"judge", "--book", "{book}", "--at", at, "--as", "fine"}),
        said("2025-03-02T08:00:00Z is written down as missing: there is no reading to judge.",
             {"judge", "--book", "{book}", "--at", "2025-03-02T08:00", "--as", "sound"},
             {.before = markedMissing}),
        said("Say with --by who signs the month off.", {"sign", "--book", "{book}", "--month", "2025-03"}),
        said("Say with --why for what reason the signing is taken back.",
             {"sign", "--book", "{book}", "--month", "2025-03", "--take-back"}, {.before = signedOff}),
        said("2025-04 has not been signed off, so there is nothing to take back.",
             {"sign", "--book", "{book}", "--month", "2025-04", "--take-back", "--why", "x"}),
        said("2199-12 is not over: sign it off once its last hour has passed.",
             {"sign", "--book", "{book}", "--month", "2199-12", "--by", "MK"}),
        said("Say where they belong: --to-date or --to-month, --to-hour, or a date and an hour.",
             {"move", "--book", "{book}", "--at", at, "--why", "x"}),
        said("Nothing was moved: 1 of 1 can't go there. With --some the others go.",
             {"move", "--book", "{book}", "--at", at, "--to-date", "2025-03-02", "--why", "x"},
             {.before = oneMore}),
        said("2025-03-01T08:00:00Z stays: a reading stands there.",
             {"move", "--book", "{book}", "--at", at, "--to-date", "2025-03-02", "--why", "x"},
             {.before = oneMore}),
        said("--place-only names a place and leaves the tick: give --paper-book or --paper-page, and no "
             "--off.",
             {"readback", "--book", "{book}", "--at", at, "--place-only"}),
        said("The reading of 2025-03-01T08:00 has no revision 99; it has 6.",
             {"putback", "--book", "{book}", "--at", at, "--revision", "99"}),
    };
}

} // namespace wickbook::errors
