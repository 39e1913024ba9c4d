// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/outcome.h"

#include <istream>
#include <memory>
#include <string>

namespace wickbook::cli {

/// A file, or standard input for "-". Standard input is handed on as it comes: a row typed into a pipe is
/// seen at its line's end, not when some buffer is full.
class Input {
public:
    static Outcome<Input> open(const std::string& path);
    [[nodiscard]] std::istream& stream() { return *stream_; }
    /// Name without folders, for messages: no file of ours carries a path of the person's machine.
    [[nodiscard]] const std::string& name() const { return name_; }
    /// The first bytes, still to be read: what one read brings, 4096 at most.
    [[nodiscard]] std::string head();
    /// Bytes in the file; 0 where that is not known.
    [[nodiscard]] std::int64_t size() const { return size_; }

private:
    Input() = default;
    std::unique_ptr<std::streambuf> buffer_;
    std::unique_ptr<std::istream> stream_;
    std::string name_;
    std::int64_t size_ = 0;
};

} // namespace wickbook::cli
