// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sample/sample_station.h"
#include "core/store/book.h"

namespace wickbook::desk {

/// Writes the invented sample station into a new book, history and all, and opens it. Error AlreadyThere over
/// any existing path. progress as in Book::appendAll; stopped by it, the book is there without readings.
store::Result<store::Book> createSampleBook(const std::filesystem::path& path, const sample::SamplePlan& plan,
                                            std::shared_ptr<const record::Clock> clock,
                                            const store::Progress& progress = {});

/// The plan that shows recent weeks: the last readings are those of today, up to now.
sample::SamplePlan samplePlanUntil(record::Instant now);

} // namespace wickbook::desk
