// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/main_window.h"

#include "core/desk/sample_book.h"
#include "core/record/station_record.h"
#include "ui/classround/class_window.h"
#include "ui/observe/observe_page.h"
#include "ui/station/station_form.h"
#include "ui/style/look.h"
#include "ui/style/sheet.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/term_words.h"
#include "ui/window/book_lock.h"
#include "ui/window/book_taken.h"
#include "ui/window/first_start_page.h"
#include "ui/window/help_key.h"
#include "ui/window/help_window.h"
#include "ui/window/index_tabs.h"
#include "ui/window/margin_strip.h"
#include "ui/window/page_room.h"
#include "ui/window/page_set.h"
#include "ui/window/prompts.h"
#include "ui/window/raise_line.h"
#include "ui/window/trouble_log.h"
#include "ui/window/undo_keys.h"

#include <QCloseEvent>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

constexpr int kUsualWidth = 1280;
constexpr int kUsualHeight = 760;

} // namespace

MainWindow::MainWindow(WindowSettings& settings, Prompts& prompts, Session::Clock clock, QWidget* parent)
    : QMainWindow(parent), settings_(settings), prompts_(prompts), clock_(std::move(clock)) {
    setWindowTitle(tr("Wickbook"));
    Look::follow(*this);
    new UndoKeys(this);
    connect(new HelpKey(*this), &HelpKey::pressed, this, &MainWindow::showHelpFor);
    connect(new RaiseLine(this), &RaiseLine::called, this, &MainWindow::comeForward);
    setAcceptDrops(true);
    build();
    buildMenus();
    resize(typePixels(kUsualWidth), typePixels(kUsualHeight));
    settingsProblem_ = settings_.putAsideWhatIsUnreadable();
    restoreGeometry(settings_.geometry());
    showFirstStart(settingsProblem_);
}

MainWindow::~MainWindow() {
    closeBook();
}

void MainWindow::build() {
    auto* central = new QWidget;
    auto* column = new QVBoxLayout(central);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    margin_ = new MarginStrip;
    margin_->hide();
    column->addWidget(margin_);
    banner_ = makeLabel({}, TypeSize::Body, false);
    banner_->setObjectName(QStringLiteral("readOnlyBanner"));
    banner_->setProperty("wrong", true);
    banner_->setWordWrap(true);
    banner_->setContentsMargins(space::kEdge, space::kGroup, space::kEdge, 0);
    banner_->hide();
    column->addWidget(banner_);
    firstStart_ = new FirstStartPage;
    buildSalvageOffer(*column);

    auto* row = new QHBoxLayout;
    row->setContentsMargins(space::kEdge, space::kBetween, 14, space::kBetween);
    row->setSpacing(0);
    front_ = new QStackedWidget;
    auto* doorSheet = new Sheet;
    auto* doorColumn = new QVBoxLayout(doorSheet);
    doorColumn->setContentsMargins(1, 1, 1, 1);
    doorColumn->addWidget(firstStart_);
    auto* formSheet = new Sheet;
    auto* formColumn = new QVBoxLayout(formSheet);
    formColumn->setContentsMargins(1, 1, 1, 1);
    formRoom_ = new QScrollArea;
    formRoom_->setWidgetResizable(true);
    formRoom_->setFocusPolicy(Qt::NoFocus);
    formColumn->addWidget(formRoom_);
    front_->addWidget(doorSheet);
    front_->addWidget(formSheet);
    letFrontPageDecide(*front_);
    row->addWidget(new PageRoom(front_), 1);
    tabs_ = new IndexTabs;
    for (const QString& title : PageSet::titles()) {
        tabs_->addPage(title);
    }
    auto* help = new QPushButton(tr("Help  F1"));
    help->setProperty("quiet", true);
    connect(help, &QPushButton::clicked, this, &MainWindow::showHelp);
    tabs_->setFoot(help);
    tabs_->hide();
    row->addWidget(tabs_);
    column->addLayout(row, 1);
    setCentralWidget(central);

    connect(tabs_, &IndexTabs::chosen, this, &MainWindow::turnTo);
    connect(margin_, &MarginStrip::hourChosen, this, [this](const desk::HourMark& mark) {
        if (pages_ != nullptr) {
            pages_->openMark(mark);
        }
    });
    connect(firstStart_, &FirstStartPage::startWanted, this, &MainWindow::showStationForm);
    connect(firstStart_, &FirstStartPage::openWanted, this, &MainWindow::askForBook);
    connect(firstStart_, &FirstStartPage::sampleWanted, this, &MainWindow::openSample);
    connect(firstStart_, &FirstStartPage::bookWanted, this, &MainWindow::openBook);
}

