// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"

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

std::string csvLine(const std::vector<std::string>& cells, char separator) {
    if (cells.size() == 1 && cells.front().empty()) {
        return "\"\"";
    }
    const std::string special{separator, '"', '\r', '\n'};
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0) {
            line.push_back(separator);
        }
        const auto& cell = cells[i];
        if (cell.find_first_of(special) == std::string::npos) {
            line += cell;
            continue;
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
    return line;
}

} // namespace wickbook::exchange
