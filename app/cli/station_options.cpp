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
    if (!required) {
        command.text("--own-water", ownWater,
                     "The station's own coefficient over water, per kelvin, such as 7.3e-4");
        command.text("--own-ice", ownIce, "The same over ice, with --own-water");
        command.text("--own-uncertainty", ownUncertainty, "Its standard uncertainty, per cent of it");
        command.text("--mean-pressure", meanPressure,
                     "Mean pressure at the station, hPa, where none was read; 0: from the elevation again");
    }
    command.text("--hour-rule", hourRule,
                 std::string{"What the hours follow: utc, standard (the zone without summer time) or clock"} +
                     (required ? " (clock)" : ""));
}

bool StationOptions::anyGiven() const {
    const std::array<const std::string*, 9> all{&hours, &hourRule, &elevation, &latitude,    &longitude,
                                                &zone,  &exposure, &ownWater,  &meanPressure};
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
    const auto within = [](const char* option, double lowest, double highest, const char* unit) {
        return [=](const std::string& text) { return numberFrom(option, text, lowest, highest, unit); };
    };
    std::optional<double> water;
    std::optional<double> ice;
    std::optional<double> uncertainty;
    read(ownWater, within("--own-water", 1e-5, 5e-3, "per kelvin"), water);
    read(ownIce, within("--own-ice", 1e-5, 5e-3, "per kelvin"), ice);
    read(ownUncertainty, within("--own-uncertainty", 0, 100, "%"), uncertainty);
    if (meanPressure == "0") {
        change.meanPressure = 0;
    } else {
        read(meanPressure, within("--mean-pressure", 300, 1100, "hPa"), change.meanPressure);
    }
    if (refusal) {
        return tl::unexpected(*refusal);
    }
    if ((ice || uncertainty) && !water) {
        return refuse("--own-ice and --own-uncertainty belong to --own-water: give it too.");
    }
    if (water) {
        if (change.exposure) {
            return refuse(
                "Give --exposure or --own-water, not both: an own coefficient is an exposure of its own.");
        }
        change.exposure = psychrometry::Exposure::Own;
        change.ownCoefficient = record::OwnCoefficient{
            *water, ice, uncertainty ? std::optional{*uncertainty / 100} : std::nullopt};
    }
    if (north || east) {
        change.position =
            record::Position{north.value_or(inForce.latitude), east.value_or(inForce.longitude)};
    }
    return change;
}

} // namespace wickbook::cli
