// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/instrument_checks.h"

#include <algorithm>

namespace wickbook::record {

namespace {

constexpr std::array<std::string_view, kSalts> kSaltNames{"LiCl", "MgCl2", "Mg(NO3)2",
                                                          "NaCl", "KCl",   "K2SO4"};

char lowered(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

} // namespace

std::string_view saltName(Salt salt) {
    return kSaltNames.at(static_cast<std::size_t>(salt));
}

std::optional<Salt> saltFromName(std::string_view name) {
    const auto alike = [&](std::string_view known) {
        return std::ranges::equal(known, name, [](char a, char b) { return lowered(a) == lowered(b); });
    };
    const auto found = std::ranges::find_if(kSaltNames, alike);
    if (found == kSaltNames.end()) {
        return std::nullopt;
    }
    return static_cast<Salt>(found - kSaltNames.begin());
}

std::string_view besidePurposeName(BesidePurpose purpose) {
    return purpose == BesidePurpose::Reference ? "reference" : "overlap";
}

std::optional<BesidePurpose> besidePurposeFromName(std::string_view name) {
    for (const BesidePurpose purpose : {BesidePurpose::Reference, BesidePurpose::Overlap}) {
        if (besidePurposeName(purpose) == name) {
            return purpose;
        }
    }
    return std::nullopt;
}

} // namespace wickbook::record
