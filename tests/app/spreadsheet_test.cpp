// SPDX-License-Identifier: GPL-3.0-or-later
// An export opened by LibreOffice Calc without a display, as a flat document that can be looked into: numbers
// are numbers, dates dates, texts as typed, and nothing is computed, not even where Calc is told to evaluate
// formulas.
#include "tests/app/books.h"

#include <gmock/gmock.h>

#include <regex>

using namespace wickbook::apptest;
using testing::HasSubstr;
using testing::Not;

namespace {

/// Filter options of Calc's text import (LibreOffice Help, "Filter Options for CSV"): comma, quote, UTF-8
/// (76), from the first line on, no formats, default language, quoted cells not forced to text, special
/// numbers detected, …, formulas evaluated.
const std::string kFilter = "CSV:44,34,76,1,,0,false,true,false,false,false,-1,true";

/// The document Calc makes of a CSV file; filter empty: what it takes by default.
std::string opened(const Folder& folder, const std::string& name, const std::string& filter) {
    const std::string into = folder.file(filter.empty() ? "plain" : "told");
    Arguments arguments{"-env:UserInstallation=file://" + folder.file("profile"), "--headless"};
    if (!filter.empty()) {
        arguments.push_back("--infilter=" + filter);
    }
    arguments.insert(arguments.end(), {"--convert-to", "fods", "--outdir", into, folder.file(name + ".csv")});
    const auto ran = runTool(toolPath("soffice"), arguments);
    EXPECT_EQ(ran.code, 0) << ran.err;
    return contents(into + "/" + name + ".fods");
}

/// Cells that hold a number; equal neighbours are written once, with their count.
int numbersIn(const std::string& document) {
    static const std::regex kCell("<table:table-cell([^>]*)>");
    static const std::regex kRepeated("number-columns-repeated=\"([0-9]+)\"");
    int numbers = 0;
    for (auto cell = std::sregex_iterator(document.begin(), document.end(), kCell);
         cell != std::sregex_iterator(); ++cell) {
        const std::string attributes = (*cell)[1];
        std::smatch repeated;
        if (attributes.find("office:value-type=\"float\"") != std::string::npos) {
            numbers += std::regex_search(attributes, repeated, kRepeated) ? std::stoi(repeated[1]) : 1;
        }
    }
    return numbers;
}

} // namespace

TEST(Spreadsheet, OpensAnExportWithoutComputingAnything) {
    WICKBOOK_NEEDS("soffice");
    const Folder folder;
    makeFahrenheitStation(folder.file("f.wickbook"));
    put(folder.file("odd.csv"), kOddRegister);
    succeeded({"import", "--book", folder.file("f.wickbook"), "--in", folder.file("odd.csv")});
    succeeded({"export", "--book", folder.file("f.wickbook"), "--out", folder.file("f.csv")});

    const auto told = opened(folder, "f", kFilter);
    EXPECT_THAT(told, Not(HasSubstr("table:formula")));
    EXPECT_THAT(told, HasSubstr("office:value-type=\"float\" office:value=\"-0.8\""));
    EXPECT_THAT(told, HasSubstr("office:value-type=\"date\" office:date-value=\"2024-03-01\""));
    EXPECT_THAT(told, HasSubstr("<text:p>2024-03-01T13:00:30Z</text:p>"));
    EXPECT_THAT(told, HasSubstr("<text:p>wet 55 f dry 61 f; wet 54 f dry 61 f</text:p>"));
    EXPECT_THAT(told, HasSubstr("\xE6\x97\xA5\xE6\x9C\xAC\xE8\xAA\x9E \xF0\x9F\x8C\xA7"));
    EXPECT_THAT(told, HasSubstr("&apos;=1+1"));
    EXPECT_THAT(told, HasSubstr("&apos;&apos;=quoted already"));
    EXPECT_GT(numbersIn(told), 60);
    EXPECT_THAT(opened(folder, "f", {}), Not(HasSubstr("table:formula")));

    // The same without the apostrophes is computed: the case above can fail.
    put(folder.file("raw.csv"), "note\r\n=1+1\r\n");
    EXPECT_THAT(opened(folder, "raw", kFilter), HasSubstr("table:formula"));
}

TEST(Spreadsheet, OpensASummaryAsNumbers) {
    WICKBOOK_NEEDS("soffice");
    const Folder folder;
    makeSample(folder.file("s.wickbook"));
    succeeded(
        {"report", "--book", folder.file("s.wickbook"), "--month", "2026-07", "--out", folder.file("m")});
    std::filesystem::copy_file(folder.file("m/summary.csv"), folder.file("summary.csv"));
    const auto told = opened(folder, "summary", kFilter);
    EXPECT_THAT(told, Not(HasSubstr("table:formula")));
    // Three lines with ten means and extremes and six counts each.
    EXPECT_EQ(numbersIn(told), 3 * 16);
}
