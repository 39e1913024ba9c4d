// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/byte_decoder.h"
#include "core/exchange/csv.h"

#include <algorithm>
#include <array>

/// One record at a time out of a window on the decoded bytes. The window begins at the record being read, so
/// that after a slip reading can go back to the line after it; it is never longer than a record and a chunk.

namespace wickbook::exchange {

namespace {

bool endsLine(char c) {
    return c == '\n' || c == '\r';
}

} // namespace

struct CsvReader::State {
    State(std::istream& input, std::optional<char> given) : decoder(input), separatorGiven(given) {}

    /// Whether a byte stands at this place of the window, fetching more where needed.
    bool has(std::size_t i) {
        while (i >= window.size()) {
            if (!decoder.appendChunk(window)) {
                return false;
            }
        }
        return true;
    }

    /// Steps over the end of a line at i, CRLF as one.
    std::size_t pastLineEnd(std::size_t i) {
        const bool pair = window[i] == '\r' && has(i + 1) && window[i + 1] == '\n';
        return i + (pair ? 2 : 1);
    }

    /// Throws away what has been read.
    void advanceTo(std::size_t i) {
        start = i;
        if (start >= kLongestRecord || start == window.size()) {
            window.erase(0, start);
            start = 0;
        }
    }

    /// Means nothing to the reader.
    [[nodiscard]] bool isPlain(char c) const {
        return c != format.separator && c != '"' && c != '\0' && !endsLine(c);
    }
    void findSeparator();
    std::string decoded(std::string_view bytes, bool latin1);
    tl::expected<std::optional<CsvRecord>, CsvError> readRecord();
    CsvError fail(CsvErrorKind kind, std::size_t lineStart, std::int64_t lineNumber, std::size_t seen);

