// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"
#include "core/units/read_temperature.h"

#include <QLocale>
#include <QString>

#include <optional>

/// Numbers as people read them: the locale's decimal mark, a real minus (U+2212), no groups, units after a
/// no-break space. Data files never come through here.

namespace wickbook::ui {

/// Between a number and its unit.
inline constexpr QChar kNoBreakSpace{0x00A0};

/// Fixed decimals; "–" (en dash) for a missing value.
QString numberWords(const QLocale& locale, std::optional<double> value, int decimals);
/// As read, with the digits that were written: "16.0", in a comma locale "16,0".
QString readWords(const QLocale& locale, const units::Decimal& value);
/// "16.0 °C", "61.5 °F".
QString readTemperatureWords(const QLocale& locale, const units::ReadTemperature& reading);
/// "below scale" where the column has gone into the bulb, "–" where nothing was read; without the unit.
QString bulbWords(const QLocale& locale, const record::BulbReading& bulb);
/// "°C" or "°F".
QString unitWords(units::TemperatureUnit unit);
/// A temperature in the unit given with decimals, without unit; "–" when missing.
QString temperatureWords(const QLocale& locale, std::optional<units::Temperature> temperature,
                         units::TemperatureUnit unit, int decimals = 1);
/// A length in scale degrees of the unit given.
QString differenceWords(const QLocale& locale, units::TemperatureDifference difference,
                        units::TemperatureUnit unit, int decimals = 1);
/// Whole per cent, "48 %"; "–" when missing.
QString percentWords(const QLocale& locale, std::optional<double> percent);
/// "± 2"; empty when missing. Rounded up to the last digit shown, so that it never promises too much.
QString plusMinusWords(const QLocale& locale, std::optional<double> u95, int decimals);

} // namespace wickbook::ui
