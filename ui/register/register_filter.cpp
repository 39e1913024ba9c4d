// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/register_filter.h"

#include "ui/register/register_model.h"

#include <QStringList>

namespace wickbook::ui {

RegisterFilter::RegisterFilter(QObject* parent) : QSortFilterProxyModel(parent) {
    setSortRole(RegisterModel::SortRole);
}

void RegisterFilter::setText(const QString& text) {
    text_ = text.simplified();
    invalidateFilter();
}

void RegisterFilter::setOnlyQueries(bool only) {
    onlyQueries_ = only;
    invalidateFilter();
}

QString RegisterFilter::asTable() const {
    QStringList lines;
    QStringList head;
    for (int column = 0; column < columnCount(); ++column) {
        const QString shown = headerData(column, Qt::Horizontal).toString();
        head << (shown.isEmpty() ? headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString() : shown);
    }
    lines << head.join(QLatin1Char('\t'));
    for (int row = 0; row < rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < columnCount(); ++column) {
            const QModelIndex cell = index(row, column);
            // The page names a day once and its month in the heading; a table names both on every line.
            const int role =
                column == RegisterModel::Date ? int{RegisterModel::LongDateRole} : int{Qt::DisplayRole};
            const QString text = cell.data(role).toString();
            cells << text.simplified();
        }
        lines << cells.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

bool RegisterFilter::filterAcceptsRow(int row, const QModelIndex& parent) const {
    const QModelIndex first = sourceModel()->index(row, 0, parent);
    if (onlyQueries_ && !first.data(RegisterModel::QueryRole).toBool()) {
        return false;
    }
    if (text_.isEmpty()) {
        return true;
    }
    for (int column = 0; column < sourceModel()->columnCount(parent); ++column) {
        const QModelIndex cell = sourceModel()->index(row, column, parent);
        // The accessible text names the date on every line, the shown one only where a day begins.
        const QVariant text =
            column == RegisterModel::Date ? cell.data(Qt::AccessibleTextRole) : cell.data(Qt::DisplayRole);
        if (text.toString().contains(text_, Qt::CaseInsensitive)) {
            return true;
        }
    }
    return false;
}

bool RegisterFilter::lessThan(const QModelIndex& left, const QModelIndex& right) const {
    const QVariant a = left.data(RegisterModel::SortRole);
    const QVariant b = right.data(RegisterModel::SortRole);
    // What is missing stands at the end, whichever way the page is turned.
    if (a.isValid() != b.isValid()) {
        return (sortOrder() == Qt::AscendingOrder) == a.isValid();
    }
    return QSortFilterProxyModel::lessThan(left, right);
}

} // namespace wickbook::ui
