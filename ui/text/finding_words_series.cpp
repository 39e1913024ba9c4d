// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences about a reading among its neighbours, and about its time.
#include "ui/text/finding_speech.h"

#include <array>

namespace wickbook::ui {

namespace {

FindingWords stepTemperature(const FindingSpeech& s) {
    return {s.raw("change") < 0 ? FindingText::tr("Much colder than the last reading")
                                : FindingText::tr("Much warmer than the last reading"),
            FindingText::tr("The dry bulb went from %1 to %2 in %3 h.")
                .arg(s.temperature("previous"), s.temperature("value"), s.number("hours")),
            FindingText::tr("Read again. If the weather changed, keep it and say so in a note.")};
}

FindingWords stepDewPoint(const FindingSpeech& s) {
    return {s.raw("change") < 0 ? FindingText::tr("Much drier than the last reading")
                                : FindingText::tr("Much moister than the last reading"),
            FindingText::tr("The dew point went from %1 to %2 in %3 h.")
                .arg(s.temperature("previous"), s.temperature("value"), s.number("hours")),
            FindingText::tr("Read the wet bulb again. If the air changed, keep it and say so in a note.")};
}

FindingWords persistence(const FindingSpeech& s) {
    return {FindingText::tr("The same pair again"),
            FindingText::tr("The very same two numbers stand %1 times running.").arg(s.number("count")),
            FindingText::tr(
                "Read both once more. If the air stands so still, keep it; with fog in the weather column "
                "nothing is "
                "asked.")};
}

FindingWords duplicate(const FindingSpeech& s) {
    return {FindingText::tr("Two readings for one hour"),
            s.is("same", "yes") ? FindingText::tr("This hour stands twice with the same numbers.")
                                : FindingText::tr("This hour stands twice with different numbers."),
            FindingText::tr("Choose one and withdraw the other; both stay in the history.")};
}

FindingWords copiedDay(const FindingSpeech& s) {
    return {
        FindingText::tr("A day like another"),
        FindingText::tr("All readings of this day are those of %1.").arg(s.word("date")),
        FindingText::tr(
            "Look at the page: was one day's line written twice? If both days are right, judge them sound.")};
}

FindingWords future(const FindingSpeech&) {
    return {FindingText::tr("Not yet"), FindingText::tr("The time of this reading has not come yet."),
            FindingText::tr("Check date and hour, and the clock of this computer.")};
}

FindingWords early(const FindingSpeech& s) {
    return {FindingText::tr("Early"),
            FindingText::tr("Read %1 min before the hour. The true time is kept.").arg(s.number("minutes")),
            FindingText::tr("Nothing to do.")};
}

FindingWords late(const FindingSpeech& s) {
    return {FindingText::tr("Late"),
            FindingText::tr("Read %1 min after the hour. The true time is kept.").arg(s.number("minutes")),
            FindingText::tr("Nothing to do.")};
}

FindingWords digitPreference(const FindingSpeech& s) {
    return {FindingText::tr("A favoured tenth"),
            FindingText::tr("Of %1 readings of the %2, %3 end in %4; about one in ten is to be expected.")
                .arg(s.number("count"), s.bulb(), s.percent("share"), s.number("digit")),
            FindingText::tr("Read the tenths before the whole degrees, with the eye level with the column.")};
}

FindingWords unlikely(const FindingSpeech& s) {
    QString message = FindingText::tr(
        "A slip in reading or writing would explain these numbers better than the weather does.");
    if (s.has("expected-temperature") && s.has("expected-dew-point")) {
        message +=
            QLatin1Char(' ') +
            FindingText::tr(
                "From the readings round it one would expect a dry bulb near %1 and a dew point near %2.")
                .arg(s.temperature("expected-temperature"), s.temperature("expected-dew-point"));
    }
    return {FindingText::tr("Unlike the readings round it"), message,
            FindingText::tr("Read again. On an old page, compare with what is written there.")};
}

} // namespace

std::span<const SpeechEntry> seriesSpeech() {
    static constexpr std::array kTable{
        SpeechEntry{"step-temperature", stepTemperature},
        SpeechEntry{"step-dew-point", stepDewPoint},
        SpeechEntry{"persistence", persistence},
        SpeechEntry{"duplicate", duplicate},
        SpeechEntry{"copied-day", copiedDay},
        SpeechEntry{"future", future},
        SpeechEntry{"early", early},
        SpeechEntry{"late", late},
        SpeechEntry{"digit-preference", digitPreference},
        SpeechEntry{"unlikely", unlikely},
    };
    return kTable;
}

} // namespace wickbook::ui
