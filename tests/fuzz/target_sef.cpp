// SPDX-License-Identifier: GPL-3.0-or-later
// The bytes are SEF files one behind the other, divided by the control character GS (0x1D).
#include "core/exchange/file_head.h"
#include "core/exchange/sef_join.h"
#include "tests/fuzz/planned.h"
#include "tests/fuzz/stations.h"
#include "tests/fuzz/targets.h"

#include <map>
#include <sstream>

namespace wickbook::fuzz {

namespace {

using namespace exchange;

constexpr std::size_t kMostFiles = 4;

void checkFile(const SefFile& file, std::string_view bytes) {
    promise(file.variable || (!file.aside.empty() && file.rows.empty() && file.rejected.empty()),
            "a file left aside says why", bytes);
    promise(file.lines == static_cast<std::int64_t>(file.rows.size() + file.rejected.size()),
            "every line was read or rejected", bytes);
    std::int64_t last = 0;
    for (const SefRow& row : file.rows) {
        promise(row.line > last, "lines in their order", row.text);
        last = row.line;
        promise(!(row.temperature && row.pressure), "one variable a file", row.text);
        promise(!row.temperature || *file.variable != SefVariable::Pressure, "no temperature of a barometer",
                row.text);
    }
    for (const RejectedLine& rejected : file.rejected) {
        checkRejected(rejected, file.name);
    }
}

void checkJoined(const ImportPlan& plan, std::string_view bytes) {
    promise(static_cast<std::int64_t>(plan.observations.size() + plan.rejected.size()) <= plan.lines,
            "no more readings than lines", bytes);
    const PlannedObservation* before = nullptr;
    for (const PlannedObservation& planned : plan.observations) {
        promise(planned.line >= 1 && !planned.file.empty() && !planned.text.empty(),
                "a reading knows its line", bytes);
        promise(before == nullptr || before->values.instant < planned.values.instant,
                "in time order, none twice", planned.text);
        before = &planned;
        const auto& values = planned.values;
        promise(values.dry.given() || values.wet.given() || values.pressure, "a reading says something",
                planned.text);
        checkKeepable(planned);
    }
    for (const RejectedLine& rejected : plan.rejected) {
        checkRejected(rejected, rejected.file);
        promise(!rejected.file.empty(), "of several files the one is named", rejected.text);
    }
}

} // namespace

void runSef(std::string_view bytes) {
    std::vector<SefFile> files;
    std::string_view rest = bytes;
    while (files.size() < kMostFiles) {
        const std::size_t end = rest.find('\x1D');
        const std::string one{rest.substr(0, end)};
        static_cast<void>(fileKindOf(std::string_view{one}.substr(0, kHeadBytes)));
        static_cast<void>(beginsAsSef(one));
        std::istringstream input(one);
        if (auto file = readSef(input, "file" + std::to_string(files.size()) + ".tsv")) {
            checkFile(*file, one);
            files.push_back(std::move(*file));
        }
        if (end == std::string_view::npos) {
            break;
        }
        rest.remove_prefix(end + 1);
    }
    for (const auto* station : {&stationOfUtcHours(), &stationThatMoved()}) {
        if (const auto plan = joinSef(files, *station)) {
            checkJoined(*plan, bytes);
        }
    }
}

} // namespace wickbook::fuzz
