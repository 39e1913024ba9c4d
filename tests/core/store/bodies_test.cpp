// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/body.h"
#include "core/store/canonical_body.h"
#include "core/store/facts_body.h"
#include "core/store/observation_body.h"
#include "tests/core/store/book_testing.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <limits>
#include <random>

using namespace wickbook;
using namespace wickbook::store;
using store::testing::at;

namespace {

class Draw {
public:
    explicit Draw(std::uint64_t seed) : source_(seed) {}
    std::int64_t number(std::int64_t lowest, std::int64_t highest) {
        return std::uniform_int_distribution<std::int64_t>{lowest, highest}(source_);
    }
    bool coin() { return number(0, 1) == 1; }
    double real() { return std::uniform_real_distribution<double>{-1000, 1000}(source_); }
    units::Decimal decimal() {
        constexpr std::int64_t kMost = 999'999'999'999'999;
        return {coin() ? number(-kMost, kMost) : number(-400, 400), static_cast<int>(number(0, 9))};
    }
    units::ReadTemperature temperature() {
        return {decimal(), coin() ? units::TemperatureUnit::Celsius : units::TemperatureUnit::Fahrenheit};
    }
    template <typename Make>
    auto maybe(Make make) -> std::optional<decltype(make())> {
        if (coin())
            return std::nullopt;
        return make();
    }
    std::string text() {
        static const std::vector<std::string> kTexts{
            "",         "ab",         "Nebel über dem Bach", "quote \" back \\ slash / \n\t",
            "\x01\x7f", "<b>%s;DROP", "−3,4 °C 🌫",     std::string{"nul\0inside", 10}};
        return kTexts[static_cast<std::size_t>(number(0, static_cast<std::int64_t>(kTexts.size()) - 1))];
    }
    template <typename T>
    T oneOf(std::initializer_list<T> values) {
        return values.begin()[number(0, static_cast<std::int64_t>(values.size()) - 1)];
    }
    record::Uuid uuid() {
        return record::Uuid::fromSeed(7, static_cast<std::uint64_t>(number(0, 1'000'000)));
    }
    record::Instant instant() { return at(number(-10'000'000'000, 10'000'000'000)); }

    record::Observation observation() {
        record::Observation o;
        o.hour = maybe([&] {
            return record::ObservingHour{
                record::StationDate{date::days{static_cast<int>(number(-90000, 90000))}},
                record::HourOfDay{number(0, 1439)}};
        });
        o.instant = instant();
        o.zone = oneOf<std::string>({"", "UTC", "Europe/London", "America/Argentina/Cordoba"});
        o.offset = std::chrono::seconds{oneOf({0, 3600, -15408, 50400})}; // −4:16:48, Córdoba
        o.dry = {maybe([&] { return temperature(); }), coin()};
        o.wet = {maybe([&] { return temperature(); }), coin()};
        o.wick = oneOf({record::WickState::NotGiven, record::WickState::Water, record::WickState::Ice});
        o.wickCare = oneOf({record::WickCare::None, record::WickCare::Wetted, record::WickCare::Changed});
        o.pressure = maybe([&] { return decimal(); });
        o.weather = maybe([&] {
            record::WeatherSet set;
            for (int i = 0; i < record::kWeatherCount; ++i)
                if (coin())
                    set.add(static_cast<record::Weather>(i));
            return coin() ? set : record::WeatherSet{};
        });
        o.windBeaufort = maybe([&] { return static_cast<int>(number(0, 12)); });
        o.maximum = maybe([&] { return temperature(); });
        o.minimum = maybe([&] { return temperature(); });
        for (std::int64_t i = number(0, 4); i > 0; --i)
            o.repeats.push_back({maybe([&] { return temperature(); }), maybe([&] { return temperature(); })});
        o.note = text();
        o.observer = text();
        o.origin = oneOf({record::Origin::Observed, record::Origin::Corrected, record::Origin::Estimated,
                          record::Origin::Missing});
        o.quality = oneOf({record::Quality::NotJudged, record::Quality::Sound, record::Quality::Doubtful,
                           record::Quality::Erroneous});
        o.missingReason = text();
        o.withdrawn = coin();
        o.paper = maybe([&] { return record::PaperPlace{text(), text()}; });
        o.readBack = coin();
        return o;
    }