void MainWindow::showPages(std::unique_ptr<Session> session) {
    closeBook();
    session->setObserver(settings_.observer());
    session->learnBeside();
    pages_ = new PageSet(std::move(session), settings_.draftFolder(), front_);
    front_->addWidget(pages_);
    front_->setCurrentWidget(pages_);
    Session& open = pages_->session();
    margin_->showSession(&open);
    margin_->show();
    tabs_->show();
    connect(&open, &Session::observationsChanged, margin_, &MarginStrip::reload);
    connect(&open, &Session::factsChanged, margin_, &MarginStrip::reload);
    connect(&open, &Session::factsChanged, this, &MainWindow::updateBanner);
    connect(pages_, &PageSet::turned, tabs_, &IndexTabs::setCurrent);
    QUndoStack& stack = open.undoStack();
    connect(&stack, &QUndoStack::canUndoChanged, undo_, &QAction::setEnabled);
    connect(&stack, &QUndoStack::canRedoChanged, redo_, &QAction::setEnabled);
    connect(&stack, &QUndoStack::undoTextChanged, undo_, [this](const QString& text) {
        undo_->setText(text.isEmpty() ? tr("&Undo") : tr("&Undo: %1").arg(text));
    });
    connect(&stack, &QUndoStack::redoTextChanged, redo_, [this](const QString& text) {
        redo_->setText(text.isEmpty() ? tr("&Redo") : tr("&Redo: %1").arg(text));
    });
    const auto restoreDivisions = [this](const QWidget* page) {
        for (QSplitter* halves : page->findChildren<QSplitter*>()) {
            if (!halves->objectName().isEmpty()) {
                halves->restoreState(settings_.division(halves->objectName()));
            }
        }
    };
    restoreDivisions(pages_);
    connect(pages_, &PageSet::made, this, restoreDivisions);
    connect(&open, &Session::storageFailed, this, [](const store::StoreError& error) {
        TroubleLog::note(QStringLiteral("not stored: kind %1: %2")
                             .arg(static_cast<int>(error.kind))
                             .arg(QString::fromStdString(error.detail)));
    });
    for (QAction* action : std::as_const(pageActions_)) {
        action->setEnabled(true);
    }
    takeIn_->setEnabled(true);
    rememberFrom(open);
    updateBanner();
    turnTo(PageSet::Observe);
}

void MainWindow::closeBook() {
    if (pages_ == nullptr) {
        return;
    }
    pages_->observe().keepDraft();
    keepDivisions();
    settings_.setObserver(pages_->session().observer());
    margin_->showSession(nullptr);
    margin_->hide();
    tabs_->hide();
    banner_->hide();
    salvageOffer_->hide();
    front_->removeWidget(pages_);
    delete pages_;
    pages_ = nullptr;
    sampleFolder_.reset();
    lock_.reset();
    undo_->setEnabled(false);
    redo_->setEnabled(false);
    undo_->setText(tr("&Undo"));
    redo_->setText(tr("&Redo"));
    for (QAction* action : std::as_const(pageActions_)) {
        action->setEnabled(false);
    }
    takeIn_->setEnabled(false);
    copyNow_->setEnabled(false);
}

bool MainWindow::openBook(const QString& path) {
    if (pages_ != nullptr && lock_ &&
        BookLock::fileFor(path) == BookLock::fileFor(pages_->session().path())) {
        turnTo(pages_->current());
        return true;
    }
    auto lock = std::make_unique<BookLock>(path);
    if (broughtForward(*lock)) {
        tell(openElsewhereWords(path));
        return false;
    }
    const QString file = QFileInfo(path).absoluteFilePath();
    auto session = lock->heldByAnother()
                       ? Session::openToRead(file, clock_, onlyToReadWords(path, *lock->heldByAnother()))
                       : Session::open(file, clock_);
    if (!session) {
        tellUnopened(session.error(), storeErrorWords(session.error()), path);
        return false;
    }
    settings_.rememberBook((*session)->path());
    settings_.setLastBook((*session)->path());
    showPages(std::move(*session));
    lock_ = std::move(lock); // after the book before has been closed
    beginCopies();
    return true;
}

void MainWindow::comeForward() {
    setWindowState(windowState() & ~Qt::WindowMinimized);
    show();
    raise();
    activateWindow();
}

bool MainWindow::openSample() {
    auto folder = std::make_unique<QTemporaryDir>();
    if (!folder->isValid()) {
        tell(tr("The sample station needs a little room for temporary files, and there is none: %1.")
                 .arg(folder->errorString()));
        return false;
    }
    const QString path = folder->filePath(QStringLiteral("sample station.wickbook"));
    {
        const auto made = desk::createSampleBook(std::filesystem::path{path.toStdString()},
                                                 desk::samplePlanUntil(clock_->now()), clock_);
        if (!made) {
            tell(storeErrorWords(made.error()));
            return false;
        }
    }
    auto session = Session::open(path, clock_);
    if (!session) {
        tell(storeErrorWords(session.error()));
        return false;
    }
    showPages(std::move(*session));
    sampleFolder_ = std::move(folder); // after the book before has been closed
    return true;
}

