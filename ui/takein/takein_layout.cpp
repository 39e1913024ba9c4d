// SPDX-License-Identifier: GPL-3.0-or-later
// How the window for bringing in a register is laid out; what it does is in takein_dialog.cpp.
#include "ui/style/look.h"
#include "ui/style/sheet.h"
#include "ui/style/type.h"
#include "ui/takein/columns_view.h"
#include "ui/takein/reading_choices.h"
#include "ui/takein/takein_dialog.h"
#include "ui/takein/verdict_model.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

constexpr int kWidth = 1120;
constexpr int kHeight = 680;
constexpr int kColumnsHeight = 172;
constexpr int kRowHeight = 26;

} // namespace

void TakeInDialog::build() {
    setWindowTitle(tr("Bring in a register"));
    Look::follow(*this);
    setAcceptDrops(true);
    resize(typePixels(kWidth), typePixels(kHeight));
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    page->setSpacing(space::kGroup);
    buildFileRow(*page);
    reading_ = new QWidget;
    auto* reading = new QVBoxLayout(reading_);
    reading->setContentsMargins(0, 0, 0, 0);
    reading->setSpacing(space::kGroup);
    columns_ = new ColumnsView;
    columns_->setFixedHeight(typePixels(kColumnsHeight));
    reading->addWidget(columns_);
    const auto zone = session_.station().latestPeriod().zone.name();
    choices_ = new ReadingChoices(QString::fromStdString(zone));
    reading->addWidget(choices_);
    page->addWidget(reading_);
    page->addWidget(new RuledLine(Qt::Horizontal));
    buildPreview(*page);
    buildFoot(*page);
}

void TakeInDialog::buildFileRow(QVBoxLayout& page) {
    page.addWidget(makeHeading(tr("Bring in a register")));
    auto* row = new QHBoxLayout;
    row->setSpacing(space::kBetween);
    fileLabel_ = makeLabel({}, TypeSize::Body, true);
    fileLabel_->setTextFormat(Qt::PlainText);
    fileLabel_->setWordWrap(true);
    fileLabel_->setObjectName(QStringLiteral("takeInFile"));
    row->addWidget(fileLabel_, 1);
    choose_ = new QPushButton(tr("C&hoose a file…"));
    choose_->setObjectName(QStringLiteral("takeInChoose"));
    connect(choose_, &QPushButton::clicked, this, &TakeInDialog::chooseFiles);
    row->addWidget(choose_);
    page.addLayout(row);
}

