// SPDX-License-Identifier: GPL-3.0-or-later
// One program of libFuzzer for one target, named by WICKBOOK_FUZZ_TARGET. A broken promise ends the program,
// which libFuzzer takes for a finding.
#include "tests/fuzz/targets.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>

using wickbook::fuzz::FuzzTarget;

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t most);

namespace {

const FuzzTarget& chosen() {
    static const FuzzTarget* const kTarget = wickbook::fuzz::fuzzTarget(WICKBOOK_FUZZ_TARGET);
    return *kTarget;
}

std::string_view textOf(const std::uint8_t* data, std::size_t size) {
    return {reinterpret_cast<const char*>(data), size};
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    chosen().run(textOf(data, size));
    return 0;
}

#ifdef WICKBOOK_FUZZ_OWN_MUTATOR
extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t most,
                                               unsigned int seed) {
    wickbook::fuzz::Random random{seed};
    // What libFuzzer has learnt of comparisons helps within the edits, ours makes the edits.
    if (random() % 3 == 0) {
        return LLVMFuzzerMutate(data, size, most);
    }
    const std::string varied = chosen().vary(textOf(data, size), most, random);
    const std::size_t count = std::min(varied.size(), most);
    std::copy_n(varied.begin(), count, data);
    return count;
}
#endif
