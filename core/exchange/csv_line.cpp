// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"

#include <algorithm>

namespace wickbook::exchange {

std::string csvErrorName(CsvErrorKind kind) {
    switch (kind) {
    case CsvErrorKind::OpenQuote:
        return "open-quote";
    case CsvErrorKind::TextAfterQuote:
        return "text-after-quote";
    case CsvErrorKind::QuoteInText:
        return "quote-in-text";
    case CsvErrorKind::LineTooLong:
        return "line-too-long";
    case CsvErrorKind::NulByte:
        return "nul-byte";
    case CsvErrorKind::NotReadable:
        return "broken-utf-16";
    case CsvErrorKind::Empty:
        break;
    }
    return {};
}

void appendCsvCell(std::string& line, std::string_view cell, char separator) {
    const bool special = std::any_of(cell.begin(), cell.end(), [separator](char c) {
        return c == separator || c == '"' || c == '\r' || c == '\n';
    });
    if (!special) {
        line += cell;
        return;
    }
    line.push_back('"');
    for (const char c : cell) {
        if (c == '"') {
            line.push_back('"');
        }
        line.push_back(c);
    }
    line.push_back('"');
}

std::string csvLine(const std::vector<std::string>& cells, char separator) {
    if (cells.size() == 1 && cells.front().empty()) {
        return "\"\"";
    }
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0) {
            line.push_back(separator);
        }
        appendCsvCell(line, cells[i], separator);
    }
    return line;
}

} // namespace wickbook::exchange
