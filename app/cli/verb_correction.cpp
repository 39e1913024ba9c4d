// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/fact_changes.h"
#include "app/cli/options.h"
#include "app/cli/verb_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <memory>

namespace wickbook::cli {

namespace {

struct CorrectionOptions {
    FactOptions facts;
    std::string thermometer, from, uncertainty, source;
    std::vector<std::string> points;
    bool takeBack = false;
};

/// A thermometer further off is broken or misread, in degrees of its scale.
constexpr double kMostCorrection = 10.0;

/// "20=-0.15".
Outcome<record::CorrectionPoint> pointFrom(const std::string& text) {
    const auto sign = text.find('=');
    if (sign == std::string::npos || sign == 0) {
        return refuse(fmt::format("--point {}: write it as READING=ADD, such as 20=-0.15.", text));
    }
    const auto reading = realFrom("--point", text.substr(0, sign));
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    const auto add = realFrom("--point", text.substr(sign + 1));
    if (!add) {
        return tl::unexpected(add.error());
    }
    if (std::abs(*add) > kMostCorrection) {
        return refuse(fmt::format(
            "--point {}: a correction of more than 10 degrees is that of a broken thermometer.", text));
    }
    return record::CorrectionPoint{*reading, *add};
}

Outcome<std::vector<record::CorrectionPoint>> pointsFrom(const std::vector<std::string>& texts) {
    if (texts.empty()) {
        return refuse("Give at least one --point READING=ADD: a reading, and what to add to it.");
    }
    std::vector<record::CorrectionPoint> points;
    for (const std::string& text : texts) {
        const auto point = pointFrom(text);
        if (!point) {
            return tl::unexpected(point.error());
        }
        points.push_back(*point);
    }
    std::ranges::stable_sort(points, {}, &record::CorrectionPoint::reading);
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (points[i].reading == points[i - 1].reading) {
            return refuse(
                fmt::format("Two points stand at the reading {}; leave one of them out.", points[i].reading));
        }
    }
    return points;
}

Outcome<ExitCode> takenBack(OpenedBook& opened, const record::Uuid& thermometer,
                            const std::optional<record::Instant>& from, const CorrectionOptions& options) {
    record::StationFacts after = opened.station.facts();
    const auto erased = std::erase_if(after.corrections, [&](const record::Correction& correction) {
        return correction.thermometer == thermometer && correction.from == from;
    });
    if (erased == 0) {
        return refuse(fmt::format("{} has no correction from {}.", options.thermometer,
                                  options.from.empty() ? "the beginning" : options.from));
    }
    return keepFacts(opened, after, options.facts,
                     fmt::format("The correction of {} is taken back.", options.thermometer));
}

Outcome<ExitCode> correction(const CorrectionOptions& options) {
    if (options.takeBack && !options.points.empty()) {
        return refuse("Give points, or take a correction back with --take-back, not both at once.");
    }
    record::Correction made;
    if (!options.takeBack) {
        auto points = pointsFrom(options.points);
        if (!points) {
            return tl::unexpected(points.error());
        }
        made.points = std::move(*points);
        if (options.source.empty()) {
            return refuse("Say where the correction comes from with --source: a certificate, an ice point.");
        }
        made.source = options.source;
        if (!options.uncertainty.empty()) {
            const auto uncertainty =
                numberFrom("--uncertainty", options.uncertainty, 0, kMostCorrection, "degrees");
            if (!uncertainty) {
                return tl::unexpected(uncertainty.error());
            }
            made.standardUncertainty = *uncertainty;
        }
    }
    auto opened = openForFacts(options.facts);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const auto thermometer = thermometerNamed(opened->station, options.thermometer);
    if (!thermometer) {
        return tl::unexpected(thermometer.error());
    }
    const auto from = beginningFrom(options.from, opened->station);
    if (!from) {
        return tl::unexpected(from.error());
    }
    if (options.takeBack) {
        return takenBack(*opened, (*thermometer)->id, *from, options);
    }
    made.thermometer = (*thermometer)->id;
    made.from = *from;
    record::StationFacts after = opened->station.facts();
    const auto same = std::find_if(after.corrections.begin(), after.corrections.end(), [&](const auto& each) {
        return !each.withdrawn && each.thermometer == made.thermometer && each.from == made.from;
    });
    made.id = same == after.corrections.end() ? record::Uuid::random() : same->id;
    if (same == after.corrections.end()) {
        after.corrections.push_back(made);
    } else {
        *same = made;
    }
    return keepFacts(*opened, after, options.facts,
                     fmt::format("The correction of {} holds from {} on. What was read stays as it is.",
                                 options.thermometer, options.from.empty() ? "the beginning" : options.from));
}

} // namespace

VerbAction declareCorrection(OptionList command) {
    auto options = std::make_shared<CorrectionOptions>();
    options->facts.declare(command);
    command.needed("--thermometer", options->thermometer,
                   "Name of the thermometer, as wickbook instruments lists it");
    command.text(
        "--from", options->from,
        "Date it holds from, by the station's clock: 1994-05-01 (from the beginning). One of the same date "
        "is replaced");
    command.many("--point", options->points,
                 "READING=ADD in the thermometer's unit; given several times, linear between, level beyond");
    command.text("--uncertainty", options->uncertainty,
                 "Standard uncertainty, in the thermometer's unit (0)");
    command.text("--source", options->source, "Where it comes from: certificate, ice point");
    command.flag("--take-back", options->takeBack, "The correction of that date never was");
    return [options] { return correction(*options); };
}

} // namespace wickbook::cli
