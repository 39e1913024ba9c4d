// SPDX-License-Identifier: GPL-3.0-or-later
// The Observe page by keys alone, over a real book.
#include "tests/ui/observe/observe_case.h"
#include "ui/observe/thermometer_drawing.h"
#include "ui/observe/wick_choice.h"
#include "ui/style/marginal_note.h"
#include "ui/style/typed_number_edit.h"

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QWheelEvent>

namespace {

using namespace wickbook;
using test::day;

class ObservePageTest : public test::ObserveCase {};

TEST_F(ObservePageTest, OffersTheHourNearestToNow) {
    // 08:52 belongs to 09 h of today, not to last night's 21 h.
    EXPECT_EQ(page_->entry().date, QDate(2026, 11, 22));
    EXPECT_EQ(page_->entry().hourMinutes, 9 * 60);
    EXPECT_TRUE(label("observeHeading").contains(QStringLiteral("22 November")));
}

TEST_F(ObservePageTest, TwoNumbersAndEnterAreASavedReading) {
    type(QStringLiteral("16.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("14.2"));
    press(Qt::Key_Return);
    const auto stored = saved();
    ASSERT_TRUE(stored.has_value());
    EXPECT_EQ(stored->dry.value->value, (units::Decimal{164, 1}));
    EXPECT_EQ(stored->wet.value->value, (units::Decimal{142, 1}));
    EXPECT_EQ(stored->instant, book_.clock()->now()); // the true time is kept beside the hour
    EXPECT_TRUE(label("observeMessage").startsWith(QStringLiteral("Saved 9 h: 16.4 / 14.2, ")));
    // The page goes on to the next hour, empty, with the keyboard in the dry bulb.
    EXPECT_EQ(page_->entry().hourMinutes, 21 * 60);
    EXPECT_EQ(QApplication::focusWidget(), field(ui::EntryField::Dry));
    EXPECT_TRUE(field(ui::EntryField::Dry)->text().isEmpty());
}

TEST_F(ObservePageTest, AnswerIsShownWhileTyping) {
    // 23 °C / 16 °C in a louvred screen at 1013.25 hPa: 44.54 % by Sonntag's e_w and A = 7.99e-4
    // (Sargent 1980), so 45 with no decimals.
    field(ui::EntryField::Pressure)->setText(QStringLiteral("1013.25"));
    type(QStringLiteral("23.0"));
    press(Qt::Key_Return);
    type(QStringLiteral("16.0"));
    EXPECT_EQ(label("humidityAnswer"), QStringLiteral("45"));
    EXPECT_FALSE(saved().has_value());
}

TEST_F(ObservePageTest, MarginSpeaksOnlyWhenTheFieldIsLeft) {
    type(QStringLiteral("14.2"));
    press(Qt::Key_Return);
    type(QStringLiteral("16.4"));
    EXPECT_TRUE(notes().empty());
    press(Qt::Key_Tab);
    ASSERT_FALSE(notes().empty());
    EXPECT_EQ(label("humidityAnswer"), QStringLiteral("–")); // no number is made up
    EXPECT_FALSE(saved().has_value());
}

TEST_F(ObservePageTest, DoubtfulIsShownOnceThenSavedAsRead) {
    type(QStringLiteral("14.2"));
    press(Qt::Key_Return);
    type(QStringLiteral("16.4"));
    press(Qt::Key_Return);
    EXPECT_FALSE(saved().has_value());
    ASSERT_FALSE(notes().empty());
    EXPECT_EQ(QApplication::focusWidget(), notes().front()); // its keys are at hand
    press(Qt::Key_Return);
    const auto stored = saved();
    ASSERT_TRUE(stored.has_value());
    EXPECT_EQ(stored->wet.value->value, (units::Decimal{164, 1}));
    EXPECT_EQ(stored->quality, record::Quality::NotJudged); // marked by the checks, judged by nobody
}

TEST_F(ObservePageTest, WickMustBeToldAtZeroAndBelow) {
    type(QStringLiteral("0.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("-0.6"));
    press(Qt::Key_Return);
    EXPECT_FALSE(saved().has_value());
    auto* form = page_->findChild<ui::EntryForm*>();
    EXPECT_TRUE(form->wick()->isAncestorOf(QApplication::focusWidget()));
    press(Qt::Key_I);
    EXPECT_EQ(form->wick()->value(), QStringLiteral("ice"));
    press(Qt::Key_Return);
    if (!saved()) { // where the margin has a note as well, it is shown once
        press(Qt::Key_Return);
    }
    const auto stored = saved();
    ASSERT_TRUE(stored.has_value());
    EXPECT_EQ(stored->wick, record::WickState::Ice);
    EXPECT_EQ(stored->wet.value->value, (units::Decimal{-6, 1}));
}

TEST_F(ObservePageTest, LetterInTheWetBulbAnswersTheWick) {
    type(QStringLiteral("0.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("-0.6w"));
    EXPECT_EQ(field(ui::EntryField::Wet)->text(), QStringLiteral("-0.6"));
    EXPECT_EQ(page_->entry().wick, QStringLiteral("water"));
}

TEST_F(ObservePageTest, OffTheScaleIsRefusedAndStaysInTheField) {
    type(QStringLiteral("164"));
    press(Qt::Key_Return);
    type(QStringLiteral("14.2"));
    press(Qt::Key_Return);
    EXPECT_FALSE(saved().has_value());
    EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("164"));
    EXPECT_TRUE(label("observeMessage").contains(QStringLiteral("off the thermometer's scale")));
    press(Qt::Key_Return);
    EXPECT_FALSE(saved().has_value()) << "asking again must not save it";
}

TEST_F(ObservePageTest, NotANumberIsRefusedWithASentence) {
    type(QStringLiteral("1x6"));
    press(Qt::Key_Return);
    type(QStringLiteral("14.2"));
    press(Qt::Key_Return);
    EXPECT_FALSE(saved().has_value());
    EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("1x6"));
    EXPECT_TRUE(field(ui::EntryField::Dry)->property("problem").toBool());
}

TEST_F(ObservePageTest, OneBulbAloneIsAskedOnceAndKeptAsIncomplete) {
    type(QStringLiteral("16.4"));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    EXPECT_FALSE(saved().has_value());
    press(Qt::Key_Return);
    const auto stored = saved();
    ASSERT_TRUE(stored.has_value());
    EXPECT_FALSE(stored->wet.given());
}

TEST_F(ObservePageTest, BelowScaleIsKeptAsSuch) {
    type(QStringLiteral("<"));
    press(Qt::Key_Return);
    type(QStringLiteral("<"));
    for (int again = 0; again < 3 && !saved(); ++again) {
        press(Qt::Key_Return);
    }
    const auto stored = saved();
    ASSERT_TRUE(stored.has_value());
    EXPECT_TRUE(stored->dry.belowScale);
    EXPECT_FALSE(stored->dry.value.has_value());
}

TEST_F(ObservePageTest, UndoWithdrawsAndRedoBringsBack) {
    type(QStringLiteral("16.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("14.2"));
    press(Qt::Key_Return);
    ASSERT_TRUE(saved().has_value());
    EXPECT_TRUE(label("observeMessage").contains(QStringLiteral("Saved")));
    book_.session().undoStack().undo();
    EXPECT_FALSE(saved().has_value());
    EXPECT_TRUE(label("observeMessage").startsWith(QStringLiteral("Taken back")))
        << label("observeMessage").toStdString();
    book_.session().undoStack().redo();
    EXPECT_TRUE(saved().has_value());
}

TEST_F(ObservePageTest, UnfinishedEntryIsThereAgain) {
    type(QStringLiteral("16.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("14"));
    // The draft follows the keys by itself; nothing tells the page that it will be killed.
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            const auto draft = ui::EntryDraft(book_.drafts(), book_.path()).read();
            return draft && draft->wet == QStringLiteral("14");
        },
        2000));
    page_.reset();
    openPage();
    EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("16.4"));
    EXPECT_EQ(field(ui::EntryField::Wet)->text(), QStringLiteral("14"));
    EXPECT_EQ(page_->entry().hourMinutes, 9 * 60);
}

TEST_F(ObservePageTest, SavedEntryLeavesNoDraft) {
    type(QStringLiteral("16.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("14.2"));
    press(Qt::Key_Return);
    ASSERT_TRUE(saved().has_value());
    page_.reset();
    EXPECT_FALSE(ui::EntryDraft(book_.drafts(), book_.path()).read().has_value());
}

TEST_F(ObservePageTest, ReadingBeingTypedSurvivesAWriteByAnother) {
    type(QStringLiteral("16.4"));
    book_.keep(day(2026, 11, 21), 21, {120, 1}, {110, 1});
    EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("16.4"));
}

TEST_F(ObservePageTest, ArrowsMoveTheColumnAndTheWheelDoesNot) {
    type(QStringLiteral("16.4"));
    auto* drawing = page_->findChildren<ui::ThermometerDrawing*>().first();
    ASSERT_TRUE(drawing->reading().has_value());
    EXPECT_DOUBLE_EQ(*drawing->reading(), 16.4);
    QTest::keyClick(drawing, Qt::Key_Up);
    EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("16.5"));
    QTest::keyClick(drawing, Qt::Key_PageDown);
    EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("15.5"));
    QWheelEvent wheel(QPointF(20, 100), drawing->mapToGlobal(QPointF(20, 100)), {}, QPoint(0, 120),
                      Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(drawing, &wheel);
    EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("15.5"));
}

TEST_F(ObservePageTest, HourThatIsFilledIsNotOverwritten) {
    book_.keep(day(2026, 11, 21), 21, {120, 1}, {110, 1});
    page_->openHour({day(2026, 11, 21), std::chrono::hours{21}});
    EXPECT_TRUE(label("observeMessage").contains(QStringLiteral("written down already")));
    type(QStringLiteral("16.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("14.2"));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    EXPECT_EQ(book_.at(day(2026, 11, 21), 21)->dry.value->value, (units::Decimal{120, 1}));
    EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("16.4")) << "what was typed must stay";
}

TEST_F(ObservePageTest, EveryFieldHasANameForTheEar) {
    for (const QWidget* widget : page_->findChildren<QWidget*>()) {
        if ((widget->focusPolicy() & Qt::TabFocus) != 0 && widget->isVisible()) {
            const auto* button = qobject_cast<const QAbstractButton*>(widget);
            const bool named =
                !widget->accessibleName().isEmpty() || (button != nullptr && !button->text().isEmpty());
            EXPECT_TRUE(named) << widget->metaObject()->className() << " "
                               << widget->objectName().toStdString();
        }
    }
}

TEST(ObservePageLocale, CommaIsTakenAndShown) {
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    {
        test::OpenBook book;
        ui::ObservePage page(book.session(), book.drafts());
        page.show();
        QApplication::setActiveWindow(&page);
        ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
        page.focusEntry();
        QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("16,4"));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("14.2"));
        EXPECT_TRUE(
            page.findChild<QLabel*>(QStringLiteral("dewPointAnswer"))->text().contains(QLatin1Char(',')));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        const auto stored = book.at(day(2026, 11, 22), 9);
        ASSERT_TRUE(stored.has_value());
        EXPECT_EQ(stored->dry.value->value, (units::Decimal{164, 1}));
        EXPECT_TRUE(page.findChild<QLabel*>(QStringLiteral("observeMessage"))
                        ->text()
                        .contains(QStringLiteral("16,4 / 14,2")));
    }
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
}

TEST(ObservePageFahrenheit, ReadingComesBackInItsOwnUnit) {
    record::NewStation station = test::hillStation();
    station.unit = units::TemperatureUnit::Fahrenheit;
    station.step = {5, 1};
    station.lowestMark = {-20, 0};
    station.highestMark = {120, 0};
    test::OpenBook book(station);
    ui::ObservePage page(book.session(), book.drafts());
    page.show();
    QApplication::setActiveWindow(&page);
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    page.focusEntry();
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("61.5"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("57"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    const auto stored = book.at(day(2026, 11, 22), 9);
    ASSERT_TRUE(stored.has_value());
    EXPECT_EQ(stored->dry.value->value, (units::Decimal{615, 1}));
    EXPECT_EQ(stored->wet.value->value, (units::Decimal{57, 0}));
    EXPECT_EQ(stored->dry.value->unit, units::TemperatureUnit::Fahrenheit);
}

} // namespace
