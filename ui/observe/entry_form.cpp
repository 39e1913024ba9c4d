// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/entry_form.h"

#include "ui/observe/repeats_panel.h"
#include "ui/observe/weather_choice.h"
#include "ui/observe/wick_choice.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/number_words.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace wickbook::ui {

void EntryForm::setUnit(units::TemperatureUnit unit) {
    for (TypedNumberEdit* field : {dry_, wet_}) {
        field->setSuffix(unitWords(unit));
    }
    unit_ = unit;
}

void EntryForm::setSettleStep(double step) {
    repeats_->setScale(unit_, step);
}

void EntryForm::setPressureTaken(const QString& value, const QString& from) {
    pressure_->setPlaceholderText(value);
    pressure_->setSuffix(from);
}

void EntryForm::setWetFirst(bool wetFirst) {
    if (wetFirst != wetFirst_) {
        wetFirst_ = wetFirst;
        setTabOrder(wetFirst ? wet_ : dry_, wetFirst ? dry_ : wet_);
        setTabOrder(wetFirst ? dry_ : wet_, repeatsButton_);
    }
    beatButton_->setVisible(wetFirst);
    showRepeatsLink();
}

void EntryForm::showRepeatsLink() {
    const auto written = repeats_->rows().size();
    const QString what = wetFirst_ ? tr("Whirl by whirl") : tr("Repeats");
    repeatsButton_->setText((written == 0 ? what : tr("%1 (%2)").arg(what).arg(written)) +
                            QStringLiteral("  R"));
}

void EntryForm::toggleRepeats() {
    if (!repeats_->isHidden()) {
        repeats_->hide();
        focusFirst();
        return;
    }
    if (repeats_->rows().isEmpty() && !dry_->isEmpty() && !wet_->isEmpty()) {
        repeats_->setRows({{wet_->text(), dry_->text()}}); // what is typed already was the first
        showRepeatsLink();
        emit edited();
    }
    repeats_->show();
    repeats_->focusFirstEmpty();
}

void EntryForm::takeRepeats() {
    if (const auto reading = repeats_->reading()) {
        wet_->setText(reading->wet);
        dry_->setText(reading->dry);
    }
    showRepeatsLink();
    emit edited();
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
    repeats_->setRows(entry.repeats);
    repeats_->setVisible(!entry.repeats.isEmpty());
    showRepeatsLink();
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
    entry.repeats = repeats_->rows();
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
    if (where == EntryField::Repeats) {
        repeats_->showProblems();
    }
    if (TypedNumberEdit* edit = field(where)) {
        edit->showProblem(sentence);
    }
}

void EntryForm::setObserver(const QString& initials) {
    observer_->setText(initials);
}

void EntryForm::focusField(EntryField where) {
    if (where == EntryField::Wick) {
        wick_->setFocus(Qt::OtherFocusReason);
    } else if (where == EntryField::Repeats) {
        repeats_->show();
        for (TypedNumberEdit* edit : repeats_->fields()) {
            if (!edit->problem().isEmpty()) {
                edit->setFocus(Qt::OtherFocusReason);
                edit->selectAll();
                return;
            }
        }
        repeats_->focusFirstEmpty();
    } else if (TypedNumberEdit* edit = field(where)) {
        edit->setFocus(Qt::OtherFocusReason);
        edit->selectAll();
    }
}

void EntryForm::focusFirst() {
    TypedNumberEdit* first = wetFirst_ ? wet_ : dry_;
    TypedNumberEdit* second = wetFirst_ ? dry_ : wet_;
    TypedNumberEdit* wanted = first->isEmpty() ? first : second;
    wanted->setFocus(Qt::OtherFocusReason);
    wanted->deselect();
    wanted->end(false);
}

bool EntryForm::handleEnter(QObject* watched) {
    TypedNumberEdit* first = wetFirst_ ? wet_ : dry_;
    TypedNumberEdit* second = wetFirst_ ? dry_ : wet_;
    if (watched == first && second->isEmpty()) {
        second->setFocus(Qt::TabFocusReason);
    } else if (watched == second && first->isEmpty() && !second->isEmpty()) {
        first->setFocus(Qt::TabFocusReason);
    } else if (!repeats_->goOn(watched)) {
        emit saveRequested();
    }
    return true;
}

bool EntryForm::handleKey(QObject* watched, int key) {
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
        return handleEnter(watched);
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
    if (key == Qt::Key_R) {
        toggleRepeats();
        return true;
    }
    if (key == Qt::Key_B && wetFirst_) {
        emit beatWanted();
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