    ByteDecoder decoder;
    std::optional<char> separatorGiven;
    CsvFormat format;
    std::string window;
    std::size_t start = 0;       ///< of the next record in the window
    std::int64_t line = 1;       ///< number of the line there
    std::size_t cellsBefore = 0; ///< in the record before
    bool begun = false;
    bool sawRecord = false;
    bool told = false; ///< of an empty input or a failed stream
};

/// The mark most often met outside quotes in the first line that is not empty; none at all: a comma.
void CsvReader::State::findSeparator() {
    static constexpr std::array<char, 3> kCandidates{'\t', ';', ','};
    std::array<std::size_t, 3> counts{};
    bool quoted = false;
    bool any = false;
    for (std::size_t i = 0; i < kLongestRecord && has(i); ++i) {
        const char c = window[i];
        if (c == '"') {
            quoted = !quoted;
        } else if (endsLine(c) && !quoted) {
            if (any) {
                break;
            }
            continue;
        } else if (!quoted) {
            for (std::size_t k = 0; k < kCandidates.size(); ++k) {
                counts.at(k) += c == kCandidates.at(k) ? 1U : 0U;
            }
        }
        any = true;
    }
    const auto most = std::max_element(counts.begin(), counts.end());
    format.separator = separatorGiven.value_or(
        *most == 0 ? ',' : kCandidates.at(static_cast<std::size_t>(most - counts.begin())));
}

std::string CsvReader::State::decoded(std::string_view bytes, bool latin1) {
    return latin1 ? latin1ToUtf8(bytes) : std::string(bytes);
}

/// Makes the error and finds where reading goes on: the line after the one that begins at lineStart.
/// seen: how far the bytes are known to be one line without end, 0 where that is not known.
CsvError CsvReader::State::fail(CsvErrorKind kind, std::size_t lineStart, std::int64_t lineNumber,
                                std::size_t seen) {
    const std::size_t recordStart = start;
    const std::int64_t recordLine = kind == CsvErrorKind::OpenQuote ? lineNumber : line;
    std::size_t i = std::max(lineStart, seen);
    const std::size_t longest = recordStart + 2 * kLongestRecord;
    while (i < longest && has(i) && !endsLine(window[i])) {
        ++i;
    }
    const bool cut = kind == CsvErrorKind::LineTooLong || i >= longest;
    std::string_view bytes = std::string_view(window).substr(recordStart, i - recordStart);
    if (cut) {
        bytes = bytes.substr(0, kLongestErrorText);
        while (!bytes.empty() && (static_cast<unsigned char>(bytes.back()) & 0xC0U) == 0x80U) {
            bytes.remove_suffix(1); // don't cut within a character
        }
        if (!bytes.empty() && static_cast<unsigned char>(bytes.back()) >= 0xC0U) {
            bytes.remove_suffix(1);
        }
    }
    CsvError error{kind, recordLine, decoded(bytes, !isUtf8(bytes))};
    // A line without end is let go piece by piece.
    while (has(i) && !endsLine(window[i])) {
        ++i;
        if (i >= kLongestRecord) {
            window.erase(0, i);
            i = 0;
        }
    }
    line = lineNumber;
    if (has(i)) {
        i = pastLineEnd(i);
        ++line;
    }
    advanceTo(i);
    return error;
}

tl::expected<std::optional<CsvRecord>, CsvError> CsvReader::State::readRecord() {
    enum class At { CellStart, Text, Quoted, AfterQuote };
    At at = At::CellStart;
    std::vector<std::string> cells;
    cells.reserve(cellsBefore); // a table's rows are alike
    std::string cell;
    std::size_t i = start;
    // The line that would be given up: the one where the last quote opened, else the record's last.
    std::size_t lineStart = start;
    std::int64_t lineNumber = line;
    std::size_t quoteLineStart = start;
    std::int64_t quoteLine = line;

    for (; has(i); ++i) {
        const char c = window[i];
        const bool endsRecord = at != At::Quoted && endsLine(c);
        if (i - start >= kLongestRecord && !endsRecord) {
            const bool brokenByQuote = at == At::Quoted && quoteLineStart != lineStart;
            return tl::unexpected(brokenByQuote ? fail(CsvErrorKind::OpenQuote, quoteLineStart, quoteLine, 0)
                                                : fail(CsvErrorKind::LineTooLong, lineStart, lineNumber, i));
        }
        if (c == '\0') {
            return tl::unexpected(at == At::Quoted ? fail(CsvErrorKind::NulByte, quoteLineStart, quoteLine, 0)
                                                   : fail(CsvErrorKind::NulByte, lineStart, lineNumber, 0));
        }
        if (at == At::Quoted) {
            if (c == '"') {
                if (has(i + 1) && window[i + 1] == '"') {
                    cell.push_back('"');
                    ++i;
                } else {
                    at = At::AfterQuote;
                }
                continue;
            }
            cell.push_back(c);
            if (endsLine(c)) {
                if (c == '\r' && has(i + 1) && window[i + 1] == '\n') {
                    cell.push_back('\n');
                    ++i;
                }
                lineStart = i + 1;
                ++lineNumber;
            }
            continue;
        }
        if (c == format.separator) {
            cells.push_back(std::move(cell));
            cell.clear();
            at = At::CellStart;
            continue;
        }
        if (endsRecord) {
            break;
        }
        if (at == At::AfterQuote) {
            // Where the quote opened on an earlier line, that one was left open, and this one begins a cell.
            const auto kind =
                quoteLineStart == lineStart ? CsvErrorKind::TextAfterQuote : CsvErrorKind::OpenQuote;
            return tl::unexpected(fail(kind, quoteLineStart, quoteLine, 0));
        }
        if (c == '"') {
            if (at == At::Text) {
                return tl::unexpected(fail(CsvErrorKind::QuoteInText, lineStart, lineNumber, 0));
            }
            at = At::Quoted;
            quoteLineStart = lineStart;
            quoteLine = lineNumber;
            continue;
        }
        // All up to the next byte that means something, within what has been fetched.
        const std::size_t longest = std::min(window.size(), start + kLongestRecord);
        std::size_t end = i + 1;
        while (end < longest && isPlain(window[end])) {
            ++end;
        }
        cell.append(window, i, end - i);
        i = end - 1;
        at = At::Text;
    }
    if (!has(i) && decoder.failed()) {
        told = true; // what came of the last record may be half a number
        return tl::unexpected(fail(CsvErrorKind::NotReadable, lineStart, lineNumber, 0));
    }
    if (at == At::Quoted) {
        return tl::unexpected(fail(CsvErrorKind::OpenQuote, quoteLineStart, quoteLine, 0));
    }
    cells.push_back(std::move(cell));
    cellsBefore = cells.size();

    const std::string_view bytes = std::string_view(window).substr(start, i - start);
    const bool eightBit = decoder.encoding() == ByteEncoding::EightBit;
    const bool latin1 = !isUtf8(bytes);
    if (latin1 && !eightBit) {
        return tl::unexpected(fail(CsvErrorKind::NotReadable, lineStart, lineNumber, 0));
    }
    if (latin1) {
        format.encoding = "Latin-1";
        for (auto& value : cells) {
            value = latin1ToUtf8(value);
        }
    }
    CsvRecord record{line, std::move(cells), decoded(bytes, latin1)};
    line = lineNumber;
    if (has(i)) {
        i = pastLineEnd(i);
        ++line;
    }
    advanceTo(i);
    return record;
}

CsvReader::CsvReader(std::istream& input, std::optional<char> separator)
    : state_(std::make_unique<State>(input, separator)) {}
CsvReader::~CsvReader() = default;
CsvReader::CsvReader(CsvReader&&) noexcept = default;
CsvReader& CsvReader::operator=(CsvReader&&) noexcept = default;

tl::expected<std::optional<CsvRecord>, CsvError> CsvReader::next() {
    auto& state = *state_;
    if (!state.begun) {
        state.begun = true;
        state.findSeparator();
        switch (state.decoder.encoding()) {
        case ByteEncoding::Utf16Le:
            state.format.encoding = "UTF-16LE";
            break;
        case ByteEncoding::Utf16Be:
            state.format.encoding = "UTF-16BE";
            break;
        case ByteEncoding::EightBit:
            break;
        }
    }
    while (state.has(state.start) && endsLine(state.window[state.start])) {
        state.advanceTo(state.pastLineEnd(state.start));
        ++state.line;
    }
    if (!state.has(state.start)) {
        if (!state.told && (state.decoder.failed() || !state.sawRecord)) {
            state.told = true;
            return tl::unexpected(CsvError{
                state.decoder.failed() ? CsvErrorKind::NotReadable : CsvErrorKind::Empty, state.line, {}});
        }
        return std::optional<CsvRecord>{};
    }
    state.sawRecord = true;
    return state.readRecord();
}

const CsvFormat& CsvReader::format() const {
    return state_->format;
}

std::int64_t CsvReader::bytesRead() const {
    return state_->decoder.bytesRead();
}

} // namespace wickbook::exchange
