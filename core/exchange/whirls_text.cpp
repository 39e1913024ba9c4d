// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/whirls_text.h"

#include "core/exchange/cell_text.h"

#include <algorithm>

namespace wickbook::exchange {

namespace {

constexpr std::string_view kEmptyWhirl = "empty";

std::string bulbText(std::string_view bulb, const std::optional<units::ReadTemperature>& value) {
    return value ? std::string(bulb) + " " + value->value.toText() + " " +
                       std::string(temperatureUnitText(value->unit))
                 : std::string{};
}

std::vector<std::string_view> wordsOf(std::string_view text) {
    std::vector<std::string_view> words;
    while (!(text = trimmedCell(text)).empty()) {
        const auto end = std::min(text.find_first_of(" \t\r\n"), text.size());
        words.push_back(text.substr(0, end));
        text.remove_prefix(end);
    }
    return words;
}

tl::expected<record::Repeat, std::string> parseWhirl(std::string_view text, units::DecimalMark mark) {
    const auto refused = [text] { return tl::unexpected(std::string(trimmedCell(text))); };
    record::Repeat whirl;
    const auto words = wordsOf(text);
    if (words.size() == 1 && loweredAscii(words.front()) == kEmptyWhirl) {
        return whirl;
    }
    if (words.empty() || words.size() % 3 != 0) {
        return refused();
    }
    for (std::size_t at = 0; at < words.size(); at += 3) {
        const std::string bulb = loweredAscii(words[at]);
        const auto value = units::parseDecimal(words[at + 1], mark);
        const auto unit = temperatureUnitFromText(words[at + 2]);
        auto* const place = bulb == "wet" ? &whirl.wet : bulb == "dry" ? &whirl.dry : nullptr;
        if (place == nullptr || place->has_value() || !value || !unit) {
            return refused();
        }
        *place = units::ReadTemperature{*value, *unit};
    }
    return whirl;
}

} // namespace

std::string_view temperatureUnitText(units::TemperatureUnit unit) {
    return unit == units::TemperatureUnit::Celsius ? "c" : "f";
}

std::optional<units::TemperatureUnit> temperatureUnitFromText(std::string_view text) {
    std::string name = loweredAscii(trimmedCell(text));
    for (const std::string_view sign : {"\u00B0", "\u00BA", "deg"}) {
        if (name.starts_with(sign)) {
            name = std::string(trimmedCell(std::string_view(name).substr(sign.size())));
        }
    }
    if (name == "c" || name == "celsius") {
        return units::TemperatureUnit::Celsius;
    }
    if (name == "f" || name == "fahrenheit") {
        return units::TemperatureUnit::Fahrenheit;
    }
    return std::nullopt;
}

std::string whirlsText(const std::vector<record::Repeat>& whirls) {
    std::string text;
    for (const record::Repeat& whirl : whirls) {
        const std::string wet = bulbText("wet", whirl.wet);
        const std::string dry = bulbText("dry", whirl.dry);
        text += text.empty() ? "" : "; ";
        text += wet.empty() && dry.empty() ? std::string(kEmptyWhirl)
                                           : wet + (wet.empty() || dry.empty() ? "" : " ") + dry;
    }
    return text;
}

tl::expected<std::vector<record::Repeat>, std::string> parseWhirls(std::string_view text,
                                                                   units::DecimalMark mark) {
    std::vector<record::Repeat> whirls;
    if (trimmedCell(text).empty()) {
        return whirls;
    }
    for (std::size_t begin = 0; begin <= text.size();) {
        const auto end = std::min(text.find(';', begin), text.size());
        auto whirl = parseWhirl(text.substr(begin, end - begin), mark);
        if (!whirl) {
            return tl::unexpected(std::move(whirl.error()));
        }
        whirls.push_back(*whirl);
        begin = end + 1;
    }
    return whirls;
}

} // namespace wickbook::exchange
