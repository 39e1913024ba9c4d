// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/takein/takein_dialog.h"

#include "ui/style/look.h"
#include "ui/takein/columns_view.h"
#include "ui/takein/reading_choices.h"
#include "ui/takein/takein_words.h"
#include "ui/takein/verdict_model.h"
#include "ui/takein/withdraw_import.h"
#include "ui/text/error_words.h"
#include "ui/text/term_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QTableView>

#include <algorithm>

namespace wickbook::ui {

namespace {

/// Lines that are shown one by one with their verdicts; a longer file would fill the memory.
constexpr std::int64_t kMostShownLines = 100'000;

constexpr std::chrono::milliseconds kSoon{250};
/// Lines of a long file that are tried before the person asks for the whole.
constexpr std::int64_t kHeadLines = 400;

QStringList filesOf(const QMimeData& mime) {
    QStringList files;
    for (const QUrl& url : mime.urls()) {
        if (url.isLocalFile()) {
            files << url.toLocalFile();
        }
    }
    return files;
}

} // namespace

TakeInDialog::TakeInDialog(Session& session, const QString& memoryFile, QWidget* parent)
    : QDialog(parent), session_(session), memory_(memoryFile, session.path()), work_(this) {
    build();
    soon_.setSingleShot(true);
    soon_.setInterval(kSoon);
    connect(&soon_, &QTimer::timeout, this, &TakeInDialog::tryNow);
    connect(columns_, &ColumnsView::changed, this, &TakeInDialog::trySoon);
    connect(choices_, &ReadingChoices::changed, this, &TakeInDialog::trySoon);
    connect(choices_, &ReadingChoices::shapeChanged, this, &TakeInDialog::proposeColumns);
    connect(&work_, &BackgroundWork::progressed, this, [this](qint64 done, qint64 total) {
        constexpr int kParts = 1000;
        bar_->setRange(0, total > 0 ? kParts : 0);
        bar_->setValue(total > 0 ? static_cast<int>(done * kParts / total) : 0);
    });
    setStage(Stage::Nothing);
    choose_->setFocus();
}

TakeInDialog::~TakeInDialog() = default;

void TakeInDialog::setStage(Stage stage) {
    stage_ = stage;
    const bool busy = stage == Stage::Trying || stage == Stage::Storing;
    const bool csv = looked_.kind == exchange::FileKind::Csv && looked_.sentence.isEmpty();
    reading_->setVisible(csv && stage != Stage::Nothing && stage != Stage::Done);
    reading_->setEnabled(stage != Stage::Storing);
    choose_->setVisible(stage != Stage::Done);
    choose_->setEnabled(stage != Stage::Storing);
    const bool lines = preview_ != nullptr;
    table_->setVisible(lines);
    blank_->setVisible(!lines);
    show_->setVisible(lines);
    conflictRow_->setVisible(lines && preview_->conflicts > 0 && stage != Stage::Done);
    conflictRow_->setEnabled(stage == Stage::Tried);
    copy_->setVisible(stage == Stage::Tried || stage == Stage::Storing);
    copy_->setEnabled(stage == Stage::Tried);
    bar_->setVisible(busy);
    bar_->setRange(0, 0);
    wholeFile_->setVisible(stage == Stage::Tried && preview_ && preview_->cut);
    save_->setVisible(
        (stage == Stage::Tried && preview_ && !preview_->cut &&
         !desk::rejectsOf(*preview_, onConflict()).empty()) ||
        (stage == Stage::Done && preview_ && !desk::rejectsOf(*preview_, onConflict()).empty()));
    withdraw_->setVisible(stage == Stage::Done && command_ != nullptr);
    bring_->setVisible(stage != Stage::Done && stage != Stage::Nothing);
    bring_->setEnabled(stage == Stage::Tried && preview_ && !preview_->cut &&
                       session_.readOnlySentence().isEmpty());
    close_->setText(busy ? tr("Stop") : stage == Stage::Done ? tr("Close") : tr("Leave it"));
    if (stage == Stage::Nothing) {
        fileLabel_->setText(
            tr("Drop a table (CSV) or files of the Station Exchange Format here, or choose "
               "them. Nothing is written before you have seen what would become of every line."));
    }
}

void TakeInDialog::say(const QString& sentence, bool wrong) {
    sentence_->setProperty("wrong", wrong);
    sentence_->setText(sentence);
    refreshLook(*sentence_);
}

void TakeInDialog::chooseFiles() {
    const QStringList files = QFileDialog::getOpenFileNames(
        this, tr("Choose a file"), {},
        tr("Tables and SEF files (*.csv *.tsv *.txt *.tab *.sef);;All files (*)"));
    if (!files.isEmpty()) {
        takeFiles(files);
    }
}

void TakeInDialog::dragEnterEvent(QDragEnterEvent* event) {
    if (stage_ != Stage::Storing && !filesOf(*event->mimeData()).isEmpty()) {
        event->acceptProposedAction();
    }
}

void TakeInDialog::dropEvent(QDropEvent* event) {
    takeFiles(filesOf(*event->mimeData()));
}

void TakeInDialog::takeFiles(const QStringList& files) {
    if (stage_ == Stage::Storing || files.isEmpty()) {
        return;
    }
    work_.stop();
    preview_.reset();
    model_->setPreview(nullptr);
    command_ = nullptr;
    whole_ = false;
    looked_ = lookAt(files);
    QStringList names;
    for (const QString& file : files) {
        names << QFileInfo(file).fileName();
    }
    fileLabel_->setText(names.join(QStringLiteral(", ")));
    if (!looked_.sentence.isEmpty()) {
        setStage(Stage::Choosing);
        bring_->setEnabled(false);
        say(looked_.sentence, true);
        return;
    }
    if (looked_.kind == exchange::FileKind::Csv) {
        choices_->showFound(looked_.head.format, exchange::looksHeadless(looked_.head.rows));
        choices_->setOptions({});
        lookAgain();
    } else {
        fileLabel_->setText(tr("%1 (Station Exchange Format; times in UTC, joined on time)")
                                .arg(names.join(QStringLiteral(", "))));
        trySoon();
    }
    if (columns_->isVisible() && looked_.kind == exchange::FileKind::Csv) {
        columns_->chooser(0)->setFocus();
    }
}

std::vector<std::string> TakeInDialog::header() const {
    return choices_->headless() ? exchange::numberedHeader(looked_.head.columns) : looked_.head.rows.front();
}

/// The columns by names and values, or as they were the last time.
void TakeInDialog::lookAgain() {
    auto rows = looked_.head.rows;
    if (!choices_->headless()) {
        rows.erase(rows.begin());
    }
    auto proposal = exchange::proposedColumns(header(), rows);
    columns_->showColumns(proposal, rows);
    QString about =
        tr("%1 (cells by %2, %3).")
            .arg(QFileInfo(looked_.files.front()).fileName(), separatorWords(looked_.head.format.separator),
                 QString::fromStdString(looked_.head.format.encoding));
    if (const auto remembered = memory_.remembered(header())) {
        columns_->setColumnLayout(*remembered->layout);
        choices_->setOptions(*remembered);
        about += QLatin1Char(' ') + tr("Read as the last file with these names was.");
    }
    const auto layout = columns_->columnLayout();
    if (std::find(layout.begin(), layout.end(), exchange::ImportField::Hour) != layout.end()) {
        about += QLatin1Char(' ') + tr("Its observing hours are taken by the station's rule: %1.")
                                        .arg(hourRuleWords(session_.station().latestPeriod().hourRule));
    }
    fileLabel_->setText(about);
    trySoon();
}

void TakeInDialog::proposeColumns() {
    looked_ = lookAt(looked_.files, choices_->separator());
    if (looked_.sentence.isEmpty()) {
        lookAgain();
    }
}

exchange::ImportOptions TakeInDialog::options() const {
    exchange::ImportOptions options;
    options.refusedAbove = kMostShownLines;
    if (looked_.kind == exchange::FileKind::Csv) {
        options = choices_->options();
        options.layout = columns_->columnLayout();
        if (looked_.large && !whole_) {
            options.mostLines = kHeadLines;
        }
    }
    return options;
}

exchange::OnConflict TakeInDialog::onConflict() const {
    return static_cast<exchange::OnConflict>(conflict_->currentData().toInt());
}

void TakeInDialog::trySoon() {
    whole_ = false;
    again_ = work_.isRunning();
    work_.stop();
    setStage(Stage::Trying);
    say(tr("Trying what every line would become…"), false);
    if (!again_) {
        soon_.start();
    }
}

void TakeInDialog::tryNow() {
    soon_.stop();
    if (work_.isRunning()) {
        again_ = true;
        work_.stop();
        return;
    }
    if (const QString problem = choices_->problem(); !problem.isEmpty()) {
        setStage(Stage::Choosing);
        say(problem, true);
        return;
    }
    setStage(Stage::Trying);
    trial_ = std::make_shared<Tried>();
    const TryRequest request{session_.path(), session_.station(), session_.now(),
                             looked_.files,   looked_.kind,       options()};
    work_.start([request, trial = trial_](WorkWatch& watch) { *trial = tryFiles(request, watch); },
                [this] { tried(); });
}

void TakeInDialog::tried() {
    if (again_) {
        again_ = false;
        soon_.start();
        return;
    }
    if (trial_->preview) {
        preview_ = std::make_shared<const desk::ImportPreview>(std::move(*trial_->preview));
        model_->setPreview(preview_);
        setStage(Stage::Tried);
        showCounts();
        return;
    }
    preview_.reset();
    model_->setPreview(nullptr);
    setStage(Stage::Choosing);
    say(trial_->sentence.isEmpty() ? tr("Stopped. Nothing was written.") : trial_->sentence,
        !trial_->sentence.isEmpty());
    wholeFile_->setVisible(trial_->sentence.isEmpty()); // stopped: it can be asked for again
}

void TakeInDialog::showCounts() {
    if (!preview_ || stage_ != Stage::Tried) {
        return;
    }
    QString sentence = countsSentence(locale(), *preview_);
    if (preview_->cut) {
        sentence += QLatin1Char(' ') + tr("Read the whole file before bringing it in.");
    }
    for (const exchange::AsideFile& aside : trial_->aside) {
        sentence += QStringLiteral(" %1: %2").arg(QString::fromStdString(aside.file), asideFileWords(aside));
    }
    const QString readOnly = session_.readOnlySentence();
    say(readOnly.isEmpty() ? sentence : readOnly, !readOnly.isEmpty());
    conflictLabel_->setText(preview_->conflicts == 1
                                ? tr("One reading of the book differs from the file:")
                                : tr("%1 readings of the book differ from the file:")
                                      .arg(locale().toString(static_cast<qlonglong>(preview_->conflicts))));
    const auto count =
        preview_->fresh + (onConflict() == exchange::OnConflict::Revise ? preview_->conflicts : 0);
    bring_->setText(tr("&Bring in %1").arg(locale().toString(static_cast<qlonglong>(count))));
    bring_->setEnabled(count > 0 && !preview_->cut && readOnly.isEmpty());
    save_->setVisible(!preview_->cut && !desk::rejectsOf(*preview_, onConflict()).empty());
}

void TakeInDialog::bringIn() {
    if (!preview_ || stage_ != Stage::Tried || work_.isRunning()) {
        return;
    }
    setStage(Stage::Storing);
    say(tr("Bringing in…"), false);
    result_ = std::make_shared<Stored>();
    const StoreRequest request{session_.path(),
                               preview_,
                               onConflict(),
                               session_.observer(),
                               copy_->isChecked() ? std::optional{session_.copies().shelf()} : std::nullopt,
                               session_.now()};
    work_.start([request, result = result_](WorkWatch& watch) { *result = storeReadings(request, watch); },
                [this] { stored(); });
}

void TakeInDialog::stored() {
    if (result_->readings.empty()) {
        setStage(Stage::Tried);
        showCounts();
        say(result_->sentence.isEmpty() ? tr("Stopped. Nothing was written.") : result_->sentence,
            !result_->sentence.isEmpty());
        return;
    }
    if (looked_.kind == exchange::FileKind::Csv) {
        memory_.remember(header(), options());
    }
    session_.lookForOutsideChanges();
    session_.copies().look();
    auto* command = new WithdrawImport(session_, result_->readings, session_.observer().toStdString(),
                                       tr("bring in %1").arg(QFileInfo(looked_.files.front()).fileName()));
    session_.undoStack().push(command);
    command_ = command;
    setStage(Stage::Done);
    const auto rejects = desk::rejectsOf(*preview_, onConflict()).size();
    const bool revised = onConflict() == exchange::OnConflict::Revise;
    const auto marked = std::count_if(
        preview_->lines.begin(), preview_->lines.end(), [revised](const desk::PreviewLine& line) {
            return !line.findings.empty() && (revised || line.verdict == desk::LineVerdict::Fresh);
        });
    QString sentence = tr("Brought in: %1, of these marked: %2. Left out: %3.")
                           .arg(locale().toString(static_cast<qlonglong>(result_->readings.size())),
                                locale().toString(static_cast<qlonglong>(marked)),
                                locale().toString(static_cast<qlonglong>(rejects)));
    if (!result_->copy.isEmpty()) {
        sentence += QLatin1Char(' ') +
                    tr("The book as it was before is kept among its copies as “%1”.").arg(result_->copy);
    }
    say(sentence, false);
    close_->setFocus();
}

void TakeInDialog::withdraw() {
    QUndoStack& stack = session_.undoStack();
    if (command_ == nullptr || stack.command(stack.index() - 1) != command_) {
        say(tr("Something was changed since: undo that first, with Ctrl+Z."), true);
        return;
    }
    const int before = stack.index();
    stack.undo();
    command_ = nullptr;
    withdraw_->hide();
    say(stack.index() < before
            ? tr("Withdrawn: nothing of it counts any more; the history keeps what was brought in.")
            : tr("Not everything could be withdrawn, so nothing was."),
        false);
}

void TakeInDialog::saveLeftOut() {
    const QFileInfo source(looked_.files.front());
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Where the lines that are left out shall lie"),
        source.dir().filePath(tr("%1 left out.csv").arg(source.completeBaseName())), tr("Tables (*.csv)"));
    if (path.isEmpty()) {
        return;
    }
    const QString problem = saveRejects(path, desk::rejectsOf(*preview_, onConflict()));
    say(problem.isEmpty() ? tr("Saved as “%1”, each line with its reason.").arg(QFileInfo(path).fileName())
                          : problem,
        !problem.isEmpty());
}

void TakeInDialog::reject() {
    if (work_.isRunning()) {
        again_ = false;
        work_.stop();
        return; // the thread's end says how it stands
    }
    soon_.stop();
    QDialog::reject();
}

} // namespace wickbook::ui
