// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences about single values against the scale, the season and the weather noted.
#include "ui/text/finding_speech.h"

#include <array>

namespace wickbook::ui {

namespace {

FindingWords offScale(const FindingSpeech& s) {
    if (!s.has("value")) {
        return {
            FindingText::tr("Below the scale"),
            FindingText::tr("The column of the %1 has gone into the bulb: there is no number.").arg(s.bulb()),
            FindingText::tr("Nothing to do: it is kept as below scale.")};
    }
    return {FindingText::tr("Off the thermometer's scale"),
            (s.is("side", "above")
                 ? FindingText::tr("The %1 was read as %2, above the last mark of the scale at %3.")
                 : FindingText::tr("The %1 was read as %2, below the last mark of the scale at %3."))
                .arg(s.bulb(), s.scaleReading("value"), s.scaleReading("limit")),
            FindingText::tr(
                "Read again. On an old page, look whether a figure was doubled or the decimal mark lost.")};
}

FindingWords grossTemperature(const FindingSpeech& s) {
    return {FindingText::tr("Beyond what this season brings"),
            FindingText::tr("The %1 was read as %2; in this latitude and season air rarely passes %3.")
                .arg(s.bulb(), s.temperature("value"), s.temperature("limit")),
            FindingText::tr("Read again, and look at the tens of the scale.")};
}

FindingWords grossDewPoint(const FindingSpeech& s) {
    return {FindingText::tr("Dew point beyond what this season brings"),
            FindingText::tr("The dew point comes out at %1; in this latitude and season it rarely passes %2.")
                .arg(s.temperature("value"), s.temperature("limit")),
            FindingText::tr("Read both bulbs again.")};
}

FindingWords grossPressure(const FindingSpeech& s) {
    return {
        FindingText::tr("Unlikely pressure"),
        s.has("usual")
            ? FindingText::tr("The pressure was read as %1; at this elevation about %2 is usual.")
                  .arg(s.pressure("value"), s.pressure("usual"))
            : FindingText::tr("The pressure was read as %1, which no station has.").arg(s.pressure("value")),
        FindingText::tr(
            "Give the pressure at the station, not the one reduced to sea level, or leave it empty.")};
}

FindingWords climatology(const FindingSpeech& s) {
    return {FindingText::tr("Unusual for this month and hour"),
            (s.is("what", "dew-point")
                 ? FindingText::tr(
                       "The dew point of %1 lies far from what this month and hour brought here in %4 years. "
                       "Between %2 and %3 nothing would be asked.")
                 : FindingText::tr(
                       "The dry bulb of %1 lies far from what this month and hour brought here in %4 years. "
                       "Between %2 and %3 nothing would be asked."))
                .arg(s.temperature("value"), s.temperature("low"), s.temperature("high"), s.number("years")),
            FindingText::tr("Read again. If it is so, keep it: records happen.")};
}

FindingWords fogButDry(const FindingSpeech& s) {
    return {
        FindingText::tr("Fog, but dry air"),
        FindingText::tr("Fog was noted, but the humidity comes out at %1; in fog it is hardly ever under %2.")
            .arg(s.percent("humidity"), s.percent("limit")),
        FindingText::tr(
            "Look whether the wick is clean and wet, and whether it was fog or haze. Then read again.")};
}

FindingWords rainButDry(const FindingSpeech& s) {
    return {FindingText::tr("Rain through dry air"),
            FindingText::tr("Rain was noted at a humidity of %1. That happens, but seldom.")
                .arg(s.percent("humidity")),
            FindingText::tr("Nothing to do if the wick was clean and wet.")};
}

FindingWords fineButSaturated(const FindingSpeech& s) {
    return {FindingText::tr("Saturated, but no fog or rain noted"),
            FindingText::tr("The humidity comes out at %1 without fog, rain or dew in the weather column.")
                .arg(s.percent("humidity")),
            FindingText::tr(
                "Look at the wick: is it wet? If not, wet it, wait and read again. If there was dew or fog, "
                "note it.")};
}

FindingWords maxMin(const FindingSpeech& s) {
    const QString remedy = FindingText::tr("Look at the three numbers again: one of them was misread.");
    if (s.is("which", "crossed")) {
        return {FindingText::tr("Maximum below minimum"),
                FindingText::tr("The maximum of %1 stands below the minimum of %2.")
                    .arg(s.temperature("maximum"), s.temperature("limit")),
                remedy};
    }
    return {FindingText::tr("Outside maximum and minimum"),
            (s.is("which", "above-maximum")
                 ? FindingText::tr("The dry bulb of %1 stands above the maximum of %2.")
                 : FindingText::tr("The dry bulb of %1 stands below the minimum of %2."))
                .arg(s.temperature("dry"), s.temperature("limit")),
            remedy};
}

} // namespace

std::span<const SpeechEntry> rangeSpeech() {
    static constexpr std::array kTable{
        SpeechEntry{"off-scale", offScale},
        SpeechEntry{"gross-temperature", grossTemperature},
        SpeechEntry{"gross-dew-point", grossDewPoint},
        SpeechEntry{"gross-pressure", grossPressure},
        SpeechEntry{"climatology", climatology},
        SpeechEntry{"fog-but-dry", fogButDry},
        SpeechEntry{"rain-but-dry", rainButDry},
        SpeechEntry{"fine-but-saturated", fineButSaturated},
        SpeechEntry{"max-min", maxMin},
    };
    return kTable;
}

} // namespace wickbook::ui
