// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/instant.h"

#include <fmt/format.h>

#include <cstdlib>

namespace wickbook::record {

using namespace std::chrono_literals;

namespace {

/// A cursor over the text of a time: takes digits and marks, never more than asked for.
class Cursor {
public:
    explicit Cursor(std::string_view text) : text_(text) {}

    /// Between fewest and most digits; none where there are fewer.
    std::optional<int> digits(std::size_t fewest, std::size_t most) {
        std::size_t count = 0;
        int value = 0;
        while (count < most && count < text_.size() && text_[count] >= '0' && text_[count] <= '9') {
            value = value * 10 + (text_[count] - '0');
            ++count;
        }
        if (count < fewest) {
            return std::nullopt;
        }
        text_.remove_prefix(count);
        return value;
    }
    bool mark(char c) {
        if (text_.starts_with(c)) {
            text_.remove_prefix(1);
            return true;
        }
        return false;
    }
    bool minus() {
        static constexpr std::string_view kUnicodeMinus = "\u2212";
        if (text_.starts_with(kUnicodeMinus)) {
            text_.remove_prefix(kUnicodeMinus.size());
            return true;
        }
        return mark('-');
    }
    [[nodiscard]] bool atEnd() const { return text_.empty(); }
    void skipBlanks() {
        while (mark(' ') || mark('\t') || mark('\r')) {
        }
    }

private:
    std::string_view text_;
};

tl::expected<StationDate, TimeTextError> readDate(Cursor& cursor) {
    const auto year = cursor.digits(4, 4);
    if (!year) {
        return tl::unexpected(TimeTextError::NotATime);
    }
    const bool dashed = cursor.mark('-');
    const auto month = cursor.digits(2, 2);
    if (!month || (dashed && !cursor.mark('-'))) {
        return tl::unexpected(TimeTextError::NotATime);
    }
    const auto day = cursor.digits(2, 2);
    if (!day) {
        return tl::unexpected(TimeTextError::NotATime);
    }
    const date::year_month_day ymd{date::year{*year}, date::month{static_cast<unsigned>(*month)},
                                   date::day{static_cast<unsigned>(*day)}};
    if (!ymd.ok() || *year < 1600 || *year > 2200) {
        return tl::unexpected(TimeTextError::NoSuchDate);
    }
    return StationDate{date::local_days{ymd}};
}

/// hh[:mm[:ss[.fraction]]] or hhmm[ss]; a fraction of a second is dropped, no thermometer knows it.
tl::expected<std::chrono::seconds, TimeTextError> readTimeOfDay(Cursor& cursor, bool minutesNeeded) {
    const auto hour = cursor.digits(1, 2);
    if (!hour) {
        return tl::unexpected(TimeTextError::NotATime);
    }
    std::optional<int> minute;
    std::optional<int> second;
    if (cursor.mark(':') || cursor.mark('.')) {
        minute = cursor.digits(2, 2);
        if (!minute) {
            return tl::unexpected(TimeTextError::NotATime);
        }
        if (cursor.mark(':')) {
            second = cursor.digits(2, 2);
            if (!second) {
                return tl::unexpected(TimeTextError::NotATime);
            }
        }
    } else if ((minute = cursor.digits(2, 2))) {
        second = cursor.digits(2, 2);
    } else if (minutesNeeded) {
        return tl::unexpected(TimeTextError::NotATime);
    }
    if (second && (cursor.mark('.') || cursor.mark(',')) && !cursor.digits(1, 9)) {
        return tl::unexpected(TimeTextError::NotATime);
    }
    if (*hour > 24 || minute.value_or(0) > 59 || second.value_or(0) > 59) {
        return tl::unexpected(TimeTextError::NoSuchClockTime);
    }
    const auto time = std::chrono::hours{*hour} + std::chrono::minutes{minute.value_or(0)} +
                      std::chrono::seconds{second.value_or(0)};
    if (time > 24h) {
        return tl::unexpected(TimeTextError::NoSuchClockTime);
    }
    return time;
}

} // namespace

std::string instantText(Instant instant) {
    const auto day = date::floor<date::days>(instant);
    const date::year_month_day ymd{day};
    const auto time = date::make_time(instant - day);
    return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}Z", static_cast<int>(ymd.year()),
                       static_cast<unsigned>(ymd.month()), static_cast<unsigned>(ymd.day()),
                       time.hours().count(), time.minutes().count(), time.seconds().count());
}

