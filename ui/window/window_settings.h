// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

/// What the window remembers from one day to the next, in one small file whose path is given (never a
/// global). Books themselves hold everything that matters; this file may be lost without harm.

namespace wickbook::ui {

class WindowSettings {
public:
    /// file: an INI file; its folder also holds the drafts of unfinished entries.
    explicit WindowSettings(QString file) : file_(std::move(file)) {}

    [[nodiscard]] QStringList recentBooks() const; ///< newest first, only such as still exist
    void rememberBook(const QString& path);
    /// The book open at the last end; empty: none.
    [[nodiscard]] QString lastBook() const;
    void setLastBook(const QString& path);
    [[nodiscard]] QString observer() const;
    void setObserver(const QString& initials);
    [[nodiscard]] QByteArray geometry() const;
    void setGeometry(const QByteArray& geometry);
    [[nodiscard]] QString draftFolder() const;
    /// How registers brought in were read the last time.
    [[nodiscard]] QString takeInFile() const;

private:
    QString file_;
};

} // namespace wickbook::ui
