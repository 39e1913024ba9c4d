// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/finding_words.h"

#include "ui/text/finding_speech.h"
#include "ui/text/number_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <initializer_list>

namespace wickbook::ui {

namespace {

Speaker speakerOf(std::string_view code) {
    for (const auto family : {pairSpeech(), wickSpeech(), seriesSpeech(), rangeSpeech()}) {
        const auto found = std::find_if(family.begin(), family.end(),
                                        [&](const SpeechEntry& entry) { return entry.code == code; });
        if (found != family.end()) {
            return found->speaker;
        }
    }
    return nullptr;
}

} // namespace

QString FindingSpeech::temperature(std::string_view name) const {
    const auto value = finding_.number(name);
    const auto temperature = value ? std::optional{units::Temperature::fromCelsius(*value)} : std::nullopt;
    return temperatureWords(locale_, temperature, unit_) + kNoBreakSpace + unitWords(unit_);
}

QString FindingSpeech::difference(std::string_view name) const {
    const auto kelvins = units::TemperatureDifference::fromKelvins(raw(name));
    return differenceWords(locale_, kelvins, unit_) + kNoBreakSpace + unitWords(unit_);
}

QString FindingSpeech::size(std::string_view name) const {
    const auto kelvins = units::TemperatureDifference::fromKelvins(std::abs(raw(name)));
    return differenceWords(locale_, kelvins, unit_) + kNoBreakSpace + unitWords(unit_);
}

QString FindingSpeech::percent(std::string_view name) const {
    return percentWords(locale_, finding_.number(name));
}

QString FindingSpeech::pressure(std::string_view name) const {
    return numberWords(locale_, finding_.number(name), 0) + kNoBreakSpace + QStringLiteral("hPa");
}

QString FindingSpeech::number(std::string_view name, int decimals) const {
    return numberWords(locale_, finding_.number(name), decimals);
}

QString FindingSpeech::scaleReading(std::string_view name) const {
    const auto unit = is("unit", "F") ? units::TemperatureUnit::Fahrenheit : units::TemperatureUnit::Celsius;
    return numberWords(locale_, finding_.number(name), 1) + kNoBreakSpace + unitWords(unit);
}

QString FindingSpeech::word(std::string_view name) const {
    return QString::fromStdString(finding_.word(name).value_or(std::string{}));
}

bool FindingSpeech::is(std::string_view name, std::string_view value) const {
    return finding_.word(name) == value;
}

QString FindingSpeech::bulb(std::string_view name) const {
    return is(name, "wet") ? FindingText::tr("wet bulb") : FindingText::tr("dry bulb");
}

FindingWords findingWords(const QLocale& locale, const checks::Finding& finding,
                          units::TemperatureUnit unit) {
    if (const Speaker speaker = speakerOf(finding.code)) {
        return speaker(FindingSpeech{locale, finding, unit});
    }
    // A code from a rule that has no words yet still says which rule it was; a test keeps this from
    // happening.
    const QString code = QString::fromUtf8(finding.code.data(), static_cast<qsizetype>(finding.code.size()));
    return {code, code, FindingText::tr("Read again.")};
}

QString severityWords(checks::Severity severity) {
    switch (severity) {
    case checks::Severity::Note:
        return FindingText::tr("note");
    case checks::Severity::Soft:
        return FindingText::tr("to confirm");
    case checks::Severity::Doubtful:
        return FindingText::tr("doubtful");
    case checks::Severity::Erroneous:
        return FindingText::tr("erroneous");
    case checks::Severity::Impossible:
        return FindingText::tr("impossible");
    }
    return {};
}

} // namespace wickbook::ui
