// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/chart_time_axis.h"

#include "ui/text/time_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>

namespace wickbook::ui {

namespace {

record::StationDate dateAt(const record::StationRecord& station, record::Instant instant) {
    return date::floor<date::days>(station.periodAt(instant).zone.localAt(instant));
}

record::Instant midnight(const record::StationRecord& station, record::StationDate day) {
    const record::Instant about{day.time_since_epoch()};
    return record::startOfDate(day, station.periodAt(about).zone);
}

std::vector<TimeTick> dayTicks(const QLocale& locale, const record::StationRecord& station,
                               record::Instant from, record::Instant to, int everyDays) {
    std::vector<TimeTick> ticks;
    record::StationDate day = dateAt(station, from);
    for (; midnight(station, day) <= to; day += date::days{1}) {
        const date::year_month_day ymd{day};
        const auto ofMonth = static_cast<unsigned>(ymd.day());
        // Counted from the first of each month, so that the marks stay put while the chart is moved.
        const bool marked = (ofMonth - 1) % static_cast<unsigned>(everyDays) == 0 &&
                            !(everyDays > 2 && ofMonth + static_cast<unsigned>(everyDays) / 2 > 31);
        if (marked && midnight(station, day) >= from) {
            ticks.push_back({midnight(station, day), shortDateWords(locale, day)});
        }
    }
    return ticks;
}

std::vector<TimeTick> monthTicks(const QLocale& locale, const record::StationRecord& station,
                                 record::Instant from, record::Instant to, int everyMonths) {
    std::vector<TimeTick> ticks;
    const date::year_month_day start{dateAt(station, from)};
    date::year_month month = start.year() / date::January;
    for (; midnight(station, record::StationDate{month / 1}) <= to; month += date::months{everyMonths}) {
        const record::StationDate first{month / 1};
        const record::Instant at = midnight(station, first);
        if (at < from) {
            continue;
        }
        //: short month and year, in Qt's date format, below a chart
        const QString label =
            locale.toString(toQDate(first), QCoreApplication::translate("charts", "MMM yyyy"));
        ticks.push_back({at, label});
    }
    return ticks;
}

std::vector<TimeTick> yearTicks(const record::StationRecord& station, record::Instant from,
                                record::Instant to, int everyYears) {
    std::vector<TimeTick> ticks;
    const int first = static_cast<int>(date::year_month_day{dateAt(station, from)}.year());
    for (int year = first - first % everyYears;; year += everyYears) {
        const record::Instant at =
            midnight(station, record::StationDate{date::year{year} / date::January / 1});
        if (at > to) {
            return ticks;
        }
        if (at >= from) {
            ticks.push_back({at, QString::number(year)});
        }
    }
}

} // namespace

std::vector<TimeTick> timeTicks(const QLocale& locale, const record::StationRecord& station,
                                record::Instant from, record::Instant to, double width, double labelWidth) {
    if (to <= from || width <= 0 || labelWidth <= 0) {
        return {};
    }
    const double days = static_cast<double>((to - from).count()) / 86400.0;
    const double most = std::max(1.0, std::floor(width / labelWidth));
    for (const int every : {1, 2, 5, 10}) {
        if (days / every <= most) {
            return dayTicks(locale, station, from, to, every);
        }
    }
    for (const int every : {1, 2, 3, 6}) {
        if (days / (30.4 * every) <= most) {
            return monthTicks(locale, station, from, to, every);
        }
    }
    for (const int every : {1, 2, 5, 10, 20}) {
        if (days / (365.0 * every) <= most) {
            return yearTicks(station, from, to, every);
        }
    }
    return yearTicks(station, from, to, 50);
}

ValueScale valueScale(double low, double high, int aboutTicks) {
    const double span = std::max(high - low, 1e-3);
    const double raw = span / std::max(1, aboutTicks);
    const double decade = std::pow(10.0, std::floor(std::log10(raw)));
    double step = 10 * decade;
    for (const double nice : {1.0, 2.0, 5.0}) {
        if (nice * decade >= raw) {
            step = nice * decade;
            break;
        }
    }
    ValueScale scale;
    scale.step = step;
    scale.low = std::floor(low / step + 1e-9) * step;
    scale.high = std::ceil(high / step - 1e-9) * step;
    if (scale.high <= scale.low) {
        scale.high = scale.low + step;
    }
    scale.decimals = step < 1 ? static_cast<int>(std::ceil(-std::log10(step) - 1e-9)) : 0;
    return scale;
}

} // namespace wickbook::ui
