// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/observation_index.h"

#include "core/store/revision_log.h"

#include <algorithm>

namespace wickbook::store {

IndexRow indexRow(const record::Observation& values, std::int64_t sequence, std::int64_t revisions) {
    IndexRow row;
    row.sequence = sequence;
    row.revisions = revisions;
    row.instant = values.instant.time_since_epoch().count();
    row.filedDay = record::filedDate(values).time_since_epoch().count();
    if (values.hour) {
        row.hourDay = values.hour->date.time_since_epoch().count();
        row.hourMinute = values.hour->hour.count();
    }
    row.live = !values.withdrawn;
    return row;
}

ObservationIndex::ObservationIndex(const Connection& connection)
    : connection_(connection)
    , newest_(connection.db(), "SELECT sequence, revisions FROM observation WHERE subject = ?")
    , release_(connection.db(),
               "UPDATE observation SET hour_day = NULL, hour_minute = NULL WHERE subject = ?")
    , atHour_(connection.db(),
              "SELECT 1 FROM observation WHERE live = 1 AND hour_day = ? AND hour_minute = ? "
              "AND subject <> ?")
    , put_(
          connection.db(),
          "INSERT INTO observation (subject, sequence, revisions, instant, filed_day, hour_day, hour_minute, "
          "live) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8) ON CONFLICT (subject) DO UPDATE SET sequence = ?2, "
          "revisions = ?3, instant = ?4, filed_day = ?5, hour_day = ?6, hour_minute = ?7, live = ?8")
    , found_(connection.db(),
             "SELECT o.sequence FROM observation o JOIN revision r ON r.sequence = o.sequence "
             "WHERE o.subject = ?1 AND r.subject = ?1") {}

std::optional<ObservationIndex::Newest> ObservationIndex::newest(const record::Uuid& subject) {
    newest_.reset();
    bindBytes(newest_, 1, bytesOf(subject));
    if (!newest_.executeStep())
        return std::nullopt;
    const Newest found{newest_.getColumn(0).getInt64(),
                       std::min(newest_.getColumn(1).getInt64(), kMostRowsOfABook)};
    newest_.reset();
    return found;
}

void ObservationIndex::release(const record::Uuid& subject) {
    release_.reset();
    bindBytes(release_, 1, bytesOf(subject));
    release_.exec();
}

void ObservationIndex::put(const record::Uuid& subject, const record::Observation& values,
                           std::int64_t sequence, std::int64_t revisions) {
    const IndexRow row = indexRow(values, sequence, revisions);
    if (row.live && row.hourDay) {
        atHour_.reset();
        atHour_.bind(1, *row.hourDay);
        atHour_.bind(2, *row.hourMinute);
        bindBytes(atHour_, 3, bytesOf(subject));
        const bool taken = atHour_.executeStep();
        atHour_.reset();
        if (taken)
            throw Refusal{
                connection_.error(StoreErrorKind::HourTaken, record::dateText(values.hour->date) + " " +
                                                                 record::hourText(values.hour->hour))};
    }
    put_.reset();
    put_.clearBindings();
    bindBytes(put_, 1, bytesOf(subject));
    put_.bind(2, row.sequence);
    put_.bind(3, row.revisions);
    put_.bind(4, row.instant);
    put_.bind(5, row.filedDay);
    if (row.hourDay) {
        put_.bind(6, *row.hourDay);
        put_.bind(7, *row.hourMinute);
    }
    put_.bind(8, row.live ? 1 : 0);
    put_.exec();
}

void ObservationIndex::expectFound(const record::Uuid& subject, std::int64_t sequence) {
    found_.reset();
    bindBytes(found_, 1, bytesOf(subject));
    const bool stands = found_.executeStep() && found_.getColumn(0).getInt64() == sequence;
    found_.reset();
    if (!stands)
        throw Refusal{connection_.error(StoreErrorKind::Damaged,
                                        "a reading just written can't be found again; nothing was saved")};
}

} // namespace wickbook::store
