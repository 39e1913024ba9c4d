// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <random>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>

/// Every place where bytes from outside come in, as one function each that takes any bytes at all. A target
/// asks for more than "no crash": it holds the answer against what the code promises. The same functions run
/// under libFuzzer (libfuzzer/entry.cpp, run.sh) and, with the kept inputs and a bounded number of seeded
/// variations, in the ordinary tests (kept_inputs_test.cpp).

namespace wickbook::fuzz {

/// An input has shown that something does not hold that was promised.
struct BrokenPromise : std::logic_error {
    using std::logic_error::logic_error;
};

/// Throws BrokenPromise where it isn't kept. detail: what of the input shows it.
void promise(bool kept, std::string_view what, std::string_view detail = {});

using Random = std::mt19937_64;

struct FuzzTarget {
    std::string_view name;
    /// What the bytes mean stands at the head of the target's file. Throws BrokenPromise; nothing else.
    void (*run)(std::string_view bytes);
    /// Another input made from this one, of no more than most bytes.
    std::string (*vary)(std::string_view bytes, std::size_t most, Random& random);
    /// How many variations the ordinary tests try: a second or two of them.
    int tries;
};

std::span<const FuzzTarget> fuzzTargets();
/// nullptr: no such target.
const FuzzTarget* fuzzTarget(std::string_view name);

/// A few bytes changed, taken out, put in, doubled: for any kind of input.
std::string varyBytes(std::string_view bytes, std::size_t most, Random& random);

void runCsv(std::string_view bytes);
void runSef(std::string_view bytes);
void runNumbers(std::string_view bytes);
void runTimes(std::string_view bytes);
void runBody(std::string_view bytes);
void runBook(std::string_view bytes);
void runSalvage(std::string_view bytes);
/// Edits of a sound book are varied as edits.
std::string varyBook(std::string_view bytes, std::size_t most, Random& random);

} // namespace wickbook::fuzz
