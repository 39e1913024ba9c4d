// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/margin_strip.h"

#include "ui/style/marginal_note.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/missing_reasons.h"
#include "ui/text/time_words.h"
#include "ui/window/spoken_roles.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace wickbook::ui {

namespace {

constexpr int kWeeks = 8;
constexpr int kDays = kWeeks * 7;
/// Stations that read every three hours still get rows that can be told apart.
constexpr int kMostRows = 8;

QString stateWords(desk::HourState state) {
    switch (state) {
    case desk::HourState::Kept:
        return MarginStrip::tr("kept");
    case desk::HourState::Doubtful:
        return MarginStrip::tr("doubtful");
    case desk::HourState::Erroneous:
        return MarginStrip::tr("erroneous");
    case desk::HourState::Excused:
        return MarginStrip::tr("missing, with its reason");
    case desk::HourState::Missed:
        return MarginStrip::tr("not written down");
    case desk::HourState::Due:
        return MarginStrip::tr("due now");
    case desk::HourState::Ahead:
        return MarginStrip::tr("still to come");
    }
    return {};
}

} // namespace

MarginStrip::MarginStrip(QWidget* parent) : QWidget(parent) {
    makeRolesKnown();
    setFocusPolicy(Qt::TabFocus);
    setAccessibleName(tr("The last eight weeks"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setMouseTracking(true);
}

void MarginStrip::showSession(const Session* session) {
    session_ = session;
    current_.reset();
    reload();
}

void MarginStrip::reload() {
    std::optional<record::ObservingHour> kept;
    if (current_) {
        kept = marks_[*current_].expected.hour;
    }
    marks_.clear();
    rows_.clear();
    current_.reset();
    if (session_ != nullptr) {
        const record::StationDate today = session_->today();
        first_ = today - date::days{kDays - 1};
        if (auto marks = session_->hourMarks(first_, today)) {
            marks_ = std::move(*marks);
        }
    }
    for (const desk::HourMark& mark : marks_) {
        if (std::find(rows_.begin(), rows_.end(), mark.expected.hour.hour) == rows_.end()) {
            rows_.push_back(mark.expected.hour.hour);
        }
    }
    std::sort(rows_.begin(), rows_.end());
    if (kept) {
        const auto again = std::find_if(marks_.begin(), marks_.end(), [&](const desk::HourMark& mark) {
            return mark.expected.hour == *kept;
        });
        if (again != marks_.end()) {
            current_ = static_cast<std::size_t>(again - marks_.begin());
        }
    }
    updateGeometry();
    update();
}

std::optional<desk::HourMark> MarginStrip::current() const {
    return current_ ? std::optional{marks_[*current_]} : std::nullopt;
}

double MarginStrip::rowHeight() const {
    return rows_.size() > 4 ? typePixels(15) : typePixels(22);
}

QSize MarginStrip::sizeHint() const {
    const int rows = std::clamp(static_cast<int>(rows_.size()), 1, kMostRows);
    return {typePixels(900), typePixels(20) + static_cast<int>(rows * rowHeight()) + typePixels(6)};
}

double MarginStrip::left() const {
    return typePixels(88);
}

QRectF MarginStrip::cellOf(const desk::HourMark& mark) const {
    const double dayWidth = (width() - left() - typePixels(24)) / static_cast<double>(kDays);
    const auto day = (mark.expected.hour.date - first_).count();
    const auto row = std::find(rows_.begin(), rows_.end(), mark.expected.hour.hour) - rows_.begin();
    double x = left() + static_cast<double>(day) * dayWidth;
    if (layoutDirection() == Qt::RightToLeft) {
        x = width() - x - dayWidth;
    }
    return {x, typePixels(16) + static_cast<double>(row) * rowHeight(), dayWidth, rowHeight()};
}

QString MarginStrip::markWords(const desk::HourMark& mark) {
    return tr("%1, %2: %3")
        .arg(longDateWords(QLocale(), mark.expected.hour.date), hourWords(mark.expected.hour.hour),
             mark.reason.empty()
                 ? stateWords(mark.state)
                 : tr("missing: %1").arg(missingReasonWords(QString::fromStdString(mark.reason))));
}

void MarginStrip::paintWeeks(QPainter& painter) const {
    const Tokens& tokens = tokensFor(palette());
    painter.setFont(typeFont(TypeSize::Label));
    QFont small = typeFont(TypeSize::Label);
    small.setPixelSize(typePixels(11));
    const bool rightToLeft = layoutDirection() == Qt::RightToLeft;
    desk::HourMark probe;
    probe.expected.hour.hour = rows_.empty() ? record::HourOfDay{0} : rows_.front();
    for (int day = 0; day < kDays; ++day) {
        probe.expected.hour.date = first_ + date::days{day};
        if (date::weekday{date::sys_days{probe.expected.hour.date.time_since_epoch()}} != date::Monday) {
            continue;
        }
        const QRectF cell = cellOf(probe);
        const double x = std::round(rightToLeft ? cell.right() : cell.left()) + 0.5;
        painter.setPen(QPen(tokens.rule, 1));
        painter.drawLine(QPointF(x, 4), QPointF(x, height() - 5));
        painter.setPen(tokens.soft);
        painter.setFont(small);
        const QRectF label = rightToLeft ? QRectF(x - typePixels(104), 1, typePixels(100), typePixels(15))
                                         : QRectF(x + 4, 1, typePixels(100), typePixels(15));
        painter.drawText(label, static_cast<int>(rightToLeft ? Qt::AlignRight : Qt::AlignLeft),
                         shortDateWords(QLocale(), probe.expected.hour.date));
    }
    painter.setFont(typeFont(TypeSize::Label));
    painter.setPen(tokens.soft);
    probe.expected.hour.date = first_;
    for (const record::HourOfDay hour : rows_) {
        probe.expected.hour.hour = hour;
        const QRectF cell = cellOf(probe);
        const QRectF label =
            rightToLeft ? QRectF(width() - left(), cell.top(), left() - typePixels(24), cell.height())
                        : QRectF(typePixels(24), cell.top(), left() - typePixels(24), cell.height());
        painter.drawText(label,
                         static_cast<int>(rightToLeft ? Qt::AlignRight : Qt::AlignLeft) |
                             static_cast<int>(Qt::AlignVCenter),
                         hourWords(hour));
    }
}

void MarginStrip::paintMark(QPainter& painter, const desk::HourMark& mark) const {
    const Tokens& tokens = tokensFor(palette());
    const QPointF c = cellOf(mark).center();
    painter.setBrush(Qt::NoBrush);
    switch (mark.state) {
    case desk::HourState::Kept:
        painter.setPen(QPen(tokens.ink, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolyline(
            QPolygonF{{c.x() - 4, c.y() + 0.5}, {c.x() - 1.2, c.y() + 3.5}, {c.x() + 4.2, c.y() - 4.5}});
        break;
    case desk::HourState::Doubtful:
        painter.setPen(QPen(tokens.query, 2));
        painter.drawEllipse(c, 4, 4);
        break;
    case desk::HourState::Erroneous:
        painter.setPen(QPen(tokens.wrong, 2, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(c - QPointF(3.5, 3.5), c + QPointF(3.5, 3.5));
        painter.drawLine(c - QPointF(3.5, -3.5), c + QPointF(3.5, -3.5));
        break;
    case desk::HourState::Excused:
        painter.setPen(QPen(tokens.soft, 1.4));
        painter.drawLine(c - QPointF(3, 0), c + QPointF(3, 0));
        break;
    case desk::HourState::Due:
        painter.setPen(Qt::NoPen);
        painter.setBrush(tokens.accent);
        painter.drawRect(QRectF(c.x() - 4, c.y() + 2, 8, 3));
        break;
    case desk::HourState::Missed:
    case desk::HourState::Ahead:
        break; // a gap is told by its emptiness
    }
}

void MarginStrip::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Tokens& tokens = tokensFor(palette());
    painter.fillRect(rect(), tokens.sheet);
    painter.setPen(QPen(tokens.rule, 1));
    painter.drawLine(QPointF(0, height() - 0.5), QPointF(width(), height() - 0.5));
    if (marks_.empty()) {
        painter.setFont(typeFont(TypeSize::Label));
        painter.setPen(tokens.soft);
        painter.drawText(rect().adjusted(typePixels(24), 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft,
                         session_ == nullptr ? QString{} : tr("This station has no observing hours."));
        return;
    }
    paintWeeks(painter);
    for (const desk::HourMark& mark : marks_) {
        paintMark(painter, mark);
    }
    if (current_ && hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(tokens.accent, 2));
        const QRectF cell = cellOf(marks_[*current_]);
        const double side = std::min(cell.width(), cell.height()) - 1;
        painter.drawRect(QRectF(cell.center().x() - side / 2, cell.center().y() - side / 2, side, side));
    }
}

void MarginStrip::setCurrent(std::size_t index) {
    current_ = index;
    const QString words = markWords(marks_[index]);
    setAccessibleDescription(words);
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
    if (hasFocus()) {
        const QRectF cell = cellOf(marks_[index]);
        QToolTip::showText(mapToGlobal(cell.bottomLeft().toPoint()), words, this);
    }
    update();
}

void MarginStrip::walk(int byMarks) {
    if (marks_.empty()) {
        return;
    }
    const auto last = std::ssize(marks_) - 1;
    const auto from = current_ ? static_cast<std::ptrdiff_t>(*current_) : last;
    setCurrent(static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(from + byMarks, 0, last)));
}

void MarginStrip::walkRow(int direction) {
    if (!current_) {
        walk(0);
        return;
    }
    // Left and right keep to the row, as the eye does; a day without that hour is stepped over.
    const record::ObservingHour here = marks_[*current_].expected.hour;
    for (auto index = static_cast<std::ptrdiff_t>(*current_) + direction;
         index >= 0 && index < std::ssize(marks_); index += direction) {
        if (marks_[static_cast<std::size_t>(index)].expected.hour.hour == here.hour) {
            setCurrent(static_cast<std::size_t>(index));
            return;
        }
    }
}

void MarginStrip::keyPressEvent(QKeyEvent* event) {
    const int forward = layoutDirection() == Qt::RightToLeft ? -1 : 1;
    switch (event->key()) {
    case Qt::Key_Left:
        walkRow(-forward);
        return;
    case Qt::Key_Right:
        walkRow(forward);
        return;
    case Qt::Key_Up:
        walk(-1);
        return;
    case Qt::Key_Down:
        walk(1);
        return;
    case Qt::Key_Home:
        walk(-static_cast<int>(marks_.size()));
        return;
    case Qt::Key_End:
        walk(static_cast<int>(marks_.size()));
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (current_) {
            emit hourChosen(marks_[*current_]);
        }
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

std::optional<std::size_t> MarginStrip::markAt(const QPointF& point) const {
    for (std::size_t index = 0; index < marks_.size(); ++index) {
        if (cellOf(marks_[index]).contains(point)) {
            return index;
        }
    }
    return std::nullopt;
}

void MarginStrip::mousePressEvent(QMouseEvent* event) {
    if (const auto index = markAt(event->position())) {
        setCurrent(*index);
        emit hourChosen(marks_[*index]);
    }
}

void MarginStrip::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    if (!current_ && !marks_.empty()) {
        const auto due = std::find_if(marks_.begin(), marks_.end(), [](const desk::HourMark& mark) {
            return mark.state == desk::HourState::Due;
        });
        setCurrent(
            static_cast<std::size_t>(due == marks_.end() ? std::ssize(marks_) - 1 : due - marks_.begin()));
    }
    update();
}

bool MarginStrip::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        if (const auto index = markAt(QPointF(help->pos()))) {
            QToolTip::showText(help->globalPos(), markWords(marks_[*index]), this);
        } else {
            QToolTip::hideText();
        }
        return true;
    }
    return QWidget::event(event);
}

} // namespace wickbook::ui
