// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/repeats_settle.h"
#include "ui/observe/entry_text.h"

#include <QWidget>

#include <array>
#include <optional>

class QLabel;

/// One row for each whirl, wet bulb read first. A row appears when the one before is written; the line under
/// them says whether the wet bulb has settled, and which whirl is the reading. Knows nothing of the two bulbs
/// of the entry: its owner takes the reading from reading().

namespace wickbook::ui {

class TypedNumberEdit;

class RepeatsPanel : public QWidget {
    Q_OBJECT

public:
    static constexpr std::size_t kMostRows = 8;

    explicit RepeatsPanel(QWidget* parent = nullptr);

    /// The wet thermometer's unit and scale step, in its own degrees.
    void setScale(units::TemperatureUnit unit, double step);
    void setRows(const QList<RepeatText>& rows);
    /// Rows with something in them, in order.
    [[nodiscard]] QList<RepeatText> rows() const;

    [[nodiscard]] checks::RepeatsVerdict verdict() const;
    /// Wet and dry, as typed, of the whirl that is the reading; none until both of it are numbers.
    [[nodiscard]] std::optional<RepeatText> reading() const;
    /// Why the rows can't be kept without a second look; empty when they can.
    [[nodiscard]] QString openQuestion() const;

    /// All fields, row by row, wet first.
    [[nodiscard]] QList<TypedNumberEdit*> fields() const;
    [[nodiscard]] bool owns(const QObject* field) const;
    /// Enter in one of the fields goes on to the next; false where the rows are done with and it asks to
    /// save.
    bool goOn(const QObject* field);
    void focusFirstEmpty();
    /// Marks what is no number, but for the field being typed in; the sentence of the first.
    QString showProblems();

signals:
    void edited();

private:
    struct Row {
        QLabel* number = nullptr;
        TypedNumberEdit* wet = nullptr;
        TypedNumberEdit* dry = nullptr;
        QLabel* mark = nullptr;
    };
    [[nodiscard]] std::vector<record::Repeat> numbers() const;
    void fieldEdited();
    void showState();

    std::array<Row, kMostRows> rows_;
    QLabel* state_ = nullptr;
    units::TemperatureUnit unit_ = units::TemperatureUnit::Celsius;
    units::TemperatureDifference step_ = units::TemperatureDifference::fromKelvins(0.1);
    bool filling_ = false;
};

} // namespace wickbook::ui
