// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/copy_book.h"
#include "app/cli/copy_shelf_verbs.h"
#include "app/cli/verb_table.h"

#include <memory>

namespace wickbook::cli {

VerbAction declareBackup(OptionList command) {
    struct Texts {
        std::string book, out, shelf;
    };
    auto texts = std::make_shared<Texts>();
    command.needed("--book", texts->book, "The book; it may be in use meanwhile");
    command.text("--out", texts->out, "File of the copy; nothing may be there yet");
    command.text("--shelf", texts->shelf,
                 "Folder in which copies are kept: one more, named by its moment, and old ones dropped (the "
                 "newest of each of 7 days, 8 weeks and 24 months stay)");
    return [texts]() -> Outcome<ExitCode> {
        if (texts->out.empty() == texts->shelf.empty()) {
            return refuse("Say where the copy shall go: either --out FILE or --shelf FOLDER.");
        }
        return texts->out.empty() ? keepOnShelf(texts->book, texts->shelf)
                                  : copyBook(texts->book, texts->out);
    };
}

} // namespace wickbook::cli
