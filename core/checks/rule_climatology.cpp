// SPDX-License-Identifier: GPL-3.0-or-later
// climatology: outside p25 − 3 IQR … p75 + 3 IQR of the station's own readings of this month and hour, where
// three years or more are known (common practice, no source). Soft. A quartile range narrower than one scale
// step is taken as one step. Arguments: what "temperature" / "dew-point"; value °C; low and high °C, the
// range passed; years.
#include "core/checks/rule_support.h"
#include "core/checks/rules.h"

#include <algorithm>

namespace wickbook::checks::rules {

void climatology(const ReadingContext& context, Findings& findings) {
    if (!context.average || context.average->years < context.limits.value("climatology.years")) {
        return;
    }
    const climate::StationAverage& average = *context.average;
    const double spread = context.limits.value("climatology.spread");
    const double step = coarserStep(context.reading);
    const auto check = [&](std::string_view what, std::optional<double> value, double lower, double upper) {
        const double reach = spread * std::max(upper - lower, step);
        if (value && (*value < lower - reach || *value > upper + reach)) {
            findings.push_back({"climatology",
                                Severity::Soft,
                                Root::Season,
                                {{"what", std::string{what}},
                                 {"value", *value},
                                 {"low", lower - reach},
                                 {"high", upper + reach},
                                 {"years", static_cast<double>(average.years)}},
                                {}});
        }
    };
    check("temperature", dryCelsius(context.reading), average.lowerQuartileTemperature,
          average.upperQuartileTemperature);
    check("dew-point", context.reading.dewPointCelsius(), average.lowerQuartileDewPoint,
          average.upperQuartileDewPoint);
}

} // namespace wickbook::checks::rules
