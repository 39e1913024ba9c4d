// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/instant.h"
#include "core/record/uuid.h"

#include <optional>
#include <string>
#include <string_view>

/// The exposure diary: what happened to the screen and around it, by date. Nothing is derived from it; it is
/// there for whoever asks later why the readings changed.

namespace wickbook::record {

enum class DiaryKind {
    Washed,     ///< screen washed
    Painted,    ///< screen painted
    SnowChoked, ///< louvres choked with snow
    HedgeGrown, ///< hedge or trees grown
    HedgeCut,   ///< hedge or trees cut
    Moved,      ///< screen moved a little; a new place is a period of its own
    Photograph, ///< the yearly photograph, where it is kept in the note
    NewWick,    ///< a new wick, apart from a reading
    Water,      ///< reservoir cleaned and filled
    Other
};
inline constexpr int kDiaryKinds = static_cast<int>(DiaryKind::Other) + 1;

/// "washed", "painted", "snow-choked", "hedge-grown", "hedge-cut", "moved", "photograph", "other": as the
/// book keeps them.
std::string_view diaryKindName(DiaryKind kind);
std::optional<DiaryKind> diaryKindFromName(std::string_view name);

struct DiaryEntry {
    Uuid id;
    StationDate date{};
    DiaryKind kind = DiaryKind::Other;
    std::string note;
    bool withdrawn = false;
    bool operator==(const DiaryEntry&) const = default;
};

} // namespace wickbook::record
