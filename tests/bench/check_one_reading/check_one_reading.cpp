// SPDX-License-Identifier: GPL-3.0-or-later
// What checking costs, measured in one run and printed as ratios; nothing is asserted.
//   1. One new reading, in a book of a month and one of a hundred years (the invented station), taken turn
//   and
//      turn about: as the window asks (book open, station's model learnt), and as a program of one reading
//      does (open the book, judge, close).
//   2. The whole register: deriving it, checking it without and with likely causes.
// Arguments: years of the old book (100).
#include "core/desk/sample_book.h"
#include "core/desk/whole_register.h"
#include "tests/bench/interleaved.h"

#include <fmt/format.h>

#include <cstdlib>
#include <filesystem>

using namespace wickbook;
using namespace std::chrono_literals;
using namespace date::literals;
namespace fs = std::filesystem;

namespace {

constexpr record::Instant kNow{date::sys_days{2026_y / 11 / 22} + 8h + 52min};

[[noreturn]] void giveUp(const store::StoreError& error) {
    fmt::print(stderr, "The book can't be made or read: {}\n", error.detail);
    std::exit(1);
}

template <typename T>
T must(store::Result<T> result) {
    if (!result) {
        giveUp(result.error());
    }
    return std::move(*result);
}

void make(const fs::path& path, int years, int weeks) {
    must(desk::createSampleBook(path,
                                {.lastDay = record::StationDate{date::local_days{2026_y / 11 / 22}},
                                 .years = years,
                                 .weeks = weeks,
                                 .until = kNow},
                                std::make_shared<record::SystemClock>()));
}

/// A book as the window holds it: open, with its station and what the station usually reads.
struct Open {
    explicit Open(const fs::path& path)
        : book(must(store::Book::open(path)))
        , station(must(book.station()))
        , model(must(desk::stationModel(book, station)))
        , entry(must(book.neighbours(kNow, 1, 0)).front().values) {
        entry.hour.reset();
        entry.instant += 1h;
    }
    void judge() const { must(desk::judgeEntry(book, station, entry, std::nullopt, kNow, true, &model)); }

    store::Book book;
    record::StationRecord station;
    checks::StationModel model;
    record::Observation entry;
};

void openAndJudge(const fs::path& path, const record::Observation& entry) {
    const store::Book book = must(store::Book::open(path));
    const record::StationRecord station = must(book.station());
    must(desk::judgeEntry(book, station, entry, std::nullopt, kNow, true));
}

void reportOne(const char* what, std::pair<double, double> times) {
    fmt::print("{:<44} {:>9.0f} µs {:>9.0f} µs   ratio {:.2f}\n", what, times.first, times.second,
               times.second / times.first);
}

void reportWhole(const Open& open) {
    std::vector<record::StoredObservation> stored;
    std::vector<record::DerivedReading> readings;
    const auto span = must(open.book.span());
    const double reading = bench::microseconds(
        [&] { stored = must(open.book.observationsBetween(span->first, span->second + 1s)); });
    const double deriving = bench::microseconds([&] {
        readings.reserve(stored.size());
        for (const auto& observation : stored) {
            readings.push_back(record::deriveReading(observation, open.station));
        }
    });
    const checks::StationLimits limits{open.station.facts().limits};
    const auto check = [&](const checks::StationModel* model) {
        return bench::microseconds([&] {
            checks::checkSeries(readings, 0, readings.size(), open.station, limits, kNow, {}, model);
        });
    };
    const double without = check(nullptr);
    const double learning = bench::microseconds([&] { checks::StationModel{readings}; });
    const double with = check(&open.model);
    fmt::print("\n{} readings                       ms   × deriving\n", readings.size());
    const auto line = [&](const char* what, double time) {
        fmt::print("{:<34} {:>8.0f} {:>8.1f}\n", what, time / 1000, time / deriving);
    };
    line("reading the book", reading);
    line("deriving", deriving);
    line("checking without causes", without);
    line("learning the station", learning);
    line("checking with causes", with);
    bench::tell("check.plain", without, deriving);
    bench::tell("check.causes", with, deriving);
}

} // namespace

int main(int count, char** arguments) {
    const int years = count > 1 ? std::max(1, std::atoi(arguments[1])) : 100;
    const fs::path folder = fs::temp_directory_path() / ("wickbook-bench-" + record::Uuid::random().toText());
    fs::create_directories(folder);
    const fs::path monthPath = folder / "month.wickbook";
    const fs::path oldPath = folder / "old.wickbook";
    make(monthPath, 0, 5);
    make(oldPath, years, 0);
    {
        const Open month(monthPath);
        const Open old(oldPath);
        fmt::print("{:<44} {:>12} {:>12}\n", "one reading, medians", "5 weeks",
                   fmt::format("{} years", years));
        // The two entries stand an hour after the newest reading of either book.
        reportOne("judged at entry, the model learnt",
                  bench::interleaved(
                      400, [&] { month.judge(); }, [&] { old.judge(); }));
        reportOne("book opened, judged, closed", bench::interleaved(
                                                     100, [&] { openAndJudge(monthPath, month.entry); },
                                                     [&] { openAndJudge(oldPath, old.entry); }));
        reportOne("learning the station, once for a book",
                  bench::interleaved(
                      5, [&] { must(desk::stationModel(month.book, month.station)); },
                      [&] { must(desk::stationModel(old.book, old.station)); }));
        reportWhole(old);
    }
    std::error_code ignored;
    fs::remove_all(folder, ignored);
    return 0;
}
