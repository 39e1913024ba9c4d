// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/observe/entry_text.h"

#include <QWidget>

class QGridLayout;
class QLineEdit;
class QLabel;
class QPushButton;

/// The fields of one entry, in the order a hand follows on paper. Knows nothing of the book; says when
/// something was typed, when a field was left, and when the hand asked to save.
/// Enter in the dry bulb goes on to an empty wet bulb; Enter anywhere else asks to save. The letters of the
/// wick's answers work in the number fields too, where a letter can't mean anything else.

namespace wickbook::ui {

class LetterChoice;
class RepeatsPanel;
class TypedNumberEdit;
class WeatherChoice;

class EntryForm : public QWidget {
    Q_OBJECT

public:
    explicit EntryForm(QWidget* parent = nullptr);

    void setUnit(units::TemperatureUnit unit);
    /// "994" and "from 165 m": what is taken while the pressure is empty.
    void setPressureTaken(const QString& value, const QString& from);
    /// A whirled instrument is read wet bulb first, and has a beat.
    void setWetFirst(bool wetFirst);
    /// The wet thermometer's scale step in its own degrees: when whirls agree.
    void setSettleStep(double step);

    /// Fields only: date, hour and clock belong to the chooser above.
    void fill(const EntryText& entry);
    void read(EntryText& entry) const;
    void setBulb(bool dry, const units::Decimal& value);
    void setBulbBelowScale(bool dry);

    /// The wick must be told: the question is shown; help is what both answers would give.
    void askWick(bool asked, const QString& help);
    void showProblem(EntryField field, const QString& sentence);
    void setObserver(const QString& initials);
    void focusField(EntryField field);
    /// The first empty bulb in the order of reading, or the end of the second one; what is typed already is
    /// never selected, so that the next key can't replace it.
    void focusFirst();

    [[nodiscard]] TypedNumberEdit* field(EntryField field) const;
    [[nodiscard]] LetterChoice* wick() const { return wick_; }
    [[nodiscard]] RepeatsPanel* repeats() const { return repeats_; }

signals:
    void edited();
    void fieldLeft(wickbook::ui::EntryField field);
    void saveRequested();
    void beatWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void buildBulbs(QGridLayout& grid);
    void buildRest(QGridLayout& grid);
    bool handleKey(QObject* watched, int key);
    bool handleEnter(QObject* watched);
    void toggleHelp();
    void toggleRepeats();
    void takeRepeats();
    void showRepeatsLink();
    void watch(QWidget* widget);

    bool wetFirst_ = false;
    bool wickAsked_ = false;
    bool filling_ = false;
    units::TemperatureUnit unit_ = units::TemperatureUnit::Celsius;
    QString wickHelp_;
    TypedNumberEdit* dry_ = nullptr;
    TypedNumberEdit* wet_ = nullptr;
    TypedNumberEdit* pressure_ = nullptr;
    TypedNumberEdit* wind_ = nullptr;
    TypedNumberEdit* maximum_ = nullptr;
    TypedNumberEdit* minimum_ = nullptr;
    LetterChoice* wick_ = nullptr;
    LetterChoice* care_ = nullptr;
    WeatherChoice* weather_ = nullptr;
    RepeatsPanel* repeats_ = nullptr;
    QPushButton* repeatsButton_ = nullptr;
    QPushButton* beatButton_ = nullptr;
    QLineEdit* observer_ = nullptr;
    QLineEdit* note_ = nullptr;
    QLabel* wickLine_ = nullptr;
    QLabel* wickHelpLabel_ = nullptr;
    QPushButton* wickHelpButton_ = nullptr;
};

} // namespace wickbook::ui
