// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/register_page.h"

#include "ui/register/entry_panel.h"
#include "ui/register/history_panel.h"
#include "ui/register/missing_panel.h"
#include "ui/register/register_filter.h"
#include "ui/register/register_model.h"
#include "ui/register/register_view.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QCheckBox>
#include <QFontMetrics>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

namespace {

constexpr int kSideWidth = 256;

QPushButton* smallButton(const QString& text, const QString& name, const QString& accessible) {
    auto* button = new QPushButton(text);
    button->setObjectName(name);
    button->setAccessibleName(accessible);
    button->setToolTip(accessible);
    return button;
}

} // namespace

RegisterPage::RegisterPage(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    const QLocale words = locale();
    model_ = new RegisterModel(words, this);
    filter_ = new RegisterFilter(this);
    filter_->setSourceModel(model_);
    view_ = new RegisterView;
    view_->setModel(filter_);
    view_->horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    view_->setSortingEnabled(true);
    view_->horizontalHeader()->setSortIndicatorClearable(true);
    // The mark stands at the edge of the page, where the eye runs down, and never scrolls out of sight.
    view_->horizontalHeader()->moveSection(RegisterModel::State, 0);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->setSpacing(space::kGroup);
    column->addWidget(buildTop());
    auto* splitter = new QSplitter(Qt::Horizontal);
    splitter->setChildrenCollapsible(false);
    auto* left = new QWidget;
    auto* leftColumn = new QVBoxLayout(left);
    leftColumn->setContentsMargins(0, 0, 0, 0);
    empty_ = makeLabel({}, TypeSize::Body);
    empty_->setObjectName(QStringLiteral("empty"));
    empty_->setWordWrap(true);
    leftColumn->addWidget(empty_);
    leftColumn->addWidget(view_, 1);
    splitter->addWidget(left);
    splitter->addWidget(buildSide());
    splitter->setStretchFactor(0, 1);
    splitter->setStretchFactor(1, 0);
    splitter->setSizes({900, typePixels(kSideWidth)});
    column->addWidget(splitter, 1);
    setFocusProxy(view_); // who turns to the page stands in its lines at once

    auto* foot = new QHBoxLayout;
    summary_ = makeLabel({});
    summary_->setObjectName(QStringLiteral("summary"));
    message_ = makeLabel({}, TypeSize::Label, false);
    message_->setObjectName(QStringLiteral("message"));
    foot->addWidget(summary_);
    foot->addStretch();
    foot->addWidget(message_);
    column->addLayout(foot);
    auto* keys =
        makeLabel(tr("Enter revise · S sound, D doubtful, E erroneous · M why missing · Delete withdraw · "
                     "Page Up, Page Down turn the month"));
    keys->setWordWrap(true);
    column->addWidget(keys);

    connectView();
    showMonth(date::year_month_day{session_.today()}.year() / date::year_month_day{session_.today()}.month());
}

RegisterPage::~RegisterPage() = default;

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
    jump_->setPlaceholderText(tr("go to 2025-03 or a date"));
    jump_->setAccessibleName(tr("Go to a month or a date"));
    jump_->setMaximumWidth(typePixels(190));
    search_ = new QLineEdit;
    search_->setObjectName(QStringLiteral("search"));
    search_->setPlaceholderText(tr("find in this month"));
    search_->setAccessibleName(tr("Find in this month"));
    search_->setClearButtonEnabled(true);
    search_->setMaximumWidth(typePixels(190));
    onlyQueries_ = new QCheckBox(tr("only &queries"));
    onlyQueries_->setObjectName(QStringLiteral("onlyQueries"));
    undo_ = smallButton(tr("Undo"), QStringLiteral("undo"), tr("Undo (Ctrl+Z)"));
    redo_ = smallButton(tr("Redo"), QStringLiteral("redo"), tr("Redo"));
    auto* copy =
        smallButton(tr("Copy"), QStringLiteral("copy"), tr("Copy the lines shown as a table (Ctrl+C)"));
    row->addWidget(back);
    row->addWidget(heading_);
    row->addWidget(on);
    row->addStretch();
    for (QWidget* widget :
         std::initializer_list<QWidget*>{jump_, search_, onlyQueries_, undo_, redo_, copy}) {
        row->addWidget(widget);
    }
    connect(back, &QPushButton::clicked, this, [this] { step(-1); });
    connect(on, &QPushButton::clicked, this, [this] { step(1); });
    connect(copy, &QPushButton::clicked, this, &RegisterPage::copyTable);
    connect(jump_, &QLineEdit::returnPressed, this, &RegisterPage::goToTyped);
    connect(search_, &QLineEdit::textChanged, this, [this](const QString& text) {
        filter_->setText(text);
        updateSummary();
    });
    connect(search_, &QLineEdit::returnPressed, view_, [this] { view_->setFocus(); });
    connect(onlyQueries_, &QCheckBox::toggled, this, [this](bool only) {
        filter_->setOnlyQueries(only);
        updateSummary();
    });
    connect(undo_, &QPushButton::clicked, &session_.undoStack(), &QUndoStack::undo);
    connect(redo_, &QPushButton::clicked, &session_.undoStack(), &QUndoStack::redo);
    return top;
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

