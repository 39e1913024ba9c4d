// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/own_years.h"

#include <iterator>

namespace wickbook::desk {

namespace {

record::Instant middleOf(date::year_month month) {
    return record::Instant{record::StationDate{month / 15}.time_since_epoch()};
}

report::YearOfMonth yearOf(const report::MonthReport& monthly) {
    const climate::HourSummary& all = monthly.summary.all;
    return {monthly.month.year(), all.meanHumidity, all.meanDewPoint, all.meanVapourPressure};
}

} // namespace

Result<report::OwnYears> ownYears(const store::Book& book, const record::StationRecord& station,
                                  date::year_month month, std::optional<record::Instant> now,
                                  const checks::StationModel* model, const std::function<bool()>& keepGoing) {
    report::OwnYears found;
    const auto span = book.span();
    if (!span) {
        return tl::unexpected(span.error());
    }
    if (!*span) {
        return found;
    }
    const auto yearAt = [](record::Instant instant) {
        return date::year_month_day{date::floor<date::days>(instant)}.year();
    };
    const record::StationPeriod& here = station.periodAt(middleOf(month));
    std::vector<report::MonthReport> kept; // the average below points into their readings
    for (date::year year = yearAt((*span)->first); year <= yearAt((*span)->second); ++year) {
        const date::year_month other = year / month.month();
        const record::StationPeriod& there = station.periodAt(middleOf(other));
        if (other == month || there.series != here.series || there.hours != here.hours) {
            continue;
        }
        if (keepGoing && !keepGoing()) {
            return report::OwnYears{};
        }
        auto monthly = monthReport(book, station, other, now, std::nullopt, model, checks::Slips::Leave);
        if (!monthly) {
            return tl::unexpected(monthly.error());
        }
        if (monthly->readings.empty()) {
            continue;
        }
        found.years.push_back(yearOf(*monthly));
        kept.push_back(std::move(*monthly));
    }
    std::vector<const record::DerivedReading*> counted;
    for (const report::MonthReport& monthly : kept) {
        for (const checks::CheckedReading& checked : monthly.readings) {
            if (!checked.leftOut && checked.reading.values().hour) {
                counted.push_back(&checked.reading);
            }
        }
    }
    found.readings = climate::stationAverage(counted, report::kFewestYearsForAverage);
    return found;
}

} // namespace wickbook::desk
