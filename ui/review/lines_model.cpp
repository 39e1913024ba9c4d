// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/review/lines_model.h"

#include "ui/review/review_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"

#include <algorithm>

namespace wickbook::ui {

LinesModel::LinesModel(QLocale locale, QObject* parent)
    : QAbstractTableModel(parent), locale_(std::move(locale)) {}

void LinesModel::show(const Run* run) {
    beginResetModel();
    lines_ = run == nullptr ? std::vector<RunLine>{} : run->lines;
    endResetModel();
}

const RunLine* LinesModel::line(int row) const {
    return row >= 0 && row < rowCount() ? &lines_[static_cast<std::size_t>(row)] : nullptr;
}

int LinesModel::firstOpen() const {
    const auto found =
        std::find_if(lines_.begin(), lines_.end(), [](const RunLine& line) { return line.isOpen(); });
    return found == lines_.end() ? -1 : static_cast<int>(found - lines_.begin());
}

int LinesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

int LinesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString LinesModel::markWords(const RunLine& line) const {
    if (!line.asked) {
        return tr("for comparison");
    }
    if (!line.answered) {
        return severityWords(line.checked.findings.front().severity);
    }
    return line.judged == record::Quality::NotJudged ? tr("changed") : qualityWords(line.judged);
}

QString LinesModel::text(const RunLine& line, int column) const {
    const record::Observation& values = line.checked.reading.values();
    switch (column) {
    case Mark:
        return {}; // drawn
    case Date:
        return spanWords(locale_, record::filedDate(values), record::filedDate(values));
    case Hour:
        return timeOfWords(values);
    case Dry:
        return bulbWords(locale_, values.dry);
    case Wet:
        return bulbWords(locale_, values.wet);
    case Humidity:
        return percentWords(locale_, line.checked.reading.humidityPercent());
    case Weather:
        return weatherSetWords(values.weather);
    case Note:
        return QString::fromStdString(values.note);
    default:
        return {};
    }
}

QVariant LinesModel::data(const QModelIndex& index, int role) const {
    const RunLine* shown = index.isValid() ? line(index.row()) : nullptr;
    if (shown == nullptr) {
        return {};
    }
    switch (role) {
    case Qt::DisplayRole:
        return text(*shown, index.column());
    case Qt::AccessibleTextRole:
        return index.column() == Mark ? markWords(*shown) : text(*shown, index.column());
    case Qt::ToolTipRole:
        return index.column() == Mark || index.column() == Note
                   ? QVariant{index.column() == Mark ? markWords(*shown) : text(*shown, Note)}
                   : QVariant{};
    case OpenRole:
        return shown->isOpen();
    case SeverityRole:
        return shown->isOpen() ? static_cast<int>(shown->checked.findings.front().severity) : -1;
    case Qt::TextAlignmentRole: {
        const bool right = index.column() >= Hour && index.column() <= Humidity;
        return QVariant{(right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter};
    }
    default:
        return {};
    }
}

QVariant LinesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount) {
        return {};
    }
    const QString names[ColumnCount] = {{},        tr("Date"), tr("Hour"),    tr("Dry"),
                                        tr("Wet"), tr("RH"),   tr("Weather"), tr("Note")};
    if (role == Qt::DisplayRole) {
        return names[section];
    }
    if (role == Qt::AccessibleTextRole && section == Mark) {
        return tr("Mark");
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant{(section >= Hour && section <= Humidity ? Qt::AlignRight : Qt::AlignLeft) |
                        Qt::AlignVCenter};
    }
    return {};
}

Qt::ItemFlags LinesModel::flags(const QModelIndex& index) const {
    const RunLine* shown = index.isValid() ? line(index.row()) : nullptr;
    if (shown == nullptr) {
        return Qt::NoItemFlags;
    }
    return shown->isOpen() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren
                           : Qt::ItemIsEnabled | Qt::ItemNeverHasChildren;
}

} // namespace wickbook::ui
