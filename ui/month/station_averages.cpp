// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/station_averages.h"

#include <algorithm>
#include <iterator>

namespace wickbook::ui {

namespace {

constexpr int kFewestYears = 5;
constexpr date::days kLongestSpan{100};

date::year_month monthOf(record::StationDate day) {
    const date::year_month_day ymd{day};
    return ymd.year() / ymd.month();
}

} // namespace

record::Instant StationAverages::startOf(record::StationDate day) const {
    const record::Instant about{day.time_since_epoch()};
    return record::startOfDate(day, session_.station().periodAt(about).zone);
}

std::optional<climate::StationAverage> StationAverages::average(date::year_month month) const {
    const auto span = session_.book().span();
    if (!span || !*span) {
        return std::nullopt;
    }
    const date::year first = date::year_month_day{date::floor<date::days>((*span)->first)}.year();
    const date::year last = date::year_month_day{date::floor<date::days>((*span)->second)}.year();
    if ((last - first).count() < kFewestYears) {
        return std::nullopt;
    }
    const record::StationPeriod& here = session_.station().periodAt(startOf(record::StationDate{month / 15}));
    std::vector<checks::CheckedReading> kept;
    for (date::year year = first; year <= last; ++year) {
        const date::year_month other = year / month.month();
        if (other == month ||
            session_.station().periodAt(startOf(record::StationDate{other / 15})).series != here.series) {
            continue;
        }
        auto readings =
            session_.checkedOn(record::StationDate{other / 1}, record::StationDate{other / date::last});
        if (!readings) {
            return std::nullopt; // the chart tells of a book that can't be read
        }
        std::move(readings->begin(), readings->end(), std::back_inserter(kept));
    }
    std::vector<const record::DerivedReading*> counted;
    for (const checks::CheckedReading& checked : kept) {
        if (!checked.leftOut && checked.reading.values().hour) {
            counted.push_back(&checked.reading);
        }
    }
    return climate::stationAverage(counted, kFewestYears);
}

ChartAverage StationAverages::of(Quantity quantity, record::StationDate from, record::StationDate to) {
    ChartAverage result;
    if (to - from > kLongestSpan) {
        return result;
    }
    for (date::year_month month = monthOf(from); month <= monthOf(to); month += date::months{1}) {
        const auto [place, isNew] = known_.try_emplace(month);
        if (isNew) {
            place->second = average(month);
        }
        if (const auto& found = place->second) {
            const bool humidity = quantity == Quantity::Humidity;
            result.years = result.years == 0 ? found->years : std::min(result.years, found->years);
            result.spans.push_back({startOf(record::StationDate{month / 1}),
                                    startOf(record::StationDate{month / date::last} + date::days{1}),
                                    humidity ? found->lowerQuartileHumidity : found->lowerQuartileDewPoint,
                                    humidity ? found->upperQuartileHumidity : found->upperQuartileDewPoint});
        }
    }
    return result;
}

} // namespace wickbook::ui
