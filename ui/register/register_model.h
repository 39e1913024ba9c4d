// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"

#include <QAbstractTableModel>
#include <QLocale>

/// The register's month as a table: a row for every line of the monthly return. What was read is shown with
/// the digits that were written; what is derived is worked out with the row. Owns the report it shows.

namespace wickbook::ui {

/// How a line stands, told by shape in the last column.
enum class LineState { Kept, Doubtful, Erroneous, Incomplete, Estimated, Excused, Missed, ToCome };
LineState lineStateOf(const report::MonthLine& line);
/// Left out by what the checks say and not judged yet, or missing without a reason.
bool isQuery(const report::MonthLine& line);
QString lineStateWords(LineState state);
/// How a line stands to the paper: there is nothing to read back, it waits for it, it was found equal.
enum class PaperState { Nothing, Open, ReadBack };

class RegisterModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column {
        Date,
        Hour,
        Dry,
        Wet,
        Depression,
        Wick,
        Humidity,
        HumidityPlusMinus,
        DewPoint,
        Weather,
        Wind,
        Note,
        Initials,
        Origin,
        Quality,
        State,
        ReadBack,
        Paper,
        ColumnCount
    };
    enum Role {
        SortRole = Qt::UserRole + 1, ///< number or text to order by
        StateRole,                   ///< LineState as int
        QueryRole,                   ///< bool: a query is open on this line
        LongDateRole,                ///< text: day and month, for where no heading names the month
        NewDayRole,                  ///< bool: the first line of its date
        PaperRole                    ///< PaperState as int
    };

    RegisterModel(QLocale locale, QObject* parent = nullptr);

    void show(report::MonthReport report, units::TemperatureUnit unit);
    [[nodiscard]] const report::MonthReport& report() const { return report_; }
    [[nodiscard]] const report::MonthLine* line(int row) const;
    /// Whether lines of the month come from paper, or were held against it: only then do others wait for it.
    [[nodiscard]] bool knowsPaper() const { return knowsPaper_; }
    /// How many lines written down in the month are read back.
    [[nodiscard]] int readBackCount() const;
    /// Row of an hour, or of an extra reading at that date and clock time; −1: none.
    [[nodiscard]] int rowOf(const record::ObservingHour& hour) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    [[nodiscard]] QString text(const report::MonthLine& line, int row, int column) const;
    /// The same, worked out once: a page is painted again at every step it is scrolled by.
    [[nodiscard]] const QString& shownText(const report::MonthLine& line, int row, int column) const;
    [[nodiscard]] QString readingText(const checks::CheckedReading& checked, int column) const;
    [[nodiscard]] QVariant sortKey(const report::MonthLine& line, int row, int column) const;
    [[nodiscard]] QString notesText(const report::MonthLine& line) const;
    [[nodiscard]] PaperState paperStateOf(const report::MonthLine& line) const;

    QLocale locale_;
    report::MonthReport report_;
    units::TemperatureUnit unit_ = units::TemperatureUnit::Celsius;
    bool knowsPaper_ = false;
    mutable std::vector<std::optional<QString>> texts_; ///< row by row, those asked for so far
};

} // namespace wickbook::ui
