// SPDX-License-Identifier: GPL-3.0-or-later
// The page's widgets, their keys and their columns' widths.
#include "ui/moving/month_edit.h"
#include "ui/oldpage/old_page.h"
#include "ui/oldpage/page_view.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/number_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QTimer>

namespace wickbook::ui {

namespace {

QLineEdit* namedField(QHBoxLayout& row, const QString& label, const QString& spoken, int width) {
    auto* edit = new QLineEdit;
    edit->setAccessibleName(spoken);
    edit->setFixedWidth(typePixels(width));
    edit->setMaxLength(200);
    auto* name = makeLabel(label);
    name->setBuddy(edit);
    row.addWidget(name);
    row.addWidget(edit);
    return edit;
}

} // namespace

void OldPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kGroup);
    column->setSpacing(space::kGroup);
    column->addWidget(buildTop());
    column->addWidget(buildChoices());
    auto* middle = new QHBoxLayout;
    middle->setSpacing(0);
    view_ = new PageView;
    view_->setObjectName(QStringLiteral("pageView"));
    view_->setPage(model_);
    middle->addWidget(view_, 1);
    empty_ = buildEmpty();
    empty_->hide();
    middle->addWidget(empty_, 1);
    end_ = new EndPanel;
    end_->setFixedWidth(typePixels(340));
    end_->hide();
    middle->addWidget(end_);
    column->addLayout(middle, 1);
    words_ = makeLabel({}, TypeSize::Label, false);
    words_->setObjectName(QStringLiteral("lineWords"));
    words_->setWordWrap(true);
    words_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    words_->setFixedHeight(QFontMetrics(words_->font()).lineSpacing() * 3 + 2);
    column->addWidget(words_);
    message_ = makeLabel({}, TypeSize::Body, false);
    message_->setObjectName(QStringLiteral("pageMessage"));
    message_->setWordWrap(true);
    message_->hide();
    retry_ = new QPushButton(tr("&Try again"));
    retry_->setObjectName(QStringLiteral("tryAgain"));
    retry_->setProperty("primary", true);
    retry_->hide();
    auto* told = new QHBoxLayout;
    told->addWidget(message_, 1);
    told->addWidget(retry_, 0, Qt::AlignTop);
    column->addLayout(told);
    column->addWidget(buildReasonBar());
    column->addWidget(buildFoot());
    setFocusProxy(view_);
    addKeys();

    connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, &OldPage::currentChanged);
    connect(view_, &PageView::resized, this, &OldPage::fitColumns);
    connect(view_, &PageView::refused, this, [this](const QString& sentence) {
        say(sentence, true);
        if (sentence.isEmpty()) {
            showWords();
        }
    });
    connect(view_, &PageView::endReached, this, [this] {
        leaveLine(model_->lineAt(view_->currentIndex()));
        showEnd();
    });
    connect(view_, &PageView::left, this, [this] {
        if (const int line = model_->lineAt(view_->currentIndex()); line >= 0 && !askedFor_) {
            leaveLine(line);
        }
    });
    connect(view_, &PageView::leaveAsked, this, &OldPage::closeAsked);
    connect(view_, &PageView::undoAsked, this, [this] { session_.undoStack().undo(); });
    connect(view_, &PageView::redoAsked, this, [this] { session_.undoStack().redo(); });
    connect(view_->horizontalHeader(), &QHeaderView::sectionMoved, this,
            [this] { QTimer::singleShot(0, this, &OldPage::takeHeadOrder); });
    connect(retry_, &QPushButton::clicked, this, &OldPage::tryAgain);
    connect(end_, &EndPanel::causeTaken, this, &OldPage::takeCause);
    connect(end_, &EndPanel::differenceSettled, this, &OldPage::settle);
    connect(end_, &EndPanel::judged, this, &OldPage::judgeLine);
    connect(end_, &EndPanel::lineAsked, this, &OldPage::goToLine);
    connect(end_, &EndPanel::closeAsked, this, [this] {
        closeEnd();
        view_->setFocus();
    });
}

