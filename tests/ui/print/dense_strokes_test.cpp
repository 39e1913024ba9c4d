// SPDX-License-Identifier: GPL-3.0-or-later
// A century in a thousand pixels: leaving out what can't be told apart leaves out no ink.
#include "ui/print/dense_strokes.h"

#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace wickbook::ui {

namespace {

constexpr double kColumn = 3; // pixels that share a stroke, as on the chart

struct Series {
    std::vector<std::int64_t> seconds;
    std::vector<float> values;
};

/// Twice a day over so many days, with a gap of two years.
Series invented(int days) {
    std::mt19937_64 random(11);
    std::normal_distribution<float> weather(0, 9);
    Series series;
    for (int half = 0; half < 2 * days; ++half) {
        if (half > 20'000 && half < 21'460) {
            continue;
        }
        series.seconds.push_back(std::int64_t{43'200} * half - 1'000'000'000);
        series.values.push_back(70 + 12 * std::sin(static_cast<float>(half) / 116.0F) + weather(random));
    }
    return series;
}

double yOf(float value) {
    return 250.0 - 2.4 * static_cast<double>(value);
}

QImage sheet(int width) {
    QImage image(width, 260, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    return image;
}

/// As the chart does it: a stroke for each column.
QImage decimated(const Series& series, const DenseColumns& columns, int width) {
    std::vector<DenseReach> reach;
    gatherReach(series.seconds, series.values, columns, reach);
    QImage image = sheet(width);
    QPainter painter(&image);
    painter.setPen(QPen(Qt::black, kColumn));
    for (std::size_t place = 0; place < reach.size(); ++place) {
        if (!reach[place].isEmpty()) {
            const double x = (static_cast<double>(place) + 0.5) * kColumn;
            painter.drawLine(QLineF{x, yOf(reach[place].high), x, yOf(reach[place].low)});
        }
    }
    return image;
}

/// Every reading: a line to it from the one before it in its column.
QImage undecimated(const Series& series, const DenseColumns& columns, int width) {
    QImage image = sheet(width);
    QPainter painter(&image);
    painter.setPen(QPen(Qt::black, kColumn));
    for (std::size_t k = 0; k < series.seconds.size(); ++k) {
        if (series.seconds[k] < columns.from() || series.seconds[k] > columns.to()) {
            continue;
        }
        const std::size_t place = columns.of(series.seconds[k]);
        const bool goesOn =
            k > 0 && series.seconds[k - 1] >= columns.from() && columns.of(series.seconds[k - 1]) == place;
        const double x = (static_cast<double>(place) + 0.5) * kColumn;
        painter.drawLine(QLineF{x, yOf(series.values[goesOn ? k - 1 : k]), x, yOf(series.values[k])});
    }
    return image;
}

std::pair<int, int> inkAndDifferences(const QImage& one, const QImage& other) {
    int ink = 0;
    int differences = 0;
    for (int y = 0; y < one.height(); ++y) {
        for (int x = 0; x < one.width(); ++x) {
            const bool here = one.pixel(x, y) != qRgb(255, 255, 255);
            const bool there = other.pixel(x, y) != qRgb(255, 255, 255);
            ink += there ? 1 : 0;
            differences += here != there ? 1 : 0;
        }
    }
    return {ink, differences};
}

} // namespace

TEST(DenseStrokes, DifferFromEveryReadingDrawnByAtMostATenThousandthOfTheInk) {
    const Series series = invented(36'500);
    // The whole century, a part whose ends fall between readings, and other widths of the plot.
    const std::vector<std::pair<double, double>> spans{{0.0, 1.0}, {0.213'7, 0.871'3}, {0.4, 0.55}};
    for (const auto& [first, last] : spans) {
        for (const int width : {997, 1000, 1403}) {
            const auto length = static_cast<double>(series.seconds.back() - series.seconds.front());
            const DenseColumns columns(series.seconds.front() + static_cast<std::int64_t>(first * length),
                                       series.seconds.front() + static_cast<std::int64_t>(last * length),
                                       static_cast<std::size_t>(std::ceil(width / kColumn)));
            const auto [ink, differences] =
                inkAndDifferences(decimated(series, columns, width), undecimated(series, columns, width));
            EXPECT_GT(ink, 20'000);
            EXPECT_LE(differences, ink / 10'000) << first << "…" << last << ", " << width << " pixels";
        }
    }
}

TEST(DenseStrokes, GapsStayGapsAndTheLastMomentHasAColumn) {
    const DenseColumns columns(100, 200, 10);
    std::vector<DenseReach> reach;
    gatherReach(std::vector<std::int64_t>{99, 100, 105, 160, 200, 201},
                std::vector<float>{-99, 1, 3, 5, 7, 99}, columns, reach);
    ASSERT_EQ(reach.size(), 11U);
    EXPECT_EQ(reach[0].low, 1.0F);
    EXPECT_EQ(reach[0].high, 3.0F);
    EXPECT_EQ(reach[6].high, 5.0F);
    EXPECT_EQ(reach[10].low, 7.0F);
    EXPECT_EQ(reach[10].high, 7.0F) << "what lies outside the span is in no column";
    for (const std::size_t empty : {1U, 2U, 3U, 4U, 5U, 7U, 8U, 9U}) {
        EXPECT_TRUE(reach[empty].isEmpty());
    }
}

} // namespace wickbook::ui