void MainWindow::startStation(const record::NewStation& station) {
    const QString path = prompts_.newBookPath(this, QString::fromStdString(station.name), {});
    if (path.isEmpty()) {
        return;
    }
    auto session = Session::create(path, record::factsOf(station, [] { return record::Uuid::random(); }),
                                   {settings_.observer().toStdString(), {}}, clock_);
    if (!session) {
        tell(storeErrorWords(session.error()));
        return;
    }
    settings_.rememberBook(path);
    settings_.setLastBook(path);
    showPages(std::move(*session));
    lock_ = std::make_unique<BookLock>(path);
    beginCopies();
}

void MainWindow::keepDivisions() {
    for (const QSplitter* halves : pages_->findChildren<QSplitter*>()) {
        if (!halves->objectName().isEmpty()) {
            settings_.setDivision(halves->objectName(), halves->saveState());
        }
    }
}

void MainWindow::usePreferences(const Preferences& preferences) {
    if (preferences == settings_.preferences()) {
        return;
    }
    settings_.setPreferences(preferences);
    anew_.emplace();
    if (pages_ != nullptr) {
        anew_->book = pages_->session().path();
        anew_->page = pages_->current();
        anew_->sampleFolder = std::move(sampleFolder_);
    }
    close();
}

void MainWindow::resume(Anew before) {
    if (before.book.isEmpty()) {
        return;
    }
    if (before.sampleFolder) {
        auto session = Session::open(before.book, clock_);
        if (!session) {
            tell(storeErrorWords(session.error()));
            return;
        }
        showPages(std::move(*session));
        sampleFolder_ = std::move(before.sampleFolder);
    } else if (!openBook(before.book)) {
        return;
    }
    turnTo(before.page);
}

void MainWindow::askForBook() {
    if (const QString path = prompts_.bookToOpen(this); !path.isEmpty()) {
        openBook(path);
    }
}

void MainWindow::showFirstStart(const QString& sentence) {
    closeBook();
    setWindowTitle(tr("Wickbook"));
    firstStart_->showRecent(settings_.recentBooks());
    firstStart_->showSentence(sentence);
    front_->setCurrentIndex(0);
    firstStart_->setFocus(Qt::OtherFocusReason);
}

void MainWindow::makeStationForm() {
    stationForm_ = new StationForm(formRoom_);
    formRoom_->setWidget(stationForm_);
    stationForm_->setAutoFillBackground(false);
    formRoom_->viewport()->setAutoFillBackground(false);
    connect(stationForm_, &StationForm::cancelled, this, [this] {
        if (pages_ != nullptr) {
            front_->setCurrentWidget(pages_);
            tabs_->show();
        } else {
            showFirstStart();
        }
    });
    connect(stationForm_, &StationForm::finished, this, &MainWindow::startStation);
}

void MainWindow::showStationForm() {
    if (stationForm_ == nullptr) {
        makeStationForm();
    }
    front_->setCurrentIndex(1);
    tabs_->hide();
    stationForm_->focusFirst();
}

void MainWindow::tell(const QString& sentence) {
    if (pages_ != nullptr && front_->currentWidget() == pages_) {
        banner_->setText(sentence);
        banner_->show();
        return;
    }
    if (front_->currentIndex() == 1) {
        banner_->setText(sentence);
        banner_->show();
        return;
    }
    showFirstStart(sentence);
}

void MainWindow::updateBanner() {
    if (pages_ == nullptr) {
        return;
    }
    const record::StationRecord& station = pages_->session().station();
    QString title = QString::fromStdString(station.name());
    if (station.facts().invented && !title.contains(tr("invented")) &&
        !title.contains(QLatin1String("invented"))) {
        title += QStringLiteral(" – ") + inventedWords();
    }
    const QString readOnly = pages_->session().readOnlySentence();
    if (!readOnly.isEmpty()) {
        title += QStringLiteral(" – ") + tr("read only");
    }
    setWindowTitle(title + QStringLiteral(" – ") + tr("Wickbook"));
    // Quietly and in one place: what keeps the book from being written, else what keeps it from being copied.
    const QString trouble = pages_->session().copies().trouble();
    const QString told = !readOnly.isEmpty()  ? readOnly
                         : !trouble.isEmpty() ? trouble
                                              : std::exchange(settingsProblem_, {});
    salvageOffer_->hide();
    banner_->setText(told);
    banner_->setVisible(!told.isEmpty());
}

void MainWindow::turnTo(int page) {
    if (pages_ != nullptr) {
        front_->setCurrentWidget(pages_);
        tabs_->show();
        pages_->turnTo(page);
    }
}

void MainWindow::closeEvent(QCloseEvent* event) {
    settings_.setGeometry(saveGeometry());
    if (pages_ != nullptr) {
        pages_->closeReview(); // a window of its own must not outlive this one
    }
    if (classRound_) {
        classRound_->close();
    }
    if (pages_ != nullptr) {
        pages_->observe().keepDraft();
        keepDivisions();
        settings_.setObserver(pages_->session().observer());
    }
    event->accept();
}

} // namespace wickbook::ui
