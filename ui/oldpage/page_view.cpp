// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/oldpage/page_view.h"

#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QResizeEvent>

namespace wickbook::ui {

PageView::PageView(QWidget* parent) : QTableView(parent) {
    auto* delegate = new PageDelegate(this);
    setItemDelegate(delegate);
    connect(delegate, &PageDelegate::stepAsked, this, &PageView::stepFrom);
    connect(delegate, &PageDelegate::typed, this, [this](const QModelIndex& index, const QString& text) {
        emit refused({});
        page_->preview(index, text);
    });
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::DoubleClicked |
                    QAbstractItemView::EditKeyPressed);
    setShowGrid(false);
    setWordWrap(false);
    setCornerButtonEnabled(false);
    setTabKeyNavigation(false); // Tab is ours: past the last cell it leaves the page
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(typePixels(26));
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setMinimumSectionSize(28);
    horizontalHeader()->setSectionsMovable(true);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setAccessibleName(tr("The page's lines"));
    connect(qApp, &QApplication::focusChanged, this, &PageView::focusMoved);
}

void PageView::setPage(PageModel* model) {
    page_ = model;
    setModel(model);
}

void PageView::putPen(const QModelIndex& index) {
    if (!index.isValid()) {
        return;
    }
    setCurrentIndex(index);
    scrollTo(index, QAbstractItemView::EnsureVisible);
}

bool PageView::takeOpenCell() {
    if (!isTyping()) {
        return true;
    }
    auto* edit = qobject_cast<QLineEdit*>(indexWidget(currentIndex()));
    if (edit == nullptr) {
        return true;
    }
    const QString problem = page_->problemOf(currentIndex(), edit->text());
    if (!problem.isEmpty()) {
        edit->setProperty("problem", true);
        edit->setAccessibleDescription(problem);
        refreshLook(*edit);
        edit->selectAll();
        emit refused(problem);
        return false;
    }
    commitData(edit);
    closeEditor(edit, QAbstractItemDelegate::NoHint);
    emit refused({});
    return true;
}

void PageView::stepFrom(QWidget* /*editor*/, PenStep where) {
    if (takeOpenCell()) {
        step(where);
    }
}

void PageView::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    const QModelIndex was = currentIndex();
    QTableView::closeEditor(editor, hint);
    // Given up with Escape: what the cell showed while it was typed is taken back.
    if (const int line = page_->lineAt(was); line >= 0) {
        page_->lineChanged(line);
    }
    emit refused(was.isValid() ? was.data(PageModel::ProblemRole).toString() : QString{});
}

QModelIndex PageView::beside(const QModelIndex& from, int rows, int columns) const {
    QModelIndex at = from;
    while (true) {
        const int column = at.column() + columns;
        int row = at.row() + rows;
        if (columns != 0 && (column < 0 || column >= page_->columnCount())) {
            row += columns;
            const int edge = columns > 0 ? 0 : page_->columnCount() - 1;
            at = page_->index(row, edge);
        } else {
            at = page_->index(row, column);
        }
        if (!at.isValid()) {
            return {};
        }
        if (columns == 0 ||
            (page_->columnAt(at).kind == PageModel::ColumnKind::Field && page_->lineAt(at) >= 0)) {
            return at;
        }
    }
}

void PageView::step(PenStep where) {
    const QModelIndex from = currentIndex();
    if (!from.isValid()) {
        return;
    }
    QModelIndex to;
    switch (where) {
    case PenStep::Next:
        to = page_->nextStop(from);
        if (!to.isValid()) {
            emit endReached();
            return;
        }
        break;
    case PenStep::Back:
        to = page_->stopBefore(from);
        break;
    case PenStep::Right:
        to = beside(from, 0, 1);
        break;
    case PenStep::Left:
        to = beside(from, 0, -1);
        break;
    case PenStep::Up:
        to = beside(from, -1, 0);
        break;
    case PenStep::Down:
        to = beside(from, 1, 0);
        break;
    }
    putPen(to);
}

void PageView::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Undo)) {
        emit undoAsked();
        return;
    }
    if (event->matches(QKeySequence::Redo)) {
        emit redoAsked();
        return;
    }
    const auto modifiers = event->modifiers() & ~Qt::KeypadModifier;
    const bool onField =
        currentIndex().isValid() && page_->columnAt(currentIndex()).kind == PageModel::ColumnKind::Field;
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        step(modifiers == Qt::ShiftModifier ? PenStep::Back : PenStep::Next);
        return;
    case Qt::Key_Tab:
    case Qt::Key_Backtab: // here only with Ctrl: out of the page
        QTableView::focusNextPrevChild(event->key() == Qt::Key_Tab);
        return;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        if (onField && modifiers == Qt::NoModifier) {
            page_->setData(currentIndex(), QString{});
            return;
        }
        break;
    case Qt::Key_Escape:
        emit leaveAsked();
        return;
    default:
        break;
    }
    // Left and right skip what can't be written; with Shift lines are marked, as in any table.
    if (modifiers == Qt::NoModifier && (event->key() == Qt::Key_Left || event->key() == Qt::Key_Right)) {
        const bool right = (event->key() == Qt::Key_Right) != isRightToLeft();
        step(right ? PenStep::Right : PenStep::Left);
        return;
    }
    QTableView::keyPressEvent(event);
}

bool PageView::focusNextPrevChild(bool next) {
    if (currentIndex().isValid() && beside(currentIndex(), 0, next ? 1 : -1).isValid()) {
        step(next ? PenStep::Right : PenStep::Left);
        return true;
    }
    return QTableView::focusNextPrevChild(next);
}

void PageView::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
        emit resized();
    }
}

void PageView::focusMoved(const QWidget* from, const QWidget* to) {
    const auto within = [this](const QWidget* widget) {
        return widget != nullptr && (widget == this || isAncestorOf(widget));
    };
    // Another window in front is no leaving: the hand comes back to the same cell.
    if (within(from) && to != nullptr && !within(to)) {
        emit left();
    }
}

} // namespace wickbook::ui
