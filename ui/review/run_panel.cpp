// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/review/run_panel.h"

#include "ui/review/review_delegates.h"
#include "ui/review/review_words.h"
#include "ui/style/scrolled_column.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

RunPanel::RunPanel(QLocale locale, QWidget* parent) : QWidget(parent), locale_(std::move(locale)) {
    build();
}

void RunPanel::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kBetween, 0, 0, 0);
    column->setSpacing(space::kGroup);
    heading_ = makeLabel({}, TypeSize::Body, false);
    heading_->setFont(typeFont(TypeSize::Body, true));
    heading_->setObjectName(QStringLiteral("runHeading"));
    heading_->setWordWrap(true);
    column->addWidget(heading_);

    lines_ = new LinesModel(locale_, this);
    table_ = new QTableView;
    table_->setObjectName(QStringLiteral("readings"));
    table_->setAccessibleName(tr("Readings of this group, with their neighbours"));
    table_->setModel(lines_);
    table_->setItemDelegate(new ReviewLineDelegate(table_));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setShowGrid(false);
    table_->setWordWrap(false);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(typePixels(26));
    table_->horizontalHeader()->setHighlightSections(false);
    table_->horizontalHeader()->setStretchLastSection(true);
    column->addWidget(table_);

    const ScrolledColumn notes = makeScrolledColumn(tr("What the checks say"), space::kGroup);
    notes.area->setObjectName(QStringLiteral("notes"));
    notesColumn_ = notes.column;
    column->addWidget(notes.area, 1);
    column->addWidget(buildActions());

    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &RunPanel::explain);
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this, &RunPanel::updateScope);
}

QWidget* RunPanel::buildActions() {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kStep);
    auto* row = new QHBoxLayout;
    auto* label = makeLabel(tr("&Why"));
    why_ = new QLineEdit;
    why_->setObjectName(QStringLiteral("why"));
    why_->setAccessibleName(tr("Why, kept with each judgement"));
    why_->setPlaceholderText(tr("kept with each judgement, for example: fog every morning that week"));
    label->setBuddy(why_);
    row->addWidget(label);
    row->addWidget(why_, 1);
    column->addLayout(row);

    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(space::kGroup);
    scope_ = makeLabel({}, TypeSize::Label, false);
    scope_->setObjectName(QStringLiteral("scope"));
    buttons->addWidget(scope_);
    buttons->addStretch();
    struct Judgement {
        QString words, name;
        record::Quality quality;
    };
    for (const Judgement& one :
         {Judgement{tr("Sound  S"), QStringLiteral("sound"), record::Quality::Sound},
          Judgement{tr("Doubtful  D"), QStringLiteral("doubtful"), record::Quality::Doubtful},
          Judgement{tr("Erroneous  E"), QStringLiteral("erroneous"), record::Quality::Erroneous}}) {
        auto* button = new QPushButton(one.words);
        button->setObjectName(one.name);
        button->setAccessibleName(tr("Judge %1").arg(one.words.section(QLatin1Char(' '), 0, 0).toLower()));
        connect(button, &QPushButton::clicked, this,
                [this, quality = one.quality] { emit judgeAsked(quality); });
        buttons->addWidget(button);
    }
    column->addLayout(buttons);
    return box;
}

void RunPanel::show(const Run* run, units::TemperatureUnit unit) {
    unit_ = unit;
    whole_ = whole_ || !table_->hasFocus();
    several_ = run != nullptr && run->found.asked > 1;
    lines_->show(run);
    heading_->setText(run == nullptr ? QString{} : runWords(locale_, run->found, run->open, unit));
    for (int column = 0; column < LinesModel::Note; ++column) {
        table_->resizeColumnToContents(column);
        table_->setColumnWidth(column, table_->columnWidth(column) + space::kGroup);
    }
    table_->setColumnWidth(LinesModel::Mark, typePixels(30));
    // As tall as what stands in it, up to a page's worth: the notes take the rest.
    constexpr int kMostRows = 8;
    const int frame = 2 * table_->frameWidth() + space::kStep;
    table_->setFixedHeight(table_->horizontalHeader()->sizeHint().height() + frame +
                           std::clamp(lines_->rowCount(), 3, kMostRows) *
                               table_->verticalHeader()->defaultSectionSize());
    if (const int row = lines_->firstOpen(); row >= 0) {
        table_->selectionModel()->setCurrentIndex(lines_->index(row, LinesModel::Dry),
                                                  QItemSelectionModel::NoUpdate);
        table_->scrollTo(
            lines_->index(std::max(0, row - static_cast<int>(desk::kReviewNeighbours)), LinesModel::Dry),
            QAbstractItemView::PositionAtTop);
    }
    if (!whole_) {
        chooseCurrent();
    }
    explain();
    updateScope();
}

