// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/limit_preview.h"

#include <QObject>
#include <QString>

#include <atomic>
#include <memory>
#include <thread>

/// Counts, beside the window's own work, how many readings other limits would judge otherwise. Opens the book
/// once more, to read only, for a book is used by one thread. Owns its thread; going away stops it and waits.

namespace wickbook::ui {

class LimitsCounting : public QObject {
    Q_OBJECT

public:
    explicit LimitsCounting(QObject* parent = nullptr) : QObject(parent) {}
    ~LimitsCounting() override;

    /// Stops what is being counted and begins anew.
    void begin(const QString& path, const record::LimitChanges& after, record::Instant now);
    void stop();
    [[nodiscard]] bool isRunning() const { return running_; }

signals:
    void progressed(int percent);
    /// The sentence; empty where it was stopped.
    void finished(const QString& sentence);

private:
    struct Job {
        std::atomic<bool> stopped{false};
    };
    std::shared_ptr<Job> job_;
    std::thread thread_;
    bool running_ = false;
};

} // namespace wickbook::ui
