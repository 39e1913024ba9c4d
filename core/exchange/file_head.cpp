// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/file_head.h"

#include "core/exchange/cell_text.h"
#include "core/exchange/column_guess.h"

#include <algorithm>
#include <fstream>
#include <system_error>

namespace wickbook::exchange {

FileKind fileKindOf(std::string_view head) {
    if (head.empty()) {
        return FileKind::Empty;
    }
    if (beginsAsSef(head)) {
        return FileKind::Sef;
    }
    if (head.starts_with("\xFF\xFE") || head.starts_with("\xFE\xFF")) {
        return FileKind::Csv;
    }
    const bool binary = std::any_of(head.begin(), head.end(), [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return byte < 0x20 && byte != '\t' && byte != '\n' && byte != '\r' && byte != '\f' && byte != '\v';
    });
    return binary ? FileKind::Binary : FileKind::Csv;
}

bool isDatabase(const std::filesystem::path& file) {
    // "The SQLite database file format", section 1.3.1: the first sixteen bytes.
    static constexpr std::string_view kMagic{"SQLite format 3\0", 16};
    std::error_code ignored;
    if (!std::filesystem::is_regular_file(file, ignored)) {
        return false; // a pipe must not be opened to look
    }
    std::ifstream input(file, std::ios::binary);
    std::string head(kMagic.size(), ' ');
    return input.read(head.data(), static_cast<std::streamsize>(head.size())) && head == kMagic;
}

FileHead readFileHead(std::istream& input, std::size_t mostRows, std::optional<char> separator) {
    CsvReader reader(input, separator);
    FileHead head;
    // A file of nothing but slips ends too.
    for (std::size_t tried = 0; tried < 2 * mostRows && head.rows.size() < mostRows; ++tried) {
        auto record = reader.next();
        if (!record) {
            if (record.error().kind == CsvErrorKind::Empty ||
                record.error().kind == CsvErrorKind::NotReadable) {
                break;
            }
            continue;
        }
        if (!*record) {
            break;
        }
        head.rows.push_back(std::move((*record)->cells));
    }
    head.format = reader.format();
    head.columns = head.rows.empty() ? 0 : head.rows.front().size();
    return head;
}

bool looksHeadless(const std::vector<std::vector<std::string>>& rows) {
    if (rows.empty()) {
        return false;
    }
    const auto& first = rows.front();
    const bool named = std::any_of(first.begin(), first.end(), [](const std::string& cell) {
        return headerMeaning(cell).field.has_value();
    });
    return !named && std::any_of(first.begin(), first.end(), [](const std::string& cell) {
        return !isMissingWord(cell) &&
               (record::parseTime(cell) || record::parseDate(cell) || units::parseDecimal(cell).has_value());
    });
}

} // namespace wickbook::exchange
