// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/byte_decoder.h"

#include <cstdint>
#include <istream>
#include <optional>
#include <string>

/// A text as its lines, for formats that know no quotation marks. Bounded memory: of a line that is longer
/// than any can be only the beginning is kept, and reading goes on at the next.

namespace wickbook::exchange {

struct TextLine {
    enum class Trouble { None, TooLong, NulByte, BrokenText };
    std::int64_t number = 0; ///< from 1
    std::string text;        ///< UTF-8, without its end
    Trouble trouble = Trouble::None;
};

/// Longest line taken, bytes.
inline constexpr std::size_t kLongestTextLine = 1U << 16U;

/// Reads UTF-8, Latin-1 where a line is not valid UTF-8, and UTF-16 with its mark. CR, LF, CRLF end a line.
class TextLines {
public:
    /// The stream must outlive the reader.
    explicit TextLines(std::istream& input) : decoder_(input) {}

    /// The next line, empty ones too; none at the end. Ask failed() then.
    std::optional<TextLine> next();
    [[nodiscard]] bool failed() const { return decoder_.failed(); }
    [[nodiscard]] std::int64_t bytesRead() const { return decoder_.bytesRead(); }
    /// As CsvFormat::encoding.
    [[nodiscard]] std::string encoding() const;

private:
    bool has(std::size_t place);

    ByteDecoder decoder_;
    std::string window_;
    std::size_t start_ = 0;
    std::int64_t number_ = 0;
    bool latin1_ = false;
};

} // namespace wickbook::exchange
