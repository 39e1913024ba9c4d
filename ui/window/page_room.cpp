// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/page_room.h"

#include <QEvent>
#include <QLayout>
#include <QStackedWidget>

#include <algorithm>

namespace wickbook::ui {

namespace {

/// The least height at a width. A stack is as its page in front; elsewhere words that wrap count as they are,
/// which a least size hint does not know.
int leastHeight(const QWidget& widget, int width) {
    if (const auto* stack = qobject_cast<const QStackedWidget*>(&widget)) {
        return stack->currentWidget() == nullptr ? 0 : leastHeight(*stack->currentWidget(), width);
    }
    const QLayout* layout = widget.layout();
    if (layout != nullptr && layout->count() == 1 && layout->itemAt(0)->widget() != nullptr) {
        const QMargins margins = layout->contentsMargins();
        return leastHeight(*layout->itemAt(0)->widget(), width - margins.left() - margins.right()) +
               margins.top() + margins.bottom();
    }
    const int least = widget.minimumSizeHint().height();
    return layout != nullptr && layout->hasHeightForWidth()
               ? std::max(least, layout->totalMinimumHeightForWidth(width))
               : least;
}

} // namespace

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
    const QSize room = maximumViewportSize();
    const int width = std::max(room.width(), widget()->minimumSizeHint().width());
    const int height =
        std::max({room.height(), widget()->minimumSizeHint().height(), leastHeight(*widget(), width)});
    widget()->resize(width, height);
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
