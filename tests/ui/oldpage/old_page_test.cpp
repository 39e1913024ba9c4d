// SPDX-License-Identifier: GPL-3.0-or-later
// A page typed off by keys alone: the count of them, what stands in the book afterwards, and what is said.
// All readings are made up here.
#include "tests/ui/oldpage/old_page_case.h"

#include <QAbstractItemModelTester>
#include <QElapsedTimer>
#include <QHeaderView>

namespace wickbook::ui {

namespace {

using test::day;
using test::OldPageCase;

/// Mild and unlike each other, in tenths: dry 8.0 … 14.7, wet 1.2 … 2.7 below.
std::pair<int, int> tenths(int line) {
    const int dry = 80 + (line * 7) % 31 + (line % 2 == 0 ? 37 : 0);
    return {dry, dry - 12 - (line * 5) % 16};
}

TEST_F(OldPageCase, AMonthOfSixtyTwoReadingsCostsNoMoreThanNineKeysEach) {
    hand(Qt::Key_W, Qt::AltModifier); // without the point
    ASSERT_TRUE(QTest::qWaitFor([this] { return part<QCheckBox>("withoutPoint").isChecked(); }));
    view().setFocus();
    QElapsedTimer clock;
    clock.start();
    for (int line = 0; line < 62; ++line) {
        const auto [dry, wet] = tenths(line);
        hand(QStringLiteral("%1\n%2\n").arg(dry).arg(wet));
    }
    std::printf("62 readings: %d keys, %.2f a reading, %lld ms in all\n", keys_, keys_ / 62.0,
                static_cast<long long>(clock.elapsed()));
    EXPECT_LE(keys_, 9 * 62);
    // The last line too: Enter on it has left it.
    for (int line = 0; line < 62; ++line) {
        const auto stored = kept(static_cast<unsigned>(line / 2 + 1), line % 2 == 0 ? 9 : 21);
        ASSERT_TRUE(stored) << line;
        const auto [dry, wet] = tenths(line);
        EXPECT_EQ(stored->values.dry.value->value, (units::Decimal{dry, 1}));
        EXPECT_EQ(stored->values.wet.value->value, (units::Decimal{wet, 1}));
        EXPECT_EQ(stored->values.origin, record::Origin::Observed);
        EXPECT_TRUE(stored->values.paper.has_value());
        EXPECT_EQ(stored->revisionCount, 1) << "one line, one revision";
        EXPECT_FALSE(stored->values.readBack);
    }
    // The page's end has come by itself.
    EXPECT_TRUE(page_->findChild<EndPanel*>()->isVisible());
    EXPECT_TRUE(session_->book().verify().value().sound());
}

TEST_F(OldPageCase, ALineIsInTheBookWhenThePenLeavesItAndNotBefore) {
    part<QLineEdit>("paperBook").setText(QStringLiteral("Pocket-book 3"));
    part<QLineEdit>("paperPage").setText(QStringLiteral("17"));
    part<QLineEdit>("readBy").setText(QStringLiteral("EH"));
    hand(QStringLiteral("12.4\n10.1"));
    EXPECT_FALSE(kept(1, 9));
    EXPECT_EQ(model().markOf(model().line(0)), PageMark::Typed);
    hand(QStringLiteral("\n"));
    ASSERT_TRUE(kept(1, 9));
    const record::Observation values = kept(1, 9)->values;
    EXPECT_EQ(values.paper, (record::PaperPlace{"Pocket-book 3", "17"}));
    EXPECT_EQ(values.observer, "EH");
    EXPECT_EQ(values.instant,
              record::Instant{date::sys_days{day(2025, 3, 1).time_since_epoch()}} + std::chrono::hours{9});
    EXPECT_EQ(kept(1, 9)->stamp.author.who, "T");
    // Another program reads it from the file.
    const auto again = store::Book::open(session_->book().path(), store::OpenMode::ReadOnly);
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->atHour({day(2025, 3, 1), std::chrono::hours{9}})->has_value());
}

TEST_F(OldPageCase, LeavingThePageByAnyWayLeavesTheLine) {
    hand(QStringLiteral("12.4\n10.1"));
    page_->hide();
    EXPECT_TRUE(kept(1, 9)) << "hidden with the cell still open";
    page_->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(page_.get()));
    QApplication::setActiveWindow(page_.get());
    page_->focusPage();
    hand(QStringLiteral("9.9\n8.1"));
    page_.reset();
    EXPECT_TRUE(kept(1, 21)) << "closed with the book";
}

