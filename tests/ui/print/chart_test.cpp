// SPDX-License-Identifier: GPL-3.0-or-later
// Gaps are left open, marks stand apart without colour, axes stay readable.
#include "tests/ui/print/print_support.h"
#include "ui/print/chart_points.h"
#include "ui/print/humidity_chart.h"
#include "ui/print/month_figure.h"

#include <QImage>
#include <QLineSeries>
#include <QPainter>
#include <gtest/gtest.h>

namespace wickbook::ui {

namespace {

using namespace std::chrono_literals;
using test::day;

const date::year_month kMay = date::year{2025} / 5;

ChartPoints pointsOf(const report::MonthReport& report) {
    return chartPoints(report.readings, report.station, record::StationDate{report.month / 1},
                       record::StationDate{report.month / date::last});
}

TEST(ChartPoints, AWholeMonthIsOneRunPerHour) {
    const auto points = pointsOf(test::month(test::station({9h, 21h}), kMay));
    ASSERT_EQ(points.hours.size(), 2U);
    for (const HourLine& line : points.hours) {
        ASSERT_EQ(line.runs.size(), 1U);
        EXPECT_EQ(line.runs.front().size(), 31U);
    }
    EXPECT_EQ(points.inTimeOrder().size(), 62U);
}

TEST(ChartPoints, AMissingHourEndsTheRunOfThatHourAlone) {
    const auto report = test::month(test::station({9h, 21h}), kMay, [](record::StoredObservation& stored) {
        return stored.values.hour != record::ObservingHour{day(2025, 5, 10), 9h};
    });
    const auto points = pointsOf(report);
    ASSERT_EQ(points.hours[0].runs.size(), 2U);
    EXPECT_EQ(points.hours[0].runs[0].size(), 9U);
    EXPECT_EQ(points.hours[0].runs[1].size(), 21U);
    EXPECT_EQ(points.hours[1].runs.size(), 1U);
}

TEST(ChartPoints, WhatIsSetAsideStandsApartAndIsNeverJoined) {
    const auto report = test::month(test::station({9h}), kMay, [](record::StoredObservation& stored) {
        if (stored.values.hour->date == day(2025, 5, 10)) {
            stored.values.quality = record::Quality::Doubtful;
        }
        if (stored.values.hour->date == day(2025, 5, 20)) {
            stored.values.quality = record::Quality::Erroneous;
        }
        return true;
    });
    const auto points = pointsOf(report);
    ASSERT_EQ(points.hours[0].runs.size(), 3U);
    ASSERT_EQ(points.hours[0].aside.size(), 2U);
    EXPECT_EQ(points.hours[0].aside[0].mark, PointMark::Doubtful);
    EXPECT_EQ(points.hours[0].aside[1].mark, PointMark::Erroneous);
}

TEST(ChartPoints, AnExtraReadingAndAWickChangeAreSeen) {
    const auto report = test::month(test::station({9h}), kMay, [](record::StoredObservation& stored) {
        if (stored.values.hour->date == day(2025, 5, 3)) {
            stored.values.wickCare = record::WickCare::Changed;
        }
        if (stored.values.hour->date == day(2025, 5, 5)) {
            stored.values.hour.reset();
        }
        return true;
    });
    const auto points = pointsOf(report);
    ASSERT_EQ(points.extras.size(), 1U);
    ASSERT_EQ(points.events.size(), 1U);
    EXPECT_EQ(points.events[0].kind, ChartEvent::Kind::WickChanged);
    EXPECT_EQ(points.hours[0].runs.size(), 2U) << "the extra reading must not fill the hour's gap";
}

TEST(ChartPoints, TheExposureDiaryMarksTheDayAndAPhotographDoesNot) {
    record::StationFacts facts = test::station({9h}).facts();
    facts.diary = {{record::Uuid::random(), day(2025, 5, 12), record::DiaryKind::HedgeCut, "", false},
                   {record::Uuid::random(), day(2025, 5, 13), record::DiaryKind::Photograph, "", false},
                   {record::Uuid::random(), day(2025, 5, 14), record::DiaryKind::Washed, "", true},
                   {record::Uuid::random(), day(2024, 5, 12), record::DiaryKind::Painted, "", false}};
    const auto points = pointsOf(test::month(record::StationRecord{facts}, kMay));
    ASSERT_EQ(points.events.size(), 1U);
    EXPECT_EQ(points.events[0].kind, ChartEvent::Kind::Diary);
    EXPECT_EQ(points.events[0].instant, record::Instant{date::sys_days{date::year{2025} / 5 / 12}});
}

TEST(HumidityChart, SeriesAreSplitAtGapsAndDashTellsTheHours) {
    const auto report = test::month(test::station({9h, 21h}), kMay, [](record::StoredObservation& stored) {
        return stored.values.hour != record::ObservingHour{day(2025, 5, 10), 9h};
    });
    MonthFigure figure(report, QLocale(QLocale::English), {800, 540}, true);
    const auto& lines = figure.humidity().lines();
    ASSERT_EQ(lines.size(), 3);
    EXPECT_EQ(lines[0]->count(), 9);
    EXPECT_EQ(lines[1]->count(), 21);
    EXPECT_EQ(lines[2]->count(), 31);
    EXPECT_EQ(lines[0]->pen().style(), Qt::SolidLine);
    EXPECT_EQ(lines[2]->pen().style(), Qt::CustomDashLine);
    EXPECT_EQ(figure.dewPoint().lines().size(), 3);
}

TEST(HumidityChart, PixelsInAGapStayBlank) {
    // A week without readings in the middle of the month: no pen may touch that stretch between the rules.
    const auto report = test::month(test::station({9h}), kMay, [](record::StoredObservation& stored) {
        return stored.values.hour->date < day(2025, 5, 10) || stored.values.hour->date > day(2025, 5, 20);
    });
    MonthFigure figure(report, QLocale(QLocale::English), {800, 540}, false);
    QImage image(800, 540, QImage::Format_RGB32);
    image.fill(Qt::white);
    {
        QPainter painter(&image);
        figure.paint(painter, image.rect());
    }
    const auto& chart = figure.humidity();
    ChartPoint edge;
    edge.humidity = 0;
    edge.instant = record::Instant{date::sys_days{date::year{2025} / 5 / 11}};
    const int left = static_cast<int>(chart.placeOf(edge).x());
    edge.instant = record::Instant{date::sys_days{date::year{2025} / 5 / 20}};
    const int right = static_cast<int>(chart.placeOf(edge).x());
    edge.humidity = 79; // between the rules of 60 and 80, where the lines run
    const int high = static_cast<int>(chart.placeOf(edge).y());
    edge.humidity = 61;
    const int low = static_cast<int>(chart.placeOf(edge).y());
    ASSERT_GT(right, left + 50);
    ASSERT_GT(low, high + 10);
    int touched = 0;
    for (int x = left + 2; x < right - 2; ++x) {
        for (int y = high + 2; y < low - 2; ++y) {
            touched += image.pixelColor(x, y) == Qt::white ? 0 : 1;
        }
    }
    EXPECT_EQ(touched, 0);
}

TEST(TimeTicks, NeverStandCloserThanTheirWords) {
    const auto station = test::station({9h});
    const record::Instant from{date::sys_days{date::year{2000} / 1 / 1}};
    for (const int days : {3, 14, 31, 92, 366, 3660, 11000, 40000}) {
        const record::Instant to = from + date::days{days};
        const auto ticks = timeTicks(QLocale(QLocale::German), station, from, to, 700, 70);
        EXPECT_LE(ticks.size(), 12U) << days;
        EXPECT_GE(ticks.size(), 1U) << days;
    }
}

TEST(ValueScale, HoldsWhatIsAskedOnRoundSteps) {
    const ValueScale scale = valueScale(-3.2, 11.9, 5);
    EXPECT_DOUBLE_EQ(scale.low, -5);
    EXPECT_DOUBLE_EQ(scale.high, 15);
    EXPECT_DOUBLE_EQ(scale.step, 5);
    EXPECT_EQ(scale.decimals, 0);
    EXPECT_EQ(valueScale(1.1, 1.9, 4).decimals, 1);
}

} // namespace

} // namespace wickbook::ui
