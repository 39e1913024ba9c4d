// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/copy_book.h"
#include "app/cli/copy_shelf_verbs.h"
#include "app/cli/verb_table.h"

#include <memory>

namespace wickbook::cli {

namespace {

struct RestoreOptions {
    std::string from, book, compare, list;
};

Outcome<ExitCode> restore(const RestoreOptions& options) {
    if (!options.list.empty()) {
        if (!options.from.empty() || !options.book.empty() || !options.compare.empty()) {
            return refuse("--list stands alone: list the copies first, then restore one with --from and "
                          "--book.");
        }
        return listShelf(options.list);
    }
    if (options.from.empty() || options.book.empty()) {
        return refuse("Name the copy with --from and the new book with --book; --list FOLDER shows the "
                      "copies in a folder.");
    }
    auto restored = copyBook(options.from, options.book);
    if (!restored || options.compare.empty()) {
        return restored;
    }
    return printDifference(options.book, options.compare);
}

} // namespace

VerbAction declareRestore(OptionList command) {
    auto options = std::make_shared<RestoreOptions>();
    command.text("--from", options->from, "The copy; nothing is written to it");
    command.text("--book", options->book, "File of the new book; nothing may be there yet");
    command.text("--compare", options->compare,
                 "A book to hold the restored one against: what differs is printed");
    command.text("--list", options->list, "Only list the copies in this folder, as CSV");
    return [options] { return restore(*options); };
}

} // namespace wickbook::cli
