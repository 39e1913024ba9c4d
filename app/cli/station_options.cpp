// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/station_options.h"

#include "app/cli/options.h"

#include <algorithm>
#include <array>

namespace wickbook::cli {

void StationOptions::declare(OptionList& command, bool required) {
    const auto declareOne = [&](const std::string& name, std::string& target, const std::string& help) {
        required ? command.needed(name, target, help) : command.text(name, target, help);
    };
    declareOne("--elevation", elevation, "Metres above the sea");
    declareOne("--latitude", latitude, "Degrees, north positive");
    declareOne("--longitude", longitude, "Degrees, east positive");
    declareOne("--zone", zone, "Time zone, such as Europe/London or UTC");
    declareOne("--hours", hours, "Observing hours, such as 09:00,21:00");
    declareOne("--exposure", exposure, "How the thermometers hang: " + exposureNames(false));
    command.text("--hour-rule", hourRule,
                 std::string{"What the hours follow: utc, standard (the zone without summer time) or clock"} +
                     (required ? " (clock)" : ""));
}

bool StationOptions::anyGiven() const {
    const std::array<const std::string*, 7> all{&hours,     &hourRule, &elevation, &latitude,
                                                &longitude, &zone,     &exposure};
    return std::any_of(all.begin(), all.end(), [](const std::string* text) { return !text->empty(); });
}

Outcome<record::PeriodChange> StationOptions::change(const record::Position& inForce) const {
    record::PeriodChange change;
    std::optional<Refusal> refusal;
    // Each option is read once and the first that can't be is told.
    const auto read = [&](const std::string& text, auto parse, auto& target) {
        if (text.empty() || refusal) {
            return;
        }
        auto value = parse(text);
        if (!value) {
            refusal = value.error();
            return;
        }
        target = std::move(*value);
    };
    std::optional<double> north;
    std::optional<double> east;
    read(elevation, elevationFrom, change.elevation);
    read(latitude, latitudeFrom, north);
    read(longitude, longitudeFrom, east);
    read(
        zone, [](const std::string& text) { return zoneFrom(text).map([&](const auto&) { return text; }); },
        change.zone);
    read(hours, hoursFrom, change.hours);
    read(hourRule, hourRuleFrom, change.hourRule);
    read(exposure, stationExposureFrom, change.exposure);
    if (refusal) {
        return tl::unexpected(*refusal);
    }
    if (north || east) {
        change.position =
            record::Position{north.value_or(inForce.latitude), east.value_or(inForce.longitude)};
    }
    return change;
}

} // namespace wickbook::cli
