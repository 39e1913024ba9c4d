// SPDX-License-Identifier: GPL-3.0-or-later
// The colours, by the contrast ratio of the Web Content Accessibility Guidelines 2.1 (relative luminance and
// success criteria 1.4.3, text 4.5 : 1, and 1.4.11, what is no text 3 : 1), in light and in dark.
#include "ui/style/tokens.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using wickbook::ui::Tokens;

/// WCAG 2.1, definition of relative luminance.
double luminance(const QColor& colour) {
    const auto part = [](float given) {
        const auto value = static_cast<double>(given);
        return value <= 0.03928 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * part(colour.redF()) + 0.7152 * part(colour.greenF()) + 0.0722 * part(colour.blueF());
}

double contrast(const QColor& one, const QColor& other) {
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

TEST(ContrastTest, TheFormulaGivesThePublishedEnds) {
    // WCAG 2.1: "contrast ratios can range from 1 to 21".
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrast(Qt::gray, Qt::gray), 1.0, 1e-9);
}

TEST(ContrastTest, TextReachesDoubleA) {
    for (const Tokens* tokens : {&wickbook::ui::lightTokens(), &wickbook::ui::darkTokens()}) {
        const std::pair<const char*, QColor> texts[] = {{"ink", tokens->ink},       {"soft", tokens->soft},
                                                        {"dry", tokens->dry},       {"wet", tokens->wet},
                                                        {"accent", tokens->accent}, {"query", tokens->query},
                                                        {"wrong", tokens->wrong}};
        for (const auto& text : texts) {
            EXPECT_GE(contrast(text.second, tokens->paper), 4.5)
                << text.first << " on paper, dark " << tokens->dark;
            EXPECT_GE(contrast(text.second, tokens->sheet), 4.5)
                << text.first << " on the sheet, dark " << tokens->dark;
        }
        EXPECT_GE(contrast(tokens->onAccent, tokens->accent), 4.5);
        EXPECT_GE(contrast(tokens->query, tokens->queryPaper), 4.5);
        EXPECT_GE(contrast(tokens->ink, tokens->queryPaper), 4.5);
        EXPECT_GE(contrast(tokens->soft, tokens->tab), 4.5)
            << "an index tab that lies below, dark " << tokens->dark;
    }
}

TEST(ContrastTest, FocusAndMarksStandOut) {
    for (const Tokens* tokens : {&wickbook::ui::lightTokens(), &wickbook::ui::darkTokens()}) {
        EXPECT_GE(contrast(tokens->accent, tokens->sheet), 3.0);
        EXPECT_GE(contrast(tokens->soft, tokens->sheet), 3.0); // the frames of fields and buttons
        EXPECT_GE(contrast(tokens->dry, tokens->sheet), 3.0);
        EXPECT_GE(contrast(tokens->wet, tokens->sheet), 3.0);
    }
}

} // namespace
