// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/repeats_panel.h"

#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/number_words.h"

#include <QGridLayout>
#include <QLabel>

#include <algorithm>

namespace wickbook::ui {

RepeatsPanel::RepeatsPanel(QWidget* parent) : QWidget(parent) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space::kGroup);
    grid->setVerticalSpacing(space::kStep);
    grid->addWidget(makeLabel(tr("Wet bulb first")), 0, 1);
    grid->addWidget(makeLabel(tr("Dry bulb")), 0, 2);
    for (std::size_t index = 0; index < kMostRows; ++index) {
        Row& row = rows_[index];
        const int number = static_cast<int>(index) + 1;
        row.number = makeLabel(QString::number(number));
        const auto field = [&](const QString& what, const char* bulb) {
            auto* made = new TypedNumberEdit(what);
            made->setProperty("bulb", QLatin1String(bulb));
            made->setFont(typeFont(TypeSize::Body));
            connect(made, &QLineEdit::textChanged, this, &RepeatsPanel::fieldEdited);
            return made;
        };
        row.wet = field(tr("whirl %1, wet bulb").arg(number), "wet");
        row.dry = field(tr("whirl %1, dry bulb").arg(number), "dry");
        row.mark = makeLabel({}, TypeSize::Label, false);
        row.mark->setMinimumWidth(typePixels(64));
        const int line = number;
        grid->addWidget(row.number, line, 0);
        grid->addWidget(row.wet, line, 1);
        grid->addWidget(row.dry, line, 2);
        grid->addWidget(row.mark, line, 3);
    }
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(2, 1);
    state_ = makeLabel({}, TypeSize::Label, false);
    state_->setObjectName(QStringLiteral("repeatsState"));
    state_->setWordWrap(true);
    grid->addWidget(state_, static_cast<int>(kMostRows) + 1, 0, 1, 4);
    showState();
}

void RepeatsPanel::setScale(units::TemperatureUnit unit, double step) {
    unit_ = unit;
    step_ = units::scaleDegrees(step, unit);
    for (TypedNumberEdit* field : fields()) {
        field->setSuffix(unitWords(unit));
    }
    showState();
}

void RepeatsPanel::setRows(const QList<RepeatText>& rows) {
    filling_ = true;
    for (std::size_t index = 0; index < kMostRows; ++index) {
        const auto place = static_cast<qsizetype>(index);
        const RepeatText row = place < rows.size() ? rows[place] : RepeatText{};
        if (rows_[index].wet->text() != row.wet) {
            rows_[index].wet->setText(row.wet);
        }
        if (rows_[index].dry->text() != row.dry) {
            rows_[index].dry->setText(row.dry);
        }
    }
    filling_ = false;
    showState();
}

QList<RepeatText> RepeatsPanel::rows() const {
    QList<RepeatText> written;
    for (const Row& row : rows_) {
        if (!row.wet->isEmpty() || !row.dry->isEmpty()) {
            written.append({row.wet->text(), row.dry->text()});
        }
    }
    return written;
}

std::vector<record::Repeat> RepeatsPanel::numbers() const {
    std::vector<record::Repeat> numbers;
    const auto read = [&](const TypedNumberEdit* field) -> std::optional<units::ReadTemperature> {
        const auto value = field->value();
        return value ? std::optional{units::ReadTemperature{*value, unit_}} : std::nullopt;
    };
    for (const Row& row : rows_) {
        numbers.push_back({read(row.wet), read(row.dry)});
    }
    return numbers;
}

checks::RepeatsVerdict RepeatsPanel::verdict() const {
    return checks::settle(numbers(), step_);
}

std::optional<RepeatText> RepeatsPanel::reading() const {
    const auto row = verdict().row;
    if (!row || !rows_[*row].dry->value()) {
        return std::nullopt;
    }
    return RepeatText{rows_[*row].wet->text(), rows_[*row].dry->text()};
}

QString RepeatsPanel::openQuestion() const {
    const checks::RepeatsVerdict now = verdict();
    if (!now.row) {
        return {};
    }
    if (!rows_[*now.row].dry->value()) {
        return tr("Whirl %1 is the reading, and its dry bulb is missing.")
            .arg(static_cast<int>(*now.row) + 1);
    }
    if (now.rising) {
        return tr("The wet bulb rises: the wick is drying. Stop, wet it and whirl again.");
    }
    return now.settled ? QString{} : tr("The wet bulb has not settled yet: whirl again.");
}

QList<TypedNumberEdit*> RepeatsPanel::fields() const {
    QList<TypedNumberEdit*> all;
    for (const Row& row : rows_) {
        all << row.wet << row.dry;
    }
    return all;
}

bool RepeatsPanel::owns(const QObject* field) const {
    return std::any_of(rows_.begin(), rows_.end(),
                       [&](const Row& row) { return row.wet == field || row.dry == field; });
}

bool RepeatsPanel::goOn(const QObject* field) {
    for (std::size_t index = 0; index < kMostRows; ++index) {
        const Row& row = rows_[index];
        if (row.wet == field && !row.wet->isEmpty()) {
            row.dry->setFocus(Qt::TabFocusReason);
            return true;
        }
        const checks::RepeatsVerdict now = verdict();
        if (row.dry == field && !row.dry->isEmpty() && (!now.settled || now.rising) &&
            index + 1 < kMostRows) {
            rows_[index + 1].wet->setFocus(Qt::TabFocusReason);
            return true;
        }
    }
    return false;
}

void RepeatsPanel::focusFirstEmpty() {
    for (TypedNumberEdit* field : fields()) {
        if (field->isEmpty()) {
            field->setFocus(Qt::OtherFocusReason);
            return;
        }
    }
    rows_.front().wet->setFocus(Qt::OtherFocusReason);
}

QString RepeatsPanel::showProblems() {
    QString first;
    for (TypedNumberEdit* field : fields()) {
        if (field->hasFocus()) {
            continue;
        }
        const QString problem = field->problem();
        field->showProblem(problem);
        if (first.isEmpty()) {
            first = problem;
        }
    }
    return first;
}

void RepeatsPanel::fieldEdited() {
    if (filling_) {
        return;
    }
    showState();
    emit edited();
}

void RepeatsPanel::showState() {
    const checks::RepeatsVerdict now = verdict();
    bool shown = true; // the first, and each after a written one
    for (std::size_t index = 0; index < kMostRows; ++index) {
        const Row& row = rows_[index];
        const bool written = !row.wet->isEmpty() || !row.dry->isEmpty();
        for (QWidget* part : {static_cast<QWidget*>(row.number), static_cast<QWidget*>(row.wet),
                              static_cast<QWidget*>(row.dry), static_cast<QWidget*>(row.mark)}) {
            part->setVisible(shown || written);
        }
        row.mark->setText(now.row != index || now.whirls < 2 ? QString{}
                          : now.settled                      ? tr("settled")
                                                             : tr("lowest"));
        shown = !row.wet->isEmpty() && !row.dry->isEmpty();
    }
    if (now.whirls == 0) {
        state_->setText(
            tr("A row for each whirl, until two wet bulbs agree within %1 %2.")
                .arg(differenceWords(QLocale(), checks::settledWithin(step_), unit_), unitWords(unit_)));
        return;
    }
    const QString open = openQuestion();
    state_->setText(
        open.isEmpty() ? tr("Settled: whirl %1 is the reading.").arg(static_cast<int>(*now.row) + 1) : open);
}

} // namespace wickbook::ui
