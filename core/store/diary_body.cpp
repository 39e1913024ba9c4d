// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/diary_body.h"

namespace wickbook::store {

using body::Json;
using body::putText;

Json toJson(const record::Absence& absence) {
    Json object = Json::object();
    object["first_day"] = record::dateText(absence.from);
    object["last_day"] = record::dateText(absence.to);
    putText(object, "reason", absence.reason);
    putText(object, "deputy", absence.deputy);
    putText(object, "note", absence.note);
    if (absence.withdrawn)
        object["withdrawn"] = true;
    return object;
}

record::Absence absenceFrom(const record::Uuid& subject, const Json& object) {
    record::Absence absence;
    absence.id = subject;
    absence.from = body::date(object, "first_day");
    absence.to = body::date(object, "last_day");
    if (absence.to < absence.from)
        body::malformed("last_day");
    absence.reason = body::text(object, "reason");
    absence.deputy = body::text(object, "deputy");
    absence.note = body::text(object, "note");
    return absence;
}

Json toJson(const record::DiaryEntry& entry) {
    Json object = Json::object();
    object["date"] = record::dateText(entry.date);
    object["kind"] = record::diaryKindName(entry.kind);
    putText(object, "note", entry.note);
    if (entry.withdrawn)
        object["withdrawn"] = true;
    return object;
}

record::DiaryEntry diaryEntryFrom(const record::Uuid& subject, const Json& object) {
    record::DiaryEntry entry;
    entry.id = subject;
    entry.date = body::date(object, "date");
    const auto kind = record::diaryKindFromName(body::text(object, "kind"));
    if (!kind)
        body::malformed("kind");
    entry.kind = *kind;
    entry.note = body::text(object, "note");
    return entry;
}

} // namespace wickbook::store
