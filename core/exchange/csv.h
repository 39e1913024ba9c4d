// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <tl/expected.hpp>

#include <cstdint>
#include <functional>
#include <istream>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// CSV as of RFC 4180, as real files are: streaming, bounded memory, strict about what would be misread.
/// Accepts UTF-8 (with or without BOM) and UTF-16 with BOM; Latin-1 where UTF-8 is not valid (told, not
/// guessed in silence). Separator ',', ';' or tab is found from the header line. CR, LF, CRLF all end a line
/// outside quotes.

namespace wickbook::exchange {

struct CsvRecord {
    std::int64_t line = 0;          ///< number of the line it begins on, from 1
    std::vector<std::string> cells; ///< UTF-8
    std::string text;               ///< the record as it stood, for the rejects file
};

enum class CsvErrorKind { Empty, OpenQuote, TextAfterQuote, LineTooLong, NulByte, NotReadable };
struct CsvError {
    CsvErrorKind kind;
    std::int64_t line = 0;
};

struct CsvFormat {
    char separator = ',';
    std::string encoding = "UTF-8"; ///< as found
};

/// Longest record taken, bytes. A longer one is an error for that record, and reading goes on at the next
/// line.
inline constexpr std::size_t kLongestRecord = 1U << 20U;

class CsvReader {
public:
    /// The stream must outlive the reader. Separator found from the first line unless given.
    explicit CsvReader(std::istream& input, std::optional<char> separator = {});
    ~CsvReader();
    CsvReader(CsvReader&&) noexcept;
    CsvReader& operator=(CsvReader&&) noexcept;

    /// The next record; none at the end. An error tells of one record; the reader can go on after it,
    /// but for OpenQuote at the end of the input.
    tl::expected<std::optional<CsvRecord>, CsvError> next();
    [[nodiscard]] const CsvFormat& format() const;
    /// Bytes read so far, for progress.
    [[nodiscard]] std::int64_t bytesRead() const;

private:
    struct State;
    std::unique_ptr<State> state_;
};

/// One line without its end, quoted where RFC 4180 needs it. Data stay as they are, whatever a spreadsheet
/// makes of them.
std::string csvLine(const std::vector<std::string>& cells, char separator = ',');

} // namespace wickbook::exchange
