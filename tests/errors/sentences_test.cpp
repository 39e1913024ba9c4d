// SPDX-License-Identifier: GPL-3.0-or-later
// The list of sentences is whole, every line of it names what provokes the sentence, and what is provoked
// here reads as it is listed.
#include "tests/errors/provocations.h"
#include "tests/errors/sentence_list.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

namespace wickbook::errors {
namespace {

namespace fs = std::filesystem;

const fs::path& top() {
    static const fs::path kTop{WICKBOOK_SOURCE_DIR};
    return kTop;
}

std::vector<ListedSentence> theList() {
    return listedSentences(top() / "tests/errors/sentences.md");
}

void tryAll(const std::vector<Provocation>& provocations) {
    ASSERT_FALSE(provocations.empty());
    for (const Provocation& provocation : provocations) {
        const Bench bench;
        const auto told = provocation.provoke(bench);
        std::string all;
        for (const std::string& line : told) {
            all += line + "\n";
        }
        EXPECT_NE(std::find(told.begin(), told.end(), provocation.sentence), told.end())
            << "wanted: " << provocation.sentence << "\nsaid:   " << all;
    }
}

TEST(ErrorSentences, OfOptions) {
    tryAll(optionProvocations());
}
TEST(ErrorSentences, OfTheArgumentsAsAWhole) {
    tryAll(parserProvocations());
}
TEST(ErrorSentences, OfFiles) {
    tryAll(fileProvocations());
}
TEST(ErrorSentences, OfRegistersBroughtIn) {
    tryAll(importProvocations());
}
TEST(ErrorSentences, OfBooks) {
    tryAll(bookProvocations());
}
TEST(ErrorSentences, OfPuttingRight) {
    tryAll(registerProvocations());
}
TEST(ErrorSentences, OfTheCoreInWords) {
    tryAll(wordProvocations());
}

TEST(ErrorSentences, OfTheInstruments) {
    tryAll(instrumentProvocations());
}

TEST(ErrorSentences, EveryOneInTheSourcesIsListed) {
    std::set<SentenceInSource> listed;
    for (const ListedSentence& line : theList()) {
        EXPECT_TRUE(listed.insert(line.from).second) << "listed twice: " << line.from.sentence;
    }
    ASSERT_GT(listed.size(), 200U) << "the list was not found";
    const auto found = sentencesOf(top());
    for (const SentenceInSource& sentence : found) {
        EXPECT_TRUE(listed.contains(sentence))
            << "put it into tests/errors/sentences.md, with what provokes it: " << sentence.file << ": "
            << sentence.sentence;
    }
    for (const SentenceInSource& sentence : listed) {
        EXPECT_TRUE(std::find(found.begin(), found.end(), sentence) != found.end())
            << "no longer in the sources: " << sentence.file << ": " << sentence.sentence;
    }
}

TEST(ErrorSentences, EveryOneIsProvoked) {
    const auto provocations = everyProvocation();
    for (const ListedSentence& line : theList()) {
        const std::string& by = line.provokedBy;
        if (by == "here") {
            EXPECT_TRUE(
                std::any_of(provocations.begin(), provocations.end(),
                            [&](const auto& one) { return isFilled(line.from.sentence, one.sentence); }))
                << "no provocation of this folder makes it appear: " << line.from.sentence;
        } else if (by.starts_with("tests/")) {
            const auto blank = by.find(' ');
            ASSERT_NE(blank, std::string::npos) << by;
            std::ifstream stream{top() / by.substr(0, blank)};
            const std::string source{std::istreambuf_iterator<char>(stream), {}};
            const std::string name = by.substr(blank + 1);
            const auto dot = name.find('.');
            ASSERT_NE(dot, std::string::npos) << by;
            EXPECT_NE(source.find("(" + name.substr(0, dot) + ", " + name.substr(dot + 1) + ")"),
                      std::string::npos)
                << "there is no such case: " << by;
        } else {
            EXPECT_TRUE(by.starts_with("no trouble: ") || by.starts_with("can't be provoked: "))
                << by << ": " << line.from.sentence;
        }
    }
}

/// What happened, where, and what to do: a sentence of the command line that only states a fact helps nobody.
TEST(ErrorSentences, EndAsSentences) {
    for (const ListedSentence& line : theList()) {
        const std::string& sentence = line.from.sentence;
        const bool app = line.from.file.starts_with("app/");
        if (app && line.provokedBy == "here") {
            EXPECT_TRUE(sentence.ends_with('.') || sentence.ends_with("}") || sentence.ends_with(':'))
                << sentence;
        }
    }
}

} // namespace
} // namespace wickbook::errors
