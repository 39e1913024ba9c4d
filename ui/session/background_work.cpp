// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/background_work.h"

#include <QThread>

#if defined(__GLIBC__)
#include <malloc.h>
#endif

namespace wickbook::ui {

namespace {

constexpr std::chrono::milliseconds kLook{100};

/// A whole register is much more while it is read and judged than what is kept of it; the C library would
/// hold on to the difference.
void giveMemoryBack() {
#if defined(__GLIBC__)
    malloc_trim(0);
#endif
}

} // namespace

BackgroundWork::BackgroundWork(QObject* parent) : QObject(parent) {
    look_.setInterval(kLook);
    connect(&look_, &QTimer::timeout, this,
            [this] { emit progressed(watch_ ? watch_->done.load() : 0, watch_ ? watch_->total.load() : 0); });
}

BackgroundWork::~BackgroundWork() {
    if (thread_ != nullptr) {
        stop();
        thread_->wait();
        delete thread_;
    }
}

void BackgroundWork::start(std::function<void(WorkWatch&)> work, std::function<void()> whenDone) {
    watch_ = std::make_shared<WorkWatch>();
    thread_ = QThread::create([work = std::move(work), watch = watch_] { work(*watch); });
    connect(thread_, &QThread::finished, this, [this, whenDone = std::move(whenDone)] {
        look_.stop();
        thread_->deleteLater();
        thread_ = nullptr;
        whenDone();
        giveMemoryBack();
    });
    look_.start();
    thread_->start();
}

void BackgroundWork::stop() {
    if (watch_) {
        watch_->stop = true;
    }
}

} // namespace wickbook::ui
