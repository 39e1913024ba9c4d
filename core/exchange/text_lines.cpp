// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/text_lines.h"

#include "core/exchange/csv.h"

#include <algorithm>

namespace wickbook::exchange {

bool TextLines::has(std::size_t place) {
    while (place >= window_.size()) {
        if (!decoder_.appendChunk(window_)) {
            return false;
        }
    }
    return true;
}

std::string TextLines::encoding() const {
    switch (decoder_.encoding()) {
    case ByteEncoding::Utf16Le:
        return "UTF-16LE";
    case ByteEncoding::Utf16Be:
        return "UTF-16BE";
    case ByteEncoding::EightBit:
        break;
    }
    return latin1_ ? "Latin-1" : "UTF-8";
}

std::optional<TextLine> TextLines::next() {
    window_.erase(0, start_);
    start_ = 0;
    if (!has(0)) {
        return std::nullopt;
    }
    TextLine line;
    line.number = ++number_;
    std::size_t end = 0;
    bool cut = false;
    while (has(end) && window_[end] != '\n' && window_[end] != '\r') {
        ++end;
        if (end >= kLongestTextLine) {
            if (!cut) {
                line.text = window_.substr(0, kLongestErrorText);
                cut = true;
            }
            window_.erase(0, end); // an endless line is let go piece by piece
            end = 0;
        }
    }
    if (cut) {
        line.trouble = TextLine::Trouble::TooLong;
    } else {
        line.text = window_.substr(0, end);
    }
    if (has(end)) {
        const bool pair = window_[end] == '\r' && has(end + 1) && window_[end + 1] == '\n';
        start_ = end + (pair ? 2 : 1);
    } else {
        start_ = end;
    }
    if (line.text.find('\0') != std::string::npos) {
        line.trouble = TextLine::Trouble::NulByte;
        std::replace(line.text.begin(), line.text.end(), '\0', ' ');
    }
    if (!isUtf8(line.text)) {
        if (decoder_.encoding() != ByteEncoding::EightBit) {
            line.trouble = TextLine::Trouble::BrokenText;
        } else if (!cut) {
            latin1_ = true;
        }
        line.text = latin1ToUtf8(line.text);
    }
    return line;
}

} // namespace wickbook::exchange
