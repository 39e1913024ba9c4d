// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/queries_panel.h"

#include "ui/commands/revise_observation.h"
#include "ui/month/queries_model.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

namespace {
constexpr int kLeastHeightOfQueries = 160; ///< a line, its explanation, and the keys
} // namespace

QueriesPanel::QueriesPanel(Session& session, QLocale locale, QWidget* parent)
    : QWidget(parent), session_(session), locale_(locale) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kStep);
    heading_ = makeLabel({}, TypeSize::Body, false);
    heading_->setFont(typeFont(TypeSize::Body, true));
    heading_->setObjectName(QStringLiteral("queriesHeading"));
    heading_->setWordWrap(true);
    column->addWidget(heading_);
    model_ = new QueriesModel(locale, this);
    view_ = new QTableView;
    view_->setObjectName(QStringLiteral("queriesView"));
    view_->setModel(model_);
    view_->setAccessibleName(tr("Queries to settle"));
    view_->setSelectionBehavior(QAbstractItemView::SelectRows);
    view_->setSelectionMode(QAbstractItemView::SingleSelection);
    view_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view_->setShowGrid(false);
    view_->setTabKeyNavigation(false);
    view_->setWordWrap(false);
    view_->verticalHeader()->hide();
    view_->verticalHeader()->setDefaultSectionSize(typePixels(26));
    view_->horizontalHeader()->setStretchLastSection(true);
    view_->horizontalHeader()->setHighlightSections(false);
    view_->installEventFilter(this);
    column->addWidget(view_, 100);
    explained_ = makeLabel({}, TypeSize::Label, false);
    explained_->setObjectName(QStringLiteral("explained"));
    explained_->setWordWrap(true);
    explained_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    // With large letters on a small screen it scrolls rather than lose its end.
    auto* room = new QScrollArea;
    room->setWidgetResizable(true);
    room->setFocusPolicy(Qt::NoFocus);
    room->setWidget(explained_);
    room->viewport()->setAutoFillBackground(false);
    explained_->setAutoFillBackground(false);
    column->addWidget(room);
    keys_ = makeLabel(tr("S sound, D doubtful, E erroneous, Enter opens the line"));
    keys_->setWordWrap(true);
    column->addWidget(keys_);
    setMinimumHeight(typePixels(kLeastHeightOfQueries));
    column->addStretch(1); // without queries the sentence stays at the top
    connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &QueriesPanel::explain);
    connect(view_, &QTableView::doubleClicked, this,
            [this](const QModelIndex& index) { emit openAsked(model_->hour(index.row())); });
}

void QueriesPanel::show(const report::MonthReport& report) {
    const int row = std::max(0, view_->currentIndex().row());
    model_->show(report, session_.unit());
    const int open = model_->rowCount();
    heading_->setText(open == 0   ? (report.readings.empty() ? QString{} : tr("No queries to settle"))
                      : open == 1 ? tr("One query to settle")
                                  : tr("%n queries to settle", nullptr, open));
    for (QWidget* part : std::initializer_list<QWidget*>{view_, explained_, keys_}) {
        part->setVisible(open > 0);
    }
    if (open > 0) {
        view_->resizeColumnsToContents();
        for (int column = 0; column + 1 < model_->columnCount(); ++column) {
            const QString head = model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
            const int needs = view_->horizontalHeader()->fontMetrics().horizontalAdvance(head);
            view_->setColumnWidth(column, std::max(view_->columnWidth(column), needs + typePixels(16)));
        }
        view_->setCurrentIndex(model_->index(std::min(row, open - 1), 0));
    }
    explain();
}

void QueriesPanel::explain() {
    explained_->setText(model_->explained(view_->currentIndex().row()));
}

void QueriesPanel::judge(record::Quality quality) {
    const checks::CheckedReading* checked = model_->query(view_->currentIndex().row());
    if (checked == nullptr) {
        return;
    }
    if (const QString readOnly = session_.readOnlySentence(); !readOnly.isEmpty()) {
        emit said(readOnly);
        return;
    }
    const record::StoredObservation before = checked->reading.stored;
    const QString when = hourAndDateWords(locale_, model_->hour(view_->currentIndex().row()));
    record::Observation after = before.values;
    after.quality = quality;
    const QString judged = tr("judged %1").arg(qualityWords(quality));
    const auto done = ReviseObservation::perform(session_, before, after,
                                                 {session_.observer().toStdString(), judged.toStdString()},
                                                 tr("judged %1: %2").arg(qualityWords(quality), when));
    emit said(done ? tr("%1 is judged %2 (Ctrl+Z undoes it).").arg(when, qualityWords(quality))
                   : storeErrorWords(done.error()));
}

bool QueriesPanel::eventFilter(QObject* watched, QEvent* event) {
    if (watched != view_ || event->type() != QEvent::KeyPress) {
        return QWidget::eventFilter(watched, event);
    }
    auto* key = static_cast<QKeyEvent*>(event);
    if (key->matches(QKeySequence::Undo)) {
        session_.undoStack().undo();
        return true;
    }
    if (key->matches(QKeySequence::Redo)) {
        session_.undoStack().redo();
        return true;
    }
    if ((key->modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier) {
        return false;
    }
    switch (key->key()) {
    case Qt::Key_S:
        judge(record::Quality::Sound);
        return true;
    case Qt::Key_D:
        judge(record::Quality::Doubtful);
        return true;
    case Qt::Key_E:
        judge(record::Quality::Erroneous);
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (view_->currentIndex().isValid()) {
            emit openAsked(model_->hour(view_->currentIndex().row()));
        }
        return true;
    default:
        return false;
    }
}

} // namespace wickbook::ui
