// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/window_settings.h"

#include <QDir>
#include <QFileInfo>
#include <QSettings>

namespace wickbook::ui {

namespace {

constexpr int kMostRecent = 8;
const QLatin1String kRecent("books/recent");
const QLatin1String kLast("books/last");
const QLatin1String kObserver("entry/observer");
const QLatin1String kGeometry("window/geometry");

} // namespace

QStringList WindowSettings::recentBooks() const {
    const QSettings settings(file_, QSettings::IniFormat);
    QStringList existing;
    for (const QString& path : settings.value(kRecent).toStringList()) {
        if (QFileInfo::exists(path)) {
            existing << path;
        }
    }
    return existing;
}

void WindowSettings::rememberBook(const QString& path) {
    QSettings settings(file_, QSettings::IniFormat);
    QStringList recent = settings.value(kRecent).toStringList();
    recent.removeAll(path);
    recent.prepend(path);
    settings.setValue(kRecent, recent.mid(0, kMostRecent));
}

QString WindowSettings::lastBook() const {
    return QSettings(file_, QSettings::IniFormat).value(kLast).toString();
}

void WindowSettings::setLastBook(const QString& path) {
    QSettings(file_, QSettings::IniFormat).setValue(kLast, path);
}

QString WindowSettings::observer() const {
    return QSettings(file_, QSettings::IniFormat).value(kObserver).toString();
}

void WindowSettings::setObserver(const QString& initials) {
    QSettings(file_, QSettings::IniFormat).setValue(kObserver, initials);
}

QByteArray WindowSettings::geometry() const {
    return QSettings(file_, QSettings::IniFormat).value(kGeometry).toByteArray();
}

void WindowSettings::setGeometry(const QByteArray& geometry) {
    QSettings(file_, QSettings::IniFormat).setValue(kGeometry, geometry);
}

QString WindowSettings::draftFolder() const {
    return QFileInfo(file_).dir().filePath(QStringLiteral("drafts"));
}

QString WindowSettings::takeInFile() const {
    return QFileInfo(file_).dir().filePath(QStringLiteral("brought-in.ini"));
}

} // namespace wickbook::ui
