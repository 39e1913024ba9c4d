// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/byte_decoder.h"

#include <algorithm>
#include <array>
#include <cstring>

namespace wickbook::exchange {

namespace {

constexpr std::size_t kChunk = 64U * 1024U;
constexpr std::size_t kLongestMark = 3; ///< byte order mark

/// Windows-1252, 0x80…0x9F (WHATWG Encoding Standard, index-windows-1252; its unassigned five as U+FFFD).
constexpr std::array<char16_t, 32> kWindows1252{
    0x20AC, 0xFFFD, 0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0xFFFD, 0x017D, 0xFFFD, 0xFFFD, 0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0xFFFD, 0x017E, 0x0178};

std::uint8_t byteAt(std::string_view text, std::size_t i) {
    return static_cast<std::uint8_t>(text[i]);
}

bool isTail(std::string_view text, std::size_t i) {
    return i < text.size() && (byteAt(text, i) & 0xC0U) == 0x80U;
}

/// Length of the well-formed sequence at i, 0 for none.
std::size_t sequenceLength(std::string_view text, std::size_t i) {
    const auto lead = byteAt(text, i);
    if (lead < 0x80U) {
        return 1;
    }
    if (lead >= 0xC2U && lead <= 0xDFU) {
        return isTail(text, i + 1) ? 2 : 0;
    }
    if (!isTail(text, i + 1) || !isTail(text, i + 2)) {
        return 0;
    }
    const auto second = byteAt(text, i + 1);
    if (lead >= 0xE0U && lead <= 0xEFU) {
        const bool overlong = lead == 0xE0U && second < 0xA0U;
        const bool surrogate = lead == 0xEDU && second > 0x9FU;
        return overlong || surrogate ? 0 : 3;
    }
    if (lead >= 0xF0U && lead <= 0xF4U && isTail(text, i + 3)) {
        const bool overlong = lead == 0xF0U && second < 0x90U;
        const bool beyond = lead == 0xF4U && second > 0x8FU;
        return overlong || beyond ? 0 : 4;
    }
    return 0;
}

} // namespace

void appendUtf8(std::string& to, char32_t codePoint) {
    const auto put = [&to](char32_t value) { to.push_back(static_cast<char>(value & 0xFFU)); };
    if (codePoint < 0x80U) {
        put(codePoint);
    } else if (codePoint < 0x800U) {
        put(0xC0U | (codePoint >> 6U));
        put(0x80U | (codePoint & 0x3FU));
    } else if (codePoint < 0x10000U) {
        put(0xE0U | (codePoint >> 12U));
        put(0x80U | ((codePoint >> 6U) & 0x3FU));
        put(0x80U | (codePoint & 0x3FU));
    } else {
        put(0xF0U | (codePoint >> 18U));
        put(0x80U | ((codePoint >> 12U) & 0x3FU));
        put(0x80U | ((codePoint >> 6U) & 0x3FU));
        put(0x80U | (codePoint & 0x3FU));
    }
}

bool isUtf8(std::string_view text) {
    constexpr std::uint64_t kHighBits = 0x8080808080808080U;
    for (std::size_t i = 0; i < text.size();) {
        std::uint64_t eight = 0;
        if (i + sizeof eight <= text.size()) {
            std::memcpy(&eight, text.data() + i, sizeof eight);
            if ((eight & kHighBits) == 0) { // eight of ASCII
                i += sizeof eight;
                continue;
            }
        }
        const auto length = sequenceLength(text, i);
        if (length == 0) {
            return false;
        }
        i += length;
    }
    return true;
}

std::string latin1ToUtf8(std::string_view bytes) {
    std::string text;
    text.reserve(bytes.size() + bytes.size() / 4);
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        const auto byte = byteAt(bytes, i);
        const bool special = byte >= 0x80U && byte <= 0x9FU;
        appendUtf8(text, special ? char32_t{kWindows1252.at(byte - 0x80U)} : char32_t{byte});
    }
    return text;
}

void ByteDecoder::findMark() {
    const std::string_view begin = pending_;
    if (begin.starts_with("\xEF\xBB\xBF")) {
        pending_.erase(0, 3);
    } else if (begin.starts_with("\xFF\xFE")) {
        encoding_ = ByteEncoding::Utf16Le;
        pending_.erase(0, 2);
    } else if (begin.starts_with("\xFE\xFF")) {
        encoding_ = ByteEncoding::Utf16Be;
        pending_.erase(0, 2);
    }
}

void ByteDecoder::decode16(std::string_view bytes, bool last, std::string& to) {
    const auto unitAt = [&](std::size_t i) {
        const unsigned first = byteAt(bytes, i);
        const unsigned second = byteAt(bytes, i + 1);
        return encoding_ == ByteEncoding::Utf16Le ? first | second << 8U : first << 8U | second;
    };
    std::size_t i = 0;
    while (i + 1 < bytes.size()) {
        const unsigned unit = unitAt(i);
        const bool high = unit >= 0xD800U && unit <= 0xDBFFU;
        const bool low = unit >= 0xDC00U && unit <= 0xDFFFU;
        if (!high && !low) {
            appendUtf8(to, unit);
            i += 2;
            continue;
        }
        if (high && i + 3 >= bytes.size() && !last) {
            break; // the other half comes with the next chunk
        }
        const unsigned next = high && i + 3 < bytes.size() ? unitAt(i + 2) : 0U;
        if (next >= 0xDC00U && next <= 0xDFFFU) {
            appendUtf8(to, 0x10000U + ((unit - 0xD800U) << 10U) + (next - 0xDC00U));
            i += 4;
        } else {
            to.push_back(kBrokenUnit);
            i += 2;
        }
    }
    std::string rest(bytes.substr(i));
    if (last && !rest.empty()) {
        to.push_back(kBrokenUnit); // an odd byte at the end
        rest.clear();
    }
    pending_ = std::move(rest);
}

/// Waits for one byte, then takes what is there without waiting, so that rows typed into a pipe are seen as
/// they come.
void ByteDecoder::fetch() {
    const auto first = input_->get();
    if (first == std::istream::traits_type::eof()) {
        ended_ = true;
        failed_ = input_->bad() || !input_->eof();
        return;
    }
    const std::size_t kept = pending_.size();
    pending_.push_back(std::istream::traits_type::to_char_type(first));
    pending_.resize(kept + kChunk);
    const auto more = input_->readsome(pending_.data() + kept + 1, static_cast<std::streamsize>(kChunk - 1));
    pending_.resize(kept + 1 + static_cast<std::size_t>(std::max<std::streamsize>(more, 0)));
    bytesRead_ += static_cast<std::int64_t>(pending_.size() - kept);
}

bool ByteDecoder::appendChunk(std::string& to) {
    const std::size_t before = to.size();
    while (!ended_ && to.size() == before) {
        fetch();
        if (!begun_) {
            if (pending_.size() < kLongestMark && !ended_) {
                continue;
            }
            begun_ = true;
            findMark();
        }
        if (encoding_ == ByteEncoding::EightBit) {
            to += pending_;
            pending_.clear();
        } else {
            const std::string bytes = std::move(pending_);
            pending_.clear();
            decode16(bytes, ended_, to);
        }
    }
    return to.size() > before;
}

} // namespace wickbook::exchange
