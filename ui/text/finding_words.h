// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/finding.h"
#include "core/checks/rule.h"

#include <QLocale>
#include <QString>

/// Sentences for what the checks say. One place per code; a test walks the rule table and the codes of
/// checkPair so that none is without words.

namespace wickbook::ui {

struct FindingWords {
    QString title;   ///< a few words, as heading of a marginal note: "Wet bulb above dry bulb"
    QString message; ///< what is wrong and why it matters, with the numbers
    QString remedy;  ///< what to do now
};

FindingWords findingWords(const QLocale& locale, const checks::Finding& finding, units::TemperatureUnit unit);

/// "dry bulb is 22.9, a figure too many was written" – the cause as a sentence; numbers as they would stand
/// in the register.
QString causeWords(const QLocale& locale, const checks::LikelyCause& cause, units::TemperatureUnit unit);

QString severityWords(checks::Severity severity);

} // namespace wickbook::ui
