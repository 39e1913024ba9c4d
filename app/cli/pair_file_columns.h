// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/pair_result.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The columns of a file of pairs and of what goes out for it: which cell holds what is worked out once, from
/// the header, since a file may have a million rows.

namespace wickbook::cli {

/// What is looked for in a row, in the order of pairFieldName().
enum class PairField { Dry, Wet, Pressure, Wick, Exposure, Coefficient };
inline constexpr std::size_t kPairFields = 6;
/// "dry_c", "wet_c", "pressure_hpa", "wick", "exposure", "coefficient_per_k".
std::string_view pairFieldName(PairField field);

class PairFileColumns {
public:
    static Outcome<PairFileColumns> from(std::vector<std::string> header);

    [[nodiscard]] std::size_t count() const { return header_.size(); }
    [[nodiscard]] bool has(PairField field) const { return at(field).has_value(); }
    /// The cell without blanks round it; empty where the file has no such column.
    [[nodiscard]] std::string_view cell(const std::vector<std::string>& row, PairField field) const;
    [[nodiscard]] std::vector<std::string> outHeader() const;
    /// Appends the row as it goes out, as CSV without its end: its own cells, the used values laid over those
    /// of the same name, the other results behind.
    void appendOutRow(std::string& line, const std::vector<std::string>& row, const PairResult& result) const;

private:
    [[nodiscard]] std::optional<std::size_t> at(PairField field) const {
        return places_.at(static_cast<std::size_t>(field));
    }
    [[nodiscard]] bool hasName(std::string_view name) const;

    std::vector<std::string> header_; ///< as it stood
    std::vector<std::string> names_;  ///< without blanks round them
    std::array<std::optional<std::size_t>, kPairFields> places_;
    std::vector<const ResultColumn*> over_;   ///< for each own column the result laid over it, or nullptr
    std::vector<const ResultColumn*> behind_; ///< results with no own column
};

} // namespace wickbook::cli
