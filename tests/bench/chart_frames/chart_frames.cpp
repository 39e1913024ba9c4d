// SPDX-License-Identifier: GPL-3.0-or-later
// What a frame of the two charts costs while a whole register is panned and zoomed, as a ratio to a frame of
// one of its months, both taken turn and turn about in one run; nothing is asserted. A frame is what the
// window does: both charts are given the span and painted, 1000 × 520 pixels.
// Arguments: books. QT_QPA_PLATFORM=offscreen does.
#include "core/desk/checked_range.h"
#include "ui/print/humidity_chart.h"

#include <QApplication>
#include <QGraphicsScene>
#include <QImage>
#include <QPainter>
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <functional>

using namespace wickbook;

namespace {

constexpr int kRounds = 60;

double milliseconds(const std::function<void()>& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

double median(std::vector<double> values) {
    const auto half = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), half, values.end());
    return *half;
}

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

int measure(const std::filesystem::path& path) {
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
    std::vector<double> pan, zoom, panMonth, zoomMonth;
    for (int round = 0; round < kRounds; ++round) {
        const auto all = last - first;
        const auto days = date::days{31};
        pan.push_back(milliseconds([&] { whole.show(first + all / 500 * round, last + all / 500 * round); }));
        panMonth.push_back(milliseconds([&] {
            month.show(middle + std::chrono::hours{round}, middle + days + std::chrono::hours{round});
        }));
        zoom.push_back(
            milliseconds([&] { whole.show(first + all / 300 * round, last - all / 300 * round); }));
        zoomMonth.push_back(milliseconds([&] {
            month.show(middle + std::chrono::hours{round}, middle + days - std::chrono::hours{round});
        }));
    }
    fmt::print("{}: {} readings\n", path.filename().string(), readings->size());
    fmt::print("  pan   {:6.2f} ms, a month {:6.2f} ms, ratio {:.2f}\n", median(pan), median(panMonth),
               median(pan) / median(panMonth));
    fmt::print("  zoom  {:6.2f} ms, a month {:6.2f} ms, ratio {:.2f}\n", median(zoom), median(zoomMonth),
               median(zoom) / median(zoomMonth));
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
        trouble = std::max(trouble, measure(argv[at]));
    }
    return trouble;
}