TEST_F(OldPageCase, HumidityStandsBesideThePairWhileItIsTyped) {
    hand(QStringLiteral("20.0\n15.0"));
    const QModelIndex at = model().indexOf(0, PageField::Dry);
    QString humidity;
    for (int column = 0; column < model().columnCount(); ++column) {
        if (model().columns()[static_cast<std::size_t>(column)].kind == PageModel::ColumnKind::Humidity) {
            humidity = at.siblingAtColumn(column).data().toString();
        }
    }
    // Saturation 23.37 hPa at 20 and 17.04 hPa at 15 °C (WMO-No. 8, annex 4.B formula), 1003 hPa at 84 m,
    // louvred screen A = 7.99e-4: (17.04 − 7.99e-4 · 1003 · 5) / 23.37 = 55.8 %, worked out by hand.
    EXPECT_EQ(humidity, QStringLiteral("56"));
    EXPECT_FALSE(kept(1, 9)) << "shown before it is stored";
}

TEST_F(OldPageCase, WhatCanHardlyBeIsKeptMarkedAndSaid) {
    hand(QStringLiteral("220.9\n17.7\n")); // off any scale: kept as the page has it
    ASSERT_TRUE(kept(1, 9));
    EXPECT_EQ(kept(1, 9)->values.dry.value->value.toText(), "220.9");
    EXPECT_EQ(model().markOf(model().line(0)), PageMark::Wrong);
    penOn(0, PageField::Dry);
    EXPECT_TRUE(part<QLabel>("lineWords").text().contains(QStringLiteral("220.9")))
        << part<QLabel>("lineWords").text().toStdString();
    // Kept for the page's end: no mark until then, and the same query there.
    part<QCheckBox>("notesAtEnd").setChecked(true);
    EXPECT_EQ(model().markOf(model().line(0)), PageMark::Kept);
    EXPECT_FALSE(part<QLabel>("lineWords").text().contains(QStringLiteral("220.9")));
    hand(Qt::Key_E, Qt::ControlModifier);
    ASSERT_EQ(page_->findChild<EndPanel*>()->queries().size(), 1U);
    EXPECT_TRUE(part<QListWidget>("endQueries").hasFocus());
}

TEST_F(OldPageCase, WhatIsNoNumberKeepsThePenWithASentence) {
    hand(QStringLiteral("1.234,5\n"));
    EXPECT_EQ(view().currentIndex(), model().indexOf(0, PageField::Dry)) << "the pen has gone on";
    EXPECT_FALSE(part<QLabel>("pageMessage").text().isEmpty());
    EXPECT_EQ(qobject_cast<QLineEdit*>(QApplication::focusWidget())->text(), QStringLiteral("1.234,5"));
    hand(QStringLiteral("12.4\n10.1\n")); // typed over, the text being marked
    ASSERT_TRUE(kept(1, 9));
    EXPECT_EQ(kept(1, 9)->values.dry.value->value.toText(), "12.4");
    EXPECT_TRUE(part<QLabel>("pageMessage").text().isEmpty());
}

TEST_F(OldPageCase, MissingLinesRepeatsAndTheWicksLetter) {
    hand(QStringLiteral("ma\n"));
    EXPECT_EQ(view().currentIndex(), model().indexOf(1, PageField::Dry)) << "a missing line has no wet bulb";
    ASSERT_TRUE(kept(1, 9));
    EXPECT_EQ(kept(1, 9)->values.origin, record::Origin::Missing);
    EXPECT_EQ(kept(1, 9)->values.missingReason, "away");
    hand(QStringLiteral("\"\n")); // as the line above
    EXPECT_EQ(kept(1, 21)->values.missingReason, "away");
    hand(QStringLiteral("m snowed in\n"));
    EXPECT_EQ(kept(2, 9)->values.missingReason, "snowed in");
    hand(QStringLiteral("m\n")); // no reason yet
    EXPECT_FALSE(kept(2, 21));
    EXPECT_FALSE(part<QLabel>("pageMessage").text().isEmpty());
    hand(QStringLiteral("-1.2\n-1.8i\n"));
    ASSERT_TRUE(kept(2, 21));
    EXPECT_EQ(kept(2, 21)->values.wick, record::WickState::Ice);
    // Near freezing the wick is asked for on the way, and given by one key.
    hand(QStringLiteral("-0.4\n-0.9\n"));
    EXPECT_EQ(view().currentIndex(), model().indexOf(4, PageField::Wick));
    hand(QStringLiteral("w\n"));
    EXPECT_EQ(kept(3, 9)->values.wick, record::WickState::Water);
    penOn(4, PageField::Weather);
    hand(QStringLiteral("fo, hoar\n"));
    EXPECT_EQ(cell(4, PageField::Weather), QStringLiteral("fog, hoar frost"));
    penOn(4, PageField::Note);
    hand(QStringLiteral("pond frozen\n"));
    penOn(5, PageField::Weather);
    hand(QStringLiteral("\""));
    hand(Qt::Key_Tab);
    hand(QStringLiteral("\"\n"));
    EXPECT_EQ(kept(3, 21)->values.note, "pond frozen");
    EXPECT_TRUE(kept(3, 21)->values.weather->has(record::Weather::HoarFrost));
}

