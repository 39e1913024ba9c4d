// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/classround/pairs_model.h"

#include "ui/style/tokens.h"
#include "ui/text/class_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"

#include <QGuiApplication>

namespace wickbook::ui {

namespace {

std::optional<units::ReadTemperature> readingFrom(const QString& text, units::TemperatureUnit unit) {
    const auto number = units::parseDecimal(text.toStdString());
    return number ? std::optional{units::ReadTemperature{*number, unit}} : std::nullopt;
}

/// "w", "water", its word in the person's language; the same of ice. None for anything else.
std::optional<psychrometry::WickState> wickFrom(const QString& text) {
    using psychrometry::WickState;
    const QString given = text.trimmed().toLower();
    if (given.isEmpty()) {
        return WickState::NotGiven;
    }
    for (const WickState wick : {WickState::Water, WickState::Ice}) {
        if (wickWords(wick).toLower().startsWith(given)) {
            return wick;
        }
    }
    return std::nullopt;
}

} // namespace

PairsModel::PairsModel(QObject* parent) : QAbstractTableModel(parent) {}

void PairsModel::setSetting(const comparison::RoundSetting& setting, units::TemperatureUnit unit) {
    setting_ = setting;
    unit_ = unit;
    judge();
}

void PairsModel::clear() {
    beginResetModel();
    lines_.assign(1, Line{});
    endResetModel();
    judge();
}

const comparison::PupilResult* PairsModel::result(const Line& line) const {
    return line.pupil < 0 ? nullptr : &round_.pupils[static_cast<std::size_t>(line.pupil)];
}

void PairsModel::judge() {
    std::vector<comparison::PupilPair> pairs;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        Line& line = lines_[i];
        line.pupil = -1;
        comparison::PupilPair pair;
        pair.number = static_cast<int>(i) + 1;
        pair.dry = readingFrom(line.dry, unit_);
        pair.wet = readingFrom(line.wet, unit_);
        pair.wick = wickFrom(line.wick).value_or(psychrometry::WickState::NotGiven);
        if (pair.dry || pair.wet) {
            line.pupil = static_cast<int>(pairs.size());
            pairs.push_back(pair);
        }
    }
    round_ = comparison::judgeRound(pairs, setting_);
    emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    emit headerDataChanged(Qt::Horizontal, Dry, DewPoint);
    emit judged();
}

QString PairsModel::problem(const Line& line, int column) const {
    const QString& typed = column == Dry ? line.dry : column == Wet ? line.wet : line.wick;
    if (typed.trimmed().isEmpty()) {
        return {};
    }
    if (column == Wick) {
        return wickFrom(typed) ? QString{} : tr("The wick is water or ice: type w or i.");
    }
    return readingFrom(typed, unit_) ? QString{} : tr("%1 is not a number: write it as 16.4.").arg(typed);
}

QString PairsModel::text(int row, int column) const {
    const Line& line = lines_[static_cast<std::size_t>(row)];
    const comparison::PupilResult* pupil = result(line);
    switch (column) {
    case Number:
        return locale_.toString(row + 1);
    case Dry:
        return line.dry;
    case Wet:
        return line.wet;
    case Wick: {
        const auto wick = wickFrom(line.wick);
        return wick ? wickWords(*wick) : line.wick;
    }
    case Depression:
        return pupil != nullptr && pupil->derivation
                   ? differenceWords(locale_, pupil->derivation->depression, unit_)
                   : QString{};
    case Humidity:
        return pupil != nullptr && pupil->derivation && pupil->derivation->relativeHumidity
                   ? percentWords(locale_, pupil->derivation->relativeHumidity->percent())
                   : QString{};
    case DewPoint:
        return pupil != nullptr && pupil->derivation && pupil->derivation->dewPoint
                   ? temperatureWords(locale_, pupil->derivation->dewPoint, unit_)
                   : QString{};
    case Notice:
        for (const int typed : {Dry, Wet, Wick}) {
            if (const QString trouble = problem(line, typed); !trouble.isEmpty()) {
                return trouble;
            }
        }
        if (pupil == nullptr) {
            return {};
        }
        if (pupil->derivation &&
            pupil->derivation->problem == psychrometry::PsychrometryError::WickStateUnknown) {
            return tr("At or below zero: type w for water or i for ice.");
        }
        return pupilWords(locale_, *pupil, unit_);
    default:
        return {};
    }
}

int PairsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

int PairsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant PairsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount() || index.column() >= ColumnCount) {
        return {};
    }
    const Line& line = lines_[static_cast<std::size_t>(index.row())];
    const int column = index.column();
    switch (role) {
    case Qt::DisplayRole:
        return text(index.row(), column);
    case Qt::EditRole:
        return column == Wick ? line.wick : text(index.row(), column);
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(column == Notice || column == Wick ? Qt::AlignLeft | Qt::AlignVCenter
                                                                      : Qt::AlignRight | Qt::AlignVCenter);
    case Qt::ForegroundRole: {
        const Tokens& tokens = tokensFor(QGuiApplication::palette());
        if ((column == Dry || column == Wet || column == Wick) && !problem(line, column).isEmpty()) {
            return tokens.wrong;
        }
        const comparison::PupilResult* pupil = result(line);
        if (column == Notice && pupil != nullptr && pupil->farOff) {
            return tokens.query;
        }
        return column == Number ? QVariant{tokens.soft} : QVariant{};
    }
    case Qt::AccessibleTextRole: {
        const QString shown = text(index.row(), column);
        return tr("%1: %2").arg(headerData(column, Qt::Horizontal, Qt::DisplayRole).toString(),
                                shown.isEmpty() ? tr("empty") : shown);
    }
    case Qt::ToolTipRole:
        return column == Notice ? QVariant{text(index.row(), column)} : QVariant{};
    default:
        return {};
    }
}

QVariant PairsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case Number:
        return tr("Number");
    case Dry:
        return tr("Dry %1").arg(unitWords(unit_));
    case Wet:
        return tr("Wet %1").arg(unitWords(unit_));
    case Wick:
        return tr("Wick");
    case Depression:
        return tr("Dry less wet");
    case Humidity:
        return tr("Humidity");
    case DewPoint:
        return tr("Dew point");
    case Notice:
        return tr("What to look at");
    default:
        return {};
    }
}

Qt::ItemFlags PairsModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    if (index.column() == Dry || index.column() == Wet || index.column() == Wick) {
        flags |= Qt::ItemIsEditable;
    }
    return flags;
}

bool PairsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !(flags(index) & Qt::ItemIsEditable)) {
        return false;
    }
    Line& line = lines_[static_cast<std::size_t>(index.row())];
    QString& cell = index.column() == Dry ? line.dry : index.column() == Wet ? line.wet : line.wick;
    cell = value.toString().trimmed();
    const bool last = index.row() == rowCount() - 1;
    if (last && !cell.isEmpty()) {
        beginInsertRows({}, rowCount(), rowCount());
        lines_.emplace_back();
        endInsertRows();
    }
    judge();
    return true;
}

QString PairsModel::asTable() const {
    QStringList rows;
    QStringList head;
    for (int column = 0; column < ColumnCount; ++column) {
        head << headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
    }
    rows << head.join(QLatin1Char('\t'));
    for (int row = 0; row + 1 < rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < ColumnCount; ++column) {
            cells << text(row, column);
        }
        rows << cells.join(QLatin1Char('\t'));
    }
    return rows.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

} // namespace wickbook::ui
