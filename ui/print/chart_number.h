// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <limits>
#include <optional>

/// A finite number or none, in the room of a number: a chart of a century keeps half a million of them. Used
/// as std::optional<double> is; that none is kept as "not a number" stays in here.

namespace wickbook::ui {

class ChartNumber {
public:
    ChartNumber() = default;
    ChartNumber(double value) : value_(value) {}    // NOLINT(google-explicit-constructor): as std::optional
    ChartNumber(const std::optional<double>& value) // NOLINT(google-explicit-constructor)
        : value_(value.value_or(kNone)) {}

    [[nodiscard]] bool has_value() const { return !std::isnan(value_); }
    explicit operator bool() const { return has_value(); }
    /// Pre: has_value().
    [[nodiscard]] double operator*() const { return value_; }
    [[nodiscard]] double value_or(double otherwise) const { return has_value() ? value_ : otherwise; }
    operator std::optional<double>() const { // NOLINT(google-explicit-constructor)
        return has_value() ? std::optional{value_} : std::nullopt;
    }

private:
    static constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
    double value_ = kNone;
};

} // namespace wickbook::ui
