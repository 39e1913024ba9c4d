// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences about the pair by itself: what the two numbers can't be.
#include "ui/text/finding_speech.h"

#include <array>

namespace wickbook::ui {

namespace {

FindingWords incomplete(const FindingSpeech& s) {
    return {FindingText::tr("One bulb only"),
            s.is("missing", "wet") ? FindingText::tr("The wet bulb is missing, so there is no humidity.")
                                   : FindingText::tr("The dry bulb is missing, so there is no humidity."),
            FindingText::tr("Read the other bulb if you still can; the one reading is kept.")};
}

FindingWords wetAboveDry(const FindingSpeech& s) {
    if (s.is("taken", "saturation")) {
        return {FindingText::tr("Wet bulb a touch above dry bulb"),
                FindingText::tr(
                    "The wet bulb stands %1 above the dry bulb. That is within reading error and taken as "
                    "saturated "
                    "air.")
                    .arg(s.size("excess")),
                FindingText::tr(
                    "Nothing to do in fog or drizzle. Otherwise look at the wick and read once more.")};
    }
    return {
        FindingText::tr("Wet bulb above dry bulb"),
        FindingText::tr(
            "The wet bulb stands %1 above the dry bulb, corrections included. A wet wick can only cool, so "
            "no humidity is worked out.")
            .arg(s.size("excess")),
        FindingText::tr("Read both again. Were the two numbers swapped, or one read ten or five off?")};
}

FindingWords noVapour(const FindingSpeech& s) {
    return {FindingText::tr("Further apart than air allows"),
            s.has("limit")
                ? FindingText::tr("The bulbs stand %1 apart. At this dry bulb even perfectly dry air "
                                  "brings them no further apart than %2.")
                      .arg(s.size("depression"), s.size("limit"))
                : FindingText::tr(
                      "The bulbs stand %1 apart. Even perfectly dry air does not bring them that far.")
                      .arg(s.size("depression")),
            FindingText::tr("Read both again. One of them may have been read ten or five off.")};
}

FindingWords veryDry(const FindingSpeech& s) {
    return {
        FindingText::tr("Very dry air"),
        FindingText::tr("The humidity comes out at %1. Under %2 it is asked about.")
            .arg(s.percent("humidity"), s.percent("limit")),
        FindingText::tr(
            "Read both bulbs again. If it is so, keep it; where the air is often that dry, this limit can be "
            "lowered for the station.")};
}

FindingWords iceOverDry(const FindingSpeech& s) {
    if (s.is("taken", "saturation")) {
        return {
            FindingText::tr("Ice bulb above dry bulb"),
            FindingText::tr("The ice bulb stands %1 above the dry bulb, as it may in freezing fog. Taken as "
                            "saturated air.")
                .arg(s.size("excess")),
            FindingText::tr("Nothing to do in fog. Otherwise read both again.")};
    }
    return {FindingText::tr("Ice bulb too far above dry bulb"),
            FindingText::tr(
                "The ice bulb stands %1 above the dry bulb. That would be more than 100 %, so no humidity is "
                "worked "
                "out.")
                .arg(s.size("excess")),
            FindingText::tr(
                "Read both again. If the wet bulb stays at 0.0, the water is still freezing: wait until it "
                "falls.")};
}

FindingWords iceAboveZero(const FindingSpeech& s) {
    return {FindingText::tr("Ice above zero"),
            FindingText::tr("Ice was given, but the wet bulb stands at %1. Ice can't be warmer than 0 °C.")
                .arg(s.temperature("wet")),
            FindingText::tr("Look at the wick: if it is wet, say water; if it is ice, read again.")};
}

FindingWords outOfRange(const FindingSpeech& s) {
    if (s.is("what", "pressure")) {
        return {FindingText::tr("Pressure out of range"),
                FindingText::tr("A pressure of %1 can't be worked with: the range is 300…1100 hPa.")
                    .arg(s.pressure("value")),
                FindingText::tr(
                    "Check the pressure, or leave it empty: it is then worked out from the elevation.")};
    }
    return {FindingText::tr("Temperature out of range"),
            FindingText::tr("%1 can't be worked with: the range is −60…60 °C.").arg(s.temperature("value")),
            FindingText::tr("Read again. Was the decimal mark lost?")};
}

FindingWords coefficientMissing(const FindingSpeech&) {
    return {
        FindingText::tr("No coefficient"),
        FindingText::tr(
            "The station is set to work with a psychrometer coefficient of its own, but none is on record, "
            "so there is no humidity."),
        FindingText::tr(
            "Enter that coefficient, or say how the air reaches the bulbs: in a screen, whirled, by a fan.")};
}

FindingWords dewPointBelowRange(const FindingSpeech&) {
    return {FindingText::tr("Dew point not given"),
            FindingText::tr("The dew point lies below −60 °C, where it is not worked out."),
            FindingText::tr("Read the wet bulb again. The humidity stands.")};
}

FindingWords extrapolated(const FindingSpeech&) {
    return {
        FindingText::tr("Below the tested range"),
        FindingText::tr(
            "For a wick of water colder than −20 °C there are hardly any measurements to go by; the humidity "
            "may be up to 2 % off."),
        FindingText::tr("Nothing to do. An ice bulb is the surer reading in such cold.")};
}

FindingWords pressureAssumed(const FindingSpeech&) {
    return {FindingText::tr("Pressure assumed"),
            FindingText::tr("No pressure and no elevation was given: 1013.25 hPa was used."),
            FindingText::tr("Give the elevation with --elevation or the pressure with --pressure.")};
}

} // namespace

std::span<const SpeechEntry> pairSpeech() {
    static constexpr std::array kTable{
        SpeechEntry{"incomplete", incomplete},
        SpeechEntry{"wet-above-dry", wetAboveDry},
        SpeechEntry{"no-vapour", noVapour},
        SpeechEntry{"very-dry", veryDry},
        SpeechEntry{"ice-over-dry", iceOverDry},
        SpeechEntry{"ice-above-zero", iceAboveZero},
        SpeechEntry{"out-of-range", outOfRange},
        SpeechEntry{"coefficient-missing", coefficientMissing},
        SpeechEntry{"dew-point-below-range", dewPointBelowRange},
        SpeechEntry{"extrapolated", extrapolated},
        SpeechEntry{"pressure-assumed", pressureAssumed},
    };
    return kTable;
}

} // namespace wickbook::ui
