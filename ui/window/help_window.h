// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/window/help_pages.h"

#include <QDialog>

class QLineEdit;
class QListWidget;

namespace wickbook::ui {

class HelpReader;

/// The help beside the page it is about: contents, a field to look for words, and the page. It leaves the
/// main window usable, so that a reading can be typed with the page in sight.
class HelpWindow : public QDialog {
    Q_OBJECT

public:
    explicit HelpWindow(const QLocale& locale, QWidget* parent = nullptr);
    /// Unknown names show the first page.
    void showPage(const QString& name);
    [[nodiscard]] QString current() const;

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void search();
    void goBack();
    void turnTo(const QString& name, bool remember);

    std::vector<HelpPage> pages_;
    QStringList before_; ///< names, the newest last
    QString current_;
    QLineEdit* sought_;
    QListWidget* contents_;
    HelpReader* reader_;
};

} // namespace wickbook::ui
