// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/review/review_work.h"

#include <chrono>

namespace wickbook::ui {

ReviewWork::ReviewWork(QObject* parent) : QObject(parent) {}

ReviewWork::~ReviewWork() {
    stop();
    if (thread_) {
        thread_->wait();
    }
}

void ReviewWork::start(const QString& path, record::Instant now) {
    stop_ = false;
    thread_.reset(QThread::create([this, path, now] { work(path, now); }));
    thread_->start(QThread::LowPriority);
}

void ReviewWork::stop() {
    stop_ = true;
}

void ReviewWork::end() {
    thread_->wait();
    thread_.reset();
}

void ReviewWork::work(const QString& path, record::Instant now) {
    // Everything told goes through the queue of this object's thread; what is told after it has gone is
    // dropped with it.
    const auto tell = [this](auto what) { QMetaObject::invokeMethod(this, what, Qt::QueuedConnection); };
    const auto fail = [&](const store::StoreError& error) {
        tell([this, error] {
            end();
            emit failed(error);
        });
    };
    const auto book = store::Book::open(std::filesystem::path{path.toStdString()}, store::OpenMode::ReadOnly);
    if (!book) {
        return fail(book.error());
    }
    const auto station = book->station();
    if (!station) {
        return fail(station.error());
    }
    using Clock = std::chrono::steady_clock;
    constexpr std::chrono::milliseconds kBetween{50};
    Clock::time_point last{};
    const auto checked = desk::checkWhole(
        *book, *station, now, [&](desk::WholeStage stage, std::size_t done, std::size_t total) {
            if (const auto moment = Clock::now(); moment - last >= kBetween) {
                last = moment;
                tell([this, stage, done, total] {
                    if (!stop_) {
                        emit progressed(stage, static_cast<int>(done), static_cast<int>(total));
                    }
                });
            }
            return !stop_.load();
        });
    if (!checked) {
        return fail(checked.error());
    }
    if (!*checked) {
        tell([this] {
            end();
            emit stopped();
        });
        return;
    }
    auto review = std::make_shared<const desk::RegisterReview>(desk::reviewOf(**checked));
    tell([this, review = std::move(review)] {
        end();
        emit finished(review);
    });
}

} // namespace wickbook::ui
