// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/style/typed_number_edit.h"

#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"

#include <QPainter>

namespace wickbook::ui {

namespace {
/// Longer than any reading; a paste of a whole page stays out.
constexpr int kLongestText = 24;
} // namespace

TypedNumberEdit::TypedNumberEdit(const QString& what, QWidget* parent) : QLineEdit(parent), what_(what) {
    setAccessibleName(what);
    setMaxLength(kLongestText);
    setLayoutDirection(Qt::LeftToRight); // digits run left to right in every script
    setInputMethodHints(Qt::ImhPreferNumbers);
    connect(this, &QLineEdit::textChanged, this, [this] { showProblem({}); });
}

void TypedNumberEdit::setSuffix(const QString& suffix) {
    suffix_ = suffix;
    QFont small = typeFont(TypeSize::Label);
    const int room = suffix.isEmpty() ? 0 : QFontMetrics(small).horizontalAdvance(suffix) + space::kGroup;
    setTextMargins(0, 0, room, 0);
    update();
}

std::optional<units::Decimal> TypedNumberEdit::value() const {
    const auto parsed = units::parseDecimal(text().toStdString());
    return parsed ? std::optional{*parsed} : std::nullopt;
}

bool TypedNumberEdit::isBelowScale() const {
    return belowScaleAllowed_ && text().trimmed() == QLatin1String("<");
}

bool TypedNumberEdit::isEmpty() const {
    return text().trimmed().isEmpty();
}

QString TypedNumberEdit::problem() const {
    if (isEmpty() || isBelowScale()) {
        return {};
    }
    const auto parsed = units::parseDecimal(text().toStdString());
    return parsed ? QString{} : decimalErrorWords(parsed.error(), what_, text());
}

void TypedNumberEdit::setValue(const units::Decimal& value) {
    const QString words = readWords(QLocale(), value);
    if (words != text()) {
        setText(words);
    }
}

void TypedNumberEdit::setBelowScale() {
    setText(QStringLiteral("<"));
}

void TypedNumberEdit::showProblem(const QString& sentence) {
    const bool bad = !sentence.isEmpty();
    if (property("problem").toBool() != bad) {
        setProperty("problem", bad);
        refreshLook(*this);
    }
    setAccessibleDescription(sentence);
}

void TypedNumberEdit::paintEvent(QPaintEvent* event) {
    QLineEdit::paintEvent(event);
    const QString shown = isBelowScale() ? tr("below scale") : suffix_;
    if (shown.isEmpty()) {
        return;
    }
    QPainter painter(this);
    painter.setLayoutDirection(Qt::LeftToRight); // the unit stands behind its number in every script
    painter.setFont(typeFont(TypeSize::Label));
    painter.setPen(tokensFor(palette()).soft);
    painter.drawText(rect().adjusted(0, 0, -10, 0), Qt::AlignRight | Qt::AlignVCenter, shown);
}

} // namespace wickbook::ui
