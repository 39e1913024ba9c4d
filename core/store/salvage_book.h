// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/salvage.h"
#include "core/store/salvage_judge.h"

#include <filesystem>
#include <memory>

/// Writing what was returned into a new book: the revisions first, then what the salvage has to say of them.
/// Which of them stands at an hour that two claim, and which are judged doubtful, is decided here
/// (salvage.h).

namespace wickbook::store {

/// Makes the book in the empty file, in one transaction, and fills in what the report counts of it. path: the
/// name it will have, for errors. Progress over the rows; stopped, the report says so and the file is of no
/// use.
Result<void> createSalvaged(const std::filesystem::path& path, const std::filesystem::path& file,
                            const Judgement& judgement, const SalvageWords& words,
                            std::shared_ptr<const record::Clock> clock, SalvageReport& report,
                            const Progress& progress);

} // namespace wickbook::store
