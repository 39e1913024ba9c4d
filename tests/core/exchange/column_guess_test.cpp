// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/column_guess.h"
#include "core/exchange/import_plan.h"
#include "core/exchange/observation_columns.h"

#include <gtest/gtest.h>

namespace wickbook::exchange {
namespace {

std::string fieldOf(std::string_view header) {
    const auto field = headerMeaning(header).field;
    return field ? std::string(fieldName(*field)) : "-";
}

TEST(HeaderMeaning, NamesOfColumns) {
    for (const auto& [header, field] : std::vector<std::pair<std::string, std::string>>{
             {"time_utc", "time"},
             {"Time", "time"},
             {"Timestamp (UTC)", "time"},
             {"DATE", "date"},
             {"local_date", "date"},
             {"Hour", "hour"},
             {"clock", "clock"},
             {"dry_bulb_C", "dry"},
             {"Dry bulb [\u00b0C]", "dry"},
             {"dry_read", "dry"},
             {"DRY", "dry"},
             {"dry_c", "dry"},
             {"wet_bulb_C", "wet"},
             {"Wet-bulb (\u00b0F)", "wet"},
             {"station_pressure_hPa", "pressure"},
             {"pressure_hpa", "pressure"},
             {"Pressure (hPa)", "pressure"},
             {"pressure mbar", "pressure"},
             {"wick", "wick"},
             {"weather", "weather"},
             {"wind", "wind"},
             {"wind_beaufort", "wind"},
             {"max", "max"},
             {"Max (\u00b0C)", "max"},
             {"min_F", "min"},
             {"Remarks", "note"},
             {"observer", "observer"},
             {"origin", "origin"},
             {"quality", "quality"},
             // Not ours to guess: other units, other quantities, what is derived.
             {"pressure_mmHg", "-"},
             {"pressure_c", "-"},
             {"sea_level_pressure", "-"},
             {"wind_speed", "-"},
             {"dry_used_c", "-"},
             {"relative_humidity_pct", "-"},
             {"quality_code", "-"},
             {"dew_point_c", "-"},
             {"orig_note_dry", "-"},
             {"dry_hpa", "-"},
             {"", "-"}}) {
        EXPECT_EQ(fieldOf(header), field) << header;
    }
}

TEST(HeaderMeaning, GermanAndFrenchNames) {
    for (const auto& [header, field] :
         std::vector<std::pair<std::string, std::string>>{{"Datum", "date"},
                                                          {"Uhrzeit", "clock"},
                                                          {"Termin", "hour"},
                                                          {"Trocken (\u00b0C)", "dry"},
                                                          {"Trockenthermometer", "dry"},
                                                          {"Feuchtthermometer [\u00b0C]", "wet"},
                                                          {"Luftdruck hPa", "pressure"},
                                                          {"Windst\u00e4rke", "wind"},
                                                          {"Bemerkungen", "note"},
                                                          {"H\u00f6chst", "max"},
                                                          {"Thermom\u00e8tre sec", "dry"},
                                                          {"THERMOM\u00c8TRE MOUILL\u00c9", "wet"},
                                                          {"Pression (hPa)", "pressure"},
                                                          {"M\u00e8che", "wick"},
                                                          {"Heure", "clock"},
                                                          {"Observateur", "observer"}}) {
        EXPECT_EQ(fieldOf(header), field) << header;
    }
}

std::string proposal(const std::vector<std::string>& header,
                     const std::vector<std::vector<std::string>>& rows) {
    std::string text;
    for (const auto& column : proposedColumns(header, rows)) {
        text += (text.empty() ? "" : " ") + (column.field ? std::string(fieldName(*column.field)) : "-");
    }
    return text;
}

TEST(ProposedColumns, ByTheLookOfTheValuesWhereNoNameHelps) {
    EXPECT_EQ(proposal({"a", "b", "c", "d", "e", "f"}, {{"1.3.2025", "9:00", "12.4", "10.1", "W", "1002.3"},
                                                        {"2.3.2025", "9:05", "11.0", "9.7", "I", "998.0"}}),
              "date clock dry wet wick pressure");
    EXPECT_EQ(
        proposal({"", "", ""}, {{"2025-03-01T09:00Z", "61.5", "57"}, {"2025-03-02T09:00Z", "50", "47"}}),
        "time dry wet");
    // The lower of two columns is not the dry bulb, and one cell tells nothing.
    EXPECT_EQ(proposal({"time", "x", "y"}, {{"t", "10", "12"}, {"t", "9", "12"}}), "time - -");
    EXPECT_EQ(proposal({"time", "x", "y"}, {{"t", "12", "10"}}), "time - -");
    // Names go before looks.
    EXPECT_EQ(proposal({"Datum", "Zeit", "nass", "trocken"}, {{"1.3.2025", "9:00", "12", "10"}}),
              "date clock wet dry");
}

TEST(HeaderMeaning, UnitsAndUtc) {
    EXPECT_EQ(headerMeaning("dry_F").unit, units::TemperatureUnit::Fahrenheit);
    EXPECT_EQ(headerMeaning("Dry [deg F]").unit, units::TemperatureUnit::Fahrenheit);
    EXPECT_EQ(headerMeaning("dry (\u00b0C)").unit, units::TemperatureUnit::Celsius);
    EXPECT_EQ(headerMeaning("dry").unit, std::nullopt);
    EXPECT_TRUE(headerMeaning("time_utc").utc);
    EXPECT_TRUE(headerMeaning("Date/Time GMT").utc);
    EXPECT_FALSE(headerMeaning("time").utc);
}

TEST(GuessColumns, OurOwnExportIsUnderstood) {
    const auto columns = guessColumns(observationHeader(), {});
    ASSERT_TRUE(columns);
    std::string fields;
    for (const auto& column : *columns) {
        fields += (column.field ? column.header + "=" + std::string(fieldName(*column.field)) + " " : "");
    }
    EXPECT_EQ(fields, "time_utc=time local_date=date hour=hour utc_offset=utc_offset dry_read=dry "
                      "wet_read=wet unit=unit wick=wick "
                      "pressure_hpa=pressure pressure_source=pressure_source weather=weather "
                      "wind_beaufort=wind origin=origin quality=quality observer=observer note=note "
                      "max_read=max min_read=min max_min_unit=max_min_unit wick_care=wick_care whirls=whirls "
                      "missing_reason=missing_reason from_paper=from_paper paper_book=paper_book "
                      "paper_page=paper_page read_back=read_back zone=zone ");
    EXPECT_TRUE(isExportHeader(observationHeader()));
}

TEST(GuessColumns, ZoneAndOffsetAreOursOnlyInOurExport) {
    const auto columns = guessColumns({"time", "dry", "zone", "utc_offset"}, {});
    ASSERT_TRUE(columns);
    EXPECT_EQ((*columns)[2].field, std::nullopt);
    EXPECT_EQ((*columns)[3].field, std::nullopt);
    ImportOptions options;
    options.columns = {{"zone", ImportField::Zone}};
    EXPECT_EQ(guessColumns({"time", "dry", "zone"}, options)->at(2).field, ImportField::Zone);
    EXPECT_FALSE(isExportHeader({"time_utc", "utc_offset", "dry_read", "wet_read", "note"}));
}

TEST(GuessColumns, GivenGoesBeforeGuessed) {
    ImportOptions options;
    options.columns = {{"t1", ImportField::Dry}, {"REMARK", ImportField::Observer}};
    const auto columns = guessColumns({"time", "dry", "t1", "wet", "remark"}, options);
    ASSERT_TRUE(columns);
    EXPECT_EQ((*columns)[1].field, std::nullopt);
    EXPECT_EQ((*columns)[2].field, ImportField::Dry);
    EXPECT_TRUE((*columns)[2].given);
    EXPECT_EQ((*columns)[4].field, ImportField::Observer);
}

TEST(GuessColumns, OfTwoTheBetterName) {
    const auto columns = guessColumns({"time", "temperature", "dry", "wet"}, {});
    ASSERT_TRUE(columns);
    EXPECT_EQ((*columns)[1].field, std::nullopt);
    EXPECT_EQ((*columns)[2].field, ImportField::Dry);
}

ImportErrorKind errorOf(const std::vector<std::string>& header, const ImportOptions& options = {}) {
    const auto columns = guessColumns(header, options);
    EXPECT_FALSE(columns.has_value());
    return columns ? ImportErrorKind::Stopped : columns.error().kind;
}

TEST(GuessColumns, WhatStopsAPlan) {
    EXPECT_EQ(errorOf({"dry", "wet"}), ImportErrorKind::NoTimeColumn);
    EXPECT_EQ(errorOf({"date", "dry", "wet"}), ImportErrorKind::NoTimeColumn);
    EXPECT_EQ(errorOf({"time", "note"}), ImportErrorKind::NoDryOrWetColumn);
    ImportOptions unknown;
    unknown.columns = {{"nowhere", ImportField::Dry}};
    EXPECT_EQ(errorOf({"time", "dry"}, unknown), ImportErrorKind::UnknownMappedColumn);
    ImportOptions twice;
    twice.columns = {{"a", ImportField::Dry}, {"b", ImportField::Dry}};
    EXPECT_EQ(errorOf({"time", "a", "b"}, twice), ImportErrorKind::FieldTwice);
}

TEST(FieldNames, AreThoseOfTheCommandLineAndComeBack) {
    for (const auto* name : {"time", "date", "hour", "clock", "dry", "wet", "wick", "pressure", "weather",
                             "wind", "max", "min", "note", "observer", "origin", "quality"}) {
        const auto field = fieldFromName(name);
        ASSERT_TRUE(field) << name;
        EXPECT_EQ(fieldName(*field), name);
    }
    EXPECT_FALSE(fieldFromName("Dry"));
    EXPECT_FALSE(fieldFromName(""));
}

} // namespace
} // namespace wickbook::exchange
