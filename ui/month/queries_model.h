// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"

#include <QAbstractTableModel>
#include <QLocale>

#include <vector>

namespace wickbook::ui {

/// Every reading that the checks leave out and nobody has judged yet, oldest first. Owns copies, so that a
/// judgement being stored can't pull a row from under the reader.
class QueriesModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { When, Read, Humidity, Query, ColumnCount };

    explicit QueriesModel(QLocale locale, QObject* parent = nullptr);

    void show(const report::MonthReport& report, units::TemperatureUnit unit);
    [[nodiscard]] const checks::CheckedReading* query(int row) const;
    [[nodiscard]] record::ObservingHour hour(int row) const;
    /// What the checks say of a row, with what to do.
    [[nodiscard]] QString explained(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        record::ObservingHour hour;
        checks::CheckedReading reading;
    };
    [[nodiscard]] QString text(const Row& row, int column) const;

    QLocale locale_;
    units::TemperatureUnit unit_ = units::TemperatureUnit::Celsius;
    std::vector<Row> rows_;
};

} // namespace wickbook::ui
