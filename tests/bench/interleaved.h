// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <string_view>
#include <utility>
#include <vector>

/// Two things measured turn and turn about in one process, so that what the machine does besides falls on
/// both alike, and the line by which the table of all measurements takes the figures up.

namespace wickbook::bench {

/// Microseconds of one call.
template <typename Work>
double microseconds(Work&& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start).count();
}

inline double median(std::vector<double> values) {
    const auto half = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), half, values.end());
    return *half;
}

/// Medians of both, microseconds, over rounds ≥ 1.
template <typename One, typename Other>
std::pair<double, double> interleaved(int rounds, One&& one, Other&& other) {
    std::vector<double> first;
    std::vector<double> second;
    for (int round = 0; round < rounds; ++round) {
        first.push_back(microseconds(one));
        second.push_back(microseconds(other));
    }
    return {median(std::move(first)), median(std::move(second))};
}

/// "@ key value peer": what was measured and what it is held against, in one unit.
inline void tell(std::string_view key, double value, double peer) {
    fmt::print("@ {} {:.6g} {:.6g}\n", key, value, peer);
    std::fflush(stdout);
}

} // namespace wickbook::bench
