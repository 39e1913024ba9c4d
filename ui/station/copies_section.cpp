// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/copies_section.h"

#include "ui/station/restore_dialog.h"
#include "ui/style/look.h"
#include "ui/style/type.h"
#include "ui/text/copy_words.h"

#include <QCheckBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>

#include <algorithm>

namespace wickbook::ui {

CopiesSection::CopiesSection(Session& session, QLocale locale, QWidget* parent)
    : QWidget(parent), session_(session), locale_(std::move(locale)) {
    build();
    connect(&keeper(), &CopyKeeper::changed, this, &CopiesSection::reload);
    connect(&keeper(), &CopyKeeper::progressed, this, [this](qint64 done, qint64 total) {
        constexpr int kParts = 1000;
        bar_->setRange(0, total > 0 ? kParts : 0);
        bar_->setValue(total > 0 ? static_cast<int>(done * kParts / total) : 0);
    });
    connect(&keeper(), &CopyKeeper::keptByHand, this, [this] {
        const CopyAnswer& answer = keeper().answer();
        QString sentence =
            tr("Kept and verified: “%1”.").arg(QString::fromStdString(answer.kept->path.filename().string()));
        if (answer.dropped > 0) {
            sentence += QLatin1Char(' ') + (answer.dropped == 1
                                                ? tr("One old copy gave way to newer ones.")
                                                : tr("%1 old copies gave way to newer ones.")
                                                      .arg(locale_.toString(qlonglong{answer.dropped})));
        }
        if (!answer.stuck.isEmpty()) {
            sentence += QLatin1Char(' ') + answer.stuck;
        }
        say(sentence, false);
    });
    unfold(false);
    reload();
}

void CopiesSection::open() {
    fold_->setChecked(true);
    fold_->setFocus(Qt::OtherFocusReason);
}

void CopiesSection::unfold(bool open) {
    content_->setVisible(open);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    showFold();
}

void CopiesSection::showFold() {
    QString text = fold_->isChecked() ? tr("&Copies of the book: fold away") : tr("&Copies of the book");
    if (!fold_->isChecked()) {
        if (!keeper().trouble().isEmpty()) {
            text += QStringLiteral(" · ") + tr("the last one failed");
        } else if (!keeper().copies().empty()) {
            text += QStringLiteral(" · ") +
                    tr("last %1").arg(copyMomentWords(locale_, keeper().copies().front().copy.name.moment));
        }
    }
    fold_->setText(text);
}

QString CopiesSection::lineOf(const ShownCopy& shown) const {
    const store::KeptCopy& copy = shown.copy;
    QString line = copyLineWords(locale_, copy);
    if (shown.ahead) {
        line += QStringLiteral(" · ") + tr("holds what this book does not");
    }
    if (shown.sound) {
        line += QStringLiteral(" · ") +
                (*shown.sound ? tr("verified") : tr("does not verify: %1").arg(shown.problem));
    }
    return line;
}

void CopiesSection::reload() {
    const bool keeps = keeper().isKeeping();
    const bool busy = keeper().doing().has_value();
    const auto& copies = keeper().copies();
    QString last;
    if (!keeps) {
        last = tr("The sample station keeps no copies: it is gone when the window closes.");
    } else if (!keeper().trouble().isEmpty()) {
        last = keeper().trouble();
    } else if (copies.empty()) {
        last = busy ? tr("Looking for copies…") : tr("There is no copy yet.");
    } else {
        last = tr("Last copy: %1. %2 in all. The newest of each of 7 days, 8 weeks and 24 months stay.")
                   .arg(copyMomentWords(locale_, copies.front().copy.name.moment),
                        copyCountWords(locale_, std::ssize(copies)));
    }
    last_->setProperty("wrong", !keeper().trouble().isEmpty());
    last_->setText(last);
    refreshLook(*last_);
    const bool usual = keeper().choice().folder.isEmpty();
    const QString folder = keeper().folder();
    where_->setText(usual ? tr("Where: the folder “%1” beside the book").arg(QFileInfo(folder).fileName())
                          : tr("Where: %1").arg(QDir::toNativeSeparators(folder)));
    where_->setToolTip(QDir::toNativeSeparators(folder));
    {
        const QSignalBlocker quiet(daily_);
        daily_->setChecked(keeper().choice().daily);
    }
    for (QWidget* part : {static_cast<QWidget*>(where_), static_cast<QWidget*>(change_),
                          static_cast<QWidget*>(daily_), static_cast<QWidget*>(now_)}) {
        part->setVisible(keeps);
    }
    now_->setEnabled(!busy);
    bar_->setVisible(busy && keeper().doing() != CopyKeeper::Task::Look);
    bar_->setRange(0, 0);
    const bool verifyingNow = keeper().doing() == CopyKeeper::Task::Verify;
    verifyAll_->setText(verifyingNow ? tr("Stop") : tr("Verif&y all"));
    reloadList();
    if (verifying_ && !busy) {
        verifying_ = false;
        const auto bad = std::ranges::count_if(
            copies, [](const ShownCopy& copy) { return copy.sound.has_value() && !*copy.sound; });
        const auto good =
            std::ranges::count_if(copies, [](const ShownCopy& copy) { return copy.sound.value_or(false); });
        say(bad == 0 ? tr("Verified: %1, every page and the whole chain of revisions.")
                           .arg(copyCountWords(locale_, good))
                     : tr("%1 verified, %2 did not: keep using the others, and make one now.")
                           .arg(copyCountWords(locale_, good), copyCountWords(locale_, bad)),
            bad != 0);
    }
    showFold();
    chosenChanged();
}

void CopiesSection::reloadList() {
    const int row = std::max(list_->currentRow(), 0);
    QStringList lines;
    for (const ShownCopy& copy : keeper().copies()) {
        lines << lineOf(copy);
    }
    list_->clear();
    list_->addItems(lines);
    list_->setCurrentRow(std::min(row, list_->count() - 1));
    list_->setVisible(list_->count() > 0);
    // As high as its lines, up to four, and lower in a low window; more are scrolled.
    constexpr int kMostLines = 4;
    const int line = std::max(list_->sizeHintForRow(0), typePixels(22));
    const int round = 2 * list_->frameWidth() + space::kStep;
    list_->setMinimumHeight(line + round);
    list_->setMaximumHeight(std::clamp(list_->count(), 1, kMostLines) * line + round);
}

const ShownCopy* CopiesSection::chosen() const {
    const auto row = static_cast<std::size_t>(list_->currentRow());
    const auto& copies = keeper().copies();
    return list_->currentRow() >= 0 && row < copies.size() ? &copies[row] : nullptr;
}

void CopiesSection::chosenChanged() {
    const bool busy = keeper().doing().has_value();
    verify_->setVisible(list_->count() > 0);
    verifyAll_->setVisible(list_->count() > 0);
    verify_->setEnabled(!busy && chosen() != nullptr);
    verifyAll_->setEnabled(!busy || keeper().doing() == CopyKeeper::Task::Verify);
}

void CopiesSection::changeFolder() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Where copies of the book shall lie"),
                                                             QFileInfo(session_.path()).path());
    if (folder.isEmpty()) {
        return;
    }
    CopyChoice choice = keeper().choice();
    const auto usual = QString::fromStdString(
        store::usualCopyFolder(std::filesystem::path{session_.path().toStdString()}).string());
    choice.folder = QDir(folder) == QDir(usual) ? QString{} : folder;
    keeper().choose(choice);
    say(tr("From now on copies go there; those made before stay where they are."), false);
}

