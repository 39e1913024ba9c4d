// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/facts_body.h"

#include "core/store/body.h"
#include "core/store/chain.h"
#include "core/store/diary_body.h"
#include "core/store/instrument_body.h"
#include "core/store/signing_body.h"

#include <cmath>
#include <set>
#include <utility>

namespace wickbook::store {

using body::Json;
using body::kInstantLimit;
using body::putText;

namespace {

/// JSON has no word for them, and a coefficient that isn't a number must not become a missing one.
double finite(double value) {
    if (!std::isfinite(value))
        throw UnkeepableValue("a number of the station's facts is not finite");
    return value;
}

void putWithdrawn(Json& object, bool withdrawn) {
    if (withdrawn)
        object["withdrawn"] = true;
}

void putFrom(Json& object, const std::optional<record::Instant>& from) {
    if (from)
        object["from"] = from->time_since_epoch().count();
}

std::optional<record::Instant> from(const Json& object) {
    const Json* value = body::find(object, "from");
    if (value == nullptr)
        return std::nullopt;
    return record::Instant{
        std::chrono::seconds{body::integer(*value, "from", -kInstantLimit, kInstantLimit)}};
}

record::Uuid uuid(const Json& object, const char* key) {
    const Json* value = body::find(object, key);
    if (value == nullptr)
        return {};
    const auto read = record::Uuid::fromText(body::textValue(*value, key));
    if (!read)
        body::malformed(key);
    return *read;
}

double numberOr(const Json& object, const char* key, double absent) {
    const Json* value = body::find(object, key);
    return value == nullptr ? absent : body::number(*value, key);
}

std::optional<double> optionalNumber(const Json& object, const char* key) {
    const Json* value = body::find(object, key);
    if (value == nullptr)
        return std::nullopt;
    return body::number(*value, key);
}

// --- station ---

Json toJson(const record::StationFacts& facts) {
    Json object = Json::object();
    putText(object, "name", facts.name);
    if (facts.invented)
        object["invented"] = true;
    object["hour_window"] = facts.hourWindowMinutes;
    return object;
}

void addStation(record::StationFacts& facts, const record::Uuid& subject, const Json& object) {
    facts.id = subject;
    facts.name = body::text(object, "name");
    facts.invented = body::flag(object, "invented");
    if (const Json* window = body::find(object, "hour_window"))
        facts.hourWindowMinutes = static_cast<int>(body::integer(
            *window, "hour_window", std::numeric_limits<int>::min(), std::numeric_limits<int>::max()));
}

// --- period ---

Json toJson(const record::PeriodChange& period) {
    Json object = Json::object();
    putFrom(object, period.from);
    if (period.position)
        object["position"] =
            Json::array({finite(period.position->latitude), finite(period.position->longitude)});
    if (period.elevation)
        object["elevation"] = finite(period.elevation->metres());
    if (period.zone)
        object["zone"] = *period.zone;
    if (period.hours) {
        Json hours = Json::array();
        for (const record::HourOfDay hour : *period.hours)
            hours.push_back(hour.count());
        object["hours"] = std::move(hours);
    }
    if (period.hourRule)
        object["hour_rule"] = record::hourRuleName(*period.hourRule);
    if (period.exposure)
        object["exposure"] = psychrometry::entryOf(*period.exposure).name;
    if (period.ownCoefficient) {
        Json own = Json::object();
        own["water"] = finite(period.ownCoefficient->waterPerKelvin);
        if (period.ownCoefficient->icePerKelvin)
            own["ice"] = finite(*period.ownCoefficient->icePerKelvin);
        if (period.ownCoefficient->relativeUncertainty)
            own["uncertainty"] = finite(*period.ownCoefficient->relativeUncertainty);
        object["own_coefficient"] = std::move(own);
    }
    if (period.meanPressure)
        object["mean_pressure"] = finite(*period.meanPressure);
    if (period.surroundings)
        object["surroundings"] = *period.surroundings;
    if (period.joined)
        object["joined"] = true;
    putWithdrawn(object, period.withdrawn);
    return object;
}

record::PeriodChange periodFrom(const record::Uuid& subject, const Json& object) {
    record::PeriodChange period;
    period.id = subject;
    period.from = from(object);
    if (const Json* position = body::find(object, "position")) {
        const Json& parts = body::array(*position, 2, "position");
        period.position =
            record::Position{body::number(parts[0], "position"), body::number(parts[1], "position")};
    }
    if (const Json* elevation = body::find(object, "elevation"))
        period.elevation = units::Elevation::fromMetres(body::number(*elevation, "elevation"));
    if (const Json* zone = body::find(object, "zone"))
        period.zone = body::textValue(*zone, "zone");
    if (const Json* hours = body::find(object, "hours")) {
        if (!hours->is_array())
            body::malformed("hours");
        period.hours.emplace();
        for (const Json& hour : *hours)
            period.hours->push_back(record::HourOfDay{body::integer(hour, "hours", 0, 24L * 60)});
    }
    if (const Json* rule = body::find(object, "hour_rule")) {
        period.hourRule = record::hourRuleFromName(body::textValue(*rule, "hour_rule"));
        if (!period.hourRule)
            body::malformed("hour_rule");
    }
    if (const Json* exposure = body::find(object, "exposure")) {
        period.exposure = psychrometry::exposureFromName(body::textValue(*exposure, "exposure"));
        if (!period.exposure)
            body::malformed("exposure");
    }
    if (const Json* own = body::find(object, "own_coefficient")) {
        if (!own->is_object())
            body::malformed("own_coefficient");
        period.ownCoefficient = record::OwnCoefficient{
            numberOr(*own, "water", 0), optionalNumber(*own, "ice"), optionalNumber(*own, "uncertainty")};
    }
    period.meanPressure = optionalNumber(object, "mean_pressure");
    if (const Json* surroundings = body::find(object, "surroundings"))
        period.surroundings = body::textValue(*surroundings, "surroundings");
    period.joined = body::flag(object, "joined");
    return period;
}

// --- instruments ---

Json toJson(const record::Thermometer& thermometer) {
    Json object = Json::object();
    putText(object, "name", thermometer.name);
    putText(object, "liquid", thermometer.liquid);
    object["unit"] = body::unitName(thermometer.unit);
    object["step"] = body::of(thermometer.step);
    object["lowest"] = body::of(thermometer.lowestMark);
    object["highest"] = body::of(thermometer.highestMark);
    putWithdrawn(object, thermometer.withdrawn);
    return object;
}

record::Thermometer thermometerFrom(const record::Uuid& subject, const Json& object) {
    record::Thermometer thermometer;
    thermometer.id = subject;
    thermometer.name = body::text(object, "name");
    thermometer.liquid = body::text(object, "liquid");
    if (const Json* unit = body::find(object, "unit"))
        thermometer.unit = body::unit(*unit, "unit");
    if (const Json* step = body::find(object, "step"))
        thermometer.step = body::decimal(*step, "step");
    if (const Json* lowest = body::find(object, "lowest"))
        thermometer.lowestMark = body::decimal(*lowest, "lowest");
    if (const Json* highest = body::find(object, "highest"))
        thermometer.highestMark = body::decimal(*highest, "highest");
    return thermometer;
}

Json toJson(const record::Fitting& fitting) {
    Json object = Json::object();
    putFrom(object, fitting.from);
    object["dry"] = fitting.dry.toText();
    object["wet"] = fitting.wet.toText();
    putWithdrawn(object, fitting.withdrawn);
    return object;
}

record::Fitting fittingFrom(const record::Uuid& subject, const Json& object) {
    record::Fitting fitting;
    fitting.id = subject;
    fitting.from = from(object);
    fitting.dry = uuid(object, "dry");
    fitting.wet = uuid(object, "wet");
    return fitting;
}

Json toJson(const record::Correction& correction) {
    Json object = Json::object();
    object["thermometer"] = correction.thermometer.toText();
    putFrom(object, correction.from);
    Json points = Json::array();
    for (const record::CorrectionPoint& point : correction.points)
        points.push_back(Json::array({finite(point.reading), finite(point.correction)}));
    object["points"] = std::move(points);
    object["uncertainty"] = finite(correction.standardUncertainty);
    putText(object, "source", correction.source);
    putWithdrawn(object, correction.withdrawn);
    return object;
}

record::Correction correctionFrom(const record::Uuid& subject, const Json& object) {
    record::Correction correction;
    correction.id = subject;
    correction.thermometer = uuid(object, "thermometer");
    correction.from = from(object);
    if (const Json* points = body::find(object, "points")) {
        if (!points->is_array())
            body::malformed("points");
        for (const Json& point : *points) {
            const Json& parts = body::array(point, 2, "points");
            correction.points.push_back({body::number(parts[0], "points"), body::number(parts[1], "points")});
        }
    }
    correction.standardUncertainty = numberOr(object, "uncertainty", 0);
    correction.source = body::text(object, "source");
    return correction;
}

// --- limit: its identity follows from its name and moment ---

record::Uuid limitIdentity(const record::LimitMoment& limit) {
    std::string text = "limit:" + limit.name;
    if (limit.from)
        text += "@" + std::to_string(limit.from->time_since_epoch().count());
    return uuidFromText(text);
}

Json toJson(const record::LimitMoment& limit, const std::optional<double>& value) {
    Json object = Json::object();
    object["name"] = limit.name;
    putFrom(object, limit.from);
    if (value)
        object["value"] = finite(*value);
    return object;
}

/// What would not read back the same must not be written: reading it now finds out.
void checkReadsBack(const std::vector<FactRow>& rows, record::StationFacts facts) {
    const auto withdrawn = [](const auto& fact) { return fact.withdrawn; };
    std::erase_if(facts.periods, withdrawn);
    std::erase_if(facts.thermometers, withdrawn);
    std::erase_if(facts.fittings, withdrawn);
    std::erase_if(facts.corrections, withdrawn);
    std::erase_if(facts.absences, withdrawn);
    std::erase_if(facts.diary, withdrawn);
    std::erase_if(facts.pairChecks, withdrawn);
    std::erase_if(facts.saltChecks, withdrawn);
    std::erase_if(facts.sideBySides, withdrawn);
    std::erase_if(facts.besideReadings, withdrawn);
    std::erase_if(facts.signings, withdrawn);
    record::StationFacts readBack;
    try {
        for (const FactRow& row : rows)
            addFact(readBack, row);
    } catch (const MalformedBody& error) {
        throw UnkeepableValue(error.what());
    }
    if (!(readBack == facts))
        throw UnkeepableValue("a fact of the station would not read back as it was given");
}

} // namespace

std::vector<FactRow> factRows(const record::StationFacts& facts) {
    std::vector<FactRow> rows;
    std::set<std::pair<std::string, record::Uuid>> seen;
    const auto add = [&](std::string_view kind, const record::Uuid& subject, const Json& object) {
        if (!seen.emplace(kind, subject).second)
            throw UnkeepableValue("two facts of the kind \"" + std::string{kind} +
                                  "\" have the same identity");
        rows.push_back({std::string{kind}, subject, body::dump(object)});
    };
    add(kind::kStation, facts.id, toJson(facts));
    for (const auto& period : facts.periods)
        add(kind::kPeriod, period.id, toJson(period));
    for (const auto& thermometer : facts.thermometers)
        add(kind::kThermometer, thermometer.id, toJson(thermometer));
    for (const auto& fitting : facts.fittings)
        add(kind::kFitting, fitting.id, toJson(fitting));
    for (const auto& correction : facts.corrections)
        add(kind::kCorrection, correction.id, toJson(correction));
    for (const auto& absence : facts.absences)
        add(kind::kAbsence, absence.id, toJson(absence));
    for (const auto& entry : facts.diary)
        add(kind::kDiary, entry.id, toJson(entry));
    for (const auto& check : facts.pairChecks)
        add(kind::kPairCheck, check.id, toJson(check));
    for (const auto& check : facts.saltChecks)
        add(kind::kSaltCheck, check.id, toJson(check));
    for (const auto& other : facts.sideBySides)
        add(kind::kSideBySide, other.id, toJson(other));
    for (const auto& reading : facts.besideReadings)
        add(kind::kBesideReading, reading.id, toJson(reading));
    for (const auto& signing : facts.signings)
        add(kind::kMonthSigning, signing.id, toJson(signing));
    for (const auto& [limit, value] : facts.limits)
        add(kind::kLimit, limitIdentity(limit), toJson(limit, value));
    checkReadsBack(rows, facts);
    return rows;
}

std::string withdrawnBody(std::string_view text) {
    Json object = body::parse(text);
    object["withdrawn"] = true;
    return body::dump(object);
}

bool isWithdrawn(std::string_view text) {
    return body::flag(body::parse(text), "withdrawn");
}

bool isFactKind(std::string_view name) {
    return name == kind::kStation || name == kind::kPeriod || name == kind::kThermometer ||
           name == kind::kFitting || name == kind::kCorrection || name == kind::kLimit ||
           name == kind::kAbsence || name == kind::kDiary || name == kind::kPairCheck ||
           name == kind::kSaltCheck || name == kind::kSideBySide || name == kind::kBesideReading ||
           name == kind::kMonthSigning;
}

void addFact(record::StationFacts& facts, const FactRow& row) {
    if (!isFactKind(row.kind))
        return;
    const Json object = body::parse(row.body);
    const bool withdrawn = body::flag(object, "withdrawn");
    // Every kind is read even where it is withdrawn, so that verify sees what can't be.
    if (row.kind == kind::kStation) {
        addStation(facts, row.subject, object);
    } else if (row.kind == kind::kPeriod) {
        if (auto period = periodFrom(row.subject, object); !withdrawn)
            facts.periods.push_back(std::move(period));
    } else if (row.kind == kind::kThermometer) {
        if (auto thermometer = thermometerFrom(row.subject, object); !withdrawn)
            facts.thermometers.push_back(std::move(thermometer));
    } else if (row.kind == kind::kFitting) {
        if (auto fitting = fittingFrom(row.subject, object); !withdrawn)
            facts.fittings.push_back(std::move(fitting));
    } else if (row.kind == kind::kCorrection) {
        if (auto correction = correctionFrom(row.subject, object); !withdrawn)
            facts.corrections.push_back(std::move(correction));
    } else if (row.kind == kind::kAbsence) {
        if (auto absence = absenceFrom(row.subject, object); !withdrawn)
            facts.absences.push_back(std::move(absence));
    } else if (row.kind == kind::kDiary) {
        if (auto entry = diaryEntryFrom(row.subject, object); !withdrawn)
            facts.diary.push_back(std::move(entry));
    } else if (row.kind == kind::kPairCheck) {
        if (auto check = pairCheckFrom(row.subject, object); !withdrawn)
            facts.pairChecks.push_back(std::move(check));
    } else if (row.kind == kind::kSaltCheck) {
        if (auto check = saltCheckFrom(row.subject, object); !withdrawn)
            facts.saltChecks.push_back(std::move(check));
    } else if (row.kind == kind::kSideBySide) {
        if (auto other = sideBySideFrom(row.subject, object); !withdrawn)
            facts.sideBySides.push_back(std::move(other));
    } else if (row.kind == kind::kBesideReading) {
        if (auto reading = besideReadingFrom(row.subject, object); !withdrawn)
            facts.besideReadings.push_back(std::move(reading));
    } else if (row.kind == kind::kMonthSigning) {
        if (auto signing = monthSigningFrom(row.subject, object); !withdrawn)
            facts.signings.push_back(std::move(signing));
    } else if (row.kind == kind::kLimit) {
        if (LimitBody limit = limitFrom(row.body); !withdrawn)
            facts.limits[std::move(limit.limit)] = limit.value;
    }
}

LimitBody limitFrom(std::string_view text) {
    const Json object = body::parse(text);
    return {{body::text(object, "name"), from(object)},
            optionalNumber(object, "value"),
            body::flag(object, "withdrawn")};
}

} // namespace wickbook::store
