// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/copy_shelf.h"
#include "ui/session/background_work.h"

#include <QLocale>
#include <QString>
#include <QStringList>

#include <filesystem>
#include <vector>

/// What restoring does beside the window: reads a folder of copies, verifies one, makes a new book out of it
/// and holds that against the book that is open. Only the new file is ever written.

namespace wickbook::ui {

struct FoundCopies {
    std::vector<store::KeptCopy> copies; ///< the newest first
    QString problem;                     ///< why the folder can't be read
};
FoundCopies findCopies(const std::filesystem::path& folder);

/// The sentence: that it is sound and what it holds, or what is wrong. Empty: stopped.
struct VerifiedCopy {
    bool sound = false;
    QString sentence;
};
VerifiedCopy verifyCopy(const std::filesystem::path& copy, const QLocale& locale, WorkWatch& watch);

struct RestoreJob {
    std::filesystem::path copy;
    std::filesystem::path newBook;
    std::filesystem::path compareWith; ///< empty: nothing to hold it against
    QLocale locale;
};
struct Restored {
    bool done = false;  ///< the new book stands
    QString sentence;   ///< what was restored, or why nothing was; empty: stopped, nothing written
    QStringList totals; ///< what differs, one sentence for each kind
    QStringList lines;  ///< each difference, up to 200
};
Restored restoreCopy(const RestoreJob& job, WorkWatch& watch);

} // namespace wickbook::ui
