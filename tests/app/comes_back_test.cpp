// SPDX-License-Identifier: GPL-3.0-or-later
// Out of one book, into another with the same station, and out again: the same bytes. Nothing in the files
// tells when they were written. The history stays in the book, so the count of revisions begins anew where a
// reading was revised: that column alone may differ, and only there.
#include "core/exchange/csv.h"
#include "core/units/decimal.h"
#include "tests/app/books.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <sstream>

using namespace wickbook::apptest;
using testing::HasSubstr;

namespace {

std::string exported(const std::string& book, const std::string& path) {
    succeeded({"export", "--book", book, "--out", path});
    return contents(path);
}

void takeIn(const std::string& book, const std::string& path) {
    const auto ran = succeeded({"import", "--book", book, "--in", path});
    EXPECT_THAT(ran.err, HasSubstr("Rejected: 0."));
}

std::vector<std::vector<std::string>> records(const std::string& csv) {
    std::istringstream input(csv);
    wickbook::exchange::CsvReader reader(input, ',');
    std::vector<std::vector<std::string>> all;
    for (auto record = reader.next(); record && *record; record = reader.next()) {
        all.push_back((*record)->cells);
    }
    return all;
}

/// Names of the columns in which two exports differ, and in how many rows.
std::map<std::string, int> differingColumns(const std::string& first, const std::string& second) {
    const auto one = records(first);
    const auto two = records(second);
    EXPECT_EQ(one.size(), two.size());
    std::map<std::string, int> differing;
    for (std::size_t row = 0; row < one.size() && row < two.size(); ++row) {
        EXPECT_EQ(one[row].size(), two[row].size());
        for (std::size_t i = 0; i < one[row].size() && i < two[row].size(); ++i) {
            if (one[row][i] != two[row][i]) {
                ++differing[one[0][i]];
            }
        }
    }
    return differing;
}

std::map<std::string, std::string> filesOf(const std::string& folder) {
    std::map<std::string, std::string> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        files[entry.path().filename().string()] = contents(entry.path().string());
    }
    return files;
}

/// SEF out, into a second book, and out again.
void sefComesBack(const std::string& book, const std::string& second, const Folder& folder,
                  std::size_t most) {
    succeeded({"export", "--book", book, "--format", "sef", "--out", folder.file("sef1")});
    const auto first = filesOf(folder.file("sef1"));
    EXPECT_EQ(first.size(), most);
    Arguments arguments{"import", "--book", second};
    for (const auto& [name, bytes] : first) {
        arguments.insert(arguments.end(), {"--in", folder.file("sef1/" + name)});
    }
    EXPECT_THAT(succeeded(arguments).err, HasSubstr("Rejected: 0."));
    succeeded({"export", "--book", second, "--format", "sef", "--out", folder.file("sef2")});
    EXPECT_TRUE(filesOf(folder.file("sef2")) == first);
}

} // namespace

TEST(ComesBack, TheSampleStationsTwoYears) {
    const Folder folder;
    makeSample(folder.file("a.wickbook"));
    const auto first = exported(folder.file("a.wickbook"), folder.file("a.csv"));
    emptied(folder.file("a.wickbook"), folder.file("b.wickbook"));
    takeIn(folder.file("b.wickbook"), folder.file("a.csv"));
    const auto second = exported(folder.file("b.wickbook"), folder.file("b.csv"));
    // Readings that were revised begin with one revision in the second book.
    const auto differing = differingColumns(first, second);
    ASSERT_EQ(differing.size(), 1U);
    EXPECT_GE(differing.at("revision"), 3);
    // A book that was itself brought in gives the same bytes for ever.
    emptied(folder.file("a.wickbook"), folder.file("c.wickbook"));
    takeIn(folder.file("c.wickbook"), folder.file("b.csv"));
    EXPECT_TRUE(exported(folder.file("c.wickbook"), folder.file("c.csv")) == second);
    EXPECT_EQ(contents(folder.file("c.csv-metadata.json")).size(),
              contents(folder.file("b.csv-metadata.json")).size());
    EXPECT_GT(records(second).size(), 1500U);
    EXPECT_EQ(run({"verify", "--book", folder.file("c.wickbook")}).code, 0);
}

