// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QString>
#include <QTimer>
#include <QWidget>

#include <optional>

class QCheckBox;
class QLabel;
class QPushButton;

/// The beat of a whirled instrument for those who want it: from the distance between hand and bulbs the turns
/// a second that give 3 m/s, a dot that goes round as the bulbs should, and the seconds. Where the desktop or
/// the person asks for no movement, the dot stands and only the numbers change. A sound only when ticked.

namespace wickbook::ui {

class TypedNumberEdit;

/// The circle, drawn: a dot where the bulbs should be, the seconds in the middle.
class WhirlCircle : public QWidget {
    Q_OBJECT

public:
    explicit WhirlCircle(QWidget* parent = nullptr);
    /// turns: where the dot stands, a whole number at the top; seconds since the start.
    void showTurns(double turns, int seconds, bool moving);
    [[nodiscard]] bool isMoving() const { return moving_; }
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double turns_ = 0;
    int seconds_ = 0;
    bool moving_ = false;
};

class WhirlTimer : public QWidget {
    Q_OBJECT

public:
    /// settingsFile: where the arm and the two ticks are remembered; empty: nowhere. book: whose arm it is.
    WhirlTimer(const QString& settingsFile, const QString& book, QWidget* parent = nullptr);

    [[nodiscard]] bool isRunning() const { return running_; }
    /// Does what the button does.
    void toggle();
    void stop();
    void focusStart();

protected:
    void hideEvent(QHideEvent* event) override;

private:
    void showRate();
    void beat();
    void remember() const;
    [[nodiscard]] std::optional<double> rate() const;

    QString settingsFile_;
    QString book_;
    TypedNumberEdit* arm_ = nullptr;
    QLabel* rate_ = nullptr;
    WhirlCircle* circle_ = nullptr;
    QPushButton* start_ = nullptr;
    QLabel* counted_ = nullptr;
    QCheckBox* sound_ = nullptr;
    QCheckBox* still_ = nullptr;
    QTimer timer_;
    QElapsedTimer since_;
    bool running_ = false;
    int turnsDone_ = 0;
};

} // namespace wickbook::ui
