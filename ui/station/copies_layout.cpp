// SPDX-License-Identifier: GPL-3.0-or-later
// How the section of copies is laid out.
#include "ui/session/background_work.h"
#include "ui/station/copies_section.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

namespace wickbook::ui {

void CopiesSection::build() {
    handing_ = new BackgroundWork(this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kGroup);
    auto* head = new QHBoxLayout;
    fold_ = new QPushButton;
    fold_->setObjectName(QStringLiteral("copiesFold"));
    fold_->setCheckable(true);
    head->addWidget(fold_);
    // Beside the fold, where it takes no height from the page and is seen while the section is folded away.
    message_ = makeLabel({}, TypeSize::Body, false);
    message_->setObjectName(QStringLiteral("copiesMessage"));
    message_->setWordWrap(true);
    message_->hide();
    head->addSpacing(space::kGroup);
    head->addWidget(message_, 1);
    head->addStretch();
    column->addLayout(head);

    content_ = new QWidget;
    auto* inside = new QVBoxLayout(content_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(space::kGroup);
    last_ = makeLabel({}, TypeSize::Body, false);
    last_->setObjectName(QStringLiteral("copiesLast"));
    last_->setWordWrap(true);
    inside->addWidget(last_);
    auto* place = new QHBoxLayout;
    where_ = makeLabel({}, TypeSize::Body, false);
    where_->setObjectName(QStringLiteral("copiesWhere"));
    where_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    where_->setMinimumWidth(typePixels(120)); // a long path is cut, and whole in the tip
    change_ = new QPushButton(tr("Chan&ge…"));
    change_->setObjectName(QStringLiteral("copiesChange"));
    change_->setAccessibleName(tr("change where copies go"));
    daily_ = new QCheckBox(tr("&Keep one every day the book has changed"));
    daily_->setObjectName(QStringLiteral("copiesDaily"));
    daily_->setToolTip(tr("Without, nothing keeps a copy but you, and bringing in a register."));
    place->addWidget(where_);
    place->addWidget(change_);
    place->addStretch();
    place->addWidget(daily_);
    inside->addLayout(place);
    list_ = new QListWidget;
    list_->setObjectName(QStringLiteral("copiesList"));
    list_->setAccessibleName(tr("copies of the book"));
    list_->setFont(typeFont(TypeSize::Body));
    inside->addWidget(list_);
    buildButtons(*inside);
    bar_ = new QProgressBar;
    bar_->setAccessibleName(tr("how far it is"));
    bar_->setTextVisible(false);
    bar_->setFixedHeight(typePixels(8));
    bar_->hide();
    inside->addWidget(bar_);
    column->addWidget(content_);

    connect(fold_, &QPushButton::toggled, this, [this](bool open) {
        unfold(open);
        if (open) {
            keeper().look();
            list_->count() > 0 ? list_->setFocus() : now_->setFocus();
        }
    });
    connect(change_, &QPushButton::clicked, this, &CopiesSection::changeFolder);
    connect(daily_, &QCheckBox::toggled, this, [this](bool on) {
        CopyChoice choice = keeper().choice();
        choice.daily = on;
        keeper().choose(choice);
        say(on ? tr("A copy is kept every day the book has changed.")
               : tr("No copy is kept by itself any more: make one now and then."),
            false);
    });
    connect(list_, &QListWidget::currentRowChanged, this, &CopiesSection::chosenChanged);
    connect(list_, &QListWidget::itemActivated, this, &CopiesSection::restore);
}

void CopiesSection::buildButtons(QVBoxLayout& inside) {
    auto* row = new QHBoxLayout;
    const auto button = [&](const QString& words, const char* name) {
        auto* made = new QPushButton(words);
        made->setObjectName(QLatin1String(name));
        row->addWidget(made);
        return made;
    };
    now_ = button(tr("&Make one now"), "copiesNow");
    verify_ = button(tr("&Verify it"), "copiesVerify");
    verify_->setToolTip(tr("Reads every page and the whole chain of revisions of the chosen copy."));
    verifyAll_ = button(tr("Verif&y all"), "copiesVerifyAll");
    restore_ = button(tr("Rest&ore into a new book…"), "copiesRestore");
    handOn_ = button(tr("A copy to hand o&n…"), "copiesHandOn");
    handOn_->setToolTip(tr("A verified copy for somebody else, set to be read only."));
    row->addStretch();
    inside.addLayout(row);
    connect(now_, &QPushButton::clicked, this, [this] { keeper().keepNow(); });
    connect(verify_, &QPushButton::clicked, this, [this] { verify(false); });
    connect(verifyAll_, &QPushButton::clicked, this, [this] { verify(true); });
    connect(restore_, &QPushButton::clicked, this, &CopiesSection::restore);
    connect(handOn_, &QPushButton::clicked, this, &CopiesSection::askHandOn);
}

} // namespace wickbook::ui
