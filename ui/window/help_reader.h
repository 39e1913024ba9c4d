// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTextBrowser>

namespace wickbook::ui {

/// Shows one page of the help. Its drawings come in the colours of the look in force and as sharp as the
/// screen.
class HelpReader : public QTextBrowser {
    Q_OBJECT

public:
    explicit HelpReader(QWidget* parent = nullptr);
    void showPage(const QString& title, const QString& markdown);

signals:
    /// A link to another page: its name.
    void pageAsked(const QString& name);

protected:
    QVariant loadResource(int type, const QUrl& name) override;
    void changeEvent(QEvent* event) override;

private:
    QString title_;
    QString markdown_;
};

} // namespace wickbook::ui
