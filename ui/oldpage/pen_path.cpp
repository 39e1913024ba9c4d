// SPDX-License-Identifier: GPL-3.0-or-later
// Where the pen goes: Enter moves from stop to stop, along the line or down the column. Stops are the columns
// that Enter was told to visit, on lines that can be written; a line said to be missing is passed over, and a
// wet bulb near freezing asks for its wick on the way.
#include "core/psychrometry/derive.h"
#include "ui/oldpage/page_model.h"

#include <algorithm>

namespace wickbook::ui {

bool PageModel::asksForWick(const PageLine& line) const {
    const LineText& text = textOf(line);
    if (readingBack_ || !text.cell(PageField::Wick).text.isEmpty() || !line.live ||
        !line.live->values().wet.value || !line.live->wet.temperature) {
        return false;
    }
    return psychrometry::wickStateNeeded(*line.live->wet.temperature, line.live->wet.step,
                                         line.live->wet.correction);
}

/// The cell's place in the order of the pen, to be compared element by element.
std::vector<int> PageModel::placeInOrder(const QModelIndex& index) const {
    const Column& column = columnAt(index);
    if (habits_.downTheColumn) {
        return {index.column(), index.row()};
    }
    // Along the line: a line is a row, or one hour's block of it.
    return {index.row(), column.block, index.column()};
}

std::vector<QModelIndex> PageModel::stops() const {
    std::vector<QModelIndex> stops;
    for (int row = 0; row < rowCount(); ++row) {
        for (int column = 0; column < columnCount(); ++column) {
            const QModelIndex at = index(row, column);
            const int number = lineAt(at);
            const Column& kind = columnAt(at);
            if (number < 0 || kind.kind != ColumnKind::Field || !flags(at).testFlag(Qt::ItemIsEditable)) {
                continue;
            }
            const LineText& text = textOf(line(number));
            const bool asked = kind.field == PageField::Wick && asksForWick(line(number));
            if ((habits_.isOnTheWay(kind.field) && text.missing.isEmpty()) || asked) {
                stops.push_back(at);
            }
        }
    }
    std::sort(stops.begin(), stops.end(), [this](const QModelIndex& a, const QModelIndex& b) {
        return placeInOrder(a) < placeInOrder(b);
    });
    return stops;
}

QModelIndex PageModel::nextStop(const QModelIndex& from) const {
    const auto all = stops();
    const auto here = placeInOrder(from);
    const auto next = std::find_if(all.begin(), all.end(),
                                   [&](const QModelIndex& stop) { return placeInOrder(stop) > here; });
    return next == all.end() ? QModelIndex{} : *next;
}

QModelIndex PageModel::stopBefore(const QModelIndex& from) const {
    const auto all = stops();
    const auto here = placeInOrder(from);
    const auto before = std::find_if(all.rbegin(), all.rend(),
                                     [&](const QModelIndex& stop) { return placeInOrder(stop) < here; });
    return before == all.rend() ? QModelIndex{} : *before;
}

QModelIndex PageModel::firstOpenStop() const {
    const auto all = stops();
    const auto open = std::find_if(all.begin(), all.end(), [this](const QModelIndex& stop) {
        const PageLine& candidate = line(lineAt(stop));
        return readingBack_ ? candidate.readAgain == ReadAgain::NotYet && candidate.stored &&
                                  !candidate.stored->values.readBack
                            : textOf(candidate).cell(columnAt(stop).field).text.isEmpty();
    });
    return open != all.end() ? *open : (all.empty() ? QModelIndex{} : all.front());
}

} // namespace wickbook::ui
