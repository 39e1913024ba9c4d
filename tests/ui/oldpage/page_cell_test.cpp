// SPDX-License-Identifier: GPL-3.0-or-later
// One cell: what the keys typed, and what stands there. The rules are this program's own.
#include "ui/oldpage/page_line.h"

#include <gtest/gtest.h>

namespace wickbook::ui {

namespace {

QString taken(PageField field, const char* typed, int implied = 0,
              const QLocale& locale = QLocale(QLocale::English, QLocale::UnitedKingdom)) {
    LineText line;
    const QString problem = takeCell(line, field, QString::fromUtf8(typed), {locale, implied, nullptr});
    EXPECT_EQ(problem, line.cell(field).problem);
    return problem.isEmpty() ? line.cell(field).text : QStringLiteral("refused");
}

TEST(PageCell, ImpliedTenthsCountDigitsAndAWrittenMarkCounts) {
    EXPECT_EQ(taken(PageField::Dry, "234", 1), QStringLiteral("23.4"));
    EXPECT_EQ(taken(PageField::Dry, "6", 1), QStringLiteral("0.6"));
    EXPECT_EQ(taken(PageField::Dry, "-6", 1), QStringLiteral("−0.6"));
    EXPECT_EQ(taken(PageField::Wet, "0", 1), QStringLiteral("0.0"));
    EXPECT_EQ(taken(PageField::Wet, "-123", 1), QStringLiteral("−12.3"));
    EXPECT_EQ(taken(PageField::Dry, "23.4", 1), QStringLiteral("23.4"));
    EXPECT_EQ(taken(PageField::Dry, "23,45", 1), QStringLiteral("23.45"));
    EXPECT_EQ(taken(PageField::Dry, "2209", 1), QStringLiteral("220.9"));
    EXPECT_EQ(taken(PageField::Maximum, "251", 1), QStringLiteral("25.1"));
    // Only thermometers: the wind's force and the pressure are as they stand.
    EXPECT_EQ(taken(PageField::Wind, "4", 1), QStringLiteral("4"));
    EXPECT_EQ(taken(PageField::Pressure, "1013", 1), QStringLiteral("1013"));
}

TEST(PageCell, AsTypedWithoutIt) {
    EXPECT_EQ(taken(PageField::Dry, "16"), QStringLiteral("16"));
    EXPECT_EQ(taken(PageField::Dry, "16.0"), QStringLiteral("16.0"));
    EXPECT_EQ(taken(PageField::Dry, "−0,6"), QStringLiteral("−0.6"));
    EXPECT_EQ(taken(PageField::Dry, "<"), QStringLiteral("<"));
    const QLocale german(QLocale::German, QLocale::Germany);
    EXPECT_EQ(taken(PageField::Dry, "234", 1, german), QStringLiteral("23,4"));
    EXPECT_EQ(taken(PageField::Dry, "23.4", 0, german), QStringLiteral("23,4"));
}

TEST(PageCell, RefusesWithASentenceAndKeepsTheText) {
    for (const char* typed : {"1.234,5", "abc", "--3", "1 234", "é", "99999999999999999999"}) {
        LineText line;
        EXPECT_FALSE(
            takeCell(line, PageField::Dry, QString::fromUtf8(typed), {QLocale(), 1, nullptr}).isEmpty())
            << typed;
        EXPECT_EQ(line.cell(PageField::Dry).text, QString::fromUtf8(typed));
    }
    EXPECT_EQ(taken(PageField::Wind, "13"), QStringLiteral("refused"));
    EXPECT_EQ(taken(PageField::Wind, "3.5"), QStringLiteral("refused"));
    EXPECT_EQ(taken(PageField::Weather, "r"), QStringLiteral("refused")); // rain, rime
    EXPECT_EQ(taken(PageField::Weather, "murk"), QStringLiteral("refused"));
    EXPECT_EQ(taken(PageField::Wick, "x"), QStringLiteral("refused"));
    EXPECT_EQ(taken(PageField::Dry, "\""), QStringLiteral("refused"));
    EXPECT_EQ(taken(PageField::Note, "\""), QStringLiteral("refused")); // nothing above
}

TEST(PageCell, WeatherByItsBeginning) {
    EXPECT_EQ(taken(PageField::Weather, "fo"), QStringLiteral("fog"));
    EXPECT_EQ(taken(PageField::Weather, "rai; ha"), QStringLiteral("refused")); // haze, hail
    EXPECT_EQ(taken(PageField::Weather, "rai; hai"), QStringLiteral("rain, hail"));
    EXPECT_EQ(taken(PageField::Weather, "0"), QStringLiteral("none"));
}

TEST(PageCell, AMissingLineEmptiesItsBulbsAndANumberFillsItAgain) {
    LineText line;
    const CellReading reading{QLocale(), 1, nullptr};
    takeCell(line, PageField::Dry, QStringLiteral("234"), reading);
    takeCell(line, PageField::Wet, QStringLiteral("mb"), reading);
    EXPECT_EQ(line.missing, QStringLiteral("broken"));
    EXPECT_TRUE(line.cell(PageField::Dry).text.isEmpty());
    takeCell(line, PageField::Dry, QStringLiteral("m"), reading);
    EXPECT_EQ(line.missing, QStringLiteral("broken")) << "a refused text must change nothing else";
    takeCell(line, PageField::Dry, QStringLiteral("120"), reading);
    EXPECT_TRUE(line.missing.isEmpty());
    for (const MissingReason& reason : pageMissingReasons()) {
        LineText other;
        takeCell(other, PageField::Dry, QLatin1Char('m') + QString(reason.key), reading);
        EXPECT_EQ(other.missing, reason.stored);
    }
}

TEST(PageCell, SameReadingMeansTheSameNumber) {
    const QLocale locale;
    LineText first;
    LineText again;
    const CellReading reading{locale, 0, nullptr};
    takeCell(first, PageField::Dry, QStringLiteral("16.0"), reading);
    takeCell(first, PageField::Wet, QStringLiteral("12.4"), reading);
    EXPECT_TRUE(differences(first, again).empty());
    EXPECT_FALSE(isTypedAgain(first, again));
    takeCell(again, PageField::Dry, QStringLiteral("16"), reading);
    EXPECT_TRUE(differences(first, again).empty());
    EXPECT_FALSE(isTypedAgain(first, again)) << "the wet bulb has not been typed yet";
    takeCell(again, PageField::Wet, QStringLiteral("12.5"), reading);
    EXPECT_EQ(differences(first, again), std::vector{PageField::Wet});
    takeCell(again, PageField::Dry, QStringLiteral("ma"), reading);
    EXPECT_EQ(differences(first, again), std::vector{PageField::Dry});
}

TEST(PageHabits, MovingAColumnKeepsTheOthersInOrder) {
    PageHabits habits;
    habits.moveColumn(PageField::Note, 0);
    EXPECT_EQ(habits.columns.front().field, PageField::Note);
    EXPECT_EQ(habits.columns[1].field, PageField::Dry);
    habits.moveColumn(PageField::Note, kPageFieldCount);
    EXPECT_EQ(habits.columns, PageHabits::usualColumns());
}

} // namespace

} // namespace wickbook::ui
