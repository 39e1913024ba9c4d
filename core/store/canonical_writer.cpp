// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/body.h"
#include "core/store/canonical_body.h"
#include "core/store/observation_body.h"

#include <fmt/format.h>

#include <algorithm>

namespace wickbook::store {

namespace {

/// Writes the members of an object, in the order they are given.
class ObjectWriter {
public:
    explicit ObjectWriter(std::string& to) : to_(to) { to_.push_back('{'); }
    void end() { to_.push_back('}'); }

    void key(std::string_view name) {
        if (to_.back() != '{') {
            to_.push_back(',');
        }
        to_.push_back('"');
        to_ += name;
        to_ += "\":";
    }
    void number(std::int64_t value) {
        const fmt::format_int digits(value);
        to_.append(digits.data(), digits.size());
    }
    void word(std::string_view value) {
        to_.push_back('"');
        to_ += value;
        to_.push_back('"');
    }
    void numberAt(std::string_view name, std::int64_t value) {
        key(name);
        number(value);
    }
    void wordAt(std::string_view name, std::string_view value) {
        key(name);
        word(value);
    }
    /// Nothing where the text is empty.
    void textAt(std::string_view name, const std::string& value) {
        if (value.empty()) {
            return;
        }
        key(name);
        const bool plain = std::all_of(value.begin(), value.end(),
                                       [](char c) { return c >= ' ' && c <= '~' && c != '"' && c != '\\'; });
        if (plain) {
            word(value);
        } else {
            to_ += body::dump(body::Json(value)); // escapes what must be, and refuses what isn't UTF-8
        }
    }
    void flagAt(std::string_view name, bool value) {
        if (value) {
            key(name);
            to_ += "true";
        }
    }
    void decimal(const units::Decimal& value) {
        number(value.mantissa);
        to_.push_back(',');
        number(value.decimals);
    }
    void temperatureAt(std::string_view name, const std::optional<units::ReadTemperature>& value) {
        if (value) {
            key(name);
            to_.push_back('[');
            decimal(value->value);
            to_.push_back(',');
            word(body::unitName(value->unit));
            to_.push_back(']');
        }
    }
    [[nodiscard]] std::string& text() { return to_; }

private:
    std::string& to_;
};

void appendRepeats(std::string& to, const std::vector<record::Repeat>& repeats) {
    to.push_back('[');
    for (const record::Repeat& repeat : repeats) {
        if (to.back() != '[') {
            to.push_back(',');
        }
        ObjectWriter one(to);
        one.temperatureAt("dry", repeat.dry);
        one.temperatureAt("wet", repeat.wet);
        one.end();
    }
    to.push_back(']');
}

} // namespace

void appendCanonicalBody(std::string& to, const record::Observation& o) {
    ObjectWriter object(to);
    object.temperatureAt("dry", o.dry.value);
    object.flagAt("dry_below_scale", o.dry.belowScale);
    if (o.hour) {
        object.key("hour");
        to.push_back('[');
        object.number(o.hour->date.time_since_epoch().count());
        to.push_back(',');
        object.number(o.hour->hour.count());
        to.push_back(']');
    }
    object.numberAt("instant", o.instant.time_since_epoch().count());
    object.temperatureAt("maximum", o.maximum);
    object.temperatureAt("minimum", o.minimum);
    object.textAt("missing_reason", o.missingReason);
    object.textAt("note", o.note);
    object.textAt("observer", o.observer);
    object.numberAt("offset", o.offset.count());
    object.wordAt("origin", record::originName(o.origin));
    if (o.paper) {
        object.key("paper");
        ObjectWriter paper(to);
        paper.textAt("book", o.paper->book);
        paper.textAt("page", o.paper->page);
        paper.end();
    }
    if (o.pressure) {
        object.key("pressure");
        to.push_back('[');
        object.decimal(*o.pressure);
        to.push_back(']');
    }
    if (o.quality != record::Quality::NotJudged) {
        object.wordAt("quality", record::qualityName(o.quality));
    }
    object.flagAt("read_back", o.readBack);
    if (!o.repeats.empty()) {
        object.key("repeats");
        appendRepeats(to, o.repeats);
    }
    if (o.weather) {
        object.wordAt("weather", o.weather->toText());
    }
    object.temperatureAt("wet", o.wet.value);
    object.flagAt("wet_below_scale", o.wet.belowScale);
    if (o.wick != record::WickState::NotGiven) {
        object.wordAt("wick", record::wickName(o.wick));
    }
    if (o.wickCare != record::WickCare::None) {
        object.wordAt("wick_care", wickCareName(o.wickCare));
    }
    if (o.windBeaufort) {
        object.numberAt("wind", *o.windBeaufort);
    }
    object.flagAt("withdrawn", o.withdrawn);
    object.textAt("zone", o.zone);
    object.end();
}

} // namespace wickbook::store
