// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/page_room.h"

#include <QEvent>
#include <QStackedWidget>

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

void letFrontPageDecide(QStackedWidget& stack) {
    const auto decide = [&stack] {
        for (int at = 0; at < stack.count(); ++at) {
            const auto policy = at == stack.currentIndex() ? QSizePolicy::Preferred : QSizePolicy::Ignored;
            stack.widget(at)->setSizePolicy(policy, policy);
        }
        stack.updateGeometry();
    };
    QObject::connect(&stack, &QStackedWidget::currentChanged, &stack, decide);
    QObject::connect(&stack, &QStackedWidget::widgetRemoved, &stack, decide);
    decide();
}

} // namespace wickbook::ui
