// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/oldpage/end_panel.h"

#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

EndPanel::EndPanel(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kBetween, 0, 0, 0);
    column->setSpacing(space::kGroup);
    heading_ = makeLabel({}, TypeSize::Body, false);
    heading_->setFont(typeFont(TypeSize::Body, true));
    heading_->setWordWrap(true);
    heading_->setObjectName(QStringLiteral("endHeading"));
    column->addWidget(heading_);
    summary_ = makeLabel({});
    summary_->setWordWrap(true);
    summary_->setObjectName(QStringLiteral("endSummary"));
    column->addWidget(summary_);
    list_ = new QListWidget;
    list_->setObjectName(QStringLiteral("endQueries"));
    list_->setAccessibleName(tr("Queries of this page"));
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->installEventFilter(this);
    column->addWidget(list_);
    auto* inside = new QWidget;
    noteColumn_ = new QVBoxLayout(inside);
    noteColumn_->setContentsMargins(0, 0, 0, 0);
    noteColumn_->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(inside);
    inside->setAutoFillBackground(false);
    scroll->viewport()->setAutoFillBackground(false);
    column->addWidget(scroll, 1);
    keys_ = makeLabel({});
    keys_->setWordWrap(true);
    column->addWidget(keys_);
    connect(list_, &QListWidget::currentRowChanged, this, [this] {
        asking_.reset();
        showNote();
    });
    connect(list_, &QListWidget::itemDoubleClicked, this, [this] {
        if (const EndQuery* query = current()) {
            emit lineAsked(query->line, query->field);
        }
    });
}

void EndPanel::show(std::vector<EndQuery> queries, const QString& summary) {
    const int row = std::max(0, list_->currentRow());
    queries_ = std::move(queries);
    asking_.reset();
    const auto count = static_cast<int>(queries_.size());
    heading_->setText(count == 0   ? tr("The page's end: no queries")
                      : count == 1 ? tr("The page's end: one query")
                                   : tr("The page's end: %n queries", nullptr, count));
    summary_->setText(summary);
    summary_->setVisible(!summary.isEmpty());
    {
        const QSignalBlocker quiet(list_);
        list_->clear();
        for (const EndQuery& query : queries_) {
            list_->addItem(QStringLiteral("%1: %2").arg(query.head, query.note.title));
        }
        list_->setCurrentRow(std::min(row, count - 1));
    }
    list_->setVisible(count > 0);
    constexpr int kMostRows = 6; // the note below needs the rest
    list_->setFixedHeight(list_->sizeHintForRow(0) * std::clamp(count, 1, kMostRows) + 4);
    showNote();
    setVisible(true);
}

const EndQuery* EndPanel::current() const {
    const auto row = static_cast<std::size_t>(list_->currentRow());
    return list_->currentRow() >= 0 && row < queries_.size() ? &queries_[row] : nullptr;
}

void EndPanel::focusFirst() {
    list_->setCurrentRow(queries_.empty() ? -1 : 0);
    list_->setFocus(Qt::OtherFocusReason);
}

bool EndPanel::focusLine(int line) {
    const auto found = std::find_if(queries_.begin(), queries_.end(),
                                    [line](const EndQuery& query) { return query.line == line; });
    if (found == queries_.end()) {
        return false;
    }
    list_->setCurrentRow(static_cast<int>(found - queries_.begin()));
    list_->setFocus(Qt::OtherFocusReason);
    return true;
}

void EndPanel::showNote() {
    if (note_ != nullptr) { // deleted later: it may be in the middle of telling what was chosen
        note_->hide();
        noteColumn_->removeWidget(note_);
        note_->deleteLater();
        note_ = nullptr;
    }
    const EndQuery* query = current();
    if (query == nullptr) {
        keys_->setText(tr("Esc goes back to the page."));
        return;
    }
    NoteText text = query->note;
    if (asking_) {
        text = {};
        text.title = tr("What does the paper say?");
        text.message = query->note.causes[*asking_].words;
        text.causes = {{tr("the paper says so: a slip of these keys"), {}},
                       {tr("the paper says what was typed: a slip at the time, corrected now"), {}},
                       {tr("neither: back to the note"), {}}};
    }
    note_ = new MarginalNote(text);
    connect(note_, &MarginalNote::causeTaken, this, &EndPanel::answer);
    noteColumn_->insertWidget(0, note_);
    note_->show();
    const QString numbers =
        text.causes.empty() ? QString{} : tr("1 to %1 answer. ").arg(std::ssize(text.causes));
    keys_->setText(numbers +
                   (query->kind == EndQuery::Kind::Finding
                        ? tr("S sound, D doubtful, E erroneous. Enter goes to the line, Esc back to "
                             "the page.")
                        : tr("Enter goes to the line, Esc back to the page.")));
}

void EndPanel::answer(int index) {
    const EndQuery* query = current();
    const auto place = static_cast<std::size_t>(index);
    if (query == nullptr || index < 0) {
        return;
    }
    const EndQuery chosen = *query; // what follows may show other queries
    if (chosen.kind == EndQuery::Kind::Differs) {
        if (index < 2) {
            emit differenceSettled(chosen.line, chosen.field, index == 1);
        }
        return;
    }
    if (!asking_) {
        if (place < chosen.causes.size() && place < chosen.note.causes.size()) {
            asking_ = place;
            showNote();
        }
        return;
    }
    const std::size_t cause = *asking_;
    asking_.reset();
    if (index < 2) {
        emit causeTaken(chosen.line, chosen.causes[cause], chosen.note.causes[cause].words, index == 0);
    } else {
        showNote();
    }
}

bool EndPanel::eventFilter(QObject* watched, QEvent* event) {
    if (watched != list_ || event->type() != QEvent::KeyPress) {
        return QWidget::eventFilter(watched, event);
    }
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Escape) {
        if (asking_) {
            asking_.reset();
            showNote();
        } else {
            emit closeAsked();
        }
        return true;
    }
    const EndQuery* query = current();
    if (query == nullptr || (key->modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier) {
        return false;
    }
    const bool finding = query->kind == EndQuery::Kind::Finding;
    switch (key->key()) {
    case Qt::Key_1:
    case Qt::Key_2:
    case Qt::Key_3:
        answer(key->key() - Qt::Key_1);
        return true;
    case Qt::Key_S:
    case Qt::Key_D:
    case Qt::Key_E:
        if (finding) {
            emit judged(query->line, key->key() == Qt::Key_S   ? record::Quality::Sound
                                     : key->key() == Qt::Key_D ? record::Quality::Doubtful
                                                               : record::Quality::Erroneous);
        }
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        emit lineAsked(query->line, query->field);
        return true;
    default:
        return false;
    }
}

} // namespace wickbook::ui
