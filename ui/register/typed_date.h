// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instant.h"

#include <QLocale>
#include <QString>

#include <optional>

namespace wickbook::ui {

/// A date as it is typed: 2025-03-14, or short in the person's own way; a year of two digits is of 1930 to
/// 2029.
std::optional<record::StationDate> typedDate(const QLocale& locale, const QString& text);

} // namespace wickbook::ui
