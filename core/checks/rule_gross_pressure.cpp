// SPDX-License-Identifier: GPL-3.0-or-later
// gross-pressure: a pressure read that can't be (WMO-No. 305, chapter 6), or one far from what the station's
// elevation makes usual (common practice, no source): often a value reduced to sea level.
// Arguments: value hPa; limit hPa, the one passed; usual hPa, the standard atmosphere at the elevation in
// force.
#include "core/checks/rules.h"
#include "core/psychrometry/standard_atmosphere.h"

#include <cmath>

namespace wickbook::checks::rules {

void grossPressure(const ReadingContext& context, Findings& findings) {
    const auto& values = context.reading.values();
    if (!values.pressure) {
        return;
    }
    const double pressure = values.pressure->toDouble();
    const auto usual = psychrometry::standardPressure(context.station.periodAt(values.instant).elevation);
    const auto limit = [&](std::string_view name) { return context.limits.value(name); };
    const auto add = [&](Severity severity, double passed) {
        Finding finding{
            "gross-pressure", severity, Root::Pressure, {{"value", pressure}, {"limit", passed}}, {}};
        if (usual) {
            finding.arguments.push_back({"usual", usual->hectopascals()});
        }
        findings.push_back(std::move(finding));
    };
    if (pressure < limit("gross-pressure.erroneous-low")) {
        add(Severity::Erroneous, limit("gross-pressure.erroneous-low"));
    } else if (pressure > limit("gross-pressure.erroneous-high")) {
        add(Severity::Erroneous, limit("gross-pressure.erroneous-high"));
    } else if (pressure < limit("gross-pressure.doubtful-low")) {
        add(Severity::Doubtful, limit("gross-pressure.doubtful-low"));
    } else if (pressure > limit("gross-pressure.doubtful-high")) {
        add(Severity::Doubtful, limit("gross-pressure.doubtful-high"));
    } else if (usual) {
        const double reach = limit("gross-pressure.from-usual");
        const double off = pressure - usual->hectopascals();
        if (std::abs(off) > reach) {
            add(Severity::Doubtful, usual->hectopascals() + (off > 0 ? reach : -reach));
        }
    }
}

} // namespace wickbook::checks::rules
