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
/// outside quotes. Empty lines are passed over.
///
/// Why a reader of our own rather than a library: a single line of 1 GB must not fill the memory, UTF-16 must
/// be read rather than refused, a rejected record must be handed back exactly as it stood, and after a slip
/// (an open quote above all) reading must go on at the next line, so that one slip costs one line.
///
/// Invariant: at most about two records of kLongestRecord are held, whatever the input.

namespace wickbook::exchange {

struct CsvRecord {
    std::int64_t line = 0;          ///< number of the line it begins on, from 1
    std::vector<std::string> cells; ///< UTF-8
    std::string text; ///< the record as it stood (in UTF-8, without its end), for the rejects file
};

enum class CsvErrorKind {
    Empty,     ///< nothing in the whole input
    OpenQuote, ///< a quote is never closed, not within kLongestRecord, or by one that begins another cell
    TextAfterQuote, ///< something other than a separator follows a closing quote
    QuoteInText,    ///< a quote inside a cell that does not begin with one
    LineTooLong,    ///< longer than kLongestRecord
    NulByte,        ///< a zero byte, as in UTF-16 without its mark
    NotReadable     ///< broken UTF-16, or the stream failed (then reading ends)
};

struct CsvError {
    CsvErrorKind kind;
    std::int64_t line = 0; ///< line on which the record, or its open quote, begins
    std::string text; ///< the lines passed over, as they stood; a too long one is cut at kLongestErrorText
};

struct CsvFormat {
    char separator = ',';
    /// As found: "UTF-8", "UTF-16LE", "UTF-16BE", or "Latin-1" once a record was not valid UTF-8. Only such
    /// records are read as Latin-1; bytes 0x80…0x9F in them as Windows-1252 has them (dashes and quotes).
    std::string encoding = "UTF-8";
};

/// Stable word for a record that can't be read: "open-quote"; empty for Empty.
std::string csvErrorName(CsvErrorKind kind);

/// Longest record taken, bytes. A longer one is an error for that record, and reading goes on at the next
/// line.
inline constexpr std::size_t kLongestRecord = 1U << 20U;
/// What is kept of a record that is too long, bytes.
inline constexpr std::size_t kLongestErrorText = 1000;
/// End of a line in files we write (RFC 4180, section 2).
inline constexpr std::string_view kCsvLineEnd = "\r\n";

class CsvReader {
public:
    /// The stream must outlive the reader. Separator found from the first line unless given.
    explicit CsvReader(std::istream& input, std::optional<char> separator = {});
    ~CsvReader();
    CsvReader(CsvReader&&) noexcept;
    CsvReader& operator=(CsvReader&&) noexcept;

    /// The next record; none at the end. An error tells of one record; the reader goes on after it: at the
    /// line after the one where the quote opened, else at the next line.
    tl::expected<std::optional<CsvRecord>, CsvError> next();
    [[nodiscard]] const CsvFormat& format() const;
    /// Bytes read so far, for progress.
    [[nodiscard]] std::int64_t bytesRead() const;

private:
    struct State;
    std::unique_ptr<State> state_;
};

/// One line without its end, quoted where RFC 4180 needs it. Data stay as they are, whatever a spreadsheet
/// makes of them. A single empty cell is written as "" so that it is not taken for an empty line.
std::string csvLine(const std::vector<std::string>& cells, char separator = ',');

/// One cell behind what stands in the line already, quoted where it must be.
void appendCsvCell(std::string& line, std::string_view cell, char separator = ',');

} // namespace wickbook::exchange
