// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/outcome.h"
#include "app/cli/safe_file.h"

#include <nlohmann/json_fwd.hpp>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Where data go: standard output ("-") or a file that is there whole or not at all. The first failed write
/// is remembered and told by finish().

namespace wickbook::cli {

using JsonValue = nlohmann::ordered_json;

class Output {
public:
    /// "-": standard output. A file that is there is replaced, unless it is a book or another database.
    static Outcome<Output> open(const std::string& path);

    void text(std::string_view bytes);
    void csv(const std::vector<std::string>& cells);
    void json(const JsonValue& document);
    /// What was written so far is on its way to whoever reads.
    Outcome<void> flush();
    /// Whether somebody may read along, as from a pipe or a terminal: then each line is flushed. A file is
    /// whole at the end or not there.
    [[nodiscard]] bool isReadAlong() const;
    Outcome<void> finish();

private:
    Output() = default;
    std::optional<SafeFile> file_;
    std::optional<Refusal> trouble_;
};

/// A number of data with six decimals, as in CSV; null for a missing one.
JsonValue jsonNumber(const std::optional<double>& value);
/// Text, or null where it is empty.
JsonValue jsonText(std::string_view text);

enum class Format { Text, Json, Csv };
/// Reads "text", "json", "csv".
Outcome<Format> formatFrom(const std::string& name);

} // namespace wickbook::cli
