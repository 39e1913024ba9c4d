// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/exposure_diary.h"

#include <algorithm>
#include <array>

namespace wickbook::record {

namespace {
constexpr std::array<std::string_view, kDiaryKinds> kNames{
    "washed", "painted",    "snow-choked", "hedge-grown", "hedge-cut",
    "moved",  "photograph", "new-wick",    "water",       "other"};
}

std::string_view diaryKindName(DiaryKind kind) {
    return kNames.at(static_cast<std::size_t>(kind));
}

std::optional<DiaryKind> diaryKindFromName(std::string_view name) {
    const auto found = std::find(kNames.begin(), kNames.end(), name);
    if (found == kNames.end()) {
        return std::nullopt;
    }
    return static_cast<DiaryKind>(found - kNames.begin());
}

} // namespace wickbook::record
