// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/weather_choice.h"

#include "ui/style/type.h"
#include "ui/text/term_words.h"

#include <QKeyEvent>
#include <QMouseEvent>

namespace wickbook::ui {

void TickMenu::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && activeAction() != nullptr) {
        activeAction()->trigger();
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        close();
        return;
    }
    QMenu::keyPressEvent(event);
}

void TickMenu::mouseReleaseEvent(QMouseEvent* event) {
    if (QAction* action = actionAt(event->position().toPoint())) {
        action->trigger();
        return;
    }
    QMenu::mouseReleaseEvent(event);
}

WeatherChoice::WeatherChoice(QWidget* parent) : QPushButton(parent) {
    setAccessibleName(tr("weather"));
    setAutoDefault(false);
    setFont(typeFont(TypeSize::Body));
    setProperty("field", true);
    none_ = menu_.addAction(tr("none"));
    none_->setCheckable(true);
    menu_.addSeparator();
    for (int index = 0; index < record::kWeatherCount; ++index) {
        QAction* action = menu_.addAction(weatherWords(static_cast<record::Weather>(index)));
        action->setCheckable(true);
        kinds_.append(action);
    }
    connect(&menu_, &QMenu::triggered, this, &WeatherChoice::noteTicks);
    setMenu(&menu_);
    showWords();
}

std::optional<record::WeatherSet> WeatherChoice::weather() const {
    record::WeatherSet set;
    for (int index = 0; index < record::kWeatherCount; ++index) {
        if (kinds_[index]->isChecked()) {
            set.add(static_cast<record::Weather>(index));
        }
    }
    if (set.empty() && !none_->isChecked()) {
        return std::nullopt;
    }
    return set;
}

QString WeatherChoice::names() const {
    const auto set = weather();
    return set ? QString::fromStdString(set->toText()) : QString{};
}

void WeatherChoice::setNames(const QString& names) {
    const auto read = record::WeatherSet::fromText(names.toStdString());
    const bool noted = !names.isEmpty() && read.has_value();
    const record::WeatherSet set = noted ? *read : record::WeatherSet{};
    none_->setChecked(noted && set.empty());
    for (int index = 0; index < record::kWeatherCount; ++index) {
        kinds_[index]->setChecked(set.has(static_cast<record::Weather>(index)));
    }
    showWords();
}

void WeatherChoice::noteTicks(QAction* last) {
    if (last == none_ && none_->isChecked()) {
        for (QAction* kind : std::as_const(kinds_)) {
            kind->setChecked(false);
        }
    } else if (last != none_ && last->isChecked()) {
        none_->setChecked(false);
    }
    showWords();
    emit changed();
}

void WeatherChoice::showWords() {
    const auto set = weather();
    const QString words = set ? weatherSetWords(set) : tr("not noted");
    setText(QStringLiteral("  ") + words); // a button with a list takes no padding before its text
    setAccessibleDescription(words);
}

} // namespace wickbook::ui
