// SPDX-License-Identifier: GPL-3.0-or-later
// Every finding with the numbers it would have, read as a beginner does: whole sentences, something to do
// now, none of our own jargon, no blame. Prints them all.
#include "ui/text/finding_words.h"

#include <gtest/gtest.h>

#include <iostream>
#include <set>

namespace {

using namespace wickbook;
using namespace wickbook::ui;
using checks::Argument;
using checks::Finding;
using checks::Severity;

std::vector<Finding> samples() {
    using S = std::string;
    const auto make = [](std::string_view code, Severity severity, std::vector<Argument> arguments) {
        return Finding{code, severity, checks::Root::None, std::move(arguments), {}};
    };
    return {
        make("off-scale", Severity::Erroneous,
             {{"bulb", S{"dry"}}, {"side", S{"above"}}, {"value", 220.9}, {"limit", 60.0}, {"unit", S{"C"}}}),
        make("off-scale", Severity::Soft, {{"bulb", S{"wet"}}, {"side", S{"below"}}}),
        make("incomplete", Severity::Note, {{"missing", S{"wet"}}}),
        make("out-of-range", Severity::Doubtful,
             {{"what", S{"temperature"}}, {"value", 74.0}, {"low", -60.0}, {"high", 60.0}}),
        make("out-of-range", Severity::Doubtful,
             {{"what", S{"pressure"}}, {"value", 101.0}, {"low", 300.0}, {"high", 1100.0}}),
        make("no-vapour", Severity::Impossible, {{"depression", 18.0}, {"limit", 14.0}}),
        make("no-vapour", Severity::Impossible, {{"depression", 38.0}}),
        make("wet-above-dry", Severity::Doubtful, {{"excess", 1.4}, {"limit", 0.2}}),
        make("wet-above-dry", Severity::Note, {{"excess", 0.1}, {"limit", 0.2}, {"taken", S{"saturation"}}}),
        make("ice-over-dry", Severity::Doubtful, {{"excess", 1.2}, {"allowed", 0.3}}),
        make("ice-over-dry", Severity::Note, {{"excess", 0.4}, {"allowed", 0.3}, {"taken", S{"saturation"}}}),
        make("ice-above-zero", Severity::Doubtful, {{"wet", 1.6}, {"limit", 0.1}}),
        make("wick-state-unknown", Severity::Doubtful,
             {{"wet", -0.5}, {"humidity-water", 57.0}, {"humidity-ice", 61.0}}),
        make("freezing-halt", Severity::Soft, {{"phase", S{"freezing"}}, {"wet", 0.0}, {"dry", -1.6}}),
        make("freezing-halt", Severity::Soft, {{"phase", S{"thawing"}}, {"wet", 0.0}, {"dry", 3.6}}),
        make("frozen-read-as-water", Severity::Soft,
             {{"humidity", 61.0}, {"humidity-ice", 68.0}, {"difference", -7.0}, {"wet", -5.0}}),
        make(
            "dry-wick", Severity::Doubtful,
            {{"sign", S{"vapour"}}, {"depression", 0.1}, {"vapour", 35.6}, {"usual", 14.2}, {"hours", 26.0}}),
        make("dry-wick", Severity::Soft, {{"sign", S{"rising"}}, {"rise", 0.6}}),
        make("very-dry", Severity::Soft, {{"humidity", 4.0}, {"limit", 10.0}, {"depression", 16.6}}),
        make("gross-temperature", Severity::Doubtful, {{"bulb", S{"dry"}}, {"value", 42.0}, {"limit", 40.0}}),
        make("gross-dew-point", Severity::Doubtful, {{"value", 36.0}, {"limit", 35.0}}),
        make("gross-pressure", Severity::Doubtful, {{"value", 1015.2}, {"limit", 905.6}, {"usual", 845.6}}),
        make("gross-pressure", Severity::Erroneous, {{"value", 1200.0}, {"limit", 1100.0}}),
        make("step-temperature", Severity::Soft,
             {{"value", 21.0}, {"previous", 10.0}, {"change", 11.0}, {"hours", 3.0}, {"limit", 9.0}}),
        make("step-dew-point", Severity::Soft,
             {{"value", 1.0}, {"previous", 12.0}, {"change", -11.0}, {"hours", 3.0}, {"limit", 8.0}}),
        make("climatology", Severity::Soft,
             {{"what", S{"temperature"}}, {"value", 24.0}, {"low", 2.0}, {"high", 19.0}, {"years", 5.0}}),
        make("climatology", Severity::Soft,
             {{"what", S{"dew-point"}}, {"value", 24.0}, {"low", 2.0}, {"high", 19.0}, {"years", 5.0}}),
        make("max-min", Severity::Soft,
             {{"which", S{"above-maximum"}}, {"limit", 13.1}, {"when", S{"own"}}, {"dry", 14.0}}),
        make("max-min", Severity::Soft,
             {{"which", S{"below-minimum"}}, {"limit", 13.1}, {"when", S{"next"}}, {"dry", 12.0}}),
        make("max-min", Severity::Soft,
             {{"which", S{"crossed"}}, {"limit", 18.0}, {"when", S{"own"}}, {"maximum", 6.0}}),
        make("persistence", Severity::Soft, {{"count", 3.0}, {"limit", 3.0}, {"hours", 14.0}}),
        make("copied-day", Severity::Doubtful, {{"date", S{"2025-05-01"}}, {"count", 2.0}}),
        make("duplicate", Severity::Doubtful,
             {{"hour", S{"07:00"}}, {"same", S{"no"}}, {"other-dry", 9.8}, {"other-wet", 8.1}}),
        make("future", Severity::Doubtful, {{"minutes", 40.0}}),
        make("early", Severity::Note, {{"minutes", 22.0}, {"limit", 15.0}, {"hour", S{"09:00"}}}),
        make("late", Severity::Note, {{"minutes", 22.0}, {"limit", 15.0}, {"hour", S{"09:00"}}}),
        make("fog-but-dry", Severity::Soft, {{"humidity", 61.0}, {"limit", 80.0}}),
        make("rain-but-dry", Severity::Note, {{"humidity", 29.0}, {"limit", 40.0}}),
        make("fine-but-saturated", Severity::Soft, {{"humidity", 99.0}, {"limit", 98.0}}),
        make("unlikely", Severity::Soft,
             {{"belief", 0.1}, {"expected-temperature", 16.2}, {"expected-dew-point", 11.0}}),
        make("coefficient-missing", Severity::Soft, {}),
        make("dew-point-below-range", Severity::Note, {{"limit", -60.0}}),
        make("extrapolated", Severity::Note, {{"limit", -20.0}}),
        make("digit-preference", Severity::Note,
             {{"bulb", S{"dry"}}, {"count", 612.0}, {"share", 24.0}, {"digit", 5.0}}),
    };
}

TEST(FindingSamples, EveryRuleHasOneAndAllReadAsSentences) {
    std::set<std::string_view> seen;
    for (const Finding& finding : samples()) {
        seen.insert(finding.code);
        const FindingWords words = findingWords(QLocale::c(), finding, units::TemperatureUnit::Celsius);
        std::cout << finding.code << " | " << words.title.toStdString() << " | "
                  << words.message.toStdString() << " | " << words.remedy.toStdString() << '\n';
        for (const QString& text : {words.message, words.remedy}) {
            EXPECT_TRUE(text.endsWith(QLatin1Char('.')) || text.endsWith(QLatin1Char('?')))
                << text.toStdString();
            EXPECT_FALSE(text.contains(QStringLiteral("–"))) << "a number is missing: " << text.toStdString();
            EXPECT_FALSE(text.contains(QLatin1Char('%') + QString::number(1))) << text.toStdString();
            for (const char* jargon : {"finding", "climatolog", "quartile", "extrapolat", "persistence",
                                       "invalid", "illegal", "failed", "your fault", "careless", "derive"}) {
                EXPECT_FALSE(text.contains(QLatin1String(jargon), Qt::CaseInsensitive)) << text.toStdString();
            }
        }
        EXPECT_FALSE(words.title.endsWith(QLatin1Char('.'))) << words.title.toStdString();
    }
    for (const checks::Rule& rule : checks::ruleTable()) {
        EXPECT_TRUE(seen.contains(rule.code)) << rule.code << " has no sample here";
    }
}

} // namespace
