// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/dense_strokes.h"

#include <algorithm>
#include <limits>

namespace wickbook::ui {

void gatherReach(std::span<const std::int64_t> seconds, std::span<const float> values,
                 const DenseColumns& columns, std::vector<DenseReach>& reach) {
    reach.assign(columns.count(), {std::numeric_limits<float>::max(), std::numeric_limits<float>::lowest()});
    const auto first = std::lower_bound(seconds.begin(), seconds.end(), columns.from());
    for (auto k = static_cast<std::size_t>(first - seconds.begin());
         k < seconds.size() && seconds[k] <= columns.to(); ++k) {
        DenseReach& here = reach[columns.of(seconds[k])];
        here.low = std::min(here.low, values[k]);
        here.high = std::max(here.high, values[k]);
    }
}

} // namespace wickbook::ui
