// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/index_tabs.h"

#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/window/spoken_roles.h"

#include <QButtonGroup>
#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <QStyle>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {
constexpr int kTabWidth = 112;
constexpr int kTabHeight = 48;
} // namespace

IndexTab::IndexTab(const QString& word, QWidget* parent) : QAbstractButton(parent) {
    makeRolesKnown();
    setText(word);
    setCheckable(true);
    setAccessibleName(word);
    setFocusPolicy(Qt::StrongFocus);
    setFont(typeFont(TypeSize::Body));
}

QSize IndexTab::sizeHint() const {
    const int width = QFontMetrics(typeFont(TypeSize::Body, true)).horizontalAdvance(text());
    return {std::max(typePixels(kTabWidth), width + 2 * space::kBetween), typePixels(kTabHeight)};
}

void IndexTab::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Tokens& tokens = tokensFor(palette());
    const bool rightToLeft = layoutDirection() == Qt::RightToLeft;
    if (rightToLeft) { // the index is at the other edge of the page
        painter.translate(width(), 0);
        painter.scale(-1, 1);
    }
    const double radius = 8;
    const QRectF tab = QRectF(rect()).adjusted(-1, 0.5, -0.5, -0.5);
    QPainterPath shape;
    shape.moveTo(tab.topLeft());
    shape.lineTo(tab.right() - radius, tab.top());
    shape.quadTo(tab.right(), tab.top(), tab.right(), tab.top() + radius);
    shape.lineTo(tab.right(), tab.bottom() - radius);
    shape.quadTo(tab.right(), tab.bottom(), tab.right() - radius, tab.bottom());
    shape.lineTo(tab.bottomLeft());
    painter.fillPath(shape, isChecked() ? tokens.sheet : tokens.tab);
    painter.setPen(QPen(tokens.rule, 1));
    painter.drawPath(shape);
    if (!isChecked()) {
        painter.drawLine(QPointF(0.5, tab.top()), QPointF(0.5, tab.bottom()));
    }
    if (hasFocus()) {
        painter.setPen(QPen(tokens.accent, 2));
        painter.drawRoundedRect(tab.adjusted(4, 4, -4, -4), space::kCorner, space::kCorner);
    }
    painter.resetTransform();
    painter.setFont(typeFont(TypeSize::Body, isChecked()));
    painter.setPen(isChecked() ? tokens.ink : tokens.soft);
    painter.drawText(
        rect().adjusted(space::kBetween, 0, -space::kGroup, 0),
        static_cast<int>(
            QStyle::visualAlignment(layoutDirection(), Qt::AlignLeft | Qt::AlignVCenter).toInt()),
        text());
}

void IndexTab::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        click();
        return;
    }
    QAbstractButton::keyPressEvent(event);
}

IndexTabs::IndexTabs(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Pages"));
    column_ = new QVBoxLayout(this);
    column_->setContentsMargins(0, space::kStep, 0, space::kBetween);
    column_->setSpacing(10);
    column_->addStretch();
    group_ = new QButtonGroup(this);
    group_->setExclusive(true);
    connect(group_, &QButtonGroup::idClicked, this, &IndexTabs::chosen);
}

void IndexTabs::addPage(const QString& word) {
    auto* tab = new IndexTab(word);
    const int index = static_cast<int>(group_->buttons().size());
    group_->addButton(tab, index);
    column_->insertWidget(index, tab);
    if (index == 0) {
        tab->setChecked(true);
    }
}

void IndexTabs::setCurrent(int index) {
    if (QAbstractButton* tab = group_->button(index)) {
        tab->setChecked(true);
    }
}

int IndexTabs::current() const {
    return group_->checkedId();
}

void IndexTabs::setFoot(QWidget* foot) {
    column_->addWidget(foot, 0, Qt::AlignLeft);
}

} // namespace wickbook::ui
