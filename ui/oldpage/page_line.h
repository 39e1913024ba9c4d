// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/check_series.h"
#include "core/record/observing_hours.h"
#include "core/record/revision.h"
#include "ui/oldpage/page_habits.h"

#include <QLocale>
#include <QString>

#include <array>
#include <optional>
#include <vector>

/// One line of the page: an observing hour, what stands in its cells letter for letter, and what the book
/// holds of it. Plain values, no widgets. The way from a typed cell to a value, and back, is here alone.

namespace wickbook::ui {

/// What stands in a line's cells. A text that could not be taken stays, with the sentence why.
struct LineText {
    struct Cell {
        QString text;
        QString problem;
        bool operator==(const Cell&) const = default;
    };
    std::array<Cell, kPageFieldCount> cells;
    QString missing; ///< the reason, as the book keeps it; empty: not missing

    [[nodiscard]] const Cell& cell(PageField field) const {
        return cells.at(static_cast<std::size_t>(field));
    }
    Cell& cell(PageField field) { return cells.at(static_cast<std::size_t>(field)); }
    [[nodiscard]] bool isEmpty() const;
    [[nodiscard]] bool hasProblem() const;
    bool operator==(const LineText&) const = default;
};

/// How the second pass stands with a line.
enum class ReadAgain { NotYet, Agrees, Differs };

struct PageLine {
    record::ExpectedHour expected;
    bool toCome = false;
    LineText text;
    LineText again; ///< the second pass
    ReadAgain readAgain = ReadAgain::NotYet;
    std::optional<record::StoredObservation> stored; ///< as the book holds it
    std::optional<checks::CheckedReading> judged;    ///< what the checks say of it
    std::optional<record::DerivedReading> live;      ///< of what stands in the cells, both bulbs in
    bool typedHere = false;                          ///< written from this page since it was opened
    bool failed = false;                             ///< the book could not be written
};

/// How a cell's text is read.
struct CellReading {
    QLocale locale;
    int impliedDecimals = 0;         ///< 1: 234 is 23.4 and 6 is 0.6; a written mark always counts
    const LineText* above = nullptr; ///< for a repeating mark
};

/// Puts what was typed into the line's cell: numbers come back with the mark in its place, a repeating mark
/// (") as what stands above, "m" and a letter in a bulb's cell as a missing line, "w" or "i" after the wet
/// bulb as the wick. What can't be taken stays as typed with its problem, which is also returned.
QString takeCell(LineText& line, PageField field, const QString& typed, const CellReading& reading);

/// What a reading of the book looks like in the cells.
LineText lineTextOf(const record::Observation& observation, const QLocale& locale);

/// The reading the cells make, on top of what the book holds: a cell that still says what the book says keeps
/// it digit for digit, a cell with a problem is left out. An emptied line is withdrawn. paper and readBy are
/// given to new lines.
record::Observation observationOf(const PageLine& line, const record::StationRecord& station,
                                  const record::PaperPlace& paper, const QString& readBy,
                                  const QLocale& locale);

/// Whether storing after would change anything the book holds, and whether it would only add to it.
bool changesLine(const PageLine& line, const record::Observation& after);
bool onlyAdds(const record::Observation& before, const record::Observation& after);

/// Fields in which the second pass says otherwise, of those it has typed; a missing line's reason counts as
/// its dry bulb. 16 and 16.0 are the same reading.
std::vector<PageField> differences(const LineText& first, const LineText& again);
/// Whether the second pass has typed all that a line must be compared by: both bulbs, or that it is missing.
bool isTypedAgain(const LineText& first, const LineText& again);

/// Keys of a missing line and their reasons, for the line that tells of them: "m a away, m i ill, …".
QString missingKeysWords();
QString missingWords(const QString& reason);
/// Reasons as the book keeps them, with the key of each.
struct MissingReason {
    QChar key;
    QString stored;
};
const std::vector<MissingReason>& pageMissingReasons();

} // namespace wickbook::ui
