// SPDX-License-Identifier: GPL-3.0-or-later
// The newsletter's paragraph: every number in it is the summary's, and it says no more than the station's own
// years show. Whole sentences, on months made up here.
#include "core/report/month_report.h"
#include "tests/core/climate/month_builder.h"
#include "ui/print/month_return.h"
#include "ui/text/month_paragraph.h"
#include "ui/text/signing_words.h"
#include "ui/text/usual_words.h"

#include <gtest/gtest.h>

namespace wickbook::ui {

namespace {

using namespace climate::testing;

constexpr auto kMonth = 2025_y / 9;
constexpr auto kUnit = units::TemperatureUnit::Celsius;

class ParagraphCase : public ::testing::Test {
protected:
    /// days: of September 2025, read at 9 and 21 h.
    report::MonthReport month(const std::vector<unsigned>& days, std::optional<record::Instant> now = {}) {
        std::vector<record::DerivedReading> series;
        std::uint64_t sequence = 0;
        for (const unsigned day : days) {
            for (const record::HourOfDay hour : {record::HourOfDay{9h}, record::HourOfDay{21h}}) {
                record::StoredObservation stored;
                stored.stamp.sequence = static_cast<std::int64_t>(++sequence);
                stored.stamp.subject = record::Uuid::fromSeed(3, sequence);
                record::Observation& values = stored.values;
                values.hour = record::ObservingHour{record::StationDate{kMonth / date::day{day}}, hour};
                values.instant = *record::momentOf(station_, *values.hour);
                values.zone = "UTC";
                values.dry = bulb(15 + 0.1 * day);
                values.wet = bulb((hour == 9h ? 12.5 : 12.0) + 0.1 * day);
                values.wick = record::WickState::Water;
                series.push_back(record::deriveReading(std::move(stored), station_));
            }
        }
        return report::buildMonthReport(station_, kMonth, series, checks::Limits{}, now);
    }
    static std::vector<unsigned> allDays() {
        std::vector<unsigned> days;
        for (unsigned day = 1; day <= 30; ++day) {
            days.push_back(day);
        }
        return days;
    }
    static report::OwnYears years(std::initializer_list<double> humidities) {
        report::OwnYears own;
        int year = 2010;
        for (const double humidity : humidities) {
            own.years.push_back({date::year{year++}, humidity, 12.0, 14.0});
        }
        return own;
    }
    static QString paragraph(const report::MonthReport& report) {
        return monthParagraph(QLocale::c(), report, kUnit);
    }

