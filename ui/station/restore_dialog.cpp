// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/restore_dialog.h"

#include "ui/style/look.h"
#include "ui/text/copy_words.h"

#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>

namespace wickbook::ui {

namespace {

std::filesystem::path toPath(const QString& file) {
    return {file.toStdString()};
}

QString fromPath(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}

} // namespace

RestoreDialog::RestoreDialog(RestoreStart start, QLocale locale, QWidget* parent)
    : QDialog(parent), start_(std::move(start)), locale_(std::move(locale)), work_(this) {
    build();
    connect(list_, &QListWidget::currentRowChanged, this, &RestoreDialog::chosenChanged);
    connect(folderButton_, &QPushButton::clicked, this, &RestoreDialog::askFolder);
    connect(fileButton_, &QPushButton::clicked, this, &RestoreDialog::askFile);
    connect(choose_, &QPushButton::clicked, this, &RestoreDialog::askNewBook);
    connect(verify_, &QPushButton::clicked, this, &RestoreDialog::verify);
    connect(restore_, &QPushButton::clicked, this, &RestoreDialog::restore);
    connect(close_, &QPushButton::clicked, this, &RestoreDialog::reject);
    connect(open_, &QPushButton::clicked, this, [this] {
        emit openBookAsked(newBook_->text());
        accept();
    });
    connect(newBook_, &QLineEdit::textChanged, this, [this] { setStage(stage_); });
    connect(&work_, &BackgroundWork::progressed, this, [this](qint64 done, qint64 total) {
        constexpr int kParts = 1000;
        bar_->setRange(0, total > 0 ? kParts : 0);
        bar_->setValue(total > 0 ? static_cast<int>(done * kParts / total) : 0);
    });
    lookIn(start_.folder);
}

RestoreDialog::~RestoreDialog() = default;

void RestoreDialog::setStage(Stage stage) {
    stage_ = stage;
    const bool busy = stage == Stage::Looking || stage == Stage::Verifying || stage == Stage::Restoring;
    const bool done = stage == Stage::Done;
    const bool has = !chosen().empty();
    list_->setEnabled(!busy && !done);
    for (QWidget* part : {static_cast<QWidget*>(folderButton_), static_cast<QWidget*>(fileButton_),
                          static_cast<QWidget*>(choose_), static_cast<QWidget*>(newBook_)}) {
        part->setEnabled(!busy && !done);
    }
    verify_->setVisible(!done);
    verify_->setEnabled(stage == Stage::Choosing && has);
    restore_->setVisible(!done);
    restore_->setEnabled(stage == Stage::Choosing && has && !newBook_->text().trimmed().isEmpty());
    open_->setVisible(done);
    open_->setDefault(done);
    list_->setVisible(!done);
    blank_->setVisible(done && lines_->count() == 0);
    bar_->setVisible(busy);
    bar_->setRange(0, 0);
    close_->setText(busy && stage != Stage::Looking ? tr("Stop") : tr("Close"));
}

void RestoreDialog::say(const QString& sentence, bool wrong) {
    sentence_->setProperty("wrong", wrong);
    sentence_->setText(sentence);
    refreshLook(*sentence_);
}

void RestoreDialog::lookIn(const QString& folder) {
    file_.clear();
    start_.folder = folder;
    if (folder.isEmpty()) {
        where_->setText(tr("Say where the copies are: a folder of them, or one file."));
        list_->clear();
        copies_.clear();
        setStage(Stage::Choosing);
        folderButton_->setFocus();
        return;
    }
    where_->setText(tr("Copies in “%1”").arg(QDir::toNativeSeparators(folder)));
    setStage(Stage::Looking);
    say(tr("Looking for copies…"), false);
    auto answer = std::make_shared<FoundCopies>();
    work_.start([folder, answer](WorkWatch&) { *answer = findCopies(toPath(folder)); },
                [this, answer] { found(*answer); });
}

void RestoreDialog::found(const FoundCopies& found) {
    copies_ = found.copies;
    list_->clear();
    int row = 0;
    for (const store::KeptCopy& copy : copies_) {
        if (fromPath(copy.path) == start_.copy) {
            row = list_->count();
        }
        list_->addItem(QStringLiteral("%1 · %2").arg(copyLineWords(locale_, copy),
                                                     QString::fromStdString(copy.name.book)));
    }
    setStage(Stage::Choosing);
    list_->setCurrentRow(copies_.empty() ? -1 : row);
    chosenChanged();
    if (!found.problem.isEmpty()) {
        say(found.problem, true);
    } else if (copies_.empty()) {
        say(tr("There are no copies in this folder: choose another folder, or one file."), false);
        folderButton_->setFocus();
        return;
    } else {
        say(tr("The copy is verified first; a new book is made of it, and nothing else is written."), false);
    }
    list_->setFocus();
}

void RestoreDialog::takeFile(const QString& file) {
    file_ = file;
    copies_.clear();
    list_->clear();
    where_->setText(tr("One file"));
    list_->addItem(QDir::toNativeSeparators(file));
    list_->setCurrentRow(0);
    setStage(Stage::Choosing);
    chosenChanged();
    say(tr("The copy is verified first; a new book is made of it, and nothing else is written."), false);
    newBook_->setFocus();
}

std::filesystem::path RestoreDialog::chosen() const {
    if (!file_.isEmpty()) {
        return toPath(file_);
    }
    const auto row = static_cast<std::size_t>(list_->currentRow());
    return list_->currentRow() >= 0 && row < copies_.size() ? copies_[row].path : std::filesystem::path{};
}

/// Beside the open book, else beside the folder of copies; a name that is free.
QString RestoreDialog::usualNewBook() const {
    const auto row = static_cast<std::size_t>(std::max(list_->currentRow(), 0));
    const QFileInfo copy(fromPath(chosen()));
    const bool kept = file_.isEmpty() && row < copies_.size();
    const QString name = kept ? QString::fromStdString(copies_[row].name.book) : copy.completeBaseName();
    const QString day =
        (kept ? QDateTime::fromSecsSinceEpoch(copies_[row].name.moment.time_since_epoch().count())
              : copy.lastModified())
            .toString(QStringLiteral("yyyy-MM-dd"));
    QDir folder = start_.book.isEmpty() ? copy.dir() : QFileInfo(start_.book).dir();
    if (start_.book.isEmpty() && kept) {
        folder.cdUp();
    }
    const QString base = tr("%1 restored from %2").arg(name, day);
    QString path = folder.filePath(base + QStringLiteral(".wickbook"));
    for (int number = 2; QFileInfo::exists(path); ++number) {
        path = folder.filePath(QStringLiteral("%1 %2.wickbook").arg(base).arg(number));
    }
    return path;
}

void RestoreDialog::chosenChanged() {
    if (chosen().empty()) {
        return;
    }
    if (newBook_->text() == suggested_) { // what somebody typed stays
        suggested_ = usualNewBook();
        newBook_->setText(suggested_);
    }
    setStage(stage_);
}

void RestoreDialog::verify() {
    if (work_.isRunning()) {
        return;
    }
    setStage(Stage::Verifying);
    say(tr("Verifying the copy…"), false);
    auto answer = std::make_shared<VerifiedCopy>();
    work_.start([copy = chosen(), locale = locale_,
                 answer](WorkWatch& watch) { *answer = verifyCopy(copy, locale, watch); },
                [this, answer] {
                    setStage(Stage::Choosing);
                    say(answer->sentence.isEmpty() ? tr("Stopped.") : answer->sentence,
                        !answer->sound && !answer->sentence.isEmpty());
                    list_->setFocus();
                });
}

void RestoreDialog::restore() {
    if (work_.isRunning() || stage_ != Stage::Choosing) {
        return;
    }
    QFileInfo target(newBook_->text().trimmed());
    if (target.isRelative()) {
        // A name alone: beside the open book, or the copy.
        target.setFile(QFileInfo(usualNewBook()).dir(), target.filePath());
    }
    if (target.suffix().isEmpty()) {
        target.setFile(target.filePath() + QStringLiteral(".wickbook"));
    }
    newBook_->setText(target.absoluteFilePath());
    const RestoreJob job{chosen(), toPath(target.absoluteFilePath()), toPath(start_.book), locale_};
    setStage(Stage::Restoring);
    say(tr("Restoring…"), false);
    auto answer = std::make_shared<Restored>();
    work_.start([job, answer](WorkWatch& watch) { *answer = restoreCopy(job, watch); },
                [this, answer] { restored(*answer); });
}

void RestoreDialog::restored(const Restored& result) {
    if (!result.done) {
        setStage(Stage::Choosing);
        say(result.sentence.isEmpty() ? tr("Stopped. Nothing was written.") : result.sentence,
            !result.sentence.isEmpty());
        newBook_->setFocus();
        return;
    }
    lines_->addItems(result.lines);
    lines_->setVisible(!result.lines.isEmpty());
    setStage(Stage::Done);
    where_->setText(fromPath(chosen().filename()));
    say((QStringList{result.sentence} + result.totals).join(QLatin1Char('\n')), false);
    open_->setFocus();
}

void RestoreDialog::askFolder() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Where the copies are"), start_.folder);
    if (!folder.isEmpty()) {
        lookIn(folder);
    }
}

void RestoreDialog::askFile() {
    const QString file = QFileDialog::getOpenFileName(this, tr("The copy to restore from"), start_.folder,
                                                      tr("Wickbook books (*.wickbook);;All files (*)"));
    if (!file.isEmpty()) {
        takeFile(file);
    }
}

void RestoreDialog::askNewBook() {
    const QString file = QFileDialog::getSaveFileName(
        this, tr("Where the new book shall lie"), newBook_->text(),
        tr("Wickbook books (*.wickbook);;All files (*)"), nullptr, QFileDialog::DontConfirmOverwrite);
    if (!file.isEmpty()) {
        newBook_->setText(file);
    }
}

void RestoreDialog::reject() {
    if (work_.isRunning() && stage_ != Stage::Looking) {
        work_.stop();
        return; // the thread's end says how it stands
    }
    QDialog::reject();
}

} // namespace wickbook::ui
