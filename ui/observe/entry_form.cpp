// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/entry_form.h"

#include "ui/observe/weather_choice.h"
#include "ui/observe/wick_choice.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/number_words.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace wickbook::ui {

namespace {

/// A note holds a line or two of a pocket book.
constexpr int kLongestNote = 500;
constexpr int kLongestInitials = 8;
constexpr int kColumns = 4;

/// A label above its field: the label names the field for the eye, the field names itself for the ear.
void put(QGridLayout& grid, int row, int column, int span, QLabel* label, QWidget* field) {
    label->setBuddy(field);
    grid.addWidget(label, row, column, 1, span);
    grid.addWidget(field, row + 1, column, 1, span);
}

} // namespace

EntryForm::EntryForm(QWidget* parent) : QWidget(parent) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space::kBetween);
    grid->setVerticalSpacing(space::kStep);
    for (int column = 0; column < kColumns; ++column) {
        grid->setColumnStretch(column, 1);
    }
    buildBulbs(*grid);
    buildRest(*grid);
}

void EntryForm::buildBulbs(QGridLayout& grid) {
    const auto bulb = [&](const QString& what, const char* name) {
        auto* field = new TypedNumberEdit(what);
        field->setProperty("bulb", QLatin1String(name));
        field->setFont(typeFont(TypeSize::Entry, true));
        field->setMinimumHeight(typePixels(42));
        field->allowBelowScale();
        field->setToolTip(tr("As read off the scale. < stands for a column that has gone into the bulb."));
        watch(field);
        return field;
    };
    dry_ = bulb(tr("dry bulb"), "dry");
    wet_ = bulb(tr("wet bulb"), "wet");
    put(grid, 0, 0, 2, makeLabel(tr("Dry bulb")), dry_);
    put(grid, 0, 2, 2, makeLabel(tr("Wet bulb")), wet_);
    grid.setRowMinimumHeight(2, space::kGroup);

    wick_ = new LetterChoice(tr("wick"), {{QStringLiteral("water"), tr("water"), Qt::Key_W},
                                          {QStringLiteral("ice"), tr("ice"), Qt::Key_I}});
    care_ = new LetterChoice(tr("wick care"), {{QStringLiteral("wetted"), tr("wetted"), Qt::Key_T},
                                               {QStringLiteral("changed"), tr("new"), Qt::Key_N}});
    for (LetterChoice* choice : {wick_, care_}) {
        connect(choice, &LetterChoice::changed, this, &EntryForm::edited);
        for (QPushButton* button : choice->buttons()) {
            watch(button);
        }
    }
    put(grid, 3, 0, 2, makeLabel(tr("Wick")), wick_);
    put(grid, 3, 2, 2, makeLabel(tr("Wick care")), care_);

    wickLine_ = makeLabel({}, TypeSize::Label, false);
    wickLine_->setWordWrap(true);
    wickHelpButton_ = new QPushButton(tr("How to tell  ?"));
    wickHelpButton_->setProperty("quiet", true);
    wickHelpLabel_ = makeLabel({}, TypeSize::Label, true);
    wickHelpLabel_->setWordWrap(true);
    connect(wickHelpButton_, &QPushButton::clicked, this, &EntryForm::toggleHelp);
    grid.addWidget(wickLine_, 5, 0, 1, 3);
    grid.addWidget(wickHelpButton_, 5, 3, Qt::AlignRight);
    grid.addWidget(wickHelpLabel_, 6, 0, 1, kColumns);
    wickLine_->hide();
    wickHelpButton_->hide();
    wickHelpLabel_->hide();
    grid.setRowMinimumHeight(7, space::kGroup);
}

void EntryForm::buildRest(QGridLayout& grid) {
    const auto number = [&](const QString& what) {
        auto* field = new TypedNumberEdit(what);
        field->setFont(typeFont(TypeSize::Body));
        watch(field);
        return field;
    };
    const auto words = [&](const QString& what, int longest) {
        auto* field = new QLineEdit;
        field->setAccessibleName(what);
        field->setMaxLength(longest);
        field->setFont(typeFont(TypeSize::Body));
        watch(field);
        return field;
    };
    pressure_ = number(tr("pressure"));
    weather_ = new WeatherChoice;
    connect(weather_, &WeatherChoice::changed, this, &EntryForm::edited);
    watch(weather_);
    wind_ = number(tr("wind, Beaufort force"));
    observer_ = words(tr("observer, initials"), kLongestInitials);
    maximum_ = number(tr("maximum"));
    minimum_ = number(tr("minimum"));
    note_ = words(tr("note"), kLongestNote);
    put(grid, 8, 0, 2, makeLabel(tr("Weather")), weather_);
    put(grid, 8, 2, 1, makeLabel(tr("Wind")), wind_);
    put(grid, 8, 3, 1, makeLabel(tr("Observer")), observer_);
    grid.setRowMinimumHeight(10, space::kGroup);
    put(grid, 11, 0, 2, makeLabel(tr("Pressure, hPa")), pressure_);
    put(grid, 11, 2, 1, makeLabel(tr("Maximum")), maximum_);
    put(grid, 11, 3, 1, makeLabel(tr("Minimum")), minimum_);
    grid.setRowMinimumHeight(13, space::kGroup);
    put(grid, 14, 0, kColumns, makeLabel(tr("Note")), note_);
}

