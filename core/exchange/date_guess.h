// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instant.h"

#include <optional>
#include <string>
#include <string_view>

/// Dates as people write them. 1/3/2025 is the first of March to some and the third of January to others: it
/// is read only where the dates of the whole file leave no doubt. Years need four digits: a register may lie
/// in any of three centuries.

namespace wickbook::exchange {

enum class DateOrder {
    Unknown,      ///< nothing seen that tells
    DayFirst,     ///< 31/12/2025 seen
    MonthFirst,   ///< 12/31/2025 seen
    Contradicting ///< both seen
};

enum class DateTextError { Empty, NotADate, NoSuchDate, TwoDigitYear, DayOrMonth };

/// Learns the order from the dates of a file.
class DateGuess {
public:
    /// Takes a date, or a time that begins with one; true where it is of the kind that needs the guess.
    bool look(std::string_view text);
    [[nodiscard]] DateOrder order() const;

private:
    bool dayFirst_ = false;
    bool monthFirst_ = false;
};

/// ISO, 2025/03/01, 1.3.2025 (the point stands for day first), and 1/3/2025 or 1-3-2025 by the order.
tl::expected<record::StationDate, DateTextError> readDate(std::string_view text, DateOrder order);

/// A date and what follows it after a blank or 'T'; none where there is no such division.
struct DateAndRest {
    std::string_view date;
    std::string_view rest;
};
std::optional<DateAndRest> splitDate(std::string_view text);

} // namespace wickbook::exchange
