// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/changed_months.h"

#include <cmath>
#include <map>

namespace wickbook::desk {

namespace {

/// Running means of a month.
struct MonthSums {
    ChangedMonth month;
    double humidityBefore = 0, humidityAfter = 0;
    double dewPointBefore = 0, dewPointAfter = 0;
    std::size_t withDewPoint = 0;
};

void count(MonthSums& sums, const record::DerivedReading& before, const record::DerivedReading& after) {
    const auto was = before.humidityPercent();
    const auto becomes = after.humidityPercent();
    if (was != becomes || before.dewPointCelsius() != after.dewPointCelsius()) {
        ++sums.month.rederived;
    }
    sums.month.lost += was && !becomes ? 1U : 0U;
    sums.month.gained += !was && becomes ? 1U : 0U;
    if (!was || !becomes) {
        return;
    }
    ++sums.month.readings;
    sums.humidityBefore += *was;
    sums.humidityAfter += *becomes;
    if (std::abs(*becomes - *was) > std::abs(sums.month.largestChange)) {
        sums.month.largestChange = *becomes - *was;
    }
    const auto dewBefore = before.dewPointCelsius();
    const auto dewAfter = after.dewPointCelsius();
    if (dewBefore && dewAfter) {
        ++sums.withDewPoint;
        sums.dewPointBefore += *dewBefore;
        sums.dewPointAfter += *dewAfter;
    }
}

ChangedMonth finished(const MonthSums& sums) {
    ChangedMonth month = sums.month;
    if (month.readings > 0) {
        const auto n = static_cast<double>(month.readings);
        month.humidityBefore = sums.humidityBefore / n;
        month.humidityAfter = sums.humidityAfter / n;
    }
    if (sums.withDewPoint > 0) {
        const auto n = static_cast<double>(sums.withDewPoint);
        month.dewPointBefore = sums.dewPointBefore / n;
        month.dewPointAfter = sums.dewPointAfter / n;
    }
    return month;
}

} // namespace

Result<std::optional<ChangedRegister>>
changedMonths(const store::Book& book, const record::StationRecord& now, const record::StationRecord& after,
              const std::function<bool(std::size_t done, std::size_t total)>& progress) {
    const auto whole = wholeRegister(book, now, progress);
    if (!whole) {
        return tl::unexpected(whole.error());
    }
    if (!*whole) {
        return std::nullopt;
    }
    std::map<date::year_month, MonthSums> months;
    ChangedRegister changed;
    for (const record::DerivedReading& before : **whole) {
        ++changed.readings;
        const date::year_month_day day{record::filedDate(before.values())};
        MonthSums& sums = months[day.year() / day.month()];
        sums.month.month = day.year() / day.month();
        count(sums, before, record::deriveReading(before.stored, after));
    }
    for (const auto& [month, sums] : months) {
        if (sums.month.rederived > 0) {
            changed.rederived += sums.month.rederived;
            changed.months.push_back(finished(sums));
        }
    }
    return changed;
}

} // namespace wickbook::desk
