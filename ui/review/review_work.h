// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/register_review.h"
#include "core/desk/whole_register.h"
#include "ui/session/session.h"

#include <QObject>
#include <QThread>

#include <atomic>
#include <memory>

namespace wickbook::ui {

/// Looks through the whole register on a thread of its own, with its own read-only view of the book: a
/// connection never crosses threads. Signals come on the thread of whoever made this. Going away stops the
/// work and waits for it, which takes a moment at most.
class ReviewWork : public QObject {
    Q_OBJECT

public:
    explicit ReviewWork(QObject* parent = nullptr);
    ~ReviewWork() override;

    /// Pre: not running.
    void start(const QString& path, record::Instant now);
    void stop();
    [[nodiscard]] bool isRunning() const { return thread_ != nullptr; }

signals:
    /// done of total readings in a stage; not oftener than some twenty times a second.
    void progressed(wickbook::desk::WholeStage stage, int done, int total);
    void finished(std::shared_ptr<const wickbook::desk::RegisterReview> review);
    /// Stopped as told; there is no answer.
    void stopped();
    void failed(const wickbook::store::StoreError& error);

private:
    void work(const QString& path, record::Instant now);
    void end();

    std::unique_ptr<QThread> thread_;
    std::atomic<bool> stop_{false};
};

} // namespace wickbook::ui
