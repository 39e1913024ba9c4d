// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/date_guess.h"

#include "core/exchange/cell_text.h"

#include <array>

namespace wickbook::exchange {

namespace {

/// Three groups of digits with one kind of mark between.
struct Parts {
    std::array<int, 3> numbers{};
    std::array<std::size_t, 3> digits{};
    char mark = 0;
};

std::optional<Parts> partsOf(std::string_view text) {
    Parts parts;
    std::size_t part = 0;
    for (const char c : text) {
        if (c >= '0' && c <= '9') {
            if (++parts.digits.at(part) > 4) {
                return std::nullopt;
            }
            parts.numbers.at(part) = parts.numbers.at(part) * 10 + (c - '0');
            continue;
        }
        const bool isMark = c == '/' || c == '-' || c == '.';
        if (!isMark || parts.digits.at(part) == 0 || part == 2 || (part == 1 && c != parts.mark)) {
            return std::nullopt;
        }
        parts.mark = c;
        ++part;
    }
    if (part != 2 || parts.digits[2] == 0) {
        return std::nullopt;
    }
    return parts;
}

/// d/m/yyyy or m/d/yyyy.
bool needsOrder(const Parts& parts) {
    return parts.mark != '.' && parts.digits[0] <= 2 && parts.digits[1] <= 2 && parts.digits[2] == 4;
}

tl::expected<record::StationDate, DateTextError> dateOf(int year, int month, int day) {
    if (month < 1 || month > 12 || day < 1 || day > 31 || year < 1600 || year > 2200) {
        return tl::unexpected(DateTextError::NoSuchDate);
    }
    const date::year_month_day ymd{date::year{year}, date::month{static_cast<unsigned>(month)},
                                   date::day{static_cast<unsigned>(day)}};
    if (!ymd.ok()) {
        return tl::unexpected(DateTextError::NoSuchDate);
    }
    return record::StationDate{date::local_days{ymd}};
}

} // namespace

std::optional<DateAndRest> splitDate(std::string_view text) {
    text = trimmedCell(text);
    const auto at = text.find_first_of(" Tt");
    if (at == std::string_view::npos || at == 0) {
        return std::nullopt;
    }
    const auto rest = trimmedCell(text.substr(at + 1));
    if (rest.empty()) {
        return std::nullopt;
    }
    return DateAndRest{text.substr(0, at), rest};
}

bool DateGuess::look(std::string_view text) {
    text = trimmedCell(text);
    const auto split = splitDate(text);
    const auto parts = partsOf(split ? split->date : text);
    if (!parts || !needsOrder(*parts)) {
        return false;
    }
    const int first = parts->numbers[0];
    const int second = parts->numbers[1];
    dayFirst_ = dayFirst_ || (first > 12 && first <= 31 && second >= 1 && second <= 12);
    monthFirst_ = monthFirst_ || (second > 12 && second <= 31 && first >= 1 && first <= 12);
    return true;
}

DateOrder DateGuess::order() const {
    if (dayFirst_ && monthFirst_) {
        return DateOrder::Contradicting;
    }
    return dayFirst_ ? DateOrder::DayFirst : monthFirst_ ? DateOrder::MonthFirst : DateOrder::Unknown;
}

tl::expected<record::StationDate, DateTextError> readDate(std::string_view text, DateOrder order) {
    text = trimmedCell(text);
    if (text.empty()) {
        return tl::unexpected(DateTextError::Empty);
    }
    const auto iso = record::parseDate(text);
    if (iso) {
        return *iso;
    }
    const auto parts = partsOf(text);
    if (!parts) {
        return tl::unexpected(iso.error() == record::TimeTextError::NoSuchDate ? DateTextError::NoSuchDate
                                                                               : DateTextError::NotADate);
    }
    const auto& [first, second, third] = parts->numbers;
    if (parts->digits[0] == 4 && parts->digits[1] <= 2 && parts->digits[2] <= 2) {
        return dateOf(first, second, third);
    }
    if (parts->digits[0] <= 2 && parts->digits[1] <= 2 && parts->digits[2] <= 2) {
        return tl::unexpected(DateTextError::TwoDigitYear);
    }
    if (parts->digits[0] > 2 || parts->digits[1] > 2 || parts->digits[2] != 4) {
        return tl::unexpected(DateTextError::NotADate);
    }
    if (!needsOrder(*parts) || first == second) {
        return dateOf(third, second, first);
    }
    if (first > 12 && second > 12) {
        return tl::unexpected(DateTextError::NoSuchDate);
    }
    switch (order) {
    case DateOrder::DayFirst:
        return dateOf(third, second, first);
    case DateOrder::MonthFirst:
        return dateOf(third, first, second);
    case DateOrder::Unknown:
    case DateOrder::Contradicting:
        break;
    }
    return tl::unexpected(DateTextError::DayOrMonth);
}

} // namespace wickbook::exchange
