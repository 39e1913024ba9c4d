// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/limits.h"
#include "ui/session/session.h"

#include <QAbstractItemModel>
#include <QLocale>

#include <optional>
#include <string>
#include <vector>

/// The limits of the checks as a tree: a line for each rule, under it one for each of its limits as they hold
/// now. Reads from the session; load() after the facts have changed.

namespace wickbook::ui {

class LimitsModel : public QAbstractItemModel {
    Q_OBJECT

public:
    enum Column { What, BuiltIn, Here, Since, Why, ColumnCount };

    explicit LimitsModel(Session& session, QLocale locale, QObject* parent = nullptr);
    void load();

    /// nullptr for the line of a rule.
    [[nodiscard]] const checks::LimitEntry* limitAt(const QModelIndex& index) const;
    [[nodiscard]] std::string_view ruleAt(const QModelIndex& index) const;
    [[nodiscard]] QModelIndex indexOf(std::string_view limit) const;

    [[nodiscard]] QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    [[nodiscard]] QModelIndex parent(const QModelIndex& child) const override;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Line {
        const checks::LimitEntry* entry;
        bool own = false; ///< the station says so, even where it says the built-in value
        double value = 0;
        QString since;
        QString why;
    };
    struct RuleLines {
        std::string_view rule;
        std::vector<Line> lines;
    };
    [[nodiscard]] Line lineOf(const checks::LimitEntry& entry,
                              const std::vector<record::LimitRevision>& revisions) const;
    [[nodiscard]] QVariant textOf(const Line& line, int column) const;

    Session& session_;
    QLocale locale_;
    std::vector<RuleLines> rules_;
};

} // namespace wickbook::ui
