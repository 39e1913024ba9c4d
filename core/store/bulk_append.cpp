// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/bulk_append.h"

#include "core/store/appending.h"
#include "core/store/connection.h"

namespace wickbook::store {

/// Pages kept in memory meanwhile, KiB: identities are random, and their indexes are written all over.
constexpr int kBulkCacheKibibytes = 48 * 1024;

class LargerCache {
public:
    explicit LargerCache(SQLite::Database& database)
        : database_(database), before_(database.execAndGet("PRAGMA cache_size").getInt()) {
        database_.exec(fmt::format("PRAGMA cache_size={}", -kBulkCacheKibibytes).c_str());
    }
    LargerCache(const LargerCache&) = delete;
    LargerCache& operator=(const LargerCache&) = delete;
    ~LargerCache() { database_.tryExec(fmt::format("PRAGMA cache_size={}", before_).c_str()); }

private:
    SQLite::Database& database_;
    int before_;
};

struct BulkAppend::State {
    explicit State(const Connection& open)
        : connection(open), cache(open.db()), guard(open.db()), appending(open) {}
    const Connection& connection;
    LargerCache cache;
    WriteGuard guard;
    Appending appending;
    std::int64_t count = 0;
};

BulkAppend::BulkAppend(std::unique_ptr<State> state) : state_(std::move(state)) {}
BulkAppend::BulkAppend(BulkAppend&&) noexcept = default;
BulkAppend& BulkAppend::operator=(BulkAppend&&) noexcept = default;
BulkAppend::~BulkAppend() = default;

Result<void> BulkAppend::append(std::span<const ObservationChange> changes) {
    return guarded(state_->connection, [&]() -> Result<void> {
        for (const ObservationChange& change : changes)
            state_->appending.append(change);
        state_->appending.follow();
        state_->count += static_cast<std::int64_t>(changes.size());
        return {};
    });
}

Result<std::int64_t> BulkAppend::commit() {
    return guarded(state_->connection, [&]() -> Result<std::int64_t> {
        state_->appending.finish();
        state_->guard.commit();
        return state_->count;
    });
}

Result<BulkAppend> Book::bulkAppend() {
    if (state_->readOnlyBecause)
        return tl::unexpected(*state_->readOnlyBecause);
    return guarded(*state_, [&]() -> Result<BulkAppend> {
        return BulkAppend(std::make_unique<BulkAppend::State>(*state_));
    });
}

Result<LivePlaces> Book::livePlaces() const {
    return guarded(*state_, [&]() -> Result<LivePlaces> {
        LivePlaces places;
        SQLite::Statement hours(state_->db(),
                                "SELECT hour_day, hour_minute FROM observation WHERE live = 1 AND "
                                "hour_day IS NOT NULL ORDER BY hour_day, hour_minute");
        while (hours.executeStep())
            places.hours.push_back({record::StationDate{date::days{hours.getColumn(0).getInt64()}},
                                    record::HourOfDay{hours.getColumn(1).getInt64()}});
        SQLite::Statement extras(state_->db(),
                                 "SELECT instant FROM observation WHERE live = 1 AND hour_day IS NULL "
                                 "ORDER BY instant");
        while (extras.executeStep())
            places.extras.push_back(record::Instant{std::chrono::seconds{extras.getColumn(0).getInt64()}});
        return places;
    });
}

} // namespace wickbook::store
