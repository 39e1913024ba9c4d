// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/exposure_diary.h"

#include <QString>

namespace wickbook::ui {

/// "screen washed", "louvres choked with snow".
QString diaryKindWords(record::DiaryKind kind);

} // namespace wickbook::ui
