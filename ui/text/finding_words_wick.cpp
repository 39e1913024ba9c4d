// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences about the wick: water or ice, freezing, thawing, dry.
#include "ui/text/finding_speech.h"

#include <array>

namespace wickbook::ui {

namespace {

FindingWords dryWick(const FindingSpeech& s) {
    const QString remedy =
        FindingText::tr("Wet the wick, wait until the wet bulb has fallen and settled, and read again.");
    if (s.is("sign", "rising")) {
        return {FindingText::tr("The wick may be drying"),
                FindingText::tr("The wet bulb rose by %1 from whirl to whirl. It should only fall or stand.")
                    .arg(s.size("rise")),
                remedy};
    }
    return {
        FindingText::tr("The wick may be dry"),
        FindingText::tr(
            "The bulbs stand only %1 apart. The air would hold far more moisture than in the last readings "
            "(%2 of vapour against %3), and no fog, rain or dew was noted to bring it.")
            .arg(s.size("depression"), s.number("vapour", 1) + QStringLiteral(" hPa"),
                 s.number("usual", 1) + QStringLiteral(" hPa")),
        remedy};
}

FindingWords wickStateUnknown(const FindingSpeech& s) {
    QString message =
        FindingText::tr(
            "The wet bulb stands at %1, and it is not said whether the wick is water or ice. The answer "
            "changes the humidity, so none is worked out.")
            .arg(s.temperature("wet"));
    if (s.has("humidity-water") && s.has("humidity-ice")) {
        message += QLatin1Char(' ') + FindingText::tr("Water would give %1, ice %2.")
                                          .arg(s.percent("humidity-water"), s.percent("humidity-ice"));
    }
    return {FindingText::tr("Water or ice?"), message,
            FindingText::tr(
                "Touch the wick with a splinter of wood: if it is soft, say water; if it is hard, say ice.")};
}

FindingWords freezingHalt(const FindingSpeech& s) {
    if (s.is("phase", "thawing")) {
        return {FindingText::tr("The wick may be thawing"),
                FindingText::tr(
                    "The wet bulb stands at %1 while the air is at %2: melting ice holds it there, and the "
                    "humidity "
                    "is not yet true.")
                    .arg(s.temperature("wet"), s.temperature("dry")),
                FindingText::tr(
                    "Melt the ice with tepid water and wait until the wet bulb rises, then read again.")};
    }
    return {
        FindingText::tr("The wick may be freezing"),
        FindingText::tr(
            "The wet bulb stands at %1 with the air at %2: while the water freezes it holds there, and the "
            "humidity comes out too high.")
            .arg(s.temperature("wet"), s.temperature("dry")),
        FindingText::tr("Wait until the wet bulb falls and settles, then read again and say ice.")};
}

FindingWords frozenReadAsWater(const FindingSpeech& s) {
    return {FindingText::tr("Is the wick ice?"),
            FindingText::tr(
                "Water was given at a wet bulb of %1. As ice the humidity would be %2 rather than %3.")
                .arg(s.temperature("wet"), s.percent("humidity-ice"), s.percent("humidity")),
            FindingText::tr(
                "Touch the wick with a piece of ice or a splinter of wood: if it is hard, say ice. If it is "
                "still "
                "wet, keep it.")};
}

} // namespace

std::span<const SpeechEntry> wickSpeech() {
    static constexpr std::array kTable{
        SpeechEntry{"dry-wick", dryWick},
        SpeechEntry{"wick-state-unknown", wickStateUnknown},
        SpeechEntry{"freezing-halt", freezingHalt},
        SpeechEntry{"frozen-read-as-water", frozenReadAsWater},
    };
    return kTable;
}

} // namespace wickbook::ui
