// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/fact_changes.h"

#include "app/cli/console.h"
#include "app/cli/option_list.h"
#include "app/cli/options.h"
#include "app/cli/output.h"
#include "core/desk/changed_months.h"
#include "core/units/number_text.h"
#include "ui/text/changed_words.h"

#include <fmt/format.h>

namespace wickbook::cli {

namespace {

Outcome<void> writeMonths(const desk::ChangedRegister& changed) {
    auto output = Output::open("-");
    if (!output) {
        return tl::unexpected(output.error());
    }
    output->csv({"month", "readings", "rederived", "lost", "gained", "mean_rh_before", "mean_rh_after",
                 "mean_dew_point_before", "mean_dew_point_after", "largest_change_rh"});
    const auto number = [](const std::optional<double>& value) {
        return value ? fmt::format("{:.6f}", *value) : std::string{};
    };
    for (const desk::ChangedMonth& month : changed.months) {
        output->csv({fmt::format("{:04}-{:02}", static_cast<int>(month.month.year()),
                                 static_cast<unsigned>(month.month.month())),
                     std::to_string(month.readings), std::to_string(month.rederived),
                     std::to_string(month.lost), std::to_string(month.gained), number(month.humidityBefore),
                     number(month.humidityAfter), number(month.dewPointBefore), number(month.dewPointAfter),
                     number(month.largestChange)});
    }
    return output->finish();
}

} // namespace

void FactOptions::declare(OptionList& command) {
    command.needed("--book", book, "The book");
    command.text("--why", why, "Reason, kept with the change; needed");
    command.flag("--dry-run", dryRun,
                 "Only write the months that would change, before and after, as CSV; nothing is stored");
}

Outcome<OpenedBook> openForFacts(const FactOptions& options) {
    if (options.why.empty() && !options.dryRun) {
        return refuse("Say why with --why: the reason is kept with the change.");
    }
    return options.dryRun ? openToRead(options.book) : openToWrite(options.book);
}

Outcome<ExitCode> keepFacts(OpenedBook& opened, const record::StationFacts& after, const FactOptions& options,
                            const std::string& done) {
    if (after == opened.station.facts()) {
        say(std::string_view{"Nothing to change: the book says so already."});
        return ExitCode::Done;
    }
    if (!options.dryRun) {
        if (const auto stored = opened.book.reviseFacts(after, {accountName(), options.why}); !stored) {
            return refuse(stored.error());
        }
        say(done);
        return ExitCode::Done;
    }
    ProgressLine progress("working out");
    const auto changed = desk::changedMonths(opened.book, opened.station, record::StationRecord{after},
                                             [&](std::size_t finished, std::size_t total) {
                                                 progress.show(static_cast<std::int64_t>(finished),
                                                               static_cast<std::int64_t>(total));
                                                 return true;
                                             });
    if (!changed) {
        return refuse(changed.error());
    }
    const desk::ChangedRegister found = changed->value_or(desk::ChangedRegister{});
    if (const auto written = writeMonths(found); !written) {
        return tl::unexpected(written.error());
    }
    say(ui::changedRegisterWords(QLocale::c(), found));
    say(std::string_view{"Nothing was stored."});
    return ExitCode::Done;
}

Outcome<std::optional<record::Instant>> beginningFrom(const std::string& text,
                                                      const record::StationRecord& station) {
    if (text.empty()) {
        return std::optional<record::Instant>{};
    }
    const auto date = dateFrom("--from", text);
    if (!date) {
        return tl::unexpected(date.error());
    }
    return std::optional{record::startOfDate(*date, station)};
}

Outcome<const record::Thermometer*> thermometerNamed(const record::StationRecord& station,
                                                     const std::string& name) {
    std::string known;
    for (const record::Thermometer& thermometer : station.facts().thermometers) {
        if (thermometer.withdrawn) {
            continue;
        }
        if (thermometer.name == name) {
            return &thermometer;
        }
        known += (known.empty() ? "" : ", ") + thermometer.name;
    }
    return refuse(fmt::format("There is no thermometer \"{}\" in the book; there are: {}.", name,
                              known.empty() ? "none" : known));
}

} // namespace wickbook::cli
