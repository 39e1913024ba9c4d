// SPDX-License-Identifier: GPL-3.0-or-later
// Every input that is kept (corpus/) and every one that once was a finding (found/) through its target, and a
// bounded number of seeded variations of them: the same in every build, so that what was found stays found.
#include "tests/fuzz/targets.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace wickbook::fuzz {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kLongestInput = 1U << 16U;

std::vector<fs::path> inputsOf(std::string_view folder, std::string_view target) {
    std::vector<fs::path> inputs;
    const fs::path where = fs::path{WICKBOOK_TEST_DATA} / "fuzz" / folder / target;
    if (fs::is_directory(where)) {
        for (const auto& entry : fs::directory_iterator(where)) {
            inputs.push_back(entry.path());
        }
    }
    std::sort(inputs.begin(), inputs.end());
    return inputs;
}

std::string bytesOfInput(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

std::string asHex(std::string_view bytes) {
    static constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text;
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        text += {kDigits[byte >> 4U], kDigits[byte & 15U]};
    }
    return text;
}

/// False where a promise was broken; what and by which bytes is then told.
bool tryInput(const FuzzTarget& target, std::string_view bytes, const std::string& name) {
    try {
        target.run(bytes);
        return true;
    } catch (const std::exception& broken) {
        ADD_FAILURE() << target.name << ", " << name << ": " << broken.what() << "\nbytes: " << asHex(bytes);
        return false;
    }
}

class Fuzz : public ::testing::TestWithParam<const char*> {};

TEST_P(Fuzz, KeptInputs) {
    const FuzzTarget* target = fuzzTarget(GetParam());
    ASSERT_NE(target, nullptr);
    const auto kept = inputsOf("corpus", GetParam());
    ASSERT_GE(kept.size(), 5U) << "the kept inputs were not found";
    for (const fs::path& path : kept) {
        tryInput(*target, bytesOfInput(path), path.filename().string());
    }
    tryInput(*target, {}, "no bytes at all");
}

TEST_P(Fuzz, WhatWasFound) {
    const FuzzTarget* target = fuzzTarget(GetParam());
    ASSERT_NE(target, nullptr);
    for (const fs::path& path : inputsOf("found", GetParam())) {
        tryInput(*target, bytesOfInput(path), path.filename().string());
    }
}

TEST_P(Fuzz, Variations) {
    const FuzzTarget* target = fuzzTarget(GetParam());
    ASSERT_NE(target, nullptr);
    std::vector<std::string> pool;
    for (const char* folder : {"corpus", "found"}) {
        for (const fs::path& path : inputsOf(folder, GetParam())) {
            pool.push_back(bytesOfInput(path));
        }
    }
    ASSERT_FALSE(pool.empty());
    Random random{20'250'301};
    int broken = 0;
    for (int i = 0; i < target->tries && broken < 3; ++i) {
        const std::string input = target->vary(pool[random() % pool.size()], kLongestInput, random);
        if (!tryInput(*target, input, "variation " + std::to_string(i))) {
            ++broken;
        } else if (random() % 8 == 0) {
            pool.push_back(input); // variations of variations
        }
    }
}

std::vector<const char*> namesOfTargets() {
    std::vector<const char*> names;
    for (const FuzzTarget& target : fuzzTargets()) {
        names.push_back(target.name.data());
    }
    return names;
}

INSTANTIATE_TEST_SUITE_P(Targets, Fuzz, ::testing::ValuesIn(namesOfTargets()),
                         [](const auto& made) { return std::string{made.param}; });

} // namespace
} // namespace wickbook::fuzz
