// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/copy_rotation.h"

#include <algorithm>
#include <numeric>

namespace wickbook::store {

namespace {

/// Lets the newest of each stretch of time stay, until so many stretches have one. Asked newest first.
class NewestOfEach {
public:
    explicit NewestOfEach(std::size_t most) : most_(most) {}
    bool stays(std::int64_t stretch) {
        if ((count_ > 0 && last_ == stretch) || count_ == most_)
            return false;
        last_ = stretch;
        ++count_;
        return true;
    }
    /// Whether the stretch asked about last has one.
    [[nodiscard]] bool has(std::int64_t stretch) const { return count_ > 0 && last_ == stretch; }

private:
    std::size_t most_;
    std::size_t count_ = 0;
    std::int64_t last_ = 0;
};

std::int64_t weekOf(date::sys_days day) {
    // An ISO week is its Monday.
    return (day - (date::weekday{day} - date::Monday)).time_since_epoch().count();
}

std::int64_t monthOf(date::sys_days day) {
    const date::year_month_day parts{day};
    return static_cast<int>(parts.year()) * std::int64_t{12} + static_cast<unsigned>(parts.month());
}

} // namespace

std::vector<std::size_t> copiesToDrop(std::span<const CopyAge> copies, record::Instant now) {
    std::vector<std::size_t> candidates;
    for (std::size_t i = 0; i < copies.size(); ++i) {
        if (copies[i].moment <= now && copies[i].sound.value_or(true))
            candidates.push_back(i);
    }
    std::ranges::stable_sort(candidates, std::greater{}, [&](std::size_t i) { return copies[i].moment; });

    NewestOfEach days(kDaysKept);
    NewestOfEach weeks(kWeeksKept);
    NewestOfEach months(kMonthsKept);
    bool verifiedStays = false;
    std::vector<std::size_t> drop;
    for (const std::size_t i : candidates) {
        const auto day = date::floor<date::days>(copies[i].moment);
        // Each is asked, for each counts for itself.
        const bool asDay = days.stays(day.time_since_epoch().count()) ||
                           (copies[i].beforeAct && days.has(day.time_since_epoch().count()));
        const bool asWeek = weeks.stays(weekOf(day));
        const bool asMonth = months.stays(monthOf(day));
        const bool asVerified = !verifiedStays && copies[i].sound.value_or(false);
        verifiedStays = verifiedStays || asVerified;
        if (!asDay && !asWeek && !asMonth && !asVerified)
            drop.push_back(i);
    }
    return drop;
}

} // namespace wickbook::store