void RegisterPage::connectView() {
    view_->viewport()->installEventFilter(this);
    connect(view_, &RegisterView::reviseAsked, this, &RegisterPage::openEntry);
    connect(view_, &RegisterView::missingAsked, this, &RegisterPage::openMissing);
    connect(view_, &RegisterView::judgeAsked, this, &RegisterPage::judge);
    connect(view_, &RegisterView::withdrawAsked, this, &RegisterPage::withdraw);
    connect(view_, &RegisterView::monthAsked, this, &RegisterPage::step);
    connect(view_, &RegisterView::copyAsked, this, &RegisterPage::copyTable);
    connect(view_, &RegisterView::undoAsked, &session_.undoStack(), &QUndoStack::undo);
    connect(view_, &RegisterView::redoAsked, &session_.undoStack(), &QUndoStack::redo);
    connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &RegisterPage::currentLineChanged);
    connect(&session_, &Session::observationsChanged, this, &RegisterPage::bookChanged);
    connect(&session_, &Session::factsChanged, this, &RegisterPage::bookChanged);
    const auto undoState = [this] {
        undo_->setEnabled(session_.undoStack().canUndo());
        redo_->setEnabled(session_.undoStack().canRedo());
    };
    connect(&session_.undoStack(), &QUndoStack::indexChanged, this, undoState);
    undoState();
    const auto shortcut = [this](const QKeySequence& keys, auto what) {
        auto* made = new QShortcut(keys, this);
        made->setContext(Qt::WidgetWithChildrenShortcut);
        connect(made, &QShortcut::activated, this, what);
    };
    shortcut(Qt::ALT | Qt::Key_Left, [this] { step(-1); });
    shortcut(Qt::ALT | Qt::Key_Right, [this] { step(1); });
    shortcut(QKeySequence::Find, [this] { search_->setFocus(); });
    shortcut(Qt::CTRL | Qt::Key_G, [this] { jump_->setFocus(); });
}

date::year_month RegisterPage::month() const {
    return month_;
}

const report::MonthLine* RegisterPage::currentLine() const {
    const QModelIndex current = view_->currentIndex();
    return current.isValid() ? model_->line(filter_->mapToSource(current).row()) : nullptr;
}

std::optional<record::ObservingHour> RegisterPage::currentHour() const {
    const report::MonthLine* line = currentLine();
    return line == nullptr ? std::nullopt : std::optional{line->hour};
}

void RegisterPage::showMonth(date::year_month month) {
    closeSide();
    month_ = month;
    caret_.reset();
    reload();
}

void RegisterPage::showHour(const record::ObservingHour& hour) {
    const date::year_month_day day{hour.date};
    if (filter_->isFiltering()) {
        search_->clear();
        onlyQueries_->setChecked(false);
    }
    if (stale_ || day.year() / day.month() != month_) {
        showMonth(day.year() / day.month());
    }
    putCaret(hour);
    view_->setFocus();
}

void RegisterPage::putCaret(const record::ObservingHour& hour) {
    int row = model_->rowOf(hour);
    for (int i = 0; row < 0 && i < model_->rowCount(); ++i) {
        row = model_->line(i)->hour.date == hour.date ? i : -1; // the day at least
    }
    const QModelIndex place = filter_->mapFromSource(model_->index(row, RegisterModel::Dry));
    if (place.isValid()) {
        view_->setCurrentIndex(place);
        view_->scrollTo(place, QAbstractItemView::EnsureVisible);
    }
}

void RegisterPage::step(int months) {
    showMonth(month_ + date::months{months});
    view_->setFocus();
}

