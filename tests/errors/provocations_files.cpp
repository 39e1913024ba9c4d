// SPDX-License-Identifier: GPL-3.0-or-later
// Files of rows, pairs and answers that can't be read or written.
#include "tests/errors/provocations.h"

namespace wickbook::errors {

std::vector<Provocation> fileProvocations() {
    return {
        said("{dir} is a folder; name a file in it.", {"derive", "--in", "{dir}", "--exposure", "screen"}),
        said("{dir}/nowhere.csv can't be read: No such file or directory. Check the name, and that you may "
             "read it.",
             {"derive", "--in", "{dir}/nowhere.csv", "--exposure", "screen"}),
        said("a.csv: The file has no column dry_c; its first line must name the columns, among them dry_c "
             "and wet_c.",
             {"derive", "--in", "{dir}/a.csv", "--exposure", "screen"}, {.files = {{"a.csv", "wet_c\n1\n"}}}),
        said("a.csv: The file has a column dew_point_c already, which is a name of the results; rename or "
             "remove it and try again.",
             {"derive", "--in", "{dir}/a.csv", "--exposure", "screen"},
             {.files = {{"a.csv", "dry_c,wet_c,dew_point_c\n1,1,1\n"}}}),
        said("a.csv: The file has two columns wick; rename or remove one and try again.",
             {"derive", "--in", "{dir}/a.csv", "--exposure", "screen"},
             {.files = {{"a.csv", "dry_c,wet_c,wick,wick\n1,1,,\n"}}}),
        said("a.csv is empty; its first line must name the columns, among them dry_c and wet_c.",
             {"derive", "--in", "{dir}/a.csv", "--exposure", "screen"}, {.files = {{"a.csv", ""}}}),
        said("a.csv: the first line can't be read as CSV; it must name the columns, among them dry_c and "
             "wet_c.",
             {"derive", "--in", "{dir}/a.csv", "--exposure", "screen"}, {.files = {{"a.csv", "\"open\n"}}}),
        said("Say how the thermometers hang: --exposure with one of aspirated, whirled, sling-us, screen, "
             "still, or --coefficient; a.csv has no such column.",
             {"derive", "--in", "{dir}/a.csv"}, {.files = {{"a.csv", "dry_c,wet_c\n1,1\n"}}}),
        said("a.csv, line 2: 3 cells where the header has 2; the row keeps its place without results: 1,1,1",
             {"derive", "--in", "{dir}/a.csv", "--exposure", "screen"},
             {.code = 0, .files = {{"a.csv", "dry_c,wet_c\n1,1,1\n"}}}),
        said("a.csv, line 2: the row can't be read as CSV and keeps its place without results: 1,\"1",
             {"derive", "--in", "{dir}/a.csv", "--exposure", "screen"},
             {.code = 0, .files = {{"a.csv", "dry_c,wet_c\n1,\"1\n"}}}),
        said(
            "mem: the first line can't be read as CSV; it must name the columns, among them dry_c and wet_c.",
            {"derive", "--in", "/proc/self/mem", "--exposure", "screen"}),
        said("mem has no first line that names the columns, such as time,dry,wet.",
             {"add", "--book", "{book}", "--in", "/proc/self/mem"}),
        said("standard input has no first line that names the columns, such as time,dry,wet.",
             {"add", "--book", "{book}", "--in", "-"}),
        said(
            "standard input has neither a column dry nor a column wet; its first line must name the columns.",
            {"add", "--book", "{book}", "--in", "-"}, {.input = "time,note\n"}),
        said("standard input has two columns dry; rename or remove one.",
             {"add", "--book", "{book}", "--in", "-"}, {.input = "time,dry,dry\n"}),
        said("standard input, line 2: Not saved: 2 cells where the first line has 3; look for a stray "
             "separator.",
             {"add", "--book", "{book}", "--in", "-"},
             {.code = 0, .input = "time,dry,wet\n2025-03-09T08:00,10.0\n"}),
        said("standard input, line 2: There is a reading at this hour already: open it in the register to "
             "correct it, or choose another hour.",
             {"add", "--book", "{book}", "--in", "-"},
             {.code = 0, .input = "time,dry,wet\n2025-03-01T08:00,10.0,9.0\n"}),
        said("standard input, line 2: Not saved: “ten” in the column dry is not a number that can be read: "
             "check it.",
             {"add", "--book", "{book}", "--in", "-"},
             {.code = 0, .input = "time,dry,wet\n2025-03-09T08:00,ten,9.0\n"}),
        said("standard input, line 2: the line can't be read as CSV: look at its quotation marks",
             {"add", "--book", "{book}", "--in", "-"},
             {.code = 0, .input = "time,dry,wet\n2025-03-09T08:00,\"10.0,9.0\n"}),
        said("There is a reading at this hour already: open it in the register to correct it, or choose "
             "another hour.",
             {"add", "--book", "{book}", "--at", "2025-03-01T08:00", "--dry", "10.0", "--wet", "9.0"}),
        said("Not saved: “2025-03-30T01:30” never was on the clock, it was put forward that night: check the "
             "hour.",
             {"add", "--book", "{book}", "--at", "2025-03-30T01:30", "--dry", "10.0", "--wet", "9.0"}),
        said("Not saved: The dry bulb was read as 99.0 °C, above the last mark of the scale at 60.0 °C. Read "
             "again. On an old page, look whether a figure was doubled or the decimal mark lost.",
             {"add", "--book", "{book}", "--dry", "99", "--wet", "98"}),
        said("pairs.csv: the column name is not for a class round; keep number, dry, wet and perhaps wick: "
             "pupils are numbers here, not names.",
             {"class", "--in", "{dir}/pairs.csv", "--exposure", "screen", "--pressure", "1000"},
             {.files = {{"pairs.csv", "number,dry,wet,name\n"}}}),
        said("pairs.csv has two columns dry; rename or remove one.",
             {"class", "--in", "{dir}/pairs.csv", "--exposure", "screen", "--pressure", "1000"},
             {.files = {{"pairs.csv", "number,dry,dry,wet\n"}}}),
        said("pairs.csv has no columns dry and wet; its first line must name number, dry and wet.",
             {"class", "--in", "{dir}/pairs.csv", "--exposure", "screen", "--pressure", "1000"},
             {.files = {{"pairs.csv", "number,dry\n"}}}),
        said("pairs.csv, line 2: the wick can be water, ice or empty; \"snow\" is none of them.",
             {"class", "--in", "{dir}/pairs.csv", "--exposure", "screen", "--pressure", "1000"},
             {.files = {{"pairs.csv", "dry,wet,wick\n1,1,snow\n"}}}),
        said("pairs.csv, line 2: \"ten\" is not a number; write it as 16.4.",
             {"class", "--in", "{dir}/pairs.csv", "--exposure", "screen", "--pressure", "1000"},
             {.files = {{"pairs.csv", "dry,wet\nten,1\n"}}}),
        said("pairs.csv, line 2: the pupil's number 1.5 is no whole number; write it like 7.",
             {"class", "--in", "{dir}/pairs.csv", "--exposure", "screen", "--pressure", "1000"},
             {.files = {{"pairs.csv", "number,dry,wet\n1.5,1,1\n"}}}),
        said("pairs.csv is empty or no CSV; its first line must name number, dry and wet.",
             {"class", "--in", "{dir}/pairs.csv", "--exposure", "screen", "--pressure", "1000"},
             {.files = {{"pairs.csv", ""}}}),
        said("pairs.csv, line 2: this can't be read as CSV, look at its quotation marks: 1,\"1",
             {"class", "--in", "{dir}/pairs.csv", "--exposure", "screen", "--pressure", "1000"},
             {.files = {{"pairs.csv", "dry,wet\n1,\"1\n"}}}),
        said("pairs.csv, line 2: 3 cells where the first line names 2; look for a stray separator.",
             {"class", "--in", "{dir}/pairs.csv", "--exposure", "screen", "--pressure", "1000"},
             {.files = {{"pairs.csv", "dry,wet\n1,1,1\n"}}}),
        said("{dir}/nowhere/s.pdf could not be written: No such file or directory. Choose another folder or "
             "free some space, then try again.",
             {"class", "--in", "{dir}/pairs.csv", "--exposure", "screen", "--pressure", "1000", "--sheet",
              "{dir}/nowhere/s.pdf"},
             {.code = 3, .files = {{"pairs.csv", "dry,wet\n10,9\n"}}}),
        said("The folder {dir}/file/ can't be made: File exists. Choose another place with --out.",
             {"export", "--book", "{book}", "--out", "{dir}/file/"}, {.code = 3, .files = {{"file", "x"}}}),
        said("{dir}/nowhere/x.csv can't be written: No such file or directory. Choose another folder or make "
             "room, then try again.",
             {"export", "--book", "{book}", "--out", "{dir}/nowhere/x.csv"}, {.code = 3}),
        said("{book} is a book or another database, and nothing is written over one: choose another name.",
             {"export", "--book", "{book}", "--out", "{book}"}),
        said("The folder {dir}/file could not be made. Choose another place and try again.",
             {"report", "--book", "{book}", "--month", "2025-03", "--out", "{dir}/file"},
             {.code = 3, .files = {{"file", "x"}}}),
        said("The answer can't be written to standard output: No space left on device. Look at where it "
             "goes, then try again.",
             {"verify", "--book", "{book}"}, {.code = 3, .shell = ">/dev/full"}),
        said("standard input: the column \"colour\" is no field of a reading and is passed over.",
             {"add", "--book", "{book}", "--in", "-"}, {.code = 0, .input = "time,dry,wet,colour\n"}),
    };
}

} // namespace wickbook::errors
