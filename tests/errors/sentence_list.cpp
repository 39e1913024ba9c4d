// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/errors/sentence_list.h"

#include "tests/errors/literals.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <regex>
#include <set>

namespace wickbook::errors {

namespace {

namespace fs = std::filesystem;

/// Words of rules, causes, terms and what a limit means: not said because something went wrong.
bool hasListOfItsOwn(const std::string& file) {
    static constexpr std::array<std::string_view, 6> kBeginnings{
        "app/cli/finding_text", "ui/text/finding_words", "ui/text/cause_words",
        "ui/text/term_words",   "ui/text/class_words",   "ui/text/limit_words.cpp"};
    return std::any_of(kBeginnings.begin(), kBeginnings.end(),
                       [&](std::string_view beginning) { return file.starts_with(beginning); });
}

/// Advice, or a fact that somebody has to do something about.
bool readsLikeTrouble(const std::string& text) {
    static const std::regex kTrouble{"can't|could not|cannot| is not | is no |must |needs? |not "
                                     "saved|failed|already|lies between|is outside|too many|"
                                     "too far|no such|[Nn]othing was|never |is damaged|is empty|not both|is "
                                     "neither|none of them|[Cc]hoose |"
                                     "[Tt]ry again|[Rr]ead again|[Rr]ead it again|[Ww]rite |instead|leave "
                                     "|[Nn]ame |[Gg]ive |[Cc]heck |belong"};
    return std::regex_search(text, kTrouble);
}

std::size_t wordsIn(const std::string& text) {
    static const std::regex kWord{"[A-Za-z]{2,}"};
    return static_cast<std::size_t>(
        std::distance(std::sregex_iterator(text.begin(), text.end(), kWord), std::sregex_iterator{}));
}

bool readsLikeSentence(const std::string& text) {
    const auto last = text.find_last_not_of(' ');
    return last != std::string::npos &&
           (std::string_view{".:!?"}.find(text[last]) != std::string_view::npos ||
            text.find(": ") != std::string::npos);
}

/// A cell of the list; '|' in it is written \|.
std::vector<std::string> cellsOf(const std::string& line) {
    std::vector<std::string> cells;
    std::string cell;
    for (std::size_t i = 1; i < line.size(); ++i) {
        if (line[i] == '\\' && i + 1 < line.size() && line[i + 1] == '|') {
            cell += line[++i];
        } else if (line[i] == '|') {
            const auto begin = cell.find_first_not_of(' ');
            const auto end = cell.find_last_not_of(' ');
            cells.push_back(begin == std::string::npos ? std::string{} : cell.substr(begin, end - begin + 1));
            cell.clear();
        } else {
            cell += line[i];
        }
    }
    return cells;
}

} // namespace

std::vector<SentenceInSource> sentencesOf(const fs::path& top) {
    std::set<SentenceInSource> found;
    for (const char* tree : {"app", "ui"}) {
        for (const auto& entry : fs::recursive_directory_iterator(top / tree)) {
            const auto extension = entry.path().extension();
            const std::string file = fs::relative(entry.path(), top).generic_string();
            if ((extension != ".cpp" && extension != ".h") || hasListOfItsOwn(file)) {
                continue;
            }
            // Nothing else stands there.
            const bool onlyTrouble = file == "ui/text/error_words.cpp";
            for (const Literal& literal : literalsOf(entry.path())) {
                std::string text = literal.text;
                std::replace(text.begin(), text.end(), '\n', ' ');
                if (wordsIn(text) >= 3 && text.find(' ') != std::string::npos &&
                    (literal.refused || onlyTrouble || (readsLikeSentence(text) && readsLikeTrouble(text)))) {
                    const auto begin = text.find_first_not_of(' ');
                    found.insert({text.substr(begin, text.find_last_not_of(' ') - begin + 1), file});
                }
            }
        }
    }
    return {found.begin(), found.end()};
}

std::vector<ListedSentence> listedSentences(const fs::path& list) {
    std::vector<ListedSentence> listed;
    std::ifstream stream{list};
    std::string line;
    while (std::getline(stream, line)) {
        if (!line.starts_with("| ") || line.starts_with("| sentence |") || line.starts_with("|---")) {
            continue;
        }
        auto cells = cellsOf(line);
        cells.resize(3);
        listed.push_back({{cells[0], cells[1]}, cells[2]});
    }
    return listed;
}

bool isFilled(const std::string& sentence, const std::string& text) {
    static const std::regex kPlace{R"(\{[^}]*\}|%L?[1-9n])"};
    std::size_t at = 0;
    for (auto piece = std::sregex_token_iterator(sentence.begin(), sentence.end(), kPlace, -1);
         piece != std::sregex_token_iterator{}; ++piece) {
        const auto found = text.find(piece->str(), at);
        if (found == std::string::npos) {
            return false;
        }
        at = found + static_cast<std::size_t>(piece->length());
    }
    return true;
}

} // namespace wickbook::errors
