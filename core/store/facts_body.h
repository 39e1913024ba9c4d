// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

/// The station's facts as bodies of revisions and back; the keys are listed in
/// resources/schema/0001_book.sql. Bodies are canonical, so whether a fact has changed is whether its body
/// has.

namespace wickbook::store {

/// Words of the column "kind".
namespace kind {
inline constexpr std::string_view kObservation = "observation";
inline constexpr std::string_view kStation = "station";
inline constexpr std::string_view kPeriod = "period";
inline constexpr std::string_view kThermometer = "thermometer";
inline constexpr std::string_view kFitting = "fitting";
inline constexpr std::string_view kCorrection = "correction";
inline constexpr std::string_view kLimit = "limit";
inline constexpr std::string_view kAbsence = "absence";
inline constexpr std::string_view kDiary = "diary";
inline constexpr std::string_view kPairCheck = "pair_check";
inline constexpr std::string_view kSaltCheck = "salt_check";
inline constexpr std::string_view kSideBySide = "side_by_side";
inline constexpr std::string_view kBesideReading = "beside_reading";
inline constexpr std::string_view kMonthSigning = "month_signing";
} // namespace kind

/// One fact, ready to be appended.
struct FactRow {
    std::string kind;
    record::Uuid subject;
    std::string body;
};

/// Every fact as a row, in the order of StationFacts. Throws UnkeepableValue for a number that isn't finite,
/// text that isn't UTF-8, or two facts of one kind with the same identity.
std::vector<FactRow> factRows(const record::StationFacts& facts);

/// The same fact, taken back.
std::string withdrawnBody(std::string_view body);
bool isWithdrawn(std::string_view body);

/// A limit of the checks, also a withdrawn one. Throws MalformedBody.
struct LimitBody {
    record::LimitMoment limit;
    std::optional<double> value;
    bool withdrawn = false;
};
LimitBody limitFrom(std::string_view body);

/// Whether this program knows the kind as a fact.
bool isFactKind(std::string_view kind);

/// Lays one row into the facts; withdrawn facts and unknown kinds are passed over. Throws MalformedBody.
void addFact(record::StationFacts& facts, const FactRow& row);

} // namespace wickbook::store
