// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/pair_result.h"

#include <string>

/// One derived pair for a person to read.

namespace wickbook::cli {

/// Humidity and dew point with ± first, then the other quantities, what the numbers rest on, and findings.
std::string pairText(const PairResult& result);

/// The psychrometer equation with the numbers put in, step by step, and the uncertainty budget line by line.
/// Steps end where the derivation did.
std::string workingText(const PairResult& result);

/// A number for reading, not for data: with a real minus sign, as on paper.
std::string paperNumber(double value, int decimals);

/// Exposure and where its coefficient comes from; empty where none is known.
std::string coefficientSource(const PairResult& result);
/// "assumed: mean at sea level" and the like.
std::string pressureOriginText(PressureOrigin origin);

} // namespace wickbook::cli
