// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>

class QButtonGroup;
class QVBoxLayout;

/// The thumb index of the register: one tab for each page at the sheet's edge. The tab in front is joined to
/// the sheet, the others lie below it.

namespace wickbook::ui {

class IndexTab : public QAbstractButton {
    Q_OBJECT
public:
    explicit IndexTab(const QString& word, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
};

class IndexTabs : public QWidget {
    Q_OBJECT
public:
    explicit IndexTabs(QWidget* parent = nullptr);
    void addPage(const QString& word);
    void setCurrent(int index);
    [[nodiscard]] int current() const;
    /// The line at the foot: "Help F1".
    void setFoot(QWidget* foot);

signals:
    void chosen(int index);

private:
    QButtonGroup* group_ = nullptr;
    QVBoxLayout* column_ = nullptr;
};

} // namespace wickbook::ui
