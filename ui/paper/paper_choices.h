// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paper/sheet_dialog.h"
#include "ui/session/session.h"

#include <memory>

/// The sheets that a station has on paper, each with its choices. The session outlives the dialog.

namespace wickbook::ui {

std::unique_ptr<SheetDialog> humidityTableDialog(const Session& session, const QLocale& locale,
                                                 QWidget* parent);
std::unique_ptr<SheetDialog> monthFormDialog(const Session& session, const QLocale& locale, QWidget* parent);
std::unique_ptr<SheetDialog> yearBookDialog(const Session& session, const QLocale& locale, QWidget* parent);
std::unique_ptr<SheetDialog> deputyCardDialog(const Session& session, const QLocale& locale, QWidget* parent);

} // namespace wickbook::ui
