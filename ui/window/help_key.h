// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>

class QWidget;

namespace wickbook::ui {

/// F1 in every window and dialog of the program, not only in the main window whose menu has it. Owned by the
/// main window, listens to the whole application.
class HelpKey : public QObject {
    Q_OBJECT

public:
    explicit HelpKey(QWidget& mainWindow);

    /// The page of the help that belongs to a window or dialog; empty: the page in front of the main window.
    static QString pageFor(const QWidget& window);

signals:
    /// asking: the window that has the keyboard.
    void pressed(QWidget* asking);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget& mainWindow_;
};

} // namespace wickbook::ui
