// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

/// The page itself: a sheet with a ruled edge on the paper behind it, and a thin line to rule it with.

namespace wickbook::ui {

class Sheet : public QFrame {
    Q_OBJECT
public:
    explicit Sheet(QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
};

/// One ruled line, 1 px.
class RuledLine : public QWidget {
    Q_OBJECT
public:
    explicit RuledLine(Qt::Orientation orientation, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Qt::Orientation orientation_;
};

} // namespace wickbook::ui
