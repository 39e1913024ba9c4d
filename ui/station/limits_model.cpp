// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/limits_model.h"

#include "ui/text/limit_words.h"
#include "ui/text/time_words.h"

#include <QFont>

#include <algorithm>

namespace wickbook::ui {

namespace {

/// Internal id of a rule's own line; a limit's is the row of its rule.
constexpr quintptr kRuleLine = ~quintptr{0};

} // namespace

LimitsModel::LimitsModel(Session& session, QLocale locale, QObject* parent)
    : QAbstractItemModel(parent), session_(session), locale_(std::move(locale)) {
    load();
}

LimitsModel::Line LimitsModel::lineOf(const checks::LimitEntry& entry,
                                      const std::vector<record::LimitRevision>& revisions) const {
    Line line{&entry, false, entry.value, {}, {}};
    const record::LimitMoment* moment = nullptr;
    for (const auto& [limit, value] : session_.station().facts().limits) {
        if (limit.name == entry.name && (!limit.from || *limit.from <= session_.now())) {
            moment = &limit; // in time order: the last one holds
            line.value = value.value_or(entry.value);
            line.own = value.has_value();
        }
    }
    if (moment == nullptr) {
        return line;
    }
    if (moment->from) {
        const record::Zone zone = session_.station().periodAt(*moment->from).zone;
        line.since = longDateWords(locale_, date::floor<date::days>(zone.localAt(*moment->from)));
    } else {
        line.since = tr("the beginning");
    }
    const auto by = std::find_if(revisions.rbegin(), revisions.rend(),
                                 [&](const auto& revision) { return revision.limit == *moment; });
    if (by != revisions.rend()) {
        const QString who = QString::fromStdString(by->stamp.author.who);
        line.why = QString::fromStdString(by->stamp.author.why);
        if (!who.isEmpty()) {
            line.why += QStringLiteral(" (%1)").arg(who);
        }
    }
    return line;
}

void LimitsModel::load() {
    // Where the book can't be read just now, the values stand without who and why.
    const auto revisions = session_.book().limitHistory();
    std::vector<RuleLines> rules;
    for (const checks::LimitEntry& entry : checks::limitTable()) {
        const std::string_view rule = ruleOfLimit(entry.name);
        if (rules.empty() || rules.back().rule != rule) {
            rules.push_back({rule, {}});
        }
        rules.back().lines.push_back(
            lineOf(entry, revisions ? *revisions : std::vector<record::LimitRevision>{}));
    }
    if (rules_.size() != rules.size()) {
        beginResetModel();
        rules_ = std::move(rules);
        endResetModel();
        return;
    }
    // The lines are those of the table and never change; a reset would lose what is folded out.
    rules_ = std::move(rules);
    for (int row = 0; row < rowCount(); ++row) {
        const QModelIndex rule = index(row, 0);
        emit dataChanged(rule, index(row, ColumnCount - 1));
        emit dataChanged(index(0, 0, rule), index(rowCount(rule) - 1, ColumnCount - 1, rule));
    }
}

const checks::LimitEntry* LimitsModel::limitAt(const QModelIndex& index) const {
    if (!index.isValid() || index.internalId() == kRuleLine) {
        return nullptr;
    }
    return rules_[index.internalId()].lines[static_cast<std::size_t>(index.row())].entry;
}

std::string_view LimitsModel::ruleAt(const QModelIndex& index) const {
    if (!index.isValid()) {
        return {};
    }
    const std::size_t rule = index.internalId() == kRuleLine ? static_cast<std::size_t>(index.row())
                                                             : static_cast<std::size_t>(index.internalId());
    return rules_[rule].rule;
}

QModelIndex LimitsModel::indexOf(std::string_view limit) const {
    for (std::size_t rule = 0; rule < rules_.size(); ++rule) {
        for (std::size_t line = 0; line < rules_[rule].lines.size(); ++line) {
            if (rules_[rule].lines[line].entry->name == limit) {
                return createIndex(static_cast<int>(line), 0, rule);
            }
        }
    }
    return {};
}

QModelIndex LimitsModel::index(int row, int column, const QModelIndex& parent) const {
    if (!hasIndex(row, column, parent)) {
        return {};
    }
    return createIndex(row, column, parent.isValid() ? static_cast<quintptr>(parent.row()) : kRuleLine);
}

QModelIndex LimitsModel::parent(const QModelIndex& child) const {
    if (!child.isValid() || child.internalId() == kRuleLine) {
        return {};
    }
    return createIndex(static_cast<int>(child.internalId()), 0, kRuleLine);
}

int LimitsModel::rowCount(const QModelIndex& parent) const {
    if (!parent.isValid()) {
        return static_cast<int>(rules_.size());
    }
    if (parent.internalId() != kRuleLine || parent.column() != 0) {
        return 0;
    }
    return static_cast<int>(rules_[static_cast<std::size_t>(parent.row())].lines.size());
}

int LimitsModel::columnCount(const QModelIndex& /*parent*/) const {
    return ColumnCount;
}

QVariant LimitsModel::textOf(const Line& line, int column) const {
    const auto unit = session_.unit();
    switch (column) {
    case What:
        return limitNameWords(line.entry->name);
    case BuiltIn:
        return limitValueWords(locale_, *line.entry, line.entry->value, unit);
    case Here:
        return checks::isFixed(*line.entry) ? tr("fixed")
               : line.own                   ? limitValueWords(locale_, *line.entry, line.value, unit)
                                            : tr("as built in");
    case Since:
        return line.since;
    case Why:
        return line.why;
    default:
        return {};
    }
}

QVariant LimitsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    if (index.internalId() == kRuleLine) {
        const LimitRuleWords words = limitRuleWords(ruleAt(index));
        if (role == Qt::DisplayRole && index.column() == What) {
            return words.title;
        }
        if (role == Qt::ToolTipRole || role == Qt::AccessibleDescriptionRole) {
            return words.does;
        }
        if (role == Qt::FontRole && index.column() == What) {
            QFont bold;
            bold.setBold(true);
            return bold;
        }
        return {};
    }
    const Line& line = rules_[index.internalId()].lines[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole) {
        return textOf(line, index.column());
    }
    if (role == Qt::ToolTipRole) {
        return tr("Source of the built-in value: %1").arg(limitSourceWords(line.entry->source));
    }
    if (role == Qt::FontRole && index.column() == Here && line.own) {
        QFont bold;
        bold.setBold(true);
        return bold;
    }
    return {};
}

QVariant LimitsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case What:
        return tr("Rule and limit");
    case BuiltIn:
        return tr("Built in");
    case Here:
        return tr("At this station");
    case Since:
        return tr("From");
    case Why:
        return tr("Why (who)");
    default:
        return {};
    }
}

} // namespace wickbook::ui
