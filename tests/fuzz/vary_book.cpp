// SPDX-License-Identifier: GPL-3.0-or-later
// Edits of a book, made as edits: whole ones are put in, taken out and exchanged, and they aim at where a
// database keeps what it goes by.
#include "tests/fuzz/book_edits.h"
#include "tests/fuzz/targets.h"

#include <array>

namespace wickbook::fuzz {

namespace {

constexpr std::size_t kPageBytes = 4096;

std::size_t upTo(std::size_t limit, Random& random) {
    return static_cast<std::size_t>(random() % (limit + 1));
}

std::string bigEndianBytes(std::size_t value, int bytes) {
    std::string text;
    for (int i = bytes - 1; i >= 0; --i) {
        text.push_back(static_cast<char>(value >> (8U * static_cast<unsigned>(i))));
    }
    return text;
}

std::string bytesFrom(Random& random, std::size_t count) {
    // The edges of what a byte, a length and a record's type can be.
    static constexpr std::array<unsigned char, 10> kEdges{0, 1, 2, 5, 10, 13, 0x7F, 0x80, 0xFE, 0xFF};
    std::string text;
    for (std::size_t i = 0; i < count; ++i) {
        text.push_back(random() % 2 == 0 ? static_cast<char>(kEdges.at(random() % kEdges.size()))
                                         : static_cast<char>(random()));
    }
    return text;
}

/// A place in the file: any, or in a page's head and cell pointers, or in a row's own text.
std::size_t placeInBook(Random& random) {
    const std::string& book = soundBook();
    const std::size_t pages = book.size() / kPageBytes;
    switch (random() % 4) {
    case 0:
        return upTo(book.size() - 1, random);
    case 1:
        return upTo(pages - 1, random) * kPageBytes + upTo(40, random);
    case 2:
        return upTo(99, random);
    default: { // a row's header lies before its body
        static constexpr std::array<std::string_view, 6> kMarks{"{\"",         "observation", "period",
                                                                "\"instant\"", "\"dry\"",     "\"zone\""};
        const std::size_t found =
            book.find(kMarks.at(random() % kMarks.size()), upTo(book.size() - 1, random));
        return found == std::string::npos ? upTo(book.size() - 1, random)
                                          : found - std::min<std::size_t>(found, upTo(60, random));
    }
    }
}

std::string newValue(Random& random) {
    static constexpr std::array<std::string_view, 20> kValues{
        "{}",
        R"({"instant":1741000000})",
        R"({"instant":1741000000,"zone":"Europe/London","dry":[164,1,"C"],"wet":[143,1,"C"],"origin":"observed"})",
        R"({"instant":99999999999,"hour":[20151,540]})",
        R"({"hours":[540,1440,0],"hour_rule":"clock"})",
        R"({"zone":"nowhere/at all"})",
        R"({"from":-100000000000,"elevation":1e300})",
        R"({"position":[91,181]})",
        R"({"hour_window":-2147483648,"name":"x"})",
        R"({"own_coefficient":{"water":0}})",
        R"({"points":[[0,1e308],[0,-1e308]],"thermometer":"00000000-0000-0000-0000-000000000000"})",
        R"({"step":[0,0],"lowest":[0,0],"highest":[0,0]})",
        R"({"withdrawn":true})",
        R"({"first_day":"2025-03-06","last_day":"2025-03-01"})",
        "0",
        "-1",
        "9223372036854775807",
        "observation",
        "period",
        "\xFF\xFE"};
    return std::string{kValues.at(random() % kValues.size())};
}

std::string newEdit(Random& random) {
    switch (random() % 12) {
    case 0:
    case 1:
        return "x" + bigEndianBytes(placeInBook(random), 3) + static_cast<char>(1U << (random() % 8));
    case 2:
    case 3: {
        const std::size_t count = 1 + upTo(5, random);
        return "o" + bigEndianBytes(placeInBook(random), 3) + static_cast<char>(count) +
               bytesFrom(random, count);
    }
    case 4:
        return "t" + bigEndianBytes(placeInBook(random), 3);
    case 5:
        return "p" + bytesFrom(random, 2);
    case 6:
        return "h" + bytesFrom(random, 1) +
               bigEndianBytes(random() % 3 == 0 ? random() : random() % 70000, 4);
    case 7:
        return "f" + bytesFrom(random, 2);
    case 8: {
        const std::string journal =
            std::string{"\xd9\xd5\x05\xf9\x20\xa1\x63\xd7"} + bytesFrom(random, 20 + upTo(40, random));
        return "j" + std::string(1, static_cast<char>(journal.size())) + journal;
    }
    case 9:
        return "s" + bytesFrom(random, 1);
    default: { // a forged row, with the chain made whole behind it
        const std::string value = newValue(random);
        const std::string edit = "c" + bytesFrom(random, 2) + static_cast<char>(value.size()) + value;
        return random() % 3 == 0 ? edit : edit + "k";
    }
    }
}

} // namespace

std::string varyBook(std::string_view bytes, std::size_t most, Random& random) {
    std::string varied;
    if (bytes.empty() || bytes.front() != 'e') {
        varied = random() % 4 == 0 ? varyBytes(bytes, most, random) : "e" + newEdit(random);
    } else if (random() % 3 == 0) {
        varied = "e" + varyBytes(bytes.substr(1), most, random);
    } else if (random() % 3 == 0) {
        varied = "e" + newEdit(random) + std::string{bytes.substr(1)};
    } else {
        varied = std::string{bytes} + newEdit(random);
    }
    varied.resize(std::min(varied.size(), most));
    return varied;
}

} // namespace wickbook::fuzz
