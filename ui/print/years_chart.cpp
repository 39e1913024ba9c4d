// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/years_chart.h"

#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

namespace wickbook::ui {

namespace {

constexpr double kYearMark = 2.6;

struct YearsText {
    Q_DECLARE_TR_FUNCTIONS(YearsText)
};

date::year yearOf(record::StationDate day) {
    return date::year_month_day{day}.year();
}

/// The same day in another year; 29 February becomes the 28th.
record::StationDate inYear(record::StationDate day, date::year year) {
    const date::year_month_day ymd{day};
    const date::year_month_day same{year / ymd.month() / ymd.day()};
    return record::StationDate{same.ok() ? same : year / ymd.month() / date::last};
}

} // namespace

YearsChart::YearsChart(Quantity quantity, ChartLook look, QLocale locale, units::TemperatureUnit unit)
    : FramedChart(std::move(look), std::move(locale))
    , quantity_(quantity)
    , unit_(unit)
    , points_(std::make_shared<ChartPoints>()) {}

void YearsChart::show(std::shared_ptr<const ChartPoints> points, record::StationDate first,
                      record::StationDate last, std::size_t hour) {
    points_ = std::move(points);
    first_ = first;
    last_ = std::min(last, first + date::days{365});
    hour_ = hour;
    std::set<date::year> years;
    if (hour_ < points_->hours.size()) {
        for (const auto& run : points_->hours[hour_].runs) {
            for (const ChartPoint& point : run) {
                // A span over the new year begins in the year before.
                for (const date::year year :
                     {yearOf(point.hour.date), yearOf(point.hour.date) - date::years{1}}) {
                    if (daysInto(point, year)) {
                        years.insert(year);
                    }
                }
            }
        }
    }
    years.erase(yearOf(first_));
    others_.assign(years.begin(), years.end());
    if (single_ && !years.contains(*single_)) {
        single_.reset();
    }
    layOut();
}

void YearsChart::single(std::optional<date::year> year) {
    single_ = year;
    layOut();
}

void YearsChart::setCaret(const std::optional<record::Instant>& caret) {
    caret_ = caret;
    update();
}

QString YearsChart::title() const {
    return quantity_ == Quantity::Humidity ? YearsText::tr("Relative humidity, %")
                                           : YearsText::tr("Dew point, %1").arg(unitWords(unit_));
}

double YearsChart::shown(const ChartPoint& point) const {
    const double value = *point.value(quantity_);
    return quantity_ == Quantity::DewPoint ? celsiusAsShown(value, unit_) : value;
}

record::StationDate YearsChart::firstIn(date::year year) const {
    return inYear(first_, year);
}

std::optional<double> YearsChart::daysInto(const ChartPoint& point, date::year year) const {
    if (!point.value(quantity_)) {
        return std::nullopt;
    }
    const auto days = (point.hour.date - firstIn(year)).count();
    if (days < 0 || days > (last_ - first_).count()) {
        return std::nullopt;
    }
    return static_cast<double>(days) + static_cast<double>(point.hour.hour.count()) / 1440.0;
}

std::vector<QList<QPointF>> YearsChart::runsOf(date::year year) const {
    std::vector<QList<QPointF>> runs;
    if (hour_ >= points_->hours.size()) {
        return runs;
    }
    // Some days more on both sides: what a run holds is told by its dates below.
    const record::Instant from{(firstIn(year) - date::days{2}).time_since_epoch()};
    const record::Instant to = from + (last_ - first_) + date::days{4};
    for (const auto& run : points_->hours[hour_].runs) {
        if (run.back().instant < from || run.front().instant > to) {
            continue;
        }
        QList<QPointF> vertices;
        for (const ChartPoint& point : pointsWithin(run, from, to)) {
            if (const auto days = daysInto(point, year)) {
                vertices << QPointF{*days, shown(point)};
            }
        }
        if (!vertices.isEmpty()) {
            runs.push_back(std::move(vertices));
        }
    }
    return runs;
}

void YearsChart::arrange() {
    xLow_ = 0;
    xHigh_ = std::max(1.0, static_cast<double>((last_ - first_).count() + 1));
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    const auto reach = [&](const std::vector<QList<QPointF>>& runs) {
        for (const QList<QPointF>& run : runs) {
            for (const QPointF& vertex : run) {
                low = std::min(low, vertex.y());
                high = std::max(high, vertex.y());
            }
        }
    };
    QColor quiet = look_.tokens.soft;
    quiet.setAlphaF(others_.size() > 12 ? 0.35F : 0.55F);
    const auto lay = [&](const std::vector<QList<QPointF>>& runs, const QPen& pen) {
        reach(runs);
        for (const QList<QPointF>& run : runs) {
            addLine(run, pen);
        }
    };
    for (const date::year year : others_) {
        if (year != single_) {
            lay(runsOf(year), QPen(quiet, 1));
        }
    }
    if (single_) {
        QPen pen(look_.tokens.accent, 1.8);
        pen.setDashPattern({5, 3});
        lay(runsOf(*single_), pen);
    }
    inHand_ = runsOf(yearOf(first_));
    lay(inHand_, QPen(look_.tokens.ink, 2));
    if (quantity_ == Quantity::Humidity) {
        y_ = {0, 100, plot_.height() < 110 ? 50.0 : 20.0, 0};
    } else if (low > high) {
        y_ = valueScale(0, 10, 3);
    } else {
        y_ = valueScale(low, high, std::clamp(static_cast<int>(plot_.height() / 32), 2, 6));
    }
    const int days = static_cast<int>((last_ - first_).count()) + 1;
    const double room = QFontMetricsF(look_.font).horizontalAdvance(QStringLiteral("00 Mmm")) + 14;
    for (int day = 0; day < days; ++day) {
        const record::StationDate date = first_ + date::days{day};
        const auto ofMonth = static_cast<unsigned>(date::year_month_day{date}.day());
        const bool daily = days * room <= plot_.width();
        if (daily || ofMonth == 1 || (days <= 100 && ofMonth % 5 == 0 && ofMonth < 29)) {
            words_.push_back({xOf(day), shortDateWords(locale_, date)});
        }
    }
}

void YearsChart::paintBelow(QPainter& painter) const {
    painter.setPen(QPen(look_.tokens.rule, 1));
    for (const PlacedWord& word : words_) {
        painter.drawLine(QPointF{word.x, plot_.bottom()}, QPointF{word.x, plot_.bottom() + 4});
    }
}

void YearsChart::paintAbove(QPainter& painter) const {
    if (xHigh_ * 4 < plot_.width()) { // room for marks
        for (const QList<QPointF>& run : inHand_) {
            for (const QPointF& vertex : run) {
                drawKept(painter, shapeOf(hour_), {xOf(vertex.x()), yOf(vertex.y())}, kYearMark,
                         look_.tokens.ink);
            }
        }
    }
    const ChartPoint* point = caret_ ? points_->at(*caret_) : nullptr;
    if (point == nullptr) {
        return;
    }
    if (const auto days = daysInto(*point, yearOf(first_))) {
        painter.setPen(QPen(look_.tokens.accent, 1.5));
        painter.drawLine(QPointF{xOf(*days), plot_.top()}, QPointF{xOf(*days), plot_.bottom()});
    }
}

std::vector<FramedChart::KeyEntry> YearsChart::key() const {
    std::vector<KeyEntry> entries;
    const auto line = [](const QPen& pen) {
        return [pen](QPainter& painter, QPointF at) {
            painter.setPen(pen);
            painter.drawLine(at, at + QPointF{24, 0});
        };
    };
    entries.push_back(
        {QString::number(static_cast<int>(yearOf(first_))), 24, line(QPen(look_.tokens.ink, 2))});
    if (single_) {
        QPen pen(look_.tokens.accent, 1.8);
        pen.setDashPattern({5, 3});
        entries.push_back({QString::number(static_cast<int>(*single_)), 24, line(pen)});
    }
    if (const std::size_t count = others_.size(); count > 0) {
        entries.push_back(
            {count == 1 ? QString::number(static_cast<int>(others_.front()))
                        : YearsText::tr("%1 to %2, other years: %3")
                              .arg(QString::number(static_cast<int>(others_.front())),
                                   QString::number(static_cast<int>(others_.back())), QString::number(count)),
             24, line(QPen(look_.tokens.soft, 1))});
    }
    return entries;
}

} // namespace wickbook::ui
