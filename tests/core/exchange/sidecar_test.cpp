// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/observation_columns.h"
#include "core/exchange/sidecar.h"
#include "tests/core/exchange/stations.h"

#include <gmock/gmock.h>

#include <regex>

/// The sidecar is read back here by its text alone: this room's users need no JSON library. Shape by the W3C
/// Recommendation "Metadata Vocabulary for Tabular Data", 17 December 2015.

namespace wickbook::exchange {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;
using testing::station;

TEST(Sidecar, DescribesEveryColumnInOrder) {
    const auto text = sidecarMetadata(station(), "2025-03.csv");
    EXPECT_THAT(text, HasSubstr("\"@context\": \"http://www.w3.org/ns/csvw\""));
    EXPECT_THAT(text, HasSubstr("\"url\": \"2025-03.csv\""));
    std::size_t at = text.find("\"columns\": [");
    ASSERT_NE(at, std::string::npos);
    for (const auto& column : observationColumns()) {
        const auto next = text.find("\"name\": \"" + std::string(column.name) + "\"", at);
        ASSERT_NE(next, std::string::npos) << column.name;
        at = next;
    }
}

TEST(Sidecar, TheTablesNameIsAUrl) {
    EXPECT_THAT(sidecarMetadata(station(), "M\u00e4rz 9:00, 100 %.csv"),
                HasSubstr("\"url\": \"M%C3%A4rz%209%3A00%2C%20100%20%25.csv\""));
}

TEST(Sidecar, TiesColumnsToStandardNames) {
    const auto text = sidecarMetadata(station(), "x.csv");
    // CF standard name table, names as listed in the design of the exchange; addresses of the NERC
    // vocabulary.
    for (const auto* name :
         {"air_temperature", "wet_bulb_temperature", "dew_point_temperature", "relative_humidity",
          "water_vapor_partial_pressure_in_air", "surface_air_pressure"}) {
        EXPECT_THAT(text, HasSubstr("\"propertyUrl\": \"http://vocab.nerc.ac.uk/standard_name/" +
                                    std::string(name) + "/\""));
    }
    EXPECT_THAT(text, HasSubstr("divide by 100"));
    EXPECT_THAT(text, HasSubstr("\"format\": \"yes|no\""));
}

TEST(Sidecar, KeysAreWordsOfTheVocabularyOrPrefixed) {
    const auto text = sidecarMetadata(station(), "x.csv");
    static const std::regex kKey("\"([^\"\\n]+)\": ");
    static const std::regex kAllowed(
        "@context|@type|url|dialect|tableSchema|columns|primaryKey|name|titles|datatype|"
        "base|format|required|propertyUrl|encoding|delimiter|quoteChar|doubleQuote|header|"
        "headerRowCount|(dc|schema):[A-Za-z]+");
    for (auto key = std::sregex_iterator(text.begin(), text.end(), kKey); key != std::sregex_iterator();
         ++key) {
        EXPECT_TRUE(std::regex_match((*key)[1].str(), kAllowed)) << (*key)[1];
    }
}

TEST(Sidecar, StationBlock) {
    auto facts = station("Europe/London", record::HourRule::Clock).facts();
    facts.name = "Garden \"north\"";
    record::Correction correction;
    correction.id = record::Uuid::fromSeed(7, 50);
    correction.thermometer = facts.thermometers.at(0).id;
    correction.points = {{0.0, -0.1}, {20.0, 0.2}};
    correction.source = "certificate 12";
    facts.corrections.push_back(correction);
    const auto text = sidecarMetadata(record::StationRecord{facts}, "x.csv");
    EXPECT_THAT(text, HasSubstr("Garden \\\"north\\\""));
    EXPECT_THAT(text, HasSubstr("certificate 12"));
    EXPECT_THAT(text, HasSubstr("09:00"));
    EXPECT_THAT(text, HasSubstr("Europe/London"));
    EXPECT_THAT(text, HasSubstr("\"schema:value\": 120.0"));
    EXPECT_THAT(text, HasSubstr("-0.1"));
}

TEST(Sidecar, WhatTheStationDecidedAndWhichThermometersHang) {
    auto facts = station().facts();
    facts.limits[{"very-dry.lowest-humidity", record::Instant{date::sys_days{date::year{1994} / 1 / 1}}}] =
        5.5;
    facts.limits[{"big-step.largest", std::nullopt}] = std::nullopt;
    const auto text = sidecarMetadata(record::StationRecord{facts}, "x.csv");
    EXPECT_THAT(text, HasSubstr("limit of the checks: very-dry.lowest-humidity"));
    EXPECT_THAT(text, HasSubstr("\"schema:value\": 5.5"));
    EXPECT_THAT(text, HasSubstr("1994-01-01T00:00:00Z"));
    EXPECT_THAT(text, HasSubstr("built in again"));
    EXPECT_THAT(text, HasSubstr("\"schema:propertyID\": \"" + facts.fittings.at(0).wet.toText()));
    EXPECT_THAT(text, HasSubstr("WMO-No. 1203"));
}

TEST(Sidecar, SaysWhereAStationIsInvented) {
    auto facts = station().facts();
    EXPECT_THAT(sidecarMetadata(record::StationRecord{facts}, "x.csv"), HasSubstr("is invented"));
    facts.invented = false;
    EXPECT_THAT(sidecarMetadata(record::StationRecord{facts}, "x.csv"), Not(HasSubstr("invented")));
    facts.name = "broken \xFF bytes";
    EXPECT_THAT(sidecarMetadata(record::StationRecord{facts}, "x.csv"), HasSubstr("broken"));
}

} // namespace
} // namespace wickbook::exchange
