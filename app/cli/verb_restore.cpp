// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/copy_book.h"
#include "app/cli/verb_table.h"

#include <memory>

namespace wickbook::cli {

VerbAction declareRestore(OptionList command) {
    struct Texts {
        std::string from, book;
    };
    auto texts = std::make_shared<Texts>();
    command.needed("--from", texts->from, "The backup; nothing is written to it");
    command.needed("--book", texts->book, "File of the new book; nothing may be there yet");
    return [texts] { return copyBook(texts->from, texts->book); };
}

} // namespace wickbook::cli
