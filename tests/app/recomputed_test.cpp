// SPDX-License-Identifier: GPL-3.0-or-later
// What goes out, worked out anew by scripts that share nothing with the program (tests/reference): used
// values and humidities from an export and its sidecar, a month's summary from the observations, and the
// rules of the W3C Recommendations for CSV on the Web, each tried with broken files too.
#include "tests/app/books.h"

#include <gmock/gmock.h>

#include <array>
#include <iostream>

using namespace wickbook::apptest;
using testing::HasSubstr;

namespace {

void exportAll(const std::string& book, const std::string& path) {
    succeeded({"export", "--book", book, "--out", path});
}

void passes(const std::string& script, const Arguments& arguments) {
    const auto ran = runScript(script, arguments);
    EXPECT_EQ(ran.code, 0) << ran.out << ran.err;
    std::cout << ran.out;
}

void summaryIsAsPrinted(const std::string& book, const std::string& csv, const std::string& month,
                        const std::string& hours, const std::string& withheld, const Folder& folder) {
    succeeded({"report", "--book", book, "--month", month, "--out", folder.file("m" + month)});
    const auto ran = runScript("month_statistics.py", {csv, "--month", month, "--hours", hours, "--against",
                                                       folder.file("m" + month + "/summary.csv")});
    EXPECT_EQ(ran.code, 0) << ran.out << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("means " + withheld + ": as printed"));
    std::cout << ran.out;
}

} // namespace

TEST(Recomputed, UsedValuesAndHumiditiesFromAnExportAndItsSidecar) {
    WICKBOOK_NEEDS("python3");
    const Folder folder;
    makeSample(folder.file("s.wickbook"));
    exportAll(folder.file("s.wickbook"), folder.file("s.csv"));
    passes("used_values.py", {folder.file("s.csv")});
    makeFahrenheitStation(folder.file("f.wickbook"));
    put(folder.file("odd.csv"), kOddRegister);
    succeeded({"import", "--book", folder.file("f.wickbook"), "--in", folder.file("odd.csv")});
    exportAll(folder.file("f.wickbook"), folder.file("f.csv"));
    passes("used_values.py", {folder.file("f.csv")});

    // A digit changed in either file is seen.
    auto metadata = contents(folder.file("s.csv-metadata.json"));
    const auto at = metadata.find("0.000799");
    ASSERT_NE(at, std::string::npos);
    put(folder.file("s.csv-metadata.json"), metadata.replace(at, 8, "0.000798"));
    EXPECT_EQ(runScript("used_values.py", {folder.file("s.csv")}).code, 1);
}

TEST(Recomputed, TheRulesOfCsvOnTheWeb) {
    WICKBOOK_NEEDS("python3");
    const Folder folder;
    makeSample(folder.file("s.wickbook"));
    exportAll(folder.file("s.wickbook"), folder.file("s.csv"));
    passes("csvw_rules.py", {folder.file("s.csv")});
    makeFahrenheitStation(folder.file("f.wickbook"));
    put(folder.file("odd.csv"), kOddRegister);
    succeeded({"import", "--book", folder.file("f.wickbook"), "--in", folder.file("odd.csv")});
    exportAll(folder.file("f.wickbook"), folder.file("a table's name, 100 %.csv"));
    passes("csvw_rules.py", {folder.file("a table's name, 100 %.csv")});
    passes("csvw_rules.py", {folder.file("a table's name, 100 %.csv"), "--break"});
    succeeded(
        {"report", "--book", folder.file("s.wickbook"), "--month", "2026-01", "--out", folder.file("m")});
    passes("csvw_rules.py", {folder.file("m/month.csv")});
    passes("csvw_rules.py", {folder.file("m/month.csv"), "--break"});
}

TEST(Recomputed, TwoMonthsOfTheSampleStation) {
    WICKBOOK_NEEDS("python3");
    const Folder folder;
    const std::string book = folder.file("s.wickbook");
    makeSample(book);
    exportAll(book, folder.file("s.csv"));
    for (const auto* month : {"2025-01", "2026-07"}) {
        summaryIsAsPrinted(book, folder.file("s.csv"), month, "09:00,21:00", "given/given/given", folder);
    }
    // A digit changed in the summary is seen.
    const std::string path = folder.file("m2025-01/summary.csv");
    auto text = contents(path);
    const auto at = text.find("all,");
    const auto end = text.find_last_of("123456789", text.find("2025-", at));
    ASSERT_NE(end, std::string::npos);
    text[end] = text[end] == '9' ? '8' : '9';
    put(path, text);
    EXPECT_EQ(runScript("month_statistics.py", {folder.file("s.csv"), "--month", "2025-01", "--hours",
                                                "09:00,21:00", "--against", path})
                  .code,
              1);
}

TEST(Recomputed, TwelveMonthsOfARealRegister) {
    WICKBOOK_NEEDS("python3");
    if (!std::filesystem::exists(kRosario)) {
        GTEST_SKIP() << "The Rosario register is not at " << kRosario << ": nothing was tried.";
    }
    const Folder folder;
    const std::string book = folder.file("r.wickbook");
    makeRosarioStation(book);
    succeeded({"import", "--book", book, "--in", kRosario});
    exportAll(book, folder.file("r.csv"));
    const std::string two = "08:00,18:00";
    const std::string three = "07:00,14:00,21:00";
    const std::string many = "too-many-days-missing";
    const std::string row = "too-many-days-in-a-row";
    const std::string none = "nothing-read";
    for (const auto& [month, hours, withheld] : std::vector<std::array<std::string, 3>>{
             {"1886-03", two, many + "/" + many + "/" + many},
             {"1886-05", two, "given/given/given"},
             {"1886-10", two, "given/given/given"},
             {"1887-02", three, row + "/" + row + "/" + row + "/" + row},
             {"1887-07", three, "given/given/given/given"},
             {"1888-01", three, none + "/" + none + "/" + none + "/" + none},
             {"1889-05", three, "given/given/given/given"},
             {"1894-06", two, many + "/given/" + many},
             {"1894-08", two, row + "/" + many + "/" + row},
             {"1895-04", two, many + "/" + many + "/" + many},
             {"1896-06", two, "given/given/given"},
             {"1897-09", two, row + "/" + row + "/" + row}}) {
        summaryIsAsPrinted(book, folder.file("r.csv"), month, hours, withheld, folder);
    }
}