    record::StationFacts facts() {
        using psychrometry::Exposure;
        record::StationFacts f;
        f.id = uuid();
        f.name = text();
        f.invented = coin();
        f.hourWindowMinutes = static_cast<int>(number(0, 720));
        std::uint64_t count = 0;
        const auto id = [&] { return record::Uuid::fromSeed(8, ++count); };
        for (std::int64_t i = number(0, 3); i > 0; --i) {
            record::PeriodChange p;
            p.id = id();
            p.from = maybe([&] { return instant(); });
            p.position = maybe([&] { return record::Position{real(), real()}; });
            p.elevation = maybe([&] { return units::Elevation::fromMetres(real()); });
            p.zone = maybe([&] { return text(); });
            p.hours = maybe([&] {
                std::vector<record::HourOfDay> hours;
                for (std::int64_t k = number(0, 4); k > 0; --k)
                    hours.push_back(record::HourOfDay{number(0, 1439)});
                return hours;
            });
            p.hourRule = maybe([&] {
                return oneOf({record::HourRule::Utc, record::HourRule::Standard, record::HourRule::Clock});
            });
            p.exposure = maybe([&] {
                return oneOf({Exposure::Aspirated, Exposure::Whirled, Exposure::SlingUs, Exposure::Screen,
                              Exposure::Still, Exposure::Own});
            });
            p.ownCoefficient = maybe([&] {
                return record::OwnCoefficient{real(), maybe([&] { return real(); }),
                                              maybe([&] { return real(); })};
            });
            p.surroundings = maybe([&] { return text(); });
            f.periods.push_back(p);
        }
        for (std::int64_t i = number(0, 3); i > 0; --i)
            f.thermometers.push_back(
                {id(), text(), text(),
                 coin() ? units::TemperatureUnit::Celsius : units::TemperatureUnit::Fahrenheit, decimal(),
                 decimal(), decimal(), false});
        for (std::int64_t i = number(0, 3); i > 0; --i)
            f.fittings.push_back({id(), maybe([&] { return instant(); }), uuid(), uuid(), false});
        for (std::int64_t i = number(0, 3); i > 0; --i) {
            record::Correction c{id(), uuid(), maybe([&] { return instant(); }), {}, real(), text(), false};
            for (std::int64_t k = number(0, 5); k > 0; --k)
                c.points.push_back({real(), real()});
            f.corrections.push_back(c);
        }
        for (std::int64_t i = number(0, 3); i > 0; --i)
            f.limits[{text(), maybe([&] { return instant(); })}] = maybe([&] { return real(); });
        return f;
    }

private:
    std::mt19937_64 source_;
};

} // namespace

TEST(AnObservationsBody, ComesBackAsItWasWhateverItsFields) {
    Draw draw(20250301);
    for (int i = 0; i < 5000; ++i) {
        const record::Observation given = draw.observation();
        const std::string body = observationBody(given);
        ASSERT_EQ(observationFromBody(body), given) << body;
        ASSERT_EQ(observationBody(observationFromBody(body)), body) << "not canonical";
    }
}

// nlohmann-json is the general-purpose reference: an object's keys sorted, no blanks.
TEST(AnObservationsBody, IsByteForByteWhatTheGeneralWriterOfJsonMakes) {
    Draw draw(77);
    for (int i = 0; i < 3000; ++i) {
        const std::string body = observationBody(draw.observation());
        ASSERT_EQ(nlohmann::json::parse(body).dump(), body);
    }
}

