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

HumidityChartView::HumidityChartView(HumidityChart* chart, QWidget* parent)
    : QChartView(chart, parent), chart_(chart) {
    setRenderHint(QPainter::Antialiasing);
    setFrameShape(QFrame::NoFrame);
    setBackgroundBrush(Qt::NoBrush);
    setFocusPolicy(Qt::NoFocus); // the panel has it
    setRubberBand(QChartView::NoRubberBand);
    setMouseTracking(true);
    viewport()->setAutoFillBackground(false);
}

void HumidityChartView::wheelEvent(QWheelEvent* event) {
    const double notches = static_cast<double>(event->angleDelta().y()) / kNotch;
    if (notches != 0) {
        emit zoomAsked(chart_->instantAt(event->position().x()), std::pow(kZoomPerNotch, notches));
    } else if (event->angleDelta().x() != 0) {
        const auto span = chart_->to() - chart_->from();
        emit moveAsked(-span * event->angleDelta().x() / (kNotch * 10));
    }
    event->accept();
}

void HumidityChartView::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        grabbed_ = event->pos();
        moved_ = false;
    }
    event->accept();
    if (parentWidget() != nullptr) {
        parentWidget()->setFocus(Qt::MouseFocusReason);
    }
}

void HumidityChartView::mouseMoveEvent(QMouseEvent* event) {
    if (!grabbed_) {
        const ChartPoint* under = chart_->pointNear(event->position(), kReach);
        setCursor(under != nullptr ? Qt::PointingHandCursor : Qt::OpenHandCursor);
        return;
    }
    if (!moved_ && (event->pos() - *grabbed_).manhattanLength() < kDragStarts) {
        return;
    }
    moved_ = true;
    setCursor(Qt::ClosedHandCursor);
    const auto by = chart_->instantAt(grabbed_->x()) - chart_->instantAt(event->pos().x());
    grabbed_ = event->pos();
    emit moveAsked(by);
}

void HumidityChartView::mouseReleaseEvent(QMouseEvent* event) {
    if (grabbed_ && !moved_) {
        if (const ChartPoint* under = chart_->pointNear(event->position(), kReach)) {
            emit pointChosen(under->instant);
        }
    }
    grabbed_.reset();
    setCursor(Qt::OpenHandCursor);
}

void HumidityChartView::mouseDoubleClickEvent(QMouseEvent* event) {
    if (const ChartPoint* under = chart_->pointNear(event->position(), kReach)) {
        emit pointOpened(under->instant);
    }
}

} // namespace wickbook::ui
