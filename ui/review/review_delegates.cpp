// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/review/review_delegates.h"

#include "core/checks/finding.h"
#include "ui/review/lines_model.h"
#include "ui/review/runs_model.h"
#include "ui/style/marginal_note.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QPainter>

namespace wickbook::ui {

namespace {

constexpr int kMark = 16;

/// On the accent the mark takes the colour of the text; its shape stays.
void drawMark(QPainter& painter, const QRect& where, int severity, const QStyleOptionViewItem& option,
              bool selected) {
    const bool wrong = severity >= static_cast<int>(checks::Severity::Erroneous);
    if (!selected) {
        QueryMark::paint(painter, where, wrong, option.palette);
        return;
    }
    const QRectF mark = QRectF(where).adjusted(2, 2, -2, -2);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(tokensFor(option.palette).onAccent, 2, Qt::SolidLine, Qt::RoundCap));
    if (wrong) {
        painter.drawLine(mark.topLeft(), mark.bottomRight());
        painter.drawLine(mark.topRight(), mark.bottomLeft());
    } else {
        painter.drawEllipse(mark);
    }
}

} // namespace

void RunDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const {
    const Tokens& tokens = tokensFor(option.palette);
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    painter->save();
    painter->fillRect(option.rect, selected ? tokens.accent : tokens.sheet);
    painter->setPen(QPen(tokens.rule, 1));
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    const int mark = typePixels(kMark);
    const QRect room = option.rect.adjusted(space::kGroup, space::kStep, -space::kGroup, -space::kStep);
    const QRect first(room.left() + mark + space::kGroup, room.top(), room.width() - mark - space::kGroup,
                      room.height() / 2);
    const QRect second = first.translated(0, first.height());
    drawMark(*painter, QRect(room.left(), first.center().y() - mark / 2, mark, mark),
             index.data(RunsModel::SeverityRole).toInt(), option, selected);
    painter->setRenderHint(QPainter::Antialiasing, false);
    const auto line = [&](const QRect& where, const QFont& font, const QColor& ink, const QString& text) {
        painter->setFont(font);
        painter->setPen(ink);
        painter->drawText(where, Qt::AlignLeft | Qt::AlignVCenter,
                          painter->fontMetrics().elidedText(text, Qt::ElideRight, where.width()));
    };
    line(first, typeFont(TypeSize::Body, true), selected ? tokens.onAccent : tokens.ink,
         index.data().toString());
    line(second, typeFont(TypeSize::Label), selected ? tokens.onAccent : tokens.soft,
         index.data(RunsModel::SecondLineRole).toString());
    painter->restore();
}

QSize RunDelegate::sizeHint(const QStyleOptionViewItem& /*option*/, const QModelIndex& /*index*/) const {
    return {typePixels(240), typePixels(52)};
}

void ReviewLineDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                               const QModelIndex& index) const {
    const Tokens& tokens = tokensFor(option.palette);
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    const bool open = index.data(LinesModel::OpenRole).toBool();
    painter->save();
    painter->fillRect(option.rect, selected ? tokens.accent : open ? tokens.queryPaper : tokens.sheet);
    painter->setPen(QPen(tokens.rule, 1));
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    if (index.column() == LinesModel::Mark) {
        if (open) {
            const int mark = typePixels(kMark) - 2;
            drawMark(
                *painter,
                QRect(option.rect.center().x() - mark / 2, option.rect.center().y() - mark / 2, mark, mark),
                index.data(LinesModel::SeverityRole).toInt(), option, selected);
        }
        painter->restore();
        return;
    }
    QColor ink = open ? tokens.ink : tokens.soft;
    if (open && index.column() == LinesModel::Dry) {
        ink = tokens.dry;
    } else if (open && index.column() == LinesModel::Wet) {
        ink = tokens.wet;
    }
    painter->setFont(option.font);
    painter->setPen(selected ? tokens.onAccent : ink);
    const QRect room = option.rect.adjusted(6, 0, -6, 0);
    const auto alignment = static_cast<Qt::Alignment>(index.data(Qt::TextAlignmentRole).toInt());
    const QString text =
        painter->fontMetrics().elidedText(index.data().toString(), Qt::ElideRight, room.width());
    if (index.column() >= LinesModel::Hour && index.column() <= LinesModel::Humidity) {
        drawTabular(*painter, room, alignment, text);
    } else {
        painter->drawText(room, static_cast<int>(alignment), text);
    }
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter->setPen(QPen(selected ? tokens.onAccent : tokens.accent, 1));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(option.rect.adjusted(1, 2, -2, -2));
    }
    painter->restore();
}

} // namespace wickbook::ui
