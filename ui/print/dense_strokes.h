// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

/// What is left of readings that stand closer than they can be told apart: for each column of pixels the
/// lowest and the highest of what falls into it. No reading is out of sight by it: a stroke from the lowest
/// to the highest covers every place that a line from reading to reading within the column would.

namespace wickbook::ui {

/// A span of time laid over columns, counted from its beginning.
class DenseColumns {
public:
    /// UTC seconds, to > from; count ≥ 1 columns fit the span.
    DenseColumns(std::int64_t from, std::int64_t to, std::size_t count)
        : from_(from)
        , to_(to)
        , count_(count)
        , perSecond_(static_cast<double>(count) / static_cast<double>(to - from)) {}

    /// One more than fits: what lies at the very end.
    [[nodiscard]] std::size_t count() const { return count_ + 1; }
    /// Pre: the moment lies in the span. One multiplication: it is worked out for every reading at every
    /// frame.
    [[nodiscard]] std::size_t of(std::int64_t seconds) const {
        return static_cast<std::size_t>(static_cast<double>(seconds - from_) * perSecond_);
    }
    [[nodiscard]] std::int64_t from() const { return from_; }
    [[nodiscard]] std::int64_t to() const { return to_; }

private:
    std::int64_t from_;
    std::int64_t to_;
    std::size_t count_;
    double perSecond_;
};

/// The reach of one column; low > high: nothing falls into it.
struct DenseReach {
    float low;
    float high;
    [[nodiscard]] bool isEmpty() const { return low > high; }
};

/// For each column, what of the readings falls into it; seconds in time order, as long as values.
void gatherReach(std::span<const std::int64_t> seconds, std::span<const float> values,
                 const DenseColumns& columns, std::vector<DenseReach>& reach);

} // namespace wickbook::ui
