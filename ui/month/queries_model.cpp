// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/queries_model.h"

#include "ui/text/finding_words.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <algorithm>

namespace wickbook::ui {

namespace {

bool isOpen(const checks::CheckedReading& checked) {
    const record::Observation& values = checked.reading.values();
    return values.quality == record::Quality::NotJudged && values.origin != record::Origin::Missing &&
           std::any_of(checked.findings.begin(), checked.findings.end(),
                       [](const auto& finding) { return checks::setsAside(finding.severity); });
}

} // namespace

QueriesModel::QueriesModel(QLocale locale, QObject* parent)
    : QAbstractTableModel(parent), locale_(std::move(locale)) {}

void QueriesModel::show(const report::MonthReport& report, units::TemperatureUnit unit) {
    beginResetModel();
    unit_ = unit;
    rows_.clear();
    for (const report::MonthLine& line : report.lines) {
        if (line.reading != nullptr && isOpen(*line.reading)) {
            rows_.push_back({line.hour, *line.reading});
        }
    }
    endResetModel();
}

const checks::CheckedReading* QueriesModel::query(int row) const {
    return row >= 0 && row < rowCount() ? &rows_[static_cast<std::size_t>(row)].reading : nullptr;
}

record::ObservingHour QueriesModel::hour(int row) const {
    return row >= 0 && row < rowCount() ? rows_[static_cast<std::size_t>(row)].hour : record::ObservingHour{};
}

QString QueriesModel::explained(int row) const {
    const checks::CheckedReading* checked = query(row);
    if (checked == nullptr) {
        return {};
    }
    QStringList lines;
    for (const checks::SpokenNote& note : checks::spokenNotes(checked->findings)) {
        const FindingWords said = findingWords(locale_, note.lead, unit_);
        lines << QStringLiteral("○ %1. %2 %3").arg(said.title, said.message, said.remedy);
    }
    return lines.join(QLatin1Char('\n'));
}

int QueriesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int QueriesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString QueriesModel::text(const Row& row, int column) const {
    const record::Observation& values = row.reading.reading.values();
    switch (column) {
    case When:
        return QStringLiteral("%1, %2").arg(shortDateWords(locale_, row.hour.date), hourWords(row.hour.hour));
    case Read:
        return QStringLiteral("%1 / %2").arg(bulbWords(locale_, values.dry), bulbWords(locale_, values.wet));
    case Humidity:
        return percentWords(locale_, row.reading.reading.humidityPercent());
    case Query: {
        const auto notes = checks::spokenNotes(row.reading.findings);
        QStringList titles;
        for (const checks::SpokenNote& note : notes) {
            titles << findingWords(locale_, note.lead, unit_).title;
        }
        return titles.join(QStringLiteral("; "));
    }
    default:
        return {};
    }
}

QVariant QueriesModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || query(index.row()) == nullptr) {
        return {};
    }
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole) {
        return text(row, index.column());
    }
    if (role == Qt::ToolTipRole || (role == Qt::AccessibleDescriptionRole && index.column() == Query)) {
        return explained(index.row());
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant{(index.column() == Humidity ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter};
    }
    return {};
}

QVariant QueriesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount) {
        return {};
    }
    if (role == Qt::DisplayRole) {
        const QString names[ColumnCount] = {tr("When"), tr("Dry / wet as read"), tr("RH"), tr("Query")};
        return names[section];
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant{(section == Humidity ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter};
    }
    return {};
}

} // namespace wickbook::ui
