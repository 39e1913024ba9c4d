// SPDX-License-Identifier: GPL-3.0-or-later
// Speaks our numbers to another program: one question a line on standard input, one answer a line on standard
// output, "none" and the error's name where there is no number.
//   saturation water|ice t        → e, hPa
//   dew e | frost e               → t, °C
//   pair exposure water|ice t w p → RH %, e hPa, dew point °C, absolute humidity g/m³, mixing ratio g/kg
//   pressure h                    → p, hPa
#include "core/psychrometry/derive.h"
#include "core/psychrometry/standard_atmosphere.h"

#include <cstdio>
#include <iostream>
#include <sstream>
#include <string>

using namespace wickbook::psychrometry;
using wickbook::units::Elevation;
using wickbook::units::Pressure;
using wickbook::units::Temperature;
using wickbook::units::VapourPressure;

namespace {

void sayNone(PsychrometryError error) {
    std::printf("none %s\n", std::string(name(error)).c_str());
}

template <typename Result, typename Value>
void say(const Result& result, Value value) {
    if (result) {
        std::printf("%.17g\n", value(*result));
    } else {
        sayNone(result.error());
    }
}

bool answerPair(std::istringstream& line) {
    std::string exposureName;
    std::string bulb;
    double t = 0;
    double w = 0;
    double p = 0;
    line >> exposureName >> bulb >> t >> w >> p;
    const auto exposure = exposureFromName(exposureName);
    if (!line || !exposure) {
        return false;
    }
    PairInput input;
    input.coefficient.exposure = *exposure;
    input.dry = Temperature::fromCelsius(t);
    input.wet = Temperature::fromCelsius(w);
    input.pressure = Pressure::fromHectopascals(p);
    input.wick = bulb == "ice" ? WickState::Ice : WickState::Water;
    const auto result = derive(input);
    if (!result.relativeHumidity || !result.dewPoint) {
        sayNone(result.problem ? *result.problem : *result.dewPointProblem);
        return true;
    }
    std::printf("%.17g %.17g %.17g %.17g %.17g\n", result.relativeHumidity->percent(),
                result.vapourPressure->hectopascals(), result.dewPoint->celsius(),
                result.absoluteHumidity.value(), result.mixingRatio.value());
    return true;
}

bool answer(std::istringstream& line) {
    std::string question;
    line >> question;
    if (question == "pair") {
        return answerPair(line);
    }
    std::string surface = "water";
    if (question == "saturation") {
        line >> surface;
    }
    double value = 0;
    line >> value;
    if (!line) {
        return false;
    }
    const auto celsius = [](Temperature t) { return t.celsius(); };
    if (question == "saturation") {
        say(saturationVapourPressure(Temperature::fromCelsius(value),
                                     surface == "ice" ? Surface::Ice : Surface::Water),
            [](VapourPressure e) { return e.hectopascals(); });
    } else if (question == "dew") {
        say(dewPoint(VapourPressure::fromHectopascals(value)), celsius);
    } else if (question == "frost") {
        say(frostPoint(VapourPressure::fromHectopascals(value)), celsius);
    } else if (question == "pressure") {
        say(standardPressure(Elevation::fromMetres(value)), [](Pressure p) { return p.hectopascals(); });
    } else {
        return false;
    }
    return true;
}

} // namespace

int main() {
    for (std::string text; std::getline(std::cin, text);) {
        std::istringstream line(text);
        if (!answer(line)) {
            std::fprintf(stderr, "can't answer: %s\n", text.c_str());
            return 1;
        }
    }
    return 0;
}
