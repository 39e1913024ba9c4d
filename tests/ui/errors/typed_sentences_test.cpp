// SPDX-License-Identifier: GPL-3.0-or-later
// What the window says of an entry, of a cell of an old page and of a limit that can't be taken: the
// sentences themselves, as listed in tests/errors/sentences.md.
#include "core/checks/limit_edit.h"
#include "tests/support/open_book.h"
#include "ui/observe/entry_text.h"
#include "ui/oldpage/page_line.h"
#include "ui/text/limit_words.h"

#include <gtest/gtest.h>

namespace {

using namespace wickbook;
using namespace std::chrono_literals;

const record::Instant kNow = date::sys_days{date::year{2026} / 11 / 22} + 9h;

record::StationRecord hill() {
    return record::StationRecord{record::factsOf(test::hillStation(), [] { return record::Uuid::random(); })};
}

ui::EntryText entryAt(QDate date, int hourMinutes, const char* clock = "") {
    ui::EntryText entry;
    entry.date = date;
    entry.hourMinutes = hourMinutes;
    entry.clock = QString::fromUtf8(clock);
    entry.dry = QStringLiteral("16.4");
    entry.wet = QStringLiteral("14.2");
    return entry;
}

QString saidOf(const ui::EntryText& entry) {
    const auto read = ui::readEntry(entry, hill(), kNow);
    return read ? QString{} : read.error().sentence;
}

TEST(EntrySentences, OfDateAndTime) {
    EXPECT_EQ(saidOf(entryAt(QDate{}, 9 * 60)),
              QStringLiteral("There is no such date. Write it as day, month and year."));
    EXPECT_EQ(saidOf(entryAt(QDate(2026, 3, 1), 7 * 60)),
              QStringLiteral(
                  "The station does not read at that hour on that date. Choose another hour, or an extra "
                  "reading."));
    // London put the clocks on at 01:00 of 29 March 2026 (IANA time zone database).
    EXPECT_EQ(saidOf(entryAt(QDate(2026, 3, 29), -1, "01:30")),
              QStringLiteral(
                  "01:30 never came that night: the clocks were put forward. Write the time that the clock "
                  "showed."));
    EXPECT_EQ(saidOf(entryAt(QDate(2026, 3, 1), -1, "noon")),
              QStringLiteral("“noon” is not a time: write it as 2025-03-01T09:00."));
}

TEST(EntrySentences, OfNumbers) {
    ui::EntryText entry = entryAt(QDate(2026, 3, 1), 9 * 60);
    entry.wind = QStringLiteral("3.5");
    EXPECT_EQ(saidOf(entry), QStringLiteral("Wind is a Beaufort force from 0 to 12, a whole number."));
    entry.wind.clear();
    entry.dry = QStringLiteral("1.234,5");
    EXPECT_EQ(saidOf(entry),
              QStringLiteral("“1.234,5” has more than one mark: type the dry bulb with one decimal "
                             "mark, like 7.3."));
}

QString saidOfCell(ui::PageField field, const char* typed) {
    ui::LineText line;
    return ui::takeCell(line, field, QString::fromUtf8(typed), {QLocale::c(), 0, nullptr});
}

TEST(CellSentences, SayWhatCanBeWritten) {
    using ui::PageField;
    EXPECT_EQ(
        saidOfCell(PageField::Wind, "13"),
        QStringLiteral("Write the wind as a Beaufort force, a whole number from 0 to 12; “13” is none."));
    EXPECT_EQ(saidOfCell(PageField::Wick, "x"),
              QStringLiteral("Write w for water or i for ice; “x” is neither."));
    const QString weather = saidOfCell(PageField::Weather, "r");
    EXPECT_TRUE(weather.startsWith(QStringLiteral("Write the weather so that it can't be two things: ")))
        << weather.toStdString();
    EXPECT_TRUE(weather.endsWith(
        QStringLiteral(", or 0 for none. “r” is not clear; a remark in other words goes into the note.")))
        << weather.toStdString();
    const QString missing = saidOfCell(PageField::Dry, "m");
    EXPECT_TRUE(missing.startsWith(QStringLiteral("Say why nothing was read: "))) << missing.toStdString();
    EXPECT_TRUE(missing.endsWith(QStringLiteral("; or m and your own words."))) << missing.toStdString();
    EXPECT_EQ(saidOfCell(PageField::Note, "\""),
              QStringLiteral("There is no line above to repeat: write the cell out."));
    EXPECT_EQ(
        saidOfCell(PageField::Dry, "\""),
        QStringLiteral("A bulb's reading is written out on every line; only a missing line is repeated so."));
}

QString saidOfLimit(const char* name, double value) {
    const auto problem = checks::problemOf(name, value);
    return problem ? ui::limitProblemWords(QLocale::c(), *problem, units::TemperatureUnit::Celsius)
                   : QString{};
}

TEST(LimitSentences, SayWhatALimitMayBe) {
    EXPECT_TRUE(
        saidOfLimit("no-such.limit", 1).startsWith(QStringLiteral("There is no limit no-such.limit. ")));
    EXPECT_TRUE(saidOfLimit("very-dry.lowest-humidity", 400).contains(QStringLiteral(" can't be 400")));
    EXPECT_TRUE(saidOfLimit("very-dry.lowest-humidity", 400).contains(QStringLiteral(": it may be ")));
}

} // namespace
