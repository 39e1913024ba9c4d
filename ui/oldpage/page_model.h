// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/oldpage/page_line.h"

#include <QAbstractTableModel>

/// The page as a table: a line to a row, or, with several hours a day, a day to a row and each hour a block
/// of columns. Owns the lines and what stands in their cells; what goes into the book is the page's business.

namespace wickbook::ui {

/// How a line stands, told by shape at its end.
enum class PageMark {
    Empty,
    Typed,    ///< being written; goes into the book when the line is left
    Unsaved,  ///< typed, and not in the book
    Kept,     ///< in the book
    ReadBack, ///< and read back against the paper
    Query,    ///< in the book, marked doubtful
    Wrong,    ///< in the book, marked erroneous or impossible
    Excused,  ///< missing, with a reason
    Differs   ///< the second pass says otherwise
};
QString pageMarkWords(PageMark mark);

class PageModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum class ColumnKind { Date, Hour, Field, Humidity, DewPoint, Mark };
    struct Column {
        ColumnKind kind = ColumnKind::Date;
        PageField field = PageField::Dry;
        int block = 0; ///< which hour, where hours stand abreast
        bool operator==(const Column&) const = default;
    };
    enum Role {
        MarkRole = Qt::UserRole + 1, ///< PageMark as int
        ProblemRole,                 ///< text: why the cell can't be taken
        NewDayRole,                  ///< bool: the first row of its date
        InBookRole,                  ///< bool: the cell says what the book says
        NumberRole                   ///< bool: digits, which run left to right
    };

    explicit PageModel(QLocale locale, QObject* parent = nullptr);

    void show(std::vector<PageLine> lines, const PageHabits& habits, units::TemperatureUnit unit);
    void setHabits(const PageHabits& habits);
    void setStation(const record::StationRecord* station) { station_ = station; }
    /// How many decimals a number typed without a mark has; 0: as typed.
    void setImpliedDecimals(int decimals) { impliedDecimals_ = decimals; }
    void setReadOnly(bool readOnly) { readOnly_ = readOnly; }
    /// The second pass shows its own, empty cells.
    void setReadingBack(bool readingBack);
    [[nodiscard]] bool isReadingBack() const { return readingBack_; }

    [[nodiscard]] int lineCount() const { return static_cast<int>(lines_.size()); }
    [[nodiscard]] const PageLine& line(int number) const { return lines_[static_cast<std::size_t>(number)]; }
    [[nodiscard]] PageLine& line(int number) { return lines_[static_cast<std::size_t>(number)]; }
    /// After a line was changed from outside.
    void lineChanged(int number);
    [[nodiscard]] const PageHabits& habits() const { return habits_; }
    [[nodiscard]] const std::vector<Column>& columns() const { return columns_; }
    /// −1: the row has no such line (an hour the clock skipped).
    [[nodiscard]] int lineAt(const QModelIndex& index) const;
    [[nodiscard]] const Column& columnAt(const QModelIndex& index) const;
    /// Invalid where the field is not shown.
    [[nodiscard]] QModelIndex indexOf(int line, PageField field) const;
    /// Where Enter goes from a cell: see pen_path.cpp. Invalid at the page's end.
    [[nodiscard]] QModelIndex nextStop(const QModelIndex& from) const;
    [[nodiscard]] QModelIndex stopBefore(const QModelIndex& from) const;
    /// The first stop on a line that nothing is written on.
    [[nodiscard]] QModelIndex firstOpenStop() const;
    /// What is being typed, before it is taken: the humidity follows it.
    void preview(const QModelIndex& index, const QString& typed);
    /// Why a typed text could not be taken as it stands; empty when it could. Changes nothing.
    [[nodiscard]] QString problemOf(const QModelIndex& index, const QString& typed) const;
    [[nodiscard]] PageMark markOf(const PageLine& line) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

signals:
    /// A cell was taken; its line has not been stored yet.
    void cellTaken(int line);

private:
    void arrange();
    void liveOf(PageLine& line, const LineText& text) const;
    [[nodiscard]] CellReading readingAt(const QModelIndex& index) const;
    [[nodiscard]] const LineText& textOf(const PageLine& line) const;
    [[nodiscard]] QString cellText(const QModelIndex& index) const;
    [[nodiscard]] QString derivedText(const PageLine& line, ColumnKind kind) const;
    [[nodiscard]] QString spoken(const QModelIndex& index) const;
    [[nodiscard]] std::vector<QModelIndex> stops() const;
    [[nodiscard]] std::vector<int> placeInOrder(const QModelIndex& index) const;
    [[nodiscard]] bool asksForWick(const PageLine& line) const;

    QLocale locale_;
    PageHabits habits_;
    units::TemperatureUnit unit_ = units::TemperatureUnit::Celsius;
    const record::StationRecord* station_ = nullptr;
    int impliedDecimals_ = 0;
    bool readOnly_ = false;
    bool readingBack_ = false;
    std::vector<PageLine> lines_;
    std::vector<Column> columns_;
    std::vector<std::vector<int>> rows_; ///< per row and block the line's number; −1: none
    std::vector<record::HourOfDay> blocks_;
};

} // namespace wickbook::ui
