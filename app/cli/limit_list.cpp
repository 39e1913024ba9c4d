// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/limit_list.h"

#include "core/checks/limits.h"
#include "core/exchange/spreadsheet_text.h"
#include "core/units/number_text.h"
#include "ui/text/limit_words.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <vector>

namespace wickbook::cli {

namespace {

constexpr auto kListUnit = units::TemperatureUnit::Celsius;

/// A limit as it holds from one moment on.
struct LimitLine {
    const checks::LimitEntry* entry;
    std::optional<record::Instant> from;
    double value;
    bool inForce;
    const record::LimitRevision* by; ///< who said so; none: built in
};

const record::LimitRevision* newestFor(std::span<const record::LimitRevision> revisions,
                                       const record::LimitMoment& limit) {
    const auto found = std::find_if(revisions.rbegin(), revisions.rend(),
                                    [&](const auto& revision) { return revision.limit == limit; });
    return found == revisions.rend() ? nullptr : &*found;
}

std::vector<LimitLine> linesOf(const record::StationRecord& station,
                               std::span<const record::LimitRevision> revisions, record::Instant now) {
    std::vector<LimitLine> lines;
    for (const checks::LimitEntry& entry : checks::limitTable()) {
        const std::size_t first = lines.size();
        for (const auto& [limit, value] : station.facts().limits) {
            if (limit.name == entry.name) {
                lines.push_back(
                    {&entry, limit.from, value.value_or(entry.value), false, newestFor(revisions, limit)});
            }
        }
        if (lines.size() == first || lines[first].from) {
            lines.insert(lines.begin() + static_cast<std::ptrdiff_t>(first),
                         {&entry, std::nullopt, entry.value, false, nullptr});
        }
        std::size_t last = first;
        for (std::size_t i = first; i < lines.size(); ++i) {
            last = !lines[i].from || *lines[i].from <= now ? i : last;
        }
        lines[last].inForce = true;
    }
    return lines;
}

std::string valueWords(const checks::LimitEntry& entry, double value) {
    return ui::limitValueWords(QLocale::c(), entry, value, kListUnit).toStdString();
}

std::string momentText(const std::optional<record::Instant>& from) {
    return from ? record::instantText(*from) : std::string{};
}

void writeText(Output& output, std::span<const LimitLine> lines) {
    std::string_view rule;
    for (const LimitLine& line : lines) {
        const checks::LimitEntry& entry = *line.entry;
        if (ui::ruleOfLimit(entry.name) != rule) {
            rule = ui::ruleOfLimit(entry.name);
            const auto words = ui::limitRuleWords(rule);
            output.text(
                fmt::format("{} ({})\n  {}\n", words.title.toStdString(), rule, words.does.toStdString()));
        }
        if (!line.from) {
            output.text(fmt::format("  {}: {}: {}", entry.name, ui::limitNameWords(entry.name).toStdString(),
                                    valueWords(entry, line.value)));
        } else {
            output.text(
                fmt::format("    from {} on {}", momentText(line.from), valueWords(entry, line.value)));
        }
        if (line.by != nullptr) {
            const auto& stamp = line.by->stamp;
            output.text(fmt::format(" (built in: {}; set {}{}{}: {})", valueWords(entry, entry.value),
                                    record::instantText(stamp.recordedAt),
                                    stamp.author.who.empty() ? "" : " by ", stamp.author.who,
                                    stamp.author.why));
        }
        output.text("\n");
    }
}

std::string numberText(double value) {
    return units::exactText(value);
}

} // namespace

void writeLimits(Output& output, Format format, const record::StationRecord& station,
                 std::span<const record::LimitRevision> revisions, record::Instant now) {
    const auto lines = linesOf(station, revisions, now);
    if (format == Format::Text) {
        writeText(output, lines);
        return;
    }
    if (format == Format::Csv) {
        output.csv({"limit", "words", "unit", "built_in", "value", "from_utc", "in_force", "lowest",
                    "highest", "recorded_at", "who", "why", "source"});
    }
    JsonValue list = JsonValue::array();
    for (const LimitLine& line : lines) {
        const checks::LimitEntry& entry = *line.entry;
        const record::RevisionStamp stamp = line.by != nullptr ? line.by->stamp : record::RevisionStamp{};
        const std::string recorded =
            line.by != nullptr ? record::instantText(stamp.recordedAt) : std::string{};
        const auto rule = ui::limitRuleWords(ui::ruleOfLimit(entry.name));
        const std::string words =
            fmt::format("{}: {}", rule.title.toStdString(), ui::limitNameWords(entry.name).toStdString());
        if (format == Format::Csv) {
            output.csv({std::string{entry.name}, words, std::string{entry.unit}, numberText(entry.value),
                        numberText(line.value), momentText(line.from), line.inForce ? "yes" : "no",
                        numberText(entry.lowest), numberText(entry.highest), recorded,
                        exchange::spreadsheetText(stamp.author.who),
                        exchange::spreadsheetText(stamp.author.why), std::string{entry.source}});
        } else {
            list.push_back({{"limit", std::string{entry.name}},
                            {"words", words},
                            {"unit", jsonText(entry.unit)},
                            {"built_in", entry.value},
                            {"value", line.value},
                            {"from_utc", jsonText(momentText(line.from))},
                            {"in_force", line.inForce},
                            {"lowest", entry.lowest},
                            {"highest", entry.highest},
                            {"recorded_at", jsonText(recorded)},
                            {"who", jsonText(stamp.author.who)},
                            {"why", jsonText(stamp.author.why)},
                            {"source", std::string{entry.source}}});
        }
    }
    if (format == Format::Json) {
        output.json(list);
    }
}

void writeLimitHistory(Output& output, Format format, std::span<const record::LimitRevision> revisions) {
    if (format == Format::Csv) {
        output.csv({"revision", "recorded_at", "who", "why", "limit", "from_utc", "value", "withdrawn"});
    }
    JsonValue list = JsonValue::array();
    for (const record::LimitRevision& revision : revisions) {
        const auto& stamp = revision.stamp;
        const std::string recorded = record::instantText(stamp.recordedAt);
        const std::string from = momentText(revision.limit.from);
        const bool has = !revision.withdrawn && revision.value.has_value();
        const double value = has ? *revision.value : 0.0; // looked at only where there is one
        if (format == Format::Csv) {
            output.csv({std::to_string(stamp.sequence), recorded, exchange::spreadsheetText(stamp.author.who),
                        exchange::spreadsheetText(stamp.author.why), revision.limit.name, from,
                        has ? numberText(value) : std::string{}, revision.withdrawn ? "yes" : "no"});
        } else if (format == Format::Json) {
            list.push_back({{"revision", stamp.sequence},
                            {"recorded_at", recorded},
                            {"who", jsonText(stamp.author.who)},
                            {"why", jsonText(stamp.author.why)},
                            {"limit", revision.limit.name},
                            {"from_utc", jsonText(from)},
                            {"value", has ? JsonValue(value) : JsonValue()},
                            {"withdrawn", revision.withdrawn}});
        } else {
            const checks::LimitEntry* entry = checks::limitEntry(revision.limit.name);
            const std::string what = revision.withdrawn ? "taken back"
                                     : !has             ? "as built in"
                                     : entry != nullptr ? valueWords(*entry, value)
                                                        : numberText(value);
            output.text(fmt::format("{} {} {} {}{}{}: {}\n", stamp.sequence, recorded, revision.limit.name,
                                    from.empty() ? std::string{} : "from " + from + " on ", what,
                                    stamp.author.who.empty() ? std::string{} : " by " + stamp.author.who,
                                    stamp.author.why));
        }
    }
    if (format == Format::Json) {
        output.json(list);
    }
    if (format == Format::Text && revisions.empty()) {
        output.text("The limits are as built in and were never changed.\n");
    }
}

} // namespace wickbook::cli
