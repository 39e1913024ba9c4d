// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/app/tools.h"

/// Books for what goes out of the program, each in a folder of its own.

namespace wickbook::apptest {

/// Where the open register lies that is no part of the project.
inline const std::string kRosario =
    std::string{WICKBOOK_DATASETS} + "/rosario_1886_1900_dry_wet_pressure.csv";

inline Ran succeeded(const Arguments& arguments, const std::string& input = {}) {
    auto ran = run(arguments, input);
    EXPECT_EQ(ran.code, 0) << arguments.front() << ": " << ran.err;
    return ran;
}

inline void makeRosarioStation(const std::string& book) {
    succeeded({"new", "--book", book, "--name", "Rosario", "--elevation", "35.7", "--latitude", "-32.95",
               "--longitude", "-60.65", "--zone", "America/Argentina/Cordoba", "--hours", "08:00,18:00",
               "--exposure", "screen"});
    succeeded({"period", "--book", book, "--from", "1886-11-01", "--hours", "07:00,14:00,21:00"});
    succeeded({"period", "--book", book, "--from", "1894-01-01", "--hours", "08:00,18:00"});
}

/// The invented station's two years: corrections, ice, extra readings, revisions, an estimate, gaps with
/// reasons.
inline void makeSample(const std::string& book) {
    succeeded({"sample", "--book", book, "--last-day", "2026-10-31"});
}

/// Another book with the same station and no readings: the readings are withdrawn, their history stays.
inline void emptied(const std::string& from, const std::string& book) {
    std::filesystem::copy_file(from, book);
    succeeded({"withdraw", "--book", book, "--from", "1700-01-01", "--to", "2100-01-01", "--why",
               "to be brought in anew"});
}

/// A station with whole degrees Fahrenheit and a fan's exposure that moved to another zone and fitted a
/// coefficient.
inline void makeFahrenheitStation(const std::string& book) {
    succeeded({"new",
               "--book",
               book,
               "--name",
               "=Moved, \"twice\"",
               "--elevation",
               "210",
               "--latitude",
               "40.5",
               "--longitude",
               "-74",
               "--zone",
               "America/New_York",
               "--hours",
               "08:00,20:00",
               "--exposure",
               "aspirated",
               "--unit",
               "f",
               "--resolution",
               "1",
               "--scale",
               "-20,120"});
    succeeded({"period", "--book", book, "--from", "2024-03-10", "--zone", "America/Chicago", "--elevation",
               "310"});
    succeeded({"period", "--book", book, "--from", "2024-06-01", "--own-water", "7.3e-4", "--own-ice",
               "6.4e-4", "--mean-pressure", "985.5"});
    succeeded({"correction", "--book", book, "--thermometer", "wet", "--from", "2024-03-05", "--point",
               "20=0.4", "--point", "60=-0.2", "--uncertainty", "0.1", "--source", "certificate 12", "--why",
               "calibrated"});
}

/// One oddity a line, written as another program would: what the columns of our own export hold, by other
/// names.
inline const std::string kOddRegister =
    "time,dry,wet,unit,wick,pressure,weather,wind,origin,quality,note,observer,max,min,max_min_unit,wick_"
    "care,whirls,"
    "missing_reason,paper_book,paper_page,read_back\r\n"
    "2024-03-01T13:00:30Z,61,55,f,water,1001.5,fog,0,,sound,\"a \"\"new\"\" wick,\r\nwetted; "
    "\xE2\x80\x93\",M,66,"
    "31,f,wetted,wet 55 f dry 61 f; wet 54 f dry 61 f,,Book 3,17,yes\r\n"
    "2024-03-02T01:00:00Z,14,12,f,ice,,none,12,corrected,doubtful,  blanks on both sides  "
    ",,,,,changed,,,,,\r\n"
    "2024-03-02T13:00:00Z,below,,f,,,,,,,=1+1,+1,,,,,,,,,\r\n"
    "2024-03-02T19:10:00Z,30.5,-0.8,f;c,ice,,,,estimated,,-0.6 by the other one,@M,,,,,,,=A1,-1,\r\n"
    "2024-03-03T13:00:00Z,,,,,,,,missing,,back on Monday; deputy,,,,,,,\"ill, away\",,,\r\n"
    "2024-03-04T01:00:00Z,,,,,,,,,,,,66,,f,,,,,,\r\n"
    "2024-03-04T13:00:00Z,60,,f,,,,,,erroneous,\xE6\x97\xA5\xE6\x9C\xAC\xE8\xAA\x9E "
    "\xF0\x9F\x8C\xA7,\xC3\x89,,-1.5,"
    "f;c,,,,,,\r\n"
    "2024-03-05T13:00:00Z,50,45,f,,,,,,,'=quoted already,'M,,,,,,,,,\r\n"
    "2024-03-10T07:30:00Z,50,45,f,,,,,,,the clock jumped,,,,,,,,,,\r\n"
    "2024-03-12T14:00:00Z,125,45,f,,,,,,,\ttab in front,,,,,,,,,,\r\n"
    "2024-11-03T06:30:00Z,50,45,f,,,,,,,the clock showed it twice,,,,,,,,,,\r\n"
    "2024-11-03T07:30:00Z,51,46,f,,,,,,,and again,,,,,,,,,,\r\n"
    "2024-12-01T14:00:00Z,20,18,f,ice,,,,,,frost on the path,,,,,,,,,,\r\n";

} // namespace wickbook::apptest
