// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/console.h"
#include "app/cli/fact_changes.h"
#include "app/cli/options.h"
#include "app/cli/output.h"
#include "app/cli/verb_table.h"
#include "core/comparison/salt_points.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace wickbook::cli {

namespace {

struct SaltOptions {
    std::string book, sensor, date, temperature, why, format = "text";
    std::vector<std::string> at;
};

std::string saltNames() {
    std::string names;
    for (const comparison::SaltPoint& point : comparison::saltPoints()) {
        names += (names.empty() ? "" : ", ") + std::string{record::saltName(point.salt)};
    }
    return names;
}

/// "NaCl=76.4".
Outcome<record::SaltReading> saltReadingFrom(const std::string& text) {
    const auto sign = text.find('=');
    const auto salt = record::saltFromName(text.substr(0, sign));
    if (sign == std::string::npos || !salt) {
        return refuse(fmt::format("--at {}: write it as SALT=READING, with one of {}.", text, saltNames()));
    }
    const auto shown = decimalFrom("--at", text.substr(sign + 1));
    if (!shown) {
        return tl::unexpected(shown.error());
    }
    if (shown->toDouble() < 0 || shown->toDouble() > 110) {
        return refuse(fmt::format("--at {}: that is not a relative humidity in per cent.", text));
    }
    return record::SaltReading{*salt, *shown};
}

Outcome<record::SaltCheck> saltCheckFrom(const SaltOptions& options) {
    record::SaltCheck check;
    check.id = record::Uuid::random();
    check.sensor = options.sensor;
    for (const std::string& text : options.at) {
        const auto reading = saltReadingFrom(text);
        if (!reading) {
            return tl::unexpected(reading.error());
        }
        check.readings.push_back(*reading);
    }
    if (!options.temperature.empty()) {
        const auto celsius = decimalFrom("--temperature", options.temperature);
        if (!celsius) {
            return tl::unexpected(celsius.error());
        }
        check.temperature = *celsius;
    }
    return check;
}

Outcome<void> write(const comparison::SaltVerdict& verdict, Format format) {
    auto output = Output::open("-");
    if (!output) {
        return tl::unexpected(output.error());
    }
    if (format == Format::Json) {
        JsonValue points = JsonValue::array();
        for (const comparison::SaltResult& point : verdict.points) {
            points.push_back({{"salt", record::saltName(point.reading.salt)},
                              {"published_rh", point.published},
                              {"read_rh", point.reading.humidity.toDouble()},
                              {"off", jsonNumber(point.off)},
                              {"within", point.within}});
        }
        output->json(
            {{"points", points}, {"temperature_fits", verdict.temperatureFits}, {"off", verdict.off()}});
    } else {
        output->csv({"salt", "published_rh", "read_rh", "off", "within"});
        for (const comparison::SaltResult& point : verdict.points) {
            output->csv({std::string{record::saltName(point.reading.salt)},
                         fmt::format("{:g}", point.published), point.reading.humidity.toText(),
                         fmt::format("{:.6g}", point.off), point.within ? "yes" : "no"});
        }
    }
    return output->finish();
}

Outcome<ExitCode> saltCheck(const SaltOptions& options) {
    const auto format = formatFrom(options.format);
    if (!format) {
        return tl::unexpected(format.error());
    }
    auto check = saltCheckFrom(options);
    if (!check) {
        return tl::unexpected(check.error());
    }
    const auto verdict = comparison::judgeSalts(*check);
    if (!options.book.empty()) {
        const auto date = dateFrom("--date", options.date);
        if (!date) {
            return tl::unexpected(date.error());
        }
        if (options.sensor.empty()) {
            return refuse("Say with --sensor which sensor it was.");
        }
        check->date = *date;
        auto opened = openToWrite(options.book);
        if (!opened) {
            return tl::unexpected(opened.error());
        }
        record::StationFacts after = opened->station.facts();
        after.saltChecks.push_back(*check);
        if (const auto stored = opened->book.reviseFacts(after, {accountName(), options.why}); !stored) {
            return refuse(stored.error());
        }
    }
    if (const auto written = write(verdict, *format); !written) {
        return tl::unexpected(written.error());
    }
    if (!verdict.temperatureFits) {
        say(std::string_view{"The published values are of 25 °C; at this temperature they do not hold."});
    }
    if (!options.book.empty()) {
        say(std::string_view{"The check is kept in the book."});
    }
    return ExitCode::Done;
}

} // namespace

VerbAction declareSaltCheck(OptionList command) {
    auto options = std::make_shared<SaltOptions>();
    command.many("--at", options->at, "SALT=READING in % RH, with one of " + saltNames() + "; several times",
                 true);
    command.text("--temperature", options->temperature, "Temperature of the solutions, °C (about 25)");
    command.text("--book", options->book, "Keep it in this book, with --sensor and --date");
    command.text("--sensor", options->sensor, "Which sensor");
    command.text("--date", options->date, "Day of the check: 2026-11-01");
    command.text("--why", options->why, "Reason, kept with it");
    command.text("--format", options->format, "text (as csv), json or csv");
    return [options] { return saltCheck(*options); };
}

} // namespace wickbook::cli
