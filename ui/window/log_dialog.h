// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QLabel;
class QPlainTextEdit;

namespace wickbook::ui {

/// The log to read, to copy and to keep as a file: a person sees what would be sent before it is.
class LogDialog : public QDialog {
    Q_OBJECT

public:
    explicit LogDialog(QWidget* parent = nullptr);
    /// Writes the text there, and says so or why not.
    void keepAs(const QString& path);

private:
    void copy();
    void keep();

    QPlainTextEdit* text_;
    QLabel* said_;
};

} // namespace wickbook::ui
