// SPDX-License-Identifier: GPL-3.0-or-later
// What a frame of the two charts costs while a whole register is panned and zoomed, as a ratio to a frame of
// one of its months, and what building and first painting them costs for 73,000 and 263,000 readings, as a
// ratio to 62; each taken turn and turn about in one run; nothing is asserted. A frame is what the window
// does: both charts are given the span and painted, 1000 × 520 pixels. Arguments: books.
// QT_QPA_PLATFORM=offscreen does.
#include "core/desk/checked_range.h"
#include "tests/bench/interleaved.h"
#include "ui/print/humidity_chart.h"

#include <QApplication>
#include <QGraphicsScene>
#include <QImage>
#include <QPainter>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

using namespace wickbook;

namespace {

constexpr int kRounds = 60;

/// Both charts on a scene of their own, as on the page.
class Frame {
public:
    Frame(const record::StationRecord& station, std::shared_ptr<const ui::ChartPoints> points)
        : image_(1000, 520, QImage::Format_ARGB32_Premultiplied) {
        double y = 0;
        for (const auto quantity : {ui::Quantity::Humidity, ui::Quantity::DewPoint}) {
            auto* chart = new ui::HumidityChart(quantity, station, ui::ChartLook::paper(), QLocale::c(),
                                                units::TemperatureUnit::Celsius);
            scene_.addItem(chart);
            chart->setGeometry(QRectF{0, y, 1000, 260});
            chart->setPoints(points);
            charts_.push_back(chart);
            y += 260;
        }
    }
    void show(record::Instant from, record::Instant to) {
        for (ui::HumidityChart* chart : charts_) {
            chart->setSpan(from, to);
        }
        QCoreApplication::processEvents();
        image_.fill(Qt::white);
        QPainter painter(&image_);
        scene_.render(&painter, QRectF{0, 0, 1000, 520}, QRectF{0, 0, 1000, 520});
    }

private:
    QGraphicsScene scene_;
    std::vector<ui::HumidityChart*> charts_;
    QImage image_;
};

/// Readings as a station of so many a day makes them, over so many days: seasons, days and weather.
std::shared_ptr<const ui::ChartPoints> invented(int perDay, int days) {
    std::mt19937_64 random(3);
    std::normal_distribution<double> weather(0, 6);
    auto points = std::make_shared<ui::ChartPoints>();
    points->from = record::StationDate{date::local_days{date::year{1930} / 1 / 1}};
    points->to = points->from + date::days{days};
    points->hours.resize(static_cast<std::size_t>(perDay));
    for (int k = 0; k < perDay; ++k) {
        ui::HourLine& line = points->hours[static_cast<std::size_t>(k)];
        line.hour = std::chrono::minutes{24 * 60 / perDay * k};
        auto& run = line.runs.emplace_back();
        run.reserve(static_cast<std::size_t>(days));
        for (int day = 0; day < days; ++day) {
            ui::ChartPoint point;
            point.hour = {points->from + date::days{day}, line.hour};
            point.instant =
                record::Instant{date::sys_days{date::year{1930} / 1 / 1}} + date::days{day} + line.hour;
            const double season = std::sin(2 * std::numbers::pi * day / 365.25);
            point.dewPoint = 6 + 8 * season + weather(random) / 2;
            point.dry = *point.dewPoint + 4;
            point.wet = *point.dewPoint + 2;
            point.humidity = std::clamp(75 - 12 * season + 2 * weather(random), 12.0, 100.0);
            point.humidityU95 = 3;
            point.dewPointU95 = 0.5;
            run.push_back(point);
        }
    }
    return points;
}

void measureBuilding(const record::StationRecord& station) {
    const auto few = invented(2, 31);
    const auto build = [&](const std::shared_ptr<const ui::ChartPoints>& points) {
        Frame frame(station, points);
        const auto& run = points->hours.front().runs.front();
        frame.show(run.front().instant, run.back().instant + std::chrono::hours{24});
    };
    for (const auto& [key, perDay, days] :
         {std::tuple{"chart.build.73000", 2, 36'525}, std::tuple{"chart.build.263000", 8, 32'873}}) {
        const auto many = invented(perDay, days);
        const auto times = bench::interleaved(
            15, [&] { build(many); }, [&] { build(few); });
        bench::tell(key, times.first, times.second);
    }
}

int measure(const std::filesystem::path& path, bool building) {
    const auto book = store::Book::open(path, store::OpenMode::ReadOnly);
    const auto station = book ? book->station() : tl::unexpected(book.error());
    const auto readings = station ? desk::checkedAll(*book, *station, {}) : tl::unexpected(station.error());
    if (!readings || readings->empty()) {
        fmt::print(stderr, "{} can't be read or is empty.\n", path.string());
        return 1;
    }
    const auto first = readings->front().reading.values().instant;
    const auto last = readings->back().reading.values().instant;
    const auto dayOf = [](record::Instant instant) {
        return record::StationDate{date::floor<date::days>(instant).time_since_epoch()};
    };
    const auto points = std::make_shared<const ui::ChartPoints>(
        ui::chartPoints(*readings, *station, dayOf(first) - date::days{1}, dayOf(last) + date::days{1}));
    Frame whole(*station, points);
    Frame month(*station, points);
    // The fullest of the months round the middle: an empty one costs nothing to draw.
    auto middle = first;
    std::size_t most = 0;
    for (auto from = first + (last - first) / 3; from < last - (last - first) / 3; from += date::days{31}) {
        const auto within = std::count_if(readings->begin(), readings->end(), [&](const auto& each) {
            return each.reading.values().instant >= from &&
                   each.reading.values().instant < from + date::days{31};
        });
        if (static_cast<std::size_t>(within) > most) {
            most = static_cast<std::size_t>(within);
            middle = from;
        }
    }
    const auto all = last - first;
    const auto days = date::days{31};
    int round = 0;
    const auto pan = bench::interleaved(
        kRounds, [&] { whole.show(first + all / 500 * ++round, last + all / 500 * round); },
        [&] { month.show(middle + std::chrono::hours{round}, middle + days + std::chrono::hours{round}); });
    round = 0;
    const auto zoom = bench::interleaved(
        kRounds, [&] { whole.show(first + all / 300 * ++round, last - all / 300 * round); },
        [&] { month.show(middle + std::chrono::hours{round}, middle + days - std::chrono::hours{round}); });
    fmt::print("{}: {} readings\n", path.filename().string(), readings->size());
    bench::tell("chart.pan", pan.first, pan.second);
    bench::tell("chart.zoom", zoom.first, zoom.second);
    if (building) {
        measureBuilding(*station);
    }
    return 0;
}

} // namespace

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    int trouble = argc > 1 ? 0 : 2;
    if (argc < 2) {
        fmt::print(stderr, "Name one book or more.\n");
    }
    for (int at = 1; at < argc; ++at) {
        trouble = std::max(trouble, measure(argv[at], at == 1));
    }
    return trouble;
}