// The quick reader may pass a body on, but never read one otherwise than the general reader does: also where
// it was written by somebody else, or damaged.
TEST(AnObservationsBody, IsReadQuicklyAsTheGeneralReaderReadsIt) {
    Draw draw(78);
    int quick = 0;
    int quickOfDamaged = 0;
    for (int i = 0; i < 3000; ++i) {
        const record::Observation observation = draw.observation();
        std::string body = observationBody(observation);
        const bool plain = body.find('\\') == std::string::npos;
        const auto read = readCanonicalBody(body);
        ASSERT_EQ(read.has_value(), plain) << body;
        ASSERT_EQ(observationFromAnyBody(body), observation) << body;
        if (read) {
            ++quick;
            ASSERT_EQ(*read, observation) << body;
        }
        for (int k = 0; k < 20; ++k) {
            std::string damaged = body;
            const auto at = static_cast<std::size_t>(draw.number(0, std::ssize(damaged) - 1));
            switch (draw.number(0, 3)) {
            case 0:
                damaged[at] = static_cast<char>(draw.number(0, 255));
                break;
            case 1:
                damaged.erase(at, static_cast<std::size_t>(draw.number(1, 12)));
                break;
            case 2:
                damaged.insert(at, damaged.substr(at / 2, static_cast<std::size_t>(draw.number(1, 12))));
                break;
            default:
                damaged.insert(at, 1, "0-,[]{}\"1"[draw.number(0, 8)]);
            }
            if (const auto found = readCanonicalBody(damaged)) {
                ++quickOfDamaged;
                try {
                    ASSERT_EQ(observationFromAnyBody(damaged), *found) << damaged;
                } catch (const MalformedBody& error) {
                    FAIL() << damaged << ": " << error.what();
                }
            }
        }
    }
    EXPECT_GT(quick, 300);
    EXPECT_GT(quickOfDamaged, 300) << "a changed digit is still canonical";
}

TEST(AnObservationsBody, OutsideItsBoundsIsLeftToTheGeneralReader) {
    for (const char* body : {R"({"instant":1,"offset":0,"origin":"observed","wind":007})",
                             R"({"instant":-0,"offset":0,"origin":"observed"})",
                             R"({"instant":1,"instant":2})",
                             R"({"offset":0,"instant":1})",
                             R"({"instant":100000000001})",
                             R"({"dry":[1,10,"C"]})",
                             R"({"dry":[1000000000000000,1,"C"]})",
                             R"({"dry":[1,1,"K"]})",
                             R"({"hour":[1,1441]})",
                             R"({ "instant":1})",
                             R"({"instant":1} )",
                             R"({"instant":1.0})",
                             R"({"instant":1e3})",
                             R"({"withdrawn":false})",
                             R"({"zone":"a\u0062"})",
                             R"({"instant":1,})",
                             R"({"instant":1)",
                             R"([1])",
                             "",
                             R"({"wind":99999999999})",
                             "{\"note\":\"\xff\"}"})
        EXPECT_FALSE(readCanonicalBody(body)) << body;
    EXPECT_TRUE(readCanonicalBody("{}"));
    EXPECT_TRUE(readCanonicalBody(R"({"dry":[-5,1,"C"],"paper":{},"zone":"UTC"})"));
    EXPECT_TRUE(readCanonicalBody(R"({"paper":{"page":"3"}})"));
    EXPECT_TRUE(readCanonicalBody(R"({"repeats":[{},{"wet":[1,0,"F"]}]})"));
}

TEST(AStationsFacts, ComeBackAsTheyWereWhateverTheirFields) {
    Draw draw(20250302);
    for (int i = 0; i < 2000; ++i) {
        const record::StationFacts given = draw.facts();
        record::StationFacts back;
        for (const FactRow& row : factRows(given))
            addFact(back, row);
        ASSERT_EQ(back, given);
    }
}

// The exact text is a promise to every book already written.
TEST(AnObservationsBody, HasSortedKeysAndNoBlanksAndKeepsDigitsAsRead) {
    record::Observation o = store::testing::reading(0);
    o.dry.value = units::ReadTemperature{{615, 1}, units::TemperatureUnit::Fahrenheit};
    o.wet.value = units::ReadTemperature{{160, 1}, units::TemperatureUnit::Celsius};
    EXPECT_EQ(observationBody(o),
              R"({"dry":[615,1,"F"],"hour":[20148,540],"instant":1740819600,"observer":"ab",)"
              R"("offset":0,"origin":"observed","wet":[160,1,"C"],"zone":"Europe/London"})");
}

TEST(AnObservationsBody, OfALaterVersionIsReadPastItsUnknownKeys) {
    const auto o = observationFromBody(R"({"instant":60,"radiation":{"w_m2":[5,0]},"note":"x"})");
    EXPECT_EQ(o.instant, at(60));
    EXPECT_EQ(o.note, "x");
    EXPECT_FALSE(o.hour || o.dry.given() || o.pressure || o.weather);
}