    record::StationRecord station_{stationFacts()};
};

TEST_F(ParagraphCase, AWholeMonthInPlainWords) {
    const auto report = month(allDays());
    const QString text = paragraph(report);
    const auto whole = [](double value) { return QString::number(std::lround(value)); };
    const climate::HourSummary& all = report.summary.all;
    EXPECT_TRUE(
        text.startsWith(QStringLiteral("In September 2025 the relative humidity at Testfield, read at 9 h "
                                       "and 21 h, was %1")
                            .arg(whole(*all.meanHumidity))))
        << text.toStdString();
    EXPECT_TRUE(
        text.contains(QStringLiteral("The driest reading, %1").arg(whole(all.lowestHumidity->value))));
    EXPECT_TRUE(text.contains(QStringLiteral("came on 1 Sep, 21 h"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("None of the 60 readings is missing.")));
    EXPECT_TRUE(text.endsWith(QStringLiteral("these are not 24-hour means.")));
    EXPECT_FALSE(text.contains(QStringLiteral("usual"))) << "nobody has looked at other years";
}

TEST_F(ParagraphCase, DrierOrMoisterOnlyWhereTheOwnYearsShowIt) {
    auto report = month(allDays());
    const double mean = *report.summary.all.meanHumidity; // some 73 %
    report.ownYears = years({mean + 1, mean - 1, mean + 2, mean - 2});
    EXPECT_FALSE(paragraph(report).contains(QStringLiteral("usual"))) << "four years are too few";
    report.ownYears = years({mean + 1, mean - 1, mean + 2, mean - 2, mean});
    EXPECT_TRUE(
        paragraph(report).contains(QStringLiteral("about as usual at this station (average of 5 other "
                                                  "years:")))
        << paragraph(report).toStdString();
    report.ownYears = years({mean + 5, mean + 6, mean + 7, mean + 5, mean - 1});
    EXPECT_TRUE(paragraph(report).contains(QStringLiteral("It was drier than usual")));
    report.ownYears = years({mean + 5, mean + 6, mean + 7, mean + 5, mean + 4});
    EXPECT_TRUE(paragraph(report).contains(
        QStringLiteral("It was the driest such month of this station's record (average of 5 other years:")));
    EXPECT_TRUE(paragraph(report).contains(QStringLiteral("until now 2014 with")));
    report.ownYears = years({mean - 5, mean - 6, mean - 7, mean - 5, mean + 1});
    EXPECT_TRUE(paragraph(report).contains(QStringLiteral("It was moister than usual")));
    // Relative humidity as usual, yet much less vapour than in a dozen years before: both are told.
    report.ownYears = years({mean + 1, mean - 1, mean + 2, mean - 2, mean});
    for (report::YearOfMonth& year : report.ownYears->years) {
        year.meanDewPoint = *report.summary.all.meanDewPoint + 4 + 0.01 * static_cast<int>(year.year);
    }
    EXPECT_TRUE(paragraph(report).contains(QStringLiteral("The air held less vapour than usual")));
}

TEST_F(ParagraphCase, NormalOnlyFromThirtyYears) {
    auto report = month(allDays());
    report.ownYears.emplace();
    for (int year = 1990; year < 2020; ++year) {
        report.ownYears->years.push_back({date::year{year}, 70.0 + year % 7, 12.0, 14.0});
    }
    EXPECT_TRUE(departureSentences(QLocale::c(), report, kUnit)
                    .front()
                    .contains(QStringLiteral("normal of 30 years")));
    report.ownYears->years.pop_back();
    EXPECT_TRUE(departureSentences(QLocale::c(), report, kUnit)
                    .front()
                    .contains(QStringLiteral("average of 29 other years")));
    report.ownYears->years.resize(3);
    EXPECT_TRUE(departureSentences(QLocale::c(), report, kUnit)
                    .front()
                    .startsWith(QStringLiteral("No station average of this month yet")));
}

TEST_F(ParagraphCase, GapsASingleReadingNoneAndAMonthThatGoesOn) {
    const QString gaps = paragraph(month({1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 20, 21}));
    EXPECT_TRUE(gaps.startsWith(
        QStringLiteral("September 2025 at Testfield: No mean: 11 or more days are missing (WMO-No. 1203).")))
        << gaps.toStdString();
    EXPECT_TRUE(gaps.contains(QStringLiteral("Of 60 readings 24 count (36 missing).")));

    auto one = month({5});
    EXPECT_EQ(one.summary.all.n, 2);
    record::StationFacts single = stationFacts({21h});
    station_ = record::StationRecord{single};
    one = month({5});
    EXPECT_EQ(one.summary.all.n, 1);
    EXPECT_TRUE(paragraph(one).contains(QStringLiteral("The one reading that counts (5 Sep, 21 h) gave")))
        << paragraph(one).toStdString();

    EXPECT_EQ(paragraph(month({})),
              QStringLiteral("No humidity could be worked out at Testfield in September 2025."));

    station_ = record::StationRecord{stationFacts()};
    const auto going = month({1, 2, 3}, record::Instant{date::sys_days{2025_y / 9 / 4}});
    EXPECT_TRUE(paragraph(going).startsWith(
        QStringLiteral("September 2025 at Testfield is not over, so there is no mean yet.")));
}

TEST_F(ParagraphCase, AStricterRuleIsNamedAsTheStations) {
    auto report = month({1, 2, 3, 4, 5, 6, 7, 8, 9, 10});
    report.options.completeness = climate::kStricterCompleteness;
    EXPECT_EQ(withheldSentences(report).join(QLatin1Char('|')),
              QStringLiteral("No mean: 5 or more days are missing (this station's rule)."));
}

TEST_F(ParagraphCase, SigningInWords) {
    auto report = month(allDays());
    EXPECT_TRUE(signingSentences(QLocale::c(), report).isEmpty());
    record::StationFacts facts = station_.facts();
    facts.signings.push_back(
        report::signingOf(report, record::Instant{date::sys_days{2025_y / 10 / 2}}, "MK", "read back"));
    station_ = record::StationRecord{facts};
    EXPECT_EQ(signingSentences(QLocale::c(), month(allDays())).join(QLatin1Char(' ')).toStdString(),
              "Signed off by MK on Thursday 2 October 2025. Note: read back. Nothing has changed since.");
    auto fewer = allDays();
    fewer.erase(fewer.begin() + 3);
    const QString changed = signingSentences(QLocale::c(), month(fewer)).join(QLatin1Char(' '));
    EXPECT_TRUE(changed.contains(
        QStringLiteral("Changed since it was signed: 2 readings taken out; counted (n) 60 → 58")))
        << changed.toStdString();
}

} // namespace

} // namespace wickbook::ui