TEST_F(OldPageCase, TheArrowsTabAndADayByItsNumberMoveThePen) {
    hand(QStringLiteral("12.4"));
    hand(Qt::Key_Down);
    EXPECT_EQ(view().currentIndex(), model().indexOf(1, PageField::Dry));
    ASSERT_TRUE(kept(1, 9)) << "one bulb alone is kept";
    EXPECT_NE(model().markOf(model().line(0)), PageMark::Wrong);
    hand(Qt::Key_Up);
    hand(Qt::Key_Tab);
    hand(QStringLiteral("10.2\n"));
    EXPECT_EQ(kept(1, 9)->values.wet.value->value.toText(), "10.2");
    EXPECT_EQ(kept(1, 9)->values.origin, record::Origin::Observed);
    hand(Qt::Key_G, Qt::ControlModifier);
    hand(QStringLiteral("17\n"));
    EXPECT_EQ(view().currentIndex(), model().indexOf(32, PageField::Dry));
    EXPECT_TRUE(view().hasFocus());
    hand(Qt::Key_Backtab);
    EXPECT_EQ(view().currentIndex(), model().indexOf(31, PageField::Note));
}

TEST_F(OldPageCase, DownTheColumnAndHoursSideBySide) {
    part<QComboBox>("direction").setCurrentIndex(1);
    view().setFocus();
    penOn(0, PageField::Dry);
    hand(QStringLiteral("12.4\n11.8\n"));
    EXPECT_EQ(view().currentIndex(), model().indexOf(2, PageField::Dry));
    penOn(61, PageField::Dry);
    hand(QStringLiteral("9.9\n"));
    EXPECT_EQ(view().currentIndex(), model().indexOf(0, PageField::Wet))
        << "from the column's foot to the next";
    part<QComboBox>("hoursLayout").setCurrentIndex(1);
    EXPECT_EQ(model().rowCount(), 31);
    penOn(0, PageField::Wet);
    hand(QStringLiteral("10.3\n")); // the same hour of the day after
    EXPECT_EQ(model().lineAt(view().currentIndex()), 2);
    EXPECT_EQ(kept(1, 9)->values.wet.value->value.toText(), "10.3");
    part<QComboBox>("direction").setCurrentIndex(0);
    penOn(4, PageField::Wet);
    hand(QStringLiteral("\n")); // along the day: the evening's dry bulb
    EXPECT_EQ(view().currentIndex(), model().indexOf(5, PageField::Dry));
}

TEST_F(OldPageCase, ReadingsOfTheBookShowAndChangeForAReasonAskedOnce) {
    write(reading(day(2025, 3, 2), std::chrono::hours{9}, "12.0", "10.5"));
    write(reading(day(2025, 3, 3), std::chrono::hours{9}, "11.0", "9.5"));
    EXPECT_EQ(cell(2, PageField::Dry), QStringLiteral("12.0"));
    EXPECT_TRUE(model().indexOf(2, PageField::Dry).data(PageModel::InBookRole).toBool());
    penOn(2, PageField::Dry);
    hand(QStringLiteral("13.0\n"));
    hand(Qt::Key_Down);
    EXPECT_EQ(kept(2, 9)->values.dry.value->value.toText(), "12.0") << "changed without a reason";
    auto& reason = part<QLineEdit>("pageReason");
    ASSERT_TRUE(reason.hasFocus());
    EXPECT_EQ(reason.text(), QStringLiteral("typed again from the page"));
    hand(QStringLiteral("\n"));
    EXPECT_EQ(kept(2, 9)->values.dry.value->value.toText(), "13.0");
    EXPECT_EQ(kept(2, 9)->stamp.author.why, "typed again from the page");
    EXPECT_EQ(kept(2, 9)->revisionCount, 2);
    EXPECT_TRUE(view().hasFocus());
    penOn(4, PageField::Wet); // the second time it is known
    hand(QStringLiteral("9.4\n"));
    EXPECT_EQ(kept(3, 9)->values.wet.value->value.toText(), "9.4");
    EXPECT_TRUE(view().hasFocus());
    session_->undoStack().undo();
    EXPECT_EQ(kept(3, 9)->values.wet.value->value.toText(), "9.5");
    EXPECT_EQ(cell(4, PageField::Wet), QStringLiteral("9.5")) << "the page has not followed";
}

