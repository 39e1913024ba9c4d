// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv.h"
#include "core/exchange/date_guess.h"
#include "core/record/observation.h"
#include "core/record/station_record.h"

#include <functional>
#include <istream>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// Reading a register from a file, in two steps: a plan that says what every line would become (and can be
/// shown, or thrown away without a trace), and the changes that the store takes in one transaction
/// (conflict.h holds the plan against what is in the book).
/// Implausible values come in as written; only lines without a usable time or number are rejected.
///
/// How cells are read:
/// - Missing: an empty cell, -, –, —, *, M, NA, N/A, null, none and nan in any case, and in columns of
/// numbers
///   -9999, -999.9, -999 and -99.9 with any number of zeros behind. These are taken for missing cell by cell,
///   not as a convention of the whole file: no bulb has stood there.
/// - A time without an offset is the station's clock; in a column named ..._utc it is UTC; --zone goes before
///   both. One that a clock change made double or impossible is rejected, never guessed; for double ones the
///   person may say which of the two is meant (DoubleTimes).
/// - "hour" with a date is the nominal hour under the station's rule (utc, standard, clock); where the clock
///   shows it twice, the first. An hour the station does not observe at is a clock time under the same rule.
///   With a full time beside it, "hour" says under which hour the reading is filed, and an empty one that it
///   is an extra reading. "clock" is what the clock showed; with "hour" beside it, on the nearest day.
/// - Dates: ISO (also 2025/03/01), 1.3.2025; 1/3/2025 and 1-3-2025 only where some date of the file shows
///   which number is the day, or where the person says so (dateOrder). Years have four digits.
/// - Units: a "unit" cell ("c", "f", or "f;c" for dry;wet), else the column's own (dry_F, "dry [°F]"), else
///   --unit, else the thermometer's.
/// - Weather words that are not ours stay, with the words beside them, in the note.
/// - "below" or "<" for a bulb: the column had gone into it.
/// - Origin "missing" needs no readings; its note is the reason ("reason; note" where there is more), unless
/// a
///   column of its own has it.
/// - A file with the columns of our own export is read as it was written, for it must come back unchanged:
/// blanks
///   at the ends of texts stay, an empty cell is the only missing one (-99.9 is a number there), a line may
///   hold nothing but a note, date and hour are taken by their word, and the apostrophe that keeps a text
///   from being a formula (spreadsheet_text.h) is taken off.

