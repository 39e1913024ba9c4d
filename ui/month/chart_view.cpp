// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/chart_view.h"

#include <QMouseEvent>
#include <QWheelEvent>

#include <cmath>

namespace wickbook::ui {

namespace {
constexpr double kReach = 14; ///< pixels round a point that are still the point
constexpr double kZoomPerNotch = 1.25;
constexpr int kNotch = 120;
constexpr int kDragStarts = 4;
} // namespace

ChartHandView::ChartHandView(QChart* chart, Hands hands, QWidget* parent)
    : QChartView(chart, parent), hands_(std::move(hands)) {
    setRenderHint(QPainter::Antialiasing);
    setFrameShape(QFrame::NoFrame);
    setBackgroundBrush(Qt::NoBrush);
    setFocusPolicy(Qt::NoFocus); // the panel has it
    setRubberBand(QChartView::NoRubberBand);
    setMouseTracking(true);
    viewport()->setAutoFillBackground(false);
}

void ChartHandView::wheelEvent(QWheelEvent* event) {
    event->accept();
    if (!hands_.instantAt) {
        return;
    }
    const double notches = static_cast<double>(event->angleDelta().y()) / kNotch;
    if (notches != 0) {
        emit zoomAsked(hands_.instantAt(event->position().x()), std::pow(kZoomPerNotch, notches));
    } else if (event->angleDelta().x() != 0) {
        const auto span = hands_.instantAt(width()) - hands_.instantAt(0);
        emit moveAsked(-span * event->angleDelta().x() / (kNotch * 10));
    }
}

void ChartHandView::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        grabbed_ = event->pos();
        moved_ = false;
    }
    event->accept();
    if (parentWidget() != nullptr) {
        parentWidget()->setFocus(Qt::MouseFocusReason);
    }
}

void ChartHandView::mouseMoveEvent(QMouseEvent* event) {
    if (grabbed_) {
        grabMoved(event);
        return;
    }
    const ChartPoint* under = hands_.pointNear(event->position(), kReach);
    setCursor(under != nullptr   ? Qt::PointingHandCursor
              : hands_.instantAt ? Qt::OpenHandCursor
                                 : Qt::ArrowCursor);
    const auto now = under == nullptr ? std::nullopt : std::optional{under->instant};
    if (now != hovered_) {
        hovered_ = now;
        emit pointHovered(now);
    }
}

void ChartHandView::grabMoved(QMouseEvent* event) {
    if (!hands_.instantAt || (!moved_ && (event->pos() - *grabbed_).manhattanLength() < kDragStarts)) {
        return;
    }
    moved_ = true;
    setCursor(Qt::ClosedHandCursor);
    const auto by = hands_.instantAt(grabbed_->x()) - hands_.instantAt(event->pos().x());
    grabbed_ = event->pos();
    emit moveAsked(by);
}

void ChartHandView::leaveEvent(QEvent* event) {
    QChartView::leaveEvent(event);
    if (hovered_) {
        hovered_.reset();
        emit pointHovered(std::nullopt);
    }
}

void ChartHandView::mouseReleaseEvent(QMouseEvent* event) {
    if (grabbed_ && !moved_) {
        if (const ChartPoint* under = hands_.pointNear(event->position(), kReach)) {
            emit pointChosen(under->instant);
        }
    }
    grabbed_.reset();
    setCursor(Qt::OpenHandCursor);
}

void ChartHandView::mouseDoubleClickEvent(QMouseEvent* event) {
    if (const ChartPoint* under = hands_.pointNear(event->position(), kReach)) {
        emit pointOpened(under->instant);
    }
}

} // namespace wickbook::ui
