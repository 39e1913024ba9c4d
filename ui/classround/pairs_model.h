// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/comparison/class_round.h"

#include <QAbstractTableModel>
#include <QLocale>

#include <vector>

namespace wickbook::ui {

/// The pupils' pairs as they are typed, each line beside what it gives and how far it is from the middle.
/// Keeps what was typed, also what is not a number yet; there is always one empty line at the end.
/// In memory only: a class round never comes into a book.
class PairsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Number, Dry, Wet, Wick, Depression, Humidity, DewPoint, Notice, ColumnCount };

    explicit PairsModel(QObject* parent = nullptr);

    void setSetting(const comparison::RoundSetting& setting, units::TemperatureUnit unit);
    void setLocale(const QLocale& locale) { locale_ = locale; }
    void clear();
    [[nodiscard]] bool isEmpty() const { return lines_.size() == 1; }
    /// As judged now; lines with nothing in them are not in it.
    [[nodiscard]] const comparison::ClassRound& round() const { return round_; }
    [[nodiscard]] units::TemperatureUnit unit() const { return unit_; }
    /// Head and lines with tabs between, as a spreadsheet takes them.
    [[nodiscard]] QString asTable() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

signals:
    void judged();

private:
    struct Line {
        QString dry, wet, wick;
        int pupil = -1; ///< place in the round, −1 where there is nothing to judge
    };

    void judge();
    [[nodiscard]] QString problem(const Line& line, int column) const;
    [[nodiscard]] QString text(int row, int column) const;
    [[nodiscard]] const comparison::PupilResult* result(const Line& line) const;

    std::vector<Line> lines_{Line{}};
    comparison::RoundSetting setting_;
    comparison::ClassRound round_;
    units::TemperatureUnit unit_ = units::TemperatureUnit::Celsius;
    QLocale locale_;
};

} // namespace wickbook::ui