QWidget* OldPage::buildTop() {
    auto* top = new QWidget;
    auto* row = new QHBoxLayout(top);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kGroup);
    heading_ = makeHeading(tr("From an old page"));
    row->addWidget(heading_);
    row->addSpacing(space::kGroup);
    auto* before = new QPushButton(QStringLiteral("‹"));
    before->setAccessibleName(tr("Month before"));
    before->setToolTip(tr("Month before (Ctrl+Page up)"));
    auto* after = new QPushButton(QStringLiteral("›"));
    after->setAccessibleName(tr("Month after"));
    after->setToolTip(tr("Month after (Ctrl+Page down)"));
    for (QPushButton* button : {before, after}) {
        button->setProperty("quiet", true);
    }
    monthEdit_ = new MonthEdit;
    monthEdit_->setObjectName(QStringLiteral("pageMonth"));
    monthEdit_->setAccessibleName(tr("Month of the page"));
    row->addWidget(before);
    row->addWidget(monthEdit_);
    row->addWidget(after);
    row->addStretch();
    paperBook_ = namedField(*row, tr("Paper &book"), tr("Paper book the page is in"), 120);
    paperBook_->setObjectName(QStringLiteral("paperBook"));
    paperBook_->setText(habits_.paperBook);
    paperPage_ = namedField(*row, tr("Pa&ge"), tr("Page of the paper book"), 56);
    paperPage_->setObjectName(QStringLiteral("paperPage"));
    readBy_ = namedField(*row, tr("Read b&y"), tr("Initials of who read, as the page has them"), 56);
    readBy_->setObjectName(QStringLiteral("readBy"));
    readBy_->setText(habits_.readBy);
    day_ = namedField(*row, tr("Go to &day"), tr("Go to the day"), 48);
    day_->setObjectName(QStringLiteral("goToDay"));
    day_->setToolTip(tr("Ctrl+G, the day, Enter"));
    connect(before, &QPushButton::clicked, this, [this] { stepMonth(-1); });
    connect(after, &QPushButton::clicked, this, [this] { stepMonth(1); });
    connect(monthEdit_, &MonthEdit::dateChanged, this, &OldPage::chooseMonth);
    connect(day_, &QLineEdit::returnPressed, this, &OldPage::goToDay);
    for (QLineEdit* edit : {paperBook_, paperPage_, readBy_}) {
        connect(edit, &QLineEdit::returnPressed, this, &OldPage::focusPage);
    }
    return top;
}

QWidget* OldPage::buildChoices() {
    auto* choices = new QWidget;
    auto* row = new QHBoxLayout(choices);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kBetween);
    const QLocale locale;
    //: %1 is 23.4, %2 is 0.6, with the locale's mark
    withoutPoint_ = new QCheckBox(tr("&Without the point: 234 is %1, 6 is %2, −6 is −%2")
                                      .arg(readWords(locale, {234, 1}), readWords(locale, {6, 1})));
    withoutPoint_->setObjectName(QStringLiteral("withoutPoint"));
    withoutPoint_->setToolTip(tr("For the thermometers only; a point or comma that is typed always counts"));
    withoutPoint_->setChecked(habits_.withoutPoint);
    row->addWidget(withoutPoint_);
    direction_ = new QComboBox;
    direction_->setObjectName(QStringLiteral("direction"));
    direction_->setAccessibleName(tr("Where Enter goes"));
    direction_->addItem(tr("Enter goes along the line"));
    direction_->addItem(tr("Enter goes down the column"));
    direction_->setCurrentIndex(habits_.downTheColumn ? 1 : 0);
    row->addWidget(direction_);
    hours_ = new QComboBox;
    hours_->setObjectName(QStringLiteral("hoursLayout"));
    hours_->setAccessibleName(tr("How the page has its hours"));
    hours_->addItem(tr("hours under each other"));
    hours_->addItem(tr("hours side by side"));
    hours_->setCurrentIndex(habits_.hoursAbreast ? 1 : 0);
    row->addWidget(hours_);
    notesAtEnd_ = new QCheckBox(tr("&Notes at the page's end"));
    notesAtEnd_->setObjectName(QStringLiteral("notesAtEnd"));
    notesAtEnd_->setChecked(habits_.notesAtEnd);
    row->addWidget(notesAtEnd_);
    row->addStretch();
    auto* columns = new QPushButton(tr("&Columns…"));
    columns->setObjectName(QStringLiteral("columnsButton"));
    row->addWidget(columns);
    connect(columns, &QPushButton::clicked, this, &OldPage::chooseColumns);
    const auto changed = [this] {
        PageHabits habits = habits_;
        habits.withoutPoint = withoutPoint_->isChecked();
        habits.downTheColumn = direction_->currentIndex() == 1;
        habits.hoursAbreast = hours_->currentIndex() == 1;
        habits.notesAtEnd = notesAtEnd_->isChecked();
        applyHabits(habits);
    };
    connect(withoutPoint_, &QCheckBox::toggled, this, changed);
    connect(notesAtEnd_, &QCheckBox::toggled, this, changed);
    connect(direction_, &QComboBox::currentIndexChanged, this, changed);
    connect(hours_, &QComboBox::currentIndexChanged, this, changed);
    return choices;
}

