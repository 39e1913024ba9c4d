// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/raise_line.h"

#include <QCoreApplication>
#include <QFile>
#include <QSocketNotifier>
#include <QStandardPaths>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>

namespace wickbook::ui {

QString RaiseLine::pipeOf(qint64 process) {
    return QStandardPaths::writableLocation(QStandardPaths::RuntimeLocation) +
           QStringLiteral("/wickbook-%1.raise").arg(process);
}

RaiseLine::RaiseLine(QObject* parent) : QObject(parent), path_(pipeOf(QCoreApplication::applicationPid())) {
    const QByteArray name = QFile::encodeName(path_);
    ::unlink(name.constData()); // of a process that had this number before
    if (::mkfifo(name.constData(), 0600) != 0) {
        return;
    }
    // For writing too, so that there is no end of file whenever a caller hangs up.
    descriptor_ = ::open(name.constData(), O_RDWR | O_NONBLOCK | O_CLOEXEC);
    if (descriptor_ < 0) {
        return;
    }
    notifier_ = new QSocketNotifier(descriptor_, QSocketNotifier::Read, this);
    connect(notifier_, &QSocketNotifier::activated, this, &RaiseLine::listen);
}

RaiseLine::~RaiseLine() {
    if (descriptor_ >= 0) {
        ::close(descriptor_);
        ::unlink(QFile::encodeName(path_).constData());
    }
}

void RaiseLine::listen() {
    std::array<char, 64> bytes{};
    bool heard = false;
    while (::read(descriptor_, bytes.data(), bytes.size()) > 0) {
        heard = true;
    }
    if (heard) {
        emit called();
    }
}

bool RaiseLine::call(qint64 process) {
    const QByteArray name = QFile::encodeName(pipeOf(process));
    struct stat status {};
    if (::stat(name.constData(), &status) != 0 || !S_ISFIFO(status.st_mode)) {
        return false;
    }
    // Without a reader this fails at once instead of waiting for one.
    const int descriptor = ::open(name.constData(), O_WRONLY | O_NONBLOCK | O_CLOEXEC);
    if (descriptor < 0) {
        return false;
    }
    const bool said = ::write(descriptor, "1", 1) == 1;
    ::close(descriptor);
    return said;
}

} // namespace wickbook::ui
