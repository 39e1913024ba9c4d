// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_time.h"

#include "core/exchange/cell_text.h"
#include "core/record/observing_hours.h"

#include <algorithm>
#include <cstdlib>
#include <set>
#include <vector>

namespace wickbook::exchange {

namespace {

using record::Instant;
using record::LocalTime;

/// A reading may be made well off its hour, but not half a day: then the date is a slip.
constexpr std::chrono::hours kFarthestFromHour{12};

/// The cells that speak of time, and how to refuse one of them.
class TimeCells {
public:
    explicit TimeCells(const FieldCells& cells) : cells_(cells) {}

    /// Trimmed; none where absent or one of the marks for missing.
    [[nodiscard]] std::optional<std::string_view> value(ImportField field) const {
        const auto found = cells_.find(field);
        if (found == cells_.end() || isMissingWord(found->second)) {
            return std::nullopt;
        }
        return trimmedCell(found->second);
    }
    [[nodiscard]] bool hasColumn(ImportField field) const { return cells_.contains(field); }

    [[nodiscard]] RejectedLine refuse(RejectReason reason, ImportField field, std::string detail = {}) const {
        const auto found = cells_.find(field);
        RejectedLine line{};
        line.reason = reason;
        line.field = fieldName(field);
        line.value = found == cells_.end() ? std::string{} : found->second;
        line.detail = std::move(detail);
        return line;
    }

private:
    const FieldCells& cells_;
};

std::string detailOf(DateTextError error) {
    switch (error) {
    case DateTextError::NoSuchDate:
        return "no-such-date";
    case DateTextError::TwoDigitYear:
        return "two-digit-year";
    case DateTextError::DayOrMonth:
        return "day-or-month";
    case DateTextError::Empty:
    case DateTextError::NotADate:
        break;
    }
    return "not-a-time";
}

std::string detailOf(record::TimeTextError error) {
    switch (error) {
    case record::TimeTextError::NoSuchDate:
        return "no-such-date";
    case record::TimeTextError::NoSuchClockTime:
        return "no-such-clock-time";
    case record::TimeTextError::Empty:
    case record::TimeTextError::NotATime:
        break;
    }
    return "not-a-time";
}

/// One moment, or the reason why the clock gives none.
tl::expected<Instant, RejectReason> single(const record::ResolvedTime& resolved, DoubleTimes doubleTimes) {
    if (const auto* unique = std::get_if<record::UniqueTime>(&resolved)) {
        return unique->instant;
    }
    if (const auto* twice = std::get_if<record::DoubleTime>(&resolved);
        twice != nullptr && doubleTimes != DoubleTimes::Reject) {
        return doubleTimes == DoubleTimes::Earlier ? twice->first : twice->second;
    }
    return tl::unexpected(std::holds_alternative<record::DoubleTime>(resolved)
                              ? RejectReason::DoubleTime
                              : RejectReason::ImpossibleTime);
}

record::ResolvedTime resolve(const record::StationRecord& station, const std::optional<record::Zone>& zone,
                             LocalTime local) {
    return zone ? record::resolveLocal(*zone, local) : resolveAtStation(station, local);
}

/// "2025-03-01T09:00Z", "1.3.2025 9:00", or "9:00" with a date in its own column.
tl::expected<record::WrittenTime, std::string>
writtenTime(std::string_view text, std::optional<record::StationDate> date, DateOrder order) {
    auto written = record::parseTime(text);
    if (written) {
        return *written;
    }
    const auto iso = detailOf(written.error());
    if (const auto split = splitDate(text)) {
        const auto day = readDate(split->date, order);
        if (!day) {
            return tl::unexpected(detailOf(day.error()));
        }
        // The rest may carry seconds and an offset: the parser for ISO times reads it behind an ISO date.
        std::string rest{split->rest};
        if (rest.size() > 1 && (rest[1] == ':' || rest[1] == '.')) {
            rest.insert(0, "0");
        }
        written = record::parseTime(record::dateText(*day) + "T" + rest);
        if (written) {
            return *written;
        }
        return tl::unexpected(detailOf(written.error()));
    }
    if (date) {
        const auto clock = record::parseHour(text);
        if (clock) {
            return record::WrittenTime{LocalTime{*date} + *clock, std::nullopt};
        }
        return tl::unexpected(detailOf(clock.error()));
    }
    const auto bare = readDate(text, order);
    return tl::unexpected(!bare && bare.error() == DateTextError::TwoDigitYear ? "two-digit-year" : iso);
}

/// The moment of an hour the station does not observe at: a clock time under the rule of that day.
tl::expected<Instant, RejectReason> momentUnderRule(const record::StationRecord& station, LocalTime local,
                                                    DoubleTimes doubleTimes) {
    const Instant asUtc{local.time_since_epoch()};
    const auto& period = station.periodAt(asUtc);
    switch (period.hourRule) {
    case record::HourRule::Utc:
        return asUtc;
    case record::HourRule::Standard:
        return Instant{local.time_since_epoch() - period.zone.standardOffsetAt(asUtc)};
    case record::HourRule::Clock:
        break;
    }
    return single(resolveAtStation(station, local), doubleTimes);
}

/// The hour a reading of this moment belongs to: of the date given, else of the day that brings it nearest
/// (half past midnight may be the reading of the evening before). None where the station has no such hour.
std::optional<record::ObservingHour> filedAt(const record::StationRecord& station, Instant instant,
                                             std::optional<record::StationDate> date,
                                             record::HourOfDay hour) {
    const auto clockDate = date::floor<date::days>(
        LocalTime{instant.time_since_epoch() + station.periodAt(instant).zone.offsetAt(instant)});
    std::vector<record::StationDate> days{date.value_or(clockDate)};
    if (!date) {
        days.insert(days.end(), {clockDate - date::days{1}, clockDate + date::days{1}});
    }
    std::optional<record::ObservingHour> nearest;
    std::chrono::seconds least = std::chrono::seconds::max();
    for (const auto day : days) {
        const record::ObservingHour hourOfDay{day, hour};
        const auto moment = record::momentOf(station, hourOfDay);
        if (moment && std::chrono::abs(*moment - instant) < least) {
            least = std::chrono::abs(*moment - instant);
            nearest = hourOfDay;
        }
    }
    return nearest;
}

bool isObservingHour(const record::StationRecord& station, const record::ObservingHour& hour) {
    const auto& hours =
        station.periodAt(Instant{(LocalTime{hour.date} + hour.hour).time_since_epoch()}).hours;
    return std::find(hours.begin(), hours.end(), hour.hour) != hours.end();
}

} // namespace

record::ResolvedTime resolveAtStation(const record::StationRecord& station, LocalTime local) {
    std::set<Instant> moments;
    std::optional<record::ImpossibleTime> skipped;
    const Instant asUtc{local.time_since_epoch()};
    const std::chrono::hours margin{26};
    for (const auto& period : station.periods()) {
        if ((period.to && *period.to < asUtc - margin) || (period.from && *period.from > asUtc + margin)) {
            continue;
        }
        const auto resolved = record::resolveLocal(period.zone, local);
        if (const auto* unique = std::get_if<record::UniqueTime>(&resolved)) {
            moments.insert(unique->instant);
        } else if (const auto* twice = std::get_if<record::DoubleTime>(&resolved)) {
            moments.insert(twice->first);
            moments.insert(twice->second);
        } else {
            skipped = std::get<record::ImpossibleTime>(resolved);
        }
        std::erase_if(moments, [&](Instant moment) {
            const auto& inForce = station.periodAt(moment);
            return record::LocalTime{moment.time_since_epoch() + inForce.zone.offsetAt(moment)} != local;
        });
    }
    if (moments.size() == 1) {
        return record::UniqueTime{*moments.begin()};
    }
    if (moments.size() > 1) {
        return record::DoubleTime{*moments.begin(), *std::next(moments.begin())};
    }
    return skipped.value_or(record::ImpossibleTime{asUtc});
}

namespace {

/// Whether a moment can be written down again wherever it is shown: its date by UTC and by any clock lies in
/// the years that dates are taken from (record/instant.h).
bool liesInTheYears(Instant instant) {
    constexpr Instant kFirst{date::sys_days{date::year{1600} / 1 / 2}};
    constexpr Instant kEnd{date::sys_days{date::year{2200} / 12 / 31}};
    return kFirst <= instant && instant < kEnd;
}

tl::expected<RowTime, RejectedLine> timeOfRow(const TimeCells& cells, const record::StationRecord& station,
                                              const std::optional<record::Zone>& zone, DateOrder order,
                                              DoubleTimes doubleTimes, bool exported) {
    std::optional<record::StationDate> date;
    if (const auto text = cells.value(ImportField::Date)) {
        const auto read = readDate(*text, order);
        if (!read) {
            return tl::unexpected(
                cells.refuse(RejectReason::BadTime, ImportField::Date, detailOf(read.error())));
        }
        date = *read;
    }
    std::optional<record::HourOfDay> hour;
    if (const auto text = cells.value(ImportField::Hour)) {
        const auto read = record::parseHour(*text);
        if (!read) {
            return tl::unexpected(
                cells.refuse(RejectReason::BadTime, ImportField::Hour, detailOf(read.error())));
        }
        hour = *read;
    }

    RowTime result;
    if (const auto text = cells.value(ImportField::Time)) {
        const auto written = writtenTime(*text, date, order);
        if (!written) {
            return tl::unexpected(cells.refuse(RejectReason::BadTime, ImportField::Time, written.error()));
        }
        if (written->offset) {
            result.instant = Instant{written->local.time_since_epoch() - *written->offset};
        } else {
            const auto moment = single(resolve(station, zone, written->local), doubleTimes);
            if (!moment) {
                return tl::unexpected(cells.refuse(moment.error(), ImportField::Time));
            }
            result.instant = *moment;
        }
        if (!cells.hasColumn(ImportField::Hour)) {
            return result;
        }
        if (!hour) {
            result.hour = std::optional<record::ObservingHour>{};
            return result;
        }
        const auto filed = filedAt(station, result.instant, date, *hour);
        if (!filed) {
            if (exported && date) {
                result.hour = record::ObservingHour{*date, *hour};
            }
            return result;
        }
        if (std::chrono::abs(*record::momentOf(station, *filed) - result.instant) > kFarthestFromHour) {
            return tl::unexpected(cells.refuse(RejectReason::BadTime, ImportField::Hour, "far-from-hour"));
        }
        result.hour = filed;
        return result;
    }

    const auto clockText = cells.value(ImportField::Clock);
    if (!date || (!hour && !clockText)) {
        // Named after the cell that should have held it.
        const auto lacking = cells.hasColumn(ImportField::Time)    ? ImportField::Time
                             : !date                               ? ImportField::Date
                             : cells.hasColumn(ImportField::Clock) ? ImportField::Clock
                                                                   : ImportField::Hour;
        return tl::unexpected(cells.refuse(RejectReason::NoTime, lacking));
    }
    std::optional<Instant> nominal;
    if (hour && !zone) {
        const record::ObservingHour filed{*date, *hour};
        nominal = record::momentOf(station, filed);
        if (nominal) {
            result.hour = filed;
            result.instant = *nominal;
        } else if (isObservingHour(station, filed) && !clockText) {
            return tl::unexpected(cells.refuse(RejectReason::ImpossibleTime, ImportField::Hour));
        }
    }
    if (clockText) {
        const auto clock = record::parseHour(*clockText);
        if (!clock) {
            return tl::unexpected(
                cells.refuse(RejectReason::BadTime, ImportField::Clock, detailOf(clock.error())));
        }
        LocalTime local = LocalTime{*date} + *clock;
        if (nominal) {
            // Half past midnight may be the reading of the evening before.
            const LocalTime atHour{nominal->time_since_epoch() +
                                   station.periodAt(*nominal).zone.offsetAt(*nominal)};
            for (const auto day : {*date - date::days{1}, *date + date::days{1}}) {
                const LocalTime other = LocalTime{day} + *clock;
                local = std::chrono::abs(other - atHour) < std::chrono::abs(local - atHour) ? other : local;
            }
        }
        const auto moment = single(resolve(station, zone, local), doubleTimes);
        if (!moment) {
            return tl::unexpected(cells.refuse(moment.error(), ImportField::Clock));
        }
        result.instant = *moment;
        return result;
    }
    if (!nominal) {
        const LocalTime local = LocalTime{*date} + *hour;
        const auto moment = zone ? single(record::resolveLocal(*zone, local), doubleTimes)
                                 : momentUnderRule(station, local, doubleTimes);
        if (!moment) {
            return tl::unexpected(cells.refuse(moment.error(), ImportField::Hour));
        }
        result.instant = *moment;
    }
    return result;
}

} // namespace

tl::expected<RowTime, RejectedLine> rowTime(const FieldCells& row, const record::StationRecord& station,
                                            const std::optional<record::Zone>& zone, DateOrder order,
                                            DoubleTimes doubleTimes, bool exported) {
    const TimeCells cells{row};
    auto time = timeOfRow(cells, station, zone, order, doubleTimes, exported);
    if (time && !liesInTheYears(time->instant)) {
        const auto field = cells.value(ImportField::Time) ? ImportField::Time : ImportField::Date;
        return tl::unexpected(cells.refuse(RejectReason::BadTime, field, "no-such-date"));
    }
    return time;
}

} // namespace wickbook::exchange
