// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/body.h"
#include "core/store/canonical_body.h"
#include "core/store/observation_body.h"

#include <array>
#include <charconv>

namespace wickbook::store {

namespace {

using record::Observation;

/// Goes through the text from the left. Every step says whether it found what it looked for; a step that did
/// not ends the attempt.
class CanonicalCursor {
public:
    explicit CanonicalCursor(std::string_view text) : rest_(text) {}

    bool take(char c) {
        if (rest_.empty() || rest_.front() != c) {
            return false;
        }
        rest_.remove_prefix(1);
        return true;
    }
    bool take(std::string_view literal) {
        if (!rest_.starts_with(literal)) {
            return false;
        }
        rest_.remove_prefix(literal.size());
        return true;
    }
    /// A whole number within the bounds.
    bool integer(std::int64_t lowest, std::int64_t highest, std::int64_t& value) {
        const char* const begin = rest_.data();
        const char* const end = begin + rest_.size();
        const bool negative = !rest_.empty() && rest_.front() == '-';
        const std::size_t first = negative ? 1 : 0;
        if (rest_.size() <= first || rest_[first] < '0' || rest_[first] > '9') {
            return false;
        }
        const auto read = std::from_chars(begin, end, value);
        if (read.ec != std::errc{} || value < lowest || value > highest) {
            return false;
        }
        const auto digits = static_cast<std::size_t>(read.ptr - begin) - first;
        if (rest_[first] == '0' && (digits > 1 || negative)) {
            return false; // 007, −0
        }
        rest_.remove_prefix(static_cast<std::size_t>(read.ptr - begin));
        return true;
    }
    /// A text without escapes, in UTF-8.
    bool text(std::string_view& value) {
        if (!take('"')) {
            return false;
        }
        bool ascii = true;
        for (std::size_t i = 0; i < rest_.size(); ++i) {
            const auto byte = static_cast<unsigned char>(rest_[i]);
            if (byte == '"') {
                value = rest_.substr(0, i);
                rest_.remove_prefix(i + 1);
                return ascii || isUtf8(value);
            }
            if (byte == '\\' || byte < 0x20) {
                return false;
            }
            ascii = ascii && byte < 0x80;
        }
        return false;
    }
    bool decimal(units::Decimal& value) {
        std::int64_t decimals = 0;
        if (!integer(-body::kMantissaLimit, body::kMantissaLimit, value.mantissa) || !take(',') ||
            !integer(0, body::kMostDecimals, decimals)) {
            return false;
        }
        value.decimals = static_cast<int>(decimals);
        return true;
    }
    bool temperature(std::optional<units::ReadTemperature>& value) {
        units::ReadTemperature read;
        if (!take('[') || !decimal(read.value)) {
            return false;
        }
        if (take(R"(,"C"])")) {
            read.unit = units::TemperatureUnit::Celsius;
        } else if (take(R"(,"F"])")) {
            read.unit = units::TemperatureUnit::Fahrenheit;
        } else {
            return false;
        }
        value = read;
        return true;
    }
    [[nodiscard]] bool atEnd() const { return rest_.empty(); }

private:
    std::string_view rest_;
};

template <typename T, typename FromName>
bool wordInto(CanonicalCursor& cursor, T& value, FromName fromName) {
    std::string_view name;
    if (!cursor.text(name)) {
        return false;
    }
    const std::optional<T> found = fromName(name);
    if (found) {
        value = *found;
    }
    return found.has_value();
}

bool textInto(CanonicalCursor& cursor, std::string& value) {
    std::string_view text;
    if (!cursor.text(text)) {
        return false;
    }
    value = text;
    return true;
}

bool flagInto(CanonicalCursor& cursor, bool& value) {
    value = true;
    return cursor.take("true");
}

bool hourInto(CanonicalCursor& cursor, Observation& o) {
    std::int64_t day = 0;
    std::int64_t minute = 0;
    if (!cursor.take('[') || !cursor.integer(-kDayLimit, kDayLimit, day) || !cursor.take(',') ||
        !cursor.integer(0, kLastMinute, minute) || !cursor.take(']')) {
        return false;
    }
    o.hour = record::ObservingHour{record::StationDate{date::days{static_cast<int>(day)}},
                                   record::HourOfDay{static_cast<int>(minute)}};
    return true;
}

bool paperInto(CanonicalCursor& cursor, Observation& o) {
    record::PaperPlace paper;
    if (!cursor.take('{')) {
        return false;
    }
    const bool book = cursor.take(R"("book":)");
    if (book && !textInto(cursor, paper.book)) {
        return false;
    }
    if (!cursor.take('}')) {
        if ((book && !cursor.take(',')) || !cursor.take(R"("page":)") || !textInto(cursor, paper.page) ||
            !cursor.take('}')) {
            return false;
        }
    }
    o.paper = std::move(paper);
    return true;
}

bool repeatsInto(CanonicalCursor& cursor, Observation& o) {
    if (!cursor.take('[')) {
        return false;
    }
    do {
        record::Repeat repeat;
        if (!cursor.take('{')) {
            return false;
        }
        const bool dry = cursor.take(R"("dry":)");
        if (dry && !cursor.temperature(repeat.dry)) {
            return false;
        }
        if (!cursor.take('}')) {
            if ((dry && !cursor.take(',')) || !cursor.take(R"("wet":)") || !cursor.temperature(repeat.wet) ||
                !cursor.take('}')) {
                return false;
            }
        }
        o.repeats.push_back(repeat);
    } while (cursor.take(','));
    return cursor.take(']');
}

bool weatherInto(CanonicalCursor& cursor, Observation& o) {
    std::string_view text;
    if (!cursor.text(text)) {
        return false;
    }
    o.weather = record::WeatherSet::fromText(text);
    return o.weather.has_value();
}

bool pressureInto(CanonicalCursor& cursor, Observation& o) {
    units::Decimal value;
    if (!cursor.take('[') || !cursor.decimal(value) || !cursor.take(']')) {
        return false;
    }
    o.pressure = value;
    return true;
}

bool windInto(CanonicalCursor& cursor, Observation& o) {
    std::int64_t value = 0;
    if (!cursor.integer(std::numeric_limits<int>::min(), std::numeric_limits<int>::max(), value)) {
        return false;
    }
    o.windBeaufort = static_cast<int>(value);
    return true;
}

bool instantInto(CanonicalCursor& cursor, Observation& o) {
    std::int64_t value = 0;
    if (!cursor.integer(-body::kInstantLimit, body::kInstantLimit, value)) {
        return false;
    }
    o.instant = record::Instant{std::chrono::seconds{value}};
    return true;
}

bool offsetInto(CanonicalCursor& cursor, Observation& o) {
    std::int64_t value = 0;
    if (!cursor.integer(-kOffsetLimit, kOffsetLimit, value)) {
        return false;
    }
    o.offset = std::chrono::seconds{value};
    return true;
}

struct Member {
    std::string_view opening; ///< the key with its quotes and colon
    bool (*read)(CanonicalCursor&, Observation&);
};

/// In alphabetical order.
constexpr std::array<Member, 24> kMembers{{
    {R"("dry":)", [](CanonicalCursor& c, Observation& o) { return c.temperature(o.dry.value); }},
    {R"("dry_below_scale":)",
     [](CanonicalCursor& c, Observation& o) { return flagInto(c, o.dry.belowScale); }},
    {R"("hour":)", hourInto},
    {R"("instant":)", instantInto},
    {R"("maximum":)", [](CanonicalCursor& c, Observation& o) { return c.temperature(o.maximum); }},
    {R"("minimum":)", [](CanonicalCursor& c, Observation& o) { return c.temperature(o.minimum); }},
    {R"("missing_reason":)", [](CanonicalCursor& c, Observation& o) { return textInto(c, o.missingReason); }},
    {R"("note":)", [](CanonicalCursor& c, Observation& o) { return textInto(c, o.note); }},
    {R"("observer":)", [](CanonicalCursor& c, Observation& o) { return textInto(c, o.observer); }},
    {R"("offset":)", offsetInto},
    {R"("origin":)",
     [](CanonicalCursor& c, Observation& o) { return wordInto(c, o.origin, record::originFromName); }},
    {R"("paper":)", paperInto},
    {R"("pressure":)", pressureInto},
    {R"("quality":)",
     [](CanonicalCursor& c, Observation& o) { return wordInto(c, o.quality, record::qualityFromName); }},
    {R"("read_back":)", [](CanonicalCursor& c, Observation& o) { return flagInto(c, o.readBack); }},
    {R"("repeats":)", repeatsInto},
    {R"("weather":)", weatherInto},
    {R"("wet":)", [](CanonicalCursor& c, Observation& o) { return c.temperature(o.wet.value); }},
    {R"("wet_below_scale":)",
     [](CanonicalCursor& c, Observation& o) { return flagInto(c, o.wet.belowScale); }},
    {R"("wick":)",
     [](CanonicalCursor& c, Observation& o) { return wordInto(c, o.wick, record::wickFromName); }},
    {R"("wick_care":)",
     [](CanonicalCursor& c, Observation& o) { return wordInto(c, o.wickCare, wickCareFromName); }},
    {R"("wind":)", windInto},
    {R"("withdrawn":)", [](CanonicalCursor& c, Observation& o) { return flagInto(c, o.withdrawn); }},
    {R"("zone":)", [](CanonicalCursor& c, Observation& o) { return textInto(c, o.zone); }},
}};

} // namespace

std::optional<Observation> readCanonicalBody(std::string_view text) {
    CanonicalCursor cursor(text);
    Observation observation;
    if (!cursor.take('{')) {
        return std::nullopt;
    }
    bool any = false;
    for (std::size_t at = 0; at < kMembers.size() && !cursor.take('}');) {
        if (any && !cursor.take(',')) {
            return std::nullopt;
        }
        // Keys come in their order, each once at most: the next is looked for behind the last.
        while (at < kMembers.size() && !cursor.take(kMembers.at(at).opening)) {
            ++at;
        }
        if (at == kMembers.size() || !kMembers.at(at).read(cursor, observation)) {
            return std::nullopt;
        }
        ++at;
        any = true;
        if (at == kMembers.size() && !cursor.take('}')) {
            return std::nullopt;
        }
    }
    return cursor.atEnd() ? std::optional{std::move(observation)} : std::nullopt;
}

} // namespace wickbook::store
