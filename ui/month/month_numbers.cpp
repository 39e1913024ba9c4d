// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/month_numbers.h"

namespace wickbook::ui {

MonthNumbersModel::MonthNumbersModel(QLocale locale, QObject* parent)
    : QAbstractTableModel(parent), locale_(std::move(locale)) {}

void MonthNumbersModel::show(const report::MonthReport& report) {
    beginResetModel();
    table_ = numbersTable(report, locale_);
    endResetModel();
}

int MonthNumbersModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(table_.rows.size());
}

int MonthNumbersModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(table_.columns.size());
}

QVariant MonthNumbersModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount() || index.column() >= columnCount()) {
        return {};
    }
    const QStringList& row = table_.rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return row.value(index.column());
    case Qt::AccessibleTextRole:
        return index.column() == 0
                   ? row.value(0)
                   : QStringLiteral("%1, %2: %3")
                         .arg(row.value(0),
                              headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                              row.value(index.column()));
    case Qt::TextAlignmentRole:
        return QVariant{(index.column() == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter};
    default:
        return {};
    }
}

QVariant MonthNumbersModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) {
        return {};
    }
    if (role == Qt::DisplayRole) {
        return table_.columns[static_cast<std::size_t>(section)].head;
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant{(section == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter};
    }
    return {};
}

QString MonthNumbersModel::asTable() const {
    QStringList heads;
    for (const auto& column : table_.columns) {
        heads << column.head.simplified();
    }
    QString table = heads.join(QLatin1Char('\t')) + QLatin1Char('\n');
    for (const QStringList& row : table_.rows) {
        table += row.join(QLatin1Char('\t')) + QLatin1Char('\n');
    }
    return table;
}

} // namespace wickbook::ui
