// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"
#include "core/store/connection.h"

#include <cstdint>
#include <optional>

/// The table "observation": where the newest revision of each observation stands and how it is found by time.
/// Written in the transaction that appends the revision; everything in it follows from the revisions.

namespace wickbook::store {

struct IndexRow {
    std::int64_t sequence = 0;
    std::int64_t revisions = 0;
    std::int64_t instant = 0;
    std::int64_t filedDay = 0;
    std::optional<std::int64_t> hourDay;
    std::optional<std::int64_t> hourMinute;
    bool live = true;
    bool operator==(const IndexRow&) const = default;
};

IndexRow indexRow(const record::Observation& values, std::int64_t sequence, std::int64_t revisions);

class ObservationIndex {
public:
    explicit ObservationIndex(const Connection& connection);

    struct Newest {
        std::int64_t sequence;
        std::int64_t revisions;
    };
    /// The newest revision of an observation; none where there is no such observation.
    [[nodiscard]] std::optional<Newest> newest(const record::Uuid& subject);
    /// Lets go of the hour an observation stands at, so that several can change places in one transaction.
    void release(const record::Uuid& subject);
    /// Throws Refusal(HourTaken) where another live observation stands at its hour.
    void put(const record::Uuid& subject, const record::Observation& values, std::int64_t sequence,
             std::int64_t revisions);
    /// Looks the reading up as it will be read. Throws Refusal(Damaged) where a page that is broken, and that
    /// SQLite wrote to without noticing, hides what was just saved.
    void expectFound(const record::Uuid& subject, std::int64_t sequence);

private:
    const Connection& connection_;
    SQLite::Statement newest_;
    SQLite::Statement release_;
    SQLite::Statement atHour_;
    SQLite::Statement put_;
    SQLite::Statement found_;
};

} // namespace wickbook::store
