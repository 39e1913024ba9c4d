// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/classround/pairs_view.h"

#include "ui/classround/pairs_model.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QStyledItemDelegate>

#include <algorithm>

namespace wickbook::ui {

namespace {

/// Takes a cell at Enter at once. The delegate of the toolkit does it from the event loop, and a fast hand is
/// in the next cell by then.
class AtOnce : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::KeyPress) {
            const int key = static_cast<QKeyEvent*>(event)->key();
            if (key == Qt::Key_Return || key == Qt::Key_Enter) {
                auto* editor = qobject_cast<QWidget*>(watched);
                emit commitData(editor);
                emit closeEditor(editor, SubmitModelCache);
                return true;
            }
        }
        return QStyledItemDelegate::eventFilter(watched, event);
    }
};

} // namespace

PairsView::PairsView(QWidget* parent) : QTableView(parent) {
    setEditTriggers(AnyKeyPressed | DoubleClicked | EditKeyPressed);
    setItemDelegate(new AtOnce(this));
    setSelectionMode(SingleSelection);
    setTabKeyNavigation(false); // Tab leaves the table, as in every other page
    setWordWrap(true);
    verticalHeader()->hide();
    horizontalHeader()->setHighlightSections(false);
}

void PairsView::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    const bool entered = hint == QAbstractItemDelegate::SubmitModelCache;
    QTableView::closeEditor(editor, entered ? QAbstractItemDelegate::NoHint : hint);
    if (entered) {
        goOn();
    }
}

void PairsView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        goOn();
    } else if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace) {
        model()->setData(currentIndex(), QString{}, Qt::EditRole);
    } else {
        QTableView::keyPressEvent(event);
    }
}

void PairsView::goOn() {
    const QModelIndex now = currentIndex();
    const bool toWet = now.column() < PairsModel::Wet;
    const int row = toWet ? now.row() : std::min(now.row() + 1, model()->rowCount() - 1);
    setCurrentIndex(model()->index(row, toWet ? PairsModel::Wet : PairsModel::Dry));
}

} // namespace wickbook::ui
