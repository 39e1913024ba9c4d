// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/register_page.h"

#include "ui/register/entry_panel.h"
#include "ui/register/find_bar.h"
#include "ui/register/history_panel.h"
#include "ui/register/missing_panel.h"
#include "ui/register/register_filter.h"
#include "ui/register/register_model.h"
#include "ui/register/register_search.h"
#include "ui/register/register_view.h"
#include "ui/register/typed_date.h"
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
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

namespace {

constexpr int kSideWidth = 256;

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
    view_->horizontalHeader()->moveSection(view_->horizontalHeader()->visualIndex(RegisterModel::ReadBack),
                                           1);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->setSpacing(space::kGroup);
    column->addWidget(buildTop());
    find_ = new FindBar;
    column->addWidget(find_);
    search_ = new RegisterSearch(session_, this);
    auto* splitter = new QSplitter(Qt::Horizontal);
    splitter->setObjectName(QStringLiteral("registerHalves"));
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
    summary_->setWordWrap(true); // neither may widen the window
    message_->setWordWrap(true);
    message_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    foot->addWidget(summary_, 3);
    foot->addWidget(message_, 2);
    column->addLayout(foot);
    auto* keys = makeLabel(
        tr("Enter revise · Space read back, P its page · S sound, D doubtful, E erroneous · M why "
           "missing · V move · Delete withdraw · Shift+↓ marks several · F3 find · O order · Page Up, Page "
           "Down turn the month"));
    keys->setWordWrap(true);
    column->addWidget(keys);

    stackIndex_ = session_.undoStack().index();
    connectView();
    connectFind();
    showMonth(date::year_month_day{session_.today()}.year() / date::year_month_day{session_.today()}.month());
}

RegisterPage::~RegisterPage() = default;

void RegisterPage::connectView() {
    view_->viewport()->installEventFilter(this);
    connect(view_, &RegisterView::reviseAsked, this, &RegisterPage::openEntry);
    connect(view_, &RegisterView::missingAsked, this, &RegisterPage::openMissing);
    connect(view_, &RegisterView::judgeAsked, this, &RegisterPage::judge);
    connect(view_, &RegisterView::withdrawAsked, this, &RegisterPage::withdraw);
    connect(view_, &RegisterView::tickAsked, this, [this](bool ticked) { readBack(ticked); });
    connect(view_, &RegisterView::tickClicked, this, [this](bool ticked) { readBack(ticked, false); });
    connect(view_, &RegisterView::paperAsked, this, &RegisterPage::openPaper);
    connect(view_, &RegisterView::moveAsked, this, &RegisterPage::openMove);
    connect(view_, &RegisterView::orderAsked, this, &RegisterPage::orderByColumn);
    connect(view_, &RegisterView::monthAsked, this, &RegisterPage::step);
    connect(view_, &RegisterView::copyAsked, this, &RegisterPage::copyTable);
    connect(view_, &RegisterView::undoAsked, &session_.undoStack(), &QUndoStack::undo);
    connect(view_, &RegisterView::redoAsked, &session_.undoStack(), &QUndoStack::redo);
    connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &RegisterPage::currentLineChanged);
    connect(view_->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &RegisterPage::updateSummary);
    connect(&session_, &Session::observationsChanged, this, &RegisterPage::bookChanged);
    connect(&session_, &Session::factsChanged, this, &RegisterPage::bookChanged);
    connect(&session_, &Session::learnt, this, &RegisterPage::bookChanged);
    const auto undoState = [this] {
        undo_->setEnabled(session_.undoStack().canUndo());
        redo_->setEnabled(session_.undoStack().canRedo());
    };
    connect(&session_.undoStack(), &QUndoStack::indexChanged, this, undoState);
    connect(&session_.undoStack(), &QUndoStack::indexChanged, this, &RegisterPage::tellUndo);
    connect(&session_, &Session::storageFailed, this, [this](const store::StoreError& error) {
        if (isVisible()) {
            say(storeErrorWords(error));
            refused_ = true; // what the stack says next is no news
            QTimer::singleShot(0, this, [this] { refused_ = false; });
        }
    });
    undoState();
    const auto shortcut = [this](const QKeySequence& keys, auto what) {
        auto* made = new QShortcut(keys, this);
        made->setContext(Qt::WidgetWithChildrenShortcut);
        connect(made, &QShortcut::activated, this, what);
    };
    shortcut(Qt::ALT | Qt::Key_Left, [this] { step(-1); });
    shortcut(Qt::ALT | Qt::Key_Right, [this] { step(1); });
    shortcut(QKeySequence::Find, [this] { filterEdit_->setFocus(); });
    shortcut(Qt::CTRL | Qt::SHIFT | Qt::Key_F, [this] { find_->open(); });
    shortcut(Qt::Key_F3, [this] { findOn(true); });
    shortcut(Qt::SHIFT | Qt::Key_F3, [this] { findOn(false); });
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
        filterEdit_->clear();
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
        view_->goTo(place);
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
    } else if (const auto day = typedDate(locale(), jump_->text())) {
        showHour({*day, record::HourOfDay{0}});
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
    const std::set<record::Uuid> marked = markedIds();
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
    markAgain(marked);
    if (focus == view_) {
        view_->setFocus();
    }
    currentLineChanged();
    updateSummary();
}

void RegisterPage::currentLineChanged() {
    if (side_->currentWidget() != history_ && currentLine() != nullptr && isVisible() && view_->hasFocus()) {
        side_->setCurrentWidget(history_); // the caret has left the line being entered
    }
    history_->show(currentLine());
}

/// Undo and redo come from the menu too; what they did is told wherever they came from.
void RegisterPage::tellUndo(int index) {
    const int before = stackIndex_;
    stackIndex_ = index;
    if (!isVisible() || refused_) {
        return;
    }
    const QUndoStack& stack = session_.undoStack();
    if (index < before && index < stack.count()) {
        say(tr("Undone: %1").arg(stack.text(index)));
    } else if (index > before && index > 0) {
        say(stack.text(index - 1)); // a new act says more of itself afterwards
    }
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
    if (model_->knowsPaper()) {
        parts << tr("%1 of %2 read back")
                     .arg(QString::number(model_->readBackCount()), QString::number(report.readings.size()));
    }
    if (const auto marked = view_->selectionModel()->selectedRows().size(); marked > 1) {
        parts << tr("%n lines marked", nullptr, static_cast<int>(marked));
    }
    if (filter_->isFiltering()) {
        const int shown = filter_->rowCount();
        parts << (shown == 1 ? tr("one line shown") : tr("%n lines shown", nullptr, shown));
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
