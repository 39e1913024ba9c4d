// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/register_view.h"

#include "ui/register/register_model.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QHash>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <QStyledItemDelegate>

#include <algorithm>
#include <cstdlib>

namespace wickbook::ui {

namespace {

/// Antialiasing for one drawing; text beside it needs none. All else that a cell sets it sets itself.
class Smooth {
public:
    explicit Smooth(QPainter& painter) : painter_(painter) { painter_.setRenderHint(QPainter::Antialiasing); }
    Smooth(const Smooth&) = delete;
    Smooth& operator=(const Smooth&) = delete;
    ~Smooth() { painter_.setRenderHint(QPainter::Antialiasing, false); }

private:
    QPainter& painter_;
};

/// Rules the page, darker where a day begins, and draws the state by shape.
class LineDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const Tokens& tokens = tokensFor(option.palette);
        const bool selected = option.state.testFlag(QStyle::State_Selected);
        const auto state = static_cast<LineState>(index.data(RegisterModel::StateRole).toInt());
        QColor ink = tokens.ink;
        const int column = index.column();
        if (column == RegisterModel::Dry) {
            ink = tokens.dry;
        } else if (column == RegisterModel::Wet) {
            ink = tokens.wet;
        } else if (column == RegisterModel::HumidityPlusMinus || state == LineState::ToCome ||
                   (state == LineState::Missed && column == RegisterModel::Note)) {
            ink = tokens.soft;
        }
        if (selected) { // the page itself is the sheet already
            painter->fillRect(option.rect, tokens.accent);
        }
        painter->fillRect(QRect{option.rect.topLeft(), QSize{option.rect.width(), 1}},
                          index.data(RegisterModel::NewDayRole).toBool() ? tokens.soft : tokens.rule);
        painter->setPen(selected ? tokens.onAccent : ink);
        painter->setFont(option.font);
        if (column == RegisterModel::ReadBack) {
            const auto paper = static_cast<PaperState>(index.data(RegisterModel::PaperRole).toInt());
            drawTick(*painter, option.rect, paper, selected ? tokens.onAccent : tokens.ink,
                     selected ? tokens.onAccent : tokens.soft);
            return;
        }
        QRect room = option.rect.adjusted(6, 0, -6, 0);
        if (column == RegisterModel::State) {
            drawState(*painter, room, state, selected ? tokens.onAccent : tokens.ink, tokens, selected);
            return;
        }
        // Asked for by itself: a cell has no picture, no box and no font of its own to be looked for.
        const QString text = index.data(Qt::DisplayRole).toString();
        if (!text.isEmpty()) {
            painter->drawText(room, index.data(Qt::TextAlignmentRole).toInt(),
                              fitting(text, room.width(), option));
        }
        if (option.state.testFlag(QStyle::State_HasFocus)) {
            painter->setPen(QPen(selected ? tokens.onAccent : tokens.accent, 1));
            painter->setBrush(Qt::NoBrush);
            painter->drawRect(option.rect.adjusted(1, 2, -2, -2));
        }
    }

private:
    /// The text with its end left out where it has no room. Measuring a text costs as much as drawing it, and
    /// the same ones come again at every step of scrolling.
    [[nodiscard]] QString fitting(const QString& text, int width, const QStyleOptionViewItem& option) const {
        constexpr qsizetype kMostKept = 8192;
        if (option.font != font_ || fitted_.size() > kMostKept) {
            fitted_.clear();
            font_ = option.font;
        }
        auto found = fitted_.constFind({text, width});
        if (found == fitted_.constEnd()) {
            found = fitted_.insert({text, width}, option.fontMetrics.elidedText(text, Qt::ElideRight, width));
        }
        return *found;
    }
    mutable QHash<std::pair<QString, int>, QString> fitted_;
    mutable QFont font_;

