// SPDX-License-Identifier: GPL-3.0-or-later
// What the cells and heads of the page say.
#include "ui/oldpage/page_model.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

namespace wickbook::ui {

int PageModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int PageModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() || lines_.empty() ? 0 : static_cast<int>(columns_.size());
}

QString PageModel::cellText(const QModelIndex& at) const {
    const Column& column = columnAt(at);
    if (column.kind == ColumnKind::Date) {
        if (!data(at, NewDayRole).toBool()) {
            return {};
        }
        for (const int number : rows_[static_cast<std::size_t>(at.row())]) {
            if (number >= 0) {
                const QDate date = toQDate(line(number).expected.hour.date);
                return QStringLiteral("%1 %2").arg(locale_.dayName(date.dayOfWeek(), QLocale::ShortFormat),
                                                   QString::number(date.day()));
            }
        }
        return {};
    }
    const int number = lineAt(at);
    if (number < 0) {
        return {};
    }
    const PageLine& shown = line(number);
    if (column.kind == ColumnKind::Hour) {
        return hourWords(shown.expected.hour.hour);
    }
    if (column.kind != ColumnKind::Field) {
        return derivedText(shown, column.kind);
    }
    const LineText& text = textOf(shown);
    if (column.field == PageField::Dry && !text.missing.isEmpty() &&
        text.cell(PageField::Dry).problem.isEmpty()) {
        return missingWords(text.missing);
    }
    return text.cell(column.field).text;
}

QString PageModel::derivedText(const PageLine& shown, ColumnKind kind) const {
    if (!shown.live || !shown.live->derivation) {
        return {};
    }
    if (kind == ColumnKind::Humidity) {
        const auto humidity = shown.live->humidityPercent();
        return humidity ? numberWords(locale_, humidity, 0) : QString{};
    }
    if (kind == ColumnKind::DewPoint) {
        const auto& dewPoint = shown.live->derivation->dewPoint;
        return dewPoint ? temperatureWords(locale_, dewPoint, unit_) : QString{};
    }
    return {};
}

QString PageModel::spoken(const QModelIndex& at) const {
    const int number = lineAt(at);
    if (number < 0) {
        return {};
    }
    const PageLine& shown = line(number);
    const QString cell = cellText(at);
    QStringList words{hourAndDateWords(locale_, shown.expected.hour),
                      headerData(at.column(), Qt::Horizontal, Qt::ToolTipRole).toString() +
                          QStringLiteral(": ") + (cell.isEmpty() ? tr("empty") : cell)};
    words << pageMarkWords(markOf(shown));
    if (const QString problem = data(at, ProblemRole).toString(); !problem.isEmpty()) {
        words << problem;
    }
    return words.join(QStringLiteral(", "));
}

QVariant PageModel::data(const QModelIndex& at, int role) const {
    if (!at.isValid() || at.row() >= rowCount() || at.column() >= columnCount()) {
        return {};
    }
    const Column& column = columnAt(at);
    const int number = lineAt(at);
    switch (role) {
    case Qt::DisplayRole:
        return cellText(at);
    case Qt::EditRole:
        if (column.kind == ColumnKind::Field && number >= 0) {
            const LineText& text = textOf(line(number));
            return text.missing.isEmpty() || column.field != PageField::Dry
                       ? text.cell(column.field).text
                       : QStringLiteral("m ") + missingWords(text.missing);
        }
        return cellText(at);
    case Qt::AccessibleTextRole:
        return spoken(at);
    case Qt::ToolTipRole:
        if (number < 0) {
            return tr("No reading was due at this hour on this day.");
        }
        if (const QString problem = data(at, ProblemRole).toString(); !problem.isEmpty()) {
            return problem;
        }
        return column.kind == ColumnKind::Mark ? pageMarkWords(markOf(line(number))) : cellText(at);
    case Qt::TextAlignmentRole: {
        const bool right = data(at, NumberRole).toBool() || column.kind == ColumnKind::Humidity ||
                           column.kind == ColumnKind::DewPoint || column.kind == ColumnKind::Hour;
        return QVariant{(right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter};
    }
    case MarkRole:
        return static_cast<int>(number < 0 ? PageMark::Empty : markOf(line(number)));
    case ProblemRole:
        return number >= 0 && column.kind == ColumnKind::Field
                   ? textOf(line(number)).cell(column.field).problem
                   : QString{};
    case NewDayRole: {
        const auto dateOf = [this](int row) -> std::optional<record::StationDate> {
            if (row < 0) {
                return std::nullopt;
            }
            for (const int candidate : rows_[static_cast<std::size_t>(row)]) {
                if (candidate >= 0) {
                    return line(candidate).expected.hour.date;
                }
            }
            return std::nullopt;
        };
        return dateOf(at.row()) != dateOf(at.row() - 1);
    }
    case InBookRole: {
        if (number < 0 || readingBack_ || !line(number).stored || column.kind != ColumnKind::Field) {
            return false;
        }
        const LineText kept = lineTextOf(line(number).stored->values, locale_);
        return kept.cell(column.field) == line(number).text.cell(column.field) &&
               kept.missing == line(number).text.missing;
    }
    case NumberRole: {
        const bool words = column.field == PageField::Wick || column.field == PageField::Weather ||
                           column.field == PageField::Note;
        return column.kind == ColumnKind::Field && !words &&
               (number < 0 || column.field != PageField::Dry || textOf(line(number)).missing.isEmpty());
    }
    default:
        return {};
    }
}

QVariant PageModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) {
        return {};
    }
    const Column& column = columns_[static_cast<std::size_t>(section)];
    QString head;
    QString words;
    switch (column.kind) {
    case ColumnKind::Date:
        head = words = tr("Date");
        break;
    case ColumnKind::Hour:
        head = tr("Hour");
        words = tr("Observing hour");
        break;
    case ColumnKind::Field:
        head = pageFieldHead(column.field);
        words = pageFieldWords(column.field);
        break;
    case ColumnKind::Humidity:
        head = tr("RH %");
        words = tr("Relative humidity, %");
        break;
    case ColumnKind::DewPoint:
        head = tr("Dew p.");
        words = tr("Dew point, %1").arg(unitWords(unit_));
        break;
    case ColumnKind::Mark:
        words = tr("How the line stands");
        break;
    }
    const bool abreast = !blocks_.empty() && column.kind != ColumnKind::Date;
    if (role == Qt::DisplayRole) {
        if (blocks_.empty()) {
            return head;
        }
        // The block's first column names the hour above its own head.
        const bool first = abreast && (section == 1 ||
                                       columns_[static_cast<std::size_t>(section - 1)].block != column.block);
        return (first ? hourWords(blocks_[static_cast<std::size_t>(column.block)]) : QString{}) +
               QLatin1Char('\n') + head;
    }
    if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole) {
        return abreast
                   ? hourWords(blocks_[static_cast<std::size_t>(column.block)]) + QStringLiteral(", ") + words
                   : words;
    }
    if (role == Qt::TextAlignmentRole) {
        const bool words0 = column.kind == ColumnKind::Date || column.kind == ColumnKind::Mark ||
                            (column.kind == ColumnKind::Field &&
                             (column.field == PageField::Wick || column.field == PageField::Weather ||
                              column.field == PageField::Note));
        return QVariant{(words0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter};
    }
    return {};
}

} // namespace wickbook::ui
