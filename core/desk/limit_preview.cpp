// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/limit_preview.h"

#include <algorithm>
#include <string_view>
#include <utility>
#include <vector>

namespace wickbook::desk {

namespace {

/// What stays in memory of a judged reading: enough to tell two judgements apart.
struct Judgement {
    std::vector<std::pair<std::string_view, checks::Severity>> findings;
    bool leftOut = false;

    [[nodiscard]] bool isMarked() const {
        return std::any_of(findings.begin(), findings.end(),
                           [](const auto& finding) { return finding.second >= checks::Severity::Soft; });
    }
    bool operator==(const Judgement&) const = default;
};

Judgement judgementOf(const checks::CheckedReading& checked) {
    Judgement judgement;
    judgement.leftOut = checked.leftOut;
    for (const checks::Finding& finding : checked.findings) {
        judgement.findings.emplace_back(finding.code, finding.severity);
    }
    return judgement;
}

/// First moment at which the two differ; none: they are the same. An empty moment: from the beginning.
std::optional<std::optional<record::Instant>> firstDifference(const record::LimitChanges& a,
                                                              const record::LimitChanges& b) {
    std::optional<std::optional<record::Instant>> first;
    const auto look = [&](const record::LimitChanges& one, const record::LimitChanges& other) {
        for (const auto& [limit, value] : one) {
            const auto found = other.find(limit);
            if ((found == other.end() || found->second != value) && (!first || limit.from < *first)) {
                first = limit.from;
            }
        }
    };
    look(a, b);
    look(b, a);
    return first;
}

} // namespace

Result<std::optional<LimitPreview>>
previewLimits(const store::Book& book, const record::StationRecord& station,
              const record::LimitChanges& after, std::optional<record::Instant> now,
              const std::function<bool(std::size_t done, std::size_t total)>& progress) {
    const auto part = [&](std::size_t which) {
        return [&progress, which](std::size_t done, std::size_t total) {
            return !progress || progress(which * total + done, 3 * total);
        };
    };
    auto readings = wholeRegister(book, station, part(0));
    if (!readings) {
        return tl::unexpected(readings.error());
    }
    if (!*readings) {
        return std::optional<LimitPreview>{};
    }
    const std::vector<record::DerivedReading>& series = **readings;
    LimitPreview preview;
    preview.readings = series.size();
    const auto difference = firstDifference(station.facts().limits, after);
    if (!difference || series.empty()) {
        return std::optional{preview};
    }
    std::size_t first = 0;
    if (const auto from = *difference) {
        const auto place = std::partition_point(series.begin(), series.end(), [&](const auto& reading) {
            return reading.values().instant < *from;
        });
        first = static_cast<std::size_t>(place - series.begin());
    }
    const std::size_t count = series.size() - first;
    bool stopped = false;
    const checks::StationModel model{series, [&] {
                                         stopped = stopped || !part(1)(0, series.size());
                                         return !stopped;
                                     }};
    if (stopped) {
        return std::optional<LimitPreview>{};
    }

    const auto judge = [&](const record::LimitChanges& limits,
                           std::size_t which) -> std::optional<std::vector<Judgement>> {
        const auto checked = checks::checkSeries(series, first, count, station, checks::StationLimits{limits},
                                                 now, part(which), &model);
        if (checked.size() != count) {
            return std::nullopt; // stopped
        }
        std::vector<Judgement> judgements;
        judgements.reserve(count);
        std::transform(checked.begin(), checked.end(), std::back_inserter(judgements), judgementOf);
        return judgements;
    };
    const auto before = judge(station.facts().limits, 1);
    const auto then = before ? judge(after, 2) : std::nullopt;
    if (!then) {
        return std::optional<LimitPreview>{};
    }
    for (std::size_t i = 0; i < count; ++i) {
        const Judgement& old = (*before)[i];
        const Judgement& fresh = (*then)[i];
        preview.changed += old == fresh ? 0U : 1U;
        preview.newlyMarked += !old.isMarked() && fresh.isMarked() ? 1U : 0U;
        preview.noLonger += old.isMarked() && !fresh.isMarked() ? 1U : 0U;
        preview.setAside += !old.leftOut && fresh.leftOut ? 1U : 0U;
        preview.takenIn += old.leftOut && !fresh.leftOut ? 1U : 0U;
    }
    return std::optional{preview};
}

} // namespace wickbook::desk
