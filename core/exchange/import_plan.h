// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/csv.h"
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
/// shown, or thrown away without a trace), and the changes that the store takes in one transaction.
/// Implausible values come in as written; only lines without a usable time or number are rejected.

namespace wickbook::exchange {

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
    Quality
};
std::string_view fieldName(ImportField field); ///< "time", "dry", …
std::optional<ImportField> fieldFromName(std::string_view name);

enum class OnConflict { Keep, Revise, Reject };

struct ImportOptions {
    std::map<std::string, ImportField> columns; ///< by header text as given with --map; the rest is guessed
    std::optional<units::TemperatureUnit> unit; ///< none: the station's
    units::DecimalMark decimal = units::DecimalMark::Either;
    std::optional<record::Zone> zone; ///< for times without an offset; none: the station's
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

struct RejectedLine {
    std::string file; ///< name without folders
    std::int64_t line = 0;
    std::string text;
    RejectReason reason;
    std::string field; ///< column concerned, if any
    std::string value; ///< what stood there
};

/// One line that can come in.
struct PlannedObservation {
    std::int64_t line = 0;
    std::string text;
    record::Observation values;
};

struct GuessedColumn {
    std::string header;
    std::optional<ImportField> field; ///< none: left aside
    bool given = false;               ///< by --map rather than guessed
};

struct ImportPlan {
    std::vector<GuessedColumn> columns;
    CsvFormat format;
    std::vector<PlannedObservation> observations;
    std::vector<RejectedLine> rejected;
    std::int64_t lines = 0; ///< data lines seen
};

/// Errors that stop a plan: the file as a whole can't be understood.
enum class ImportErrorKind {
    EmptyFile,
    NotReadable,
    NoTimeColumn,
    NoDryOrWetColumn,
    UnknownMappedColumn,
    FieldTwice,
    Stopped
};
struct ImportError {
    ImportErrorKind kind;
    std::string detail;
};

/// Asked now and then with bytes read; false stops.
using ImportProgress = std::function<bool(std::int64_t bytesRead)>;

/// Reads the whole stream and plans. fileName is for messages.
tl::expected<ImportPlan, ImportError> planCsvImport(std::istream& input, const std::string& fileName,
                                                    const record::StationRecord& station,
                                                    const ImportOptions& options,
                                                    const ImportProgress& progress = {});

/// Reads one row's cells (as add does) by field; shared by the import and the add verb.
tl::expected<record::Observation, RejectedLine>
observationFromFields(const std::map<ImportField, std::string>& fields, const record::StationRecord& station,
                      const ImportOptions& options);

/// Header of the rejects file: line, reason and the record as it stood.
std::vector<std::string> rejectsHeader();

} // namespace wickbook::exchange