TEST_F(OldPageCase, EscapeLeavesTheBookAsItIs) {
    write(reading(day(2025, 3, 2), std::chrono::hours{9}, "12.0", "10.5"));
    penOn(2, PageField::Dry);
    hand(QStringLiteral("13.0"));
    hand(Qt::Key_Down);
    hand(Qt::Key_Escape);
    EXPECT_EQ(kept(2, 9)->revisionCount, 1);
    EXPECT_EQ(cell(2, PageField::Dry), QStringLiteral("12.0"));
    EXPECT_TRUE(view().hasFocus());
}

TEST_F(OldPageCase, ACauseIsTakenByOneKeyOnceThePaperHasSpoken) {
    fill(day(2025, 2, 1), day(2025, 2, 28)); // neighbours and habits for the causes
    openPage(date::year{2025} / 3);
    hand(QStringLiteral("10.9\n12.9\n")); // wet above dry: exchanged
    hand(Qt::Key_E, Qt::ControlModifier);
    auto* end = page_->findChild<EndPanel*>();
    ASSERT_FALSE(end->queries().empty());
    ASSERT_FALSE(end->queries().front().causes.empty());
    hand(QStringLiteral("1")); // the first cause …
    EXPECT_EQ(kept(1, 9)->revisionCount, 1) << "taken before the paper was asked";
    const checks::LikelyCause cause = end->queries().front().causes.front();
    hand(QStringLiteral("1")); // … and the paper says so
    ASSERT_EQ(kept(1, 9)->revisionCount, 2);
    EXPECT_EQ(kept(1, 9)->values.dry.value->value, cause.dryRead->value);
    EXPECT_EQ(kept(1, 9)->values.wet.value->value, cause.wetRead->value);
    EXPECT_EQ(kept(1, 9)->values.origin, record::Origin::Observed)
        << "a slip of the keys, not of the observer";
    EXPECT_EQ(cell(0, PageField::Dry).toStdString(), cause.dryRead->value.toText());
    session_->undoStack().undo();
    EXPECT_EQ(kept(1, 9)->values.dry.value->value.toText(), "10.9");
}

TEST_F(OldPageCase, TheModelKeepsTheRulesOfModels) {
    QAbstractItemModelTester tester(&model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    hand(QStringLiteral("12.4\n10.1\nma\n"));
    part<QComboBox>("hoursLayout").setCurrentIndex(1);
    page_->showMonth(date::year{2025} / 2);
    part<QPushButton>("typeAgain").click();
    part<QPushButton>("typeAgain").click();
    page_->showMonth(date::year{2025} / 3);
    SUCCEED();
}

TEST_F(OldPageCase, HabitsComeBackWithTheNextPage) {
    part<QCheckBox>("withoutPoint").setChecked(true);
    part<QLineEdit>("paperBook").setText(QStringLiteral("II"));
    penOn(0, PageField::Wick);
    hand(Qt::Key_Left, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(model().habits().shownFields()[1], PageField::Wick);
    openPage(date::year{2025} / 3);
    EXPECT_TRUE(part<QCheckBox>("withoutPoint").isChecked());
    EXPECT_EQ(part<QLineEdit>("paperBook").text(), QStringLiteral("II"));
    EXPECT_EQ(model().habits().shownFields()[1], PageField::Wick);
    EXPECT_EQ(view().horizontalHeader()->count(), model().columnCount());
}

TEST_F(OldPageCase, EveryControlHasAName) {
    for (const QWidget* widget : page_->findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus ||
            widget->objectName().startsWith(QLatin1String("qt_"))) {
            continue;
        }
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        EXPECT_FALSE(widget->accessibleName().isEmpty() && (button == nullptr || button->text().isEmpty()))
            << widget->metaObject()->className() << " " << widget->objectName().toStdString();
    }
    EXPECT_TRUE(model()
                    .indexOf(0, PageField::Dry)
                    .data(Qt::AccessibleTextRole)
                    .toString()
                    .contains(QStringLiteral("Dry bulb")));
}

} // namespace

} // namespace wickbook::ui
