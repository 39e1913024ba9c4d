// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/decimal.h"

#include <QLineEdit>

#include <optional>

/// A field for a number as it is read off a scale. Takes both decimal marks, hyphen and minus sign; keeps the
/// digits as they were typed and never rewrites them; says in a sentence what it can't take.
/// "<" stands for a column that has gone into the bulb, where that is allowed.

namespace wickbook::ui {

class TypedNumberEdit : public QLineEdit {
    Q_OBJECT

public:
    /// what: "dry bulb", as in the sentence of a refusal and as the accessible name.
    explicit TypedNumberEdit(const QString& what, QWidget* parent = nullptr);

    /// Drawn inside the field's end in the soft colour: "°C", "from 165 m".
    void setSuffix(const QString& suffix);
    [[nodiscard]] QString suffix() const { return suffix_; }
    void allowBelowScale() { belowScaleAllowed_ = true; }

    /// The number as typed; none while empty, below scale or not a number.
    [[nodiscard]] std::optional<units::Decimal> value() const;
    [[nodiscard]] bool isBelowScale() const;
    [[nodiscard]] bool isEmpty() const;
    /// Why the text can't be taken; empty when it can, or when there is none.
    [[nodiscard]] QString problem() const;
    [[nodiscard]] QString what() const { return what_; }

    /// Written with the locale's mark and a real minus: for values that come from the drawing or the book.
    void setValue(const units::Decimal& value);
    void setBelowScale();
    /// Shows the red frame and puts the sentence where a screen reader finds it; empty takes it away.
    void showProblem(const QString& sentence);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString what_;
    QString suffix_;
    bool belowScaleAllowed_ = false;
};

} // namespace wickbook::ui
