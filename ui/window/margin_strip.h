// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QWidget>

#include <optional>
#include <vector>

/// The margin above every page: eight weeks ruled like the edge of a page, a row for each observing hour.
/// A tick for an hour kept, a hollow circle for a doubtful reading, a cross for an erroneous one, a short
/// stroke for a gap with its reason, nothing for one missed, a bar for the hour now due.
/// The arrow keys walk it, Enter opens the hour. Answers "what have I not written down?" at a glance.

namespace wickbook::ui {

class MarginStrip : public QWidget {
    Q_OBJECT

public:
    explicit MarginStrip(QWidget* parent = nullptr);

    /// Reads eight weeks up to today; none: an empty margin.
    void showSession(const Session* session);
    [[nodiscard]] const std::vector<desk::HourMark>& marks() const { return marks_; }
    [[nodiscard]] std::optional<desk::HourMark> current() const;
    [[nodiscard]] QSize sizeHint() const override;
    /// "Sunday 22 November, 9 h: kept".
    [[nodiscard]] static QString markWords(const desk::HourMark& mark);

public slots:
    void reload();

signals:
    void hourChosen(const wickbook::desk::HourMark& mark);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;

private:
    [[nodiscard]] QRectF cellOf(const desk::HourMark& mark) const;
    [[nodiscard]] std::optional<std::size_t> markAt(const QPointF& point) const;
    void walk(int byMarks);
    void walkRow(int direction);
    void setCurrent(std::size_t index);
    void paintMark(QPainter& painter, const desk::HourMark& mark) const;
    void paintWeeks(QPainter& painter) const;
    [[nodiscard]] double rowHeight() const;
    [[nodiscard]] double left() const;

    const Session* session_ = nullptr;
    std::vector<desk::HourMark> marks_;
    std::vector<record::HourOfDay> rows_;
    record::StationDate first_{};
    std::optional<std::size_t> current_;
};

} // namespace wickbook::ui
