// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

/// The list of sentences (sentences.md), and the sentences as they stand in the sources.

namespace wickbook::errors {

/// A sentence with its places: {} in the command line, %1 in the window.
struct SentenceInSource {
    std::string sentence;
    std::string file; ///< below the top, with '/'
    auto operator<=>(const SentenceInSource&) const = default;
};

/// The literals of app and ui that tell a person of trouble: every one handed to a function that refuses, and
/// every other that reads like advice. The words of marginal notes, causes and terms are left out: they have
/// lists of their own, and a reading out of the ordinary is no error.
std::vector<SentenceInSource> sentencesOf(const std::filesystem::path& top);

struct ListedSentence {
    SentenceInSource from;
    /// "here": by a provocation of this folder; else "<test file> <Suite.Case>"; or "no trouble: <why>", or
    /// "can't be provoked: <why>".
    std::string provokedBy;
};
std::vector<ListedSentence> listedSentences(const std::filesystem::path& list);

/// Whether a text is, or holds, the sentence with its places filled.
bool isFilled(const std::string& sentence, const std::string& text);

} // namespace wickbook::errors
