// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/copy_book.h"
#include "app/cli/verb_table.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace wickbook::cli {

VerbAction declareBackup(CLI::App& command) {
    struct Texts {
        std::string book, out;
    };
    auto texts = std::make_shared<Texts>();
    command.add_option("--book", texts->book, "The book; it may be in use meanwhile")->required();
    command.add_option("--out", texts->out, "File of the copy; nothing may be there yet")->required();
    return [texts] { return copyBook(texts->book, texts->out); };
}

} // namespace wickbook::cli
