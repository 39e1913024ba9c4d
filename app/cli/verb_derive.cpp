// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/derive_file.h"
#include "app/cli/derive_text.h"
#include "app/cli/options.h"
#include "app/cli/pair_result.h"
#include "app/cli/verb_table.h"
#include "core/psychrometry/ranges.h"
#include "core/psychrometry/standard_atmosphere.h"
#include "core/units/number_text.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace wickbook::cli {

namespace {

struct DeriveOptions {
    std::string dry, wet, exposure, wick, pressure, elevation, coefficient, resolution;
    std::string in, out, format;
    bool working = false;
    bool strict = false;
};

/// A coarser step is no thermometer for this; a finer one than a hundredth neither.
constexpr double kFinestStep = 0.001;
constexpr double kCoarsestStep = 5;

Outcome<PairDefaults> defaultsFrom(const DeriveOptions& options) {
    PairDefaults defaults;
    if (!options.exposure.empty()) {
        const auto exposure = exposureFrom(options.exposure);
        if (!exposure) {
            return tl::unexpected(exposure.error());
        }
        defaults.exposure = *exposure;
    }
    if (!options.wick.empty()) {
        const auto wick = wickFrom(options.wick);
        if (!wick) {
            return tl::unexpected(wick.error());
        }
        defaults.wick = *wick;
    }
    if (!options.coefficient.empty()) {
        const auto value = realFrom("--coefficient", options.coefficient);
        if (!value) {
            return tl::unexpected(value.error());
        }
        if (!psychrometry::isCoefficient(*value)) {
            return refuse(
                fmt::format("--coefficient {} can't be one: it is per kelvin, above 0 and at most {}, such "
                            "as 0.00066.",
                            options.coefficient, units::exactText(psychrometry::kHighestCoefficient)));
        }
        defaults.coefficient = *value;
    }
    if (!options.pressure.empty() && !options.elevation.empty()) {
        return refuse("Give --pressure or --elevation, not both: the pressure read is the better one.");
    }
    if (!options.pressure.empty()) {
        const auto value = realFrom("--pressure", options.pressure);
        if (!value) {
            return tl::unexpected(value.error());
        }
        defaults.pressure = *value;
    }
    if (!options.elevation.empty()) {
        const auto elevation = elevationFrom(options.elevation);
        if (!elevation) {
            return tl::unexpected(elevation.error());
        }
        const auto pressure = psychrometry::standardPressure(*elevation);
        if (!pressure) {
            return refuse(fmt::format("--elevation {}: the standard atmosphere gives no pressure there; give "
                                      "--pressure.",
                                      options.elevation));
        }
        defaults.fromElevation = *pressure;
    }
    if (!options.resolution.empty()) {
        const auto step = numberFrom("--resolution", options.resolution, kFinestStep, kCoarsestStep, "°C");
        if (!step) {
            return tl::unexpected(step.error());
        }
        defaults.resolution = *step;
    }
    return defaults;
}

Outcome<ExitCode> derivePair(const DeriveOptions& options, const PairDefaults& defaults) {
    const auto format = formatFrom(options.format.empty() ? "text" : options.format);
    if (!format) {
        return tl::unexpected(format.error());
    }
    if (options.working && *format != Format::Text) {
        return refuse("--working is for reading: leave --format away, or leave --working away.");
    }
    if (options.dry.empty() || options.wet.empty()) {
        return refuse("Give --dry and --wet in °C, or --in with a file of pairs.");
    }
    if (!defaults.exposure && !defaults.coefficient) {
        return refuse(
            fmt::format("Say how the thermometers hang, --exposure with one of {}, or give --coefficient: "
                        "the same pair means another humidity in another instrument.",
                        exposureNames(false)));
    }
    if (defaults.exposure == psychrometry::Exposure::Own && !defaults.coefficient) {
        return refuse("The exposure \"own\" needs the coefficient you fitted: give --coefficient.");
    }
    const auto dry = realFrom("--dry", options.dry);
    if (!dry) {
        return tl::unexpected(dry.error());
    }
    const auto wet = realFrom("--wet", options.wet);
    if (!wet) {
        return tl::unexpected(wet.error());
    }
    PairResult result = preparedResult(defaults);
    result.input.dry = units::Temperature::fromCelsius(*dry);
    result.input.wet = units::Temperature::fromCelsius(*wet);
    deriveInto(result);

    auto output = Output::open(options.out.empty() ? "-" : options.out);
    if (!output) {
        return tl::unexpected(output.error());
    }
    switch (*format) {
    case Format::Text:
        output->text(pairText(result));
        if (options.working) {
            output->text(workingText(result));
        }
        break;
    case Format::Json:
        output->json(resultJson(result));
        break;
    case Format::Csv:
        output->csv(resultHeader());
        output->csv(resultRow(result));
        break;
    }
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    return options.strict && !result.findings.empty() ? ExitCode::Found : ExitCode::Done;
}

Outcome<ExitCode> derive(const DeriveOptions& options) {
    const auto defaults = defaultsFrom(options);
    if (!defaults) {
        return tl::unexpected(defaults.error());
    }
    if (options.in.empty()) {
        return derivePair(options, *defaults);
    }
    if (!options.dry.empty() || !options.wet.empty()) {
        return refuse("Give --dry and --wet, or --in, not both.");
    }
    if (options.working) {
        return refuse("--working shows one pair: give --dry and --wet instead of --in.");
    }
    if (!options.format.empty() && options.format != "csv") {
        return refuse("A file of pairs is answered as CSV: leave --format away.");
    }
    return deriveFile(options.in, options.out.empty() ? "-" : options.out, *defaults, options.strict);
}

} // namespace

VerbAction declareDerive(OptionList command) {
    auto options = std::make_shared<DeriveOptions>();
    command.text("--dry", options->dry, "Dry bulb, °C; point or comma");
    command.text("--wet", options->wet, "Wet bulb, °C");
    command.text("--exposure", options->exposure, "How the thermometers hang: " + exposureNames(true));
    command.text("--wick", options->wick,
                 "water or ice: what the wick held; needed at a wet bulb of 0 °C and below");
    command.text("--pressure", options->pressure, "Station pressure, hPa (not reduced to sea level)");
    command.text("--elevation", options->elevation,
                 "Metres above the sea, for the standard atmosphere's pressure");
    command.text("--coefficient", options->coefficient,
                 "Psychrometer coefficient per kelvin instead of the exposure's own");
    command.text("--resolution", options->resolution, "Scale step of the thermometers, °C (0.1)");
    command.text("--in", options->in,
                 "CSV file of pairs with columns dry_c, wet_c and, if known, pressure_hpa, wick, exposure, "
                 "coefficient_per_k; the options above fill in what it leaves out");
    command.text("--out", options->out, "File for the answer (standard output)");
    command.text("--format", options->format, "text, json or csv (text)");
    command.flag("--working", options->working, "Show the equation with the numbers, and the budget of ±");
    command.flag("--strict", options->strict, "Exit code 1 where there is any finding, notes included");
    return [options] { return derive(*options); };
}

} // namespace wickbook::cli