QWidget* OldPage::buildReasonBar() {
    reasonBar_ = new QFrame;
    reasonBar_->setProperty("query", true);
    auto* row = new QHBoxLayout(reasonBar_);
    row->setContentsMargins(space::kGroup, space::kStep, space::kGroup, space::kStep);
    reasonEdit_ = new QLineEdit;
    reasonEdit_->setObjectName(QStringLiteral("pageReason"));
    reasonEdit_->setAccessibleName(tr("Why lines of this page change that were in the book"));
    auto* label = makeLabel(tr("Why it chan&ges"), TypeSize::Label, false);
    label->setBuddy(reasonEdit_);
    row->addWidget(label);
    row->addWidget(reasonEdit_, 1);
    auto* keep = new QPushButton(tr("Keep the change"));
    auto* leave = new QPushButton(tr("Leave the book as it is"));
    row->addWidget(keep);
    row->addWidget(leave);
    connect(reasonEdit_, &QLineEdit::returnPressed, this, &OldPage::giveReason);
    connect(keep, &QPushButton::clicked, this, &OldPage::giveReason);
    connect(leave, &QPushButton::clicked, this, &OldPage::dropReason);
    auto* escape = new QShortcut(QKeySequence(Qt::Key_Escape), reasonBar_);
    escape->setContext(Qt::WidgetWithChildrenShortcut);
    connect(escape, &QShortcut::activated, this, &OldPage::dropReason);
    reasonBar_->hide();
    return reasonBar_;
}

QWidget* OldPage::buildFoot() {
    auto* foot = new QWidget;
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kGroup);
    auto* keys =
        makeLabel(tr("m and a letter: missing (%1). \" repeats what stands above. w or i after the wet "
                     "bulb: water or ice.")
                      .arg(missingKeysWords()));
    keys->setWordWrap(true);
    keys->setObjectName(QStringLiteral("pageKeys"));
    row->addWidget(keys, 1);
    auto* end = new QPushButton(tr("Page's &end"));
    end->setObjectName(QStringLiteral("pageEnd"));
    end->setToolTip(tr("Ctrl+E"));
    readAgain_ = new QPushButton(tr("Type it &again"));
    readAgain_->setObjectName(QStringLiteral("typeAgain"));
    readAgain_->setToolTip(
        tr("Type the page a second time without seeing the first: what is alike is marked as "
           "read back, what is not is shown"));
    readAgain_->setCheckable(true);
    move_ = new QPushButton(tr("Another &month…"));
    move_->setObjectName(QStringLiteral("otherMonth"));
    move_->setToolTip(tr("These lines belong to another month"));
    auto* close = new QPushButton(tr("Back to Observe"));
    close->setObjectName(QStringLiteral("closePage"));
    for (QPushButton* button : {end, readAgain_, move_, close}) {
        row->addWidget(button);
    }
    connect(end, &QPushButton::clicked, this, &OldPage::showEnd);
    connect(readAgain_, &QPushButton::toggled, this, &OldPage::setReadingBack);
    connect(move_, &QPushButton::clicked, this, &OldPage::openMove);
    connect(close, &QPushButton::clicked, this, &OldPage::closeAsked);
    return foot;
}