void EntryForm::watch(QWidget* widget) {
    widget->installEventFilter(this);
    if (auto* line = qobject_cast<QLineEdit*>(widget)) {
        connect(line, &QLineEdit::textChanged, this, [this] {
            if (!filling_) {
                emit edited();
            }
        });
    }
}

void EntryForm::setUnit(units::TemperatureUnit unit) {
    for (TypedNumberEdit* field : {dry_, wet_}) {
        field->setSuffix(unitWords(unit));
    }
}

void EntryForm::setPressureTaken(const QString& value, const QString& from) {
    pressure_->setPlaceholderText(value);
    pressure_->setSuffix(from);
}

void EntryForm::setWetFirst(bool wetFirst) {
    wetFirst_ = wetFirst;
    if (wetFirst) {
        setTabOrder(wet_, dry_);
        setTabOrder(dry_, wick_->buttons().first());
    }
}

void EntryForm::fill(const EntryText& entry) {
    filling_ = true;
    dry_->setText(entry.dry);
    wet_->setText(entry.wet);
    wick_->setValue(entry.wick);
    care_->setValue(entry.wickCare);
    pressure_->setText(entry.pressure);
    weather_->setNames(entry.weather);
    wind_->setText(entry.wind);
    maximum_->setText(entry.maximum);
    minimum_->setText(entry.minimum);
    observer_->setText(entry.observer);
    note_->setText(entry.note);
    filling_ = false;
}

void EntryForm::read(EntryText& entry) const {
    entry.dry = dry_->text();
    entry.wet = wet_->text();
    entry.wick = wick_->value();
    entry.wickCare = care_->value();
    entry.pressure = pressure_->text();
    entry.weather = weather_->names();
    entry.wind = wind_->text();
    entry.maximum = maximum_->text();
    entry.minimum = minimum_->text();
    entry.observer = observer_->text();
    entry.note = note_->text();
}

void EntryForm::setBulb(bool dry, const units::Decimal& value) {
    (dry ? dry_ : wet_)->setValue(value);
}

void EntryForm::setBulbBelowScale(bool dry) {
    (dry ? dry_ : wet_)->setBelowScale();
}

void EntryForm::askWick(bool asked, const QString& help) {
    wickAsked_ = asked;
    wickHelp_ = help;
    const bool open = asked && wick_->value().isEmpty();
    wick_->showAsked(open);
    wickLine_->setText(open ? tr("Is the wick wet or frozen? W for water, I for ice.") : QString{});
    wickLine_->setVisible(open);
    wickHelpButton_->setVisible(asked);
    wickHelpLabel_->setText(help);
    if (!asked) {
        wickHelpLabel_->hide();
    }
}

void EntryForm::toggleHelp() {
    if (wickAsked_) {
        wickHelpLabel_->setVisible(!wickHelpLabel_->isVisible());
    }
}

TypedNumberEdit* EntryForm::field(EntryField field) const {
    switch (field) {
    case EntryField::Dry:
        return dry_;
    case EntryField::Wet:
        return wet_;
    case EntryField::Pressure:
        return pressure_;
    case EntryField::Wind:
        return wind_;
    case EntryField::Maximum:
        return maximum_;
    case EntryField::Minimum:
        return minimum_;
    default:
        return nullptr;
    }
}

void EntryForm::showProblem(EntryField where, const QString& sentence) {
    if (TypedNumberEdit* edit = field(where)) {
        edit->showProblem(sentence);
    }
}

void EntryForm::setReadOnly(bool readOnly) {
    setEnabled(!readOnly);
}

void EntryForm::focusField(EntryField where) {
    if (where == EntryField::Wick) {
        wick_->setFocus(Qt::OtherFocusReason);
    } else if (TypedNumberEdit* edit = field(where)) {
        edit->setFocus(Qt::OtherFocusReason);
        edit->selectAll();
    }
}

void EntryForm::focusFirst() {
    focusField(wetFirst_ ? EntryField::Wet : EntryField::Dry);
}

bool EntryForm::handleKey(QObject* watched, int key) {
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
        TypedNumberEdit* first = wetFirst_ ? wet_ : dry_;
        TypedNumberEdit* second = wetFirst_ ? dry_ : wet_;
        if (watched == first && second->isEmpty()) {
            second->setFocus(Qt::TabFocusReason);
        } else if (watched == second && first->isEmpty() && !second->isEmpty()) {
            first->setFocus(Qt::TabFocusReason);
        } else {
            emit saveRequested();
        }
        return true;
    }
    const bool letters =
        qobject_cast<QLineEdit*>(watched) != nullptr && qobject_cast<TypedNumberEdit*>(watched) == nullptr;
    if (letters) {
        return false;
    }
    if (key == Qt::Key_Question) {
        toggleHelp();
        return true;
    }
    return wick_->takeKey(key) || care_->takeKey(key);
}

bool EntryForm::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = (key->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == 0;
        if (plain && handleKey(watched, key->key())) {
            return true;
        }
    } else if (event->type() == QEvent::FocusOut) {
        const EntryField fields[] = {EntryField::Dry,  EntryField::Wet,     EntryField::Pressure,
                                     EntryField::Wind, EntryField::Maximum, EntryField::Minimum};
        EntryField left = EntryField::None;
        for (const EntryField candidate : fields) {
            if (field(candidate) == watched) {
                left = candidate;
            }
        }
        emit fieldLeft(left);
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace wickbook::ui
