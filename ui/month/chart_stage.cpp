// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/chart_stage.h"

#include "ui/style/type.h"

#include <QStackedLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

namespace {
constexpr int kLeastHeight = 116;
} // namespace

ChartStage::ChartStage(Session& session, QLocale locale, QWidget* parent)
    : QWidget(parent)
    , session_(session)
    , locale_(std::move(locale))
    , points_(std::make_shared<ChartPoints>()) {
    pages_ = new QStackedLayout(this);
    const ChartLook look = ChartLook::screen(palette());
    const units::TemperatureUnit unit = session_.unit();
    QWidget* overTime = addPage();
    for (const Quantity quantity : {Quantity::Humidity, Quantity::DewPoint}) {
        auto* chart = new HumidityChart(quantity, session_.station(), look, locale_, unit);
        (quantity == Quantity::Humidity ? humidity_ : dewPoint_) = chart;
        addView(overTime, chart,
                {[chart](QPointF place, double reach) { return chart->pointNear(place, reach); },
                 [chart](double x) { return chart->instantAt(x); }});
    }
    QWidget* together = addPage();
    for (const Quantity quantity : {Quantity::Humidity, Quantity::DewPoint}) {
        auto* chart = new YearsChart(quantity, look, locale_, unit);
        (quantity == Quantity::Humidity ? yearsHumidity_ : yearsDewPoint_) = chart;
        addView(together, chart, {[](QPointF, double) -> const ChartPoint* { return nullptr; }, nullptr});
    }
    air_ = new AirChart(look, locale_, unit);
    addView(addPage(), air_,
            {[this](QPointF place, double reach) { return air_->pointNear(place, reach); }, nullptr});
    pair_ = new PairChart(session_.station(), look, locale_, unit);
    addView(addPage(), pair_,
            {[this](QPointF place, double reach) { return pair_->pointNear(place, reach); },
             [this](double x) { return pair_->instantAt(x); }});
}

QWidget* ChartStage::addPage() {
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    pages_->addWidget(page);
    return page;
}

void ChartStage::addView(QWidget* page, QChart* chart, ChartHandView::Hands hands) {
    auto* view = new ChartHandView(chart, std::move(hands), this);
    // Titles and axes of two plots take what grown letters take; the plots keep their share beside them.
    view->setMinimumHeight(2 * typePixels(kLeastHeight) - kLeastHeight);
    connect(view, &ChartHandView::zoomAsked, this, &ChartStage::zoomAsked);
    connect(view, &ChartHandView::moveAsked, this, &ChartStage::moveAsked);
    connect(view, &ChartHandView::pointHovered, this, &ChartStage::pointHovered);
    connect(view, &ChartHandView::pointChosen, this, &ChartStage::pointChosen);
    connect(view, &ChartHandView::pointOpened, this, &ChartStage::pointOpened);
    static_cast<QVBoxLayout*>(page->layout())->addWidget(view, 1);
}

void ChartStage::setKind(ChartKind kind) {
    kind_ = kind;
    pages_->setCurrentIndex(static_cast<int>(kind));
    showOnStage();
}

void ChartStage::setPoints(std::shared_ptr<const ChartPoints> points) {
    if (points_ == points) {
        return;
    }
    points_ = std::move(points);
    humidity_->setPoints(points_);
    dewPoint_->setPoints(points_);
    air_->setPoints(points_);
    pair_->setPoints(points_);
}

void ChartStage::setSpan(record::Instant from, record::Instant to, record::StationDate first,
                         record::StationDate last) {
    from_ = from;
    to_ = to;
    first_ = first;
    last_ = last;
    showOnStage();
}

/// Only the kind in sight is laid out.
void ChartStage::showOnStage() {
    switch (kind_) {
    case ChartKind::OverTime:
        humidity_->setSpan(from_, to_);
        dewPoint_->setSpan(from_, to_);
        break;
    case ChartKind::YearsTogether:
        for (YearsChart* chart : {yearsHumidity_, yearsDewPoint_}) {
            chart->single(single_);
            chart->show(points_, first_, last_, hour_);
        }
        break;
    case ChartKind::Air:
        air_->setSpan(from_, to_);
        break;
    case ChartKind::Pair:
        pair_->setSpan(from_, to_);
        break;
    }
}

void ChartStage::setAverages(const ChartAverage& humidity, const ChartAverage& dewPoint) {
    humidityAverage_ = humidity;
    dewPointAverage_ = dewPoint;
    humidity_->setAverage(humidity);
    dewPoint_->setAverage(dewPoint);
}

void ChartStage::setCaret(const std::optional<record::Instant>& caret) {
    caret_ = caret;
    humidity_->setCaret(caret);
    dewPoint_->setCaret(caret);
    yearsHumidity_->setCaret(caret);
    yearsDewPoint_->setCaret(caret);
    air_->setCaret(caret);
    pair_->setCaret(caret);
}

void ChartStage::setHour(std::size_t hour) {
    hour_ = hour;
    showOnStage();
}

void ChartStage::stepYear(int steps) {
    const std::vector<date::year>& years = yearsHumidity_->otherYears();
    if (years.empty()) {
        return;
    }
    const auto count = static_cast<int>(years.size());
    // Beyond either end lies none.
    int place = steps > 0 ? -1 : count;
    if (single_) {
        const auto found = std::find(years.begin(), years.end(), *single_);
        place = static_cast<int>(found - years.begin());
    }
    place += steps;
    single_ =
        place < 0 || place >= count ? std::nullopt : std::optional{years[static_cast<std::size_t>(place)]};
    yearsHumidity_->single(single_);
    yearsDewPoint_->single(single_);
}

void ChartStage::followPalette() {
    const ChartLook look = ChartLook::screen(palette());
    humidity_->setLook(look);
    dewPoint_->setLook(look);
    for (FramedChart* chart :
         std::initializer_list<FramedChart*>{yearsHumidity_, yearsDewPoint_, air_, pair_}) {
        chart->setLook(look);
    }
}

QList<QChart*> ChartStage::forPaper(const QLocale& locale) const {
    const ChartLook look = ChartLook::paper();
    const units::TemperatureUnit unit = session_.unit();
    QList<QChart*> charts;
    switch (kind_) {
    case ChartKind::OverTime:
        for (const Quantity quantity : {Quantity::Humidity, Quantity::DewPoint}) {
            auto* chart = new HumidityChart(quantity, session_.station(), look, locale, unit);
            chart->setPoints(points_);
            chart->setAverage(quantity == Quantity::Humidity ? humidityAverage_ : dewPointAverage_);
            chart->setSpan(from_, to_);
            charts << chart;
        }
        break;
    case ChartKind::YearsTogether:
        for (const Quantity quantity : {Quantity::Humidity, Quantity::DewPoint}) {
            auto* chart = new YearsChart(quantity, look, locale, unit);
            chart->show(points_, first_, last_, hour_);
            chart->single(single_);
            charts << chart;
        }
        break;
    case ChartKind::Air: {
        auto* chart = new AirChart(look, locale, unit);
        chart->setPoints(points_);
        chart->setSpan(from_, to_);
        charts << chart;
        break;
    }
    case ChartKind::Pair: {
        auto* chart = new PairChart(session_.station(), look, locale, unit);
        chart->setPoints(points_);
        chart->setSpan(from_, to_);
        charts << chart;
        break;
    }
    }
    return charts;
}

} // namespace wickbook::ui
