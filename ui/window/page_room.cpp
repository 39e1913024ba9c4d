// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/page_room.h"

#include <QEvent>

namespace wickbook::ui {

PageRoom::PageRoom(QWidget* page, QWidget* parent) : QScrollArea(parent) {
    setFocusPolicy(Qt::NoFocus);
    setWidget(page);
    page->setAutoFillBackground(false);
    viewport()->setAutoFillBackground(false);
    page->installEventFilter(this);
}

void PageRoom::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    fit();
}

bool PageRoom::eventFilter(QObject* watched, QEvent* event) {
    if (watched == widget() && event->type() == QEvent::LayoutRequest) {
        fit();
    }
    return QScrollArea::eventFilter(watched, event);
}

void PageRoom::fit() {
    widget()->resize(maximumViewportSize().expandedTo(widget()->minimumSizeHint()));
}

} // namespace wickbook::ui
