// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/limits_counting.h"

#include "ui/text/error_words.h"
#include "ui/text/limit_words.h"

#include <QMetaObject>

namespace wickbook::ui {

namespace {

using Told = std::function<bool(std::size_t done, std::size_t total)>;

/// The sentence, or nothing where it was stopped.
QString countedSentence(const std::string& path, const record::LimitChanges& after, record::Instant now,
                        const Told& told) {
    const auto book = store::Book::open(std::filesystem::path{path}, store::OpenMode::ReadOnly);
    if (!book) {
        return storeErrorWords(book.error());
    }
    const auto station = book->station();
    if (!station) {
        return storeErrorWords(station.error());
    }
    const auto preview = desk::previewLimits(*book, *station, after, now, told);
    if (!preview) {
        return storeErrorWords(preview.error());
    }
    return *preview ? limitPreviewWords(**preview) : QString{};
}

} // namespace

LimitsCounting::~LimitsCounting() {
    stop();
}

void LimitsCounting::begin(const QString& path, const record::LimitChanges& after, record::Instant now) {
    stop();
    job_ = std::make_shared<Job>();
    running_ = true;
    thread_ = std::thread([this, job = job_, file = path.toStdString(), after, now] {
        int shown = -1;
        const auto told = [&](std::size_t done, std::size_t total) {
            const int percent = total == 0 ? 0 : static_cast<int>(done * 100 / total);
            if (percent != shown) {
                shown = percent;
                QMetaObject::invokeMethod(
                    this,
                    [this, job, percent] {
                        if (job == job_) {
                            emit progressed(percent);
                        }
                    },
                    Qt::QueuedConnection);
            }
            return !job->stopped.load();
        };
        const QString sentence = countedSentence(file, after, now, told);
        QMetaObject::invokeMethod(
            this,
            [this, job, sentence] {
                if (job == job_ && running_) {
                    running_ = false;
                    emit finished(sentence);
                }
            },
            Qt::QueuedConnection);
    });
}

void LimitsCounting::stop() {
    const bool wasRunning = running_;
    running_ = false;
    if (job_) {
        job_->stopped = true;
    }
    if (thread_.joinable()) {
        thread_.join();
    }
    job_.reset();
    if (wasRunning) {
        emit finished({});
    }
}

} // namespace wickbook::ui
