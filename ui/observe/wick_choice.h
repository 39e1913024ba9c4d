// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QPushButton;

/// Two or three answers side by side, each with its letter; none chosen is an answer too. Taken with the
/// mouse, with Space, or with the letter; the same letter again takes the answer back.

namespace wickbook::ui {

class LetterChoice : public QWidget {
    Q_OBJECT

public:
    struct Answer {
        QString value; ///< as stored in the entry
        QString words;
        Qt::Key key;
    };
    LetterChoice(const QString& what, const QList<Answer>& answers, QWidget* parent = nullptr);

    [[nodiscard]] QString value() const { return value_; }
    void setValue(const QString& value);
    /// Takes the answer that belongs to a key; false when none does.
    bool takeKey(int key);
    /// The frame of a question that must be answered.
    void showAsked(bool asked);
    [[nodiscard]] QList<QPushButton*> buttons() const { return buttons_; }

signals:
    void changed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QList<Answer> answers_;
    QList<QPushButton*> buttons_;
    QString value_;
};

} // namespace wickbook::ui
