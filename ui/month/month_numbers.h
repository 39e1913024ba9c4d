// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/month_return.h"

#include <QAbstractTableModel>
#include <QLocale>

namespace wickbook::ui {

/// The month's numbers for the screen: the very rows that go on paper, per observing hour and together.
class MonthNumbersModel : public QAbstractTableModel {
    Q_OBJECT

public:
    explicit MonthNumbersModel(QLocale locale, QObject* parent = nullptr);

    void show(const report::MonthReport& report);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    /// Heads and rows with tabs between, as spreadsheets take them from the clipboard.
    [[nodiscard]] QString asTable() const;

private:
    QLocale locale_;
    PageTable table_;
};

} // namespace wickbook::ui
