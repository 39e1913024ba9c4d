// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/preferences_dialog.h"

#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/language.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

PreferencesDialog::PreferencesDialog(const Preferences& now, QWidget* parent)
    : QDialog(parent), language_(new QComboBox), shade_(new QComboBox), letters_(new QComboBox) {
    setWindowTitle(tr("Settings"));
    Look::follow(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->setSpacing(space::kBetween);
    column->addWidget(makeHeading(tr("Settings")));

    auto* form = new QFormLayout;
    column->addLayout(form);
    const auto add = [&](const QString& label, QComboBox* field, const char* name) {
        field->setObjectName(QLatin1String(name));
        QString spoken = label;
        field->setAccessibleName(spoken.remove(QLatin1Char('&')));
        QLabel* words = makeLabel(label);
        words->setBuddy(field);
        form->addRow(words, field);
    };
    language_->addItem(tr("as the system"), QString{});
    for (const Language& language : languages()) {
        language_->addItem(language.name, language.code);
    }
    language_->setCurrentIndex(std::max(0, language_->findData(now.language)));
    add(tr("&Language"), language_, "settingLanguage");

    shade_->addItem(tr("as the desktop"), static_cast<int>(Shade::AsDesktop));
    shade_->addItem(tr("light"), static_cast<int>(Shade::Light));
    shade_->addItem(tr("dark"), static_cast<int>(Shade::Dark));
    shade_->setCurrentIndex(std::max(0, shade_->findData(static_cast<int>(now.shade))));
    add(tr("Light or &dark"), shade_, "settingShade");

    for (int size = kSmallestLetters; size <= kLargestLetters; size += 25) {
        //: size of letters, per cent of the desktop's own
        letters_->addItem(tr("%1 %").arg(size), size);
    }
    letters_->setCurrentIndex(std::max(0, letters_->findData(now.letters)));
    add(tr("&Size of letters"), letters_, "settingLetters");

    QLabel* elsewhere = makeLabel(
        tr("What a reading depends on (thermometers, hours, limits, copies) belongs to the station: "
           "it is kept in its book and changed on the pages Instruments and Station."));
    elsewhere->setWordWrap(true);
    column->addWidget(elsewhere);

    auto* buttons = new QDialogButtonBox;
    QPushButton* use = buttons->addButton(tr("&Use"), QDialogButtonBox::AcceptRole);
    use->setProperty("primary", true);
    use->setDefault(true);
    buttons->addButton(tr("&Cancel"), QDialogButtonBox::RejectRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
    resize(typePixels(480), sizeHint().height());
}

Preferences PreferencesDialog::chosen() const {
    return {language_->currentData().toString(), static_cast<Shade>(shade_->currentData().toInt()),
            letters_->currentData().toInt()};
}

} // namespace wickbook::ui
