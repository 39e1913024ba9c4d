// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>
#include <QEvent>
#include <QFile>
#include <QMainWindow>
#include <QTimer>

#include <cstdio>
#include <cstdlib>
#include <functional>

/// Waits for the first frame of a main window and does one thing then: the same for the program and for the
/// empty window it is held against.

namespace wickbook::bench {

class FirstPaint : public QObject {
public:
    explicit FirstPaint(std::function<void(QMainWindow&)> then) : then_(std::move(then)) {}

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint && !seen_) {
            if (auto* window = qobject_cast<QMainWindow*>(watched)) {
                seen_ = true;
                // Once the event is dealt with the whole window has been painted and handed to the display.
                QTimer::singleShot(0, window, [this, window] { then_(*window); });
            }
        }
        return false;
    }

private:
    std::function<void(QMainWindow&)> then_;
    bool seen_ = false;
};

/// Ends at once: what closing costs is not asked for.
[[noreturn]] inline void endHere() {
    std::fflush(stdout);
    std::_Exit(0);
}

/// Memory of this process that is in the machine's memory, MiB.
inline double residentMebibytes() {
    QFile file(QStringLiteral("/proc/self/status"));
    if (file.open(QIODevice::ReadOnly)) {
        for (const QByteArray& line : file.readAll().split('\n')) {
            if (line.startsWith("VmRSS:")) {
                return line.mid(6).trimmed().split(' ').front().toDouble() / 1024.0;
            }
        }
    }
    return 0;
}

} // namespace wickbook::bench
