// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/first_start_page.h"

#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {
constexpr int kDoorWidth = 460;
}

FirstStartPage::FirstStartPage(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(2 * space::kEdge, 2 * space::kEdge, 2 * space::kEdge, space::kEdge);
    column->setSpacing(space::kBetween);
    column->addWidget(makeHeading(tr("A register for a dry and a wet bulb")));
    QLabel* what =
        makeLabel(tr("Write down what the two thermometers say; relative humidity and dew point are "
                     "worked out, with how sure they are."),
                  TypeSize::Body, true);
    what->setWordWrap(true);
    column->addWidget(what);
    sentence_ = makeLabel({}, TypeSize::Body, false);
    sentence_->setObjectName(QStringLiteral("firstStartSentence"));
    sentence_->setProperty("wrong", true);
    sentence_->setWordWrap(true);
    sentence_->hide();
    column->addWidget(sentence_);
    salvage_ = new QPushButton(tr("Save &what can be read…"));
    salvage_->setObjectName(QStringLiteral("firstStartSalvage"));
    salvage_->setAutoDefault(true);
    salvage_->hide();
    column->addWidget(salvage_, 0, Qt::AlignLeft);
    connect(salvage_, &QPushButton::clicked, this, &FirstStartPage::salvageWanted);
    doors_ = new QVBoxLayout;
    doors_->setSpacing(space::kGroup);
    column->addLayout(doors_);
    QPushButton* start =
        door(tr("&Start a station"), tr("A new book: name, place, observing hours, thermometers. One page."),
             QStringLiteral("doorStart"));
    QPushButton* open =
        door(tr("&Open a book"), tr("A register kept with this program before."), QStringLiteral("doorOpen"));
    QPushButton* sample =
        door(tr("&Look around in the sample station"),
             tr("A copy of an invented station with two years of readings. Nothing there can be spoilt."),
             QStringLiteral("doorSample"));
    connect(start, &QPushButton::clicked, this, &FirstStartPage::startWanted);
    connect(open, &QPushButton::clicked, this, &FirstStartPage::openWanted);
    connect(sample, &QPushButton::clicked, this, &FirstStartPage::sampleWanted);
    recent_ = new QVBoxLayout;
    recent_->setSpacing(space::kStep);
    column->addLayout(recent_);
    column->addStretch();
    setFocusProxy(start);
}

QPushButton* FirstStartPage::door(const QString& word, const QString& explained, const QString& name) {
    auto* button = new QPushButton(word);
    button->setObjectName(name);
    button->setFont(typeFont(TypeSize::Body, true));
    button->setProperty("door", true);
    button->setAutoDefault(true);
    button->setFixedWidth(typePixels(kDoorWidth));
    QLabel* line = makeLabel(explained);
    doors_->addWidget(button);
    doors_->addWidget(line);
    doors_->addSpacing(space::kGroup);
    button->setAccessibleDescription(explained);
    return button;
}

void FirstStartPage::showRecent(const QStringList& books) {
    while (QLayoutItem* item = recent_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    if (books.isEmpty()) {
        return;
    }
    recent_->addWidget(makeLabel(tr("Opened before")));
    for (const QString& path : books) {
        auto* button = new QPushButton(QFileInfo(path).completeBaseName());
        button->setProperty("quiet", true);
        button->setToolTip(path);
        connect(button, &QPushButton::clicked, this, [this, path] { emit bookWanted(path); });
        recent_->addWidget(button, 0, Qt::AlignLeft);
    }
}

void FirstStartPage::showSentence(const QString& sentence) {
    sentence_->setText(sentence);
    sentence_->setVisible(!sentence.isEmpty());
    salvage_->hide();
}

void FirstStartPage::offerSalvage(bool offered) {
    salvage_->setVisible(offered);
    if (offered) {
        salvage_->setFocus(Qt::OtherFocusReason);
    }
}

QString FirstStartPage::sentence() const {
    return sentence_->text();
}

} // namespace wickbook::ui
