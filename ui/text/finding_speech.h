// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/text/finding_words.h"

#include <QCoreApplication>

#include <span>

/// What the sentences of finding_words_*.cpp are built from: the finding's numbers, dressed for this locale
/// and unit. Private to ui/text.

namespace wickbook::ui {

class FindingSpeech {
public:
    FindingSpeech(const QLocale& locale, const checks::Finding& finding, units::TemperatureUnit unit)
        : locale_(locale), finding_(finding), unit_(unit) {}

    [[nodiscard]] QString
    temperature(std::string_view name) const; ///< argument in °C, said in the station's unit
    [[nodiscard]] QString difference(std::string_view name) const; ///< argument in K, said in scale degrees
    [[nodiscard]] QString size(std::string_view name) const;       ///< the same without its sign
    [[nodiscard]] QString percent(std::string_view name) const;
    [[nodiscard]] QString pressure(std::string_view name) const;
    [[nodiscard]] QString number(std::string_view name, int decimals = 0) const;
    [[nodiscard]] QString scaleReading(std::string_view name) const; ///< as read, in the finding's own "unit"
    [[nodiscard]] QString word(std::string_view name) const;
    [[nodiscard]] bool is(std::string_view name, std::string_view value) const;
    [[nodiscard]] bool has(std::string_view name) const { return finding_.number(name).has_value(); }
    [[nodiscard]] double raw(std::string_view name) const { return finding_.number(name).value_or(0); }
    /// "dry bulb" or "wet bulb" after the argument "bulb".
    [[nodiscard]] QString bulb(std::string_view name = "bulb") const;
    [[nodiscard]] checks::Severity severity() const { return finding_.severity; }

private:
    const QLocale& locale_;
    const checks::Finding& finding_;
    units::TemperatureUnit unit_;
};

using Speaker = FindingWords (*)(const FindingSpeech&);
struct SpeechEntry {
    std::string_view code;
    Speaker speaker;
};

/// One table per family of rules.
std::span<const SpeechEntry> pairSpeech();
std::span<const SpeechEntry> wickSpeech();
std::span<const SpeechEntry> seriesSpeech();
std::span<const SpeechEntry> rangeSpeech();

/// The context in which the sentences of findings are translated.
struct FindingText {
    Q_DECLARE_TR_FUNCTIONS(FindingText)
};

} // namespace wickbook::ui