void RegisterPage::goToTyped() {
    const std::string typed = jump_->text().trimmed().toStdString();
    if (const auto month = record::parseMonth(typed)) {
        showMonth(*month);
    } else if (const auto day = record::parseDate(typed)) {
        showHour({*day, record::HourOfDay{0}});
    } else if (const QDate local = locale().toDate(jump_->text().trimmed(), QLocale::ShortFormat);
               local.isValid()) {
        showHour({fromQDate(local.year() < 1930 && jump_->text().trimmed().size() < 9 ? local.addYears(100)
                                                                                      : local),
                  record::HourOfDay{0}});
    } else {
        say(tr("Write a month as 2025-03 or a date as 2025-03-14."));
        return;
    }
    say({});
    jump_->clear();
    view_->setFocus();
}

void RegisterPage::bookChanged() {
    if (isVisible()) {
        reload();
    } else {
        stale_ = true;
    }
}

bool RegisterPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == view_->viewport() && event->type() == QEvent::Resize) {
        fitNote();
    }
    return QWidget::eventFilter(watched, event);
}

void RegisterPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) {
        reload();
    }
}

void RegisterPage::reload() {
    stale_ = false;
    if (const report::MonthLine* line = currentLine()) {
        const date::year_month_day day{line->hour.date};
        caret_ = day.year() / day.month() == month_ ? std::optional{line->hour} : std::nullopt;
    }
    auto report = session_.monthReport(month_);
    if (!report) {
        say(storeErrorWords(report.error()));
        return;
    }
    const QWidget* focus = focusWidget();
    heading_->setText(monthWords(locale(), month_));
    model_->show(std::move(*report), session_.unit());
    fitColumns();
    const bool nothing = model_->rowCount() == 0;
    view_->setVisible(!nothing);
    empty_->setVisible(nothing || model_->report().readings.empty());
    empty_->setText(nothing
                        ? tr("No hours were promised in this month, and nothing was read.")
                        : tr("Nothing has been written down in %1. Enter writes down a forgotten reading.")
                              .arg(monthWords(locale(), month_)));
    if (caret_) {
        putCaret(*caret_);
    } else if (!nothing) {
        // The newest line that is due: what one comes here for most.
        int row = 0;
        for (int i = 0; i < model_->rowCount(); ++i) {
            row = model_->line(i)->toCome ? row : i;
        }
        putCaret(model_->line(row)->hour);
    }
    if (focus == view_) {
        view_->setFocus();
    }
    currentLineChanged();
    updateSummary();
}

/// As wide as what stands in it, no wider: sixteen columns share the page.
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
    fitNote();
}

/// The note takes what the columns up to the initials leave free, so that a line is seen from its date to
/// its initials; origin and judgement follow to the right.
void RegisterPage::fitNote() {
    int others = 0;
    for (int column = 0; column < RegisterModel::ColumnCount; ++column) {
        if (column != RegisterModel::Note && column != RegisterModel::Origin &&
            column != RegisterModel::Quality) {
            others += view_->columnWidth(column);
        }
    }
    const int origin = view_->columnWidth(RegisterModel::Origin) + view_->columnWidth(RegisterModel::Quality);
    const int left = view_->viewport()->width() - others;
    const int least = typePixels(96);
    const int comfortable = typePixels(180);
    view_->setColumnWidth(RegisterModel::Note,
                          left - origin >= comfortable ? left - origin : std::max(left, least));
}

void RegisterPage::currentLineChanged() {
    if (side_->currentWidget() != history_ && currentLine() != nullptr && isVisible() && view_->hasFocus()) {
        side_->setCurrentWidget(history_); // the caret has left the line being entered
    }
    history_->show(currentLine());
}

void RegisterPage::updateSummary() {
    const report::MonthReport& report = model_->report();
    const climate::HourSummary& all = report.summary.all;
    QStringList parts;
    parts << tr("%1 of %2 hours count").arg(QString::number(all.n), QString::number(all.expected));
    if (all.missing > 0) {
        parts << tr("%1 missing").arg(QString::number(all.missing));
    }
    if (all.setAside > 0) {
        parts << tr("%1 set aside").arg(QString::number(all.setAside));
    }
    if (report.openQueries > 0) {
        parts << tr("%1 to be judged").arg(QString::number(report.openQueries));
    }
    if (filter_->isFiltering()) {
        parts << tr("%1 lines shown").arg(QString::number(filter_->rowCount()));
    }
    if (report.station.facts().invented) {
        parts << inventedWords();
    }
    summary_->setText(parts.join(QStringLiteral(" · ")));
}

void RegisterPage::say(const QString& sentence) {
    message_->setText(sentence);
}

} // namespace wickbook::ui
