// SPDX-License-Identifier: GPL-3.0-or-later
// Names of limits and rules; sentences about a change of them stand in limit_words_change.cpp.
#include "ui/text/limit_words.h"

#include "ui/text/number_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace wickbook::ui {

namespace {

struct LimitText {
    Q_DECLARE_TR_FUNCTIONS(LimitText)
};

struct RuleEntry {
    std::string_view rule;
    const char* title;
    const char* does;
};

constexpr std::array kRules{
    RuleEntry{"gross-temperature", QT_TRANSLATE_NOOP("LimitText", "Air too hot or too cold for the season"),
              QT_TRANSLATE_NOOP("LimitText",
                                "Marks a bulb beyond what air does at this latitude and in this half of "
                                "the year. The first pair is doubtful, the outer pair wrong.")},
    RuleEntry{"gross-dew-point",
              QT_TRANSLATE_NOOP("LimitText", "Dew point too high or too low for the season"),
              QT_TRANSLATE_NOOP("LimitText",
                                "Marks a dew point that air hardly ever has. Used in summer poleward of "
                                "the latitude above and in winter towards the equator; in the other "
                                "half-years the temperature limits serve.")},
    RuleEntry{"gross-pressure", QT_TRANSLATE_NOOP("LimitText", "Pressure that can't be"),
              QT_TRANSLATE_NOOP("LimitText",
                                "Marks a pressure that no station has, or one far from what this "
                                "elevation makes usual: often the sea-level value was written.")},
    RuleEntry{"wet-above-dry", QT_TRANSLATE_NOOP("LimitText", "Wet bulb above dry bulb"),
              QT_TRANSLATE_NOOP("LimitText",
                                "A wet wick can only cool. A little above counts as reading error and is "
                                "taken as saturated air; more is doubtful.")},
    RuleEntry{"very-dry", QT_TRANSLATE_NOOP("LimitText", "Very dry air"),
              QT_TRANSLATE_NOOP("LimitText",
                                "Asks you to read again when the air seems drier than it usually gets. "
                                "Lower it where the air really is that dry.")},
    RuleEntry{"dry-wick", QT_TRANSLATE_NOOP("LimitText", "Wick run dry"),
              QT_TRANSLATE_NOOP("LimitText",
                                "A dry wick reads like a dry bulb: the bulbs stand close together, and the "
                                "air seems to hold far more vapour than just before.")},
    RuleEntry{"freezing-halt", QT_TRANSLATE_NOOP("LimitText", "Wick freezing or thawing"),
              QT_TRANSLATE_NOOP("LimitText",
                                "While a wick freezes or thaws the wet bulb stands at 0.0 °C and tells "
                                "nothing. Looks for frost in the last readings.")},
    RuleEntry{"frozen-read-as-water", QT_TRANSLATE_NOOP("LimitText", "Ice taken for water"),
              QT_TRANSLATE_NOOP("LimitText",
                                "Asks whether the wick is ice where water was given well below zero and "
                                "the answer changes the humidity.")},
    RuleEntry{"step-temperature", QT_TRANSLATE_NOOP("LimitText", "Sudden change of temperature"),
              QT_TRANSLATE_NOOP("LimitText",
                                "Asks you to confirm a jump since the last reading. Raise it where the "
                                "days swing widely.")},
    RuleEntry{
        "step-dew-point", QT_TRANSLATE_NOOP("LimitText", "Sudden change of dew point"),
        QT_TRANSLATE_NOOP("LimitText", "Asks you to confirm a jump of the moisture since the last reading.")},
    RuleEntry{"persistence", QT_TRANSLATE_NOOP("LimitText", "The same pair again and again"),
              QT_TRANSLATE_NOOP("LimitText",
                                "Asks whether a line was copied when the very same pair stands several "
                                "times running. Quiet in fog.")},
    RuleEntry{"digit-preference", QT_TRANSLATE_NOOP("LimitText", "A favoured last figure"),
              QT_TRANSLATE_NOOP("LimitText",
                                "Tells, privately, when one tenth is written far oftener than the others.")},
    RuleEntry{
        "copied-day", QT_TRANSLATE_NOOP("LimitText", "A day like another"),
        QT_TRANSLATE_NOOP("LimitText", "Marks a day whose readings all equal those of an earlier day.")},
    RuleEntry{
        "early", QT_TRANSLATE_NOOP("LimitText", "Read early"),
        QT_TRANSLATE_NOOP("LimitText", "Notes a reading made well before its hour. The true time is kept.")},
    RuleEntry{
        "late", QT_TRANSLATE_NOOP("LimitText", "Read late"),
        QT_TRANSLATE_NOOP("LimitText", "Notes a reading made well after its hour. The true time is kept.")},
    RuleEntry{
        "future", QT_TRANSLATE_NOOP("LimitText", "Time not yet come"),
        QT_TRANSLATE_NOOP("LimitText", "Marks a reading whose time lies ahead of this computer's clock.")},
    RuleEntry{"climatology", QT_TRANSLATE_NOOP("LimitText", "Unusual for this month and hour"),
              QT_TRANSLATE_NOOP("LimitText",
                                "Compares a reading with the same month and hour of this station's other "
                                "years and asks about what lies far outside.")},
    RuleEntry{"fog-but-dry", QT_TRANSLATE_NOOP("LimitText", "Fog, but dry air"),
              QT_TRANSLATE_NOOP("LimitText",
                                "Asks about the wick or the remark when fog was noted and the air seems "
                                "too dry for it.")},
    RuleEntry{"rain-but-dry", QT_TRANSLATE_NOOP("LimitText", "Rain through dry air"),
              QT_TRANSLATE_NOOP("LimitText", "Notes rain in dry air: it happens, but seldom.")},
    RuleEntry{"max-min", QT_TRANSLATE_NOOP("LimitText", "Outside maximum and minimum"),
              QT_TRANSLATE_NOOP("LimitText",
                                "Asks which was misread when the dry bulb stands outside the maximum and "
                                "minimum that were read.")},
    RuleEntry{"month", QT_TRANSLATE_NOOP("LimitText", "The month's numbers"),
              QT_TRANSLATE_NOOP(
                  "LimitText", "When a month has too few readings for a mean, and which days are counted "
                               "as damp or dry. The stricter rule is 5 and 3 days. Holds for whole months.")},
    RuleEntry{"fine-but-saturated", QT_TRANSLATE_NOOP("LimitText", "Saturated in fine weather"),
              QT_TRANSLATE_NOOP("LimitText",
                                "Asks about the wick when the air seems saturated and neither fog nor "
                                "rain nor dew was noted.")},
    RuleEntry{"unlikely", QT_TRANSLATE_NOOP("LimitText", "Unlike the readings round it"),
              QT_TRANSLATE_NOOP("LimitText",
                                "Marks a reading that a slip of the pen explains better than the weather "
                                "does. Higher marks more readings.")},
};

struct NameEntry {
    std::string_view limit; ///< what stands after the dot, or the whole name where rules differ
    const char* words;
};

constexpr std::array kNames{
    NameEntry{"gross-temperature.latitude",
              QT_TRANSLATE_NOOP("LimitText", "latitude that parts high from low")},
    NameEntry{"high-summer-doubtful-low",
              QT_TRANSLATE_NOOP("LimitText", "high latitude, summer: doubtful below")},
    NameEntry{"high-summer-doubtful-high",
              QT_TRANSLATE_NOOP("LimitText", "high latitude, summer: doubtful above")},
    NameEntry{"high-summer-erroneous-low",
              QT_TRANSLATE_NOOP("LimitText", "high latitude, summer: wrong below")},
    NameEntry{"high-summer-erroneous-high",
              QT_TRANSLATE_NOOP("LimitText", "high latitude, summer: wrong above")},
    NameEntry{"high-winter-doubtful-low",
              QT_TRANSLATE_NOOP("LimitText", "high latitude, winter: doubtful below")},
    NameEntry{"high-winter-doubtful-high",
              QT_TRANSLATE_NOOP("LimitText", "high latitude, winter: doubtful above")},
    NameEntry{"high-winter-erroneous-low",
              QT_TRANSLATE_NOOP("LimitText", "high latitude, winter: wrong below")},
    NameEntry{"high-winter-erroneous-high",
              QT_TRANSLATE_NOOP("LimitText", "high latitude, winter: wrong above")},
    NameEntry{"low-summer-doubtful-low",
              QT_TRANSLATE_NOOP("LimitText", "low latitude, summer: doubtful below")},
    NameEntry{"low-summer-doubtful-high",
              QT_TRANSLATE_NOOP("LimitText", "low latitude, summer: doubtful above")},
    NameEntry{"low-summer-erroneous-low",
              QT_TRANSLATE_NOOP("LimitText", "low latitude, summer: wrong below")},
    NameEntry{"low-summer-erroneous-high",
              QT_TRANSLATE_NOOP("LimitText", "low latitude, summer: wrong above")},
    NameEntry{"low-winter-doubtful-low",
              QT_TRANSLATE_NOOP("LimitText", "low latitude, winter: doubtful below")},
    NameEntry{"low-winter-doubtful-high",
              QT_TRANSLATE_NOOP("LimitText", "low latitude, winter: doubtful above")},
    NameEntry{"low-winter-erroneous-low",
              QT_TRANSLATE_NOOP("LimitText", "low latitude, winter: wrong below")},
    NameEntry{"low-winter-erroneous-high",
              QT_TRANSLATE_NOOP("LimitText", "low latitude, winter: wrong above")},
    NameEntry{"doubtful-low", QT_TRANSLATE_NOOP("LimitText", "doubtful below")},
    NameEntry{"doubtful-high", QT_TRANSLATE_NOOP("LimitText", "doubtful above")},
    NameEntry{"erroneous-low", QT_TRANSLATE_NOOP("LimitText", "wrong below")},
    NameEntry{"erroneous-high", QT_TRANSLATE_NOOP("LimitText", "wrong above")},
    NameEntry{"from-usual", QT_TRANSLATE_NOOP("LimitText", "doubtful farther from the usual than")},
    NameEntry{"wet-above-dry.tolerance", QT_TRANSLATE_NOOP("LimitText", "reading error up to")},
    NameEntry{"lowest-humidity", QT_TRANSLATE_NOOP("LimitText", "ask below a humidity of")},
    NameEntry{"dry-wick.depression", QT_TRANSLATE_NOOP("LimitText", "bulbs closer together than")},
    NameEntry{"vapour-ratio", QT_TRANSLATE_NOOP("LimitText", "vapour at least so many times that of before")},
    NameEntry{"vapour-rise", QT_TRANSLATE_NOOP("LimitText", "vapour more than before by")},
    NameEntry{"dry-wick.hours", QT_TRANSLATE_NOOP("LimitText", "looks back")},
    NameEntry{"rise-in-repeats", QT_TRANSLATE_NOOP("LimitText", "or wet bulb rising from whirl to whirl by")},
    NameEntry{"freezing-halt.hours", QT_TRANSLATE_NOOP("LimitText", "looks back")},
    NameEntry{"warming", QT_TRANSLATE_NOOP("LimitText", "a thaw: air warmer than before by")},
    NameEntry{"wet-below", QT_TRANSLATE_NOOP("LimitText", "ask with a wet bulb below")},
    NameEntry{"frozen-read-as-water.humidity",
              QT_TRANSLATE_NOOP("LimitText", "where the humidity would differ by more than")},
    NameEntry{"within-3-hours", QT_TRANSLATE_NOOP("LimitText", "change within 3 hours")},
    NameEntry{"within-6-hours", QT_TRANSLATE_NOOP("LimitText", "change within 6 hours")},
    NameEntry{"within-12-hours", QT_TRANSLATE_NOOP("LimitText", "change within 12 hours")},
    NameEntry{"tenths", QT_TRANSLATE_NOOP("LimitText", "times running, read to tenths")},
    NameEntry{"halves", QT_TRANSLATE_NOOP("LimitText", "times running, read to half degrees")},
    NameEntry{"wholes", QT_TRANSLATE_NOOP("LimitText", "times running, read to whole degrees")},
    NameEntry{"gap-hours", QT_TRANSLATE_NOOP("LimitText", "a gap longer than this ends the run")},
    NameEntry{"fewest", QT_TRANSLATE_NOOP("LimitText", "only with at least")},
    NameEntry{"chi-square", QT_TRANSLATE_NOOP("LimitText", "how uneven the figures are (chi-square)")},
    NameEntry{"fewest-tenths", QT_TRANSLATE_NOOP("LimitText", "equal readings, read to tenths")},
    NameEntry{"fewest-coarse", QT_TRANSLATE_NOOP("LimitText", "equal readings, read more coarsely")},
    NameEntry{"minutes", QT_TRANSLATE_NOOP("LimitText", "by more than")},
    NameEntry{"spread", QT_TRANSLATE_NOOP("LimitText", "how far outside the middle half, in widths of it")},
    NameEntry{"years", QT_TRANSLATE_NOOP("LimitText", "only with at least")},
    NameEntry{"fog-but-dry.humidity", QT_TRANSLATE_NOOP("LimitText", "ask below a humidity of")},
    NameEntry{"rain-but-dry.humidity", QT_TRANSLATE_NOOP("LimitText", "note below a humidity of")},
    NameEntry{"fine-but-saturated.humidity", QT_TRANSLATE_NOOP("LimitText", "ask from a humidity of")},
    NameEntry{"max-min.tolerance", QT_TRANSLATE_NOOP("LimitText", "by more than")},
    NameEntry{"max-min.hours", QT_TRANSLATE_NOOP("LimitText", "also the next maximum and minimum within")},
    NameEntry{"days-missing", QT_TRANSLATE_NOOP("LimitText", "no mean with so many days missing")},
    NameEntry{"days-in-a-row", QT_TRANSLATE_NOOP("LimitText", "no mean with so many missing in a row")},
    NameEntry{"damp-day", QT_TRANSLATE_NOOP("LimitText", "count days at or above a humidity of")},
    NameEntry{"dry-day", QT_TRANSLATE_NOOP("LimitText", "count days at or below a humidity of")},
    NameEntry{"read-right", QT_TRANSLATE_NOOP("LimitText", "mark where belief in the reading falls below")},
};

struct PhraseEntry {
    std::string_view phrase;
    const char* words;
};

constexpr std::array kUnits{
    PhraseEntry{"readings", QT_TRANSLATE_NOOP("LimitText", "readings")},
    PhraseEntry{"days", QT_TRANSLATE_NOOP("LimitText", "days")},
    PhraseEntry{"years", QT_TRANSLATE_NOOP("LimitText", "years")},
    PhraseEntry{"h", QT_TRANSLATE_NOOP("LimitText", "h")},
    PhraseEntry{"min", QT_TRANSLATE_NOOP("LimitText", "min")},
    PhraseEntry{"degrees", "°"},
    PhraseEntry{"interquartile ranges", QT_TRANSLATE_NOOP("LimitText", "widths")},
};

constexpr std::array kSources{
    PhraseEntry{"common practice, no source", QT_TRANSLATE_NOOP("LimitText", "common practice, no source")},
    PhraseEntry{"WMO-No. 1203, from memory", QT_TRANSLATE_NOOP("LimitText", "WMO-No. 1203, from memory")},
    PhraseEntry{"our judgement", QT_TRANSLATE_NOOP("LimitText", "our judgement")},
    PhraseEntry{"computed", QT_TRANSLATE_NOOP("LimitText", "computed")},
};

template <typename Table>
QString phrase(const Table& table, std::string_view text) {
    for (const auto& entry : table) {
        if (entry.phrase == text) {
            return LimitText::tr(entry.words);
        }
    }
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace

std::string_view ruleOfLimit(std::string_view name) {
    return name.substr(0, name.find('.'));
}

LimitRuleWords limitRuleWords(std::string_view rule) {
    for (const RuleEntry& entry : kRules) {
        if (entry.rule == rule) {
            return {LimitText::tr(entry.title), LimitText::tr(entry.does)};
        }
    }
    const QString code = QString::fromUtf8(rule.data(), static_cast<qsizetype>(rule.size()));
    return {code, {}};
}

QString limitNameWords(std::string_view name) {
    const std::string_view limit = name.substr(std::min(name.find('.') + 1, name.size()));
    for (const std::string_view wanted : {name, limit}) {
        for (const NameEntry& entry : kNames) {
            if (entry.limit == wanted) {
                return LimitText::tr(entry.words);
            }
        }
    }
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

double shownLimit(const checks::LimitEntry& entry, double value, units::TemperatureUnit unit) {
    if (unit == units::TemperatureUnit::Fahrenheit) {
        if (entry.unit == "°C") {
            return value * 1.8 + 32;
        }
        if (entry.unit == "K") {
            return value * 1.8;
        }
    }
    return value;
}

double limitFromShown(const checks::LimitEntry& entry, double shown, units::TemperatureUnit unit) {
    if (unit == units::TemperatureUnit::Fahrenheit) {
        if (entry.unit == "°C") {
            return (shown - 32) / 1.8;
        }
        if (entry.unit == "K") {
            return shown / 1.8;
        }
    }
    return shown;
}

QString limitUnitWords(const checks::LimitEntry& entry, units::TemperatureUnit unit) {
    return entry.unit == "°C" || entry.unit == "K" ? unitWords(unit) : phrase(kUnits, entry.unit);
}

QString limitSourceWords(std::string_view source) {
    return phrase(kSources, source);
}

} // namespace wickbook::ui
