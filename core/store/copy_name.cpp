// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/copy_name.h"

#include <fmt/format.h>

#include <array>
#include <charconv>

namespace wickbook::store {

namespace {

constexpr std::array kReasons{CopyReason::Daily, CopyReason::ByHand, CopyReason::BeforeBringingIn,
                              CopyReason::BeforeTakingBack};
constexpr std::string_view kMark = " copy ";
constexpr std::string_view kEnding = ".wickbook";
constexpr std::size_t kMomentLength = 16; // 20261125T223115Z
/// File systems take names of 255 bytes; ours adds 60 at most, and SQLite's journal 8 more.
constexpr std::size_t kMostOfBook = 160;

std::string cutBetweenCharacters(std::string text) {
    if (text.size() <= kMostOfBook)
        return text;
    std::size_t end = kMostOfBook;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U)
        --end; // within a character of UTF-8
    text.resize(end);
    return text;
}

std::optional<int> digits(std::string_view text) {
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9')
            return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

std::optional<record::Instant> momentFrom(std::string_view text) {
    if (text.size() != kMomentLength || text[8] != 'T' || text[15] != 'Z')
        return std::nullopt;
    const auto y = digits(text.substr(0, 4));
    const auto mo = digits(text.substr(4, 2));
    const auto d = digits(text.substr(6, 2));
    const auto h = digits(text.substr(9, 2));
    const auto mi = digits(text.substr(11, 2));
    const auto s = digits(text.substr(13, 2));
    if (!y || !mo || !d || !h || !mi || !s || *h > 23 || *mi > 59 || *s > 59)
        return std::nullopt;
    const date::year_month_day day{date::year{*y}, date::month{static_cast<unsigned>(*mo)},
                                   date::day{static_cast<unsigned>(*d)}};
    if (!day.ok())
        return std::nullopt;
    return date::sys_days{day} + std::chrono::hours{*h} + std::chrono::minutes{*mi} +
           std::chrono::seconds{*s};
}

} // namespace

std::string_view copyReasonCode(CopyReason reason) {
    switch (reason) {
    case CopyReason::Daily:
        return "daily";
    case CopyReason::ByHand:
        return "by-hand";
    case CopyReason::BeforeBringingIn:
        return "before-bringing-in";
    case CopyReason::BeforeTakingBack:
        return "before-taking-back";
    }
    return "daily";
}

std::string copyFileName(const CopyName& name) {
    return fmt::format("{}{}{} {}{}{}", cutBetweenCharacters(name.book), kMark,
                       date::format("%Y%m%dT%H%M%SZ", name.moment), copyReasonCode(name.reason),
                       name.number > 1 ? fmt::format(" {}", name.number) : std::string{}, kEnding);
}

std::optional<CopyName> copyNameFrom(std::string_view fileName) {
    if (!fileName.ends_with(kEnding))
        return std::nullopt;
    fileName.remove_suffix(kEnding.size());
    // The last one: a copy that is used as a book has copies of its own.
    const auto mark = fileName.rfind(kMark);
    if (mark == std::string_view::npos || mark == 0)
        return std::nullopt;
    CopyName name;
    name.book = std::string{fileName.substr(0, mark)};
    std::string_view rest = fileName.substr(mark + kMark.size());
    const auto moment = momentFrom(rest.substr(0, kMomentLength));
    if (!moment || rest.size() <= kMomentLength || rest[kMomentLength] != ' ')
        return std::nullopt;
    name.moment = *moment;
    rest.remove_prefix(kMomentLength + 1);
    if (const auto blank = rest.find(' '); blank != std::string_view::npos) {
        const std::string_view number = rest.substr(blank + 1);
        const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), name.number);
        if (error != std::errc{} || end != number.data() + number.size() || name.number < 2)
            return std::nullopt;
        rest = rest.substr(0, blank);
    }
    for (const CopyReason reason : kReasons) {
        if (rest == copyReasonCode(reason)) {
            name.reason = reason;
            return name;
        }
    }
    return std::nullopt;
}

} // namespace wickbook::store
