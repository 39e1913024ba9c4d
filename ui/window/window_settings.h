// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/copy_keeper.h"
#include "ui/window/preferences.h"

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
    /// What was chosen for the copies of one book.
    [[nodiscard]] CopyChoice copyChoice(const QString& book) const;
    void setCopyChoice(const QString& book, const CopyChoice& choice);
    /// A value that can't be is taken for the usual one.
    [[nodiscard]] Preferences preferences() const;
    void setPreferences(const Preferences& preferences);
    [[nodiscard]] QByteArray geometry() const;
    void setGeometry(const QByteArray& geometry);
    /// How the halves of a page were divided; name: the splitter's.
    [[nodiscard]] QByteArray division(const QString& name) const;
    void setDivision(const QString& name, const QByteArray& state);
    [[nodiscard]] QString draftFolder() const;
    /// How registers brought in were read the last time.
    [[nodiscard]] QString takeInFile() const;
    /// A file that can't be understood is put aside, so that it is there to be looked at and the next one
    /// begins afresh; the sentence that says so, empty where all is well. Asked once, at the start.
    [[nodiscard]] QString putAsideWhatIsUnreadable();

private:
    QString file_;
};

} // namespace wickbook::ui
