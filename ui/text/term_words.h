// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/climate/month_summary.h"
#include "core/record/derived_reading.h"

#include <QString>
#include <QStringList>

/// Names of states and choices as the person sees them.

namespace wickbook::ui {

QString exposureWords(psychrometry::Exposure exposure);     ///< "louvred screen"
QString exposureExplained(psychrometry::Exposure exposure); ///< a sentence for the choice
QString wickWords(record::WickState wick);                  ///< "water", "ice", ""
QString weatherWords(record::Weather weather);
QString weatherSetWords(const std::optional<record::WeatherSet>& weather); ///< "fog, rime", "none", ""
QString originWords(record::Origin origin);
QString qualityWords(record::Quality quality);
QString hourRuleWords(record::HourRule rule);
QString pressureSourceWords(record::PressureSource source); ///< "read", "station mean", "from elevation"
/// Why a mean is not given, by the rule in force.
QString withheldWords(climate::Withheld withheld, const climate::CompletenessRule& rule = {});
QString inventedWords();                                    ///< "invented station" mark
/// Cautions of the trade, one paragraph each: whirling, glass and mercury, ice and ladders, what the numbers
/// are not for.
QStringList cautionWords();

} // namespace wickbook::ui
