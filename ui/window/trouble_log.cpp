// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/trouble_log.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QMutex>
#include <QRegularExpression>

#include <cstdio>
#include <cstdlib>

namespace wickbook::ui {

namespace {

constexpr qint64 kMostBytes = 200'000;
constexpr qint64 kKeptBytes = 100'000;

TroubleLog* running = nullptr;
QtMessageHandler before = nullptr;
QMutex writing;

void takeMessage(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    if (type != QtDebugMsg && type != QtInfoMsg) {
        TroubleLog::note(QStringLiteral("toolkit: ") + message);
    }
    if (before != nullptr) {
        before(type, context, message);
    }
}

/// The newer half stays, from a whole line on.
void keepSmall(const QString& path) {
    QFile file(path);
    if (file.size() <= kMostBytes || !file.open(QIODevice::ReadOnly)) {
        return;
    }
    file.seek(file.size() - kKeptBytes);
    QByteArray rest = file.readAll();
    rest = rest.mid(rest.indexOf('\n') + 1);
    file.close();
    if (file.open(QIODevice::WriteOnly | QIODevice::Truncate)) {
        file.write(rest);
    }
}

} // namespace

QString stateFolder() {
    const QString set = qEnvironmentVariable("XDG_STATE_HOME");
    const QString state =
        QDir::isAbsolutePath(set) ? set : QDir::home().filePath(QStringLiteral(".local/state"));
    return state + QStringLiteral("/wickbook");
}

QString withoutPaths(const QString& text) {
    // A path begins with / or ~/ at the beginning or after a space, quote or bracket, and goes on to a quote
    // or the end of the line: folders have blanks in them, and too little told is better than too much.
    static const QRegularExpression path(
        QStringLiteral("(^|[\\s\"'“„«(=:])(~?/[^\"'”“»\\n]*[^\"'”“»\\n\\s.,;:)])"));
    QString cut = text;
    return cut.replace(path, QStringLiteral("\\1…"));
}

TroubleLog::TroubleLog(QString file) : file_(std::move(file)) {
    if (!file_.isEmpty()) {
        QDir().mkpath(QFileInfo(file_).absolutePath());
        keepSmall(file_);
    }
    running = this;
    before = qInstallMessageHandler(&takeMessage);
}

TroubleLog::~TroubleLog() {
    qInstallMessageHandler(before);
    before = nullptr;
    running = nullptr;
}

void TroubleLog::note(const QString& line) {
    const QMutexLocker lock(&writing);
    if (running != nullptr) {
        running->write(line);
    }
}

QString TroubleLog::runningText() {
    return running == nullptr ? QString{} : running->text();
}

void TroubleLog::write(const QString& line) {
    if (file_.isEmpty()) {
        return;
    }
    QFile file(file_);
    if (!file.open(QIODevice::WriteOnly | QIODevice::Append)) {
        return;
    }
    QString said = withoutPaths(line);
    said.replace(QLatin1Char('\n'), QLatin1Char(' '));
    file.write(QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toUtf8() + ' ' + said.toUtf8() + '\n');
}

QString TroubleLog::text() const {
    QFile file(file_);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString{};
}

} // namespace wickbook::ui
