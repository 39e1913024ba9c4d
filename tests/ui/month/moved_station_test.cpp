// SPDX-License-Identifier: GPL-3.0-or-later
// A station that moved by 400 m: charts break there, and its averages are not pooled in silence.
#include "tests/support/open_book.h"
#include "ui/commands/revise_facts.h"
#include "ui/month/other_years.h"

#include <QSignalSpy>

namespace {

using namespace wickbook;
using test::day;

/// Seven Novembers of morning readings.
void keepNovembers(test::OpenBook& book) {
    for (int year = 2020; year <= 2026; ++year) {
        for (unsigned date = 1; date <= 20; ++date) {
            book.keep(day(year, 11, date), 9, {80 + static_cast<std::int64_t>(date), 1}, {70, 1});
        }
    }
}

void move(test::OpenBook& book, record::StationDate from) {
    record::PeriodChange change;
    change.id = record::Uuid::random();
    change.from = record::startOfDate(from, book.session().station());
    // 400 m to the north: a degree of latitude is 111 km (common practice, no source).
    change.position = record::Position{52.0 + 0.4 / 111.0, -1.0};
    ASSERT_TRUE(ui::reviseFact<record::PeriodChange>(book.session(), std::nullopt, change, {"A", "moved"},
                                                     QStringLiteral("moved")));
}

/// How many other years stand behind the band of a November, once the work beside the window is done.
int yearsBehind(test::OpenBook& book, int year) {
    ui::OtherYears others(book.session());
    QSignalSpy found(&others, &ui::OtherYears::found);
    const auto band = [&] {
        return others.band(ui::Quantity::Humidity, day(year, 11, 1), day(year, 11, 30));
    };
    EXPECT_EQ(band().years, 0) << "nothing is known before it was worked out";
    EXPECT_TRUE(found.wait(60'000));
    return band().years;
}

TEST(MovedStation, AveragesAreOfOnePlace) {
    test::OpenBook book;
    keepNovembers(book);
    EXPECT_EQ(yearsBehind(book, 2026), 6);
    move(book, day(2026, 11, 1));
    EXPECT_EQ(yearsBehind(book, 2026), 0);
    // The old place keeps its own: 2025 has five other years there.
    EXPECT_EQ(yearsBehind(book, 2025), 5);
    // Joined after an overlap, they are one series again.
    record::PeriodChange joined = book.session().station().facts().periods.back();
    const record::PeriodChange apartAgain = joined;
    joined.joined = true;
    ASSERT_TRUE(ui::reviseFact<record::PeriodChange>(book.session(), apartAgain, joined, {"A", ""},
                                                     QStringLiteral("j")));
    EXPECT_EQ(yearsBehind(book, 2026), 6);
    book.session().undoStack().undo();
    book.session().undoStack().undo();
    EXPECT_EQ(yearsBehind(book, 2026), 6);
}

TEST(MovedStation, TheChartsLineBreaksAndTheMoveIsMarked) {
    test::OpenBook book;
    keepNovembers(book);
    const auto points = [&] {
        const auto readings = book.session().checkedOn(day(2026, 11, 1), day(2026, 11, 20));
        return ui::chartPoints(*readings, book.session().station(), day(2026, 11, 1), day(2026, 11, 20));
    };
    EXPECT_EQ(points().hours.front().runs.size(), 1U);
    move(book, day(2026, 11, 11));
    const auto broken = points();
    EXPECT_EQ(broken.hours.front().runs.size(), 2U);
    ASSERT_EQ(broken.events.size(), 1U);
    EXPECT_EQ(broken.events.front().kind, ui::ChartEvent::Kind::StationChanged);
}

} // namespace
