// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/rule.h"

#include <QFrame>
#include <QLocale>

#include <vector>

class QLabel;
class QPushButton;
class QVBoxLayout;

/// A marginal note: what the checks say to a reading, one for each root of trouble. A hollow circle for
/// what is doubtful, a cross for what is impossible or erroneous; then what is wrong, what to do now, and the
/// likely causes, taken with the keys 1 to 3 while the note has the focus.

namespace wickbook::ui {

/// What a note says, as words.
struct NoteText {
    bool wrong = false; ///< a cross rather than a circle
    QString title;
    QString message;
    QString remedy;
    struct Cause {
        QString words;    ///< "wet bulb is 8.1, read one low"
        QString humidity; ///< "83 %"
    };
    std::vector<Cause> causes;
};

NoteText noteText(const QLocale& locale, const checks::SpokenNote& note, units::TemperatureUnit unit);

/// The circle or the cross, painted; for lines and legends too.
class QueryMark : public QWidget {
    Q_OBJECT
public:
    explicit QueryMark(bool wrong, QWidget* parent = nullptr);
    static void paint(QPainter& painter, const QRectF& where, bool wrong, const QPalette& palette);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    bool wrong_;
};

class MarginalNote : public QFrame {
    Q_OBJECT

public:
    /// readRight: a last line that says how to leave the reading as it is; empty: none.
    explicit MarginalNote(const NoteText& text, const QString& readRight = {}, QWidget* parent = nullptr);

    [[nodiscard]] const NoteText& text() const { return text_; }

signals:
    /// Which of text().causes was taken, from 0.
    void causeTaken(int index);
    /// "Read right" was chosen.
    void readRightChosen();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void addCauses(QVBoxLayout& column, const QString& readRight);
    QPushButton* causeRow(const QString& key, const QString& words, const QString& humidity);

    NoteText text_;
};

} // namespace wickbook::ui
