// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/copy_book.h"
#include "app/cli/verb_table.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace wickbook::cli {

VerbAction declareRestore(CLI::App& command) {
    struct Texts {
        std::string from, book;
    };
    auto texts = std::make_shared<Texts>();
    command.add_option("--from", texts->from, "The backup; nothing is written to it")->required();
    command.add_option("--book", texts->book, "File of the new book; nothing may be there yet")->required();
    return [texts] { return copyBook(texts->from, texts->book); };
}

} // namespace wickbook::cli
