// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/copy_keeper.h"

#include <QFileInfo>

namespace wickbook::ui {

namespace {

/// How often it is asked whether a new day has begun, or what failed can be tried again.
constexpr std::chrono::minutes kAskAgain{10};

std::filesystem::path filePath(const QString& file) {
    return {file.toStdString()};
}

} // namespace

CopyKeeper::CopyKeeper(const QString& book, std::shared_ptr<const record::Clock> clock, QObject* parent)
    : QObject(parent), book_(QFileInfo(book).absoluteFilePath()), clock_(std::move(clock)) {
    again_.setInterval(kAskAgain);
    connect(&again_, &QTimer::timeout, this, &CopyKeeper::keepIfDue);
    connect(&work_, &BackgroundWork::progressed, this, &CopyKeeper::progressed);
}

void CopyKeeper::begin(const CopyChoice& choice) {
    begun_ = true;
    choice_ = choice;
    again_.start();
    keepIfDue();
}

void CopyKeeper::choose(const CopyChoice& choice) {
    if (choice == choice_) {
        return;
    }
    choice_ = choice;
    trouble_.clear();
    emit choiceChanged(choice_);
    keepIfDue();
}

store::CopyShelf CopyKeeper::shelf() const {
    return choice_.folder.isEmpty() ? store::CopyShelf{store::usualCopyFolder(filePath(book_)), true}
                                    : store::CopyShelf{filePath(choice_.folder), false};
}

QString CopyKeeper::folder() const {
    return QString::fromStdString(shelf().folder.string());
}

CopyRequest CopyKeeper::request(Task task) const {
    CopyRequest request;
    request.task = task;
    request.book = filePath(book_);
    request.shelf = shelf();
    request.now = clock_->now();
    request.verified = answer_.verified;
    return request;
}

void CopyKeeper::keepNow() {
    CopyRequest wanted = request(Task::Keep);
    wanted.reason = store::CopyReason::ByHand;
    ask(std::move(wanted));
}

void CopyKeeper::keepIfDue() {
    if (begun_) {
        ask(request(choice_.daily ? Task::KeepIfDue : Task::Look));
    }
}

void CopyKeeper::look() {
    ask(request(Task::Look));
}

void CopyKeeper::verify(const std::vector<std::filesystem::path>& copies) {
    CopyRequest wanted = request(Task::Verify);
    wanted.toVerify = copies;
    ask(std::move(wanted));
}

void CopyKeeper::ask(CopyRequest request) {
    if (work_.isRunning()) {
        // A copy that somebody asked for is not forgotten for a look at the folder.
        if (!next_ || next_->task != Task::Keep) {
            next_ = std::move(request);
        }
        return;
    }
    run(request);
}

void CopyKeeper::run(const CopyRequest& request) {
    doing_ = request.task;
    auto answer = std::make_shared<CopyAnswer>();
    work_.start([request, answer](WorkWatch& watch) { *answer = workOnCopies(request, watch); },
                [this, request, answer] { done(request, std::move(*answer)); });
    emit changed();
}

void CopyKeeper::done(const CopyRequest& request, CopyAnswer answer) {
    doing_.reset();
    answer_ = std::move(answer);
    // A look or a verification that went well does not mend what kept the last copy from being made.
    if (request.task == Task::Keep || request.task == Task::KeepIfDue || !answer_.trouble.isEmpty()) {
        trouble_ = answer_.trouble;
    }
    if (next_) {
        CopyRequest wanted = std::move(*next_);
        next_.reset();
        wanted.verified = answer_.verified;
        run(wanted);
    } else {
        emit changed();
    }
    if (request.task == Task::Keep && answer_.kept) {
        emit keptByHand();
    }
}

} // namespace wickbook::ui
