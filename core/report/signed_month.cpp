// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/signed_month.h"

#include "core/report/month_report.h"

#include <algorithm>
#include <map>
#include <sstream>

namespace wickbook::report {

namespace {

// None of summary.csv's cells holds a comma, a quote or a line break: hours, numbers, dates and our own
// words.
std::string tableText(const std::vector<std::vector<std::string>>& table) {
    std::string text;
    for (const auto& row : table) {
        for (std::size_t at = 0; at < row.size(); ++at) {
            text += (at == 0 ? "" : ",") + row[at];
        }
        text += '\n';
    }
    return text;
}

std::vector<std::vector<std::string>> tableFrom(const std::string& text) {
    std::vector<std::vector<std::string>> table;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        std::vector<std::string> row(1);
        for (const char c : line) {
            if (c == ',') {
                row.emplace_back();
            } else {
                row.back() += c;
            }
        }
        table.push_back(std::move(row));
    }
    return table;
}

} // namespace

std::optional<SignedMonth> signedMonth(const MonthReport& report) {
    const record::MonthSigning* latest = nullptr;
    int signings = 0;
    for (const record::MonthSigning& signing : report.station.facts().signings) {
        if (signing.withdrawn || signing.month != report.month) {
            continue;
        }
        ++signings;
        if (latest == nullptr || signing.at >= latest->at) { // of two at one moment the one written later
            latest = &signing;
        }
    }
    if (latest == nullptr) {
        return std::nullopt;
    }
    SignedMonth result{*latest, signings - 1, {}, {}, 0, {}};
    std::map<record::Uuid, int> then;
    for (const record::SignedReading& each : latest->readings) {
        then[each.reading] = each.revisions;
    }
    for (const checks::CheckedReading& checked : report.readings) {
        const record::StoredObservation& stored = checked.reading.stored;
        const auto found = then.find(stored.id());
        if (found == then.end()) {
            result.added.push_back(stored.id());
            continue;
        }
        if (found->second != stored.revisionCount) {
            result.changed.push_back(stored.id());
        }
        then.erase(found);
    }
    result.gone = static_cast<int>(then.size());
    result.numbers = numberChanges(tableFrom(latest->numbers), summaryTable(report.summary, report.options));
    return result;
}

record::MonthSigning signingOf(const MonthReport& report, record::Instant at, std::string by,
                               std::string note) {
    record::MonthSigning signing;
    signing.id = record::Uuid::random();
    signing.month = report.month;
    signing.at = at;
    signing.by = std::move(by);
    signing.note = std::move(note);
    signing.openQueries = report.openQueries;
    signing.numbers = tableText(summaryTable(report.summary, report.options));
    for (const checks::CheckedReading& checked : report.readings) {
        signing.readings.push_back({checked.reading.stored.id(), checked.reading.stored.revisionCount});
    }
    return signing;
}

} // namespace wickbook::report
