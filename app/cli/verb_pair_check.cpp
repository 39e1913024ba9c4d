// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/console.h"
#include "app/cli/fact_changes.h"
#include "app/cli/options.h"
#include "app/cli/output.h"
#include "app/cli/verb_table.h"
#include "core/comparison/pair_in_bath.h"
#include "ui/text/instrument_words.h"

#include <fmt/format.h>

#include <array>
#include <memory>

namespace wickbook::cli {

namespace {

struct PairCheckOptions {
    FactOptions facts;
    std::string date, dryIce, wetIce, dryBath, wetBath, note;
    bool takeOver = false;
};

Outcome<record::PairCheck> checkFrom(const PairCheckOptions& options, const record::Thermometer& dry,
                                     const record::Thermometer& wet) {
    record::PairCheck check;
    check.id = record::Uuid::random();
    check.dry = dry.id;
    check.wet = wet.id;
    check.note = options.note;
    struct Field {
        const char* option;
        const std::string* text;
        std::optional<units::ReadTemperature>* target;
        units::TemperatureUnit unit;
    };
    const std::array fields{Field{"--dry-ice", &options.dryIce, &check.dryAtIce, dry.unit},
                            Field{"--wet-ice", &options.wetIce, &check.wetAtIce, wet.unit},
                            Field{"--dry-bath", &options.dryBath, &check.dryInBath, dry.unit},
                            Field{"--wet-bath", &options.wetBath, &check.wetInBath, wet.unit}};
    for (const Field& field : fields) {
        if (field.text->empty()) {
            continue;
        }
        const auto value = decimalFrom(field.option, *field.text);
        if (!value) {
            return tl::unexpected(value.error());
        }
        *field.target = units::ReadTemperature{*value, field.unit};
    }
    if (!check.dryAtIce && !check.wetAtIce && !(check.dryInBath && check.wetInBath)) {
        return refuse(
            "Give what at least one of them showed at the ice point (--dry-ice, --wet-ice), or both in the "
            "bath (--dry-bath, --wet-bath).");
    }
    return check;
}

Outcome<ExitCode> pairCheck(const PairCheckOptions& options) {
    const auto date = dateFrom("--date", options.date);
    if (!date) {
        return tl::unexpected(date.error());
    }
    auto opened = openForFacts(options.facts);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const record::Instant moment = record::startOfDate(*date, opened->station);
    const record::Thermometer* dry = opened->station.dryThermometerAt(moment);
    const record::Thermometer* wet = opened->station.wetThermometerAt(moment);
    if (dry == nullptr || wet == nullptr) {
        return refuse(
            "The book does not say which thermometers were in use then; write them down with wickbook "
            "thermometer --hang.");
    }
    auto check = checkFrom(options, *dry, *wet);
    if (!check) {
        return tl::unexpected(check.error());
    }
    check->date = *date;
    const auto verdict = comparison::judgePair(*check, *dry, *wet);
    if (options.takeOver && !verdict.dryAtIce && !verdict.wetAtIce) {
        return refuse(
            "Without an ice point there is nothing to take over: a difference alone does not say which "
            "thermometer errs.");
    }
    for (const QString& line : ui::pairVerdictWords(QLocale::c(), verdict)) {
        say(line);
    }
    record::StationFacts after = opened->station.facts();
    after.pairChecks.push_back(*check);
    if (options.takeOver) {
        const auto corrections =
            comparison::iceCorrections(opened->station, *check, "ice point of " + options.date);
        after.corrections.insert(after.corrections.end(), corrections.begin(), corrections.end());
    }
    return keepFacts(*opened, after, options.facts,
                     options.takeOver ? "The check is kept, and its ice points are corrections from then on."
                                      : "The check is kept; it changes no reading.");
}

} // namespace

VerbAction declarePairCheck(OptionList command) {
    auto options = std::make_shared<PairCheckOptions>();
    options->facts.declare(command);
    command.needed("--date", options->date,
                   "Day of the check: 2026-11-01; the pair in use then was in the bath");
    command.text("--dry-ice", options->dryIce, "Dry bulb's reading at the ice point");
    command.text("--wet-ice", options->wetIce, "Wet bulb's, without its wick");
    command.text("--dry-bath", options->dryBath, "Dry bulb's reading in the stirred bath of about 20 °C");
    command.text("--wet-bath", options->wetBath, "Wet bulb's, without its wick");
    command.text("--note", options->note, "Note");
    command.flag("--take-over", options->takeOver, "The ice points become corrections from that day on");
    return [options] { return pairCheck(*options); };
}

} // namespace wickbook::cli
