// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <charconv>
#include <fstream>
#include <functional>
#include <map>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

/// Reads the published values under tests/reference: UTF-8, comma, first line names the columns, quotes
/// doubled inside quotes, no line breaks inside a cell. Throws on anything else: a reference file that can't
/// be read must fail its test.

namespace wickbook::support {

class ReferenceRow {
public:
    ReferenceRow(std::map<std::string, std::string, std::less<>> cells, std::string where)
        : cells_(std::move(cells)), where_(std::move(where)) {}

    [[nodiscard]] const std::string& text(std::string_view column) const {
        const auto found = cells_.find(column);
        if (found == cells_.end()) {
            throw std::runtime_error(where_ + ": no column " + std::string(column));
        }
        return found->second;
    }
    /// Missing where the cell is blank.
    [[nodiscard]] std::optional<double> number(std::string_view column) const {
        std::string_view cell = text(column);
        if (cell.empty()) {
            return std::nullopt;
        }
        if (cell.front() == '+') {
            cell.remove_prefix(1);
        }
        double value = 0;
        const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
        if (error != std::errc{} || end != cell.data() + cell.size()) {
            throw std::runtime_error(where_ + ": not a number: " + std::string(cell));
        }
        return value;
    }
    [[nodiscard]] double need(std::string_view column) const {
        const auto value = number(column);
        if (!value) {
            throw std::runtime_error(where_ + ": blank " + std::string(column));
        }
        return *value;
    }
    /// File and line, for messages.
    [[nodiscard]] const std::string& where() const { return where_; }

private:
    std::map<std::string, std::string, std::less<>> cells_;
    std::string where_;
};

inline std::vector<std::string> splitReferenceLine(std::string_view line) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const char c = line[i];
        if (quoted && c == '"' && i + 1 < line.size() && line[i + 1] == '"') {
            cells.back() += '"';
            ++i;
        } else if (c == '"') {
            quoted = !quoted;
        } else if (c == ',' && !quoted) {
            cells.emplace_back();
        } else if (c != '\r') {
            cells.back() += c;
        }
    }
    return cells;
}

/// name is the file's name under tests/reference.
inline std::vector<ReferenceRow> readReference(const std::string& name) {
    std::ifstream file(std::string(WICKBOOK_TEST_DATA) + "/reference/" + name);
    std::string line;
    if (!file || !std::getline(file, line)) {
        throw std::runtime_error("tests/reference/" + name + " can't be read");
    }
    const auto columns = splitReferenceLine(line);
    std::vector<ReferenceRow> rows;
    for (int number = 2; std::getline(file, line); ++number) {
        if (line.empty()) {
            continue;
        }
        const auto cells = splitReferenceLine(line);
        const std::string where = name + " line " + std::to_string(number);
        if (cells.size() != columns.size()) {
            throw std::runtime_error(where + ": " + std::to_string(cells.size()) + " cells");
        }
        std::map<std::string, std::string, std::less<>> row;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            row.emplace(columns[i], cells[i]);
        }
        rows.emplace_back(std::move(row), where);
    }
    return rows;
}

} // namespace wickbook::support
