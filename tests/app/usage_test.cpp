// SPDX-License-Identifier: GPL-3.0-or-later
// What the program says of itself, and of arguments that make no sense.
#include "tests/app/program.h"

#include <gtest/gtest.h>

#include <array>

using namespace wickbook::apptest;

namespace {

constexpr std::array<const char*, 22> kVerbs{"derive", "new",    "period",   "add",    "import", "check",
                                             "limits", "export", "report",   "table",  "class",  "history",
                                             "verify", "backup", "restore",  "sample", "revise", "withdraw",
                                             "move",   "judge",  "readback", "putback"};

/// Exit code 2, nothing on standard output, one sentence on standard error.
void expectRefused(const Arguments& arguments) {
    const auto ran = run(arguments);
    std::string words = "wickbook";
    for (const std::string& word : arguments) {
        words += " " + word;
    }
    SCOPED_TRACE(words + "\n" + ran.err);
    EXPECT_EQ(ran.code, 2);
    EXPECT_EQ(ran.out, "");
    EXPECT_EQ(lines(ran.err).size(), 1U);
}

} // namespace

TEST(Usage, Version) {
    const auto ran = run({"--version"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_EQ(ran.out, "wickbook " WICKBOOK_VERSION "\n");
    EXPECT_EQ(ran.err, "");
}

TEST(Usage, HelpListsEveryVerb) {
    const auto ran = run({"--help"});
    EXPECT_EQ(ran.code, 0);
    for (const char* verb : kVerbs) {
        EXPECT_NE(ran.out.find(std::string{"\n  "} + verb + " "), std::string::npos) << verb << "\n"
                                                                                     << ran.out;
    }
    EXPECT_EQ(ran.err, "");
}

TEST(Usage, EveryVerbHasHelp) {
    for (const char* verb : kVerbs) {
        const auto ran = run({verb, "--help"});
        EXPECT_EQ(ran.code, 0) << verb;
        EXPECT_NE(ran.out.find("--"), std::string::npos) << verb;
    }
}

TEST(Usage, NonsenseIsRefusedInOneSentence) {
    expectRefused({"derrive"});
    expectRefused({"derrive", "--dry", "20"});
    expectRefused({"--nonsense"});
    expectRefused({"--sample", "derive"});
    expectRefused({"derive", "--nonsense"});
    expectRefused({"derive", "--dry"});
    expectRefused({"derive", "--dry", "20", "--wet", "15", "spare"});
    expectRefused({"new"});
    expectRefused({"check"});
    expectRefused({"verify"});
    expectRefused({"history", "--book", "x"});
    expectRefused({""});
}

TEST(Usage, ABookThatIsNotThereIsTheBooksTrouble) {
    for (const char* verb : {"check", "verify"}) {
        const auto ran = run({verb, "--book", "/nowhere/at-all.wickbook"});
        EXPECT_EQ(ran.code, 3) << verb;
        EXPECT_EQ(lines(ran.err).size(), 1U) << ran.err;
        EXPECT_EQ(ran.out, "");
    }
}