QWidget* OldPage::buildEmpty() {
    auto* empty = new QWidget;
    auto* column = new QVBoxLayout(empty);
    column->setContentsMargins(0, space::kEdge, 0, 0);
    emptyWords_ = makeLabel({}, TypeSize::Body, false);
    emptyWords_->setObjectName(QStringLiteral("pageEmpty"));
    emptyWords_->setWordWrap(true);
    column->addWidget(emptyWords_);
    auto* row = new QHBoxLayout;
    emptyTurn_ = new QPushButton;
    emptyTurn_->setObjectName(QStringLiteral("turnToFirst"));
    auto* station = new QPushButton(tr("Open the &Station page"));
    station->setObjectName(QStringLiteral("openStation"));
    row->addWidget(emptyTurn_);
    row->addWidget(station);
    row->addStretch();
    column->addLayout(row);
    column->addStretch();
    connect(emptyTurn_, &QPushButton::clicked, this, [this] {
        monthEdit_->setDate(emptyTurn_->property("month").toDate());
        focusPage();
    });
    connect(station, &QPushButton::clicked, this, &OldPage::stationAsked);
    return empty;
}

void OldPage::addKeys() {
    const auto key = [this](const QKeySequence& keys, auto action) {
        auto* shortcut = new QShortcut(keys, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, action);
    };
    key(Qt::CTRL | Qt::Key_G, [this] {
        if (view_->takeOpenCell()) {
            day_->setFocus(Qt::ShortcutFocusReason);
            day_->selectAll();
        }
    });
    key(Qt::CTRL | Qt::Key_E, [this] { showEnd(); });
    key(Qt::CTRL | Qt::Key_PageUp, [this] { stepMonth(-1); });
    key(Qt::CTRL | Qt::Key_PageDown, [this] { stepMonth(1); });
    key(Qt::CTRL | Qt::SHIFT | Qt::Key_Left, [this] { movePenColumn(isRightToLeft() ? 1 : -1); });
    key(Qt::CTRL | Qt::SHIFT | Qt::Key_Right, [this] { movePenColumn(isRightToLeft() ? -1 : 1); });
    for (int cause = 0; cause < 3; ++cause) {
        key(Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + cause), [this, cause] { takeCauseHere(cause); });
    }
}

void OldPage::fitColumns() {
    const QFontMetrics metrics(view_->font());
    const int digit = metrics.horizontalAdvance(QLatin1Char('0'));
    int taken = 0;
    int note = -1;
    for (int section = 0; section < model_->columnCount(); ++section) {
        const PageModel::Column& column = model_->columns()[static_cast<std::size_t>(section)];
        int width = digit * 9;
        switch (column.kind) {
        case PageModel::ColumnKind::Date:
            width = digit * 9;
            break;
        case PageModel::ColumnKind::Hour:
            width = digit * 8;
            break;
        case PageModel::ColumnKind::Humidity:
        case PageModel::ColumnKind::DewPoint:
            width = digit * 8;
            break;
        case PageModel::ColumnKind::Mark:
            width = typePixels(34);
            break;
        case PageModel::ColumnKind::Field:
            width = column.field == PageField::Note      ? digit * 16
                    : column.field == PageField::Weather ? digit * (habits_.hoursAbreast ? 13 : 18)
                    : column.field == PageField::Wind    ? digit * 7
                                                         : digit * 10;
            break;
        }
        view_->setColumnWidth(section, width);
        taken += width;
        if (column.kind == PageModel::ColumnKind::Field && column.field == PageField::Note) {
            note = section;
        }
    }
    // Hours under each other: the note takes what the other columns leave.
    if (note >= 0 && !habits_.hoursAbreast) {
        const int left = view_->viewport()->width() - (taken - view_->columnWidth(note));
        view_->setColumnWidth(note, std::clamp(left, digit * 12, digit * 70));
    }
}

/// The heads were dragged: the order they stand in now is the page's.
void OldPage::takeHeadOrder() {
    QHeaderView& head = *view_->horizontalHeader();
    std::vector<PageField> order;
    for (int visual = 0; visual < head.count(); ++visual) {
        const PageModel::Column& column =
            model_->columns()[static_cast<std::size_t>(head.logicalIndex(visual))];
        const bool again = std::find(order.begin(), order.end(), column.field) != order.end();
        if (column.kind == PageModel::ColumnKind::Field && !again) {
            order.push_back(column.field);
        }
    }
    {
        const QSignalBlocker quiet(head);
        for (int section = 0; section < head.count(); ++section) {
            head.moveSection(head.visualIndex(section), section);
        }
    }
    PageHabits habits = habits_;
    for (int place = 0; place < static_cast<int>(order.size()); ++place) {
        habits.moveColumn(order[static_cast<std::size_t>(place)], place);
    }
    applyHabits(habits);
    head.viewport()->update();
}

} // namespace wickbook::ui
