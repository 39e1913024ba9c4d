// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/oldpage/page_view.h"
#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QPainterPath>

namespace wickbook::ui {

namespace {

void drawTick(QPainter& painter, QPointF centre, double r) {
    QPainterPath tick(centre + QPointF{-r, 0});
    tick.lineTo(centre + QPointF{-r * 0.25, r * 0.85});
    tick.lineTo(centre + QPointF{r, -r});
    painter.drawPath(tick);
}

/// As in the register: tick kept, two ticks read back, hollow circle doubtful, cross wrong, stroke missing; a
/// hollow square is being written, a full one is not in the book, and two strokes apart are two readings that
/// differ.
void drawMark(QPainter& painter, const QRect& room, PageMark mark, const QColor& ink, const Tokens& tokens) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    const double r = room.height() * 0.17;
    const QPointF centre{room.center().x() + 0.5, room.center().y() + 0.5};
    painter.setPen(QPen(ink, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    switch (mark) {
    case PageMark::Empty:
        break;
    case PageMark::Kept:
        drawTick(painter, centre, r);
        break;
    case PageMark::ReadBack:
        drawTick(painter, centre - QPointF{r * 0.7, 0}, r);
        drawTick(painter, centre + QPointF{r * 0.7, 0}, r);
        break;
    case PageMark::Query:
        painter.setPen(QPen(tokens.query, 1.8));
        painter.drawEllipse(centre, r, r);
        break;
    case PageMark::Wrong:
        painter.setPen(QPen(tokens.wrong, 1.8));
        painter.drawLine(centre + QPointF{-r, -r}, centre + QPointF{r, r});
        painter.drawLine(centre + QPointF{-r, r}, centre + QPointF{r, -r});
        break;
    case PageMark::Excused:
        painter.drawLine(centre + QPointF{-r, 0}, centre + QPointF{r, 0});
        break;
    case PageMark::Typed:
        painter.setPen(QPen(tokens.soft, 1.4));
        painter.drawRect(QRectF(centre.x() - r * 0.7, centre.y() - r * 0.7, r * 1.4, r * 1.4));
        break;
    case PageMark::Unsaved:
        painter.setPen(Qt::NoPen);
        painter.setBrush(tokens.wrong);
        painter.drawRect(QRectF(centre.x() - r * 0.8, centre.y() - r * 0.8, r * 1.6, r * 1.6));
        break;
    case PageMark::Differs:
        painter.setPen(QPen(tokens.query, 1.8));
        painter.drawLine(centre + QPointF{-r, -r * 0.5}, centre + QPointF{r, -r * 0.5});
        painter.drawLine(centre + QPointF{-r, r * 0.5}, centre + QPointF{r, r * 0.5});
        painter.drawLine(centre + QPointF{r * 0.5, -r}, centre + QPointF{-r * 0.5, r});
        break;
    }
}

QColor inkOf(const PageModel& model, const QModelIndex& index, const Tokens& tokens) {
    const PageModel::Column& column = model.columnAt(index);
    if (column.kind == PageModel::ColumnKind::DewPoint) {
        return tokens.soft;
    }
    if (column.kind == PageModel::ColumnKind::Field && index.data(PageModel::NumberRole).toBool()) {
        if (column.field == PageField::Dry) {
            return tokens.dry;
        }
        if (column.field == PageField::Wet) {
            return tokens.wet;
        }
    }
    return tokens.ink;
}

} // namespace

void PageDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
    const auto& model = static_cast<const PageModel&>(*index.model());
    const Tokens& tokens = tokensFor(option.palette);
    const PageModel::Column& column = model.columnAt(index);
    const bool here = option.state.testFlag(QStyle::State_HasFocus);
    const bool sameLine = option.state.testFlag(QStyle::State_Selected);
    const bool open = model.flags(index).testFlag(Qt::ItemIsEditable);
    const bool problem = !index.data(PageModel::ProblemRole).toString().isEmpty();
    const bool derived =
        column.kind == PageModel::ColumnKind::Humidity || column.kind == PageModel::ColumnKind::DewPoint;

