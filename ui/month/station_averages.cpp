// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/station_averages.h"

#include "core/climate/station_average.h"

#include <algorithm>

namespace wickbook::ui {

namespace {

constexpr int kFewestYears = 5;
constexpr date::days kLongestSpan{200};

date::year_month monthOf(record::StationDate day) {
    const date::year_month_day ymd{day};
    return ymd.year() / ymd.month();
}

record::Instant startOf(const Session& session, record::StationDate day) {
    const record::Instant about{day.time_since_epoch()};
    return record::startOfDate(day, session.station().periodAt(about).zone);
}

} // namespace

ChartAverage stationAverages(const Session& session, Quantity quantity, record::StationDate from,
                             record::StationDate to) {
    ChartAverage average;
    const auto span = session.book().span();
    if (to - from > kLongestSpan || !span || !*span) {
        return average;
    }
    const auto firstYear = date::year_month_day{date::floor<date::days>((*span)->first)}.year();
    const auto lastYear = date::year_month_day{date::floor<date::days>((*span)->second)}.year();
    if ((lastYear - firstYear).count() + 1 < kFewestYears) {
        return average;
    }
    for (date::year_month month = monthOf(from); month <= monthOf(to); month += date::months{1}) {
        std::vector<checks::CheckedReading> kept;
        for (date::year year = firstYear; year <= lastYear; ++year) {
            const date::year_month other = year / month.month();
            auto readings = other == month ? store::Result<std::vector<checks::CheckedReading>>{}
                                           : session.checkedOn(record::StationDate{other / 1},
                                                               record::StationDate{other / date::last});
            if (!readings) {
                return {};
            }
            std::move(readings->begin(), readings->end(), std::back_inserter(kept));
        }
        std::vector<const record::DerivedReading*> readings;
        for (const checks::CheckedReading& checked : kept) {
            if (!checked.leftOut && checked.reading.values().hour) {
                readings.push_back(&checked.reading);
            }
        }
        if (const auto found = climate::stationAverage(readings, kFewestYears)) {
            const bool humidity = quantity == Quantity::Humidity;
            average.years = average.years == 0 ? found->years : std::min(average.years, found->years);
            average.spans.push_back(
                {startOf(session, record::StationDate{month / 1}),
                 startOf(session, record::StationDate{month / date::last} + date::days{1}),
                 humidity ? found->lowerQuartileHumidity : found->lowerQuartileDewPoint,
                 humidity ? found->upperQuartileHumidity : found->upperQuartileDewPoint});
        }
    }
    return average;
}

} // namespace wickbook::ui
