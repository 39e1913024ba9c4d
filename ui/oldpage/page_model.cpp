// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/oldpage/page_model.h"

#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <algorithm>
#include <map>
#include <set>

namespace wickbook::ui {

QString pageMarkWords(PageMark mark) {
    switch (mark) {
    case PageMark::Empty:
        return PageModel::tr("nothing written yet");
    case PageMark::Typed:
        return PageModel::tr("goes into the book when the line is left");
    case PageMark::Unsaved:
        return PageModel::tr("not in the book");
    case PageMark::Kept:
        return PageModel::tr("in the book");
    case PageMark::ReadBack:
        return PageModel::tr("in the book, read back");
    case PageMark::Query:
        return PageModel::tr("in the book, doubtful");
    case PageMark::Wrong:
        return PageModel::tr("in the book, can hardly be right");
    case PageMark::Excused:
        return PageModel::tr("missing, with a reason");
    case PageMark::Differs:
        return PageModel::tr("typed otherwise the second time");
    }
    return {};
}

PageModel::PageModel(QLocale locale, QObject* parent)
    : QAbstractTableModel(parent), locale_(std::move(locale)) {}

void PageModel::show(std::vector<PageLine> lines, const PageHabits& habits, units::TemperatureUnit unit) {
    beginResetModel();
    lines_ = std::move(lines);
    habits_ = habits;
    unit_ = unit;
    arrange();
    for (PageLine& line : lines_) {
        liveOf(line, line.text);
    }
    endResetModel();
}

void PageModel::setHabits(const PageHabits& habits) {
    const bool sameTable = habits.columns == habits_.columns && habits.hoursAbreast == habits_.hoursAbreast;
    if (sameTable) {
        habits_ = habits;
        if (lineCount() > 0) {
            emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
        }
        return;
    }
    beginResetModel();
    habits_ = habits;
    arrange();
    endResetModel();
}

void PageModel::setReadingBack(bool readingBack) {
    beginResetModel();
    readingBack_ = readingBack;
    for (PageLine& line : lines_) {
        line.again = {};
        line.readAgain = ReadAgain::NotYet;
        liveOf(line, textOf(line));
    }
    endResetModel();
}

void PageModel::arrange() {
    columns_.clear();
    rows_.clear();
    blocks_.clear();
    std::set<record::HourOfDay> hours;
    for (const PageLine& line : lines_) {
        hours.insert(line.expected.hour.hour);
    }
    const bool abreast = habits_.hoursAbreast && hours.size() > 1;
    columns_.push_back({ColumnKind::Date});
    if (abreast) {
        blocks_.assign(hours.begin(), hours.end());
    } else {
        columns_.push_back({ColumnKind::Hour});
    }
    for (int block = 0; block < (abreast ? static_cast<int>(blocks_.size()) : 1); ++block) {
        for (const PageField field : habits_.shownFields()) {
            columns_.push_back({ColumnKind::Field, field, block});
        }
        for (const ColumnKind kind : {ColumnKind::Humidity, ColumnKind::DewPoint, ColumnKind::Mark}) {
            columns_.push_back({kind, PageField::Dry, block});
        }
    }
    if (!abreast) {
        for (int number = 0; number < lineCount(); ++number) {
            rows_.push_back({number});
        }
        return;
    }
    std::map<record::StationDate, std::vector<int>> days;
    for (int number = 0; number < lineCount(); ++number) {
        auto& day = days[line(number).expected.hour.date];
        day.resize(blocks_.size(), -1);
        const auto block =
            std::find(blocks_.begin(), blocks_.end(), line(number).expected.hour.hour) - blocks_.begin();
        day[static_cast<std::size_t>(block)] = number;
    }
    for (auto& [date, numbers] : days) {
        rows_.push_back(std::move(numbers));
    }
}

void PageModel::liveOf(PageLine& line, const LineText& text) const {
    line.live.reset();
    if (station_ == nullptr || text.cell(PageField::Dry).text.isEmpty() ||
        text.cell(PageField::Wet).text.isEmpty()) {
        return;
    }
    PageLine shown;
    shown.expected = line.expected;
    shown.text = text;
    shown.stored = line.stored;
    const record::Observation observation = observationOf(shown, *station_, {}, {}, locale_);
    if (observation.hasPair()) {
        line.live = record::deriveReading(observation, *station_);
    }
}

void PageModel::lineChanged(int number) {
    for (int row = 0; row < rowCount(); ++row) {
        const auto& numbers = rows_[static_cast<std::size_t>(row)];
        if (std::find(numbers.begin(), numbers.end(), number) != numbers.end()) {
            liveOf(line(number), textOf(line(number)));
            emit dataChanged(index(row, 0), index(row, columnCount() - 1));
            return;
        }
    }
}

int PageModel::lineAt(const QModelIndex& index) const {
    if (!index.isValid() || index.row() >= rowCount() || index.column() >= columnCount()) {
        return -1;
    }
    const auto& numbers = rows_[static_cast<std::size_t>(index.row())];
    return numbers[static_cast<std::size_t>(columnAt(index).block)];
}

const PageModel::Column& PageModel::columnAt(const QModelIndex& index) const {
    return columns_[static_cast<std::size_t>(index.column())];
}

QModelIndex PageModel::indexOf(int number, PageField field) const {
    for (int row = 0; row < rowCount(); ++row) {
        for (int column = 0; column < columnCount(); ++column) {
            const QModelIndex at = index(row, column);
            if (columnAt(at).kind == ColumnKind::Field && columnAt(at).field == field &&
                lineAt(at) == number) {
                return at;
            }
        }
    }
    return {};
}

const LineText& PageModel::textOf(const PageLine& line) const {
    return readingBack_ ? line.again : line.text;
}

CellReading PageModel::readingAt(const QModelIndex& at) const {
    CellReading reading{locale_, impliedDecimals_, nullptr};
    if (const int above = lineAt(at.siblingAtRow(at.row() - 1)); above >= 0) {
        reading.above = &textOf(line(above));
    }
    return reading;
}

void PageModel::preview(const QModelIndex& at, const QString& typed) {
    const int number = lineAt(at);
    if (number < 0) {
        return;
    }
    LineText text = textOf(line(number));
    takeCell(text, columnAt(at).field, typed, readingAt(at));
    liveOf(line(number), text);
    emit dataChanged(index(at.row(), 0), index(at.row(), columnCount() - 1));
}

QString PageModel::problemOf(const QModelIndex& at, const QString& typed) const {
    const int number = lineAt(at);
    if (number < 0) {
        return {};
    }
    LineText text = textOf(line(number));
    return takeCell(text, columnAt(at).field, typed, readingAt(at));
}

bool PageModel::setData(const QModelIndex& at, const QVariant& value, int role) {
    const int number = lineAt(at);
    if (role != Qt::EditRole || number < 0 || !flags(at).testFlag(Qt::ItemIsEditable)) {
        return false;
    }
    PageLine& written = line(number);
    LineText& text = readingBack_ ? written.again : written.text;
    const QString typed = value.toString();
    // A cell left as it was found is not taken anew: "fog, rime" needs no second reading.
    if (typed.simplified() != text.cell(columnAt(at).field).text) {
        takeCell(text, columnAt(at).field, typed, readingAt(at));
    }
    lineChanged(number);
    emit cellTaken(number);
    return true;
}

Qt::ItemFlags PageModel::flags(const QModelIndex& at) const {
    const int number = lineAt(at);
    if (number < 0) {
        return Qt::NoItemFlags;
    }
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    const bool nothingToReadBack = readingBack_ && !line(number).stored;
    if (columnAt(at).kind == ColumnKind::Field && !readOnly_ && !line(number).toCome && !nothingToReadBack) {
        flags |= Qt::ItemIsEditable;
    }
    return flags;
}

PageMark PageModel::markOf(const PageLine& shown) const {
    if (shown.readAgain == ReadAgain::Differs) {
        return habits_.notesAtEnd ? PageMark::Kept : PageMark::Differs;
    }
    if (shown.failed || shown.text.hasProblem()) {
        return PageMark::Unsaved;
    }
    const bool typed =
        shown.stored ? lineTextOf(shown.stored->values, locale_) != shown.text : !shown.text.isEmpty();
    if (typed) {
        return PageMark::Typed;
    }
    if (!shown.stored) {
        return PageMark::Empty;
    }
    if (shown.stored->values.origin == record::Origin::Missing) {
        return shown.stored->values.readBack ? PageMark::ReadBack : PageMark::Excused;
    }
    if (shown.judged && !habits_.notesAtEnd && shown.stored->values.quality == record::Quality::NotJudged) {
        checks::Severity gravest = checks::Severity::Note;
        for (const checks::Finding& finding : shown.judged->findings) {
            if (finding.code != "incomplete") {
                gravest = std::max(gravest, finding.severity);
            }
        }
        if (gravest >= checks::Severity::Erroneous) {
            return PageMark::Wrong;
        }
        if (gravest >= checks::Severity::Soft) {
            return PageMark::Query;
        }
    }
    return shown.stored->values.readBack ? PageMark::ReadBack : PageMark::Kept;
}

} // namespace wickbook::ui
