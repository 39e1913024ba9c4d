// SPDX-License-Identifier: GPL-3.0-or-later
// off-scale: a number outside the thermometer's engraved scale, kept as written (common practice, no source).
// Erroneous. A column that the observer marked as below the scale is an honest reading without a number:
// soft. Arguments: bulb "dry" / "wet"; side "above" / "below"; value as read and limit, the scale's last mark
// (both in unit, "C" / "F"), where there is a number and a thermometer is on record.
#include "core/checks/rules.h"

namespace wickbook::checks::rules {

namespace {

void checkBulb(std::string_view name, const record::BulbReading& read, const record::UsedBulb& used,
               const record::Thermometer* thermometer, Findings& findings) {
    if (!used.offScale) {
        return;
    }
    Finding finding{"off-scale", Severity::Erroneous, Root::Scale, {{"bulb", std::string{name}}}, {}};
    if (read.belowScale || !read.value) {
        finding.severity = Severity::Soft;
        finding.arguments.push_back({"side", std::string{"below"}});
        findings.push_back(std::move(finding));
        return;
    }
    const bool celsius = read.value->unit == units::TemperatureUnit::Celsius;
    const double value = read.value->value.toDouble();
    bool above = value > 0;
    if (thermometer != nullptr) {
        const auto inReadUnit = [&](const units::Decimal& mark) {
            const units::Temperature t = units::ReadTemperature{mark, thermometer->unit}.temperature();
            return celsius ? t.celsius() : t.fahrenheit();
        };
        const double low = inReadUnit(thermometer->lowestMark);
        const double high = inReadUnit(thermometer->highestMark);
        above = value > high;
        finding.arguments.push_back({"limit", above ? high : low});
    }
    finding.arguments.push_back({"side", std::string{above ? "above" : "below"}});
    finding.arguments.push_back({"value", value});
    finding.arguments.push_back({"unit", std::string{celsius ? "C" : "F"}});
    findings.push_back(std::move(finding));
}

} // namespace

void offScale(const ReadingContext& context, Findings& findings) {
    const auto& values = context.reading.values();
    checkBulb("dry", values.dry, context.reading.dry, context.station.dryThermometerAt(values.instant),
              findings);
    checkBulb("wet", values.wet, context.reading.wet, context.station.wetThermometerAt(values.instant),
              findings);
}

} // namespace wickbook::checks::rules
