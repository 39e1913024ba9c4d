// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>

class QStackedWidget;

namespace wickbook::ui {

/// Room for a page: as large as there is, and never smaller than the page can be; with large letters on a
/// small screen it then scrolls. Unlike a resizable scroll area it takes the page's least size for the least,
/// not the height that its words would like.
class PageRoom : public QScrollArea {
    Q_OBJECT

public:
    explicit PageRoom(QWidget* page, QWidget* parent = nullptr);

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fit();
};

/// Only the page in front says how small the stack may be, not the largest of those behind it.
void letFrontPageDecide(QStackedWidget& stack);

} // namespace wickbook::ui
