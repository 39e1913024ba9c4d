// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/headless.h"
#include "app/cli/instrument_options.h"
#include "app/cli/options.h"
#include "app/cli/output.h"
#include "app/cli/paper_options.h"
#include "app/cli/verb_table.h"
#include "core/psychrometry/humidity_table.h"
#include "core/units/number_text.h"
#include "ui/print/humidity_table_sheet.h"
#include "ui/print/month_figure.h"

#include <fmt/format.h>

#include <memory>

namespace wickbook::cli {

namespace {

struct TableOptions {
    InstrumentOptions instrument;
    std::string unit, step, out;
    PaperOptions pages;
};

Outcome<psychrometry::HumidityTableRequest> requestFrom(const TableOptions& options) {
    const auto instrument = options.instrument.read();
    if (!instrument) {
        return tl::unexpected(instrument.error());
    }
    psychrometry::HumidityTableRequest request;
    request.coefficient = instrument->coefficient;
    request.pressure = instrument->pressure;
    request.unit = instrument->unit;
    if (!options.unit.empty()) {
        const auto unit = unitFrom(options.unit);
        if (!unit) {
            return tl::unexpected(unit.error());
        }
        request.unit = *unit;
    }
    if (request.unit == units::TemperatureUnit::Fahrenheit) {
        request.lowestDry = psychrometry::kTableLowestFahrenheit;
        request.highestDry = psychrometry::kTableHighestFahrenheit;
        request.highestDepression = psychrometry::kTableDepressionFahrenheit;
        request.depressionStep = 1;
    }
    if (!options.step.empty()) {
        const auto step = numberFrom("--step", options.step, 0.1, 5, "degrees");
        if (!step) {
            return tl::unexpected(step.error());
        }
        request.depressionStep = *step;
    }
    return request;
}

std::string inUnit(const std::optional<units::Temperature>& value, units::TemperatureUnit unit) {
    if (!value) {
        return {};
    }
    return units::dataText(unit == units::TemperatureUnit::Celsius ? value->celsius() : value->fahrenheit());
}

/// A row a cell: bulb, dry, depression and what they give. Pairs that no air has are left out.
void writeTable(Output& output, const psychrometry::HumidityTable& table) {
    const bool celsius = table.request.unit == units::TemperatureUnit::Celsius;
    const std::string suffix = celsius ? "_c" : "_f";
    output.csv({"wick", "dry" + suffix, "depression" + suffix, "wet" + suffix, "relative_humidity_pct",
                "dew_point" + suffix, "pressure_hpa", "exposure"});
    const std::string pressure = units::dataText(table.request.pressure.hectopascals());
    const std::string exposure{psychrometry::entryOf(table.request.coefficient.exposure).name};
    for (const auto* rows : {&table.waterRows, &table.iceRows}) {
        for (const psychrometry::HumidityTableRow& row : *rows) {
            for (std::size_t i = 0; i < row.cells.size() && i < table.depressions.size(); ++i) {
                const auto& cell = row.cells[i];
                if (!cell.humidity) {
                    continue;
                }
                const double depression = table.depressions[i];
                output.csv({row.bulb == psychrometry::Surface::Ice ? "ice" : "water",
                            units::fixedText(row.dry, 2), units::fixedText(depression, 2),
                            units::fixedText(row.dry - depression, 2),
                            units::dataText(cell.humidity->percent()),
                            inUnit(cell.dewPoint, table.request.unit), pressure, exposure});
            }
        }
    }
}

Outcome<ExitCode> printTable(const TableOptions& options, const psychrometry::HumidityTable& table) {
    const auto made = options.pages.read();
    if (!made) {
        return tl::unexpected(made.error());
    }
    ui::HumidityTableSheet sheet{table, {}};
    if (!options.instrument.book.empty()) {
        const auto opened = openToRead(options.instrument.book);
        if (!opened) {
            return tl::unexpected(opened.error());
        }
        sheet.place = ui::stationHeading(opened->station);
    }
    const HeadlessApplication application(made->locale);
    if (const auto written =
            writeSheet(ui::humidityTableSheet(std::move(sheet), made->locale, made->paper), options.out);
        !written) {
        return tl::unexpected(written.error());
    }
    say(fmt::format("The table is written to {}.", options.out));
    return ExitCode::Done;
}

Outcome<ExitCode> humidityTable(const TableOptions& options) {
    const auto request = requestFrom(options);
    if (!request) {
        return tl::unexpected(request.error());
    }
    const auto table = psychrometry::humidityTable(*request);
    if (!table) {
        return refuse(fmt::format("No such table can be made; give a --step of 0.1 or more."));
    }
    if (options.out.ends_with(".pdf")) {
        return printTable(options, *table);
    }
    auto output = Output::open(options.out);
    if (!output) {
        return tl::unexpected(output.error());
    }
    writeTable(*output, *table);
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    return ExitCode::Done;
}

} // namespace

VerbAction declareTable(OptionList command) {
    auto options = std::make_shared<TableOptions>();
    options->instrument.declare(command);
    command.text("--unit", options->unit, "c or f (c, or the book's)");
    command.text("--step", options->step, "Step of the depression, in degrees of the unit (0.5, in °F 1)");
    command.needed("--out", options->out, "A file ending in .pdf, else CSV; - for standard output");
    options->pages.declare(command);
    return [options] { return humidityTable(*options); };
}

} // namespace wickbook::cli
