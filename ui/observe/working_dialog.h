// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QTextBrowser;

/// Shows the working beside the page, stays open while the reading changes; copies and prints it for a class.

namespace wickbook::ui {

class WorkingDialog : public QDialog {
    Q_OBJECT

public:
    explicit WorkingDialog(QWidget* parent = nullptr);
    void showHtml(const QString& html);
    [[nodiscard]] QString plainText() const;

private:
    void copyAll();
    void print();

    QTextBrowser* text_ = nullptr;
};

} // namespace wickbook::ui