std::string dateText(StationDate date) {
    const date::year_month_day ymd{date};
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(ymd.year()), static_cast<unsigned>(ymd.month()),
                       static_cast<unsigned>(ymd.day()));
}

std::string hourText(HourOfDay hour) {
    return fmt::format("{:02}:{:02}", hour.count() / 60, hour.count() % 60);
}

std::string offsetText(std::chrono::seconds offset) {
    const auto count = std::abs(offset.count());
    std::string text =
        fmt::format("{}{:02}:{:02}", offset.count() < 0 ? '-' : '+', count / 3600, count / 60 % 60);
    if (count % 60 != 0) {
        text += fmt::format(":{:02}", count % 60);
    }
    return text;
}

std::string localTimeText(LocalTime time) {
    const auto day = date::floor<date::days>(time);
    const auto rest = date::make_time(time - day);
    return fmt::format("{}T{:02}:{:02}:{:02}", dateText(day), rest.hours().count(), rest.minutes().count(),
                       rest.seconds().count());
}

tl::expected<WrittenTime, TimeTextError> parseTime(std::string_view text) {
    Cursor cursor{text};
    cursor.skipBlanks();
    if (cursor.atEnd()) {
        return tl::unexpected(TimeTextError::Empty);
    }
    const auto day = readDate(cursor);
    if (!day) {
        return tl::unexpected(day.error());
    }
    if (!cursor.mark('T') && !cursor.mark('t') && !cursor.mark(' ')) {
        return tl::unexpected(TimeTextError::NotATime);
    }
    const auto time = readTimeOfDay(cursor, true);
    if (!time) {
        return tl::unexpected(time.error());
    }
    WrittenTime written{LocalTime{*day} + *time, std::nullopt};
    cursor.skipBlanks();
    if (cursor.mark('Z') || cursor.mark('z')) {
        written.offset = 0s;
    } else {
        const bool plus = cursor.mark('+');
        const bool minus = !plus && cursor.minus();
        if (plus || minus) {
            const auto size = readTimeOfDay(cursor, false);
            // No zone has ever stood further than 15:13:42 from UTC.
            if (!size || *size > 16h) {
                return tl::unexpected(TimeTextError::NotATime);
            }
            written.offset = minus ? -*size : *size;
        }
    }
    cursor.skipBlanks();
    if (!cursor.atEnd()) {
        return tl::unexpected(TimeTextError::NotATime);
    }
    return written;
}

tl::expected<StationDate, TimeTextError> parseDate(std::string_view text) {
    Cursor cursor{text};
    cursor.skipBlanks();
    if (cursor.atEnd()) {
        return tl::unexpected(TimeTextError::Empty);
    }
    auto day = readDate(cursor);
    cursor.skipBlanks();
    if (day && !cursor.atEnd()) {
        return tl::unexpected(TimeTextError::NotATime);
    }
    return day;
}

tl::expected<HourOfDay, TimeTextError> parseHour(std::string_view text) {
    Cursor cursor{text};
    cursor.skipBlanks();
    if (cursor.atEnd()) {
        return tl::unexpected(TimeTextError::Empty);
    }
    const auto time = readTimeOfDay(cursor, false);
    if (!time) {
        return tl::unexpected(time.error());
    }
    cursor.skipBlanks();
    if (!cursor.atEnd()) {
        return tl::unexpected(TimeTextError::NotATime);
    }
    if (*time >= 24h) {
        return tl::unexpected(TimeTextError::NoSuchClockTime);
    }
    return std::chrono::floor<std::chrono::minutes>(*time);
}

std::string monthText(date::year_month month) {
    return dateText(StationDate{month / 1}).substr(0, 7);
}

tl::expected<date::year_month, TimeTextError> parseMonth(std::string_view text) {
    Cursor cursor{text};
    cursor.skipBlanks();
    if (cursor.atEnd()) {
        return tl::unexpected(TimeTextError::Empty);
    }
    const auto year = cursor.digits(4, 4);
    const bool dash = cursor.mark('-');
    const auto month = cursor.digits(2, 2);
    cursor.skipBlanks();
    if (!year || !dash || !month || !cursor.atEnd()) {
        return tl::unexpected(TimeTextError::NotATime);
    }
    const date::year_month result{date::year{*year}, date::month{static_cast<unsigned>(*month)}};
    if (!result.ok() || *year < 1600 || *year > 2200) {
        return tl::unexpected(TimeTextError::NoSuchDate);
    }
    return result;
}

} // namespace wickbook::record
