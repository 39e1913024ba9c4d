// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/console.h"
#include "app/cli/export_files.h"
#include "app/cli/options.h"
#include "app/cli/verb_table.h"
#include "core/desk/checked_range.h"

#include <fmt/format.h>

#include <memory>

namespace wickbook::cli {

namespace {

struct ExportOptions {
    std::string book, month, from, to, out, format = "csv";
};

Outcome<DateRange> rangeFrom(const ExportOptions& options) {
    if (options.month.empty()) {
        return dateRangeFrom(options.from, options.to);
    }
    if (!options.from.empty() || !options.to.empty()) {
        return refuse("Give --month, or --from and --to, not both.");
    }
    return monthFrom(options.month).map([](date::year_month month) {
        return DateRange{record::StationDate{date::local_days{month / 1}},
                         record::StationDate{date::local_days{month / date::last}}};
    });
}

Outcome<ExitCode> exportSef(const OpenedBook& opened, const DateRange& range, const std::string& folder) {
    const auto stored =
        opened.book.observationsOn(range.from.value_or(kEarliestDate), range.to.value_or(kLatestDate));
    if (!stored) {
        return refuse(stored.error());
    }
    const auto written = writeSef(opened, *stored, folder);
    if (!written) {
        return tl::unexpected(written.error());
    }
    say(fmt::format(
        "{} values in {} files of the Station Exchange Format in {}, as read, without corrections.",
        written->values, written->files, folder));
    return ExitCode::Done;
}

Outcome<ExitCode> exportObservations(const ExportOptions& options) {
    if (options.format != "csv" && options.format != "sef") {
        return refuse(fmt::format("--format can be csv or sef; \"{}\" is neither.", options.format));
    }
    if (options.format == "sef" && options.out == "-") {
        return refuse("SEF is several files, one variable each: name a folder with --out.");
    }
    const auto range = rangeFrom(options);
    if (!range) {
        return tl::unexpected(range.error());
    }
    const auto opened = openToRead(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    if (options.format == "sef") {
        return exportSef(*opened, *range, options.out);
    }
    const auto model = desk::stationModel(opened->book, opened->station);
    if (!model) {
        return refuse(model.error());
    }
    const record::SystemClock clock;
    ProgressLine progress("deriving");
    const auto show = [&](std::size_t done, std::size_t total) {
        progress.show(static_cast<std::int64_t>(done), static_cast<std::int64_t>(total));
        return true;
    };
    const auto checked =
        range->from || range->to
            ? desk::checkedOn(opened->book, opened->station, range->from.value_or(kEarliestDate),
                              range->to.value_or(kLatestDate), clock.now(), &*model, show)
            : desk::checkedAll(opened->book, opened->station, clock.now(), &*model, show);
    if (!checked) {
        return refuse(checked.error());
    }
    const auto path = writeObservations(*opened, *checked, options.out);
    if (!path) {
        return tl::unexpected(path.error());
    }
    const char* const readings = checked->size() == 1 ? "reading" : "readings";
    if (*path == "-") {
        say(fmt::format("{} {} exported.", checked->size(), readings));
    } else {
        say(fmt::format("{} {} exported to {}, the metadata beside.", checked->size(), readings, *path));
    }
    return ExitCode::Done;
}

} // namespace

VerbAction declareExport(OptionList command) {
    auto options = std::make_shared<ExportOptions>();
    command.needed("--book", options->book, "The book");
    command.text("--month", options->month, "One month, 2025-03");
    command.text("--from", options->from, "First date, 2025-03-01 (the first reading)");
    command.text("--to", options->to, "Last date (the last reading)");
    command.needed(
        "--out", options->out,
        "File, or a folder in which the file is named after station and dates, or \"-\"; metadata go "
        "into NAME-metadata.json beside it");
    command.text("--format", options->format,
                 "csv, or sef: the Station Exchange Format, one file a variable in the folder --out (csv)");
    return [options] { return exportObservations(*options); };
}

} // namespace wickbook::cli