TEST(ComesBack, ARealRegister) {
    if (!std::filesystem::exists(kRosario)) {
        GTEST_SKIP() << "The Rosario register is not at " << kRosario << ": nothing was tried.";
    }
    const Folder folder;
    for (const char* book : {"a.wickbook", "b.wickbook", "c.wickbook"}) {
        makeRosarioStation(folder.file(book));
    }
    takeIn(folder.file("a.wickbook"), kRosario);
    const auto first = exported(folder.file("a.wickbook"), folder.file("a.csv"));
    takeIn(folder.file("b.wickbook"), folder.file("a.csv"));
    EXPECT_TRUE(exported(folder.file("b.wickbook"), folder.file("b.csv")) == first);
    EXPECT_EQ(records(first).size(), 7747U);
    sefComesBack(folder.file("a.wickbook"), folder.file("c.wickbook"), folder, 3);
}

TEST(ComesBack, EverythingAnObservationMayHold) {
    const Folder folder;
    makeFahrenheitStation(folder.file("a.wickbook"));
    makeFahrenheitStation(folder.file("b.wickbook"));
    put(folder.file("odd.csv"), kOddRegister);
    takeIn(folder.file("a.wickbook"), folder.file("odd.csv"));
    const auto first = exported(folder.file("a.wickbook"), folder.file("a.csv"));
    const auto rows = records(first);
    ASSERT_EQ(rows.size(), 14U);
    takeIn(folder.file("b.wickbook"), folder.file("a.csv"));
    EXPECT_EQ(exported(folder.file("b.wickbook"), folder.file("b.csv")), first);
    // Once more says nothing new.
    const auto again = run({"import", "--book", folder.file("b.wickbook"), "--in", folder.file("a.csv")});
    EXPECT_THAT(again.err, HasSubstr("Imported: 0"));
    EXPECT_THAT(again.err, HasSubstr("There already: 13."));

    const auto cell = [&](std::size_t row, std::string_view name) {
        const auto at = std::find(rows[0].begin(), rows[0].end(), name) - rows[0].begin();
        return rows.at(row).at(static_cast<std::size_t>(at));
    };
    EXPECT_EQ(cell(1, "note"), "a \"new\" wick,\r\nwetted; \xE2\x80\x93");
    EXPECT_EQ(cell(1, "whirls"), "wet 55 f dry 61 f; wet 54 f dry 61 f");
    EXPECT_EQ(cell(2, "note"), "  blanks on both sides  ");
    EXPECT_EQ(cell(3, "note"), "'=1+1");
    EXPECT_EQ(cell(3, "observer"), "'+1");
    EXPECT_EQ(cell(4, "unit"), "f;c");
    EXPECT_EQ(cell(4, "wet_read"), "-0.8"); // a number, and no text
    EXPECT_EQ(cell(4, "note"), "'-0.6 by the other one");
    EXPECT_EQ(cell(4, "paper_page"), "'-1");
    EXPECT_EQ(cell(5, "missing_reason"), "ill, away");
    EXPECT_EQ(cell(5, "note"), "ill, away; back on Monday; deputy");
    EXPECT_EQ(cell(6, "max_read"), "66");
    EXPECT_EQ(cell(7, "max_min_unit"), "c");
    EXPECT_EQ(cell(8, "note"), "''=quoted already");
    EXPECT_EQ(cell(9, "zone"), "America/Chicago");
    EXPECT_EQ(cell(1, "zone"), "America/New_York");
    EXPECT_EQ(cell(10, "note"), "'\ttab in front");
    EXPECT_EQ(cell(11, "utc_offset"), "-05:00");
    EXPECT_EQ(cell(12, "utc_offset"), "-06:00");
}

