// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/absence.h"
#include "core/record/exposure_diary.h"
#include "core/store/body.h"

/// Absences and diary entries as bodies of revisions and back, for facts_body.

namespace wickbook::store {

body::Json toJson(const record::Absence& absence);
body::Json toJson(const record::DiaryEntry& entry);
/// Both throw MalformedBody.
record::Absence absenceFrom(const record::Uuid& subject, const body::Json& object);
record::DiaryEntry diaryEntryFrom(const record::Uuid& subject, const body::Json& object);

} // namespace wickbook::store
