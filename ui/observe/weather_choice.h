// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/weather.h"

#include <QMenu>
#include <QPushButton>

#include <optional>

/// The weather at the reading: any of the trade's words together, a noted "none", or nothing noted.
/// The list stays open while words are ticked with Space or the mouse; Enter or Escape closes it.

namespace wickbook::ui {

class TickMenu : public QMenu {
    Q_OBJECT
public:
    using QMenu::QMenu;

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
};

class WeatherChoice : public QPushButton {
    Q_OBJECT

public:
    explicit WeatherChoice(QWidget* parent = nullptr);

    [[nodiscard]] std::optional<record::WeatherSet> weather() const;
    /// "fog;rime", "none", or empty, as the entry keeps it.
    [[nodiscard]] QString names() const;
    void setNames(const QString& names);

signals:
    void changed();

private:
    void noteTicks(QAction* last);
    void showWords();

    TickMenu menu_;
    QAction* none_;
    QList<QAction*> kinds_;
};

} // namespace wickbook::ui