/// Likewise where a history or a change is written as CSV; numbers stay numbers there.
TEST(ComesBack, NothingIsComputedInAHistoryEither) {
    const Folder folder;
    const std::string book = folder.file("a.wickbook");
    makeFahrenheitStation(book);
    put(folder.file("odd.csv"), kOddRegister);
    takeIn(book, folder.file("odd.csv"));
    const auto history =
        succeeded({"history", "--book", book, "--at", "2024-03-02T19:10:00Z", "--format", "csv"}).out;
    EXPECT_THAT(history, HasSubstr(",-0.8,"));
    EXPECT_THAT(history, HasSubstr(",'-0.6 by the other one,'@M,"));
    EXPECT_THAT(history, HasSubstr(",'=A1,-1,"));
    const auto changed = succeeded({"revise", "--book", book, "--at", "2024-03-02T13:00:00Z", "--note", "@x",
                                    "--why", "=1", "--format", "csv"})
                             .out;
    EXPECT_THAT(changed, HasSubstr("note,'=1+1,'@x"));
}

/// Rejected lines are what stood in the file, to the byte, so that they can be put right and brought in.
TEST(ComesBack, RejectedLinesAreAsTheyWere) {
    const Folder folder;
    makeFahrenheitStation(folder.file("a.wickbook"));
    put(folder.file("r.csv"), "note,time,dry\r\n=1+1,2024-03-02T13:00:00Z,warm\r\n");
    succeeded({"import", "--book", folder.file("a.wickbook"), "--in", folder.file("r.csv"), "--rejects",
               folder.file("rejects.csv")});
    const auto rows = records(contents(folder.file("rejects.csv")));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[1].back(), "=1+1,2024-03-02T13:00:00Z,warm");
}

TEST(ComesBack, WhatTheExchangeFormatCarries) {
    const Folder folder;
    makeSample(folder.file("a.wickbook"));
    emptied(folder.file("a.wickbook"), folder.file("b.wickbook"));
    sefComesBack(folder.file("a.wickbook"), folder.file("b.wickbook"), folder, 4);
}

/// A spreadsheet that has opened the file and written it again with commas for points does no harm either.
TEST(ComesBack, SemicolonsAndCommasOfASpreadsheet) {
    const Folder folder;
    makeFahrenheitStation(folder.file("a.wickbook"));
    makeFahrenheitStation(folder.file("b.wickbook"));
    put(folder.file("odd.csv"), kOddRegister);
    takeIn(folder.file("a.wickbook"), folder.file("odd.csv"));
    const auto first = exported(folder.file("a.wickbook"), folder.file("a.csv"));
    std::string german = "\xEF\xBB\xBF";
    for (auto cells : records(first)) {
        for (auto& cell : cells) {
            if (wickbook::units::parseDecimal(cell, wickbook::units::DecimalMark::Point)) {
                std::replace(cell.begin(), cell.end(), '.', ',');
            }
        }
        german += wickbook::exchange::csvLine(cells, ';') + "\r\n";
    }
    put(folder.file("german.csv"), german);
    takeIn(folder.file("b.wickbook"), folder.file("german.csv"));
    EXPECT_EQ(exported(folder.file("b.wickbook"), folder.file("b.csv")), first);
}

// A name mistyped costs no book.
TEST(Export, NeverOverABook) {
    const Folder folder;
    const std::string book = folder.file("s.wickbook");
    makeFahrenheitStation(book);
    const auto before = contents(book);
    for (const Arguments& arguments :
         {Arguments{"export", "--book", book, "--out", book},
          Arguments{"table", "--exposure", "screen", "--pressure", "1000", "--out", book + ".csv"},
          Arguments{"import", "--book", book, "--in", folder.file("odd.csv"), "--rejects", book}}) {
        put(folder.file("odd.csv"), kOddRegister);
        std::filesystem::copy_file(book, book + ".csv", std::filesystem::copy_options::overwrite_existing);
        const auto ran = run(arguments);
        EXPECT_EQ(ran.code, 2) << arguments.front() << ran.err;
        EXPECT_THAT(ran.err, HasSubstr("is a book or another database"));
        EXPECT_TRUE(contents(book) == before);
        EXPECT_TRUE(contents(book + ".csv") == before);
    }
}
