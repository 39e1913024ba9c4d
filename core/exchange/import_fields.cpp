// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"

#include <algorithm>
#include <array>

namespace wickbook::exchange {

namespace {

constexpr std::array<std::string_view, kImportFieldCount> kFieldNames{
    "time",         "date",      "hour",    "clock",          "dry",        "wet",
    "wick",         "pressure",  "weather", "wind",           "max",        "min",
    "note",         "observer",  "origin",  "quality",        "unit",       "pressure_source",
    "max_min_unit", "wick_care", "whirls",  "missing_reason", "from_paper", "paper_book",
    "paper_page",   "read_back", "zone",    "utc_offset"};

constexpr std::array<std::string_view, 11> kReasonNames{
    "no-time",      "bad-time",   "double-time",     "impossible-time", "bad-number", "bad-word",
    "nothing-read", "ragged-row", "same-hour-twice", "hour-taken",      "unreadable"};

} // namespace

std::string_view fieldName(ImportField field) {
    return kFieldNames.at(static_cast<std::size_t>(field));
}

std::optional<ImportField> fieldFromName(std::string_view name) {
    const auto found = std::find(kFieldNames.begin(), kFieldNames.end(), name);
    if (found == kFieldNames.end()) {
        return std::nullopt;
    }
    return static_cast<ImportField>(found - kFieldNames.begin());
}

std::string_view reasonName(RejectReason reason) {
    return kReasonNames.at(static_cast<std::size_t>(reason));
}

std::vector<std::string> rejectsHeader() {
    return {"file", "line", "reason", "field", "value", "text"};
}

namespace {

/// No text file can hold a zero byte: its sign stands for it, so that the rejects file can be read.
std::string withoutZeroBytes(std::string text) {
    static constexpr std::string_view kSymbolForNull = "\u2400";
    for (auto at = text.find('\0'); at != std::string::npos; at = text.find('\0', at)) {
        text.replace(at, 1, kSymbolForNull);
    }
    return text;
}

} // namespace

std::vector<std::string> rejectsRow(const RejectedLine& line) {
    std::string reason{reasonName(line.reason)};
    if (!line.detail.empty()) {
        reason += ":" + line.detail;
    }
    return {line.file,  std::to_string(line.line),    std::move(reason),
            line.field, withoutZeroBytes(line.value), withoutZeroBytes(line.text)};
}

} // namespace wickbook::exchange