TEST(AnObservationsBody, ThatIsMalformedIsToldAndNeverGuessed) {
    for (const char* body : {"",
                             "x",
                             "[]",
                             "null",
                             "{",
                             R"({"instant":"noon"})",
                             R"({"instant":1.5})",
                             R"({"instant":99999999999999999999})",
                             R"({"instant":18446744073709551615})",
                             R"({"dry":[160,1]})",
                             R"({"dry":[160,10,"C"]})",
                             R"({"dry":[160,-1,"C"]})",
                             R"({"dry":[160,1,"K"]})",
                             R"({"dry":[1000000000000000,1,"C"]})",
                             R"({"dry":16.0})",
                             R"({"wick":"steam"})",
                             R"({"weather":"frogs"})",
                             R"({"hour":[1]})",
                             R"({"hour":[1,1441]})",
                             R"({"hour":[99999999,0]})",
                             R"({"offset":999999999})",
                             R"({"wind":"3"})",
                             R"({"repeats":{}})",
                             R"({"repeats":[1]})",
                             R"({"withdrawn":1})",
                             R"({"origin":"dreamt"})",
                             R"({"quality":7})",
                             R"({"note":null})",
                             "{\"note\":\"\xff\"}"})
        EXPECT_THROW(static_cast<void>(observationFromBody(body)), MalformedBody) << body;
}

TEST(AStationsFacts, ThatAreMalformedAreToldAndNeverGuessed) {
    const auto add = [](std::string_view kind, const char* body) {
        record::StationFacts facts;
        addFact(facts, {std::string{kind}, record::Uuid::fromSeed(1, 1), body});
        return facts;
    };
    for (const char* body :
         {R"({"elevation":"high"})", R"({"position":[1]})", R"({"hours":[1,"x"]})",
          R"({"exposure":"cellar"})", R"({"hour_rule":"moon"})", R"({"own_coefficient":3})"})
        EXPECT_THROW(add(kind::kPeriod, body), MalformedBody) << body;
    EXPECT_THROW(add(kind::kThermometer, R"({"unit":"K"})"), MalformedBody);
    EXPECT_THROW(add(kind::kFitting, R"({"dry":"no. 17"})"), MalformedBody);
    EXPECT_THROW(add(kind::kCorrection, R"({"points":[[1,2,3]]})"), MalformedBody);
    EXPECT_THROW(add(kind::kLimit, R"({"name":"a","value":"b"})"), MalformedBody);
    EXPECT_EQ(add("balloon", R"({"gas":"helium"})"), record::StationFacts{})
        << "unknown kinds are passed over";
}

TEST(AValueThatCouldNotBeReadBack, IsRefusedBeforeItIsWritten) {
    record::Observation o = store::testing::reading(0);
    o.note = "\xc3\x28";
    EXPECT_THROW(static_cast<void>(observationBody(o)), UnkeepableValue) << "not UTF-8";
    o = store::testing::reading(0);
    o.dry.value->value = {1, 12};
    EXPECT_THROW(static_cast<void>(observationBody(o)), UnkeepableValue) << "too many decimals";
    o = store::testing::reading(0);
    o.instant = at(std::numeric_limits<std::int64_t>::max());
    EXPECT_THROW(static_cast<void>(observationBody(o)), UnkeepableValue) << "no such year";
    for (const double bad :
         {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        record::StationFacts facts = store::testing::inventedStation();
        facts.periods[0].elevation = units::Elevation::fromMetres(bad);
        EXPECT_THROW(static_cast<void>(factRows(facts)), UnkeepableValue);
    }
    record::StationFacts twice = store::testing::inventedStation();
    twice.thermometers[1].id = twice.thermometers[0].id;
    EXPECT_THROW(static_cast<void>(factRows(twice)), UnkeepableValue);
}

// Well-formed and ill-formed sequences after the Unicode Standard, table 3-7 (from memory).
TEST(Utf8, IsToldFromOtherBytes) {
    for (const char* good : {"", "a", "°", "€", "🌫", "\xed\x9f\xbf", "\xf4\x8f\xbf\xbf"})
        EXPECT_TRUE(isUtf8(good)) << good;
    for (const char* bad : {"\x80", "\xc0\x80", "\xc3", "\xe0\x80\x80", "\xed\xa0\x80", "\xf4\x90\x80\x80",
                            "\xff", "a\xe2\x82", "\xe2\x82(", "\xf0\x80\x80\x80"})
        EXPECT_FALSE(isUtf8(bad)) << bad;
}
