// SPDX-License-Identifier: GPL-3.0-or-later
// Entry in °F, with a decimal comma, from right to left, and all of these at once: it works, and what was
// read is shown back as it was read.
#include "tests/ui/observe/observe_case.h"
#include "ui/observe/thermometer_drawing.h"

#include <QAbstractButton>

namespace {

using namespace wickbook;
using test::day;

record::NewStation fahrenheitStation() {
    record::NewStation station = test::hillStation();
    station.unit = units::TemperatureUnit::Fahrenheit;
    station.step = {5, 1};
    station.lowestMark = {-20, 0};
    station.highestMark = {120, 0};
    return station;
}

struct Hand {
    const char* what;
    QLocale locale;
    Qt::LayoutDirection direction;
    bool fahrenheit;
    const char* dry; ///< as the hand types it
    const char* wet;
    const char* shown; ///< in the line that says it was saved
};

class OtherHands : public ::testing::TestWithParam<Hand> {
protected:
    void SetUp() override {
        QLocale::setDefault(GetParam().locale);
        QApplication::setLayoutDirection(GetParam().direction);
    }
    void TearDown() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        QApplication::setLayoutDirection(Qt::LeftToRight);
    }
};

TEST_P(OtherHands, ReadingIsTakenKeptAndShownBackAsRead) {
    const Hand& hand = GetParam();
    test::OpenBook book(hand.fahrenheit ? fahrenheitStation() : test::hillStation());
    ui::ObservePage page(book.session(), book.drafts());
    page.resize(1100, 700);
    page.show();
    QApplication::setActiveWindow(&page);
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    page.focusEntry();
    QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(hand.dry));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(hand.wet));
    auto* form = page.findChild<ui::EntryForm*>();
    EXPECT_EQ(form->field(ui::EntryField::Dry)->text(), QString::fromUtf8(hand.dry)) << "never rewritten";
    const QString answer = page.findChild<QLabel*>(QStringLiteral("humidityAnswer"))->text();
    EXPECT_NE(answer, QStringLiteral("–"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    const auto stored = book.at(day(2026, 11, 22), 9);
    ASSERT_TRUE(stored.has_value());
    const auto unit = hand.fahrenheit ? units::TemperatureUnit::Fahrenheit : units::TemperatureUnit::Celsius;
    EXPECT_EQ(stored->dry.value, (units::ReadTemperature{*units::parseDecimal(hand.dry), unit}));
    EXPECT_EQ(stored->wet.value, (units::ReadTemperature{*units::parseDecimal(hand.wet), unit}));
    EXPECT_TRUE(page.findChild<QLabel*>(QStringLiteral("observeMessage"))
                    ->text()
                    .contains(QString::fromUtf8(hand.shown)))
        << page.findChild<QLabel*>(QStringLiteral("observeMessage"))->text().toStdString();
    // Opened again, the fields would show the digits that were read, and take them back.
    const ui::EntryText again = ui::entryTextOf(*stored);
    EXPECT_EQ(units::parseDecimal(again.dry.toStdString()), stored->dry.value->value);
    EXPECT_EQ(units::parseDecimal(again.wet.toStdString()), stored->wet.value->value);
}

TEST_P(OtherHands, AMovedColumnWritesANumberThatIsTakenBack) {
    test::OpenBook book(GetParam().fahrenheit ? fahrenheitStation() : test::hillStation());
    ui::ObservePage page(book.session(), book.drafts());
    page.show();
    auto* drawing = page.findChildren<ui::ThermometerDrawing*>().first();
    drawing->moveTo(12.5);
    auto* dry = page.findChild<ui::EntryForm*>()->field(ui::EntryField::Dry);
    ASSERT_TRUE(dry->value().has_value()) << dry->text().toStdString();
    EXPECT_DOUBLE_EQ(dry->value()->toDouble(), 12.5);
    EXPECT_DOUBLE_EQ(*drawing->reading(), 12.5);
}

TEST_P(OtherHands, DryStandsBeforeWetInTheDirectionOfTheScript) {
    test::OpenBook book;
    ui::ObservePage page(book.session(), book.drafts());
    page.resize(1100, 700);
    page.show();
    auto* form = page.findChild<ui::EntryForm*>();
    const int dry = form->field(ui::EntryField::Dry)->mapTo(&page, QPoint(0, 0)).x();
    const int wet = form->field(ui::EntryField::Wet)->mapTo(&page, QPoint(0, 0)).x();
    EXPECT_EQ(dry < wet, GetParam().direction == Qt::LeftToRight);
    EXPECT_EQ(form->field(ui::EntryField::Dry)->layoutDirection(), Qt::LeftToRight)
        << "digits run left to right in every script";
}

const QLocale kBritish(QLocale::English, QLocale::UnitedKingdom);
const QLocale kGerman(QLocale::German, QLocale::Germany);
const QLocale kHebrew(QLocale::Hebrew, QLocale::Israel);
const QLocale kEgyptian(QLocale::Arabic, QLocale::Egypt);

INSTANTIATE_TEST_SUITE_P(
    Hands, OtherHands,
    ::testing::Values(
        Hand{"fahrenheit", kBritish, Qt::LeftToRight, true, "61.5", "57", "61.5 / 57"},
        Hand{"comma", kGerman, Qt::LeftToRight, false, "16,4", "14,2", "16,4 / 14,2"},
        Hand{"commaTypedAsPoint", kGerman, Qt::LeftToRight, false, "16.0", "14.2", "16,0 / 14,2"},
        Hand{"rightToLeft", kHebrew, Qt::RightToLeft, false, "16.4", "14.2", "16.4 / 14.2"},
        Hand{"rightToLeftArabic", kEgyptian, Qt::RightToLeft, false, "16.4", "14.2", "16.4 / 14.2"},
        Hand{"allAtOnce", kGerman, Qt::RightToLeft, true, "61,5", "57,0", "61,5 / 57,0"}),
    [](const auto& hand) { return std::string(hand.param.what); });

} // namespace
