// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols: x terms of a situation, y what was left over, w weights: (Σ x xᵀ + λ I) w = Σ x y.
// Source:  ridge regression (textbooks of statistics); λ, the three neighbours each way and the 40 h were
// chosen
//          on a manual register of fifteen years by learning on odd years and judging even ones, and the
//          reverse.
// Range:   patterns seen 100 times or more.
#include "core/checks/neighbour_habits.h"

#include <algorithm>
#include <cmath>

namespace wickbook::checks {

namespace {

constexpr double kRidge = 15;
constexpr std::size_t kHabitsEachWay = 3;
constexpr double kFarthestHabitHours = 40;
constexpr int kFewest = 100;
constexpr double kFarOut = 3.5;     // spreads: further out a departure is held here, for it may be a slip
constexpr double kNoPressure = 4.5; // spreads: a pressure further out is more likely misread than true

double held(double departure) {
    return std::clamp(departure, -kFarOut, kFarOut);
}

bool usable(const std::optional<double>& pressure) {
    return pressure && std::abs(*pressure) <= kNoPressure;
}

/// Solves the symmetric positive definite system, row by row in matrix; both right sides in place.
void solve(std::vector<double>& matrix, std::size_t size, std::vector<double>& a, std::vector<double>& b) {
    const auto at = [&](std::size_t i, std::size_t j) -> double& { return matrix[i * size + j]; };
    for (std::size_t j = 0; j < size; ++j) { // positive definite: no pivoting needed
        for (std::size_t i = j + 1; i < size; ++i) {
            const double factor = at(i, j) / at(j, j);
            for (std::size_t k = j; k < size; ++k) {
                at(i, k) -= factor * at(j, k);
            }
            a[i] -= factor * a[j];
            b[i] -= factor * b[j];
        }
    }
    for (std::size_t i = size; i-- > 0;) {
        for (std::size_t k = i + 1; k < size; ++k) {
            a[i] -= at(i, k) * a[k];
            b[i] -= at(i, k) * b[k];
        }
        a[i] /= at(i, i);
        b[i] /= at(i, i);
    }
}

double dot(const std::vector<double>& a, const std::vector<double>& b) {
    double sum = 0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        sum += a[i] * b[i];
    }
    return sum;
}

} // namespace

std::optional<NeighbourSituation> neighbourSituation(int hourOfDay, std::optional<double> pressure,
                                                     const std::vector<NeighbourDeparture>& neighbours,
                                                     bool withPressures) {
    if (withPressures && !usable(pressure)) {
        return std::nullopt;
    }
    NeighbourSituation result{{hourOfDay, withPressures ? 1 : 0}, {1.0}};
    std::size_t earlier = 0;
    std::size_t later = 0;
    for (const NeighbourDeparture& neighbour : neighbours) {
        std::size_t& taken = neighbour.hours < 0 ? earlier : later;
        if (std::abs(neighbour.hours) > kFarthestHabitHours || taken == kHabitsEachWay) {
            continue;
        }
        ++taken;
        result.pattern.push_back(static_cast<int>(std::lround(neighbour.hours)));
        result.terms.push_back(held(neighbour.temperature));
        result.terms.push_back(held(neighbour.dewPoint));
        if (withPressures) {
            if (!usable(neighbour.pressure)) {
                return std::nullopt;
            }
            result.terms.push_back(held(*neighbour.pressure));
        }
    }
    if (earlier + later == 0) {
        return std::nullopt;
    }
    if (withPressures) {
        result.terms.push_back(held(*pressure));
    }
    return result;
}

void NeighbourHabits::learn(const NeighbourSituation& situation, Habit left) {
    Learning& learning = learning_[situation.pattern];
    const std::vector<double>& terms = situation.terms;
    const std::size_t size = terms.size();
    learning.products.resize(size * size);
    learning.withT.resize(size);
    learning.withD.resize(size);
    ++learning.count;
    for (std::size_t i = 0; i < size; ++i) {
        for (std::size_t j = 0; j < size; ++j) {
            learning.products[i * size + j] += terms[i] * terms[j];
        }
        learning.withT[i] += terms[i] * left.temperature;
        learning.withD[i] += terms[i] * left.dewPoint;
    }
}

void NeighbourHabits::settle() {
    for (auto& [pattern, learning] : learning_) {
        if (learning.count < kFewest) {
            continue;
        }
        const std::size_t size = learning.withT.size();
        for (std::size_t i = 0; i < size; ++i) {
            learning.products[i * size + i] += kRidge;
        }
        solve(learning.products, size, learning.withT, learning.withD);
        weights_[pattern] = {std::move(learning.withT), std::move(learning.withD)};
    }
    learning_.clear();
}

std::optional<Habit> NeighbourHabits::find(const NeighbourSituation& situation) const {
    const auto found = weights_.find(situation.pattern);
    if (found == weights_.end()) {
        return std::nullopt;
    }
    return Habit{dot(found->second.temperature, situation.terms),
                 dot(found->second.dewPoint, situation.terms)};
}

} // namespace wickbook::checks