    /// A box beside every line that has a page to be held against, and a tick in it once that was done.
    static void drawTick(QPainter& painter, const QRect& room, PaperState state, const QColor& ink,
                         const QColor& frame) {
        if (state == PaperState::Nothing) {
            return;
        }
        const Smooth smooth(painter);
        const double side = room.height() * 0.42;
        QRectF box{0, 0, side, side};
        box.moveCenter(QRectF(room).center());
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(frame, 1));
        painter.drawRect(box);
        if (state == PaperState::ReadBack) {
            painter.setPen(QPen(ink, 1.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
            QPainterPath tick(box.topLeft() + QPointF{side * 0.2, side * 0.5});
            tick.lineTo(box.topLeft() + QPointF{side * 0.45, side * 0.8});
            tick.lineTo(box.topLeft() + QPointF{side * 1.1, side * -0.1});
            painter.drawPath(tick);
        }
    }

    static void drawState(QPainter& painter, const QRect& room, LineState state, const QColor& ink,
                          const Tokens& tokens, bool selected) {
        const Smooth smooth(painter);
        const double r = room.height() * 0.17;
        const QPointF centre{room.center().x() + 0.5, room.center().y() + 0.5};
        const QColor query = selected ? ink : tokens.query;
        switch (state) {
        case LineState::Kept: {
            painter.setPen(QPen(ink, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
            QPainterPath tick(centre + QPointF{-r, 0});
            tick.lineTo(centre + QPointF{-r * 0.25, r * 0.85});
            tick.lineTo(centre + QPointF{r, -r});
            painter.drawPath(tick);
            break;
        }
        case LineState::Doubtful:
        case LineState::Incomplete:
            painter.setPen(QPen(query, 1.8));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(centre, r, r);
            break;
        case LineState::Erroneous:
            painter.setPen(QPen(selected ? ink : tokens.wrong, 1.8));
            painter.drawLine(centre + QPointF{-r, -r}, centre + QPointF{r, r});
            painter.drawLine(centre + QPointF{-r, r}, centre + QPointF{r, -r});
            break;
        case LineState::Estimated: { // a wave, as "about" is written
            painter.setPen(QPen(ink, 1.6, Qt::SolidLine, Qt::RoundCap));
            QPainterPath wave(centre + QPointF{-r * 1.2, r * 0.2});
            wave.cubicTo(centre + QPointF{-r * 0.5, -r}, centre + QPointF{r * 0.5, r},
                         centre + QPointF{r * 1.2, -r * 0.2});
            painter.drawPath(wave);
            break;
        }
        case LineState::Excused:
            painter.setPen(QPen(ink, 1.4));
            painter.drawLine(centre + QPointF{-r, 0}, centre + QPointF{r, 0});
            break;
        case LineState::Missed:
        case LineState::ToCome:
            break; // a gap
        }
    }
};

} // namespace

RegisterView::RegisterView(QWidget* parent) : QTableView(parent) {
    setItemDelegate(new LineDelegate(this));
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::ExtendedSelection); // Shift with the arrows marks several
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setShowGrid(false);
    setWordWrap(false);
    setCornerButtonEnabled(false);
    setTabKeyNavigation(false); // Tab leaves the page as it leaves a field
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(typePixels(26));
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setMinimumSectionSize(28);
    setAccessibleName(tr("The month's lines"));
}

void RegisterView::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Undo)) {
        emit undoAsked();
        return;
    }
    if (event->matches(QKeySequence::Redo)) {
        emit redoAsked();
        return;
    }
    if (event->matches(QKeySequence::Copy)) {
        emit copyAsked();
        return;
    }
    if (event->key() == Qt::Key_Space && (event->modifiers() & ~Qt::ShiftModifier) == Qt::NoModifier) {
        emit tickAsked(!event->modifiers().testFlag(Qt::ShiftModifier));
        return;
    }
    if ((event->modifiers() & ~Qt::KeypadModifier) == Qt::ShiftModifier && model() != nullptr) {
        const int row = currentIndex().row();
        const int last = model()->rowCount() - 1;
        const int to = event->key() == Qt::Key_Up     ? row - 1
                       : event->key() == Qt::Key_Down ? row + 1
                       : event->key() == Qt::Key_Home ? 0
                       : event->key() == Qt::Key_End  ? last
                                                      : -1;
        if (row >= 0 && to >= 0 && to <= last) {
            markTo(to);
            return;
        }
    }
    if ((event->modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier) {
        QTableView::keyPressEvent(event);
        return;
    }
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        emit reviseAsked();
        return;
    case Qt::Key_PageUp:
        emit monthAsked(-1);
        return;
    case Qt::Key_PageDown:
        emit monthAsked(1);
        return;
    case Qt::Key_S:
        emit judgeAsked(record::Quality::Sound);
        return;
    case Qt::Key_D:
        emit judgeAsked(record::Quality::Doubtful);
        return;
    case Qt::Key_E:
        emit judgeAsked(record::Quality::Erroneous);
        return;
    case Qt::Key_M:
        emit missingAsked();
        return;
    case Qt::Key_P:
        emit paperAsked();
        return;
    case Qt::Key_O:
        emit orderAsked();
        return;
    case Qt::Key_V:
        emit moveAsked();
        return;
    case Qt::Key_Delete:
        emit withdrawAsked();
        return;
    default:
        QTableView::keyPressEvent(event);
    }
}

void RegisterView::goTo(const QModelIndex& place) {
    selectionModel()->setCurrentIndex(place, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    scrollTo(place, QAbstractItemView::EnsureVisible);
}

/// Marks every line from the far end of what is marked to this one. By rows, not by where they are drawn:
/// while the view scrolls those are two things.
void RegisterView::markTo(int row) {
    int far = currentIndex().row();
    for (const QModelIndex& marked : selectionModel()->selectedRows()) {
        if (std::abs(marked.row() - currentIndex().row()) > std::abs(far - currentIndex().row())) {
            far = marked.row();
        }
    }
    const QModelIndex to = model()->index(row, currentIndex().column());
    selectionModel()->setCurrentIndex(to, QItemSelectionModel::NoUpdate);
    const QItemSelection lines{model()->index(std::min(far, row), 0),
                               model()->index(std::max(far, row), model()->columnCount() - 1)};
    selectionModel()->select(lines, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    scrollTo(to);
}

bool RegisterView::clickBox(QMouseEvent* event) {
    const QModelIndex index = indexAt(event->pos());
    const auto state = static_cast<PaperState>(index.data(RegisterModel::PaperRole).toInt());
    if (event->button() != Qt::LeftButton || event->modifiers() != Qt::NoModifier || !index.isValid() ||
        index.column() != RegisterModel::ReadBack || state == PaperState::Nothing) {
        return false;
    }
    goTo(index);
    emit tickClicked(state == PaperState::Open);
    return true;
}

void RegisterView::mousePressEvent(QMouseEvent* event) {
    if (!clickBox(event)) {
        QTableView::mousePressEvent(event);
    }
}

void RegisterView::mouseDoubleClickEvent(QMouseEvent* event) {
    if (clickBox(event)) {
        return; // two clicks on a box are two clicks
    }
    if (event->button() == Qt::LeftButton && indexAt(event->pos()).isValid()) {
        setCurrentIndex(indexAt(event->pos()));
        emit reviseAsked();
        return;
    }
    QTableView::mouseDoubleClickEvent(event);
}

} // namespace wickbook::ui
