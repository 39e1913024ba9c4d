// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/copy_book.h"
#include "app/cli/verb_table.h"

#include <memory>

namespace wickbook::cli {

VerbAction declareBackup(OptionList command) {
    struct Texts {
        std::string book, out;
    };
    auto texts = std::make_shared<Texts>();
    command.needed("--book", texts->book, "The book; it may be in use meanwhile");
    command.needed("--out", texts->out, "File of the copy; nothing may be there yet");
    return [texts] { return copyBook(texts->book, texts->out); };
}

} // namespace wickbook::cli
