// SPDX-License-Identifier: GPL-3.0-or-later
// How the register page is laid out: the row above the lines, the menu of what can be done with them, the
// panels at the side, and how wide the columns are.
#include "ui/register/entry_panel.h"
#include "ui/register/find_bar.h"
#include "ui/register/history_panel.h"
#include "ui/register/missing_panel.h"
#include "ui/register/register_filter.h"
#include "ui/register/register_model.h"
#include "ui/register/register_page.h"
#include "ui/register/register_view.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QCheckBox>
#include <QFontMetrics>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>

#include <algorithm>

namespace wickbook::ui {

namespace {

QPushButton* smallButton(const QString& text, const QString& name, const QString& accessible) {
    auto* button = new QPushButton(text);
    button->setObjectName(name);
    button->setAccessibleName(accessible);
    button->setToolTip(accessible);
    return button;
}

} // namespace

QWidget* RegisterPage::buildTop() {
    auto* top = new QWidget;
    auto* row = new QHBoxLayout(top);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kGroup);
    auto* back = smallButton(QStringLiteral("‹"), QStringLiteral("back"), tr("The month before (Page Up)"));
    auto* on = smallButton(QStringLiteral("›"), QStringLiteral("on"), tr("The month after (Page Down)"));
    heading_ = makeHeading({});
    heading_->setObjectName(QStringLiteral("heading"));
    jump_ = new QLineEdit;
    jump_->setObjectName(QStringLiteral("jump"));
    jump_->setPlaceholderText(tr("go to 2025-03 …"));
    jump_->setAccessibleName(tr("Go to a month or a date"));
    jump_->setMaximumWidth(typePixels(170));
    // A field that can't be read is none: rather the page scrolls.
    const auto roomForWords = [](QLineEdit& field) {
        field.setMinimumWidth(field.fontMetrics().horizontalAdvance(field.placeholderText()) +
                              typePixels(20));
    };
    roomForWords(*jump_);
    filterEdit_ = new QLineEdit;
    filterEdit_->setObjectName(QStringLiteral("search"));
    filterEdit_->setPlaceholderText(tr("find in this month"));
    filterEdit_->setAccessibleName(tr("Find in this month"));
    filterEdit_->setClearButtonEnabled(true);
    filterEdit_->setMaximumWidth(typePixels(170));
    roomForWords(*filterEdit_);
    onlyQueries_ = new QCheckBox(tr("only &queries"));
    onlyQueries_->setObjectName(QStringLiteral("onlyQueries"));
    undo_ = smallButton(tr("Undo"), QStringLiteral("undo"), tr("Undo (Ctrl+Z)"));
    redo_ = smallButton(tr("Redo"), QStringLiteral("redo"), tr("Redo"));
    auto* copy =
        smallButton(tr("Copy"), QStringLiteral("copy"), tr("Copy the lines shown as a table (Ctrl+C)"));
    auto* acts = new QPushButton(tr("&Lines"));
    acts->setObjectName(QStringLiteral("acts"));
    acts->setToolTip(tr("What can be done with the lines that are marked"));
    acts->setMenu(buildMenu());
    row->addWidget(back);
    row->addWidget(heading_);
    row->addWidget(on);
    row->addStretch();
    for (QWidget* widget :
         std::initializer_list<QWidget*>{jump_, filterEdit_, onlyQueries_, acts, undo_, redo_, copy}) {
        row->addWidget(widget);
    }
    connect(back, &QPushButton::clicked, this, [this] { step(-1); });
    connect(on, &QPushButton::clicked, this, [this] { step(1); });
    connect(copy, &QPushButton::clicked, this, &RegisterPage::copyTable);
    connect(jump_, &QLineEdit::returnPressed, this, &RegisterPage::goToTyped);
    connect(filterEdit_, &QLineEdit::textChanged, this, [this](const QString& text) {
        filter_->setText(text);
        updateSummary();
    });
    connect(filterEdit_, &QLineEdit::returnPressed, view_, [this] { view_->setFocus(); });
    connect(onlyQueries_, &QCheckBox::toggled, this, [this](bool only) {
        filter_->setOnlyQueries(only);
        updateSummary();
    });
    connect(undo_, &QPushButton::clicked, &session_.undoStack(), &QUndoStack::undo);
    connect(redo_, &QPushButton::clicked, &session_.undoStack(), &QUndoStack::redo);
    return top;
}

