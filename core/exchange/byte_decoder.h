// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <istream>
#include <string>
#include <string_view>

/// Bytes of a text file on their way to UTF-8. UTF-16 is turned into UTF-8 here, a chunk at a time; anything
/// else passes through, because whether a record is UTF-8 or Latin-1 can only be told from the whole record.

namespace wickbook::exchange {

/// Stands in the decoded bytes where UTF-16 was broken: no valid UTF-8 holds this byte.
inline constexpr char kBrokenUnit = '\xFF';

enum class ByteEncoding { EightBit, Utf16Le, Utf16Be };

/// Reads a stream chunk by chunk. The stream must outlive it.
class ByteDecoder {
public:
    explicit ByteDecoder(std::istream& input) : input_(&input) {}

    /// Appends the next decoded chunk; false when there is no more. Call failed() then.
    bool appendChunk(std::string& to);
    [[nodiscard]] ByteEncoding encoding() const { return encoding_; }
    [[nodiscard]] std::int64_t bytesRead() const { return bytesRead_; }
    /// The stream gave up before its end.
    [[nodiscard]] bool failed() const { return failed_; }

private:
    void fetch();
    void findMark();
    void decode16(std::string_view bytes, bool last, std::string& to);

    std::istream* input_;
    ByteEncoding encoding_ = ByteEncoding::EightBit;
    std::int64_t bytesRead_ = 0;
    std::string pending_; ///< bytes read and not yet decoded: half a unit, half a pair
    bool begun_ = false;
    bool ended_ = false;
    bool failed_ = false;
};

/// Well-formed by Table 3-7 of the Unicode Standard: no overlong forms, no surrogates, nothing above
/// U+10FFFF.
bool isUtf8(std::string_view text);

/// Latin-1 bytes as UTF-8; 0x80…0x9F as Windows-1252 (the WHATWG Encoding Standard takes the label the same
/// way), the five bytes without a character there as U+FFFD.
std::string latin1ToUtf8(std::string_view bytes);

void appendUtf8(std::string& to, char32_t codePoint);

} // namespace wickbook::exchange
