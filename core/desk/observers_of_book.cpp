// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/observers_of_book.h"

#include <algorithm>

namespace wickbook::desk {

store::Result<std::optional<std::vector<checks::ObserverHabits>>>
observersOfBook(const store::Book& book, const record::StationRecord& station,
                const std::function<bool(std::int64_t done, std::int64_t total)>& progress) {
    using Habits = std::optional<std::vector<checks::ObserverHabits>>;
    constexpr std::chrono::hours kAtOnce{24 * 60};
    const auto span = book.span();
    const auto total = book.observationCount();
    if (!span || !total) {
        return tl::unexpected(span ? total.error() : span.error());
    }
    checks::ObserverCount count{station};
    if (!*span) {
        return Habits{count.habits()};
    }
    const record::Instant end = (*span)->second + std::chrono::seconds{1};
    std::int64_t done = 0;
    for (record::Instant from = (*span)->first; from < end;) {
        if (progress && !progress(std::min(done, *total), *total)) {
            return Habits{};
        }
        const record::Instant to = std::min(end, from + kAtOnce);
        const auto lines = book.observationsBetween(from, to);
        if (!lines) {
            return tl::unexpected(lines.error());
        }
        for (const record::StoredObservation& line : *lines) {
            count.add(line.values);
        }
        done += std::ssize(*lines);
        from = to;
    }
    return Habits{count.habits()};
}

} // namespace wickbook::desk
