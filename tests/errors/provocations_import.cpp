// SPDX-License-Identifier: GPL-3.0-or-later
// Registers that can't be brought in, whole or line by line.
#include "tests/errors/provocations.h"

#include <fmt/format.h>

namespace wickbook::errors {

namespace {

std::string repeated(const std::string& text, int times) {
    std::string all;
    for (int i = 0; i < times; ++i) {
        all += text;
    }
    return all;
}

/// A file of the Station Exchange Format with one line, 08:00 on 1 April 2025: what differs from a sound one.
struct SefText {
    const char* version = "1.0.0";
    const char* id = "N";
    const char* variable = "ta";
    const char* statistic = "point";
    const char* unit = "C";
    const char* meta = "";
    const char* columns = "Year\tMonth\tDay\tHour\tMinute\tPeriod\tValue\tMeta";
    const char* period = "0";
};

std::string sefFile(const SefText& text) {
    return fmt::format("SEF\t{}\nID\t{}\nName\tNowhere\nLat\t53.4\nLon\t-6.2\nAlt\t120\nSource\tx\nLink\tx\n"
                       "Vbl\t{}\nStat\t{}\nUnits\t{}\nMeta\t{}\n{}\n2025\t4\t1\t8\t0\t{}\t10.0\t\n",
                       text.version, text.id, text.variable, text.statistic, text.unit, text.meta,
                       text.columns, text.period);
}

} // namespace

std::vector<Provocation> importProvocations() {
    return {
        said("a.csv: the file is empty: choose another file.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"}, {.files = {{"a.csv", ""}}}),
        said("a.csv: the file can't be read as text: save it as CSV in UTF-8 and try again.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.files = {{"a.csv", std::string("\377\376d\000\000\330\000\000", 8)}}}),
        said("a.csv: the file has a line of names and nothing below: choose another file.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"}, {.files = {{"a.csv", "time,dry,wet\n"}}}),
        said("a.csv: the file is no text: save the register as CSV and try again.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.files = {{"a.csv", std::string("\177ELF\002\001\001\000\000\000\000", 11)}}}),
        said("a.csv: No column tells the time: name one with --map COLUMN=time, or two with =date and =hour. "
             "(dry,wet)",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"}, {.files = {{"a.csv", "dry,wet\n1,1\n"}}}),
        said("a.csv: No column holds the dry or wet bulb: name them with --map COLUMN=dry and --map "
             "COLUMN=wet. (time,note)",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.files = {{"a.csv", "time,note\n2025-04-01T08:00,x\n"}}}),
        said("a.csv: There is no column nothing in the file: check the name in the --map option.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv", "--map", "nothing=dry"},
             {.files = {{"a.csv", "time,dry,wet\n2025-04-01T08:00,1,1\n"}}}),
        said("a.csv: Two columns would be the same field (dry): say with --map which one it is.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv", "--map", "time=dry", "--map", "wet=dry"},
             {.files = {{"a.csv", "time,dry,wet\n2025-04-01T08:00,1,1\n"}}}),
        said("a.csv: This is the Station Exchange Format in version 2.0.0; versions 1.0.0 and 0.2.0 can be "
             "read. Ask for the file in one of these.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.files = {{"a.csv", sefFile({.version = "2.0.0"})}}}),
        said("a.csv: The file begins as the Station Exchange Format does, but its line 13 is not as that "
             "format has it: look at the first thirteen lines.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.files = {{"a.csv", sefFile({.columns = "Year"})}}}),
        said("a.csv: The values are in “R”; bulbs can be read in C, F or K and pressures in hPa, Pa or kPa. "
             "Have them worked out in one of these.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.files = {{"a.csv", sefFile({.unit = "R"})}}}),
        said("a.csv: The days are counted by another calendar (calendar=julian), and only the Gregorian one "
             "can be read: have the dates worked out in it first.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.files = {{"a.csv", sefFile({.meta = "calendar=julian"})}}}),
        said("a.csv, b.csv: These files are of different stations (N, M): bring them in one by one, each "
             "into its own book.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv", "--in", "{dir}/b.csv"},
             {.files = {{"a.csv", sefFile({})}, {"b.csv", sefFile({.id = "M", .variable = "tb"})}}}),
        said("a.csv: None of these files holds a dry bulb (ta), a wet bulb (tb) or a pressure (p), read at a "
             "moment: give at least one that does. (rh)",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.files = {{"a.csv", sefFile({.variable = "rh"})}}}),
        said("a.csv: None of these files holds a dry bulb (ta), a wet bulb (tb) or a pressure (p), read at a "
             "moment: give at least one that does. (mean)",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.files = {{"a.csv", sefFile({.statistic = "mean"})}}}),
        said("b.csv: left aside: it holds “rh”, for which the register has no place.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv", "--in", "{dir}/b.csv"},
             {.code = 0, .files = {{"a.csv", sefFile({})}, {"b.csv", sefFile({.variable = "rh"})}}}),
        said(
            "b.csv: left aside: its values are “mean” over a time, not read at a moment.",
            {"import", "--book", "{book}", "--in", "{dir}/a.csv", "--in", "{dir}/b.csv"},
            {.code = 0,
             .files = {{"a.csv", sefFile({})}, {"b.csv", sefFile({.variable = "tb", .statistic = "mean"})}}}),
        said("a.csv, line 2: rejected: no time is given: add it.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\n,1,1\n"}}}),
        said("a.csv, line 2: rejected: “soon” is not a time that can be read: write it as 2025-03-01T09:00.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\nsoon,1,1\n"}}}),
        said("a.csv, line 2: rejected: “25-04-01” has a year of two digits: write all four.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "date,hour,dry,wet\n25-04-01,08:00,1,1\n"}}}),
        said("a.csv, line 2: rejected: “1/4/2025” can be read as day and month or as month and day: write "
             "dates as 2025-03-01.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "date,hour,dry,wet\n1/4/2025,08:00,1,1\n"}}}),
        said("a.csv, line 2: rejected: “2025-02-30” is not a day of the calendar: check day and month.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "date,hour,dry,wet\n2025-02-30,08:00,1,1\n"}}}),
        said("a.csv, line 2: rejected: “25:00” is not an hour of the day: check hour and minute.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "date,hour,dry,wet\n2025-04-01,25:00,1,1\n"}}}),
        said("a.csv, line 2: rejected: the time and the hour beside it lie more than half a day apart: check "
             "“20:00”.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0,
              .files = {{"a.csv", "time,hour,date,dry,wet\n2025-04-01T08:00,20:00,2025-04-09,1,1\n"}}}),
        said("a.csv, line 2: rejected: “2025-10-26T01:30” came twice that night, when the clocks went back: "
             "add the offset from UTC.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\n2025-10-26T01:30,1,1\n"}}}),
        said("a.csv, line 2: rejected: “2025-03-30T01:30” never was on the clock, it was put forward that "
             "night: check the hour.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\n2025-03-30T01:30,1,1\n"}}}),
        said("a.csv, line 2: rejected: “one” in the column dry is not a number that can be read: check it.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\n2025-04-01T08:00,one,1\n"}}}),
        said("a.csv, line 2: rejected: “1,013.2” in the column pressure has more than one mark: write one "
             "decimal mark and no groups.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet,pressure\n2025-04-01T08:00,1,1,\"1,013.2\"\n"}}}),
        said("a.csv, line 2: rejected: “12345678901234567” in the column dry has too many digits: check it.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\n2025-04-01T08:00,12345678901234567,1\n"}}}),
        said("a.csv, line 2: rejected: “13” in the column wind is not a Beaufort force: write 0 to 12.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet,wind\n2025-04-01T08:00,1,1,13\n"}}}),
        said("a.csv, line 2: rejected: “snow” in the column wick is not a word known there: check it.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet,wick\n2025-04-01T08:00,1,1,snow\n"}}}),
        said("a.csv, line 2: rejected: nothing was read on this line: write a bulb, or the origin missing "
             "and why.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\n2025-04-01T08:00,,\n"}}}),
        said("a.csv, line 2: rejected: the line has too many cells, as a decimal comma makes it in a file "
             "with commas between cells: use semicolons or decimal points.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\n2025-04-01T08:00,10,4,9,2\n"}}}),
        said("a.csv, line 2: rejected: the line has more cells than the first line: look for a stray "
             "separator.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet,note\n2025-04-01T08:00,10.5,9.5,a,b\n"}}}),
        said("a.csv, line 2: rejected: the line has fewer cells than the first line: complete it.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\n2025-04-01T08:00,10\n"}}}),
        said("a.csv, line 3: rejected: another line of the file holds the same hour: keep one of them.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\n2025-04-01T08:00,1,1\n2025-04-01T08:05,1,1\n"}}}),
        said("a.csv, line 3: rejected: another line of the file holds the same moment: keep one of them.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\n2025-04-01T12:00,1,1\n2025-04-01T12:00,2,1\n"}}}),
        said("a.csv, line 2: rejected: the book holds a reading at this hour already: keep it, or import "
             "with --on-conflict revise.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\n2025-03-01T08:00,1,1\n"}}}),
        said(
            "a.csv, line 2: rejected: a quotation mark is opened and never closed: close it or take it away.",
            {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
            {.code = 0, .files = {{"a.csv", "time,dry,wet\n2025-04-01T08:00,1,\"1\n"}}}),
        said("a.csv, line 2: rejected: text follows a closing quotation mark: look at the quotation marks.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\n2025-04-01T08:00,1,\"1\"2\n"}}}),
        said("a.csv, line 2: rejected: a quotation mark stands within the text: put the whole cell in "
             "quotation marks and double it.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", "time,dry,wet\n2025-04-01T08:00,1,1\"2\n"}}}),
        said("a.csv, line 2: rejected: the line is longer than any reading can be: look for missing line "
             "ends.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0,
              .files = {{"a.csv", std::string{"time,dry,wet\n"} + std::string(1'200'000, 'x') + "\n"}}}),
        said("a.csv, line 5002: rejected: the line holds a zero byte and is no text: save the file again as "
             "CSV.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0,
              .files = {{"a.csv", std::string{"time,dry,wet\n"} + repeated("\n", 5'000) +
                                      std::string("2025-04-01T08:00,1,\0001\n", 22)}}}),
        said("a.csv, line 2: rejected: the line is broken UTF-16: save the file again as CSV in UTF-8.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0,
              .files = {{"a.csv", std::string("\377\376t\000i\000m\000e\000,\000d\000r\000y\000,"
                                              "\000w\000e\000t\000\012\0002\0000\0002\0005\000-"
                                              "\0000\0004\000-\0000\0001\000T\0000\0008\000:\0000\0000\000,"
                                              "\0001\000,\0001\000\000\330x\000\012\000",
                                              74)}}}),
        said("a.csv, line 14: rejected: “day” says that the value stands for a stretch of time, not for a "
             "moment: take what was read at a moment.",
             {"import", "--book", "{book}", "--in", "{dir}/a.csv"},
             {.code = 0, .files = {{"a.csv", sefFile({.period = "day"})}}}),
        said("standard input: More than 50000 lines have dates that can be read as day and month or as month "
             "and day: say with --date-order which it is, or import from a file.",
             {"import", "--book", "{book}", "--in", "-"},
             {.input = std::string{"date,hour,dry,wet\n"} + repeated("1/3/2025,08:00,1,1\n", 50'001),
              .piped = true}),
    };
}

} // namespace wickbook::errors