void TakeInDialog::buildPreview(QVBoxLayout& page) {
    auto* row = new QHBoxLayout;
    row->setSpacing(space::kBetween);
    sentence_ = makeLabel({}, TypeSize::Body, false);
    sentence_->setObjectName(QStringLiteral("takeInSentence"));
    sentence_->setTextFormat(Qt::PlainText);
    sentence_->setWordWrap(true);
    row->addWidget(sentence_, 1);
    show_ = new QComboBox;
    show_->setObjectName(QStringLiteral("takeInShow"));
    show_->setAccessibleName(tr("which lines are shown"));
    using Show = VerdictModel::Show;
    for (const auto& [words, show] :
         {std::pair{tr("all lines"), Show::All}, std::pair{tr("what is new"), Show::Fresh},
          std::pair{tr("what is marked"), Show::Marked}, std::pair{tr("conflicts"), Show::Conflicts},
          std::pair{tr("what can't come in"), Show::Rejected},
          std::pair{tr("what is there already"), Show::Same}}) {
        show_->addItem(words, static_cast<int>(show));
    }
    connect(show_, &QComboBox::currentIndexChanged, this,
            [this] { model_->setShow(static_cast<Show>(show_->currentData().toInt())); });
    row->addWidget(show_, 0, Qt::AlignTop);
    page.addLayout(row);

    model_ = new VerdictModel(this);
    table_ = new QTableView;
    table_->setObjectName(QStringLiteral("takeInLines"));
    table_->setAccessibleName(tr("what every line would become"));
    table_->setModel(model_);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setTabKeyNavigation(false);
    table_->setShowGrid(false);
    table_->setWordWrap(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table_->verticalHeader()->setDefaultSectionSize(typePixels(kRowHeight));
    QHeaderView* head = table_->horizontalHeader();
    head->setHighlightSections(false);
    head->setStretchLastSection(true);
    head->resizeSection(VerdictModel::Line, typePixels(64));
    head->resizeSection(VerdictModel::Verdict, typePixels(140));
    head->resizeSection(VerdictModel::When, typePixels(170));
    head->resizeSection(VerdictModel::Dry, typePixels(84));
    head->resizeSection(VerdictModel::Wet, typePixels(84));
    page.addWidget(table_, 1);
    blank_ = new QWidget;
    page.addWidget(blank_, 1);
    detail_ = makeLabel({}, TypeSize::Label, true);
    detail_->setObjectName(QStringLiteral("takeInDetail"));
    detail_->setTextFormat(Qt::PlainText);
    detail_->setWordWrap(true);
    page.addWidget(detail_);
    const auto tellLine = [this] {
        const QModelIndex current = table_->currentIndex();
        detail_->setText(current.isValid() ? current.siblingAtColumn(VerdictModel::Sentence).data().toString()
                                           : QString{});
        detail_->setVisible(!detail_->text().isEmpty());
    };
    detail_->hide();
    connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this, tellLine);
    connect(model_, &QAbstractItemModel::modelReset, this, tellLine);
    connect(model_, &QAbstractItemModel::dataChanged, this, tellLine);

    conflictRow_ = new QWidget;
    auto* conflict = new QHBoxLayout(conflictRow_);
    conflict->setContentsMargins(0, 0, 0, 0);
    conflict->setSpacing(space::kGroup);
    conflictLabel_ = makeLabel({}, TypeSize::Body, false);
    conflict->addWidget(conflictLabel_);
    conflict_ = new QComboBox;
    conflict_->setObjectName(QStringLiteral("takeInConflict"));
    conflict_->setAccessibleName(tr("what becomes of conflicts"));
    conflict_->addItem(tr("keep what the book has"), static_cast<int>(exchange::OnConflict::Keep));
    conflict_->addItem(tr("take the file's; the old ones stay in the history"),
                       static_cast<int>(exchange::OnConflict::Revise));
    conflict_->addItem(tr("leave these lines out and list them"),
                       static_cast<int>(exchange::OnConflict::Reject));
    connect(conflict_, &QComboBox::currentIndexChanged, this, [this] {
        model_->setOnConflict(onConflict());
        showCounts();
    });
    conflictLabel_->setBuddy(conflict_);
    conflict->addWidget(conflict_);
    conflict->addStretch(1);
    conflictRow_->hide();
    page.addWidget(conflictRow_);
}

void TakeInDialog::buildFoot(QVBoxLayout& page) {
    auto* row = new QHBoxLayout;
    row->setSpacing(space::kGroup);
    copy_ = new QCheckBox(tr("&First keep a copy of the book"));
    copy_->setObjectName(QStringLiteral("takeInCopy"));
    copy_->setChecked(true);
    row->addWidget(copy_);
    bar_ = new QProgressBar;
    bar_->setAccessibleName(tr("how far it is"));
    bar_->setTextVisible(false);
    bar_->setFixedHeight(typePixels(8));
    row->addWidget(bar_, 1);
    row->addStretch(0);
    const auto button = [&](const QString& words, const char* name, auto slot) {
        auto* made = new QPushButton(words);
        made->setObjectName(QLatin1String(name));
        made->setAutoDefault(false);
        connect(made, &QPushButton::clicked, this, slot);
        row->addWidget(made);
        return made;
    };
    wholeFile_ = button(tr("&Read the whole file"), "takeInWhole", [this] {
        whole_ = true;
        tryNow();
    });
    save_ = button(tr("&Save what is left out…"), "takeInSave", [this] { saveLeftOut(); });
    withdraw_ = button(tr("&Withdraw what was brought in"), "takeInWithdraw", [this] { withdraw(); });
    bring_ = button(tr("&Bring in"), "takeInBring", [this] { bringIn(); });
    bring_->setProperty("primary", true);
    close_ = button(tr("Close"), "takeInClose", [this] { reject(); });
    page.addLayout(row);
}

} // namespace wickbook::ui
