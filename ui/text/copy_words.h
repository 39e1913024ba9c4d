// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/copy_shelf.h"

#include <QLocale>
#include <QString>

/// What is said of copies of the book.

namespace wickbook::ui {

/// "daily", "by hand", "before bringing in", "before taking back".
QString copyReasonWords(store::CopyReason reason);
/// "22 Nov 2026, 08:52" by this computer's clock.
QString copyMomentWords(const QLocale& locale, record::Instant moment);
/// Moment, reason and what it holds, or why it can't be read.
QString copyLineWords(const QLocale& locale, const store::KeptCopy& copy);
/// Why no copy was kept, and what to do; folder: where it should have gone.
QString copyTroubleWords(const store::StoreError& error, const std::filesystem::path& folder);
/// Why no copy to hand on was made.
QString handOnTroubleWords(const store::StoreError& error);
/// Why an old copy could not be deleted.
QString stuckCopyWords(const store::StoreError& error);
/// Why a copy on the shelf can't be read.
QString unreadableCopyWords(const store::StoreError& error);
/// "1 copy", "12 copies".
QString copyCountWords(const QLocale& locale, std::int64_t count);
/// "1 reading", "1204 readings".
QString readingCountWords(const QLocale& locale, std::int64_t count);

} // namespace wickbook::ui
