// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"

#include <istream>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The Station Exchange Format of the Copernicus data rescue service, version 1.0.0 and the like-made 0.2.0:
/// a text of tab-separated cells, twelve lines of header (SEF, ID, Name, Lat, Lon, Alt, Source, Link, Vbl,
/// Stat, Units, Meta), a line of column names (Year, Month, Day, Hour, Minute, Period, Value, Meta), then one
/// observation a line, times in UTC. One file holds one variable of one station.
/// Source: "The Station Exchange Format (SEF)", Copernicus Climate Change Service, version 1.0.0, and the
/// checks that go with it in the R package dataresqc (hours 0 to 24, Period 0 where Stat is point, years from
/// 1600, NA or blank for missing, no quotation marks).
///
/// What is kept as read. Value is often worked out from what stood in the register, which Meta then gives:
/// "orig=61.5F" beside a Value of 16.4. Where that original is a number in °C or °F and agrees with Value
/// within the rounding of Value, it is the reading, in its own unit. Where it does not agree, or is in
/// another unit, Value is the reading and the original stays in the note, so nothing is lost and nothing
/// converted by guess. Kelvin becomes °C by taking off 273.15 exactly. What else Meta tells (orig.time, qc, a
/// barometer's original) stays in the note. "qc=" on a bulb says that whoever made the file found the value
/// wanting: it comes in as judged doubtful (qc=erroneous as erroneous). On a pressure it does not touch the
/// pair and is a note only.

namespace wickbook::exchange {

enum class SefVariable { DryBulb, WetBulb, IceBulb, Pressure };

struct SefHeader {
    std::string version, id, name, latitude, longitude, altitude, source, link, variable, statistic, units,
        meta;
};

struct SefRow {
    std::int64_t line = 0;
    std::string text;
    record::Instant instant{};
    std::optional<units::ReadTemperature> temperature; ///< of bulbs
    std::optional<units::Decimal> pressure;            ///< hPa
    bool flagged = false;                              ///< Meta has qc=
    bool erroneous = false;                            ///< of these, qc=erroneous, as our own files say it
    std::vector<std::string> remarks;                  ///< what else Meta tells, entry by entry
    /// NA, blank or -999 is a line that says nothing was read.
    [[nodiscard]] bool given() const { return temperature || pressure; }
};

struct SefFile {
    std::string name; ///< without folders
    SefHeader header;
    std::optional<SefVariable> variable; ///< none: left aside, and no rows
    std::string aside;                   ///< why: "variable" or "statistic", else empty
    std::vector<SefRow> rows;
    std::vector<RejectedLine> rejected;
    std::int64_t lines = 0; ///< lines of observations
    std::string encoding;
};

/// Most lines taken from one file: four a day for 68 years. Files of one variable each are kept whole until
/// all are read and joined on time, so this bounds the memory.
inline constexpr std::int64_t kMostSefLines = 100'000;

/// Whether a file begins as SEF does; head: its first bytes, a byte order mark allowed.
bool beginsAsSef(std::string_view head);

/// Reads the whole stream. Errors: EmptyFile, NotReadable, SefVersion, SefHeader, SefUnits, SefCalendar,
/// Stopped, TooManyLines.
tl::expected<SefFile, ImportError> readSef(std::istream& input, const std::string& fileName,
                                           const ImportProgress& progress = {});
/// The same of bytes.
tl::expected<SefFile, ImportError> readSef(std::string_view bytes);

} // namespace wickbook::exchange
