// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/beside_result.h"
#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/fact_changes.h"
#include "app/cli/input.h"
#include "app/cli/options.h"
#include "app/cli/verb_table.h"
#include "core/exchange/beside_file.h"
#include "ui/text/error_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

namespace wickbook::cli {

namespace {

struct BesideOptions {
    std::string book, name, in, purpose, from, to, uncertainty, exposure, pressure, elevation, decision,
        useFrom, why, format = "text";
    bool join = false;
};

constexpr double kMostUncertainty = 20; ///< % RH: beyond it nothing is a reference

Outcome<exchange::BesideFile> readingsFrom(const std::string& path, const record::StationRecord& station) {
    auto input = Input::open(path);
    if (!input) {
        return tl::unexpected(input.error());
    }
    auto file = exchange::readBesideFile(input->stream(), input->name(), station);
    if (!file) {
        return refuse(ui::importErrorWords(file.error()).toStdString());
    }
    for (const exchange::RejectedLine& line : file->rejected) {
        say(ui::rejectWords(line));
    }
    return std::move(*file);
}

/// What was given, laid over what the book has.
Outcome<record::SideBySide> announced(record::SideBySide other, bool isNew, const BesideOptions& options) {
    if (!options.purpose.empty()) {
        const auto purpose = record::besidePurposeFromName(options.purpose);
        if (!purpose) {
            return refuse(fmt::format("--purpose {}: it is reference or overlap.", options.purpose));
        }
        other.purpose = *purpose;
    }
    if (!options.from.empty()) {
        const auto from = dateFrom("--from", options.from);
        if (!from) {
            return tl::unexpected(from.error());
        }
        other.from = *from;
    } else if (isNew) {
        return refuse(fmt::format(
            "\"{}\" is not in the book yet: say with --from since when it stands there.", other.name));
    }
    if (!options.to.empty()) {
        const auto to = dateFrom("--to", options.to);
        if (!to) {
            return tl::unexpected(to.error());
        }
        if (*to < other.from) {
            return refuse(fmt::format("--to {} lies before its first day.", options.to));
        }
        other.to = *to;
    }
    if (!options.uncertainty.empty()) {
        const auto uncertainty =
            numberFrom("--uncertainty", options.uncertainty, 0, kMostUncertainty, "% RH");
        if (!uncertainty) {
            return tl::unexpected(uncertainty.error());
        }
        other.humidityUncertainty = *uncertainty;
    }
    if (!options.exposure.empty()) {
        const auto exposure = stationExposureFrom(options.exposure);
        if (!exposure) {
            return tl::unexpected(exposure.error());
        }
        other.exposure = *exposure;
    }
    if (!options.decision.empty()) {
        other.decision = options.decision;
    }
    return other;
}

/// Pairs that stand in the file with the reference's humidity: no book is needed.
Outcome<ExitCode> fileAlone(const BesideOptions& options, Format format) {
    if (options.exposure.empty()) {
        return refuse(
            fmt::format("Say how the station's thermometers hang: --exposure with one of {}, or --book.",
                        exposureNames(false)));
    }
    const auto exposure = stationExposureFrom(options.exposure);
    if (!exposure) {
        return tl::unexpected(exposure.error());
    }
    record::NewStation described;
    described.exposure = *exposure;
    if (!options.elevation.empty()) {
        const auto elevation = elevationFrom(options.elevation);
        if (!elevation) {
            return tl::unexpected(elevation.error());
        }
        described.elevation = *elevation;
    }
    record::StationFacts facts = record::factsOf(described, [] { return record::Uuid::random(); });
    if (!options.pressure.empty()) {
        const auto pressure = numberFrom("--pressure", options.pressure, 300, 1100, "hPa");
        if (!pressure) {
            return tl::unexpected(pressure.error());
        }
        facts.periods.front().meanPressure = *pressure;
    }
    const record::StationRecord station{std::move(facts)};
    record::SideBySide other;
    if (const auto read = announced(other, false,
                                    [&] {
                                        BesideOptions only;
                                        only.uncertainty = options.uncertainty;
                                        return only;
                                    }());
        read) {
        other = *read;
    } else {
        return tl::unexpected(read.error());
    }
    const auto file = readingsFrom(options.in, station);
    if (!file) {
        return tl::unexpected(file.error());
    }
    std::vector<comparison::ComparedPair> pairs;
    std::vector<record::Instant> moments;
    std::size_t lacking = 0;
    for (const record::BesideReading& reading : file->readings) {
        if (const auto pair = desk::pairBeside(reading, other, station, nullptr)) {
            pairs.push_back(*pair);
            moments.push_back(reading.instant);
        } else {
            ++lacking;
        }
    }
    if (lacking > 0) {
        say(fmt::format(
            "{} {} without a pair of the station's that gives a humidity (columns dry and wet) and "
            "{} left out.",
            lacking, lacking == 1 ? "line is" : "lines are", lacking == 1 ? "is" : "are"));
    }
    const double common = other.humidityUncertainty.value_or(0);
    if (const auto written = writeBesideReference(
            format, comparison::compareWithReference(pairs),
            comparison::fitCoefficient(pairs, psychrometry::Surface::Water, common),
            comparison::fitCoefficient(pairs, psychrometry::Surface::Ice, common), moments);
        !written) {
        return tl::unexpected(written.error());
    }
    return ExitCode::Done;
}

Outcome<void> store(OpenedBook& opened, const record::StationFacts& after, const std::string& why) {
    if (after == opened.station.facts()) {
        return {};
    }
    if (const auto stored = opened.book.reviseFacts(after, {accountName(), why}); !stored) {
        return refuse(stored.error());
    }
    opened.station = record::StationRecord{after};
    return {};
}

Outcome<void> takeIn(OpenedBook& opened, record::StationFacts& facts, const record::SideBySide& other,
                     const BesideOptions& options) {
    auto file = readingsFrom(options.in, opened.station);
    if (!file) {
        return tl::unexpected(file.error());
    }
    auto selected = desk::selectBeside(opened.book, opened.station, other.id, std::move(file->readings));
    if (!selected) {
        return refuse(selected.error());
    }
    say(fmt::format(
        "{} readings came in; {} have no reading of the station within five minutes, {} were there already.",
        selected->taken.size(), selected->leftAside, selected->known));
    facts.besideReadings.insert(facts.besideReadings.end(), selected->taken.begin(), selected->taken.end());
    return {};
}

/// The fitted coefficient becomes the station's own from a date on; refused with the reasons where the
/// evidence is thin.
Outcome<void> use(OpenedBook& opened, const desk::BesideReferenceAnswer& answer,
                  const BesideOptions& options) {
    if (options.why.empty()) {
        return refuse("Say why with --why: the reason is kept with the coefficient.");
    }
    const auto from = dateFrom("--use-from", options.useFrom);
    if (!from) {
        return tl::unexpected(from.error());
    }
    if (!answer.water.usable()) {
        return refuse("The evidence is not enough to use this coefficient; the reasons stand above.");
    }
    record::PeriodChange change;
    change.id = record::Uuid::random();
    change.from = record::startOfDate(*from, opened.station);
    change.exposure = psychrometry::Exposure::Own;
    change.ownCoefficient.emplace();
    change.ownCoefficient->waterPerKelvin = answer.water.fit->slope.value;
    change.ownCoefficient->relativeUncertainty = answer.water.relativeUncertainty;
    if (answer.ice.usable()) {
        change.ownCoefficient->icePerKelvin = answer.ice.fit->slope.value;
    }
    record::StationFacts after = opened.station.facts();
    after.periods.push_back(change);
    if (const auto kept = store(opened, after, options.why); !kept) {
        return kept;
    }
    say(fmt::format("From {} on this is the station's own coefficient.", options.useFrom));
    return {};
}

/// The record goes on across the change that the overlap was about; refused where it does not say so.
Outcome<void> joinRecords(OpenedBook& opened, const record::SideBySide& other,
                          const comparison::Overlap& overlap, const BesideOptions& options) {
    if (options.why.empty()) {
        return refuse("Say why with --why: the reason is kept with the joined record.");
    }
    if (overlap.verdict != comparison::JoinVerdict::Alike) {
        return refuse(
            "The overlap does not say that the records may be joined; its numbers do without --join.");
    }
    const auto change = desk::changeAfterOverlap(opened.station, other);
    if (!change) {
        return refuse(
            "There is no change of place or exposure yet; write it down with wickbook period, then join.");
    }
    record::StationFacts after = opened.station.facts();
    for (record::PeriodChange& each : after.periods) {
        each.joined = each.joined || each.id == change->id;
    }
    return store(opened, after, options.why);
}

Outcome<ExitCode> withBook(const BesideOptions& options, Format format) {
    if (options.name.empty()) {
        return refuse("Say with --name which instrument it is.");
    }
    const bool changing = !options.in.empty() || !options.purpose.empty() || !options.from.empty() ||
                          !options.to.empty() || !options.uncertainty.empty() || !options.exposure.empty() ||
                          !options.decision.empty() || !options.useFrom.empty() || options.join;
    auto opened = changing ? openToWrite(options.book) : openToRead(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    record::StationFacts facts = opened->station.facts();
    auto known = std::find_if(facts.sideBySides.begin(), facts.sideBySides.end(),
                              [&](const auto& each) { return !each.withdrawn && each.name == options.name; });
    const bool isNew = known == facts.sideBySides.end();
    if (isNew && !changing) {
        return refuse(fmt::format("There is no comparison with \"{}\" in the book.", options.name));
    }
    record::SideBySide start;
    if (isNew) {
        start.id = record::Uuid::random();
        start.name = options.name;
    } else {
        start = *known;
    }
    const auto other = announced(start, isNew, options);
    if (!other) {
        return tl::unexpected(other.error());
    }
    if (isNew) {
        facts.sideBySides.push_back(*other);
    } else {
        *known = *other;
    }
    if (!options.in.empty()) {
        if (const auto came = takeIn(*opened, facts, *other, options); !came) {
            return tl::unexpected(came.error());
        }
    }
    if (const auto kept = store(*opened, facts, options.why); !kept) {
        return tl::unexpected(kept.error());
    }
    if (other->purpose == record::BesidePurpose::Overlap) {
        const auto answer = desk::besideOverlap(opened->book, opened->station, *other);
        if (!answer) {
            return refuse(answer.error());
        }
        if (options.join) {
            if (const auto joined = joinRecords(*opened, *other, answer->overlap, options); !joined) {
                return tl::unexpected(joined.error());
            }
        }
        if (const auto written = writeOverlap(format, answer->overlap); !written) {
            return tl::unexpected(written.error());
        }
        return ExitCode::Done;
    }
    const auto answer = desk::besideReference(opened->book, opened->station, *other);
    if (!answer) {
        return refuse(answer.error());
    }
    std::vector<record::Instant> moments;
    for (const record::BesideReading& reading : answer->readings) {
        moments.push_back(reading.instant);
    }
    if (const auto written =
            writeBesideReference(format, answer->spread, answer->water, answer->ice, moments);
        !written) {
        return tl::unexpected(written.error());
    }
    if (!options.useFrom.empty()) {
        if (const auto used = use(*opened, *answer, options); !used) {
            return tl::unexpected(used.error());
        }
    }
    return ExitCode::Done;
}

Outcome<ExitCode> beside(const BesideOptions& options) {
    const auto format = formatFrom(options.format);
    if (!format) {
        return tl::unexpected(format.error());
    }
    if (!options.book.empty()) {
        return withBook(options, *format);
    }
    if (options.in.empty()) {
        return refuse("Give the readings with --in FILE, or a book with --book and --name.");
    }
    return fileAlone(options, *format);
}

} // namespace

VerbAction declareBeside(OptionList command) {
    auto options = std::make_shared<BesideOptions>();
    command.text("--in", options->in,
                 "CSV of the other instrument, or -: time, rh (or other_dry, other_wet, other_wick), "
                 "temperature, wind, "
                 "and where the register has no reading dry, wet, wick, pressure");
    command.text("--book", options->book,
                 "The book: its readings within five minutes stand beside those of the file");
    command.text("--name", options->name, "Which instrument; a new one needs --from");
    command.text("--purpose", options->purpose,
                 "reference, or overlap: it will follow the station's (reference)");
    command.text("--from", options->from, "First day: 2026-11-01");
    command.text("--to", options->to, "Last day, as announced");
    command.text("--uncertainty", options->uncertainty,
                 "Standard uncertainty common to the reference's readings, % RH");
    command.text("--exposure", options->exposure,
                 "With a book: how the other pair hangs; without: how the station's does: " +
                     exposureNames(false));
    command.text("--pressure", options->pressure,
                 "Without a book: station pressure where a line has none, hPa");
    command.text("--elevation", options->elevation, "Without a book: metres above the sea, for the pressure");
    command.text("--decision", options->decision, "What was decided at the end, kept with the comparison");
    command.text(
        "--use-from", options->useFrom,
        "The fitted coefficient is the station's own from this date on, with --why; refused where the "
        "evidence is thin");
    command.flag("--join", options->join,
                 "The overlap agrees: the record goes on across the change of place or exposure, with --why");
    command.text("--why", options->why, "Reason, kept with what is written");
    command.text("--format", options->format, "text, json (every number) or csv (each pair) (text)");
    return [options] { return beside(*options); };
}

} // namespace wickbook::cli
