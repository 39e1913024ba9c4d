// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/window_settings.h"

#include "ui/text/language.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSettings>

#include <algorithm>

namespace wickbook::ui {

namespace {

constexpr int kMostRecent = 8;
const QLatin1String kRecent("books/recent");
const QLatin1String kLast("books/last");
const QLatin1String kObserver("entry/observer");
const QLatin1String kGeometry("window/geometry");
const QLatin1String kLanguage("window/language");
const QLatin1String kShade("window/shade");
const QLatin1String kLetters("window/letters");
const char* const kShades[] = {"desktop", "light", "dark"}; // in the order of Shade
const char* const kDailyCopy = "daily";
const char* const kCopyFolder = "folder";

/// A book's own settings, by a digest of its path: a path has letters that a key may not have.
QString keyOf(const QString& book, const char* name) {
    const QByteArray digest =
        QCryptographicHash::hash(QFileInfo(book).absoluteFilePath().toUtf8(), QCryptographicHash::Sha256);
    return QStringLiteral("copies-%1/%2")
        .arg(QString::fromLatin1(digest.toHex().left(24)), QLatin1String(name));
}

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

CopyChoice WindowSettings::copyChoice(const QString& book) const {
    const QSettings settings(file_, QSettings::IniFormat);
    CopyChoice choice;
    choice.daily = settings.value(keyOf(book, kDailyCopy), true).toBool();
    choice.folder = settings.value(keyOf(book, kCopyFolder)).toString();
    return choice;
}

void WindowSettings::setCopyChoice(const QString& book, const CopyChoice& choice) {
    QSettings settings(file_, QSettings::IniFormat);
    settings.setValue(keyOf(book, kDailyCopy), choice.daily);
    settings.setValue(keyOf(book, kCopyFolder), choice.folder);
}

Preferences WindowSettings::preferences() const {
    const QSettings settings(file_, QSettings::IniFormat);
    Preferences found;
    if (const QString language = settings.value(kLanguage).toString(); isLanguage(language)) {
        found.language = language;
    }
    const QString shade = settings.value(kShade).toString();
    for (int at = 0; at < static_cast<int>(std::size(kShades)); ++at) {
        if (shade == QLatin1String(kShades[at])) {
            found.shade = static_cast<Shade>(at);
        }
    }
    found.letters =
        std::clamp(settings.value(kLetters, kSmallestLetters).toInt(), kSmallestLetters, kLargestLetters);
    return found;
}

void WindowSettings::setPreferences(const Preferences& preferences) {
    QSettings settings(file_, QSettings::IniFormat);
    settings.setValue(kLanguage, preferences.language);
    settings.setValue(kShade, QLatin1String(kShades[static_cast<int>(preferences.shade)]));
    settings.setValue(kLetters, preferences.letters);
}

QString WindowSettings::putAsideWhatIsUnreadable() {
    {
        const QSettings settings(file_, QSettings::IniFormat);
        (void)settings.allKeys(); // sections are only read, and found wanting, when they are asked for
        if (settings.status() != QSettings::FormatError) {
            return {};
        }
    }
    const QString aside = file_ + QStringLiteral(".unreadable");
    QFile::remove(aside); // of an earlier time
    const QString name = QFileInfo(file_).fileName();
    if (!QFile::rename(file_, aside)) {
        return QCoreApplication::translate(
                   "settings", "What the window remembers (%1) can't be read, nor put aside: books are not "
                               "concerned, but the window begins with its usual settings. Delete the file.")
            .arg(name);
    }
    return QCoreApplication::translate(
               "settings",
               "What the window remembers (%1) could not be read and was put aside: books are not "
               "concerned. The window begins with its usual settings; open the book again.")
        .arg(name);
}

QByteArray WindowSettings::geometry() const {
    return QSettings(file_, QSettings::IniFormat).value(kGeometry).toByteArray();
}

void WindowSettings::setGeometry(const QByteArray& geometry) {
    QSettings(file_, QSettings::IniFormat).setValue(kGeometry, geometry);
}

QByteArray WindowSettings::division(const QString& name) const {
    return QSettings(file_, QSettings::IniFormat).value(QStringLiteral("halves/") + name).toByteArray();
}

void WindowSettings::setDivision(const QString& name, const QByteArray& state) {
    QSettings(file_, QSettings::IniFormat).setValue(QStringLiteral("halves/") + name, state);
}

QString WindowSettings::draftFolder() const {
    return QFileInfo(file_).dir().filePath(QStringLiteral("drafts"));
}

QString WindowSettings::takeInFile() const {
    return QFileInfo(file_).dir().filePath(QStringLiteral("brought-in.ini"));
}

} // namespace wickbook::ui
