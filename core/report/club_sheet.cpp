// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/club_sheet.h"

#include "core/psychrometry/saturation.h"
#include "core/units/number_text.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace wickbook::report {

namespace {

/// A mean that grows.
struct Mean {
    double sum = 0;
    int n = 0;
    void add(double value) {
        sum += value;
        ++n;
    }
    [[nodiscard]] std::optional<double> value() const {
        return n == 0 ? std::nullopt : std::optional{sum / n};
    }
};

ClubLine lineOf(const ClubMember& member, record::HourOfDay hour, const climate::CompletenessRule& rule) {
    ClubLine line;
    line.station = member.station;
    line.invented = member.invented;
    line.exposure = member.exposure;
    line.elevation = member.elevation;
    line.hour = hour;
    const record::StationDate first{member.month / 1};
    const record::StationDate last{member.month / date::last};
    line.days = static_cast<int>((last - first).count()) + 1;
    std::vector<climate::DayState> days(static_cast<std::size_t>(line.days), climate::DayState::Missing);
    Mean humidity;
    Mean vapour;
    for (const ClubReading& reading : member.readings) {
        if (reading.hour != hour || reading.setAside || !reading.humidity || !reading.vapourPressure) {
            continue;
        }
        auto& day = days[static_cast<std::size_t>((reading.date - first).count())];
        if (day == climate::DayState::Counted) {
            continue; // a second one under the same hour
        }
        day = climate::DayState::Counted;
        humidity.add(*reading.humidity);
        vapour.add(*reading.vapourPressure);
        line.highestHumidity = std::max(line.highestHumidity.value_or(*reading.humidity), *reading.humidity);
        line.lowestHumidity = std::min(line.lowestHumidity.value_or(*reading.humidity), *reading.humidity);
    }
    line.n = humidity.n;
    line.withheld = climate::judgeCompleteness(days, rule);
    if (line.withheld == climate::Withheld::No) {
        line.meanHumidity = humidity.value();
        line.meanVapourPressure = vapour.value();
        if (const auto dew = psychrometry::dewPoint(
                units::VapourPressure::fromHectopascals(*line.meanVapourPressure), 1.0)) {
            line.dewPointOfMeanVapourPressure = dew->celsius();
        }
    }
    return line;
}

} // namespace

ClubSheet clubSheet(const std::vector<ClubMember>& members, const climate::CompletenessRule& rule) {
    ClubSheet sheet;
    sheet.month = members.front().month;
    std::set<std::string> exposures;
    for (const ClubMember& member : members) {
        exposures.insert(member.exposure);
        for (const record::HourOfDay hour : member.hours) {
            sheet.lines.push_back(lineOf(member, hour, rule));
        }
    }
    sheet.unlikeExposures = exposures.size() > 1;
    std::stable_sort(sheet.lines.begin(), sheet.lines.end(), [](const ClubLine& a, const ClubLine& b) {
        return std::tie(a.exposure, a.station, a.hour) < std::tie(b.exposure, b.station, b.hour);
    });
    return sheet;
}

std::vector<std::string> clubHeader() {
    return {"month",
            "exposure",
            "station",
            "elevation_m",
            "hour",
            "n",
            "days",
            "mean_relative_humidity_pct",
            "mean_vapour_pressure_hpa",
            "dew_point_of_mean_vapour_pressure_c",
            "highest_relative_humidity_pct",
            "lowest_relative_humidity_pct",
            "mean_withheld_because",
            "invented"};
}

std::vector<std::vector<std::string>> clubRows(const ClubSheet& sheet) {
    using units::dataText;
    std::vector<std::vector<std::string>> rows;
    for (const ClubLine& line : sheet.lines) {
        rows.push_back({record::monthText(sheet.month), line.exposure, line.station, dataText(line.elevation),
                        record::hourText(line.hour), std::to_string(line.n), std::to_string(line.days),
                        dataText(line.meanHumidity), dataText(line.meanVapourPressure),
                        dataText(line.dewPointOfMeanVapourPressure), dataText(line.highestHumidity),
                        dataText(line.lowestHumidity), std::string{climate::withheldName(line.withheld)},
                        line.invented ? "yes" : "no"});
    }
    return rows;
}

} // namespace wickbook::report
