// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <span>
#include <string>
#include <string_view>

/// One table of every limit the rules use: name, value, unit and source. A station may differ from it; its
/// own values are kept in the book.

namespace wickbook::checks {

struct LimitEntry {
    std::string_view name; ///< "very-dry.lowest-humidity"
    double value;
    std::string_view unit; ///< "%", "K", "h", "hPa", ""
    std::string_view source;
};

std::span<const LimitEntry> limitTable();

/// Built-in values with the station's own laid over.
class Limits {
public:
    Limits() = default;
    explicit Limits(std::map<std::string, double> own) : own_(std::move(own)) {}
    /// Pre: name stands in the table.
    [[nodiscard]] double value(std::string_view name) const;

private:
    std::map<std::string, double> own_;
};

} // namespace wickbook::checks
