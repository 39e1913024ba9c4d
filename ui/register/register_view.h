// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"

#include <QTableView>

/// The ruled page: a table that is written on by single keys. It knows rows and keys, not what they do.

namespace wickbook::ui {

class RegisterView : public QTableView {
    Q_OBJECT

public:
    explicit RegisterView(QWidget* parent = nullptr);

    /// The caret to a line, which alone is marked then, whatever keys are held down meanwhile.
    void goTo(const QModelIndex& place);

signals:
    void reviseAsked();
    void missingAsked();
    void judgeAsked(wickbook::record::Quality quality);
    void withdrawAsked();
    /// Read back against the paper, or the tick taken off.
    void tickAsked(bool ticked);
    /// The same by a click on the box; the caret stays there.
    void tickClicked(bool ticked);
    void paperAsked();
    void moveAsked();
    /// By the column under the caret.
    void orderAsked();
    void monthAsked(int step);
    void copyAsked();
    void undoAsked();
    void redoAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;

private:
    void markTo(int row);
    /// True where the click was on a box.
    bool clickBox(QMouseEvent* event);
};

} // namespace wickbook::ui
