// SPDX-License-Identifier: GPL-3.0-or-later
// Starting a station and telling from when it differs.
#include "tests/support/open_book.h"
#include "ui/station/period_form.h"
#include "ui/station/station_form.h"
#include "ui/station/station_page.h"

#include <QLabel>
#include <QLineEdit>

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
