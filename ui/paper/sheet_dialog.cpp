// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/sheet_dialog.h"

#include "ui/paper/sheet_output.h"
#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

SheetDialog::SheetDialog(const QString& title, const QString& explained, const QString& fileName,
                         const QLocale& locale, QWidget* parent)
    : QDialog(parent), fileName_(fileName) {
    setWindowTitle(title);
    Look::follow(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->setSpacing(space::kGroup);
    column->addWidget(makeHeading(title));
    QLabel* words = makeLabel(explained);
    words->setWordWrap(true);
    column->addWidget(words);
    form_ = new QFormLayout;
    column->addLayout(form_);
    paper_ = new QComboBox;
    paper_->addItem(tr("A4"), static_cast<int>(Paper::A4));
    paper_->addItem(tr("Letter"), static_cast<int>(Paper::Letter));
    if (locale.measurementSystem() == QLocale::ImperialUSSystem) {
        paper_->setCurrentIndex(1);
    }
    said_ = makeLabel({}, TypeSize::Body, false);
    said_->setObjectName(QStringLiteral("paperSaid"));
    said_->setWordWrap(true);
    said_->hide();
    resize(typePixels(520), sizeHint().height());
}

void SheetDialog::addChoice(const QString& label, QWidget* field, const char* name) {
    field->setObjectName(QLatin1String(name));
    field->setAccessibleName(label);
    QLabel* words = makeLabel(label);
    words->setBuddy(field);
    form_->addRow(words, field);
}

void SheetDialog::finish(Maker make, std::optional<Paper> fixedPaper) {
    make_ = std::move(make);
    fixedPaper_ = fixedPaper;
    if (fixedPaper_) {
        paper_->hide();
        paper_->setParent(this);
    } else {
        addChoice(tr("Pa&per"), paper_, "paperSize");
    }
    auto* column = static_cast<QVBoxLayout*>(layout());
    column->addWidget(said_);
    auto* row = new QHBoxLayout;
    const auto button = [&](const QString& text, const char* name, const std::function<void()>& act) {
        auto* made = new QPushButton(text);
        made->setObjectName(QLatin1String(name));
        made->setAutoDefault(false);
        connect(made, &QPushButton::clicked, this, act);
        row->addWidget(made);
        return made;
    };
    auto* preview = button(tr("&Look at the pages…"), "paperPreview", [this] {
        if (const auto made = sheet()) {
            previewSheet(*made, this);
        }
    });
    preview->setProperty("primary", true);
    preview->setAutoDefault(true);
    preview->setDefault(true);
    button(tr("P&rint…"), "paperPrint", [this] {
        if (const auto made = sheet()) {
            say(printSheet(*made, this));
        }
    });
    button(tr("&Save as PDF…"), "paperSave", [this] {
        if (const auto made = sheet()) {
            say(saveSheet(*made, fileName_, this));
        }
    });
    row->addStretch();
    button(tr("&Close"), "paperClose", [this] { reject(); });
    column->addLayout(row);
    const int wide = std::max(width(), column->minimumSize().width());
    resize(wide, column->hasHeightForWidth() ? column->totalHeightForWidth(wide) : sizeHint().height());
}

std::optional<PaperSheet> SheetDialog::sheet() {
    auto made = make_(fixedPaper_.value_or(static_cast<Paper>(paper_->currentData().toInt())));
    if (!made) {
        say(made.error());
        return std::nullopt;
    }
    return std::move(*made);
}

void SheetDialog::say(const QString& sentence) {
    said_->setText(sentence);
    said_->setVisible(!sentence.isEmpty());
}

} // namespace wickbook::ui
