// SPDX-License-Identifier: GPL-3.0-or-later
// How the fields of an entry are laid out.
#include "ui/observe/entry_form.h"
#include "ui/observe/repeats_panel.h"
#include "ui/observe/weather_choice.h"
#include "ui/observe/wick_choice.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/style/typed_number_edit.h"

#include <QGridLayout>
#include <QHBoxLayout>
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

    // Folded away until asked for: few need a row for each whirl every day.
    const auto link = [&](const char* name) {
        auto* made = new QPushButton;
        made->setObjectName(QLatin1String(name));
        made->setProperty("quiet", true);
        made->setFont(typeFont(TypeSize::Label));
        made->setAutoDefault(false);
        watch(made);
        return made;
    };
    repeatsButton_ = link("repeatsLink");
    beatButton_ = link("beatLink");
    beatButton_->setText(tr("The beat  B"));
    connect(repeatsButton_, &QPushButton::clicked, this, &EntryForm::toggleRepeats);
    connect(beatButton_, &QPushButton::clicked, this, &EntryForm::beatWanted);
    auto* links = new QHBoxLayout;
    links->setContentsMargins(0, 0, 0, 0);
    links->addWidget(repeatsButton_);
    links->addWidget(beatButton_);
    links->addStretch();
    grid.addLayout(links, 2, 0, 1, kColumns);
    repeats_ = new RepeatsPanel;
    repeats_->hide();
    for (TypedNumberEdit* field : repeats_->fields()) {
        field->installEventFilter(this);
    }
    connect(repeats_, &RepeatsPanel::edited, this, &EntryForm::takeRepeats);
    grid.addWidget(repeats_, 3, 0, 1, kColumns);
    showRepeatsLink();

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
    put(grid, 4, 0, 2, makeLabel(tr("Wick")), wick_);
    put(grid, 4, 2, 2, makeLabel(tr("Wick care")), care_);

    wickLine_ = makeLabel({}, TypeSize::Label, false);
    wickLine_->setWordWrap(true);
    wickHelpButton_ = new QPushButton(tr("How to tell  ?"));
    wickHelpButton_->setProperty("quiet", true);
    wickHelpLabel_ = makeLabel({}, TypeSize::Label, true);
    wickHelpLabel_->setWordWrap(true);
    connect(wickHelpButton_, &QPushButton::clicked, this, &EntryForm::toggleHelp);
    grid.addWidget(wickLine_, 6, 0, 1, 3);
    grid.addWidget(wickHelpButton_, 6, 3, Qt::AlignRight);
    grid.addWidget(wickHelpLabel_, 7, 0, 1, kColumns);
    wickLine_->hide();
    wickHelpButton_->hide();
    wickHelpLabel_->hide();
    grid.setRowMinimumHeight(8, space::kGroup);
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
    put(grid, 9, 0, 2, makeLabel(tr("Weather")), weather_);
    put(grid, 9, 2, 1, makeLabel(tr("Wind")), wind_);
    put(grid, 9, 3, 1, makeLabel(tr("Observer")), observer_);
    grid.setRowMinimumHeight(11, space::kGroup);
    put(grid, 12, 0, 2, makeLabel(tr("Pressure, hPa")), pressure_);
    put(grid, 12, 2, 1, makeLabel(tr("Maximum")), maximum_);
    put(grid, 12, 3, 1, makeLabel(tr("Minimum")), minimum_);
    grid.setRowMinimumHeight(14, space::kGroup);
    put(grid, 15, 0, kColumns, makeLabel(tr("Note")), note_);
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

} // namespace wickbook::ui
