// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>

class QSocketNotifier;

/// How one window of this program on this computer calls another forward: a named pipe in the person's own
/// runtime folder, named by process. Nothing goes over a network.

namespace wickbook::ui {

class RaiseLine : public QObject {
    Q_OBJECT

public:
    /// Listens for this process. Where no pipe can be made there is silence, and nothing else changes.
    explicit RaiseLine(QObject* parent = nullptr);
    ~RaiseLine() override;

    /// Asks the window of another process to come forward; false where nobody listens there.
    static bool call(qint64 process);

signals:
    void called();

private:
    static QString pipeOf(qint64 process);
    void listen();

    QString path_;
    int descriptor_ = -1;
    QSocketNotifier* notifier_ = nullptr;
};

} // namespace wickbook::ui
