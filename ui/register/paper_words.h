// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"

#include <QString>

namespace wickbook::ui {

/// "Pocket-book 3, p. 17"; one of the two where the other was not given; empty where nothing is known.
QString paperWords(const std::optional<record::PaperPlace>& place);

} // namespace wickbook::ui
