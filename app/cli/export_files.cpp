// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/export_files.h"

#include "app/cli/output.h"
#include "core/exchange/observation_columns.h"
#include "core/exchange/sef_writer.h"
#include "core/exchange/sidecar.h"

#include <fmt/format.h>

#include <filesystem>
#include <system_error>

namespace wickbook::cli {

namespace {

Outcome<void> makeFolder(const std::string& folder) {
    std::error_code trouble;
    std::filesystem::create_directories(folder, trouble);
    if (trouble) {
        return refuse(fmt::format("The folder {} can't be made: {}. Choose another place with --out.", folder,
                                  trouble.message()),
                      ExitCode::BookTrouble);
    }
    return {};
}

/// The CSV's own path where out names a folder; the folder is made.
Outcome<std::string> pathFor(const OpenedBook& opened, const std::vector<checks::CheckedReading>& readings,
                             const std::string& out) {
    std::error_code trouble;
    const bool isFolder = out.ends_with('/') || std::filesystem::is_directory(out, trouble);
    if (!isFolder) {
        return out;
    }
    if (const auto made = makeFolder(out); !made) {
        return tl::unexpected(made.error());
    }
    return (std::filesystem::path(out) / exportFileName(opened.station, readings)).string();
}

} // namespace

std::string stationSlug(const record::StationRecord& station) {
    std::string name;
    for (const char c : station.name()) {
        const bool upper = c >= 'A' && c <= 'Z';
        if ((c >= 'a' && c <= 'z') || upper || (c >= '0' && c <= '9')) {
            name += upper ? static_cast<char>(c - 'A' + 'a') : c;
        } else if (!name.empty() && name.back() != '-') {
            name += '-';
        }
    }
    while (name.ends_with('-')) {
        name.pop_back();
    }
    return name.empty() ? "station" : name;
}

Outcome<SefWritten> writeSef(const OpenedBook& opened,
                             std::span<const record::StoredObservation> observations,
                             const std::string& folder) {
    const auto files = exchange::sefFiles(opened.station, observations, stationSlug(opened.station));
    if (const auto made = makeFolder(folder); !made) {
        return tl::unexpected(made.error());
    }
    SefWritten written;
    for (const exchange::SefOutFile& file : files) {
        auto output = Output::open((std::filesystem::path(folder) / file.name).string());
        if (!output) {
            return tl::unexpected(output.error());
        }
        output->text(file.bytes);
        if (const auto finished = output->finish(); !finished) {
            return tl::unexpected(finished.error());
        }
        ++written.files;
        written.values += file.observations;
    }
    return written;
}

std::string exportFileName(const record::StationRecord& station,
                           const std::vector<checks::CheckedReading>& readings) {
    const std::string name = stationSlug(station);
    if (readings.empty()) {
        return name + "_empty.csv";
    }
    return fmt::format("{}_{}_{}.csv", name,
                       record::dateText(record::filedDate(readings.front().reading.values())),
                       record::dateText(record::filedDate(readings.back().reading.values())));
}

Outcome<std::string> writeObservations(const OpenedBook& opened,
                                       const std::vector<checks::CheckedReading>& readings,
                                       const std::string& out) {
    const auto path = pathFor(opened, readings, out);
    if (!path) {
        return tl::unexpected(path.error());
    }
    auto table = Output::open(*path);
    if (!table) {
        return tl::unexpected(table.error());
    }
    table->csv(exchange::observationHeader());
    for (const checks::CheckedReading& reading : readings) {
        table->csv(exchange::observationRow(reading, opened.station));
    }
    if (*path == "-") {
        if (auto finished = table->finish(); !finished) {
            return tl::unexpected(finished.error());
        }
        return *path;
    }
    auto sidecar = Output::open(*path + "-metadata.json");
    if (!sidecar) {
        return tl::unexpected(sidecar.error());
    }
    sidecar->text(
        exchange::sidecarMetadata(opened.station, std::filesystem::path(*path).filename().string()));
    // Both are written before either gets its name: a table without its metadata is half an export.
    for (Output* file : {&*table, &*sidecar}) {
        if (auto written = file->flush(); !written) {
            return tl::unexpected(written.error());
        }
    }
    for (Output* file : {&*table, &*sidecar}) {
        if (auto finished = file->finish(); !finished) {
            return tl::unexpected(finished.error());
        }
    }
    return *path;
}

} // namespace wickbook::cli
