// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/exit_code.h"
#include "core/store/store_error.h"

#include <tl/expected.hpp>

#include <string>

/// Why a verb stops: one sentence for standard error and the exit code. What a person's input can cause is
/// handed back as a value, never thrown.

namespace wickbook::cli {

struct Refusal {
    ExitCode code = ExitCode::BadInput;
    std::string sentence;
};

template <typename T>
using Outcome = tl::expected<T, Refusal>;

inline tl::unexpected<Refusal> refuse(std::string sentence, ExitCode code = ExitCode::BadInput) {
    return tl::unexpected(Refusal{code, std::move(sentence)});
}

/// A taken hour is the input's trouble, everything else the book's.
tl::unexpected<Refusal> refuse(const store::StoreError& error);

} // namespace wickbook::cli
