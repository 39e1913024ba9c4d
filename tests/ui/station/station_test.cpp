// SPDX-License-Identifier: GPL-3.0-or-later
// Starting a station and telling from when it differs.
#include "tests/support/open_book.h"
#include "ui/station/period_form.h"
#include "ui/station/period_section.h"
#include "ui/station/station_form.h"
#include "ui/station/station_page.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMessageBox>
#include <QPushButton>
#include <QTest>
#include <QTimer>

namespace {

using namespace wickbook;
using namespace std::chrono_literals;
using test::day;

QLineEdit& field(QWidget& form, const char* name) {
    return *form.findChild<QLineEdit*>(QLatin1String(name));
}

TEST(HoursFromTyped, TakesWhatPeopleWrite) {
    EXPECT_EQ(*ui::hoursFromTyped(QStringLiteral("21, 9")), (std::vector<record::HourOfDay>{9h, 21h}));
    EXPECT_EQ(*ui::hoursFromTyped(QStringLiteral("07:30 14:00;21:00")),
              (std::vector<record::HourOfDay>{7h + 30min, 14h, 21h}));
    EXPECT_TRUE(ui::hoursFromTyped(QString{})->empty());
    EXPECT_FALSE(ui::hoursFromTyped(QStringLiteral("9, 25")).has_value());
}

TEST(StationForm, DefaultsNeedOnlyNameAndPlace) {
    ui::StationForm form;
    EXPECT_FALSE(form.station().has_value());
    field(form, "stationName").setText(QStringLiteral("Invented Brook"));
    field(form, "stationLatitude").setText(QStringLiteral("52.1"));
    field(form, "stationLongitude").setText(QStringLiteral("-1,5"));
    field(form, "stationElevation").setText(QStringLiteral("120"));
    const auto station = form.station();
    ASSERT_TRUE(station.has_value()) << station.error().toStdString();
    EXPECT_EQ(station->hours, (std::vector<record::HourOfDay>{9h, 21h}));
    EXPECT_DOUBLE_EQ(station->position.longitude, -1.5);
    EXPECT_EQ(station->exposure, psychrometry::Exposure::Screen);
    EXPECT_EQ(station->lowestMark, (units::Decimal{-40, 0}));
}

TEST(StationForm, NoSuchPlaceIsASentence) {
    ui::StationForm form;
    field(form, "stationName").setText(QStringLiteral("Nowhere"));
    field(form, "stationLatitude").setText(QStringLiteral("152"));
    field(form, "stationLongitude").setText(QStringLiteral("0"));
    field(form, "stationElevation").setText(QStringLiteral("0"));
    ASSERT_FALSE(form.station().has_value());
    EXPECT_TRUE(form.station().error().contains(QStringLiteral("no such place")));
}

// Offsets from the IANA time zone database: Sydney goes from +10 to +11 on 5 October 2025 at 02:00, New York
// from −4 to −5 on 2 November 2025 at 02:00.
TEST(HourRuleExplained, GivesTomorrowsHourByTheClock) {
    const auto sydney = record::Zone::named("Australia/Sydney");
    const record::Instant saturday = date::sys_days{date::year{2025} / 10 / 4} + 2h; // noon there
    using record::HourRule;
    EXPECT_TRUE(ui::hourRuleExplained(HourRule::Standard, sydney, {9h}, saturday)
                    .endsWith(QStringLiteral("Tomorrow 9 h is read when the clock shows 10:00.")));
    EXPECT_TRUE(ui::hourRuleExplained(HourRule::Clock, sydney, {9h}, saturday)
                    .endsWith(QStringLiteral("Tomorrow 9 h is read when the clock shows 09:00.")));
    EXPECT_TRUE(ui::hourRuleExplained(HourRule::Utc, sydney, {9h}, saturday)
                    .endsWith(QStringLiteral("Tomorrow 9 h is read when the clock shows 20:00.")));
    EXPECT_TRUE(
        ui::hourRuleExplained(HourRule::Clock, sydney, {2h + 30min}, saturday)
            .endsWith(QStringLiteral("Tomorrow the clock skips 2:30 h, so nothing is expected then.")));
    EXPECT_FALSE(ui::hourRuleExplained(HourRule::Utc, std::nullopt, {9h}, saturday).isEmpty());
}

TEST(StationForm, OffersTheScaleOfThePlace) {
    EXPECT_EQ(ui::usualUnit(QLocale(QStringLiteral("en_US"))), units::TemperatureUnit::Fahrenheit);
    EXPECT_EQ(ui::usualUnit(QLocale(QStringLiteral("en_GB"))), units::TemperatureUnit::Celsius);
    EXPECT_EQ(ui::usualUnit(QLocale(QStringLiteral("de_DE"))), units::TemperatureUnit::Celsius);
}

TEST(StationForm, AFieldIsLookedAtWhenItIsLeft) {
    ui::StationForm form;
    form.show();
    QApplication::setActiveWindow(&form); // a field is only left in a window that has the focus
    ASSERT_TRUE(QTest::qWaitForWindowActive(&form));
    const auto& message = *form.findChild<QLabel*>(QStringLiteral("stationMessage"));
    auto& latitude = field(form, "stationLatitude");
    latitude.setFocus();
    QTest::keyClicks(&latitude, QStringLiteral("152"));
    EXPECT_FALSE(message.isVisible()) << "nobody is interrupted while typing";
    QTest::keyClick(&latitude, Qt::Key_Tab);
    EXPECT_TRUE(message.isVisible());
    EXPECT_TRUE(message.text().contains(QStringLiteral("Latitude"))) << message.text().toStdString();
    latitude.setFocus();
    latitude.selectAll();
    QTest::keyClicks(&latitude, QStringLiteral("52"));
    QTest::keyClick(&latitude, Qt::Key_Tab);
    EXPECT_FALSE(message.isVisible());
}

TEST(StationForm, AFahrenheitStationInNewYorkByKeysAlone) {
    ui::StationForm form(nullptr, date::sys_days{date::year{2025} / 11 / 1} + 16h);
    form.show();
    QApplication::setActiveWindow(&form);
    ASSERT_TRUE(QTest::qWaitForWindowActive(&form));
    form.focusFirst();
    std::optional<record::NewStation> made;
    QObject::connect(&form, &ui::StationForm::finished,
                     [&](const record::NewStation& station) { made = station; });
    const auto type = [&](const QString& text) {
        QTest::keyClicks(form.focusWidget(), text);
        QTest::keyClick(form.focusWidget(), Qt::Key_Tab);
    };
    for (const char* text : {"Invented Creek", "40.7", "-74", "12"}) {
        type(QLatin1String(text));
    }
    EXPECT_EQ(form.focusWidget()->objectName(), QStringLiteral("stationHours"));
    QTest::keyClick(form.focusWidget(), Qt::Key_Tab); // 9 and 21 h stand
    EXPECT_EQ(form.focusWidget()->objectName(), QStringLiteral("stationRule"));
    QTest::keyClick(form.focusWidget(), Qt::Key_Down); // the clock
    QTest::keyClick(form.focusWidget(), Qt::Key_Tab);
    auto& zone = *form.findChild<QComboBox*>(QStringLiteral("stationZone"));
    ASSERT_TRUE(zone.hasFocus() || zone.isAncestorOf(form.focusWidget()));
    zone.lineEdit()->selectAll();
    type(QStringLiteral("America/New_York"));
    EXPECT_TRUE(form.findChild<QLabel*>(QStringLiteral("stationRuleLine"))
                    ->text()
                    .endsWith(QStringLiteral("Tomorrow 9 h is read when the clock shows 09:00.")));
    QTest::keyClick(form.focusWidget(), Qt::Key_Tab); // the exposure stands
    EXPECT_EQ(form.focusWidget()->objectName(), QStringLiteral("stationUnit"));
    QTest::keyClicks(form.focusWidget(), QStringLiteral("°F"));
    auto& name = field(form, "stationName");
    name.setFocus();
    QTest::keyClick(&name, Qt::Key_Return);
    ASSERT_TRUE(made.has_value())
        << form.findChild<QLabel*>(QStringLiteral("stationMessage"))->text().toStdString();
    EXPECT_EQ(made->unit, units::TemperatureUnit::Fahrenheit);
    EXPECT_EQ(made->highestMark, (units::Decimal{140, 0}));
    EXPECT_EQ(made->zone, "America/New_York");
    EXPECT_EQ(made->hourRule, record::HourRule::Clock);
    // A real book of it, read from the file again.
    test::OpenBook book(*made);
    ASSERT_TRUE(book.isOpen());
    EXPECT_EQ(book.session().unit(), units::TemperatureUnit::Fahrenheit);
    const auto sunday = day(2025, 11, 2);
    EXPECT_EQ(*record::momentOf(book.session().station(), {sunday, 9h}),
              date::sys_days{date::year{2025} / 11 / 2} + 14h);
}

TEST(PeriodForm, NamesOnlyWhatDiffers) {
    test::OpenBook book;
    ui::PeriodForm form(book.session().station(), day(2026, 11, 22));
    EXPECT_FALSE(form.change().has_value()) << "nothing differs yet";
    field(form, "periodFrom").setText(QStringLiteral("2026-10-01"));
    field(form, "periodHours").setText(QStringLiteral("8, 14, 20"));
    const auto change = form.change();
    ASSERT_TRUE(change.has_value()) << change.error().toStdString();
    EXPECT_EQ(*change->hours, (std::vector<record::HourOfDay>{8h, 14h, 20h}));
    EXPECT_FALSE(change->exposure.has_value());
    EXPECT_FALSE(change->zone.has_value());
    EXPECT_FALSE(change->position.has_value());
    EXPECT_FALSE(change->elevation.has_value());
    // Midnight of 1 October by London's clock, which was on summer time.
    EXPECT_EQ(*change->from, date::sys_days{date::year{2026} / 9 / 30} + 23h);
}

TEST(PeriodForm, TellsADateFurtherBackFromWhatHeldThen) {
    test::OpenBook book;
    record::StationFacts facts = book.session().station().facts();
    record::PeriodChange moved;
    moved.id = record::Uuid::random();
    moved.from = date::sys_days{date::year{2026} / 10 / 1};
    moved.elevation = units::Elevation::fromMetres(310);
    facts.periods.push_back(moved);
    ASSERT_TRUE(book.session().reviseFacts(facts, {"A", ""}).has_value());
    ui::PeriodForm form(book.session().station(), day(2026, 11, 22));
    form.show();
    auto& from = field(form, "periodFrom");
    from.setFocus();
    from.selectAll();
    QTest::keyClicks(&from, QStringLiteral("2020-01-01"));
    QTest::keyClick(&from, Qt::Key_Tab);
    field(form, "periodHours").setText(QStringLiteral("8"));
    const auto change = form.change();
    ASSERT_TRUE(change.has_value()) << change.error().toStdString();
    EXPECT_FALSE(change->elevation.has_value()) << "the hill came later";
    EXPECT_TRUE(change->hours.has_value());
}

TEST(PeriodSection, ChangesAPeriodAfterAPreviewAndUndoesIt) {
    test::OpenBook book;
    ui::Session& session = book.session();
    book.keep(day(2026, 9, 30), 9, {160, 1}, {121, 1});
    book.keep(day(2026, 10, 2), 9, {161, 1}, {122, 1});
    book.keep(day(2026, 10, 3), 9, {150, 1}, {124, 1});
    ui::StationPage page(session);
    record::PeriodChange change;
    change.id = record::Uuid::random();
    change.from = date::sys_days{date::year{2026} / 9 / 30} + 23h; // midnight of 1 October in London
    change.elevation = units::Elevation::fromMetres(310);
    ASSERT_TRUE(page.keep(change, QStringLiteral("moved up the hill")).isEmpty());
    page.show();
    QTest::keyClick(page.findChild<QPushButton*>(QStringLiteral("periodFold")), Qt::Key_Space);
    auto& list = *page.findChild<QListWidget*>(QStringLiteral("periodList"));
    ASSERT_EQ(list.count(), 2);
    EXPECT_EQ(list.item(0)->text(), QStringLiteral("From 1 Oct 2026: elevation 310 m"));
    EXPECT_TRUE(list.item(1)->text().startsWith(QStringLiteral("From the beginning: ")));
    list.setCurrentRow(0);
    QString said;
    QTimer::singleShot(0, qApp, [&] {
        auto* form = qobject_cast<ui::PeriodForm*>(QApplication::activeModalWidget());
        ASSERT_NE(form, nullptr);
        QApplication::setActiveWindow(form);
        EXPECT_TRUE(QTest::qWaitForWindowActive(form));
        EXPECT_EQ(field(*form, "periodFrom").text(), QStringLiteral("2026-10-01"));
        auto& hours = field(*form, "periodHours");
        hours.setFocus();
        hours.selectAll();
        QTest::keyClicks(&hours, QStringLiteral("7, 21"));
        QTest::keyClick(&hours, Qt::Key_Return);
        said = form->findChild<QLabel*>(QStringLiteral("periodMessage"))->text();
        QTest::keyClick(form->findChild<QPushButton*>(QStringLiteral("periodKeep")), Qt::Key_Return);
        if (form->isVisible()) {
            form->reject();
            ADD_FAILURE() << said.toStdString();
        }
    });
    QTest::keyClick(&list, Qt::Key_Return);
    EXPECT_TRUE(said.contains(QStringLiteral("Of 3 readings 0 would have another humidity")))
        << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("2 would lie elsewhere"))) << said.toStdString();
    const auto& latest = session.station().latestPeriod();
    EXPECT_EQ(latest.hours, (std::vector<record::HourOfDay>{7h, 21h}));
    EXPECT_DOUBLE_EQ(latest.elevation.metres(), 310);
    EXPECT_EQ(session.station().facts().periods.size(), 2U) << "a revision, not one more period";
    ASSERT_TRUE(book.at(day(2026, 10, 2), 9).has_value()) << "the hour written stays";

    // Taking it back would change the humidity of the two later readings: the pressure falls with height.
    auto& section = *page.findChild<ui::PeriodSection*>();
    EXPECT_TRUE(section.previewWords(change.id, std::nullopt)
                    .startsWith(QStringLiteral("Of 3 readings 2 would have another humidity")));
    QTimer::singleShot(0, qApp, [] {
        auto* question = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        ASSERT_NE(question, nullptr);
        QApplication::setActiveWindow(question);
        EXPECT_TRUE(QTest::qWaitForWindowActive(question));
        EXPECT_TRUE(question->informativeText().contains(QStringLiteral("2 would have")));
        QTest::keyClick(question->findChild<QPushButton*>(QStringLiteral("periodReallyTakeBack")),
                        Qt::Key_Space);
        if (question->isVisible()) {
            question->reject();
        }
    });
    QTest::keyClick(&list, Qt::Key_Delete);
    EXPECT_EQ(session.station().periods().size(), 1U);
    session.undoStack().undo();
    EXPECT_EQ(session.station().periods().size(), 2U);
    session.undoStack().undo();
    EXPECT_EQ(session.station().latestPeriod().hours, (std::vector<record::HourOfDay>{9h, 21h}));
    EXPECT_TRUE(session.book().verify()->sound());
}

TEST(StationPage, KeepsAChangeAndShowsBothPeriods) {
    test::OpenBook book;
    ui::StationPage page(book.session());
    record::PeriodChange change;
    change.id = record::Uuid::random();
    change.from = date::sys_days{date::year{2026} / 10 / 1};
    change.elevation = units::Elevation::fromMetres(310);
    EXPECT_TRUE(page.keep(change, QStringLiteral("moved up the hill")).isEmpty());
    EXPECT_EQ(book.session().station().periods().size(), 2U);
    EXPECT_DOUBLE_EQ(book.session().station().latestPeriod().elevation.metres(), 310);
    QString all;
    for (const QLabel* label : page.findChildren<QLabel*>()) {
        all += label->text() + QLatin1Char('\n');
    }
    EXPECT_TRUE(all.contains(QStringLiteral("310")));
    EXPECT_TRUE(all.contains(QStringLiteral("From the beginning")));
}

} // namespace
