// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/conflict.h"

#include <utility>

namespace wickbook::exchange {

namespace {

template <typename Map, typename Key>
const typename Map::mapped_type* find(const Map& map, const Key& key) {
    const auto found = map.find(key);
    return found == map.end() ? nullptr : &found->second;
}

std::string placeText(const record::Observation& values) {
    return values.hour ? record::dateText(values.hour->date) + " " + record::hourText(values.hour->hour)
                       : record::instantText(values.instant);
}

RejectedLine refused(const PlannedObservation& line, const std::string& fileName, RejectReason reason) {
    return {line.file.empty() ? fileName : line.file,
            line.line,
            line.text,
            reason,
            std::string(fieldName(ImportField::Time)),
            placeText(line.values),
            reason == RejectReason::SameHourTwice && !line.values.hour ? "same-moment" : ""};
}

template <typename T>
void keepWhereBlank(std::optional<T>& value, const std::optional<T>& before) {
    if (!value) {
        value = before;
    }
}

void keepWhereBlank(record::BulbReading& value, const record::BulbReading& before) {
    if (!value.given()) {
        value = before;
    }
}

void keepWhereBlank(std::string& value, const std::string& before) {
    if (value.empty()) {
        value = before;
    }
}

} // namespace

void TakenReadings::add(record::StoredObservation reading) {
    const auto hour = reading.values.hour;
    if (hour) {
        bookHours_.insert_or_assign(*hour, std::move(reading));
    } else {
        const auto instant = reading.values.instant;
        bookExtras_.insert_or_assign(instant, std::move(reading));
    }
}

void TakenReadings::addFromFile(const record::Observation& values) {
    if (!remembersLines_) {
        return;
    }
    if (values.hour) {
        fileHours_.insert_or_assign(*values.hour, values);
    } else {
        fileExtras_.insert_or_assign(values.instant, values);
    }
}

const record::StoredObservation* TakenReadings::inBook(const record::Observation& values) const {
    if (askBook_) {
        asked_ = askBook_(values);
        return asked_ ? &*asked_ : nullptr;
    }
    return values.hour ? find(bookHours_, *values.hour) : find(bookExtras_, values.instant);
}

const record::Observation* TakenReadings::inFiles(const record::Observation& values) const {
    return values.hour ? find(fileHours_, *values.hour) : find(fileExtras_, values.instant);
}

record::Observation mergedForRevision(const record::Observation& book, const record::Observation& file) {
    record::Observation merged = file;
    keepWhereBlank(merged.dry, book.dry);
    keepWhereBlank(merged.wet, book.wet);
    keepWhereBlank(merged.pressure, book.pressure);
    keepWhereBlank(merged.weather, book.weather);
    keepWhereBlank(merged.windBeaufort, book.windBeaufort);
    keepWhereBlank(merged.maximum, book.maximum);
    keepWhereBlank(merged.minimum, book.minimum);
    keepWhereBlank(merged.note, book.note);
    keepWhereBlank(merged.observer, book.observer);
    if (merged.wick == record::WickState::NotGiven) {
        merged.wick = book.wick;
    }
    if (merged.wickCare == record::WickCare::None) {
        merged.wickCare = book.wickCare;
    }
    if (merged.repeats.empty()) {
        merged.repeats = book.repeats;
    }
    keepWhereBlank(merged.paper, book.paper);
    const bool sameReadings = merged.dry == book.dry && merged.wet == book.wet &&
                              merged.pressure == book.pressure && merged.wick == book.wick;
    const bool filesReadings = merged.dry == file.dry && merged.wet == file.wet &&
                               merged.pressure == file.pressure && merged.wick == file.wick;
    merged.readBack = (filesReadings && file.readBack) || (sameReadings && book.readBack);
    if (sameReadings && merged.quality == record::Quality::NotJudged) {
        merged.quality = book.quality;
    }
    if (sameReadings && merged.origin == record::Origin::Observed) {
        merged.origin = book.origin;
    }
    if (merged.origin == record::Origin::Missing) {
        if (merged.dry.given() || merged.wet.given()) {
            // The file says nothing was read, the book has a reading: blanks never erase.
            merged.origin = book.origin;
            merged.missingReason = book.missingReason;
        } else {
            keepWhereBlank(merged.missingReason, book.missingReason);
        }
    }
    return merged;
}

ImportDecision decideConflicts(const ImportPlan& plan, const std::string& fileName, TakenReadings& taken,
                               OnConflict onConflict) {
    ImportDecision decision;
    for (const auto& line : plan.observations) {
        if (const auto* earlier = taken.inFiles(line.values)) {
            if (*earlier == line.values) {
                ++decision.same;
            } else {
                decision.rejected.push_back(refused(line, fileName, RejectReason::SameHourTwice));
            }
            continue;
        }
        const auto* book = taken.inBook(line.values);
        if (book == nullptr) {
            taken.addFromFile(line.values);
            decision.changes.push_back({line.line, std::nullopt, line.values, line.file});
            ++decision.added;
            continue;
        }
        auto merged = mergedForRevision(book->values, line.values);
        if (merged == book->values) {
            ++decision.same;
            continue;
        }
        switch (onConflict) {
        case OnConflict::Keep:
            ++decision.kept;
            break;
        case OnConflict::Reject:
            decision.rejected.push_back(refused(line, fileName, RejectReason::HourTaken));
            break;
        case OnConflict::Revise:
            taken.addFromFile(line.values);
            decision.changes.push_back({line.line, *book, std::move(merged), line.file});
            ++decision.revised;
            break;
        }
    }
    return decision;
}

} // namespace wickbook::exchange
