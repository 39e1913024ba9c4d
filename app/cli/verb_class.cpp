// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/class_pairs.h"
#include "app/cli/headless.h"
#include "app/cli/instrument_options.h"
#include "app/cli/options.h"
#include "app/cli/output.h"
#include "app/cli/verb_table.h"
#include "core/comparison/class_round.h"
#include "core/units/number_text.h"
#include "ui/print/class_sheet.h"
#include "ui/print/month_files.h"
#include "ui/text/class_words.h"
#include "ui/text/number_words.h"

#include <QBuffer>
#include <QPdfWriter>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace wickbook::cli {

namespace {

struct ClassOptions {
    InstrumentOptions instrument;
    std::string in, unit, resolution, sheet, paper, format = "text";
    bool answers = false;
};

std::optional<double> humidityOf(const comparison::PupilResult& pupil) {
    return pupil.derivation && pupil.derivation->relativeHumidity
               ? std::optional{pupil.derivation->relativeHumidity->percent()}
               : std::nullopt;
}

std::optional<double> dewPointOf(const comparison::PupilResult& pupil) {
    return pupil.derivation && pupil.derivation->dewPoint
               ? std::optional{pupil.derivation->dewPoint->celsius()}
               : std::nullopt;
}

std::optional<double> celsiusOf(const std::optional<units::ReadTemperature>& reading) {
    return reading ? std::optional{reading->temperature().celsius()} : std::nullopt;
}

std::string causeOf(const comparison::PupilResult& pupil) {
    return pupil.cause ? std::string{comparison::roundCauseName(*pupil.cause)} : std::string{};
}

std::string dataOrEmpty(const std::optional<double>& value) {
    return value ? units::dataText(*value) : std::string{};
}

void writeLines(Output& output, const comparison::ClassRound& round, units::TemperatureUnit unit) {
    const QLocale locale = QLocale::c();
    for (const comparison::PupilResult& pupil : round.pupils) {
        const auto read = [&](const std::optional<units::ReadTemperature>& reading) {
            return reading ? ui::readWords(locale, reading->value).toStdString() : std::string{"–"};
        };
        output.text(
            fmt::format("{:>4}  dry {:>6}  wet {:>6}  {:>6}  {}\n", pupil.pair.number, read(pupil.pair.dry),
                        read(pupil.pair.wet),
                        ui::percentWords(locale, humidityOf(pupil)).replace(QChar::Nbsp, u' ').toStdString(),
                        ui::pupilWords(locale, pupil, unit).toStdString()));
    }
    output.text(ui::roundWords(locale, round).replace(QChar::Nbsp, u' ').toStdString() + '\n');
}

void writeRows(Output& output, const comparison::ClassRound& round) {
    output.csv({"number", "dry_c", "wet_c", "relative_humidity_pct", "dew_point_c", "dry_off_c", "wet_off_c",
                "relative_humidity_off_pct", "far_off", "cause"});
    for (const comparison::PupilResult& pupil : round.pupils) {
        output.csv({std::to_string(pupil.pair.number), dataOrEmpty(celsiusOf(pupil.pair.dry)),
                    dataOrEmpty(celsiusOf(pupil.pair.wet)), dataOrEmpty(humidityOf(pupil)),
                    dataOrEmpty(dewPointOf(pupil)), dataOrEmpty(pupil.dryOff), dataOrEmpty(pupil.wetOff),
                    dataOrEmpty(pupil.humidityOff), pupil.farOff ? "yes" : "no", causeOf(pupil)});
    }
}

JsonValue spreadJson(const std::optional<comparison::RoundSpread>& spread) {
    if (!spread) {
        return nullptr;
    }
    return {{"n", spread->n},
            {"median", jsonNumber(spread->median)},
            {"lowest", jsonNumber(spread->lowest)},
            {"lower_quartile", jsonNumber(spread->lowerQuartile)},
            {"upper_quartile", jsonNumber(spread->upperQuartile)},
            {"highest", jsonNumber(spread->highest)},
            {"robust_deviation", jsonNumber(spread->robustDeviation)}};
}

JsonValue roundJson(const comparison::ClassRound& round) {
    JsonValue pupils = JsonValue::array();
    for (const comparison::PupilResult& pupil : round.pupils) {
        pupils.push_back({{"number", pupil.pair.number},
                          {"dry_c", jsonNumber(celsiusOf(pupil.pair.dry))},
                          {"wet_c", jsonNumber(celsiusOf(pupil.pair.wet))},
                          {"relative_humidity_pct", jsonNumber(humidityOf(pupil))},
                          {"dew_point_c", jsonNumber(dewPointOf(pupil))},
                          {"dry_off_c", jsonNumber(pupil.dryOff)},
                          {"wet_off_c", jsonNumber(pupil.wetOff)},
                          {"relative_humidity_off_pct", jsonNumber(pupil.humidityOff)},
                          {"far_off", pupil.farOff},
                          {"cause", jsonText(causeOf(pupil))}});
    }
    return {{"pupils", pupils},
            {"dry_c", spreadJson(round.dry)},
            {"wet_c", spreadJson(round.wet)},
            {"relative_humidity_pct", spreadJson(round.relativeHumidity)},
            {"dew_point_c", spreadJson(round.dewPoint)}};
}

Outcome<void> writeClassSheet(const ClassOptions& options, const comparison::ClassRound& round,
                              units::TemperatureUnit unit) {
    if (!options.sheet.ends_with(".pdf")) {
        return refuse(fmt::format("--sheet {}: this is not the name of a PDF; name a file ending in .pdf.",
                                  options.sheet));
    }
    if (options.paper != "a4" && options.paper != "letter") {
        return refuse(fmt::format("--paper can be a4 or letter; \"{}\" is neither.", options.paper));
    }
    const HeadlessApplication application;
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    const ui::ClassSheet sheet{round, unit, options.answers};
    bool painted = false;
    {
        QPdfWriter writer(&buffer);
        ui::setUpPdf(writer, ui::classSheetTitle(sheet),
                     options.paper == "a4" ? ui::Paper::A4 : ui::Paper::Letter);
        painted = ui::writeClassSheet(sheet, QLocale::c(), writer);
    }
    if (!painted) {
        return tl::unexpected(Refusal{ExitCode::Internal,
                                      "The sheet could not be painted because of an error in the program: "
                                      "nothing was written. Please report it."});
    }
    if (const auto written = ui::writeWholeFile(QString::fromStdString(options.sheet), bytes); !written) {
        return refuse(written.error().sentence.toStdString(), ExitCode::BookTrouble);
    }
    return {};
}

Outcome<ExitCode> classRound(const ClassOptions& options) {
    const auto format = formatFrom(options.format);
    if (!format) {
        return tl::unexpected(format.error());
    }
    if (options.in.empty() && options.sheet.empty()) {
        return refuse("Give --in with the class's pairs, or --sheet for an empty work sheet.");
    }
    if (options.in.empty() && options.answers) {
        return refuse("There are no answers without pairs; give --in, or leave --answers away.");
    }
    const auto instrument = options.instrument.read();
    if (!instrument) {
        return tl::unexpected(instrument.error());
    }
    units::TemperatureUnit unit = instrument->unit;
    if (!options.unit.empty()) {
        const auto given = unitFrom(options.unit);
        if (!given) {
            return tl::unexpected(given.error());
        }
        unit = *given;
    }
    std::vector<comparison::PupilPair> pairs;
    if (!options.in.empty()) {
        auto read = readClassPairs(options.in, unit);
        if (!read) {
            return tl::unexpected(read.error());
        }
        pairs = std::move(*read);
    }
    double step = coarsestStep(pairs);
    if (!options.resolution.empty()) {
        const auto given = numberFrom("--resolution", options.resolution, 0.01, 5, "degrees of the unit");
        if (!given) {
            return tl::unexpected(given.error());
        }
        step = *given;
    }
    comparison::RoundSetting setting;
    setting.coefficient = instrument->coefficient;
    setting.pressure = instrument->pressure;
    setting.step = units::scaleDegrees(step, unit);
    const auto round = comparison::judgeRound(pairs, setting);
    if (!options.sheet.empty()) {
        if (auto written = writeClassSheet(options, round, unit); !written) {
            return tl::unexpected(written.error());
        }
    }
    if (options.in.empty()) {
        return ExitCode::Done;
    }
    auto output = Output::open("-");
    if (!output) {
        return tl::unexpected(output.error());
    }
    switch (*format) {
    case Format::Text:
        writeLines(*output, round, unit);
        break;
    case Format::Csv:
        writeRows(*output, round);
        break;
    case Format::Json:
        output->json(roundJson(round));
        break;
    }
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    return ExitCode::Done;
}

} // namespace

VerbAction declareClass(OptionList command) {
    auto options = std::make_shared<ClassOptions>();
    options->paper = "a4";
    command.text("--in", options->in,
                 "The class's pairs: CSV with columns number, dry, wet and perhaps wick; - reads "
                 "standard input");
    options->instrument.declare(command);
    command.text("--unit", options->unit, "c or f (c, or the book's)");
    command.text("--resolution", options->resolution,
                 "Scale step in degrees of the unit (else as finely as was written)");
    command.text("--sheet", options->sheet, "Write a work sheet: a file ending in .pdf");
    command.flag("--answers", options->answers, "The sheet with its answers");
    command.text("--paper", options->paper, "a4 or letter (a4)");
    command.text("--format", options->format, "text, json or csv (text)");
    return [options] { return classRound(*options); };
}

} // namespace wickbook::cli
