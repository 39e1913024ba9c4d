// SPDX-License-Identifier: GPL-3.0-or-later
// Books that are not there, damaged, newer, or no books; and what is asked of them.
#include "tests/errors/provocations.h"

#include <gtest/gtest.h>

namespace wickbook::errors {

namespace {

void writeBook(const Bench& bench, const char* name, const std::string& bytes) {
    apptest::put(bench.file(name), bytes);
}

void cutBook(const Bench& bench) {
    writeBook(bench, "cut.wbk", apptest::contents(bench.book()).substr(0, 9000));
}

/// One digit of the reading's dry bulb, past SQLite: its own check sees nothing, the chain does.
void flippedBook(const Bench& bench) {
    std::string bytes = apptest::contents(bench.book());
    bytes.replace(bytes.find("[100,1,\"C\"]") + 1, 3, "200");
    writeBook(bench, "flip.wbk", bytes);
}

/// Bytes 60 to 63 are user_version ("Database File Format", section 1.3).
void newerBook(const Bench& bench) {
    std::string bytes = apptest::contents(bench.book());
    bytes[63] = 99;
    writeBook(bench, "newer.wbk", bytes);
}

/// Dublin's clock showed 01:30 twice on 26 October 2025 (IANA time zone database).
void readAtBothHalfPastOnes(const Bench& bench) {
    for (const char* at : {"2025-10-26T00:30Z", "2025-10-26T01:30Z"}) {
        const auto added =
            apptest::run({"add", "--book", bench.book(), "--at", at, "--dry", "10.0", "--wet", "9.0"});
        EXPECT_EQ(added.code, 0) << added.err;
    }
}

} // namespace

std::vector<Provocation> bookProvocations() {
    return {
        said("none.wbk is not there: look for it in another folder, or start a new station.",
             {"check", "--book", "{dir}/none.wbk"}, {.code = 3}),
        said("book.wbk is there already and was left as it is: choose another name.",
             {"new", "--book", "{book}", "--name", "N", "--elevation", "120", "--latitude", "53.4",
              "--longitude", "-6.2", "--zone", "Europe/Dublin", "--hours", "08:00,20:00", "--exposure",
              "screen"},
             {.code = 3}),
        said("a.txt is not a book of this program and was left untouched: choose another file.",
             {"check", "--book", "{dir}/a.txt"}, {.code = 3, .files = {{"a.txt", "a letter\n"}}}),
        said("cut.wbk is damaged and was left untouched: keep it, and restore the newest backup into a new "
             "file. (SQLITE_CORRUPT (11): database disk image is malformed)",
             {"check", "--book", "{dir}/cut.wbk"}, {.code = 3, .before = cutBook}),
        said("Keep this file as it is. First restore the newest backup that verifies into a new book: "
             "wickbook restore --from BACKUP --book NEW. Where there is none, or it lacks readings, save "
             "what can be read of this file: wickbook salvage --from DAMAGED --book NEW.",
             {"verify", "--book", "{dir}/cut.wbk"}, {.code = 1, .before = cutBook}),
        said("Keep this file as it is. First restore the newest backup that verifies into a new book: "
             "wickbook restore --from BACKUP --book NEW. Where there is none, or it lacks readings, save "
             "what can be read of this file: wickbook salvage --from DAMAGED --book NEW.",
             {"verify", "--book", "{dir}/flip.wbk"}, {.code = 1, .before = flippedBook}),
        said("{dir}/flip.wbk is damaged (Revision 6: revision 6 is not as it was written); verify it, and "
             "use another copy.",
             {"backup", "--book", "{dir}/flip.wbk", "--out", "{dir}/c.wbk"},
             {.code = 3, .before = flippedBook}),
        said("newer.wbk was written by a later version: it can be read here but not written. Install the "
             "later version to write in it.",
             {"add", "--book", "{dir}/newer.wbk", "--dry", "10.0", "--wet", "9.0"},
             {.code = 3, .before = newerBook}),
        said("proc can't be opened: check that you may read the file and its folder. (this is a folder)",
             {"check", "--book", "/proc"}, {.code = 3}),
        said("There is no reading at this time: check date and hour.",
             {"history", "--book", "{book}", "--at", "2025-03-05T08:00"}),
        said("The clock showed 2025-10-26T01:30 twice and there is a reading at each; add the offset, such "
             "as 2025-10-26T01:30:00Z.",
             {"history", "--book", "{book}", "--at", "2025-10-26T01:30"}, {.before = readAtBothHalfPastOnes}),
        said("Say where the copy shall go: either --out FILE or --shelf FOLDER.",
             {"backup", "--book", "{book}"}),
        said("Name the copy with --from and the new book with --book; --list FOLDER shows the copies in a "
             "folder.",
             {"restore", "--from", "{book}"}),
        said("--list stands alone: list the copies first, then restore one with --from and --book.",
             {"restore", "--list", "{dir}", "--from", "{book}"}),
        said("--list {dir}/nowhere: this is not a folder that can be read; name the folder that the copies "
             "are kept in.",
             {"restore", "--list", "{dir}/nowhere"}, {.code = 3}),
    };
}

} // namespace wickbook::errors
