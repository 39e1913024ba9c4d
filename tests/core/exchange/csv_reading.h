// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv.h"

#include <sstream>
#include <string>
#include <vector>

namespace wickbook::exchange::testing {

/// Everything a reader says of a text.
struct ReadAll {
    std::vector<CsvRecord> records;
    std::vector<CsvError> errors;
    CsvFormat format;

    [[nodiscard]] std::vector<std::vector<std::string>> cells() const {
        std::vector<std::vector<std::string>> result;
        for (const auto& record : records) {
            result.push_back(record.cells);
        }
        return result;
    }
};

inline ReadAll readAll(std::istream& input, std::optional<char> separator = {}) {
    CsvReader reader(input, separator);
    ReadAll result;
    for (;;) {
        auto record = reader.next();
        if (!record) {
            result.errors.push_back(record.error());
        } else if (*record) {
            result.records.push_back(std::move(**record));
        } else {
            break;
        }
    }
    result.format = reader.format();
    return result;
}

inline ReadAll readAll(const std::string& text, std::optional<char> separator = {}) {
    std::istringstream input(text);
    return readAll(input, separator);
}

using Table = std::vector<std::vector<std::string>>;

} // namespace wickbook::exchange::testing