/// Every act with the key that does the same, for who comes with a pointer or does not know the keys yet. The
/// keys themselves are the view's: in a menu they would hold for the fields too.
QMenu* RegisterPage::buildMenu() {
    auto* menu = new QMenu(this);
    const auto act = [&](const QString& words, const QString& key, auto what) {
        connect(menu->addAction(words + QLatin1Char('\t') + key), &QAction::triggered, this, what);
    };
    act(tr("&Revise…"), tr("Enter"), [this] { openEntry(); });
    act(tr("Why it is &missing…"), QStringLiteral("M"), [this] { openMissing(); });
    act(tr("With&draw"), tr("Delete"), [this] { withdraw(); });
    menu->addSeparator();
    act(tr("Read &back against the paper"), tr("Space"), [this] { readBack(true); });
    act(tr("&Not read back after all"), tr("Shift+Space"), [this] { readBack(false); });
    act(tr("Book and &page on paper…"), QStringLiteral("P"), [this] { openPaper(); });
    act(tr("Mo&ve elsewhere…"), QStringLiteral("V"), [this] { openMove(); });
    menu->addSeparator();
    act(tr("Judge &sound"), QStringLiteral("S"), [this] { judge(record::Quality::Sound); });
    act(tr("Judge d&oubtful"), QStringLiteral("D"), [this] { judge(record::Quality::Doubtful); });
    act(tr("Judge &erroneous"), QStringLiteral("E"), [this] { judge(record::Quality::Erroneous); });
    menu->addSeparator();
    act(tr("Order by this &column"), QStringLiteral("O"), [this] { orderByColumn(); });
    act(tr("&Find in the whole register…"), tr("Ctrl+Shift+F"), [this] { find_->open(); });
    return menu;
}

QWidget* RegisterPage::buildSide() {
    side_ = new QStackedWidget;
    history_ = new HistoryPanel(session_, locale());
    entry_ = new EntryPanel(session_, locale());
    missing_ = new MissingPanel(locale());
    side_->addWidget(history_);
    side_->addWidget(entry_);
    side_->addWidget(missing_);
    side_->setMinimumWidth(typePixels(240));
    connect(entry_, &EntryPanel::saveAsked, this, &RegisterPage::saveEntry);
    connect(entry_, &EntryPanel::closeAsked, this, &RegisterPage::closeSide);
    connect(missing_, &MissingPanel::saveAsked, this, &RegisterPage::saveMissing);
    connect(missing_, &MissingPanel::closeAsked, this, &RegisterPage::closeSide);
    return side_;
}

/// As wide as what stands in it, no wider: eighteen columns share the page.
void RegisterPage::fitColumns() {
    const QFontMetrics letters(view_->font());
    const int room = typePixels(13);
    for (int column = 0; column < RegisterModel::ColumnCount; ++column) {
        int width =
            letters.horizontalAdvance(model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString());
        for (int row = 0; row < model_->rowCount(); ++row) {
            width = std::max(width, letters.horizontalAdvance(model_->index(row, column).data().toString()));
        }
        view_->setColumnWidth(column, width + room);
    }
    view_->setColumnWidth(RegisterModel::State, typePixels(28)); // the mark alone; its word is in the tip
    view_->setColumnWidth(RegisterModel::ReadBack, typePixels(24));
    fitNote();
}

/// The note takes what the columns up to the initials leave free, so that a line is seen from its date to
/// its initials; origin and judgement follow to the right.
void RegisterPage::fitNote() {
    int others = 0;
    for (int column = 0; column < RegisterModel::ColumnCount; ++column) {
        if (column != RegisterModel::Note && column != RegisterModel::Origin &&
            column != RegisterModel::Quality && column != RegisterModel::Paper) {
            others += view_->columnWidth(column);
        }
    }
    const int origin = view_->columnWidth(RegisterModel::Origin) +
                       view_->columnWidth(RegisterModel::Quality) + view_->columnWidth(RegisterModel::Paper);
    const int left = view_->viewport()->width() - others;
    const int least = typePixels(96);
    const int comfortable = typePixels(180);
    view_->setColumnWidth(RegisterModel::Note,
                          left - origin >= comfortable ? left - origin : std::max(left, least));
}

} // namespace wickbook::ui
