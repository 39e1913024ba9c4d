// SPDX-License-Identifier: GPL-3.0-or-later
// Pages of other stations: Fahrenheit, whole degrees, one hour a day, the decimal comma, clocks that change,
// and months before the record begins.
#include "tests/ui/oldpage/old_page_case.h"

#include <QSignalSpy>

namespace wickbook::ui {

namespace {

using test::day;
using test::OldPageCase;
using namespace std::chrono_literals;

class OtherStation : public OldPageCase {
protected:
    void SetUp() override {}
    void start(record::NewStation station, const std::function<void(record::StationFacts&)>& change = {}) {
        record::StationFacts facts = record::factsOf(station, [] { return record::Uuid::random(); });
        if (change) {
            change(facts);
        }
        auto session =
            Session::create(folder_.filePath(QStringLiteral("other.wickbook")), facts, {"T", ""}, clock_);
        ASSERT_TRUE(session.has_value()) << session.error().detail;
        session_ = std::move(*session);
    }
    static record::NewStation plain() {
        record::NewStation station = test::hillStation();
        station.zone = "UTC";
        return station;
    }
    void TearDown() override {
        page_.reset();
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    }
};

TEST_F(OtherStation, FahrenheitIsKeptAsRead) {
    record::NewStation station = plain();
    station.unit = units::TemperatureUnit::Fahrenheit;
    station.lowestMark = {-20, 0};
    station.highestMark = {120, 0};
    start(station);
    openPage(date::year{2025} / 3);
    hand(QStringLiteral("61.5\n57\n"));
    const record::Observation values = kept(1, 9)->values;
    EXPECT_EQ(values.dry.value, (units::ReadTemperature{{615, 1}, units::TemperatureUnit::Fahrenheit}));
    EXPECT_EQ(values.wet.value, (units::ReadTemperature{{57, 0}, units::TemperatureUnit::Fahrenheit}));
    EXPECT_EQ(cell(0, PageField::Wet), QStringLiteral("57"));
    EXPECT_TRUE(
        model().headerData(8, Qt::Horizontal, Qt::ToolTipRole).toString().contains(QStringLiteral("°F")));
}

TEST_F(OtherStation, WholeDegreesStayWhole) {
    record::NewStation station = plain();
    station.step = {1, 0};
    station.hours = {9h};
    start(station);
    openPage(date::year{2025} / 3);
    EXPECT_EQ(model().lineCount(), 31);
    part<QComboBox>("hoursLayout").setCurrentIndex(1); // with one hour nothing stands side by side
    EXPECT_EQ(model().rowCount(), 31);
    view().setFocus();
    hand(QStringLiteral("16\n14\n"));
    EXPECT_EQ(kept(1, 9)->values.dry.value->value, (units::Decimal{16, 0}));
    EXPECT_EQ(view().currentIndex(), model().indexOf(1, PageField::Dry));
}

TEST_F(OtherStation, TheDecimalCommaIsReadAndShown) {
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    start(plain());
    openPage(date::year{2025} / 3);
    part<QCheckBox>("withoutPoint").setChecked(true);
    EXPECT_TRUE(part<QCheckBox>("withoutPoint").text().contains(QStringLiteral("23,4")));
    view().setFocus();
    hand(QStringLiteral("12,4\n101\n9.8\n8,7\n"));
    EXPECT_EQ(kept(1, 9)->values.wet.value->value, (units::Decimal{101, 1}));
    EXPECT_EQ(kept(1, 21)->values.dry.value->value, (units::Decimal{98, 1}));
    EXPECT_EQ(cell(0, PageField::Wet), QStringLiteral("10,1"));
    EXPECT_EQ(cell(1, PageField::Dry), QStringLiteral("9,8"));
    EXPECT_EQ(model().markOf(model().line(0)), PageMark::Kept) << "shown with a comma, kept as digits";
}

// Europe/London, 30 March 2025: the clock goes from 01:00 to 02:00 (IANA database).
TEST_F(OtherStation, AnHourTheClockSkippedHasNoCell) {
    record::NewStation station = plain();
    station.zone = "Europe/London";
    station.hourRule = record::HourRule::Clock;
    station.hours = {record::HourOfDay{90}, 9h};
    start(station);
    openPage(date::year{2025} / 3);
    EXPECT_EQ(model().lineCount(), 61);
    part<QComboBox>("hoursLayout").setCurrentIndex(1);
    const QModelIndex skipped = model().index(29, 1);
    EXPECT_EQ(model().lineAt(skipped), -1);
    EXPECT_FALSE(model().flags(skipped).testFlag(Qt::ItemIsEditable));
    EXPECT_FALSE(skipped.data(Qt::ToolTipRole).toString().isEmpty());
    view().setFocus();
    penOn(57, PageField::Wet); // the 29th at 09, and then the 30th at 09
    hand(QStringLiteral("\n"));
    EXPECT_EQ(model().line(model().lineAt(view().currentIndex())).expected.hour.date, day(2025, 3, 30));
    hand(QStringLiteral("9.0\n8.0\n"));
    EXPECT_EQ(kept(30, 9)->values.offset, 1h);
}

TEST_F(OtherStation, AMonthBeforeTheRecordSaysWhatToDo) {
    start(plain(), [](record::StationFacts& facts) {
        facts.periods.front().from = record::Instant{date::sys_days{date::year{2025} / 2 / 10}} + 6h;
    });
    page_ = std::make_unique<OldPage>(*session_, settings());
    page_->showMonth(date::year{1999} / 11);
    page_->resize(1090, 560);
    page_->show();
    page_->focusPage();
    EXPECT_TRUE(part<QLabel>("pageEmpty").text().contains(QStringLiteral("10 February 2025")))
        << part<QLabel>("pageEmpty").text().toStdString();
    QSignalSpy station(page_.get(), &OldPage::stationAsked);
    part<QPushButton>("openStation").click();
    EXPECT_EQ(station.count(), 1);
    part<QPushButton>("turnToFirst").click();
    EXPECT_EQ(page_->month(), date::year{2025} / 2);
    EXPECT_EQ(model().line(0).expected.hour.date, day(2025, 2, 10)) << "lines begin with the record";
    EXPECT_TRUE(view().isVisible());
}

TEST_F(OtherStation, HoursToComeCannotBeWrittenYet) {
    start(plain());
    openPage(date::year{2025} / 5); // it is 14 May, noon
    EXPECT_TRUE(model().line(27).toCome);
    EXPECT_FALSE(model().flags(model().indexOf(27, PageField::Dry)).testFlag(Qt::ItemIsEditable));
    penOn(26, PageField::Wet);
    hand(QStringLiteral("9.1\n"));
    EXPECT_TRUE(page_->findChild<EndPanel*>()->isVisible()) << "the page ends with the hours that have been";
}

} // namespace

} // namespace wickbook::ui