    painter->save();
    painter->fillRect(option.rect, sameLine && !here ? tokens.paper : tokens.sheet);
    painter->setPen(QPen(index.data(PageModel::NewDayRole).toBool() ? tokens.soft : tokens.rule, 1));
    painter->drawLine(option.rect.topLeft(), option.rect.topRight());
    painter->setPen(QPen(tokens.rule, 1));
    if (column.kind == PageModel::ColumnKind::Field || derived) {
        painter->drawLine(option.rect.topLeft(), option.rect.bottomLeft());
    }
    const bool blockBegins =
        index.column() > 0 && model.columnAt(index.siblingAtColumn(index.column() - 1)).block != column.block;
    if (blockBegins) {
        painter->setPen(QPen(tokens.soft, 1));
        painter->drawLine(option.rect.topLeft(), option.rect.bottomLeft());
    }
    const QRect room = option.rect.adjusted(6, 0, -6, 0);
    if (column.kind == PageModel::ColumnKind::Mark) {
        drawMark(*painter, room, static_cast<PageMark>(index.data(PageModel::MarkRole).toInt()), tokens.ink,
                 tokens);
    } else {
        painter->setFont(option.font);
        painter->setPen(problem ? tokens.wrong : open || derived ? inkOf(model, index, tokens) : tokens.soft);
        const QString text = index.data().toString();
        const auto alignment = static_cast<Qt::Alignment>(index.data(Qt::TextAlignmentRole).value<int>());
        if (index.data(PageModel::NumberRole).toBool() || derived) {
            drawTabular(*painter, room, alignment, text);
        } else {
            painter->drawText(room, static_cast<int>(alignment),
                              painter->fontMetrics().elidedText(text, Qt::ElideRight, room.width()));
        }
        if (problem) {
            painter->setPen(QPen(tokens.wrong, 1, Qt::DashLine));
            painter->drawRect(option.rect.adjusted(1, 1, -2, -2));
        }
    }
    if (here) {
        painter->setPen(QPen(tokens.accent, 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(option.rect.adjusted(1, 2, -2, -1));
    }
    painter->restore();
}

QWidget* PageDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                    const QModelIndex& index) const {
    auto* edit = new QLineEdit(parent);
    edit->setObjectName(QStringLiteral("openCell"));
    edit->setFont(option.font);
    const bool note = static_cast<const PageModel&>(*index.model()).columnAt(index).field == PageField::Note;
    edit->setMaxLength(note ? 2000 : 120);
    edit->setStyleSheet(QStringLiteral("min-height: 0; padding: 0 3px;")); // a cell, not a form's field
    if (index.data(PageModel::NumberRole).toBool()) {
        edit->setLayoutDirection(Qt::LeftToRight); // digits run left to right in every script
        edit->setAlignment(Qt::AlignRight);
    }
    edit->setAccessibleName(index.data(Qt::AccessibleTextRole).toString());
    const QPersistentModelIndex cell = index;
    connect(edit, &QLineEdit::textEdited, this, [this, cell, edit](const QString& text) {
        if (edit->property("problem").toBool()) {
            edit->setProperty("problem", false);
            refreshLook(*edit);
        }
        emit typed(cell, text);
    });
    return edit;
}

void PageDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    auto* edit = static_cast<QLineEdit*>(editor);
    // The line is told anew at every key, as its humidity follows; what is being typed is not.
    if (!edit->isModified() && edit->text().isEmpty()) {
        edit->setText(index.data(Qt::EditRole).toString());
    }
}

void PageDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                        const QModelIndex& /*index*/) const {
    editor->setGeometry(option.rect.adjusted(0, 1, 0, 1));
}

bool PageDelegate::eventFilter(QObject* watched, QEvent* event) {
    auto* edit = qobject_cast<QLineEdit*>(watched);
    if (edit == nullptr || event->type() != QEvent::KeyPress) {
        return QStyledItemDelegate::eventFilter(watched, event);
    }
    const auto* key = static_cast<QKeyEvent*>(event);
    const auto modifiers = key->modifiers() & ~Qt::KeypadModifier;
    std::optional<PenStep> step;
    switch (key->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        step = modifiers == Qt::ShiftModifier ? PenStep::Back : PenStep::Next;
        break;
    case Qt::Key_Tab:
        step = PenStep::Right;
        break;
    case Qt::Key_Backtab:
        step = PenStep::Left;
        break;
    case Qt::Key_Up:
        step = PenStep::Up;
        break;
    case Qt::Key_Down:
        step = PenStep::Down;
        break;
    case Qt::Key_Left:
        // At the text's ends the arrows go on to the next cell, as on paper.
        if (modifiers == Qt::NoModifier && edit->cursorPosition() == 0 && !edit->hasSelectedText()) {
            step = edit->layoutDirection() == Qt::RightToLeft ? PenStep::Right : PenStep::Left;
        }
        break;
    case Qt::Key_Right:
        if (modifiers == Qt::NoModifier && edit->cursorPosition() == edit->text().size() &&
            !edit->hasSelectedText()) {
            step = edit->layoutDirection() == Qt::RightToLeft ? PenStep::Left : PenStep::Right;
        }
        break;
    default:
        break;
    }
    if (!step) {
        return QStyledItemDelegate::eventFilter(watched, event);
    }
    emit stepAsked(edit, *step);
    return true;
}

} // namespace wickbook::ui