namespace wickbook::exchange {

/// How often whoever waits is asked whether to go on.
inline constexpr std::int64_t kLinesBetweenQuestions = 256;

/// Fields a column may carry.
enum class ImportField {
    Time,
    Date,
    Hour,
    Clock,
    Dry,
    Wet,
    Wick,
    Pressure,
    Weather,
    Wind,
    Maximum,
    Minimum,
    Note,
    Observer,
    Origin,
    Quality,
    Unit,           ///< of dry and wet in this row
    PressureSource, ///< a pressure is taken over only where this says "read"
    MaxMinUnit,     ///< of maximum and minimum in this row
    WickCare,       ///< "wetted", "changed"
    Whirls,         ///< whirls_text.h
    MissingReason,
    FromPaper, ///< yes: copied from a page of the paper register
    PaperBook,
    PaperPage,
    ReadBack, ///< yes: read back against the paper and found equal
    Zone,     ///< by whose clock it was read; does not move the reading
    UtcOffset ///< of that clock; does not move the reading
};
inline constexpr int kImportFieldCount = 28;
std::string_view fieldName(ImportField field); ///< "time", "dry", …
std::optional<ImportField> fieldFromName(std::string_view name);

enum class OnConflict { Keep, Revise, Reject };

/// Which moment a clock time stands for that the clock showed twice.
enum class DoubleTimes { Reject, Earlier, Later };

/// What each column is, by its place; none: left aside.
using ColumnLayout = std::vector<std::optional<ImportField>>;

struct ImportOptions {
    std::map<std::string, ImportField> columns; ///< by header text as given with --map; the rest is guessed
    std::optional<ColumnLayout> layout; ///< goes before columns and before any guess, as far as it reaches
    bool headless = false;              ///< the first line is a reading already
    std::optional<char> separator;      ///< none: found from the first line
    DateOrder dateOrder = DateOrder::Unknown; ///< DayFirst or MonthFirst goes before what the dates show
    DoubleTimes doubleTimes = DoubleTimes::Reject;
    std::optional<std::int64_t> mostLines;      ///< plan no more than the first so many
    std::optional<std::int64_t> refusedAbove;   ///< a file of more lines is refused; none: kMostLines
    std::optional<units::TemperatureUnit> unit; ///< none: the station's
    units::DecimalMark decimal = units::DecimalMark::Either;
    std::optional<record::Zone> zone; ///< for times without an offset; none: the station's
    std::map<ImportField, units::TemperatureUnit> columnUnits; ///< by header ("dry_F"), goes before unit
    bool exported = false; ///< the cells are those of our own export; found from the header
};

enum class RejectReason {
    NoTime,
    BadTime,
    DoubleTime,
    ImpossibleTime,
    BadNumber,
    BadWord,
    NothingRead,
    RaggedRow,
    SameHourTwice,
    HourTaken,
    Unreadable
};

/// Stable name for the rejects file: "no-time", "bad-number", …
std::string_view reasonName(RejectReason reason);

struct RejectedLine {
    std::string file; ///< name without folders
    std::int64_t line = 0;
    std::string text;
    RejectReason reason;
    std::string field; ///< column concerned, if any
    std::string value; ///< what stood there
    /// Stable word that tells more of the reason, or empty. BadTime, BadNumber: "not-a-time", "no-such-date",
    /// "no-such-clock-time", "two-digit-year", "day-or-month" (1/3/2025, and nothing tells which),
    /// "far-from-hour", "not-a-number", "grouped-digits", "too-many-digits", "not-beaufort"; BadWord:
    /// "not-a-moment" (a SEF value over a period); RaggedRow:
    /// "decimal-comma", "too-many-cells", "too-few-cells"; Unreadable: "open-quote", "text-after-quote",
    /// "quote-in-text", "line-too-long", "nul-byte", "broken-utf-16"; SameHourTwice: "same-moment" for extra
    /// readings.
    std::string detail;
};

/// One line that can come in.
struct PlannedObservation {
    std::int64_t line = 0;
    std::string text;
    record::Observation values;
    std::string file; ///< where several files make one plan; else empty
};

struct GuessedColumn {
    std::string header;
    std::optional<ImportField> field;           ///< none: left aside
    bool given = false;                         ///< by --map rather than guessed
    std::optional<units::TemperatureUnit> unit; ///< that the header states
    bool utc = false;                           ///< the header says the time is UTC
};

/// A file of a set that the register has no place for.
struct AsideFile {
    std::string file;
    std::string why;  ///< "variable" or "statistic"
    std::string word; ///< what stood there
};

struct ImportPlan {
    std::vector<GuessedColumn> columns;
    std::vector<AsideFile> aside;
    CsvFormat format;
    std::vector<PlannedObservation> observations;
    std::vector<RejectedLine> rejected;
    std::int64_t lines = 0;                   ///< data lines seen
    bool cut = false;                         ///< there is more in the file than ImportOptions::mostLines
    DateOrder dateOrder = DateOrder::Unknown; ///< as the dates were read
};

/// Errors that stop a plan: the file as a whole can't be understood.
enum class ImportErrorKind {
    EmptyFile,
    NotReadable,
    NoLines,    ///< a header and nothing below
    BinaryFile, ///< no text at all
    NoTimeColumn,
    NoDryOrWetColumn,
    NoBesideColumns, ///< of another instrument; beside_file.h
    UnknownMappedColumn,
    FieldTwice,
    Stopped,
    TooManyLines, ///< more than kMostLines
    DatesWait,    ///< more than kMostHeldLines wait for a date that tells day from month
    // Station Exchange Format; see sef_reader.h and sef_join.h
    SefVersion,
    SefHeader, ///< detail: the line that is not as it should be
    SefUnits,
    SefCalendar,
    SefStationsDiffer,
    SefNothing
};

/// Most lines taken from one file: an hourly register of five centuries.
inline constexpr std::int64_t kMostLines = 5'000'000;

struct ImportError {
    ImportErrorKind kind;
    std::string
        detail; ///< header line, column or field concerned; for NotReadable the word as in RejectedLine
    bool operator==(const ImportError&) const = default;
};

/// Asked now and then with bytes read; false stops.
using ImportProgress = std::function<bool(std::int64_t bytesRead)>;

/// Reads the whole stream and plans. fileName is for messages.
tl::expected<ImportPlan, ImportError> planCsvImport(std::istream& input, const std::string& fileName,
                                                    const record::StationRecord& station,
                                                    const ImportOptions& options,
                                                    const ImportProgress& progress = {});

/// The lines of one part of a file: what can come in and what can't, both in the order of the file. False
/// stops.
using PlanPart =
    std::function<bool(std::vector<PlannedObservation>& observations, std::vector<RejectedLine>& rejected)>;

/// Lines of a part, about.
inline constexpr std::size_t kLinesOfAPart = 4096;
/// Lines kept in memory while their dates wait for one that tells day from month, where the input can't be
/// read twice.
inline constexpr std::size_t kMostHeldLines = 50'000;

/// As planCsvImport, but handed over in parts and forgotten, so that a file of any length takes little
/// memory. Where dates wait for one that tells day from month, the input is read to its end for the dates
/// alone and then once more. The plan that returns has neither observations nor rejected lines. Stopped where
/// take says so.
tl::expected<ImportPlan, ImportError> planCsvInParts(std::istream& input, const std::string& fileName,
                                                     const record::StationRecord& station,
                                                     const ImportOptions& options, const PlanPart& take,
                                                     const ImportProgress& progress = {});

/// Reads one row's cells (as add does) by field; shared by the import and the add verb.
tl::expected<record::Observation, RejectedLine>
observationFromFields(const std::map<ImportField, std::string>& fields, const record::StationRecord& station,
                      const ImportOptions& options);

/// Header of the rejects file: file, line, reason, field, value, text.
std::vector<std::string> rejectsHeader();
/// Its row: reason is reasonName, with ":" and the detail where there is one. The cells are what stood in the
/// file, to the byte, so that a line can be put right and brought in: no apostrophe keeps them from a
/// spreadsheet.
std::vector<std::string> rejectsRow(const RejectedLine& line);

} // namespace wickbook::exchange
