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

signals:
    void reviseAsked();
    void missingAsked();
    void judgeAsked(wickbook::record::Quality quality);
    void withdrawAsked();
    void monthAsked(int step);
    void copyAsked();
    void undoAsked();
    void redoAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
};

} // namespace wickbook::ui
