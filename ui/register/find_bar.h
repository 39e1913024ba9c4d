// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QLabel;
class QLineEdit;
class QPushButton;

/// The line in which one says what to look for in the whole register, and what came of it. Enter and F3 look
/// on, Shift with either looks back, Esc stops a search and then closes the line.

namespace wickbook::ui {

class FindBar : public QFrame {
    Q_OBJECT

public:
    explicit FindBar(QWidget* parent = nullptr);

    [[nodiscard]] QString text() const;
    void open();
    void say(const QString& sentence);
    /// While it runs it can be stopped.
    void setRunning(bool running);

signals:
    void findAsked(bool forward);
    void stopAsked();
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QLineEdit* field_ = nullptr;
    QLabel* status_ = nullptr;
    QPushButton* stop_ = nullptr;
    bool running_ = false;
};

} // namespace wickbook::ui
