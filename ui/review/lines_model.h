// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/review/runs_model.h"

#include <QAbstractTableModel>
#include <QLocale>

namespace wickbook::ui {

/// The readings of one run, with their neighbours for comparison. Only those asked about can be chosen.
class LinesModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Mark, Date, Hour, Dry, Wet, Humidity, Weather, Note, ColumnCount };
    enum Role { OpenRole = Qt::UserRole, SeverityRole };

    explicit LinesModel(QLocale locale, QObject* parent = nullptr);

    /// A copy; nullptr: nothing.
    void show(const Run* run);
    [[nodiscard]] const RunLine* line(int row) const;
    /// The first row asked about and not answered; −1 where there is none.
    [[nodiscard]] int firstOpen() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    [[nodiscard]] QString text(const RunLine& line, int column) const;
    [[nodiscard]] QString markWords(const RunLine& line) const;

    QLocale locale_;
    std::vector<RunLine> lines_;
};

} // namespace wickbook::ui
