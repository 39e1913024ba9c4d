// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSortFilterProxyModel>

namespace wickbook::ui {

/// Lines that hold a text, or only those with a query open; ordered by the numbers, not by their letters.
class RegisterFilter : public QSortFilterProxyModel {
    Q_OBJECT

public:
    explicit RegisterFilter(QObject* parent = nullptr);

    void setText(const QString& text);
    void setOnlyQueries(bool only);
    [[nodiscard]] bool isFiltering() const { return onlyQueries_ || !text_.isEmpty(); }
    /// The lines as shown, tab-separated with a head line, for pasting into a spreadsheet or a letter.
    [[nodiscard]] QString asTable() const;

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;
    [[nodiscard]] bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;

private:
    QString text_;
    bool onlyQueries_ = false;
};

} // namespace wickbook::ui
