// SPDX-License-Identifier: GPL-3.0-or-later
// Writes the book that is kept for the schema of the day: make_book_fixture schema_0001.wbk
#include "tests/data/books/fixture_contents.h"

#include <cstdio>

int main(int argc, char** argv) {
    if (argc != 2) {
        std::fputs("usage: make_book_fixture NEW_FILE\n", stderr);
        return 2;
    }
    try {
        wickbook::store::testing::makeFixture(argv[1]);
    } catch (const std::exception& exception) {
        std::fprintf(stderr, "%s\n", exception.what());
        return 1;
    }
    return 0;
}
