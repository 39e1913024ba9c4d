// SPDX-License-Identifier: GPL-3.0-or-later
// Appends one reading after the other to a book and writes down each one only after the book has said that it
// is stored; meant to be killed at any moment. append_loop BOOK SEED COUNT prints "<sequence> <subject>" per
// reading.
#include "tests/core/store/book_testing.h"

#include <unistd.h>

#include <cstdio>
#include <cstdlib>
#include <string>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

int main(int argc, char** argv) {
    if (argc != 4) {
        std::fputs("usage: append_loop BOOK SEED COUNT\n", stderr);
        return 2;
    }
    const std::uint64_t seed = std::strtoull(argv[2], nullptr, 10);
    const int count = std::atoi(argv[3]);
    auto book = Book::open(argv[1]);
    if (!book) {
        std::fprintf(stderr, "%s\n", book.error().detail.c_str());
        return 3;
    }
    for (int i = 0; i < count; ++i) {
        ObservationChange one;
        one.revision = record::Uuid::fromSeed(seed, 2 * static_cast<std::uint64_t>(i));
        one.subject = record::Uuid::fromSeed(seed, 2 * static_cast<std::uint64_t>(i) + 1);
        one.values = reading(i);
        one.values.hour.reset(); // so that loops with different seeds don't meet
        one.author = {"loop", {}};
        const auto receipt = book->append(one);
        if (!receipt) {
            std::fprintf(stderr, "%s\n", receipt.error().detail.c_str());
            return 1;
        }
        const std::string line = std::to_string(receipt->sequence) + " " + one.subject.toText() + "\n";
        // Unbuffered: what is in the pipe was said.
        if (::write(STDOUT_FILENO, line.data(), line.size()) != static_cast<ssize_t>(line.size()))
            return 4;
    }
    return 0;
}
