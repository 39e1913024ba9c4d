// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/finding.h"

#include <algorithm>
#include <array>

namespace wickbook::checks {

namespace {

const Argument* find(const std::vector<Argument>& arguments, std::string_view name) {
    const auto it = std::find_if(arguments.begin(), arguments.end(),
                                 [&](const Argument& argument) { return argument.name == name; });
    return it == arguments.end() ? nullptr : &*it;
}

} // namespace

std::string_view severityName(Severity severity) {
    constexpr std::array<std::string_view, 5> kNames{"note", "soft", "doubtful", "erroneous", "impossible"};
    return kNames.at(static_cast<std::size_t>(severity));
}

std::optional<double> Finding::number(std::string_view name) const {
    const Argument* argument = find(arguments, name);
    const double* value = argument != nullptr ? std::get_if<double>(&argument->value) : nullptr;
    return value != nullptr ? std::optional{*value} : std::nullopt;
}

std::optional<std::string> Finding::word(std::string_view name) const {
    const Argument* argument = find(arguments, name);
    const auto* value = argument != nullptr ? std::get_if<std::string>(&argument->value) : nullptr;
    return value != nullptr ? std::optional{*value} : std::nullopt;
}

bool leftOut(const record::Observation& observation, const std::vector<Finding>& findings) {
    if (observation.withdrawn || observation.origin == record::Origin::Missing ||
        observation.origin == record::Origin::Estimated) {
        return true; // no value, or one that was not read: judging it sound does not make it a reading
    }
    switch (observation.quality) {
    case record::Quality::Sound:
        return false;
    case record::Quality::Doubtful:
    case record::Quality::Erroneous:
        return true;
    case record::Quality::NotJudged:
        break;
    }
    return std::any_of(findings.begin(), findings.end(),
                       [](const Finding& finding) { return setsAside(finding.severity); });
}

} // namespace wickbook::checks