const RunLine* RunPanel::current() const {
    const RunLine* line = lines_->line(table_->currentIndex().row());
    return line != nullptr && line->isOpen() ? line : lines_->line(lines_->firstOpen());
}

std::vector<record::StoredObservation> RunPanel::readings() const {
    std::vector<record::StoredObservation> readings;
    for (int row = 0; row < lines_->rowCount(); ++row) {
        const RunLine* line = lines_->line(row);
        if (line->isOpen() && (whole_ || table_->selectionModel()->isRowSelected(row, {}))) {
            readings.push_back(line->checked.reading.stored);
        }
    }
    return readings;
}

QString RunPanel::why() const {
    return why_->text().trimmed();
}

void RunPanel::clearWhy() {
    why_->clear();
}

void RunPanel::focusWhy() {
    why_->setFocus(Qt::OtherFocusReason);
}

void RunPanel::chooseAll() {
    whole_ = true;
    table_->clearSelection();
    updateScope();
}

void RunPanel::chooseCurrent() {
    whole_ = false;
    if (!table_->selectionModel()->hasSelection() && table_->currentIndex().isValid()) {
        table_->selectionModel()->select(table_->currentIndex(),
                                         QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    }
    updateScope();
}

bool RunPanel::stopAsking() {
    if (!asking_) {
        return false;
    }
    explain();
    table_->setFocus(Qt::OtherFocusReason);
    return true;
}

void RunPanel::updateScope() {
    const std::size_t count = readings().size();
    scope_->setText(!whole_      ? count == 0 ? tr("No reading is chosen.")
                                              : tr("Judge the %n chosen:", nullptr, static_cast<int>(count))
                         : count == 1 ? tr("Judge this reading:")
                                 : tr("Judge all %n:", nullptr, static_cast<int>(count)));
}

void RunPanel::clearNotes() {
    // Deleted later: a note may be in the middle of telling which cause was taken.
    while (QLayoutItem* item = notesColumn_->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
    notes_.clear();
    asking_ = false;
}

MarginalNote* RunPanel::addNote(const NoteText& text, const QString& last) {
    auto* note = new MarginalNote(text, last);
    notes_.push_back(note);
    notesColumn_->addWidget(note);
    note->show();
    return note;
}

void RunPanel::explain() {
    clearNotes();
    const RunLine* line = current();
    if (line == nullptr) {
        return;
    }
    const QString when =
        QStringLiteral("%1, %2").arg(spanWords(locale_, record::filedDate(line->checked.reading.values()),
                                               record::filedDate(line->checked.reading.values())),
                                     timeOfWords(line->checked.reading.values()));
    if (several_) {
        notesColumn_->addWidget(makeLabel(when));
    }
    for (const checks::SpokenNote& spoken : checks::spokenNotes(line->checked.findings)) {
        MarginalNote* note = addNote(noteText(locale_, spoken, unit_), {});
        connect(note, &MarginalNote::causeTaken, this, [this, note, lead = spoken.lead](int index) {
            const auto place = static_cast<std::size_t>(index);
            ask(lead.causes[place], note->text().causes[place].words);
        });
    }
    notesColumn_->addStretch();
}

bool RunPanel::takeCause(int index) {
    for (MarginalNote* note : notes_) {
        if (index < std::ssize(note->text().causes)) {
            emit note->causeTaken(index);
            return true;
        }
    }
    return false;
}

void RunPanel::ask(const checks::LikelyCause& cause, const QString& reason) {
    clearNotes();
    asking_ = true;
    NoteText question;
    question.title = tr("What does the paper say?");
    question.message = reason;
    question.causes = {{tr("the paper says so: it was a slip of the keys"), {}},
                       {tr("the paper says what stands here: it was a slip at the thermometer"), {}}};
    MarginalNote* note = addNote(question, tr("neither: back to the notes"));
    notesColumn_->addStretch();
    connect(note, &MarginalNote::causeTaken, this,
            [this, cause, reason](int index) { emit causeTaken(cause, reason, index == 0); });
    connect(note, &MarginalNote::readRightChosen, this, [this] { stopAsking(); });
    note->setFocus(Qt::OtherFocusReason);
}

} // namespace wickbook::ui