void CopiesSection::verify(bool all) {
    if (keeper().doing() == CopyKeeper::Task::Verify) {
        keeper().stop();
        return;
    }
    std::vector<std::filesystem::path> paths;
    if (all) {
        for (const ShownCopy& copy : keeper().copies()) {
            paths.push_back(copy.copy.path);
        }
    } else if (const ShownCopy* one = chosen()) {
        paths.push_back(one->copy.path);
    }
    if (!paths.empty()) {
        verifying_ = true;
        keeper().verify(paths);
    }
}

void CopiesSection::restore() {
    const ShownCopy* copy = chosen();
    RestoreDialog dialog({keeper().folder(), session_.path(),
                          copy ? QString::fromStdString(copy->copy.path.string()) : QString{}},
                         locale_, this);
    // Told once the dialog has ended: opening another book takes this page away.
    QString asked;
    connect(&dialog, &RestoreDialog::openBookAsked, this, [&asked](const QString& path) { asked = path; });
    dialog.exec();
    if (!asked.isEmpty()) {
        emit openBookAsked(asked);
    }
}

void CopiesSection::askHandOn() {
    const QFileInfo book(session_.path());
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Where the copy to hand on shall lie"),
        book.dir().filePath(tr("%1 to read.wickbook").arg(book.completeBaseName())),
        tr("Wickbook books (*.wickbook)"), nullptr, QFileDialog::DontConfirmOverwrite);
    if (!path.isEmpty()) {
        handOn(path);
    }
}

void CopiesSection::handOn(const QString& path) {
    if (handing_->isRunning()) {
        return;
    }
    handOn_->setEnabled(false);
    say(tr("Making the copy…"), false);
    auto sentence = std::make_shared<QString>();
    auto wrong = std::make_shared<bool>(false);
    handing_->start(
        [book = session_.path().toStdString(), path, sentence, wrong](WorkWatch&) {
            const auto source = store::Book::open(std::filesystem::path{book}, store::OpenMode::ReadOnly);
            const auto made = source ? store::copyToHandOn(*source, std::filesystem::path{path.toStdString()})
                                     : store::Result<bool>{tl::unexpected(source.error())};
            const QString name = QFileInfo(path).fileName();
            *wrong = !made;
            *sentence = !made   ? handOnTroubleWords(made.error())
                        : *made ? tr("“%1” is written, verified, and set to be read only.").arg(name)
                                : tr("“%1” is written and verified. The disk it lies on knows no files to "
                                     "be read only.")
                                      .arg(name);
        },
        [this, sentence, wrong] {
            handOn_->setEnabled(true);
            say(*sentence, *wrong);
        });
}

void CopiesSection::say(const QString& sentence, bool wrong) {
    message_->setProperty("wrong", wrong);
    message_->setText(sentence);
    message_->show();
    refreshLook(*message_);
}

} // namespace wickbook::ui
