// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/oldpage/page_model.h"

#include <QStyledItemDelegate>
#include <QTableView>

/// The ruled page and the pen on it. Typing begins a cell, Enter and the arrows take it and go on; a text
/// that can't be taken keeps the pen where it is, with the sentence why. Knows cells and keys, not the book.

namespace wickbook::ui {

/// Where the pen goes when a cell is left.
enum class PenStep { Next, Back, Right, Left, Up, Down };

/// Paints the ruled cells, and lends a field to the cell being typed.
class PageDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

signals:
    void typed(const QModelIndex& index, const QString& text) const;
    void stepAsked(QWidget* editor, wickbook::ui::PenStep step);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

class PageView : public QTableView {
    Q_OBJECT

public:
    explicit PageView(QWidget* parent = nullptr);

    void setPage(PageModel* model);
    /// Puts the pen on a cell and brings it into sight.
    void putPen(const QModelIndex& index);
    /// Takes the cell being typed, if any, as leaving it would; false where it can't be taken.
    bool takeOpenCell();
    [[nodiscard]] bool isTyping() const { return state() == EditingState; }

signals:
    void undoAsked();
    void redoAsked();
    /// Enter on the last stop.
    void endReached();
    /// Escape with nothing being typed.
    void leaveAsked();
    /// The cell being typed can't be taken; empty once it can.
    void refused(const QString& sentence);
    /// The keyboard has gone elsewhere.
    void left();
    void resized();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    void resizeEvent(QResizeEvent* event) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;

private:
    void step(PenStep step);
    [[nodiscard]] QModelIndex beside(const QModelIndex& from, int rows, int columns) const;
    void focusMoved(const QWidget* from, const QWidget* to);
    void stepFrom(QWidget* editor, PenStep step);

    PageModel* page_ = nullptr;
};

} // namespace wickbook::ui
