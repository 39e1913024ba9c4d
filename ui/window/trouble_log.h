// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

/// A record of starts, troubles and the toolkit's own warnings that a person can send to somebody who helps.
/// It holds no readings, no names of stations or observers and no folders: paths are cut to "…" before they
/// are written. One file, kept small; where it can't be written the program goes on without it.

namespace wickbook::ui {

class TroubleLog {
public:
    /// file: written from now on; empty: nothing is.
    explicit TroubleLog(QString file);
    ~TroubleLog();
    TroubleLog(const TroubleLog&) = delete;
    TroubleLog& operator=(const TroubleLog&) = delete;

    /// A line for the log that runs; where none does, nothing happens.
    static void note(const QString& line);
    [[nodiscard]] QString text() const;
    /// The text of the log that runs; empty where none does.
    static QString runningText();
    [[nodiscard]] const QString& file() const { return file_; }

private:
    void write(const QString& line);

    QString file_;
};

/// $XDG_STATE_HOME/wickbook (else ~/.local/state/wickbook), where the XDG Base Directory Specification 0.8
/// wants logs; the toolkit has no word for it yet.
QString stateFolder();

/// Whatever looks like a path, absolute or below the home folder, becomes "…".
QString withoutPaths(const QString& text);

} // namespace wickbook::ui
