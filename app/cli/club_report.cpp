// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/club_report.h"

#include "app/cli/console.h"
#include "app/cli/headless.h"
#include "app/cli/output.h"
#include "core/exchange/club_month.h"
#include "core/exchange/spreadsheet_text.h"
#include "ui/print/club_page.h"

#include <fmt/format.h>

#include <filesystem>
#include <fstream>
#include <sstream>

namespace wickbook::cli {

namespace {

namespace fs = std::filesystem;

std::string sentenceFor(const exchange::ClubFileError& error, const std::string& path) {
    using Problem = exchange::ClubFileProblem;
    switch (error.problem) {
    case Problem::NoTable:
        return error.detail.empty()
                   ? fmt::format("{} can't be read as a table of observations and is left out.", path)
                   : fmt::format(
                         "{} has no usable column {} and is left out; take the month.csv that report writes.",
                         path, error.detail);
    case Problem::NoMetadata:
        return fmt::format("{}-metadata.json does not say station, exposure and hours; {} is left out.", path,
                           path);
    case Problem::NoReading:
        return fmt::format("{} holds no reading and is left out.", path);
    case Problem::TwoMonths:
        return fmt::format("{} holds more than one month ({}) and is left out.", path, error.detail);
    }
    return {};
}

std::optional<report::ClubMember> memberFrom(const std::string& named) {
    std::error_code trouble;
    const std::string path =
        fs::is_directory(named, trouble) ? (fs::path(named) / "month.csv").string() : named;
    std::ifstream table(path, std::ios::binary);
    std::ifstream sidecar(path + "-metadata.json", std::ios::binary);
    if (!table) {
        say(fmt::format("{} can't be opened and is left out; check the name.", path));
        return std::nullopt;
    }
    std::ostringstream metadata;
    metadata << sidecar.rdbuf();
    auto member = exchange::clubMember(table, metadata.str());
    if (!member) {
        say(sentenceFor(member.error(), path));
        return std::nullopt;
    }
    return std::move(*member);
}

Outcome<void> writeTable(const report::ClubSheet& sheet, const std::string& out) {
    auto output = Output::open(out);
    if (!output) {
        return tl::unexpected(output.error());
    }
    output->csv(report::clubHeader());
    for (auto row : report::clubRows(sheet)) {
        row[2] = exchange::spreadsheetText(row[2]); // the station's name: somebody typed it
        output->csv(row);
    }
    return output->finish();
}

} // namespace

Outcome<ExitCode> clubReport(const std::vector<std::string>& members, const std::string& out,
                             const PaperOptions& pages, bool strict) {
    const auto made = pages.read();
    if (!made) {
        return tl::unexpected(made.error());
    }
    std::vector<report::ClubMember> usable;
    for (const std::string& named : members) {
        if (auto member = memberFrom(named)) {
            usable.push_back(std::move(*member));
        }
    }
    if (usable.empty()) {
        return refuse("None of the members' months can be used; name the folders that report has written.");
    }
    for (const report::ClubMember& member : usable) {
        if (member.month != usable.front().month) {
            return refuse(fmt::format("{} handed in {}, {} {}: a club's table is of one month.",
                                      usable.front().station, record::monthText(usable.front().month),
                                      member.station, record::monthText(member.month)));
        }
    }
    const std::size_t count = usable.size();
    const report::ClubSheet sheet = report::clubSheet(usable);
    if (out.ends_with(".pdf")) {
        const HeadlessApplication application(made->locale);
        if (const auto written = writeSheet(ui::clubPageSheet(sheet, made->locale, made->paper), out);
            !written) {
            return tl::unexpected(written.error());
        }
    } else if (const auto written = writeTable(sheet, out); !written) {
        return tl::unexpected(written.error());
    }
    say(fmt::format("Stations side by side: {}.", count));
    return strict && count < members.size() ? ExitCode::Found : ExitCode::Done;
}

} // namespace wickbook::cli
