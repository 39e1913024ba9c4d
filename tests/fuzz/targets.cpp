// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/targets.h"

#include <algorithm>
#include <array>

namespace wickbook::fuzz {

namespace {

constexpr std::array kTargets{
    FuzzTarget{"csv", runCsv, varyBytes, 400},          FuzzTarget{"sef", runSef, varyBytes, 1500},
    FuzzTarget{"numbers", runNumbers, varyBytes, 8000}, FuzzTarget{"times", runTimes, varyBytes, 8000},
    FuzzTarget{"body", runBody, varyBytes, 4000},       FuzzTarget{"book", runBook, varyBook, 60},
    FuzzTarget{"salvage", runSalvage, varyBook, 40},
};

std::size_t below(std::size_t limit, Random& random) {
    return limit == 0 ? 0 : static_cast<std::size_t>(random() % limit);
}

/// Bytes that have been trouble to readers of text before.
constexpr std::array<std::string_view, 20> kTrouble{"\"",
                                                    ",",
                                                    ";",
                                                    "\t",
                                                    "\r\n",
                                                    "\r",
                                                    "\n",
                                                    std::string_view{"\0", 1},
                                                    "\xFF",
                                                    "\xEF\xBB\xBF",
                                                    "-",
                                                    "0",
                                                    "9999999999999999",
                                                    ".",
                                                    "\u2212",
                                                    "\u00A0",
                                                    "\xC3",
                                                    "{",
                                                    "[",
                                                    ":"};

} // namespace

void promise(bool kept, std::string_view what, std::string_view detail) {
    if (!kept) {
        throw BrokenPromise(std::string{what} + (detail.empty() ? "" : ": ") + std::string{detail});
    }
}

std::span<const FuzzTarget> fuzzTargets() {
    return kTargets;
}

const FuzzTarget* fuzzTarget(std::string_view name) {
    const auto* const found = std::find_if(kTargets.begin(), kTargets.end(),
                                           [&](const FuzzTarget& target) { return target.name == name; });
    return found == kTargets.end() ? nullptr : found;
}

std::string varyBytes(std::string_view bytes, std::size_t most, Random& random) {
    std::string varied{bytes};
    for (std::size_t changes = 1 + below(4, random); changes > 0; --changes) {
        const std::size_t at = below(varied.size() + 1, random);
        const std::size_t count = std::min(1 + below(8, random), varied.size() - at);
        switch (below(6, random)) {
        case 0:
            if (at < varied.size()) {
                varied[at] = static_cast<char>(random());
            }
            break;
        case 1:
            varied.erase(at, count);
            break;
        case 2:
            varied.insert(at, kTrouble.at(below(kTrouble.size(), random)));
            break;
        case 3: { // a piece of itself somewhere else
            const std::string piece = varied.substr(at, count * 4);
            varied.insert(below(varied.size() + 1, random), piece);
            break;
        }
        case 4:
            if (at < varied.size()) {
                varied[at] =
                    static_cast<char>(static_cast<unsigned char>(varied[at]) ^ (1U << below(8, random)));
            }
            break;
        default: // digits are what the readers are about
            if (at < varied.size()) {
                varied[at] = static_cast<char>('0' + below(10, random));
            }
            break;
        }
    }
    varied.resize(std::min(varied.size(), most));
    return varied;
}

} // namespace wickbook::fuzz
