// SPDX-License-Identifier: GPL-3.0-or-later
// What the derivation itself reports of a pair:
//   out-of-range         a bulb outside −60…60 °C or a pressure outside 300…1100 hPa: doubtful, no humidity.
//                        Arguments: what "temperature" / "pressure"; value; low; high (°C or hPa).
//   coefficient-missing  the exposure "own" without a usable number: soft, for the reading itself is sound.
//                        No arguments.
//   dew-point-below-range  humidity exists, the dew point lies below −60 °C and is left out: a note.
//                        Arguments: limit °C.
//   extrapolated         below −20 °C over supercooled water every formula is extrapolated (up to 1.9 % at
//                        −50 °C against Murphy and Koop): a note. Arguments: limit °C.
#include "core/checks/rules.h"
#include "core/psychrometry/ranges.h"

namespace wickbook::checks::rules {

namespace {

constexpr double kExtrapolatedBelow = -20;

void outOfRange(const PairView& pair, Findings& findings) {
    using psychrometry::PsychrometryError;
    const auto problem = pair.derivation.problem;
    if (problem == PsychrometryError::PressureOutOfRange) {
        findings.push_back({"out-of-range",
                            Severity::Doubtful,
                            Root::Pressure,
                            {{"what", std::string{"pressure"}},
                             {"value", pair.input.pressure.hectopascals()},
                             {"low", psychrometry::kLowestHectopascals},
                             {"high", psychrometry::kHighestHectopascals}},
                            {}});
    } else if (problem == PsychrometryError::TemperatureOutOfRange ||
               problem == PsychrometryError::NoSolution || problem == PsychrometryError::BelowRange ||
               problem == PsychrometryError::AboveRange) {
        const bool dryIsOut = !psychrometry::isInRange(pair.input.dry);
        findings.push_back({"out-of-range",
                            Severity::Doubtful,
                            Root::Scale,
                            {{"what", std::string{"temperature"}},
                             {"value", (dryIsOut ? pair.input.dry : pair.input.wet).celsius()},
                             {"low", psychrometry::kLowestCelsius},
                             {"high", psychrometry::kHighestCelsius}},
                            {}});
    }
}

} // namespace

void derivationNotesPair(const PairView& pair, Findings& findings) {
    using psychrometry::PsychrometryError;
    outOfRange(pair, findings);
    if (pair.derivation.problem == PsychrometryError::CoefficientOutOfRange) {
        findings.push_back({"coefficient-missing", Severity::Soft, Root::None, {}, {}});
    }
    if (pair.derivation.dewPointProblem) {
        findings.push_back({"dew-point-below-range",
                            Severity::Note,
                            Root::None,
                            {{"limit", psychrometry::kLowestCelsius}},
                            {}});
    }
    if (pair.derivation.extrapolated) {
        findings.push_back({"extrapolated", Severity::Note, Root::None, {{"limit", kExtrapolatedBelow}}, {}});
    }
}

void derivationNotes(const ReadingContext& context, Findings& findings) {
    if (context.reading.derivation) {
        derivationNotesPair({context.reading.input, *context.reading.derivation, context.limits}, findings);
    }
}

} // namespace wickbook::checks::rules
