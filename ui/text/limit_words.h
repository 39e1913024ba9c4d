// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/limit_edit.h"
#include "core/desk/limit_preview.h"
#include "core/units/read_temperature.h"

#include <QLocale>
#include <QString>

#include <string_view>

/// Words for the limits of the checks: what each rule does, what each limit is, and why a value can't be. A
/// test walks the table of limits so that none is without words.

namespace wickbook::ui {

/// "very-dry" of "very-dry.lowest-humidity".
std::string_view ruleOfLimit(std::string_view name);

struct LimitRuleWords {
    QString title; ///< "Very dry air"
    QString does;  ///< what the rule does, for a beginner
};
LimitRuleWords limitRuleWords(std::string_view rule);

/// "humidity to query below", without its rule.
QString limitNameWords(std::string_view name);

/// A limit is kept in °C and K; where the thermometers read in °F it is shown in that.
double shownLimit(const checks::LimitEntry& entry, double value, units::TemperatureUnit unit);
double limitFromShown(const checks::LimitEntry& entry, double shown, units::TemperatureUnit unit);
/// "°C", "%", "readings", or nothing where it is a plain number.
QString limitUnitWords(const checks::LimitEntry& entry, units::TemperatureUnit unit);
/// "10 %", "−30 °C".
QString limitValueWords(const QLocale& locale, const checks::LimitEntry& entry, double value,
                        units::TemperatureUnit unit);
/// "0 to 100 %": what a station may set.
QString limitRangeWords(const QLocale& locale, const checks::LimitEntry& entry, units::TemperatureUnit unit);

/// Where a limit's source is a phrase of the table, the same in the person's language.
QString limitSourceWords(std::string_view source);

/// Why it can't be so and what can.
QString limitProblemWords(const QLocale& locale, const checks::LimitProblem& problem,
                          units::TemperatureUnit unit);

/// "12 of 730 readings would be judged otherwise: …"
QString limitPreviewWords(const desk::LimitPreview& preview);

} // namespace wickbook::ui
