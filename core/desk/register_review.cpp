// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/register_review.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace wickbook::desk {

namespace {

using checks::CheckedReading;
using checks::Finding;

/// Code, bulb and first likely cause.
using RunKey = std::tuple<std::string_view, std::string, std::string>;

/// Where a run stands in the register: the places of its questions.
struct Places {
    std::vector<std::size_t> asked;
    record::StationDate last;
};

const Finding& gravest(const CheckedReading& checked) {
    return *std::max_element(checked.findings.begin(), checked.findings.end(),
                             [](const Finding& a, const Finding& b) { return a.severity < b.severity; });
}

/// The finding that carries the likely causes; none where there are none.
const Finding* withCauses(const CheckedReading& checked) {
    const auto found = std::find_if(checked.findings.begin(), checked.findings.end(),
                                    [](const Finding& finding) { return !finding.causes.empty(); });
    return found == checked.findings.end() ? nullptr : &*found;
}

RunKey keyOf(const CheckedReading& checked) {
    const Finding& lead = gravest(checked);
    const Finding* explained = withCauses(checked);
    return {lead.code, lead.word("bulb").value_or(std::string{}),
            explained == nullptr ? std::string{} : explained->causes.front().code};
}

ReviewRun runOf(std::span<const CheckedReading> checked, const Places& places) {
    ReviewRun run;
    run.asked = places.asked.size();
    run.from = record::filedDate(checked[places.asked.front()].reading.values());
    run.to = record::filedDate(checked[places.asked.back()].reading.values());
    std::size_t next = 0; // the first place not shown yet
    for (const std::size_t place : places.asked) {
        const Finding& lead = gravest(checked[place]);
        if (run.lead.code.empty() || lead.severity > run.lead.severity) {
            run.lead = lead;
        }
        run.belief = std::max(run.belief, beliefInSlip(checked[place]));
        const std::size_t back = std::min(place, kReviewNeighbours);
        const std::size_t end = std::min(checked.size(), place + kReviewNeighbours + 1);
        for (next = std::max(next, place - back); next < end; ++next) {
            const bool asked = std::binary_search(places.asked.begin(), places.asked.end(), next);
            run.lines.push_back({checked[next], asked});
        }
    }
    return run;
}

bool isWorse(const ReviewRun& a, const ReviewRun& b) {
    const auto rank = [](const ReviewRun& run) {
        return std::tuple{-static_cast<int>(run.lead.severity), -std::lround(run.belief * 10),
                          -static_cast<long>(run.asked), run.from};
    };
    return rank(a) < rank(b);
}

} // namespace

bool isQuestion(const CheckedReading& checked) {
    const record::Observation& values = checked.reading.values();
    return values.quality == record::Quality::NotJudged && values.origin != record::Origin::Missing &&
           !values.withdrawn &&
           std::any_of(checked.findings.begin(), checked.findings.end(),
                       [](const Finding& finding) { return finding.severity >= checks::Severity::Soft; });
}

double beliefInSlip(const CheckedReading& checked) {
    double belief = 0;
    if (const Finding* explained = withCauses(checked)) {
        for (const checks::LikelyCause& cause : explained->causes) {
            belief += cause.weight;
        }
    }
    return std::min(belief, 1.0);
}

RegisterReview reviewOf(std::span<const CheckedReading> checked) {
    RegisterReview review;
    review.looked = checked.size();
    std::vector<Places> runs;
    std::map<RunKey, std::size_t> newest;
    for (std::size_t place = 0; place < checked.size(); ++place) {
        if (!isQuestion(checked[place])) {
            continue;
        }
        ++review.asked;
        const record::StationDate date = record::filedDate(checked[place].reading.values());
        const auto [found, fresh] = newest.try_emplace(keyOf(checked[place]), runs.size());
        if (!fresh && date - runs[found->second].last > kRunGap) {
            found->second = runs.size();
        }
        if (found->second == runs.size()) {
            runs.push_back({{}, date});
        }
        runs[found->second].asked.push_back(place);
        runs[found->second].last = date;
    }
    for (const Places& places : runs) {
        review.runs.push_back(runOf(checked, places));
    }
    std::stable_sort(review.runs.begin(), review.runs.end(), isWorse);
    return review;
}

} // namespace wickbook::desk
