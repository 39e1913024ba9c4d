// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/takein/verdict_model.h"

#include "ui/takein/takein_words.h"
#include "ui/text/time_words.h"

namespace wickbook::ui {

void VerdictModel::setPreview(std::shared_ptr<const desk::ImportPreview> preview) {
    beginResetModel();
    preview_ = std::move(preview);
    fill();
    endResetModel();
}

void VerdictModel::setShow(Show show) {
    beginResetModel();
    show_ = show;
    fill();
    endResetModel();
}

void VerdictModel::setOnConflict(exchange::OnConflict onConflict) {
    onConflict_ = onConflict;
    if (!rows_.empty()) {
        emit dataChanged(index(0, Verdict), index(rowCount() - 1, Sentence));
    }
}

void VerdictModel::fill() {
    rows_.clear();
    if (!preview_) {
        return;
    }
    for (std::size_t i = 0; i < preview_->lines.size(); ++i) {
        if (shown(preview_->lines[i])) {
            rows_.push_back(i);
        }
    }
}

bool VerdictModel::shown(const desk::PreviewLine& line) const {
    switch (show_) {
    case Show::All:
        return true;
    case Show::Fresh:
        return line.verdict == desk::LineVerdict::Fresh;
    case Show::Marked:
        return !line.findings.empty();
    case Show::Conflicts:
        return line.verdict == desk::LineVerdict::Conflict;
    case Show::Rejected:
        return line.verdict == desk::LineVerdict::Rejected;
    case Show::Same:
        return line.verdict == desk::LineVerdict::Same;
    }
    return true;
}

int VerdictModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int VerdictModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString VerdictModel::text(const desk::PreviewLine& line, int column) const {
    const bool read = line.verdict != desk::LineVerdict::Rejected;
    switch (column) {
    case Line:
        return QString::number(line.line);
    case Verdict:
        return verdictWords(line, onConflict_);
    case When:
        if (!read) {
            return QString::fromStdString(line.text).simplified().left(60);
        }
        if (line.values.hour) {
            return QStringLiteral("%1 %2").arg(
                QString::fromStdString(record::dateText(line.values.hour->date)),
                hourWords(line.values.hour->hour));
        }
        return QStringLiteral("%1 %2").arg(
            QString::fromStdString(record::dateText(record::filedDate(line.values))),
            clockWords(line.values.instant, line.values.offset));
    case Dry:
        return read ? bulbWithUnit(locale_, line.values.dry) : QString{};
    case Wet:
        return read ? bulbWithUnit(locale_, line.values.wet) : QString{};
    case Sentence:
        return verdictSentence(locale_, line, onConflict_);
    default:
        return {};
    }
}

QVariant VerdictModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const auto& line = preview_->lines[rows_[static_cast<std::size_t>(index.row())]];
    switch (role) {
    case Qt::DisplayRole:
        return text(line, index.column());
    case Qt::ToolTipRole:
        return index.column() == Sentence ? QVariant(text(line, Sentence)) : QVariant{};
    case Qt::TextAlignmentRole:
        return static_cast<int>((index.column() == Line || index.column() == Dry || index.column() == Wet
                                     ? Qt::AlignRight
                                     : Qt::AlignLeft) |
                                Qt::AlignVCenter);
    default:
        return {};
    }
}

QVariant VerdictModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole) {
        return static_cast<int>(
            (section == Line || section == Dry || section == Wet ? Qt::AlignRight : Qt::AlignLeft) |
            Qt::AlignVCenter);
    }
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case Line:
        return tr("line");
    case Verdict:
        return tr("what becomes of it");
    case When:
        return tr("reading");
    case Dry:
        return tr("dry");
    case Wet:
        return tr("wet");
    case Sentence:
        return tr("why");
    default:
        return {};
    }
}

} // namespace wickbook::ui
