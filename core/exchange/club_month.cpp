// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/club_month.h"

#include "core/exchange/csv.h"
#include "core/units/decimal.h"
#include "core/units/number_text.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>

namespace wickbook::exchange {

namespace {

using Json = nlohmann::json;
using report::ClubMember;
using report::ClubReading;

constexpr std::array kNeeded{"local_date", "hour", "relative_humidity_pct", "vapour_pressure_hpa",
                             "set_aside"};

std::optional<double> numberIn(const std::string& cell) {
    const auto read = units::parseDecimal(cell);
    return read ? std::optional{read->toDouble()} : std::nullopt;
}

/// The value of the first fact of this name; null where there is none.
const Json* factNamed(const Json& facts, const char* name) {
    for (const Json& fact : facts) {
        if (fact.is_object() && fact.value("schema:name", "") == name && fact.contains("schema:value")) {
            return &fact.at("schema:value");
        }
    }
    return nullptr;
}

bool isPeriod(const Json& fact) {
    return fact.is_object() && fact.value("schema:name", "") == "period" && fact.contains("schema:value") &&
           fact.at("schema:value").is_array();
}

/// The period in force in the middle of the month: the last one that begins before it.
const Json* periodIn(const Json& properties, date::year_month month) {
    const std::string middle = record::dateText(record::StationDate{month / 15});
    const Json* found = nullptr;
    for (const Json& fact : properties) {
        // ISO 8601 texts of one zone compare as their times do.
        if (isPeriod(fact) && fact.value("schema:validFrom", "").substr(0, 10) <= middle) {
            found = &fact.at("schema:value");
        }
    }
    return found;
}

void readPeriod(ClubMember& member, const Json& facts) {
    const auto number = [&](const char* name) -> std::optional<double> {
        const Json* value = factNamed(facts, name);
        return value != nullptr && value->is_number() ? std::optional{value->get<double>()} : std::nullopt;
    };
    member.elevation = number("elevation");
    if (const Json* exposure = factNamed(facts, "exposure"); exposure != nullptr && exposure->is_string()) {
        member.exposure = exposure->get<std::string>();
    }
    if (const Json* hours = factNamed(facts, "observing hours"); hours != nullptr && hours->is_array()) {
        for (const Json& hour : *hours) {
            if (const auto read = hour.is_string() ? record::parseHour(hour.get<std::string>())
                                                   : tl::unexpected(record::TimeTextError::Empty)) {
                member.hours.push_back(*read);
            }
        }
    }
}

/// Reads station and period; the month is known by then.
bool readMetadata(ClubMember& member, const std::string& text) {
    const Json sidecar = Json::parse(text, nullptr, false);
    if (!sidecar.is_object() || !sidecar.contains("schema:spatialCoverage")) {
        return false;
    }
    const Json& place = sidecar.at("schema:spatialCoverage");
    if (!place.is_object() || !place.contains("schema:name") || !place.at("schema:name").is_string()) {
        return false;
    }
    member.station = place.at("schema:name").get<std::string>();
    // What the sidecar says of an invented station, it says in the place's description.
    member.invented = place.contains("schema:description");
    if (place.contains("schema:additionalProperty") && place.at("schema:additionalProperty").is_array()) {
        if (const Json* period = periodIn(place.at("schema:additionalProperty"), member.month)) {
            readPeriod(member, *period);
        }
    }
    return !member.exposure.empty() && !member.hours.empty();
}

} // namespace

tl::expected<ClubMember, ClubFileError> clubMember(std::istream& csv, const std::string& metadata) {
    const auto fails = [](ClubFileProblem problem, std::string detail = {}) {
        return tl::unexpected(ClubFileError{problem, std::move(detail)});
    };
    CsvReader reader(csv, ',');
    const auto head = reader.next();
    if (!head || !*head) {
        return fails(ClubFileProblem::NoTable);
    }
    std::array<std::size_t, kNeeded.size()> places{};
    const auto& names = (*head)->cells;
    for (std::size_t at = 0; at < kNeeded.size(); ++at) {
        const auto found = std::find(names.begin(), names.end(), kNeeded[at]);
        if (found == names.end()) {
            return fails(ClubFileProblem::NoTable, kNeeded[at]);
        }
        places[at] = static_cast<std::size_t>(found - names.begin());
    }
    ClubMember member;
    std::optional<date::year_month> month;
    for (;;) {
        const auto line = reader.next();
        if (!line) {
            return fails(ClubFileProblem::NoTable);
        }
        if (!*line) {
            break;
        }
        const auto cell = [&](std::size_t at) {
            const auto& cells = (*line)->cells;
            return places[at] < cells.size() ? cells[places[at]] : std::string{};
        };
        const auto day = record::parseDate(cell(0));
        if (!day) {
            return fails(ClubFileProblem::NoTable, kNeeded[0]);
        }
        const date::year_month_day ymd{*day};
        const date::year_month its = ymd.year() / ymd.month();
        if (month && *month != its) {
            return fails(ClubFileProblem::TwoMonths,
                         record::monthText(*month) + ", " + record::monthText(its));
        }
        month = its;
        ClubReading reading;
        reading.date = *day;
        if (const auto hour = record::parseHour(cell(1))) {
            reading.hour = *hour;
        }
        reading.humidity = numberIn(cell(2));
        reading.vapourPressure = numberIn(cell(3));
        reading.setAside = cell(4) != "no";
        member.readings.push_back(reading);
    }
    if (!month) {
        return fails(ClubFileProblem::NoReading);
    }
    member.month = *month;
    if (!readMetadata(member, metadata)) {
        return fails(ClubFileProblem::NoMetadata);
    }
    return member;
}

} // namespace wickbook::exchange
