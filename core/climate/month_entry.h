// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/derived_reading.h"

#include <map>
#include <span>

/// What one reading means to a month's statistics. Readings are borrowed: they must outlive the entry.

namespace wickbook::climate {

/// A reading and whether statistics leave it out (the checks and the person's judgement decide, see report).
struct MonthEntry {
    const record::DerivedReading* reading = nullptr;
    bool setAside = false;
};

/// Every expected hour is one of the three.
enum class EntryKind {
    Missing,  ///< no reading, a reason in its place, withdrawn, or no humidity: one bulb only, wick unknown
    SetAside, ///< something was read, and it is left out: marked by the caller, or an estimate
    Counted   ///< humidity that counts
};

EntryKind kindOf(const MonthEntry& entry);

/// The one entry that stands for each hour it is filed under; extra readings are left out. Where two are
/// filed under the same hour the better one stands (counted before set aside before missing), of two alike
/// the earlier read. Pointers are into the span.
std::map<record::ObservingHour, const MonthEntry*> entriesByHour(std::span<const MonthEntry> entries);

} // namespace wickbook::climate
