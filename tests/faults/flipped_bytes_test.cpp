// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/processes.h"

#include <gtest/gtest.h>

#include <random>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

/// Everything a person can get out of a book, as text; "damaged" in place of what can't be read.
std::string everythingIn(const Book& book, int readings) {
    std::string text;
    if (const auto station = book.station())
        text += station->name() + std::to_string(station->facts().periods.size());
    else
        text += "damaged";
    for (int i = 0; i < readings; ++i) {
        const auto history = book.history(change(reading(i), static_cast<std::uint64_t>(i)).subject);
        if (!history) {
            text += "damaged";
            continue;
        }
        for (const auto& one : *history) {
            text += std::to_string(one.stamp.sequence) + one.stamp.id.toText() + one.stamp.author.who +
                    one.stamp.author.why + std::to_string(one.stamp.recordedAt.time_since_epoch().count()) +
                    one.values.note + (one.values == reading(i) ? "=" : "x");
        }
    }
    return text;
}

} // namespace

TEST(ABookWithOneByteFlipped, NeverCrashesAndIsNeverCalledSoundWhenAValueDiffers) {
    const TempFolder folder;
    constexpr int kReadings = 30;
    {
        Book book = newBook(folder / "sound");
        for (int i = 0; i < kReadings; ++i)
            ASSERT_TRUE(book.append(change(reading(i), static_cast<std::uint64_t>(i), "typed")));
    }
    const std::string sound = bytesAt(folder / "sound");
    const std::string expected = everythingIn(*Book::open(folder / "sound"), kReadings);
    std::mt19937_64 source(20250301);
    std::uniform_int_distribution<std::size_t> anywhere(0, sound.size() - 1);
    std::uniform_int_distribution<unsigned> bit(0, 7);
    int refused = 0;
    int named = 0;
    int differed = 0;
    int harmless = 0;
    constexpr int kFlips = 600;
    for (int i = 0; i < kFlips; ++i) {
        // The first hundred go through the header, where every byte means something.
        const std::size_t place = i < 100 ? static_cast<std::size_t>(i) : anywhere(source);
        std::string flipped = sound;
        flipped[place] = static_cast<char>(static_cast<unsigned char>(flipped[place]) ^ (1U << bit(source)));
        const TempFolder here;
        writeBytes(here / "book", flipped);
        const auto book = Book::open(here / "book");
        if (!book) {
            ++refused;
            EXPECT_FALSE(book.error().detail.empty());
            EXPECT_TRUE(bytesAt(here / "book") == flipped) << "a refused book was written to, byte " << place;
            continue;
        }
        const bool differs = everythingIn(*book, kReadings) != expected;
        const auto report = book->verify();
        const bool found = !report || !report->sound();
        if (differs) {
            ++differed;
            EXPECT_TRUE(found) << "byte " << place << " changed what is read and verify calls it sound";
        }
        if (found)
            ++named;
        else
            ++harmless;
    }
    std::printf(
        "%d flips: %d refused at opening, %d named by verify (%d changed what is read), %d without effect\n",
        kFlips, refused, named, differed, harmless);
    EXPECT_GT(differed, 20) << "too few flips met a value: this proved little";
}

TEST(ABookWithGarbageForAPage, NeverCrashesAndIsNamed) {
    const TempFolder folder;
    constexpr int kReadings = 200;
    {
        Book book = newBook(folder / "sound");
        std::vector<ObservationChange> changes;
        for (int i = 0; i < kReadings; ++i)
            changes.push_back(change(reading(i), static_cast<std::uint64_t>(i)));
        ASSERT_TRUE(book.appendAll(changes));
    }
    const std::string sound = bytesAt(folder / "sound");
    std::mt19937_64 source(20250302);
    for (std::size_t page = 0; page < sound.size() / 4096; ++page) {
        std::string damaged = sound;
        for (std::size_t i = 0; i < 4096; ++i)
            damaged[page * 4096 + i] = static_cast<char>(source());
        const TempFolder here;
        writeBytes(here / "book", damaged);
        auto book = Book::open(here / "book");
        if (!book)
            continue;
        static_cast<void>(everythingIn(*book, kReadings));
        const auto report = book->verify();
        EXPECT_TRUE(!report || !report->sound()) << "page " << page;
    }
}
