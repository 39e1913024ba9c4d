// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QTimer>

#include <atomic>
#include <cstdint>
#include <functional>
#include <memory>

class QThread;

/// One piece of long work in a thread of its own, while the window goes on answering. The work is told to
/// stop by a flag it asks for, never by force.

namespace wickbook::ui {

/// Shared by the window and the thread.
struct WorkWatch {
    std::atomic<bool> stop = false;
    std::atomic<std::int64_t> done = 0;
    std::atomic<std::int64_t> total = 0; ///< 0: not known

    /// Tells how far the work is; false: stop.
    bool go(std::int64_t nowDone, std::int64_t ofTotal) {
        done = nowDone;
        total = ofTotal;
        return !stop;
    }
};

class BackgroundWork : public QObject {
    Q_OBJECT

public:
    explicit BackgroundWork(QObject* parent = nullptr);
    /// Stops the work and waits for it.
    ~BackgroundWork() override;

    /// work runs in the thread; whenDone in this one, once it has ended. Pre: !isRunning().
    void start(std::function<void(WorkWatch&)> work, std::function<void()> whenDone);
    void stop();
    [[nodiscard]] bool isRunning() const { return thread_ != nullptr; }

signals:
    /// A few times a second; total 0 where it is not known.
    void progressed(qint64 done, qint64 total);

private:
    QThread* thread_ = nullptr;
    std::shared_ptr<WorkWatch> watch_;
    QTimer look_;
};

} // namespace wickbook::ui
